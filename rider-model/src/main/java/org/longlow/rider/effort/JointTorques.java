package org.longlow.rider.effort;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SegmentMass;
import org.longlow.rider.seat.Balance;
import org.longlow.rider.seat.Braced;
import org.longlow.rider.seat.Push;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;

/**
 * Torques that muscles hold at the joints of somebody seated, about the left-right axis, by
 * free-body sums over what hangs on each joint: weight in gear, what hands and feet bear as the
 * seat has it ({@link Balance}), wind, and what braking throws forward.
 *
 * <p>N m of one side (the neck: whole), of the load: positive where it turns the far part from
 * forward to up. A head on its rest cannot fall back; nothing keeps it from falling forward, and a
 * rest need not push harder than the neck wants. Torques outwards are left out.
 *
 * @param loadNm by joint
 */
public record JointTorques(Map<Joint, Double> loadNm) {

  /**
   * The neck turns so far ahead of the skin over C7, square to the trunk, mm; from memory (40 to
   * 60), and the torque at the neck hangs on it: 10 mm are some 0.7 N m.
   */
  public static final double NECK_AHEAD_MM = 50;

  public JointTorques {
    loadNm = Map.copyOf(loadNm);
  }

  /** Returns the load on a joint, N m. */
  public double nm(Joint joint) {
    return loadNm.get(joint);
  }

  /** Returns what riding along asks. */
  public static JointTorques riding(
      Body body, SeatOutcome.Seated seated, Balance balance, Wind wind) {
    return of(body, seated, 0, balance.hands(), balance.feet(), wind, -balance.hipNm());
  }

  /**
   * Returns what braking asks: feet push straight forward and hands square to the torso, as hard as
   * {@link Braced} has it, beside what they bear anyway.
   *
   * @param brakingG in that of gravity
   */
  public static JointTorques braking(
      Body body,
      SeatGeometry seat,
      SeatOutcome.Seated seated,
      Balance balance,
      Wind wind,
      double brakingG) {
    Braced braced = Braced.of(body, seated, brakingG);
    PointMm square = PointMm.unit(seated.load().backN() > 0 ? seated.reclineRad() : 0);
    Push hands = more(balance.hands(), square.times(-braced.handsN()));
    Push feet = more(balance.feet(), new PointMm(-braced.feetN(), 0));
    double hips = Balance.hipsBrakingNm(body, seat, seated, hands, braced.kept(brakingG), brakingG);
    return of(body, seated, brakingG, hands, feet, wind, -hips);
  }

  private static Push more(Push push, PointMm force) {
    return new Push(push.at(), push.force().plus(force));
  }

  private static JointTorques of(
      Body body,
      SeatOutcome.Seated seated,
      double brakingG,
      Push hands,
      Push feet,
      Wind wind,
      double hipsNm) {
    Posture p = seated.pose().posture();
    Map<Segment, List<Push>> on = new EnumMap<>(Segment.class);
    for (SegmentMass m : SegmentMass.of(body, p)) {
      on.computeIfAbsent(m.segment(), s -> new ArrayList<>())
          .addAll(List.of(Balance.weight(m, brakingG), wind.on(m.segment(), body, p)));
    }
    on.get(Segment.HAND).add(hands);
    on.get(Segment.FOOT).add(feet);
    PointMm shoulder = p.shoulder().towards(p.elbow(), Body.SHOULDER_JOINT_DOWN);
    double forearm = about(p.elbow(), on, Segment.FOREARM, Segment.HAND);
    double neck = about(neck(p), on, Segment.HEAD);
    Map<Joint, Double> load = new EnumMap<>(Joint.class);
    load.put(Joint.NECK, seated.headOnRest() ? Math.min(0, neck) : neck);
    load.put(
        Joint.SHOULDER,
        0.5 * about(shoulder, on, Segment.UPPER_ARM, Segment.FOREARM, Segment.HAND));
    load.put(Joint.ELBOW, 0.5 * forearm);
    load.put(Joint.HIP, 0.5 * hipsNm);
    load.put(Joint.KNEE, 0.5 * about(p.knee(), on, Segment.SHANK, Segment.FOOT));
    load.put(Joint.ANKLE, 0.5 * about(p.ankle(), on, Segment.FOOT));
    return new JointTorques(load);
  }

  /** Returns where the neck turns. */
  public static PointMm neck(Posture p) {
    return p.neckBase().plus(PointMm.unit(p.angles().recline()).times(NECK_AHEAD_MM));
  }

  private static double about(PointMm joint, Map<Segment, List<Push>> on, Segment... segments) {
    double sum = 0;
    for (Segment segment : segments) {
      sum += Push.aboutNm(joint, on.get(segment));
    }
    return sum;
  }
}
