package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Reach;
import org.longlow.rider.words.Units;

/** Draws, weighs and draws again until rider, road and wheels agree. */
final class Trim {

  private static final int ROUNDS = 30;
  private static final int STAND_ROUNDS = 3;
  private static final double STEP_MM = 10;
  private static final double MOST_STEP_MM = 120;

  /** Sag tips the machine a little; a share of the load keeps so far off its limits. */
  private static final double SHARE_SPARE = 0.012;

  /** So much of the distance at which the road must be seen is kept in hand for sag. */
  private static final double SIGHT_SPARE = 0.93;

  /** Nothing is stretched beyond this to balance it, mm. */
  private static final double LONGEST_MM = 2300;

  /** A leg goes outwards over the pan, so that the seat must sink by more than the leg lacks. */
  static final double LEG_SLANTS = 1.1;

  private static final double MOST_SEAT_UP_MM = 220;

  private static final int AHEAD_STEPS = 6;

  private final Brief brief;
  private final Rolling rolling;
  private final Cargo cargo;
  private Tuning tuning = Tuning.FIRST;
  private final Optional<Pillion> pillion;
  private Posed posed;

  Trim(Brief brief) {
    this.brief = brief;
    rolling = new Rolling(brief);
    cargo = Cargo.of(brief, rolling);
    pillion = brief.pillion() ? Optional.of(new Pillion(brief, rolling)) : Optional.empty();
  }

  /** Settles all that is found by trying; returns what cannot be had. */
  List<Fault> settle() {
    see();
    Lengthwise room = room();
    List<Fault> faults = new ArrayList<>();
    double lifted = legShortMm(room);
    if (lifted > 0 && brief.place() == Place.UNDER) {
      faults.add(tooHigh(lifted));
    }
    if (room.wheelbaseMm < room.leastWheelbaseMm) {
      faults.add(tooShort(room));
    }
    if (!faults.isEmpty()) {
      return faults;
    }
    bringAhead();
    if (!balance()) {
      return List.of(unbalanced());
    }
    for (int round = 0; round < STAND_ROUNDS; round++) {
      tuning = new Weighing(trial()).sprung(tuning);
      tuning = new Weighing(trial()).stood(tuning);
    }
    return List.of();
  }

  /** How far the ground is out of reach of the shortest leg of those who ride, mm. */
  private double legShortMm(Lengthwise room) {
    return posed.sittings().stream()
        .flatMap(
            s ->
                s.posture().stream()
                    .map(p -> Reach.ground(s.body(), room.of(p.hip()).z(), SeatKit.PAN_HALF_MM)))
        .mapToDouble(foot -> -foot.flatMarginMm() - Draft.mmOf(Demands.Key.FOOT_DOWN))
        .max()
        .orElse(0);
  }

  private static Fault tooShort(Lengthwise room) {
    return new Fault(
        "wheelbase",
        Draft.text(room.wheelbaseMm),
        "is too short for what lies between the wheels: at least "
            + Draft.text(room.leastWheelbaseMm)
            + " are needed",
        "make it longer, leave it out, or put the drive elsewhere");
  }

  private Fault tooHigh(double lifted) {
    double height = brief.box().heightMm();
    return new Fault(
        "box",
        Draft.text(height) + " high",
        String.format(
            Locale.ROOT,
            "lifts the seat so far that no foot comes to the ground; about %.0f mm would do",
            Math.floor(height - lifted * LEG_SLANTS)),
        "lay it down, or put the drive before or behind");
  }

  private Fault unbalanced() {
    Optional<Double> needed = Double.isNaN(brief.wheelbaseMm()) ? Optional.empty() : freely();
    double share = Draft.mmOf(Demands.Key.FRONT_SHARE_MIN);
    return new Fault(
        "wheelbase",
        Draft.text(room().wheelbaseMm),
        String.format(
            Locale.ROOT,
            "leaves the front wheel less than %.0f %% of the load with everybody aboard%s",
            100 * share,
            needed.map(mm -> "; about " + Draft.text(mm) + " would do").orElse("")),
        needed.isPresent()
            ? "make it longer, or leave it out"
            : "put the drive before the rider, or let the lighter one sit behind");
  }

  /** The wheelbase with which it would do, if any does. */
  private Optional<Double> freely() {
    Trim free = new Trim(brief.withWheelbaseMm(Double.NaN));
    return free.settle().isEmpty() ? Optional.of(free.room().wheelbaseMm) : Optional.empty();
  }

  private Layout trial() {
    return FirstLayout.of(room(), new Story(brief, Answers.NONE, Optional.empty(), Units.MM), true);
  }

  Lengthwise room() {
    return new Lengthwise(brief, rolling, cargo, posed, pillion, tuning);
  }

  /** Raises the seat until thighs clear what is before it, and everybody sees over the head. */
  private void see() {
    double up = 0;
    posed = Posed.of(brief, rolling, cargo, up);
    while (posed.lacksMm() > 0 && up < MOST_SEAT_UP_MM) {
      up += Math.ceil(posed.lacksMm()) + 5;
      posed = Posed.of(brief, rolling, cargo, up);
    }
    double more = 0;
    while (up + more < MOST_SEAT_UP_MM && !sees(more)) {
      more += 5;
    }
    if (more > 0) {
      up += more;
      posed = Posed.of(brief, rolling, cargo, up);
    }
    pillion.ifPresent(p -> posed = posed.withPillion(p.place(posed, rolling.railYMm)));
  }

  private boolean sees(double up) {
    double limit = Draft.mmOf(Demands.Key.SIGHT) * SIGHT_SPARE;
    Lengthwise room = room();
    PointMm top = rolling.headTop(room.wheelbaseMm).plus(new PointMm(0, Rolling.FORK_TUBE_MM / 2));
    return posed.eyes().stream()
        .map(room::of)
        .map(eye -> eye.plus(new PointMm(0, up)))
        .allMatch(
            eye ->
                eye.z() > top.z() && eye.z() * (top.x() - eye.x()) / (eye.z() - top.z()) <= limit);
  }

  /**
   * Brings the seat and what goes with it ahead where the wheels are farther apart than need be, so
   * that grips are near the axis that they turn about, as far as the rear wheel keeps its share.
   */
  private void bringAhead() {
    double spare = room().wheelbaseMm - room().leastWheelbaseMm;
    double most = Draft.mmOf(Demands.Key.FRONT_SHARE_MAX) - SHARE_SPARE;
    for (double ahead = spare; ahead >= STEP_MM; ahead -= Math.max(STEP_MM, spare / AHEAD_STEPS)) {
      tuning = tuning.withSeatAhead(Math.floor(ahead));
      boolean kept = room().wheelbaseMm >= room().leastWheelbaseMm;
      List<Double> all = new Weighing(trial()).frontShares();
      if (kept && all.subList(1, all.size()).stream().allMatch(share -> share <= most)) {
        return;
      }
    }
    tuning = tuning.withSeatAhead(0);
  }

  /** Moves the seat ahead, or the wheels apart, until both wheels carry their share. */
  private boolean balance() {
    double least = Draft.mmOf(Demands.Key.FRONT_SHARE_MIN) + SHARE_SPARE;
    double most = Draft.mmOf(Demands.Key.FRONT_SHARE_MAX) - SHARE_SPARE;
    for (int round = 0; round < ROUNDS; round++) {
      List<Double> all = new Weighing(trial()).frontShares();
      List<Double> laden = all.subList(1, all.size());
      double low = laden.stream().mapToDouble(s -> s).min().orElseThrow();
      double high = laden.stream().mapToDouble(s -> s).max().orElseThrow();
      if (low < least) {
        double lack = (least - low) * room().wheelbaseMm;
        double step = Math.ceil(Math.max(STEP_MM, Math.min(MOST_STEP_MM, lack)));
        tuning = tuning.withSeatAhead(tuning.seatAheadMm() + step);
      } else if (high > most && Double.isNaN(brief.wheelbaseMm())) {
        tuning = tuning.withLonger(tuning.longerMm() + STEP_MM);
      } else {
        return true;
      }
      boolean tooLong = room().wheelbaseMm > LONGEST_MM;
      if (tooLong || room().wheelbaseMm < room().leastWheelbaseMm) {
        return false;
      }
    }
    return false;
  }
}
