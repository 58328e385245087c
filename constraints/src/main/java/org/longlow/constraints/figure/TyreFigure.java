package org.longlow.constraints.figure;

import java.util.List;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;

/** The figure {@code tyre}: nominal dimensions of a size designation. */
public final class TyreFigure {

  /**
   * Input.
   *
   * @param size such as {@code 120/70 R17}, {@code MT90-16}, {@code 3.50-18}
   */
  public record Input(String size) {}

  /** Output; rim diameter is 25.4 mm per code unit. */
  public record Output(
      double widthMm,
      double sectionHeightMm,
      double diameterMm,
      double freeRadiusMm,
      double sectionRadiusMm,
      boolean nearEquivalent) {}

  private TyreFigure() {}

  /**
   * Returns the dimensions.
   *
   * @throws FigureFaults with every fault of the size
   */
  public static Output answer(Input input) {
    TyreSize.Reading reading = TyreSizeReader.read(Needs.input(input).size());
    if (reading.size() == null) {
      String value = input.size() == null ? "missing" : "\"" + input.size() + "\"";
      List<FigureFault> faults =
          reading.faults().stream()
              .map(f -> new FigureFault("size", value, "a tyre size (" + f + ")"))
              .toList();
      throw new FigureFaults(faults);
    }
    TyreSize s = reading.size();
    return new Output(
        s.widthMm(),
        s.sectionHeightMm(),
        s.diameterMm(),
        s.freeRadiusMm(),
        s.sectionRadiusMm(),
        s.nearEquivalent());
  }
}
