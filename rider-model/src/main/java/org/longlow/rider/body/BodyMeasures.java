package org.longlow.rider.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.Decimals;

/**
 * Every survey measurement of one person, by its survey name, mm ({@code weightkg} in kg).
 *
 * <p>Without measured values each measurement, also each {@code d_...}, is the survey's regression
 * on stature and mass. Measured values stand as they are, and the others move to what is likeliest
 * in people who measure so: the conditional mean of the survey's normal distribution, given
 * stature, mass and every own measurement. A short sitting height then lowers the eye, and a long
 * buttock-knee length lengthens the thigh link. Girths and breadths outside the correlation block
 * stay at their regression. A {@code d_...} that reads a moved measurement is recomputed by its
 * formula, unless it is itself measured.
 */
public final class BodyMeasures {

  /** Least and greatest stature taken, mm. */
  public static final double MIN_STATURE_MM = 1200;

  public static final double MAX_STATURE_MM = 2200;

  /** Least and greatest mass taken, kg. */
  public static final double MIN_MASS_KG = 30;

  public static final double MAX_MASS_KG = 200;

  private static final String STATURE = "stature";
  private static final String MASS = "weightkg";
  private static final String GRIP = "d_wristtogrip";

  private final Sex sex;
  private final Map<String, Double> values;
  private final Map<String, Double> measured;
  private final List<String> notes;

  private BodyMeasures(
      Sex sex, Map<String, Double> values, Map<String, Double> measured, List<String> notes) {
    this.sex = sex;
    this.values = Collections.unmodifiableMap(values);
    this.measured = Map.copyOf(measured);
    this.notes = List.copyOf(notes);
  }

  /** Returns the measures by regression alone. */
  public static BodyMeasures of(Sex sex, double statureMm, double massKg) {
    return of(sex, statureMm, massKg, OptionalDouble.empty(), Map.of());
  }

  /**
   * Returns a person of unknown age who has measured some things.
   *
   * @see #of(Sex, double, double, OptionalDouble, Map)
   */
  public static BodyMeasures of(
      Sex sex, double statureMm, double massKg, Map<String, Double> measured) {
    return of(sex, statureMm, massKg, OptionalDouble.empty(), measured);
  }

  /**
   * Returns a person who has measured some things; the rest is the likeliest that goes with them.
   *
   * @param sex whose survey
   * @param statureMm in [1200, 2200]
   * @param massKg in [30, 200]
   * @param years age, 0 or more; who is younger or older than anybody in the survey is noted
   * @param measured survey name to mm; not stature or weightkg; their order does not matter
   * @throws IllegalArgumentException naming every fault: value out of range, unknown name with the
   *     nearest known one
   */
  public static BodyMeasures of(
      Sex sex,
      double statureMm,
      double massKg,
      OptionalDouble years,
      Map<String, Double> measured) {
    if (sex == null) {
      throw new IllegalArgumentException("sex must be \"female\" or \"male\", got nothing");
    }
    check(sex, statureMm, massKg, measured);
    Map<String, Double> values = regressed(sex, statureMm, massKg);
    years.ifPresent(y -> values.merge(AgeEffect.ON, AgeEffect.mm(sex, y), Double::sum));
    Map<String, Double> known = new HashMap<>();
    measured.forEach((name, value) -> known.put(name, value - values.get(name)));
    List<String> notes = BodyNotes.of(sex, statureMm, massKg, measured, known);
    years.ifPresent(y -> BodyNotes.age(y).ifPresent(notes::add));
    Set<String> moved = follow(sex, values, known, statureMm, massKg);
    measured.forEach(
        (name, value) -> {
          values.put(name, value);
          moved.add(name);
        });
    Derived.rules()
        .forEach(
            (name, rule) -> {
              if (!measured.containsKey(name) && rule.reads().stream().anyMatch(moved::contains)) {
                values.put(name, rule.formula().applyAsDouble(values));
                moved.add(name);
              }
            });
    for (Map.Entry<String, Double> entry : values.entrySet()) {
      if (!(entry.getValue() > 0) && !entry.getKey().equals("d_trochanterionaboveseat")) {
        notes.add(
            String.format(
                Locale.ROOT,
                "%s comes out at %.1f mm, which no body has: check the measured values.",
                entry.getKey(),
                entry.getValue()));
      }
    }
    return new BodyMeasures(sex, values, measured, notes);
  }

  /**
   * A sampled person: regression plus given residuals of the block's columns. They are as somebody
   * who measured these columns and wrist-to-grip, with the notes that these would give.
   */
  static BodyMeasures sampled(
      Sex sex,
      double statureMm,
      double massKg,
      Map<String, Double> residuals,
      double gripResidual) {
    Map<String, Double> values = regressed(sex, statureMm, massKg);
    residuals.forEach((name, residual) -> values.merge(name, residual, Double::sum));
    settleUnblocked(values, values.get(GRIP) + gripResidual, sex, statureMm, massKg);
    Derived.rules().forEach((name, rule) -> values.put(name, rule.formula().applyAsDouble(values)));
    Map<String, Double> known = new HashMap<>(residuals);
    known.put(GRIP, gripResidual);
    Map<String, Double> measured = new HashMap<>();
    known.keySet().forEach(name -> measured.put(name, values.get(name)));
    return new BodyMeasures(
        sex, values, measured, BodyNotes.of(sex, statureMm, massKg, measured, known));
  }

  private static Map<String, Double> regressed(Sex sex, double statureMm, double massKg) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (MeasureStats stats : Anthropometry.survey().measures(sex).values()) {
      values.put(
          stats.name(),
          switch (stats.name()) {
            case STATURE -> statureMm;
            case MASS -> massKg;
            default -> stats.onStatureAndMass().at(statureMm, massKg);
          });
    }
    return values;
  }

  /** Moves every measurement to what goes with the known residuals; returns which moved. */
  private static Set<String> follow(
      Sex sex,
      Map<String, Double> values,
      Map<String, Double> known,
      double statureMm,
      double massKg) {
    Map<String, Double> shift = Residuals.of(sex).likeliest(known);
    shift.forEach((name, residual) -> values.merge(name, residual, Double::sum));
    Set<String> moved = new HashSet<>(shift.keySet());
    if (!shift.isEmpty()) {
      settleUnblocked(values, values.get("d_wristtogrip"), sex, statureMm, massKg);
      moved.add("forearmhandlength");
      moved.add("shoulderelbowlength");
    }
    return moved;
  }

  /**
   * Two columns that the derived ones read are not in the correlation block. They follow their
   * neighbours, so that wrist-to-grip and the elbow's thickness stay what the regressions say.
   */
  private static void settleUnblocked(
      Map<String, Double> values, double wristToGrip, Sex sex, double statureMm, double massKg) {
    values.put(
        "forearmhandlength",
        values.get("forearmcenterofgriplength") + values.get("handlength") - wristToGrip);
    Map<String, MeasureStats> stats = Anthropometry.survey().measures(sex);
    double upper = stats.get("acromionradialelength").onStatureAndMass().at(statureMm, massKg);
    double whole = stats.get("shoulderelbowlength").onStatureAndMass().at(statureMm, massKg);
    values.put("shoulderelbowlength", values.get("acromionradialelength") + whole - upper);
  }

  private static void check(
      Sex sex, double statureMm, double massKg, Map<String, Double> measured) {
    List<String> faults = new ArrayList<>();
    range(faults, "statureMm", statureMm, MIN_STATURE_MM, MAX_STATURE_MM, "mm");
    range(faults, "massKg", massKg, MIN_MASS_KG, MAX_MASS_KG, "kg");
    Map<String, MeasureStats> known = Anthropometry.survey().measures(sex);
    measured.forEach(
        (name, value) -> {
          MeasureStats stats = known.get(name);
          if (stats == null) {
            faults.add(
                "measured."
                    + name
                    + " is not a known measurement; did you mean "
                    + near(name, known));
          } else if (name.equals(STATURE) || name.equals(MASS)) {
            faults.add("measured." + name + " belongs in statureMm and massKg; take it out here");
          } else if (value == null) {
            faults.add("measured." + name + " needs a value in mm, got nothing");
          } else {
            double low = Math.max(0, 0.4 * Math.min(stats.min(), stats.mean()));
            double high = 2 * stats.max();
            range(faults, "measured." + name, value, low, high, stats.unit());
          }
        });
    if (!faults.isEmpty()) {
      throw new OutOfRange(String.join("\n", faults));
    }
  }

  private static void range(
      List<String> faults, String name, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      faults.add(
          String.format(
              Locale.ROOT,
              "%s must be %.0f to %.0f %s, got %s",
              name,
              low,
              high,
              unit,
              Decimals.written(value)));
    }
  }

  private static String near(String name, Map<String, MeasureStats> known) {
    return known.keySet().stream()
        .min(
            java.util.Comparator.comparingInt(other -> edits(name.toLowerCase(Locale.ROOT), other)))
        .orElse("stature");
  }

  private static int edits(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int corner = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int above = row[j];
        int change = corner + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, 1 + Math.min(above, row[j - 1]));
        corner = above;
      }
    }
    return row[b.length()];
  }

  public Sex sex() {
    return sex;
  }

  public double statureMm() {
    return values.get(STATURE);
  }

  public double massKg() {
    return values.get(MASS);
  }

  /**
   * Returns one measurement, mm (weightkg in kg).
   *
   * @throws IllegalArgumentException for a name that the survey does not have
   */
  public double get(String name) {
    Double value = values.get(name);
    if (value == null) {
      throw new OutOfRange(
          name
              + " is not a known measurement; did you mean "
              + near(name, Anthropometry.survey().measures(sex)));
    }
    return value;
  }

  /** Returns every measurement in the order of the survey file. */
  public Map<String, Double> values() {
    return values;
  }

  /** Returns what was measured on the person rather than regressed. */
  public Map<String, Double> measured() {
    return measured;
  }

  /**
   * Returns what every answer that rests on this body says of it, without a full stop; empty for a
   * body that the survey knows.
   */
  public Optional<String> doubt(String name) {
    return isDoubtful()
        ? Optional.of("the body of " + name + " is an extrapolation")
        : Optional.empty();
  }

  /** Whether nothing that follows from this body may pass outright: {@link #notes} say why. */
  public boolean isDoubtful() {
    return !notes.isEmpty();
  }

  /** Returns notes in plain words, such as a value outside the survey's range. */
  public List<String> notes() {
    return notes;
  }
}
