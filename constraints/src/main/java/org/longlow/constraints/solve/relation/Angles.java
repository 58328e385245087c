package org.longlow.constraints.solve.relation;

/** Directions and turns in the elevation with their derivatives. */
final class Angles {
  private Angles() {}

  /** The equal angle in (-pi, pi], rad. */
  static double wrap(double angle) {
    if (angle > -Math.PI && angle <= Math.PI) {
      return angle;
    }
    double wrapped = Math.IEEEremainder(angle, 2 * Math.PI);
    return wrapped <= -Math.PI ? wrapped + 2 * Math.PI : wrapped;
  }

  /**
   * Derivatives of {@code factor} times the direction of (dx, dz) by the ends of the line: those of
   * the tail start at {@code tail}, those of the head at {@code head}. Zeros when the line has no
   * length.
   */
  static void direction(double dx, double dz, double factor, double[] du, int tail, int head) {
    double square = dx * dx + dz * dz;
    double gx = square > 0 ? -factor * dz / square : 0;
    double gz = square > 0 ? factor * dx / square : 0;
    if (!(Math.abs(gx) < Double.MAX_VALUE) || !(Math.abs(gz) < Double.MAX_VALUE)) {
      gx = 0;
      gz = 0;
    }
    du[tail] = -gx;
    du[tail + 1] = -gz;
    du[head] = gx;
    du[head + 1] = gz;
  }

  /**
   * Signed distance of the point u[0..1] from the line u[2..3] to u[4..5], left positive; distance
   * to u[2..3] when the line has no length.
   */
  static double leftOf(double[] u, double[] du) {
    double dx = u[4] - u[2];
    double dz = u[5] - u[3];
    double px = u[0] - u[2];
    double pz = u[1] - u[3];
    double d = Math.hypot(dx, dz);
    if (!(d > 0)) {
      double r = Math.hypot(px, pz);
      if (du != null) {
        du[0] = r > 0 ? px / r : 0;
        du[1] = r > 0 ? pz / r : 0;
        du[2] = -du[0];
        du[3] = -du[1];
        du[4] = 0;
        du[5] = 0;
      }
      return r;
    }
    double cx = dx / d;
    double cz = dz / d;
    double value = cx * pz - cz * px;
    if (du != null) {
      // Moving the head turns the line; the foot of the point then moves in proportion to how far
      // along it is.
      double along = (px * cx + pz * cz) / d;
      du[0] = -cz;
      du[1] = cx;
      du[4] = along * cz;
      du[5] = -along * cx;
      du[2] = cz - du[4];
      du[3] = -cx - du[5];
    }
    return value;
  }
}
