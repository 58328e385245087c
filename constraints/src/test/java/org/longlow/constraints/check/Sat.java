package org.longlow.constraints.check;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.JointAngles;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatNote;
import org.longlow.rider.seat.SeatOutcome;

/** Somebody seated on a whole machine with one figure of how they sit changed. */
public final class Sat {

  public static final Condition STANCE =
      Condition.laden(java.util.List.of(new Occupant("Nell", Occupant.RIDER)));

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
    return new Sitting(s.person(), s.seat(), s.parts(), s.body(), change.apply(seated(s)));
  }

  public static Sitting as(Sitting s, String person, String seat) {
    return new Sitting(person, seat, s.parts(), s.body(), s.outcome());
  }

  public static Sitting unseatable(Sitting s, String reason) {
    return new Sitting(
        s.person(), s.seat(), s.parts(), s.body(), new SeatOutcome.Unseatable(reason));
  }

  public static SeatOutcome.Seated pose(SeatOutcome.Seated s, PoseResult pose) {
    return new SeatOutcome.Seated(
        pose,
        s.hip(),
        s.reclineRad(),
        s.pan(),
        s.back(),
        s.headRest(),
        s.headOnRest(),
        s.headGapMm(),
        s.load(),
        s.held(),
        s.iterations(),
        s.converged(),
        s.notes());
  }

  public static SeatOutcome.Seated noted(SeatOutcome.Seated s, SeatNote... notes) {
    return new SeatOutcome.Seated(
        s.pose(),
        s.hip(),
        s.reclineRad(),
        s.pan(),
        s.back(),
        s.headRest(),
        s.headOnRest(),
        s.headGapMm(),
        s.load(),
        s.held(),
        s.iterations(),
        s.converged(),
        List.of(notes));
  }

  public static Posture bent(Posture p, JointAngles angles) {
    return new Posture(
        p.hip(),
        p.shoulder(),
        p.neckBase(),
        p.tragion(),
        p.eye(),
        p.vertex(),
        p.headCentre(),
        p.knee(),
        p.ankle(),
        p.heel(),
        p.ball(),
        p.toe(),
        p.elbow(),
        p.wrist(),
        p.grip(),
        p.across(),
        angles);
  }

  public static SeatOutcome.Seated cushions(
      SeatOutcome.Seated s, CushionLoad pan, CushionLoad back, Optional<CushionLoad> head) {
    return new SeatOutcome.Seated(
        s.pose(),
        s.hip(),
        s.reclineRad(),
        pan,
        back,
        head,
        s.headOnRest(),
        s.headGapMm(),
        s.load(),
        s.held(),
        s.iterations(),
        s.converged(),
        s.notes());
  }

  public static SeatOutcome.Seated head(
      SeatOutcome.Seated s, double reclineDeg, boolean onRest, double gapMm) {
    return new SeatOutcome.Seated(
        s.pose(),
        s.hip(),
        Math.toRadians(reclineDeg),
        s.pan(),
        s.back(),
        s.headRest(),
        onRest,
        gapMm,
        s.load(),
        s.held(),
        s.iterations(),
        s.converged(),
        s.notes());
  }

  public static SeatOutcome.Seated friction(SeatOutcome.Seated s, double friction) {
    SeatLoad.Shares l = s.load();
    SeatLoad.Shares changed =
        new SeatLoad.Shares(
            l.backN(),
            l.headRestN(),
            l.pegsN(),
            l.handsN(),
            l.forwardN(),
            l.panVerticalN(),
            l.panNormalN(),
            friction * l.panNormalN(),
            friction,
            l.noShearPanRad(),
            l.headBracketN());
    return new SeatOutcome.Seated(
        s.pose(),
        s.hip(),
        s.reclineRad(),
        s.pan(),
        s.back(),
        s.headRest(),
        s.headOnRest(),
        s.headGapMm(),
        changed,
        s.held(),
        s.iterations(),
        s.converged(),
        s.notes());
  }

  public static SeatOutcome.Seated disagreed(SeatOutcome.Seated s) {
    return new SeatOutcome.Seated(
        s.pose(),
        s.hip(),
        s.reclineRad(),
        s.pan(),
        s.back(),
        s.headRest(),
        s.headOnRest(),
        s.headGapMm(),
        s.load(),
        s.held(),
        s.iterations(),
        false,
        s.notes());
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
        new Compression(8, java.util.List.of(), designMm, leftMm, 0.1, fresh),
        bump,
        worn);
  }
}
