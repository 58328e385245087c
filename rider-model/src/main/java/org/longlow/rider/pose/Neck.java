package org.longlow.rider.pose;

import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/**
 * Neck and head of a body over the end of its thorax.
 *
 * <p>A trunk that leans on a back lies along it, hip and shoulder as the survey has them, whatever
 * the bow of the spine between them ({@link SpineJoints}). What the head is turned against that
 * line is made above it, in joints that share it as their ranges of motion do: {@link #SHARE} in
 * the neck, the rest between skull and neck. Erect, with the head level, nothing is turned and
 * joints are where the survey has them.
 *
 * <p>Held against the height of drivers' eyes over the H-point (UN R46: 635 mm at 25°; UN R125,
 * table of other back angles 5 to 40°, from memory) this is 11 mm out (rms, level gaze as {@link
 * HeadSolver#gazePitch} has it), a head that turns in one piece about C7 42 mm. Drivers hold their
 * eyes some 90 mm farther ahead of the hip than this, as they lean off their seat backs.
 *
 * @param foot end of the thorax, at the height of the acromion, mm
 * @param reclineRad of the trunk line, rearward positive, rad
 */
public record Neck(Body body, PointMm foot, double reclineRad) {

  /**
   * What the neck takes of a turn between trunk and head; the joints of skull, C1 and C2 take the
   * rest. White and Panjabi 1990, <i>Clinical Biomechanics of the Spine</i>, representative ranges
   * of flexion with extension: C2 to T1 91°, skull to C2 45°; from memory.
   */
  static final double SHARE = 91.0 / 136;

  private static final int MOST_STEPS = 30;
  private static final double TINY_MM = 1e-11;

  /** Returns the neck over a trunk. */
  public static Neck of(Body body, PointMm hip, double reclineRad) {
    PointMm up = new PointMm(-Math.sin(reclineRad), Math.cos(reclineRad));
    return new Neck(body, hip.plus(up.times(body.hipToShoulderMm())), reclineRad);
  }

  /** Returns how far the neck leans back from where it is erect, rad. */
  static double leanRad(double reclineRad, double headPitchRad) {
    return reclineRad + SHARE * (headPitchRad - reclineRad);
  }

  /** Returns the spine of C7 while the head is held at a pitch. */
  PointMm base(double pitchRad) {
    return foot.plus(body.spine().neckBase().turned(leanRad(reclineRad, pitchRad)));
  }

  /** Returns the joint of skull and neck. */
  PointMm occiput(double pitchRad) {
    return foot.plus(body.spine().occiput().turned(leanRad(reclineRad, pitchRad)));
  }

  /**
   * Returns where a point of the head is.
   *
   * @param ofHead from C7 while erect, as {@link Body#head} has it
   */
  public PointMm head(PointMm ofHead, double pitchRad) {
    return occiput(pitchRad).plus(onSkull(ofHead).turned(pitchRad));
  }

  private PointMm onSkull(PointMm ofHead) {
    return ofHead.plus(body.spine().neckBase()).minus(body.spine().occiput());
  }

  /** Returns the gap between helmet and a surface at a pitch, mm; negative when pressed in. */
  public double gapMm(double pitchRad, PointMm surface, PointMm normal) {
    return normal.dot(head(body.head().centre(), pitchRad).minus(surface)) - body.head().radiusMm();
  }

  /**
   * Returns the pitch at which the helmet touches a surface behind it, or NaN if it cannot.
   *
   * <p>Newton's method from where head and neck would touch in one piece; touching is where raising
   * the nose further presses the helmet in.
   *
   * @param normal unit vector off the surface, towards the head
   */
  public double pitchTouching(PointMm surface, PointMm normal) {
    PointMm neck = body.spine().occiput();
    PointMm skull = onSkull(body.head().centre());
    PointMm whole = neck.plus(skull);
    double need = body.head().radiusMm() - normal.dot(foot.minus(surface));
    double cos = Math.max(-1, Math.min(1, need / whole.length()));
    double pitch =
        Math.IEEEremainder(Math.acos(cos) - whole.angleRad() + normal.angleRad(), 2 * Math.PI);
    for (int step = 0; step < MOST_STEPS; step++) {
      PointMm turned = neck.turned(leanRad(reclineRad, pitch));
      PointMm held = skull.turned(pitch);
      double gap = normal.dot(turned.plus(held)) - need;
      double slope = normal.dot(turned.left().times(SHARE).plus(held.left()));
      if (Math.abs(gap) < TINY_MM) {
        return slope < 0 ? pitch : Double.NaN;
      }
      double by = -gap / slope;
      pitch += Math.max(-0.5, Math.min(0.5, by));
      if (Math.abs(by) < 1e-15) {
        return slope < 0 ? pitch : Double.NaN;
      }
    }
    return Double.NaN;
  }
}
