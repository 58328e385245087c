package org.longlow.constraints.machine.chassis;

import org.longlow.constraints.machine.Values;

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
