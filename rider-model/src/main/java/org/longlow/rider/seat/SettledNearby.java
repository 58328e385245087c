package org.longlow.rider.seat;

import java.util.Arrays;
import org.locationtech.jts.math.Matrix;
import org.longlow.rider.pose.HeadSolver;

/**
 * A settled person, and the same person on seats a little apart, without settling anew.
 *
 * <p>The sinks s on a seat g are where a round of work changes nothing, c(s, g) = 0. On a seat near
 * by they are taken one Newton step on, s − (∂c/∂s)⁻¹ c(s, g'): right to first order, so that
 * differences over a small move of a pin give exact slopes (implicit function theorem). Safe for
 * several threads.
 */
public final class SettledNearby {

  private static final double STEP_MM = 1e-3;

  private final Settling settled;
  private final double[] state;
  private volatile double[][] inverse;

  SettledNearby(Settling settled) {
    this.settled = settled;
    state = settled.state();
  }

  /** Returns where the person is. */
  public TrunkPose here() {
    return pose(settled);
  }

  /**
   * Returns hip, trunk and head on a seat near by.
   *
   * @param near the same seat with pins moved by far less than a millimetre
   */
  public TrunkPose on(SeatGeometry near) {
    Settling there = new Settling(settled, near);
    double[] change = there.changeAt(state);
    double[] next = state.clone();
    for (int i = 0; i < next.length; i++) {
      for (int j = 0; j < next.length; j++) {
        next[i] -= inverse()[i][j] * change[j];
      }
    }
    there.hold(next);
    return pose(there);
  }

  /** Settles on another seat, starting here; null if that leads nowhere or the head cannot lean. */
  Settling settle(SeatGeometry other) {
    Settling there = new Settling(settled, other);
    return there.runFrom(state, inverse()) ? there : null;
  }

  private static TrunkPose pose(Settling at) {
    Seating there = at.at();
    double pitch = at.fit().leaning() ? there.headPitch() : Double.NaN;
    return new TrunkPose(
        there.hip(),
        there.recline(),
        Double.isNaN(pitch) ? HeadSolver.gazePitch(there.recline()) : pitch);
  }

  /**
   * Inverse of the slope of a round's change by the sinks; what cannot be told is a plain round's.
   */
  private double[][] inverse() {
    if (inverse == null) {
      int n = state.length;
      double[][] slope = new double[n][n];
      for (int j = 0; j < n; j++) {
        double[] more = changeBeside(j, STEP_MM);
        double[] less = changeBeside(j, -STEP_MM);
        for (int i = 0; i < n; i++) {
          slope[i][j] = (more[i] - less[i]) / (2 * STEP_MM);
        }
      }
      inverse = inverse(slope);
    }
    return inverse;
  }

  private double[] changeBeside(int sink, double by) {
    double[] beside = state.clone();
    beside[sink] += by;
    return new Settling(settled, settled.fit().seat()).changeAt(beside);
  }

  private static double[][] inverse(double[][] slope) {
    int n = slope.length;
    double[][] inverse = new double[n][n];
    for (int j = 0; j < n; j++) {
      double[] unit = new double[n];
      unit[j] = 1;
      double[] column =
          Matrix.solve(Arrays.stream(slope).map(double[]::clone).toArray(double[][]::new), unit);
      for (int i = 0; i < n; i++) {
        inverse[i][j] = column == null ? -unit[i] : column[i];
      }
    }
    return inverse;
  }
}
