package org.longlow.rider.pose;

import org.longlow.rider.geom.OutOfRange;

/**
 * Where knees, feet and hands are sideways; the side view does not tell.
 *
 * @param kneeHalfMm middle plane to the middle of each knee (knee splay), mm, in [0, 600]
 * @param footHalfMm middle plane to the middle of each foot, mm, in [0, 800]
 * @param gripHalfMm middle plane to the middle of each grip, mm, in [0, 800]
 */
public record RiderWidth(double kneeHalfMm, double footHalfMm, double gripHalfMm) {

  /** A feet-forward seat with pegs outside a narrow body; judgement. */
  public static final RiderWidth DEFAULT = new RiderWidth(190, 230, 330);

  public RiderWidth {
    check("kneeHalfMm", kneeHalfMm, 600);
    check("footHalfMm", footHalfMm, 800);
    check("gripHalfMm", gripHalfMm, 800);
  }

  private static void check(String name, double value, double high) {
    if (!(value >= 0 && value <= high)) {
      throw new OutOfRange(name + " must be 0 to " + high + " mm, got " + value);
    }
  }
}
