package org.longlow.rider.seat;

import org.longlow.rider.geom.OutOfRange;

/**
 * How a reclined rider's weight is shared between pan, back, head rest, pegs and hands.
 *
 * <p>Static model: relaxed hinges at hip and knee, feet on pegs carry vertical load only, no
 * muscle, frictionless back. With W = m g, θ the torso from the vertical, α the pan from the
 * horizontal (front edge up), d the height of the back's resultant above the hip over hip-shoulder
 * length:
 *
 * <pre>
 * Nb = W (trunk·ht + (arms − hands)·ha) sinθ / d
 * Nh = head W sinθn                            head on the rest; otherwise add head·hh sinθ above
 * X  = Nb cosθ + Nh cosθn  + a W − F           forward push at the hip
 * V  = W (trunk + arms − hands + head) − Nb sinθ − Nh sinθn
 * P  = V + legs W − feet W
 * N  = P cosα + X sinα,  T = X cosα − P sinα   friction needed = T/N = tan(φ − α), φ = atan(X/P)
 * </pre>
 *
 * <p>Vertical forces add up to W exactly. The shares are those of {@link WeightShares}: a seated
 * person's own, which also make the centre of mass, with what the feet carry from the posture.
 */
public final class SeatLoad {

  /** Standard gravity, m/s² (ISO 80000-3). */
  public static final double GRAVITY = 9.80665;

  /** Most that the hands may be given to carry, over body weight. */
  public static final double ARMS = WeightShares.WORKED.arms();

  /** Friction that design may count on, 1; common practice for vibration and rain, no source. */
  public static final double DESIGN_FRICTION = 0.30;

  /** Height of the back's resultant for a full-length back, over hip-shoulder length, 1. */
  public static final double FULL_BACK = 0.60;

  /** The same for a back that touches the shoulder blades only, 1. */
  public static final double SHOULDER_BLADES = 0.75;

  /** Lowest back's resultant that the model is used for, over hip-shoulder length, 1; judgement. */
  public static final double LEAST_BACK_CENTRE = 0.3;

  /** Share of body weight on the hands unless told; common practice (0.02 to 0.06), no source. */
  public static final double DEFAULT_HANDS = 0.03;

  private SeatLoad() {}

  /**
   * What loads the seat.
   *
   * @param massKg mass in gear, kg, in [1, 500]
   * @param weights how that mass is spread
   * @param backRad torso from the vertical, rad, rearward positive, in [0, π/2)
   * @param panRad pan from the horizontal, rad, front edge up positive, in (−π/3, π/3)
   * @param backCentreShare d, height of the back's resultant over hip-shoulder length, in [{@link
   *     #LEAST_BACK_CENTRE}, 1]
   * @param headOnRest whether the head leans on a rest
   * @param headRad direction of the rest from the vertical, rad, in [0, π/2); used with a rest only
   * @param handsShare part of body weight on the hands, from 0 to that of the arms
   * @param brakingG braking, g, ≥ 0: adds a forward push of that share of the weight (an upper
   *     bound)
   * @param bracingN rearward push by braced legs and hands, N, ≥ 0
   */
  public record Input(
      double massKg,
      WeightShares weights,
      double backRad,
      double panRad,
      double backCentreShare,
      boolean headOnRest,
      double headRad,
      double handsShare,
      double brakingG,
      double bracingN) {
    public Input {
      check("massKg", massKg, 1, 500, "kg");
      checkAngle("backDeg", backRad, 0, 90, false);
      checkAngle("panDeg", panRad, -60, 60, true);
      check("backCentreShare", backCentreShare, LEAST_BACK_CENTRE, 1, "of hip-shoulder length");
      checkAngle("headDeg", headRad, 0, 90, false);
      check("handsShare", handsShare, 0, weights.arms(), "of body weight");
      check("brakingG", brakingG, 0, 2, "g");
      check("bracingN", bracingN, 0, 5000, "N");
    }

    /**
     * The case of the worked model: {@link WeightShares#WORKED}, no braking, no bracing, head rest
     * parallel to the back.
     */
    public static Input of(
        double massKg,
        double backRad,
        double panRad,
        double backCentreShare,
        boolean headOnRest,
        double handsShare) {
      return new Input(
          massKg,
          WeightShares.WORKED,
          backRad,
          panRad,
          backCentreShare,
          headOnRest,
          backRad,
          handsShare,
          0,
          0);
    }

    private static void check(String name, double value, double low, double high, String unit) {
      if (!(value >= low && value <= high)) {
        throw new OutOfRange(
            name + " must be " + low + " to " + high + " " + unit + ", got " + value);
      }
    }

    private static void checkAngle(
        String name, double rad, double lowDeg, double highDeg, boolean openLow) {
      double deg = Math.toDegrees(rad);
      if (!((openLow ? deg > lowDeg : deg >= lowDeg) && deg < highDeg)) {
        throw new OutOfRange(
            name + " must be " + lowDeg + " to below " + highDeg + " deg, got " + deg);
      }
    }
  }

  /**
   * The shares, N.
   *
   * @param backN normal to the back
   * @param headRestN normal to the head rest
   * @param pegsN vertical on both pegs
   * @param handsN vertical on both hands
   * @param forwardN X, forward push at the hip
   * @param panVerticalN P, vertical on the pan
   * @param panNormalN normal to the pan
   * @param panShearN along the pan, positive where the rider would slide forward
   * @param frictionNeeded shear over normal, signed as the shear; ±∞ if the pan carries nothing
   * @param noShearPanRad φ, the pan angle without shear, rad
   * @param headBracketN what the head adds to the back's bracket when there is no rest, N
   */
  public record Shares(
      double backN,
      double headRestN,
      double pegsN,
      double handsN,
      double forwardN,
      double panVerticalN,
      double panNormalN,
      double panShearN,
      double frictionNeeded,
      double noShearPanRad,
      double headBracketN) {

    /** Returns whether the pan carries weight; otherwise there is no answer about friction. */
    public boolean carried() {
      return panVerticalN > 0 && panNormalN > 0;
    }

    /** Returns whether the design friction of 0.30 holds the rider both ways. */
    public boolean held() {
      return Math.abs(frictionNeeded) < DESIGN_FRICTION;
    }
  }

  /** Shares the weight out. */
  public static Shares of(Input in) {
    double weight = in.massKg() * GRAVITY;
    double sin = Math.sin(in.backRad());
    double cos = Math.cos(in.backRad());
    WeightShares w = in.weights();
    double arms = w.arms() - in.handsShare();
    double headNormal = in.headOnRest() ? w.head() * weight * Math.sin(in.headRad()) : 0;
    double headMoment = in.headOnRest() ? 0 : w.head() * w.headHeight();
    double torque = w.trunk() * w.trunkHeight() + arms * w.armsHeight() + headMoment;
    double back = weight * torque * sin / in.backCentreShare();
    double forward =
        back * cos + headNormal * Math.cos(in.headRad()) + in.brakingG() * weight - in.bracingN();
    double hip =
        weight * (w.trunk() + arms + w.head()) - back * sin - headNormal * Math.sin(in.headRad());
    double pegs = w.feet() * weight;
    double pan = hip + w.legs() * weight - pegs;
    double normal = pan * Math.cos(in.panRad()) + forward * Math.sin(in.panRad());
    double shear = forward * Math.cos(in.panRad()) - pan * Math.sin(in.panRad());
    double friction = normal > 0 ? shear / normal : Math.copySign(Double.POSITIVE_INFINITY, shear);
    return new Shares(
        back,
        headNormal,
        pegs,
        in.handsShare() * weight,
        forward,
        pan,
        normal,
        shear,
        friction,
        Math.atan2(forward, pan),
        weight * headMoment * sin / in.backCentreShare());
  }
}
