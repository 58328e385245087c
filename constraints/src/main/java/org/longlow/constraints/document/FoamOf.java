package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.FoamTrial;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.seat.DiscTest;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.FoamSheets;
import org.longlow.rider.seat.SeatLoad;

/** A layer's foam from whichever figures its document gives. */
public final class FoamOf {

  private FoamOf() {}

  /**
   * Returns the foam of a layer whose figures are complete.
   *
   * @param values of formulas, in internal units
   * @throws OutOfRange if no foam has these figures
   */
  public static Foam of(FoamSpec spec, ToDoubleFunction<Formula> values) {
    double density = kgM3(spec, values);
    if (spec.closedCell()) {
      double polymer =
          Unit.KG_PER_M3.fromInternal(values.applyAsDouble(spec.polymerDensity().orElseThrow()));
      return spec.stress25().isPresent()
          ? FoamSheets.closedCellByStress25(density, kPa(spec.stress25(), values), polymer)
          : Foam.closedCell(density, kPa(spec.wallStress(), values), polymer);
    }
    if (spec.test().isThere()) {
      return tested(spec, values).orElseThrow().foam();
    }
    double factor = values.applyAsDouble(spec.supportFactor().orElseThrow());
    return spec.cv40().isPresent()
        ? FoamSheets.openCellByCv40(density, kPa(spec.cv40(), values), factor)
        : Foam.openCell(density, values.applyAsDouble(spec.ifd25().orElseThrow()), factor);
  }

  /**
   * Returns what the builder's own test of a layer gives, if there is one.
   *
   * @throws OutOfRange if it cannot be a foam
   */
  public static Optional<DiscTest> tested(FoamSpec spec, ToDoubleFunction<Formula> values) {
    if (!spec.test().isThere()) {
      return Optional.empty();
    }
    FoamTrial test = spec.test();
    List<DiscTest.Press> presses = new ArrayList<>();
    for (FoamTrial.Press press : test.presses()) {
      presses.add(
          new DiscTest.Press(
              values.applyAsDouble(press.depth()),
              values.applyAsDouble(press.load()) * SeatLoad.GRAVITY));
    }
    return Optional.of(
        DiscTest.fit(
            kgM3(spec, values), values.applyAsDouble(test.thickness().orElseThrow()), presses));
  }

  /** Returns all formulas that its foam rests on. */
  static List<Formula> formulas(FoamSpec spec) {
    List<Formula> all = new ArrayList<>(List.of(spec.density()));
    for (Optional<Formula> f :
        List.of(
            spec.ifd25(),
            spec.supportFactor(),
            spec.wallStress(),
            spec.polymerDensity(),
            spec.cv40(),
            spec.stress25())) {
      f.ifPresent(all::add);
    }
    spec.test().thickness().ifPresent(all::add);
    spec.test().presses().forEach(p -> all.addAll(List.of(p.depth(), p.load())));
    return all;
  }

  private static double kgM3(FoamSpec spec, ToDoubleFunction<Formula> values) {
    return Unit.KG_PER_M3.fromInternal(values.applyAsDouble(spec.density()));
  }

  private static double kPa(Optional<Formula> stress, ToDoubleFunction<Formula> values) {
    return Unit.KILOPASCAL.fromInternal(values.applyAsDouble(stress.orElseThrow()));
  }
}
