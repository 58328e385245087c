package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.Bracket;
import org.longlow.rider.geom.PointMm;

/**
 * Ground clearance and touch-down of a machine leaning on two toroidal tyres, exact.
 *
 * <p>Wheel i has a ring radius a = R − ρ. The lowest point of a torus along the road's normal lies
 * a·cos φ + ρ below its centre (support function of circle plus sphere); a plane touching both
 * tyres fixes the pitch θ, nose up positive:
 *
 * <pre>
 *   p sin θ + (zF − zR) cos θ = (aF − aR) + (ρF − ρR)/cos φ
 *   g(φ) = cos φ [x sin θ + (z − zR) cos θ + aR] + ρR − y sin φ
 * </pre>
 *
 * Roll order: pitch about the body's y axis, then roll about the ground's forward axis, so φ is the
 * camber of both wheels with no steer. Own derivation, checked against both tori sampled as
 * surfaces.
 *
 * <p>Holds only up to the tread edge. Immutable; one instance serves any number of points, and the
 * pitch over the scan is worked out once.
 */
public final class LeanClearance {

  /** Scan step, rad. A dip narrower than this is looked for at every local minimum. */
  private static final double STEP_RAD = Math.toRadians(2);

  /**
   * One wheel in body axes.
   *
   * @param radiusMm free radius, mm, &gt; 0
   * @param sectionRadiusMm crown radius, mm, in [0, radiusMm]
   * @param centreHeightMm axle height in body axes, mm; the radius when nothing is compressed
   */
  public record Wheel(double radiusMm, double sectionRadiusMm, double centreHeightMm) {
    public Wheel {
      Values.positive("wheel radius mm", radiusMm);
      Values.within("section radius mm", sectionRadiusMm, 0, radiusMm);
      Values.finite("axle height mm", centreHeightMm);
    }

    /** A wheel standing uncompressed on the ground line. */
    public Wheel(double radiusMm, double sectionRadiusMm) {
      this(radiusMm, sectionRadiusMm, radiusMm);
    }

    double ringMm() {
      return radiusMm - sectionRadiusMm;
    }
  }

  /**
   * Where a point meets the road.
   *
   * @param touches false if the point stays clear up to the steepest roll the tyres can stand at
   * @param rollRad roll at touch-down, rad in [0, π/2); NaN if it never touches
   * @param pitchRad pitch the tyres force there, nose up positive, rad; NaN if it never touches
   */
  public record TouchDown(boolean touches, double rollRad, double pitchRad) {
    /** The answer for a point that stays clear. */
    public static final TouchDown NEVER = new TouchDown(false, Double.NaN, Double.NaN);
  }

  /**
   * The road as the machine sees it at one roll.
   *
   * @param rollRad roll, rad
   * @param pitchRad pitch the tyres force, nose up positive, rad
   * @param byX rise above the road for each mm forward in body axes
   * @param byZ rise for each mm up in body axes
   * @param byY rise for each mm to the side leaned to; negative
   * @param startMm height above the road of the body's origin
   */
  public record Road(
      double rollRad, double pitchRad, double byX, double byZ, double byY, double startMm) {

    /** Returns the height of a body point above the road, mm; negative is below it. */
    public double heightMm(double xMm, double yMm, double zMm) {
      return startMm + byX * xMm + byZ * zMm + byY * yMm;
    }
  }

  /**
   * Returns the road at one roll, without the tables that many points need.
   *
   * @param rollRad rad, in [0, {@link #steepestRollRad()}] of such a machine
   */
  public static Road road(double wheelbaseMm, Wheel front, Wheel rear, double rollRad) {
    double rise = front.centreHeightMm() - rear.centreHeightMm();
    double pitch = pitchRad(wheelbaseMm, front, rear, rise, rollRad);
    double cos = Math.cos(rollRad);
    double byZ = cos * Math.cos(pitch);
    return new Road(
        rollRad,
        pitch,
        cos * Math.sin(pitch),
        byZ,
        -Math.sin(rollRad),
        cos * rear.ringMm() + rear.sectionRadiusMm() - byZ * rear.centreHeightMm());
  }

  private final double wheelbaseMm;
  private final Wheel front;
  private final Wheel rear;
  private final double rise;
  private final double steepestRad;
  private final int steps;
  private final double[] cosRoll;
  private final double[] sinRoll;
  private final double[] cosPitch;
  private final double[] sinPitch;

  /**
   * Describes the two wheels.
   *
   * @param wheelbaseMm distance between the axles along x, mm, &gt; 0
   */
  public LeanClearance(double wheelbaseMm, Wheel front, Wheel rear) {
    this.wheelbaseMm = Values.positive("wheelbase mm", wheelbaseMm);
    this.front = front;
    this.rear = rear;
    this.rise = front.centreHeightMm() - rear.centreHeightMm();
    this.steepestRad = steepestRollRad(wheelbaseMm, front, rear);
    this.steps = Math.max(2, (int) Math.ceil(steepestRad / STEP_RAD));
    cosRoll = new double[steps + 1];
    sinRoll = new double[steps + 1];
    cosPitch = new double[steps + 1];
    sinPitch = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      double roll = roll(i);
      double pitch = pitchRad(roll);
      cosRoll[i] = Math.cos(roll);
      sinRoll[i] = Math.sin(roll);
      cosPitch[i] = Math.cos(pitch);
      sinPitch[i] = Math.sin(pitch);
    }
  }

  /**
   * Returns the steepest roll at which one plane still touches both tyres, rad, at most π/2:
   * unequal sections make the pitch run away near 90 deg.
   *
   * @param wheelbaseMm distance between the axles along x, mm, &gt; 0
   */
  public static double steepestRollRad(double wheelbaseMm, Wheel front, Wheel rear) {
    double span = PointMm.norm(wheelbaseMm, front.centreHeightMm() - rear.centreHeightMm());
    if (Math.abs(front.radiusMm() - rear.radiusMm()) >= span) {
      throw Values.refused(
          "wheelbase mm", wheelbaseMm, "longer than the difference of the wheel radii");
    }
    double ring = front.ringMm() - rear.ringMm();
    double section = front.sectionRadiusMm() - rear.sectionRadiusMm();
    if (section == 0) {
      return Math.PI / 2;
    }
    double cos = section > 0 ? section / (span - ring) : -section / (span + ring);
    return Math.acos(Math.min(1, cos)) * (1 - 1e-12);
  }

  /** Returns {@link #steepestRollRad(double, Wheel, Wheel)} of this machine. */
  public double steepestRollRad() {
    return steepestRad;
  }

  /**
   * Returns the pitch that the tyres force on the machine at a roll angle, nose up positive, rad.
   *
   * @param rollRad rad, in [0, {@link #steepestRollRad()}]
   */
  public double pitchRad(double rollRad) {
    Values.withinRad("roll", rollRad, 0, steepestRad);
    return pitchRad(wheelbaseMm, front, rear, rise, rollRad);
  }

  private static double pitchRad(
      double wheelbaseMm, Wheel front, Wheel rear, double rise, double rollRad) {
    double section = front.sectionRadiusMm() - rear.sectionRadiusMm();
    double needed =
        front.ringMm() - rear.ringMm() + (section == 0 ? 0 : section / Math.cos(rollRad));
    double share = Math.max(-1, Math.min(1, needed / PointMm.norm(wheelbaseMm, rise)));
    return Math.asin(share) - Math.atan2(rise, wheelbaseMm);
  }

  /**
   * Returns the height of a body point above the road at a roll angle, mm; negative is below it.
   *
   * @param xMm forward of the rear axle, mm
   * @param yMm to the side leaned to, mm
   * @param zMm height in body axes, mm
   * @param rollRad rad, in [0, {@link #steepestRollRad()}]
   */
  public double clearanceMm(double xMm, double yMm, double zMm, double rollRad) {
    double pitch = pitchRad(rollRad);
    return clearance(
        xMm, yMm, zMm, Math.cos(rollRad), Math.sin(rollRad), Math.cos(pitch), Math.sin(pitch));
  }

  private double clearance(
      double x,
      double y,
      double z,
      double cosRoll,
      double sinRoll,
      double cosPitch,
      double sinPitch) {
    return cosRoll * (x * sinPitch + (z - rear.centreHeightMm()) * cosPitch + rear.ringMm())
        + rear.sectionRadiusMm()
        - y * sinRoll;
  }

  /**
   * Returns the smallest roll at which a body point meets the road; 0 if it is on or below the road
   * with the machine upright.
   *
   * @param xMm forward of the rear axle, mm
   * @param yMm to the side leaned to, mm, any sign
   * @param zMm height in body axes, mm
   */
  public TouchDown touchDown(double xMm, double yMm, double zMm) {
    Values.finite("x mm", xMm);
    Values.finite("y mm", yMm);
    Values.finite("z mm", zMm);
    double beforeLast = Double.POSITIVE_INFINITY;
    double last = at(0, xMm, yMm, zMm);
    if (last <= 0) {
      return found(0);
    }
    for (int i = 1; i <= steps + 1; i++) {
      double here = i > steps ? Double.POSITIVE_INFINITY : at(i, xMm, yMm, zMm);
      if (here <= 0) {
        return found(crossing(xMm, yMm, zMm, roll(i - 1), roll(i)));
      }
      if (last <= beforeLast && last <= here) {
        // the lowest of three, or of the two at an end: a dip may lie beside it
        double low = roll(Math.max(0, i - 2));
        double lowest = lowest(xMm, yMm, zMm, low, roll(Math.min(i, steps)));
        if (clearanceMm(xMm, yMm, zMm, lowest) <= 0) {
          return found(crossing(xMm, yMm, zMm, low, lowest));
        }
      }
      beforeLast = last;
      last = here;
    }
    return TouchDown.NEVER;
  }

  private double at(int i, double x, double y, double z) {
    return clearance(x, y, z, cosRoll[i], sinRoll[i], cosPitch[i], sinPitch[i]);
  }

  private double roll(int i) {
    return i == steps ? steepestRad : steepestRad * i / steps;
  }

  private TouchDown found(double rollRad) {
    return new TouchDown(true, rollRad, pitchRad(rollRad));
  }

  /** The roll at which a point touches that is clear at {@code low} and not at {@code high}. */
  private double crossing(double x, double y, double z, double low, double high) {
    return Bracket.root(roll -> clearanceMm(x, y, z, roll), low, high, 1e-15);
  }

  private double lowest(double x, double y, double z, double low, double high) {
    double golden = (Math.sqrt(5) - 1) / 2;
    double a = low;
    double b = high;
    for (int i = 0; i < 60; i++) {
      double c = b - golden * (b - a);
      double d = a + golden * (b - a);
      if (clearanceMm(x, y, z, c) < clearanceMm(x, y, z, d)) {
        b = d;
      } else {
        a = c;
      }
    }
    return (a + b) / 2;
  }
}
