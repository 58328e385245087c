package org.longlow.rider.pose;

import org.longlow.rider.geom.OutOfRange;

/**
 * How wide a mirror shows, for one eye on its axis: 2 atan(w / 2 d) where it is flat; where it is
 * bulged to a radius R the image of the eye lies d_i behind the glass, 1 / d_i = 2 / R + 1 / d, and
 * the angle is 2 atan(w / 2 d_i).
 */
public final class MirrorField {

  private MirrorField() {}

  /**
   * Returns the angle that it shows, rad.
   *
   * @param widthMm of the glass, mm, &gt; 0
   * @param eyeMm distance of the eye, mm, &gt; 0
   * @param radiusMm that it is bulged to, mm, &gt; 0; infinite where it is flat
   */
  public static double angleRad(double widthMm, double eyeMm, double radiusMm) {
    if (!(widthMm > 0 && eyeMm > 0 && radiusMm > 0)) {
      throw new OutOfRange(
          "a mirror needs width, distance of the eye and radius above 0 mm, got "
              + widthMm
              + ", "
              + eyeMm
              + ", "
              + radiusMm);
    }
    double image = 1 / (2 / radiusMm + 1 / eyeMm);
    return 2 * Math.atan(widthMm / (2 * image));
  }
}
