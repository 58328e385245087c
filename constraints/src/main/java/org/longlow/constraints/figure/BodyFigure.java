package org.longlow.constraints.figure;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.OutOfRange;

/** The figure {@code body}: every measurement of a person, and the segments. */
public final class BodyFigure {

  /**
   * Input.
   *
   * @param sex {@code female} or {@code male}
   * @param statureMm standing height
   * @param massKg body mass
   * @param measured own measurements by survey name, mm; may be absent
   * @param ageYears age; may be absent
   */
  public record Input(
      String sex,
      Double statureMm,
      Double massKg,
      Optional<Map<String, Double>> measured,
      Optional<Double> ageYears) {

    /** Makes an input without an age. */
    public Input(
        String sex, Double statureMm, Double massKg, Optional<Map<String, Double>> measured) {
      this(sex, statureMm, massKg, measured, Optional.empty());
    }
  }

  private BodyFigure() {}

  /**
   * Returns measurements by survey name (mm, {@code weightkg} in kg), then {@code
   * segmentLengthsMm}, {@code segmentMassesKg} and {@code segmentCentres} by segment; then {@code
   * notes} where the body is outside the survey.
   */
  public static Map<String, Object> answer(Input input) {
    Needs.input(input);
    Needs needs = new Needs();
    Sex sex = null;
    for (Sex s : Sex.values()) {
      if (s.name().equalsIgnoreCase(input.sex())) {
        sex = s;
      }
    }
    if (sex == null) {
      needs.add(
          new FigureFault("sex", input.sex() == null ? "missing" : input.sex(), "female or male"));
    }
    double stature =
        needs.within(
            "statureMm",
            input.statureMm(),
            BodyMeasures.MIN_STATURE_MM,
            BodyMeasures.MAX_STATURE_MM);
    double mass =
        needs.within("massKg", input.massKg(), BodyMeasures.MIN_MASS_KG, BodyMeasures.MAX_MASS_KG);
    OptionalDouble years = OptionalDouble.empty();
    if (input.ageYears() != null && input.ageYears().isPresent()) {
      years = OptionalDouble.of(needs.within("ageYears", input.ageYears().get(), 10, 100));
    }
    needs.settle();
    Body.Sheet sheet;
    try {
      sheet =
          Body.of(
                  BodyMeasures.of(
                      sex,
                      stature,
                      mass,
                      years,
                      input.measured() == null ? Map.of() : input.measured().orElse(Map.of())),
                  Gear.NONE)
              .sheet();
    } catch (OutOfRange e) {
      e.getMessage().lines().forEach(line -> needs.add(refused(line)));
      needs.settle();
      throw e;
    }
    Map<String, Object> out = new LinkedHashMap<>(sheet.measures());
    out.put("segmentLengthsMm", sheet.segmentLengthsMm());
    out.put("segmentMassesKg", sheet.segmentMassesKg());
    out.put("segmentCentres", sheet.segmentCentres());
    if (!sheet.notes().isEmpty()) {
      out.put("notes", sheet.notes());
    }
    return out;
  }

  /** A line of a refused body begins with the name of the measurement. */
  private static FigureFault refused(String line) {
    int end = line.indexOf(' ');
    return new FigureFault(line.substring(0, end), line.substring(end + 1), "");
  }
}
