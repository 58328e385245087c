package org.longlow.constraints.machine.chassis;

import java.util.List;
import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * A belt or chain laid taut round two discs, uncrossed: arcs and tangents over the pitch circles.
 *
 * @param oneMm radius of one, mm, &gt; 0
 * @param otherMm radius of the other, mm, &gt; 0
 */
public record BeltRun(double oneMm, double otherMm) {

  public BeltRun {
    Values.positive("pitch radius mm", oneMm);
    Values.positive("pitch radius mm", otherMm);
  }

  /**
   * Returns its length, mm.
   *
   * @param centreMm distance of the discs' centres, mm, more than their radii differ by
   */
  public double lengthMm(double centreMm) {
    double grow = Math.abs(oneMm - otherMm);
    if (!(centreMm > grow)) {
      throw Values.refused("centre distance mm", centreMm, "more than the radii differ by");
    }
    double slope = Math.asin(grow / centreMm);
    return 2 * centreMm * Math.cos(slope)
        + Math.min(oneMm, otherMm) * (Math.PI - 2 * slope)
        + Math.max(oneMm, otherMm) * (Math.PI + 2 * slope);
  }

  /** A straight stretch, from where it leaves one disc to where it meets the other. */
  public record Straight(PointMm from, PointMm to) {}

  /**
   * Returns its two straight stretches, that on the left of the way from one centre to the other
   * first.
   *
   * @param one centre of the first disc
   * @param other centre of the second, farther off than the radii differ by
   */
  public List<Straight> straights(PointMm one, PointMm other) {
    double apart = one.distance(other);
    if (!(apart > Math.abs(oneMm - otherMm))) {
      throw Values.refused("centre distance mm", apart, "more than the radii differ by");
    }
    double along = other.minus(one).angleRad();
    double open = Math.acos((oneMm - otherMm) / apart);
    return List.of(straight(one, other, along + open), straight(one, other, along - open));
  }

  private Straight straight(PointMm one, PointMm other, double normalRad) {
    PointMm out = PointMm.unit(normalRad);
    return new Straight(one.plus(out.times(oneMm)), other.plus(out.times(otherMm)));
  }

  /**
   * Returns how far the lower run can be moved up and down in its middle, all in all, with so much
   * length to spare while the upper is taut, mm: the run hangs as two straight lines.
   *
   * @param spareMm mm, &gt;= 0
   */
  public double freePlayMm(double centreMm, double spareMm) {
    double grow = oneMm - otherMm;
    double half = Math.sqrt(Math.max(0, centreMm * centreMm - grow * grow)) / 2;
    double leg = half + Values.notNegative("spare mm", spareMm) / 2;
    return 2 * Math.sqrt(Math.max(0, leg * leg - half * half));
  }
}
