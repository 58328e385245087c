package org.longlow.constraints.machine.chassis;

import org.longlow.constraints.machine.Values;

/**
 * Length of a roller chain over two sprockets.
 *
 * <p>Formula of ISO 606 / ISO 10823 and Machinery's Handbook (from memory); {@link #polygonLinks}
 * is the arc-and-tangent length it approximates.
 *
 * @param fewerTeeth teeth of the smaller sprocket, at least 5
 * @param moreTeeth teeth of the larger sprocket, at most 200
 * @param pitchMm chain pitch, mm, &gt; 0
 */
public record Chain(int fewerTeeth, int moreTeeth, double pitchMm) {

  /** Fewest and most teeth taken for a sprocket; beyond them a digit was probably mistyped. */
  public static final int LEAST_TEETH = 5;

  public static final int MOST_TEETH = 200;

  public Chain {
    Values.within("teeth of the smaller sprocket", fewerTeeth, LEAST_TEETH, moreTeeth);
    Values.within("teeth of the larger sprocket", moreTeeth, fewerTeeth, MOST_TEETH);
    Values.positive("chain pitch mm", pitchMm);
  }

  /** Returns a chain over sprockets given in any order. */
  public static Chain over(int teeth, int otherTeeth, double pitchMm) {
    return new Chain(Math.min(teeth, otherTeeth), Math.max(teeth, otherTeeth), pitchMm);
  }

  /** Returns the pitch radius of a sprocket, P/(2 sin(π/z)), mm. */
  public static double pitchRadiusMm(int teeth, double pitchMm) {
    Values.within("sprocket teeth", teeth, LEAST_TEETH, MOST_TEETH);
    return Values.positive("chain pitch mm", pitchMm) / (2 * Math.sin(Math.PI / teeth));
  }

  /** Returns the smallest centre distance at which the pitch circles do not overlap, mm. */
  public double leastCentreMm() {
    return pitchRadiusMm(fewerTeeth, pitchMm) + pitchRadiusMm(moreTeeth, pitchMm);
  }

  /**
   * Returns the length in links for a centre distance, before rounding.
   *
   * @param centreMm mm, at least {@link #leastCentreMm()}
   */
  public double exactLinks(double centreMm) {
    requireApart(centreMm);
    double k = (moreTeeth - fewerTeeth) / (2 * Math.PI);
    return 2 * centreMm / pitchMm + (fewerTeeth + moreTeeth) / 2.0 + k * k * pitchMm / centreMm;
  }

  /** Returns {@link #exactLinks} rounded up to an even number (an odd one needs a cranked link). */
  public int links(double centreMm) {
    // A length that is even but for rounding must not gain two links.
    return 2 * (int) Math.ceil(exactLinks(centreMm) / 2 - 1e-9);
  }

  /**
   * Returns the centre distance at which a chain of {@code links} is taut, mm.
   *
   * @throws IllegalArgumentException if the chain is too short to go round
   */
  public double centreMm(int links) {
    double k = links - (fewerTeeth + moreTeeth) / 2.0;
    double d = (moreTeeth - fewerTeeth) / (2 * Math.PI);
    double under = k * k - 8 * d * d;
    if (k <= 0 || under < 0) {
      throw Values.refused("chain links", links, "enough to go round both sprockets");
    }
    return pitchMm / 4 * (k + Math.sqrt(under));
  }

  /** Returns the arc-and-tangent length over the pitch circles, links; checks the formula. */
  public double polygonLinks(double centreMm) {
    requireApart(centreMm);
    double grow = pitchRadiusMm(moreTeeth, pitchMm) - pitchRadiusMm(fewerTeeth, pitchMm);
    double slope = Math.asin(grow / centreMm);
    return 2 * centreMm * Math.cos(slope) / pitchMm
        + fewerTeeth * (Math.PI - 2 * slope) / (2 * Math.PI)
        + moreTeeth * (Math.PI + 2 * slope) / (2 * Math.PI);
  }

  private void requireApart(double centreMm) {
    if (!(centreMm >= leastCentreMm()) || !Double.isFinite(centreMm)) {
      throw Values.refused(
          "centre distance mm", centreMm, leastCentreMm() + " (sprockets just apart) up");
    }
  }
}
