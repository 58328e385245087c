package org.longlow.rider.body;

/**
 * One measurement of one sex in the survey.
 *
 * @param name column name of the survey; {@code d_...} is arithmetic on other columns
 * @param label plain name
 * @param unit mm or kg
 * @param formula how a {@code d_...} measurement follows from others, empty otherwise
 * @param n persons measured
 * @param mean in {@code unit}
 * @param sd sample standard deviation
 * @param min least value seen
 * @param max greatest value seen
 * @param skew skewness, 1
 * @param percentiles at {@link #PERCENTS}
 * @param onStatureAndMass regression on stature and mass; null for stature and mass themselves
 * @param onStature regression on stature alone; null for stature itself
 */
public record MeasureStats(
    String name,
    String label,
    String unit,
    String formula,
    int n,
    double mean,
    double sd,
    double min,
    double max,
    double skew,
    Percentiles percentiles,
    Regression onStatureAndMass,
    Regression onStature) {

  /** Percentiles that the survey file carries, in the unit of the measurement. */
  public record Percentiles(
      double p1, double p5, double p25, double p50, double p75, double p95, double p99) {}

  /**
   * An ordinary least-squares line.
   *
   * @param intercept in the unit of the measurement
   * @param perMm per mm of stature
   * @param perKg per kg of body mass; 0 for a line on stature alone
   * @param r2 share of the variance explained, 1
   * @param residualSd what is left unexplained, in the unit of the measurement
   */
  public record Regression(
      double intercept, double perMm, double perKg, double r2, double residualSd) {
    public double at(double statureMm, double massKg) {
      return intercept + perMm * statureMm + perKg * massKg;
    }
  }
}
