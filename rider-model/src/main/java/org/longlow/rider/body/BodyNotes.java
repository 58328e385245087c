package org.longlow.rider.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What is odd about a person beside the survey, in plain words: the one place that judges it. */
final class BodyNotes {

  /** Residual standard deviations beyond which a measured value is questioned. */
  private static final double UNUSUAL_SDS = 3.5;

  /** Unit normal value exceeded by as many people as stray 3.5 SD either way, 0.047 %. */
  private static final double UNUSUAL_NORMAL = 3.31;

  private BodyNotes() {}

  /**
   * Returns what is odd about somebody.
   *
   * @param residuals of what was measured, beside what goes with stature and mass
   */
  static List<String> of(
      Sex sex,
      double statureMm,
      double massKg,
      Map<String, Double> measured,
      Map<String, Double> residuals) {
    List<String> notes = new ArrayList<>();
    Map<String, MeasureStats> known = Anthropometry.survey().measures(sex);
    note(notes, known.get("stature"), statureMm);
    note(notes, known.get("weightkg"), massKg);
    if (isOddPair(sex, statureMm, massKg)) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%.0f mm and %.1f kg together are outside the survey: the other measures are"
                  + " extrapolated, so measure this person.",
              statureMm,
              massKg));
    }
    measured.forEach(
        (name, value) -> {
          MeasureStats stats = known.get(name);
          note(notes, stats, value);
          double stray = Math.abs(residuals.get(name));
          if (stray > UNUSUAL_SDS * stats.onStatureAndMass().residualSd()) {
            notes.add(
                String.format(
                    Locale.ROOT,
                    "%s %.0f %s is %.0f %s from what is usual at this stature and mass: measure"
                        + " it again.",
                    stats.label(),
                    value,
                    stats.unit(),
                    stray,
                    stats.unit()));
          }
        });
    if (isOdd(Residuals.of(sex).oddity(residuals))) {
      notes.add(
          "The measured values together are far from what goes with one another at this stature and"
              + " mass: measure them again.");
    }
    return notes;
  }

  private static String years(double years) {
    long whole = Math.round(years);
    return whole == 1 ? "1 year" : whole + " years";
  }

  /** Returns what is odd about an age. */
  static Optional<String> age(double years) {
    double young = AgeEffect.YOUNGEST;
    double old = AgeEffect.OLDEST;
    if (years >= young && years <= old) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "Age %.0f is outside the survey (%.0f to %.0f years) by %s: children grow in"
                + " other proportions and the old shrink, so measure this person.",
            years,
            young,
            old,
            years(Math.max(young - years, years - old))));
  }

  /**
   * Whether a squared distance is beyond what one person in about 2,000 reaches: the chi-squared
   * quantile after Wilson and Hilferty 1931 (from memory), as rare as a single reading beyond 3.5
   * standard deviations.
   */
  private static boolean isOdd(Residuals.Oddity oddity) {
    double spread = 2.0 / (9 * Math.max(1, oddity.freedoms()));
    double root = 1 - spread + UNUSUAL_NORMAL * Math.sqrt(spread);
    return oddity.square() > oddity.freedoms() * root * root * root;
  }

  /** Stature and ln(mass) are close to normal in the survey. */
  private static boolean isOddPair(Sex sex, double statureMm, double massKg) {
    Anthropometry.Correlation block = Anthropometry.survey().correlation(sex);
    double a = (statureMm - block.mean()[0]) / block.sd()[0];
    double b = (Math.log(massKg) - block.lnMassMean()) / block.lnMassSd();
    double r = block.lnMassStature();
    return isOdd(new Residuals.Oddity((a * a - 2 * r * a * b + b * b) / (1 - r * r), 2));
  }

  private static void note(List<String> notes, MeasureStats stats, double value) {
    double by = Math.max(stats.min() - value, value - stats.max());
    if (by > 0) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%s %.1f %s is outside the survey (%.1f to %.1f %s) by %.1f %s: the other measures"
                  + " are extrapolated, so measure this person.",
              stats.label(),
              value,
              stats.unit(),
              stats.min(),
              stats.max(),
              stats.unit(),
              by,
              stats.unit()));
    }
  }
}
