package org.longlow.constraints.check.rule;

import java.util.Arrays;
import java.util.List;
import org.longlow.rider.geom.PointMm;

/**
 * A convex body that may stand before a lamp, in the axes of its face: ahead, outwards and up of
 * the centre, mm.
 *
 * @param part whose body it is
 * @param opened whether the part has an opening for the lamp
 * @param rings of its corners
 * @param low the least of them, axis by axis
 * @param high the greatest
 */
record Before(String part, boolean opened, List<double[][]> rings, double[] low, double[] high) {

  /** What reaches no farther ahead than this stands beside a lamp, not before it, mm. */
  static final double BESIDE_MM = 0.1;

  /** A part farther before a lamp than this is not what the lamp is let into, mm. */
  static final double DEEPEST_MM = 100;

  private static final double FINE_MM = 0.05;

  static Before of(String part, boolean opened, List<double[][]> rings) {
    double[] low = new double[3];
    double[] high = new double[3];
    Arrays.fill(low, Double.POSITIVE_INFINITY);
    Arrays.fill(high, Double.NEGATIVE_INFINITY);
    for (double[][] ring : rings) {
      for (double[] c : ring) {
        for (int k = 0; k < 3; k++) {
          low[k] = Math.min(low[k], c[k]);
          high[k] = Math.max(high[k], c[k]);
        }
      }
    }
    return new Before(part, opened, rings, low, high);
  }

  /**
   * Whether its box may stand between the rays of a point of the face.
   *
   * @param fall how far the lowest ray falls for each mm ahead
   * @param rise how far the highest ray rises likewise
   */
  boolean mayHide(double ahead, double out, double up, double fall, double rise) {
    if (!(high[0] > ahead + BESIDE_MM)) {
      return false;
    }
    double far =
        PointMm.norm(high[0] - ahead, Math.max(Math.abs(low[1] - out), Math.abs(high[1] - out)));
    return low[2] - up <= rise * far && high[2] - up >= -fall * far;
  }

  /** The least angle to a side at which its box may stand; more than a right angle if nowhere. */
  double leastRad(int side, double ahead, double out) {
    double from = side > 0 ? low[1] - out : out - high[1];
    double to = side > 0 ? high[1] - out : out - low[1];
    return to < 0 ? Math.PI : Math.atan2(Math.max(0, from), high[0] - ahead);
  }

  /** Whether its box may stand straight ahead of a point of the face. */
  boolean mayHold(double out, double up) {
    return low[0] < DEEPEST_MM && low[1] <= out && high[1] >= out && low[2] <= up && high[2] >= up;
  }

  Tangents from(double ahead, double out, double up) {
    return Tangents.of(rings, new double[] {ahead, out, up});
  }

  /**
   * How far before a point of the face it ends, straight ahead, mm; 0 if that is not beyond a place
   * that far ahead already.
   */
  double endMm(double out, double up, double beyondMm) {
    double inside = 0;
    double outside = DEEPEST_MM;
    if (!from(beyondMm, out, up).straightAhead()) {
      return 0;
    }
    while (outside - inside > FINE_MM) {
      double middle = (inside + outside) / 2;
      if (middle <= beyondMm || from(middle, out, up).straightAhead()) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return outside;
  }
}
