package org.longlow.constraints.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.JointAngles;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.SeatNote;
import org.longlow.rider.seat.SeatOutcome;

/** Somebody seated on a whole machine with one figure of how they sit changed. */
public final class Sat {

  public static final Condition STANCE =
      Condition.laden(List.of(new Occupant("Nell", Occupant.RIDER)));

  private Sat() {}

  public static Study runabout() {
    return TestMachine.asFiled("runabout");
  }

  public static Sitting nell() {
    return runabout().sitting("Nell", Occupant.RIDER).orElseThrow();
  }

  public static SeatOutcome.Seated seated(Sitting s) {
    return s.seated().orElseThrow();
  }

  public static Sitting with(Sitting s, UnaryOperator<SeatOutcome.Seated> change) {
    return Changed.with(s, Map.of("outcome", change.apply(seated(s))));
  }

  public static Sitting as(Sitting s, String person, String seat) {
    return Changed.with(s, Map.of("person", person, "seat", seat));
  }

  public static Sitting unseatable(Sitting s, String reason) {
    return Changed.with(s, Map.of("outcome", new SeatOutcome.Unseatable(reason)));
  }

  public static SeatOutcome.Seated pose(SeatOutcome.Seated s, PoseResult pose) {
    return Changed.with(s, Map.of("pose", pose));
  }

  public static SeatOutcome.Seated noted(SeatOutcome.Seated s, SeatNote... notes) {
    return Changed.with(s, Map.of("notes", List.of(notes)));
  }

  public static Posture bent(Posture p, JointAngles angles) {
    return Changed.with(p, Map.of("angles", angles));
  }

  public static SeatOutcome.Seated cushions(
      SeatOutcome.Seated s, CushionLoad pan, CushionLoad back, Optional<CushionLoad> head) {
    return Changed.with(s, Map.of("pan", pan, "back", back, "headRest", head));
  }

  public static SeatOutcome.Seated head(
      SeatOutcome.Seated s, double reclineDeg, boolean onRest, double gapMm) {
    double recline = Math.toRadians(reclineDeg);
    return Changed.with(s, Map.of("reclineRad", recline, "headOnRest", onRest, "headGapMm", gapMm));
  }

  public static SeatOutcome.Seated friction(SeatOutcome.Seated s, double friction) {
    double shear = friction * s.load().panNormalN();
    Map<String, Double> held = Map.of("panShearN", shear, "frictionNeeded", friction);
    return Changed.with(s, Map.of("load", Changed.with(s.load(), held)));
  }

  public static SeatOutcome.Seated disagreed(SeatOutcome.Seated s) {
    return Changed.with(s, Map.of("converged", false));
  }

  /** A cushion that is pressed in so far and leaves so much, at a place of its own. */
  public static CushionLoad cushion(
      double likelyMm,
      double designMm,
      double leftMm,
      Compression.Verdict fresh,
      boolean bump,
      CushionLoad.Worn worn,
      PointMm centre) {
    return new CushionLoad(
        500,
        0,
        likelyMm,
        designMm,
        leftMm,
        8,
        5,
        1000,
        centre,
        new Compression(8, List.of(), designMm, leftMm, 0.1, fresh),
        bump,
        worn);
  }
}
