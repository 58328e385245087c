package org.longlow.rider.effort;

import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.Push;

/**
 * Air that comes from ahead, and what it pushes on heads and limbs: pressure of the stream times
 * drag coefficient times what of them stands over, under or between what is ahead, as if its shadow
 * reached straight back. A real wake is neither so sharp nor so level, so this is an estimate. On
 * the trunk it presses the rider into the back and is left out.
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
        // an ellipse in a box as high and broad
        yield push(p.headCentre(), p.headCentre(), r, 0.5 * Math.PI * half, HEAD_DRAG);
      }
      case UPPER_ARM -> limb(p.shoulder(), p.elbow(), new Figure(body, p).arms().thick().elbowMm());
      case FOREARM -> limb(p.elbow(), p.grip(), new Figure(body, p).arms().thick().wristMm());
      case SHANK ->
          limb(p.knee(), p.ankle(), body.measures().get("calfcircumference") / (2 * Math.PI));
      default -> new Push(p.hip(), PointMm.ORIGIN);
    };
  }

  private Push limb(PointMm from, PointMm to, double radius) {
    return push(from, to, radius, 4 * radius, LIMB_DRAG);
  }

  /**
   * Returns the push on what reaches from one point to another.
   *
   * @param broadMm how broad it is, both of a pair together
   */
  private Push push(PointMm from, PointMm to, double radius, double broadMm, double drag) {
    double top = Math.max(from.z(), to.z()) + radius;
    double low = Math.min(from.z(), to.z()) - radius;
    Shade.Open open = shade.open(Math.max(from.x(), to.x()) + radius, low, top);
    double force = pressurePa() * drag * open.mm() * broadMm / MM2_PER_M2;
    return new Push(
        new PointMm(0.5 * (from.x() + to.x()), open.middleMm()), new PointMm(-force, 0));
  }
}
