package org.longlow.rider.effort;

import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.Push;

/**
 * Air that comes from ahead, and what it pushes on heads and limbs: pressure of the stream times
 * drag coefficient times what of them stands over, under, beside or between what is ahead, as if
 * its shadow reached straight back. A real wake is neither so sharp nor so level, so this is an
 * estimate. On the trunk it presses the rider into the back and is left out.
 *
 * @param speedMs m/s, &ge; 0
 * @param shade what shelters
 */
public record Wind(double speedMs, Shade shade) {

  /** No wind. */
  public static final Wind STILL = new Wind(0, Shade.NONE);

  /** Air at sea level and 15 °C, kg/m³ (ISO 2533). */
  public static final double AIR_KG_M3 = 1.225;

  /** Drag coefficient of a head in its helmet; from memory (0.4 to 0.5). */
  public static final double HEAD_DRAG = 0.5;

  /**
   * Drag coefficient of a limb, as of a long cylinder across the stream; from memory (1.0 to 1.2).
   */
  public static final double LIMB_DRAG = 1.1;

  private static final double MM2_PER_M2 = 1e6;

  /** Returns the pressure of the stream, Pa: ρ v² / 2. */
  public double pressurePa() {
    return 0.5 * AIR_KG_M3 * speedMs * speedMs;
  }

  /** Returns what it pushes on a segment, both of a pair; nothing on hands, feet and trunk. */
  public Push on(Segment segment, Body body, Posture p) {
    return switch (segment) {
      case HEAD -> {
        double r = body.head().radiusMm();
        double half = 0.5 * body.measures().get("headbreadth") + body.gear().helmetMm();
        Shade.Open open =
            shade.open(
                p.headCentre().x() + r,
                p.headCentre().z() - r,
                p.headCentre().z() + r,
                -half,
                half);
        // an ellipse in a box as high and broad
        yield push(p.headCentre().x(), open, 0.5 * Math.PI * half, HEAD_DRAG);
      }
      case UPPER_ARM ->
          limb(
              p.shoulder(),
              p.elbow(),
              new Figure(body, p).arms().thick().elbowMm(),
              p.across().shoulderMm(),
              p.across().elbowMm());
      case FOREARM ->
          limb(
              p.elbow(),
              p.grip(),
              new Figure(body, p).arms().thick().wristMm(),
              p.across().elbowMm(),
              p.across().gripMm());
      case SHANK ->
          limb(
              p.knee(),
              p.ankle(),
              body.measures().get("calfcircumference") / (2 * Math.PI),
              p.across().kneeMm(),
              p.across().ankleMm());
      default -> new Push(p.hip(), PointMm.ORIGIN);
    };
  }

  /**
   * Returns the push on a pair of limbs, each as far open to the wind as that of them which is more
   * so: torques are those of one side, and a screen at one side shelters one.
   *
   * @param fromYMm how far out it begins, mm
   * @param toYMm how far out it ends, mm
   */
  private Push limb(PointMm from, PointMm to, double radius, double fromYMm, double toYMm) {
    double x = Math.max(from.x(), to.x()) + radius;
    double low = Math.min(from.z(), to.z()) - radius;
    double high = Math.max(from.z(), to.z()) + radius;
    double inner = Math.min(fromYMm, toYMm) - radius;
    double outer = Math.max(fromYMm, toYMm) + radius;
    Shade.Open left = shade.open(x, low, high, inner, outer);
    Shade.Open right = shade.open(x, low, high, -outer, -inner);
    return push(
        0.5 * (from.x() + to.x()), left.mm() > right.mm() ? left : right, 4 * radius, LIMB_DRAG);
  }

  /**
   * Returns the push on what is open.
   *
   * @param broadMm how broad it is, both of a pair together
   */
  private Push push(double xMm, Shade.Open open, double broadMm, double drag) {
    double force = pressurePa() * drag * open.mm() * broadMm / MM2_PER_M2;
    return new Push(new PointMm(xMm, open.middleMm()), new PointMm(-force, 0));
  }
}
