package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.effort.Wind;
import org.longlow.rider.geom.PointMm;

/**
 * What wind on the side does to the steering and the balance; ISO axes, sideways force positive to
 * the left.
 *
 * <p>Because the steering axis leans back, ahead of it and above it are the same side. A force
 * there turns the wheel downwind, the tyres run out downwind and the machine rolls into the wind,
 * which is what balances the force; behind or below, the other way round. Trail adds {@link
 * #trailArmMm} for force anywhere on the machine. The word "neutral" is not the ideal: running
 * straight needs the small positive moment {@link #idealArmMm}. No tyre slip, no rider's arms, no
 * gust spectrum.
 *
 * @param rakeRad steering axis from vertical, rad
 * @param wheelbaseMm mm, &gt; 0
 * @param groundTrailMm mm
 */
public record Crosswind(double rakeRad, double wheelbaseMm, double groundTrailMm) {

  /** The caution that belongs beside every figure of this class. */
  public static final String CAUTION =
      "Side-wind centres are first estimates from the outline; real pressure centres of smooth bodies"
          + " lie further forward. Try the machine gently in light wind first.";

  /** Moments smaller than this, N·m, are called neutral: rounding, not physics. */
  private static final double NEUTRAL_NM = 1e-9;

  /** Which way the wheel is turned. */
  public enum Steers {
    DOWNWIND("downwind"),
    UPWIND("upwind"),
    NEUTRAL("neutral");

    private final String word;

    Steers(String word) {
      this.word = word;
    }

    /** Returns the word for reports. */
    public String word() {
      return word;
    }
  }

  /** Which way the machine rolls in answer. */
  public enum Leans {
    INTO_WIND("into wind"),
    WITH_WIND("with wind"),
    NEUTRAL("neutral");

    private final String word;

    Leans(String word) {
      this.word = word;
    }

    /** Returns the word for reports. */
    public String word() {
      return word;
    }
  }

  public Crosswind {
    Values.withinRad("rake", rakeRad, -Math.toRadians(85), Math.toRadians(85));
    Values.positive("wheelbase mm", wheelbaseMm);
    Values.finite("ground trail mm", groundTrailMm);
  }

  /** Returns the square distance of a steered point from the axis, mm, + ahead of or above it. */
  public double armMm(PointMm point) {
    double ground = wheelbaseMm + groundTrailMm;
    return (point.x() - ground) * Math.cos(rakeRad) + point.z() * Math.sin(rakeRad);
  }

  /** Returns the steering moment of a sideways force on a steered point, N·m, + steers left. */
  public double momentNm(PointMm point, double forceN) {
    return Values.finite("sideways force N", forceN) * armMm(point) / 1000;
  }

  /** Returns which way a sideways force on a steered point turns the wheel. */
  public Steers steers(PointMm point, double forceN) {
    if (Math.abs(momentNm(point, forceN)) <= NEUTRAL_NM) {
      return Steers.NEUTRAL;
    }
    return armMm(point) > 0 ? Steers.DOWNWIND : Steers.UPWIND;
  }

  /** Returns which way the machine rolls in answer to {@link #steers}. */
  public Leans leans(PointMm point, double forceN) {
    return switch (steers(point, forceN)) {
      case DOWNWIND -> Leans.INTO_WIND;
      case UPWIND -> Leans.WITH_WIND;
      case NEUTRAL -> Leans.NEUTRAL;
    };
  }

  /**
   * Returns μ = (a/p) cos ε, the share of a side force's moment that trail feeds to the steering.
   */
  public double trailFactor() {
    return groundTrailMm / wheelbaseMm * Math.cos(rakeRad);
  }

  /**
   * Returns the steering arm that trail makes of a side force anywhere on the machine, mm: μ x.
   * Always downwind for positive trail.
   *
   * @param xMm where the force acts, forward of the rear contact, mm
   */
  public double trailArmMm(double xMm) {
    return trailFactor() * Values.finite("x mm", xMm);
  }

  /**
   * Returns the total arm (steered parts plus trail) at which the hands-off machine runs straight
   * while leaning into the wind, mm: h_cp S_A/(m_T |z_T|). Above it the machine turns upwind, below
   * it is carried downwind.
   *
   * @param pressureHeightMm height of the pressure centre, mm
   * @param whipple the machine's stability model, which gives S_A and m_T z_T
   */
  public static double idealArmMm(double pressureHeightMm, WhippleModel whipple) {
    // K0 = [m_T z_T, -S_A; ...], both in kg·m.
    return pressureHeightMm * whipple.k0().get(0).get(1) / whipple.k0().get(0).get(0);
  }

  /** Returns the wind felt by a machine at {@code speedMs} in a pure crosswind, m/s. */
  public static double relativeWindMs(double speedMs, double crosswindMs) {
    return Math.hypot(speedMs, crosswindMs);
  }

  /** Returns the angle of that wind to the direction of travel, rad. */
  public static double yawRad(double speedMs, double crosswindMs) {
    return Math.atan2(crosswindMs, speedMs);
  }

  /**
   * Returns the side force, N: ½ ρ v_r² C_y A.
   *
   * @param sideForceAreaM2 C_y A, m², &gt;= 0; a sketch band for a faired machine with rider is 0.2
   *     to 0.4 at 10 deg yaw and 0.5 to 0.9 at 20 deg (from memory, low confidence)
   */
  public static double sideForceN(double speedMs, double crosswindMs, double sideForceAreaM2) {
    Values.notNegative("side force area m2", sideForceAreaM2);
    double wind = relativeWindMs(speedMs, crosswindMs);
    return 0.5 * Wind.AIR_KG_M3 * wind * wind * sideForceAreaM2;
  }

  /**
   * Returns the lean that balances a steady side force, rad: tan φ = F h_cp/(M g h).
   *
   * @param pressureHeightMm height of the pressure centre, mm
   */
  public static double balanceLeanRad(
      double forceN, double pressureHeightMm, double massKg, double cgHeightMm) {
    Values.positive("mass kg", massKg);
    Values.positive("centre of gravity height mm", cgHeightMm);
    return Math.atan(
        forceN * pressureHeightMm / (massKg * Values.STANDARD_GRAVITY_MS2 * cgHeightMm));
  }
}
