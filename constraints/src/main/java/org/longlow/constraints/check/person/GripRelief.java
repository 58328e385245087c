package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.person.Effort.Held;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.effort.JointTorques;
import org.longlow.rider.effort.Wind;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.seat.Balance;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Settle;
import org.longlow.rider.words.Words;

/**
 * The move of the grips that takes most off the arms of somebody who rides along, found by seating
 * them anew on each: which way helps hangs on where the arm is and what the hands rest with.
 *
 * @param change in words, with a place for how far
 * @param way where it moves the grips
 * @param grip where they are then
 * @param weak what the worst joint of the arm holds then, of a weak person's strength
 */
record GripRelief(String change, Tug.Way way, PointMm grip, double weak) {

  /** By how much the grips are moved, mm. */
  static final double STEP_MM = 30;

  /** More than this share left is no help worth the work; judgement. */
  private static final double WORTH = 0.9;

  private record Trial(String how, Tug.Way way, PointMm by) {}

  private static final List<Trial> TRIALS =
      List.of(
          new Trial("raise the grips by %s", Tug.Way.UP, new PointMm(0, STEP_MM)),
          new Trial("lower the grips by %s", Tug.Way.DOWN, new PointMm(0, -STEP_MM)),
          new Trial("bring the grips %s nearer", Tug.Way.NEARER, new PointMm(-STEP_MM, 0)),
          new Trial("move the grips %s farther away", Tug.Way.FARTHER, new PointMm(STEP_MM, 0)));

  /** Returns the best for somebody who sits; empty where nothing that was tried helps. */
  static Optional<GripRelief> of(Sitting sitting, Places places, Wind wind) {
    SeatGeometry seat = Seats.geometry(sitting.parts(), places).orElseThrow();
    SeatOutcome.Seated now = sitting.seated().orElseThrow();
    if (!(seat.hand() instanceof HandContact.Grip grips)) {
      return Optional.empty();
    }
    double held = weak(sitting, seat, now, wind);
    List<GripRelief> all = new ArrayList<>();
    for (Trial trial : TRIALS) {
      PointMm grip = grips.centre().plus(trial.by());
      SeatGeometry moved = moved(seat, grip);
      if (Settle.settle(sitting.body(), moved) instanceof SeatOutcome.Seated s
          && s.pose().shortfalls().size() <= now.pose().shortfalls().size()) {
        all.add(new GripRelief(trial.how(), trial.way(), grip, weak(sitting, moved, s, wind)));
      }
    }
    return all.stream()
        .min(Comparator.comparingDouble(GripRelief::weak))
        .filter(r -> r.weak() < WORTH * held);
  }

  private static double weak(
      Sitting sitting, SeatGeometry seat, SeatOutcome.Seated seated, Wind wind) {
    Balance balance = Balance.of(sitting.body(), seat, seated);
    Map<Joint, Held> all =
        Effort.held(
            sitting.body(),
            seated.pose().posture(),
            JointTorques.riding(sitting.body(), seated, balance, wind),
            false);
    return Math.max(all.get(Joint.SHOULDER).weak(), all.get(Joint.ELBOW).weak());
  }

  private static SeatGeometry moved(SeatGeometry s, PointMm grip) {
    return new SeatGeometry(
        s.pan(), s.back(), s.headRest(), s.foot(), new HandContact.Grip(grip), s.width());
  }

  /** Says what to do and what it brings. */
  Words words() {
    return Say.format(
        "%s, which of what was tried helps most and leaves about %s",
        Say.format(change, Say.wholeMm(STEP_MM)), Say.percent(weak));
  }

  /** Returns which way that moves them. */
  Tug pull() {
    return Tug.of(Tug.Thing.GRIPS, way, "give the elbows a rest");
  }
}
