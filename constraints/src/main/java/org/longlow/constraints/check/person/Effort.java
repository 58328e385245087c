package org.longlow.constraints.check.person;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Braking;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.Body;
import org.longlow.rider.effort.Endurance;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.effort.JointTorques;
import org.longlow.rider.effort.Strength;
import org.longlow.rider.effort.Wind;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.Balance;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;

/**
 * What somebody seated holds by muscles: riding along at the speed that the layout asks about, in
 * the wind that cowls and screens ahead leave, and braking as hard as it asks and tyres hold.
 *
 * @param speedMs m/s
 * @param slowed how hard it brakes
 * @param wind what comes from ahead
 * @param balance forces and their places at rest
 * @param still what joints hold without wind
 * @param riding what they hold at that speed
 * @param stopping what they hold while braking
 */
public record Effort(
    double speedMs,
    Braking slowed,
    Wind wind,
    Balance balance,
    Map<Joint, Held> still,
    Map<Joint, Held> riding,
    Map<Joint, Held> stopping) {

  /** Strength that a force of seconds may take, over that of a weak person (EN 1005-3, summary). */
  static final double BRIEF = 0.5;

  /** Beyond this share of the mean it is to be avoided; the same summary. */
  static final double BRIEF_MOST = 0.7;

  /** A torque that rounds to nothing needs no strength, N m. */
  static final double NOTHING_NM = 0.05;

  private static final double MM_PER_M = 1e3;

  /**
   * What one joint holds.
   *
   * @param loadNm as {@link JointTorques#nm}
   * @param muscles that hold it
   * @param weak of the strength of a weak person of that sex and mass, 1
   * @param mean of the mean strength, 1
   * @param brief whether it lasts for a stop only
   */
  public record Held(
      Joint joint, double loadNm, Strength muscles, double weak, double mean, boolean brief) {

    private static Held of(Joint joint, double loadNm, Body body, double kneeRad, boolean brief) {
      Strength muscles = joint.against(loadNm, kneeRad);
      return new Held(
          joint,
          loadNm,
          muscles,
          Math.abs(loadNm) / muscles.weakNm(body.sex(), body.massKg()),
          Math.abs(loadNm) / muscles.meanNm(body.sex(), body.massKg()),
          brief);
    }

    /** Whether it rounds to nothing. */
    public boolean nothing() {
      return Math.abs(loadNm) < NOTHING_NM;
    }

    /** Returns what of a weak person's strength is no trouble, 1. */
    public double limit() {
      return brief ? BRIEF : Endurance.FINE;
    }

    /** Whether it keeps to that. */
    public boolean inside() {
      return nothing() || weak <= limit();
    }

    /**
     * Returns how that comes out; a strength from memory asks for care, however little it is. Hips
     * never fail, since feet that push against their rests carry legs too, which is not known.
     */
    public Verdict verdict() {
      return joint != Joint.HIP && mean > (brief ? BRIEF_MOST : Endurance.MOST)
          ? Verdict.FAIL
          : nothing() || inside() && muscles.read() ? Verdict.PASS : Verdict.CAUTION;
    }

    /** Returns about how long a weak person holds it, s; no end where it is nothing. */
    public double heldS() {
      return nothing() ? Double.POSITIVE_INFINITY : joint.endurance().leastS(Math.min(1, weak));
    }
  }

  /** Returns what somebody holds; empty if they do not sit. */
  public static Optional<Effort> of(
      Layout layout, Sitting sitting, List<Standing> standings, Places places) {
    Optional<SeatGeometry> seat = Seats.geometry(sitting.parts(), places);
    if (sitting.seated().isEmpty() || seat.isEmpty()) {
      return Optional.empty();
    }
    SeatOutcome.Seated seated = sitting.seated().get();
    Body body = sitting.body();
    double speed = places.value(layout.demands().limit(Demands.Key.SPEED)) / MM_PER_M;
    Braking slowed = Braking.under(layout, places, sitting.occupant(), standings);
    Balance balance = Balance.of(body, seat.get(), seated);
    Wind wind = new Wind(speed, Shelter.of(sitting.occupant(), standings));
    return Optional.of(
        new Effort(
            speed,
            slowed,
            wind,
            balance,
            held(sitting, JointTorques.riding(body, seated, balance, Wind.STILL), false),
            held(sitting, JointTorques.riding(body, seated, balance, wind), false),
            held(
                sitting,
                JointTorques.braking(body, seat.get(), seated, balance, wind, slowed.g()),
                true)));
  }

  private static Map<Joint, Held> held(Sitting sitting, JointTorques torques, boolean brief) {
    return held(sitting.body(), sitting.posture().orElseThrow(), torques, brief);
  }

  /** Returns what each joint of somebody holds. */
  static Map<Joint, Held> held(Body body, Posture posture, JointTorques torques, boolean brief) {
    double knee = posture.angles().knee();
    Map<Joint, Held> all = new EnumMap<>(Joint.class);
    for (Joint joint : Joint.values()) {
      all.put(joint, Held.of(joint, torques.nm(joint), body, knee, brief));
    }
    return all;
  }
}
