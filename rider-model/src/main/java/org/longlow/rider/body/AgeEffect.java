package org.longlow.rider.body;

/**
 * What age changes in a body of one stature and mass, as far as the survey shows it: men's bellies
 * grow deeper. Of women no such figure is at hand, and nothing else is changed.
 */
public final class AgeEffect {

  /** Youngest and oldest of the survey, years. */
  public static final double YOUNGEST = 17;

  public static final double OLDEST = 58;

  /** The measure that age changes. */
  static final String ON = "abdominalextensiondepthsitting";

  /**
   * Depth of the belly by age, beside stature and mass, mm a decade, 4082 men of 17 to 58 years of
   * ANSUR II; transcribed from a summary of the survey, not worked out here again.
   */
  public static final double BELLY_MM_A_DECADE_MALE = 7.8;

  /** Mean age of the survey's men, years: at this age the regression is as without an age. */
  public static final double MEAN_YEARS_MALE = 30.2;

  private AgeEffect() {}

  /**
   * Returns how much deeper the belly is than at the mean age of the survey, mm; beyond the ages of
   * the survey as at its ends.
   */
  public static double mm(Sex sex, double years) {
    double held = Math.max(YOUNGEST, Math.min(OLDEST, years));
    return sex == Sex.MALE ? BELLY_MM_A_DECADE_MALE * (held - MEAN_YEARS_MALE) / 10 : 0;
  }
}
