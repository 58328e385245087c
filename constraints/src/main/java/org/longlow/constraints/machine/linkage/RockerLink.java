package org.longlow.constraints.machine.linkage;

import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * A rocker (bell crank) that a rod turns: with what carries the rod and what carries the rocker it
 * is a four-bar loop.
 *
 * <p>Where the rod meets the rocker follows from the circles about the other ends of both, on the
 * side on which it is drawn; the loop is closed for the rod's length, as in Freudenstein's
 * equation.
 *
 * @param pivot what the rocker turns about, as drawn
 * @param rod where the rod hangs on the rocker, as drawn
 * @param end the other end of the rod, as drawn
 */
public record RockerLink(PointMm pivot, PointMm rod, PointMm end) {

  /** Shortest lever and rod taken, mm. */
  private static final double LEAST_MM = 1e-6;

  /** Rod and lever lie in line as drawn where the sine between them is less. */
  private static final double IN_LINE = 1e-9;

  public RockerLink {
    if (!turns(pivot, rod, end)) {
      throw new OutOfRange("rod and lever of the rocker lie in line as drawn; move a pin");
    }
  }

  /** Returns whether a rod turns a rocker drawn so: they have length, and do not lie in line. */
  public static boolean turns(PointMm pivot, PointMm rod, PointMm end) {
    double lever = pivot.distance(rod);
    double length = end.distance(rod);
    return lever > LEAST_MM
        && length > LEAST_MM
        && Math.abs(rod.minus(pivot).cross(end.minus(rod))) > IN_LINE * lever * length;
  }

  /**
   * Returns whether rod and lever still meet.
   *
   * @param pivotNow where the pivot is
   * @param endNow where the other end of the rod is
   */
  public boolean reaches(PointMm pivotNow, PointMm endNow) {
    double apart = pivotNow.distance(endNow);
    double lever = pivot.distance(rod);
    double length = rod.distance(end);
    return apart < lever + length && apart > Math.abs(lever - length);
  }

  /**
   * Returns how the rocker has moved from where it is drawn; where rod and lever do not reach, both
   * lie in line.
   */
  public RigidMotion motion(PointMm pivotNow, PointMm endNow) {
    double lever = pivot.distance(rod);
    double length = rod.distance(end);
    PointMm across = endNow.minus(pivotNow);
    double apart = Math.max(across.length(), LEAST_MM);
    double cos = (lever * lever + apart * apart - length * length) / (2 * lever * apart);
    double open = Math.acos(Math.max(-1, Math.min(1, cos)));
    double side = Math.signum(end.minus(pivot).cross(rod.minus(pivot)));
    double turn = across.angleRad() + side * open - rod.minus(pivot).angleRad();
    return RigidMotion.taking(pivot, pivotNow, Math.IEEEremainder(turn, 2 * Math.PI));
  }
}
