package org.longlow.constraints.layout;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.TyreWord;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;

/**
 * What the tyres of a layout measure, for its formulas: by the radius or width that a wheel says as
 * a plain length, else by its size. What is neither has no name.
 */
public final class TyreFigures {

  private TyreFigures() {}

  /** Returns what each {@link TyreWord} is worth, mm. */
  public static Map<String, Double> of(Layout layout) {
    Map<String, Double> figures = new LinkedHashMap<>();
    for (Part part : layout.parts().values()) {
      if (part instanceof WheelPart wheel && wheel.end() != null) {
        boolean front = wheel.end() == Part.End.FRONT;
        Optional<TyreSize> size = size(wheel);
        put(
            figures,
            front ? TyreWord.FRONT_RADIUS : TyreWord.REAR_RADIUS,
            wheel.radius(),
            size.map(TyreSize::freeRadiusMm));
        put(
            figures,
            front ? TyreWord.FRONT_WIDTH : TyreWord.REAR_WIDTH,
            wheel.width(),
            size.map(TyreSize::widthMm));
      }
    }
    return figures;
  }

  private static Optional<TyreSize> size(WheelPart wheel) {
    return wheel.tyre() == null || wheel.tyre().isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(TyreSizeReader.read(wheel.tyre()).size());
  }

  private static void put(
      Map<String, Double> into, TyreWord word, Optional<Formula> said, Optional<Double> ofSize) {
    said.filter(f -> f.names().isEmpty())
        .map(TyreFigures::lengthMm)
        .filter(mm -> mm > 0 && Double.isFinite(mm))
        .or(() -> ofSize)
        .ifPresent(mm -> into.put(word.word(), mm));
  }

  private static double lengthMm(Formula plain) {
    Dim dim = plain.expr().dim(name -> Dim.NUMBER);
    return dim.equals(Dim.LENGTH) || plain.isBareNumber()
        ? plain.evaluate(name -> Double.NaN)
        : Double.NaN;
  }
}
