package org.longlow.constraints.place;

import java.util.List;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.rider.geom.PointMm;

/** The image of a point across the line through two others, with its slopes. */
final class MirroredPoint {

  private MirroredPoint() {}

  static Pt of(Pt p, Pt a, Pt b) {
    List<Quantity> inputs = List.of(p.x(), p.z(), a.x(), a.z(), b.x(), b.z());
    return new Pt(Composed.of(inputs, coordinate(0)), Composed.of(inputs, coordinate(1)));
  }

  /** u = p x, z, a x, z, b x, z. */
  private static Composed coordinate(int i) {
    return new Composed() {
      @Override
      public double value(double[] u) {
        PointMm there =
            new PointMm(u[0], u[1]).mirrored(new PointMm(u[2], u[3]), new PointMm(u[4], u[5]));
        return i == 0 ? there.x() : there.z();
      }

      @Override
      public double[] slopes(double[] u) {
        return MirroredPoint.slopes(u, i);
      }
    };
  }

  /** Of a + 2 (w·d / d·d) d - w with w = p - a and d = b - a. */
  private static double[] slopes(double[] u, int i) {
    double[] w = {u[0] - u[2], u[1] - u[3]};
    double[] d = {u[4] - u[2], u[5] - u[3]};
    double square = d[0] * d[0] + d[1] * d[1];
    double[] slopes = new double[6];
    if (square == 0) {
      slopes[i] = 1;
      return slopes;
    }
    double share = (w[0] * d[0] + w[1] * d[1]) / square;
    for (int k = 0; k < 2; k++) {
      double same = i == k ? 1 : 0;
      double byW = 2 * d[i] * d[k] / square - same;
      double byD = 2 * (d[i] * (w[k] - 2 * share * d[k]) / square + share * same);
      slopes[k] = byW;
      slopes[2 + k] = same - byW - byD;
      slopes[4 + k] = byD;
    }
    return slopes;
  }
}
