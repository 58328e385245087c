package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.chassis.TyreSizeReader;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.rider.body.Sex;

/**
 * Answers with everything that was left out filled in.
 *
 * @param crew who is aboard, the rider first
 * @param pillion whether there is a second seat
 * @param wheelbaseMm mm; NaN lets it follow from the rest
 * @param frontTyre size designation
 * @param rearTyre size designation
 * @param reclineDeg of the back rest from the vertical, deg
 * @param drive what drives it
 * @param place where that is
 * @param box its room
 * @param tracing its outline, where there is one
 * @param front how the front wheel is carried
 * @param law rule sets by their words
 */
record Brief(
    List<Person> crew,
    boolean pillion,
    double wheelbaseMm,
    String frontTyre,
    String rearTyre,
    double reclineDeg,
    Drive drive,
    Place place,
    Box box,
    Optional<Tracing> tracing,
    FrontPart.Kind front,
    List<String> law) {

  /** The seat behind the rider. */
  static final String PILLION = Occupant.PASSENGER;

  private static final String FIRST = "Wren";
  private static final String SECOND = "Robin";

  static final double RECLINE_DEG = 30;
  static final String FRONT_TYRE = "110/80-16";
  static final String REAR_TYRE = "140/70-16";

  Brief {
    crew = List.copyOf(crew);
    law = List.copyOf(law);
  }

  /** Returns {@code answers} with all else filled in; only for answers without a fault. */
  static Brief of(Answers answers) {
    boolean pillion = pillion(answers);
    Answers.Builder filled = new Answers.Builder();
    filled.seats(pillion ? 2 : 1);
    filled.rider(answers.rider().orElseGet(() -> Who.percentile(Sex.MALE, 50)));
    if (pillion || answers.second().isPresent()) {
      filled.second(answers.second().orElseGet(() -> Who.percentile(Sex.FEMALE, 50)));
    }
    List<Person> crew = said(filled.answers());
    Drive drive =
        answers
            .drive()
            .orElse(
                answers.place().filter(p -> p == Place.HUB).isPresent()
                    ? Drive.MOTOR
                    : Drive.ENGINE);
    Place place = answers.place().orElse(drive == Drive.ENGINE ? Place.BEFORE : Place.BEHIND);
    return new Brief(
        crew,
        pillion,
        answers.wheelbaseMm().orElse(Double.NaN),
        answers.frontTyre().orElse(FRONT_TYRE),
        answers.rearTyre().orElse(REAR_TYRE),
        answers.reclineDeg().orElse(RECLINE_DEG),
        drive,
        place,
        answers.box().orElseGet(() -> room(answers.tracing(), drive, place)),
        answers.tracing(),
        answers.front().orElse(FrontPart.Kind.TELESCOPIC),
        answers.law().orElseGet(() -> LawTables.sets().stream().map(RuleSet::id).toList()));
  }

  /** Returns whom the answers name, on the seats they are for; nobody who was not answered. */
  static List<Person> said(Answers answers) {
    List<Person> crew = new ArrayList<>();
    answers.rider().ifPresent(who -> crew.add(who.on(FIRST, Occupant.RIDER)));
    String seat = pillion(answers) ? PILLION : Occupant.RIDER;
    answers.second().ifPresent(who -> crew.add(who.on(SECOND, seat)));
    return crew;
  }

  private static boolean pillion(Answers answers) {
    return answers.seats().orElse(1) == 2;
  }

  /** What was traced is as broad as is usual; what it weighs goes by its size. */
  private static Box room(Optional<Tracing> tracing, Drive drive, Place place) {
    Box usual = usual(drive, place);
    return tracing
        .map(
            t ->
                new Box(
                    t.lengthMm(),
                    t.heightMm(),
                    usual.breadthMm(),
                    guessedKg(drive, t.lengthMm() * t.heightMm() * usual.breadthMm())))
        .orElse(usual);
  }

  /**
   * Room of a middling single or twin with its gearbox, lying or upright, and of motors of some 10
   * kW; common sizes from memory, to be replaced by a tape measure.
   */
  private static Box usual(Drive drive, Place place) {
    if (drive == Drive.MOTOR) {
      return place == Place.HUB ? new Box(230, 230, 120, 14) : new Box(220, 220, 220, 22);
    }
    return place == Place.UNDER ? new Box(400, 250, 320, 46) : new Box(390, 310, 320, 48);
  }

  /**
   * What something of this size weighs if nobody has weighed it, kg: as {@link #usual} ones do for
   * their boxes.
   *
   * @param drive null where nobody said; then an engine
   */
  static double guessedKg(Drive drive, double boxMm3) {
    Box usual = usual(drive == null ? Drive.ENGINE : drive, Place.BEFORE);
    double kgMm3 = usual.massKg() / (usual.lengthMm() * usual.heightMm() * usual.breadthMm());
    return Math.max(Box.LEAST.massKg(), Math.rint(kgMm3 * boxMm3));
  }

  Tyre tyreAhead() {
    return TyreSizeReader.read(frontTyre).size().tyre();
  }

  Tyre tyreBehind() {
    return TyreSizeReader.read(rearTyre).size().tyre();
  }

  boolean electric() {
    return drive == Drive.MOTOR;
  }

  Brief withWheelbaseMm(double mm) {
    return new Brief(
        crew, pillion, mm, frontTyre, rearTyre, reclineDeg, drive, place, box, tracing, front, law);
  }

  Brief withBoxHeightMm(double mm) {
    Box lower = new Box(box.lengthMm(), mm, box.breadthMm(), box.massKg());
    return new Brief(
        crew,
        pillion,
        wheelbaseMm,
        frontTyre,
        rearTyre,
        reclineDeg,
        drive,
        place,
        lower,
        tracing,
        front,
        law);
  }

  /** Those on one seat. */
  List<Person> on(String seat) {
    return crew.stream().filter(p -> p.seats().contains(seat)).toList();
  }
}
