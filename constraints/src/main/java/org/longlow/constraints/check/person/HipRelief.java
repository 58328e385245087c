package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.ByPlaces;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.seat.Balance;
import org.longlow.rider.seat.Cushion;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Settle;
import org.longlow.rider.words.Words;

/**
 * The change of one surface of a seat that takes most off the hips of whoever sits on it, found by
 * seating them anew on each.
 *
 * @param change in words
 * @param pull which way it moves something
 * @param seat changed
 * @param share of what the hips hold now that is left, 0 to 1
 */
record HipRelief(Words change, Tug pull, SeatGeometry seat, double share) {

  /** By how much a surface is moved or made longer, mm. */
  static final double STEP_MM = 40;

  /** A back leans farther by this, rad. */
  private static final double LEAN_RAD = Math.toRadians(3);

  /** More than this share left is no help worth the work; judgement. */
  private static final double WORTH = 0.9;

  private static final ByPlaces<Sitting, Optional<HipRelief>> KNOWN =
      new ByPlaces<>(32, 2, HipRelief::best);

  record Trial(String how, Words by, Tug.Thing thing, Tug.Way way, SeatGeometry seat) {}

  /** Returns the best for somebody who sits; empty where nothing that was tried helps. */
  static Optional<HipRelief> of(Sitting sitting, Places places) {
    return KNOWN.of(sitting, places);
  }

  private static Optional<HipRelief> best(Sitting sitting, Places places) {
    SeatGeometry seat = Seats.geometry(sitting.parts(), places).orElseThrow();
    SeatOutcome.Seated now = sitting.seated().orElseThrow();
    double held = Math.abs(Balance.of(sitting.body(), seat, now).hipNm());
    List<HipRelief> all = new ArrayList<>();
    for (Trial trial : trials(seat)) {
      if (Settle.settle(sitting.body(), trial.seat()) instanceof SeatOutcome.Seated s
          && s.pose().shortfalls().size() <= now.pose().shortfalls().size()) {
        double then = Math.abs(Balance.of(sitting.body(), trial.seat(), s).hipNm());
        all.add(
            new HipRelief(
                Say.format(trial.how(), trial.by()),
                Tug.of(trial.thing(), trial.way(), ""),
                trial.seat(),
                then / held));
      }
    }
    return all.stream()
        .min(Comparator.comparingDouble(HipRelief::share))
        .filter(r -> r.share() < WORTH);
  }

  static List<Trial> trials(SeatGeometry s) {
    Words step = Say.wholeMm(STEP_MM);
    Cushion pan = s.pan();
    Cushion back = s.back();
    PointMm along = pan.to().minus(pan.from()).times(STEP_MM / pan.lengthMm());
    PointMm lean = back.to().turnedAbout(back.from(), LEAN_RAD);
    return List.of(
        new Trial(
            "make the pan %s longer at its front",
            step, Tug.Thing.PAN, Tug.Way.LONGER, pan(s, pan.to().plus(along))),
        new Trial(
            "raise the front of the pan by %s",
            step, Tug.Thing.PAN, Tug.Way.UP, pan(s, pan.to().plus(along.left()))),
        new Trial(
            "lower the foot rests by %s",
            step, Tug.Thing.FOOT_RESTS, Tug.Way.DOWN, feet(s, new PointMm(0, -STEP_MM))),
        new Trial(
            "bring the foot rests %s nearer",
            step, Tug.Thing.FOOT_RESTS, Tug.Way.NEARER, feet(s, new PointMm(-STEP_MM, 0))),
        new Trial(
            "move the foot rests %s farther away",
            step, Tug.Thing.FOOT_RESTS, Tug.Way.FARTHER, feet(s, new PointMm(STEP_MM, 0))),
        new Trial(
            "lean the back %s farther",
            Say.deg(Math.toDegrees(LEAN_RAD)), Tug.Thing.BACK, Tug.Way.FLATTER, back(s, lean)));
  }

  private static SeatGeometry pan(SeatGeometry s, PointMm front) {
    Cushion pan = new Cushion(s.pan().from(), front, s.pan().foam(), s.pan().widthMm());
    return new SeatGeometry(pan, s.back(), s.headRest(), s.foot(), s.hand(), s.width());
  }

  private static SeatGeometry back(SeatGeometry s, PointMm top) {
    Cushion back = new Cushion(s.back().from(), top, s.back().foam(), s.back().widthMm());
    return new SeatGeometry(s.pan(), back, s.headRest(), s.foot(), s.hand(), s.width());
  }

  private static SeatGeometry feet(SeatGeometry s, PointMm by) {
    FootContact foot =
        s.foot() instanceof FootContact.Footboard b
            ? new FootContact.Footboard(b.rear().plus(by), b.front().plus(by))
            : new FootContact.BallOnPeg(((FootContact.BallOnPeg) s.foot()).contact().plus(by));
    return new SeatGeometry(s.pan(), s.back(), s.headRest(), foot, s.hand(), s.width());
  }

  /**
   * Says what to do and what it brings.
   *
   * @param weak what is held now, of a weak person's strength
   */
  Words words(double weak) {
    return Say.format(
        "of what was tried one by one it helps most to %s; that leaves about %s",
        change, Say.percent(share * weak));
  }
}
