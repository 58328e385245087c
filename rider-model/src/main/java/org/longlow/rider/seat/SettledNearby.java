package org.longlow.rider.seat;

import org.locationtech.jts.math.Matrix;
import org.longlow.rider.body.Body;
import org.longlow.rider.pose.HeadSolver;

/**
 * A settled person on seats a little apart from theirs, without settling anew.
 *
 * <p>The sinks s on a seat g are where a round of work changes nothing, c(s, g) = 0. On a seat near
 * by they are taken one Newton step on, s − (∂c/∂s)⁻¹ c(s, g'): right to first order, so that
 * differences over a small move of a pin give exact slopes (implicit function theorem). For one
 * thread.
 */
public final class SettledNearby {

  private static final double STEP_MM = 1e-3;

  private final Settling settled;
  private final double[] state;
  private final double[][] slope;

  private SettledNearby(Settling settled) {
    this.settled = settled;
    state = settled.state();
    int n = state.length;
    slope = new double[n][n];
    for (int j = 0; j < n; j++) {
      double[] more = changeBeside(j, STEP_MM);
      double[] less = changeBeside(j, -STEP_MM);
      for (int i = 0; i < n; i++) {
        slope[i][j] = (more[i] - less[i]) / (2 * STEP_MM);
      }
    }
  }

  /**
   * Prepares.
   *
   * @param seat the seat that {@code outcome} is the outcome of, at ease
   */
  public static SettledNearby of(Body body, SeatGeometry seat, SeatOutcome.Seated outcome) {
    Settling settling = new Settling(body, seat, SettleOptions.DEFAULT, outcome.headOnRest());
    settling.run();
    return new SettledNearby(settling);
  }

  private double[] changeBeside(int sink, double by) {
    double[] beside = state.clone();
    beside[sink] += by;
    return new Settling(settled, settled.seat).changeAt(beside);
  }

  /**
   * Returns hip, trunk and head on a seat near by.
   *
   * @param near the same seat with pins moved by far less than a millimetre
   */
  public TrunkPose on(SeatGeometry near) {
    Settling there = new Settling(settled, near);
    double[] change = there.changeAt(state);
    double[][] a = new double[slope.length][];
    for (int i = 0; i < a.length; i++) {
      a[i] = slope[i].clone();
    }
    double[] step = Matrix.solve(a, change);
    if (step != null) {
      double[] next = state.clone();
      for (int i = 0; i < next.length; i++) {
        next[i] -= step[i];
      }
      there.hold(next);
    }
    double pitch = there.leaning ? there.headPitch() : Double.NaN;
    return new TrunkPose(
        there.hip(),
        there.recline(),
        Double.isNaN(pitch) ? HeadSolver.gazePitch(there.recline()) : pitch);
  }
}
