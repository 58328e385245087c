package org.longlow.rider.pose;

import org.longlow.rider.geom.PointMm;

/**
 * Where the eyes of people of one stature and mass are who sit alike: an ellipse about the eye of
 * the middle one, one standard deviation along the trunk and one across it. A line that touches it
 * enlarged {@link #TANGENT} times has 95 of 100 eyes on one side.
 *
 * @param eye its centre, mm
 * @param alongRad direction of its first axis, rad
 * @param alongMm standard deviation along it, mm, &gt; 0
 * @param acrossMm square to it, mm, &gt; 0
 */
public record EyeEllipse(PointMm eye, double alongRad, double alongMm, double acrossMm) {

  /** Standard deviations that leave 5 in 100 beyond: of the normal distribution. */
  public static final double TANGENT = 1.6448536269514722;

  /** Standard deviation of how people hold their heads, along and across, mm; judgement. */
  public static final double HELD_MM = 10;

  public EyeEllipse {
    if (!(alongMm > 0 && acrossMm > 0 && alongMm < 1e4 && acrossMm < 1e4)) {
      throw new IllegalArgumentException(
          "an eye ellipse needs axes above 0 to 10000 mm, got " + alongMm + " and " + acrossMm);
    }
  }

  /**
   * Returns where a line through a point touches the enlarged ellipse, on the side of the lowest
   * eyes or of the highest ones; the eye itself where the point lies within.
   *
   * <p>In units of the axes the ellipse is a circle of radius k about the origin, and the point c
   * lies outside: the line touches at k (cos(γ ± η), sin(γ ± η)), γ the direction of c, η = acos(k
   * / |c|).
   *
   * @param ahead a point ahead of the eye
   * @param lowest whether the lowest eyes are asked for, from which the point stands highest
   */
  public PointMm touching(PointMm ahead, boolean lowest) {
    PointMm c = ahead.minus(eye).turned(-alongRad);
    PointMm unit = new PointMm(c.x() / alongMm, c.z() / acrossMm);
    double far = unit.length();
    if (!(far > TANGENT)) {
      return eye;
    }
    double turn = Math.acos(TANGENT / far);
    PointMm a = at(unit.angleRad() + turn);
    PointMm b = at(unit.angleRad() - turn);
    return elevation(a, ahead) > elevation(b, ahead) == lowest ? a : b;
  }

  private PointMm at(double angleRad) {
    PointMm unit = PointMm.unit(angleRad).times(TANGENT);
    return eye.plus(new PointMm(unit.x() * alongMm, unit.z() * acrossMm).turned(alongRad));
  }

  private static double elevation(PointMm from, PointMm to) {
    return Math.atan2(to.z() - from.z(), to.x() - from.x());
  }
}
