package org.longlow.sketcher.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.View;
import picocli.CommandLine.Option;

/** Who is drawn, and in which stance. */
final class ViewOption {

  private static final Pattern OPENING =
      Pattern.compile("(.+) at (\\d{1,3}(?:\\.\\d+)?) ?%", Pattern.DOTALL);

  @Option(
      names = "--who",
      paramLabel = "NAMES",
      split = ",",
      description = {
        "Who is drawn: one name, or the rider's and the passenger's with a comma between; of who",
        "has only the passenger's seat the name is enough.",
        "The first of the crew unless said."
      })
  private List<String> who;

  @Option(
      names = "--stance",
      paramLabel = "NAME",
      description = {
        "The stance drawn, such as \"as drawn\", unladen, laden, \"full bump\", parked,",
        "\"open, SECTION\" or one named in the layout; \"open, SECTION at 40 %%\" stops it on its",
        "way. Laden unless said."
      })
  private String stance;

  /** Whether somebody said who is drawn, or how the machine stands. */
  boolean isGiven() {
    return who != null || stance != null;
  }

  /**
   * Returns what to draw of a study.
   *
   * @throws Refusal if a name is unknown or somebody cannot sit where they are to be drawn
   */
  PictureOptions of(Study study) {
    List<Occupant> people = who == null ? List.of() : people(study);
    String rider = people.isEmpty() ? "" : people.get(0).person();
    PictureOptions plain = PictureOptions.PLAIN.withPerson(rider);
    PictureOptions options = stance == null ? plain : stance(study, plain);
    PictureOptions shown = options.withSeated(people);
    if (!people.isEmpty() && !View.shown(study, shown).equals(View.shown(study, options))) {
      ElevationPicture.standing(study, options)
          .filter(s -> s.kind() == Stance.Kind.LADEN && options.stance().isPresent())
          .ifPresent(
              s -> {
                throw new Refusal(
                    "--stance is '"
                        + stance
                        + "', but --who seats "
                        + String.join(", ", who)
                        + "; write --stance laden, or leave one of them out");
              });
    }
    return shown;
  }

  /** The first named takes the rider's seat, each other one the next. */
  private List<Occupant> people(Study study) {
    Layout layout = study.layout();
    List<String> seats = new ArrayList<>(SeatParts.of(layout).keySet());
    seats.sort((a, b) -> Boolean.compare(!a.equals(Occupant.RIDER), !b.equals(Occupant.RIDER)));
    List<Occupant> people = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    if (who.isEmpty()) {
      faults.add("--who names nobody; write a name, or leave it out for the first of the crew");
    }
    for (String raw : who) {
      Occupant meant = meant(study, raw.strip(), seats, people);
      String name = meant.person();
      if (!layout.crew().containsKey(name)) {
        faults.add(
            "--who names '"
                + name
                + "', who is not in the crew; there "
                + (layout.crew().isEmpty()
                    ? "is nobody in it"
                    : "are " + String.join(", ", layout.crew().keySet())));
      } else if (!seen.add(name)) {
        faults.add("--who names '" + name + "' twice; name each person once");
      } else if (people.size() == seats.size()) {
        faults.add(
            "--who names " + who.size() + " people; the seats are " + String.join(", ", seats));
      } else {
        people.add(meant);
      }
    }
    people.sort(Comparator.comparing(Occupant::rides).reversed());
    people.forEach(occupant -> cannot(study, occupant).ifPresent(faults::add));
    if (!faults.isEmpty()) {
      throw new Refusal(faults);
    }
    return people.get(0).rides() ? people : View.seating(study, people.get(0)).seated();
  }

  /** Whoever does not sit on the seat that is next is meant on the one they have. */
  private static Occupant meant(
      Study study, String said, List<String> seats, List<Occupant> before) {
    String next = before.size() < seats.size() ? seats.get(before.size()) : "";
    return study
        .sitting(said, next)
        .map(Sitting::occupant)
        .or(() -> SaidOccupant.of(study, said))
        .filter(who -> before.stream().noneMatch(other -> other.seat().equals(who.seat())))
        .orElse(new Occupant(said, next));
  }

  /** Returns why somebody cannot be drawn on a seat, if they cannot. */
  private static Optional<String> cannot(Study study, Occupant who) {
    Optional<Sitting> sitting = study.sitting(who.person(), who.seat());
    if (sitting.isEmpty()) {
      List<String> those =
          study.sittings().stream()
              .filter(s -> s.seat().equals(who.seat()))
              .map(Sitting::person)
              .toList();
      return Optional.of(
          "--who puts "
              + who.person()
              + " on the "
              + who.seat()
              + " seat, which is not among their seats; there "
              + (those.isEmpty() ? "sits nobody" : "sit " + String.join(", ", those)));
    }
    return sitting.get().outcome() instanceof SeatOutcome.Unseatable none
        ? Optional.of(
            "--who: "
                + who.person()
                + " cannot sit on the "
                + who.seat()
                + " seat: "
                + none.reason())
        : Optional.empty();
  }

  /** A stance's own name, its kind, or the layout's name for it; a section stopped on its way. */
  private PictureOptions stance(Study study, PictureOptions options) {
    Optional<PictureOptions> found = named(study, stance, options);
    if (found.isPresent()) {
      return found.get();
    }
    Matcher m = OPENING.matcher(stance);
    if (m.matches()) {
      double opening = Double.parseDouble(m.group(2)) / 100;
      Optional<PictureOptions> partly =
          named(study, m.group(1), options)
              .filter(o -> o.stance().filter(c -> c.kind() == Stance.Kind.OPEN).isPresent());
      if (partly.isPresent() && opening <= 1) {
        return partly.get().withOpening(opening);
      }
    }
    Set<String> allowed = new LinkedHashSet<>(List.of(Stance.Kind.LADEN.word(), View.DRAWN));
    study.standings().forEach(s -> allowed.add(s.condition().says()));
    allowed.addAll(study.layout().stances().keySet());
    throw new Refusal(
        "--stance is '"
            + stance
            + "'; there are "
            + String.join("; ", allowed)
            + (study.layout().sections().isEmpty()
                ? ""
                : "; an open one may end in 'at N %', N from 0 to 100"));
  }

  private static Optional<PictureOptions> named(Study study, String name, PictureOptions options) {
    Optional<Condition> own =
        study.standings().stream()
            .map(Standing::condition)
            .filter(c -> c.says().equals(name))
            .findFirst();
    if (own.isPresent()) {
      return Optional.of(options.withStance(own));
    }
    Map<String, Stance> stances = study.layout().stances();
    for (Stance.Kind kind : Stance.Kind.values()) {
      if (kind.word().equals(name) && kind != Stance.Kind.OPEN) {
        return of(study, new Stance(kind, ""), options);
      }
    }
    if (stances.containsKey(name)) {
      return of(study, stances.get(name), options);
    }
    return name.equals(View.DRAWN) ? Optional.of(options.withAsDrawn()) : Optional.empty();
  }

  /** A laden stance is that of those who are drawn. */
  private static Optional<PictureOptions> of(Study study, Stance stance, PictureOptions options) {
    if (stance.kind() == Stance.Kind.LADEN) {
      return Optional.of(options.withStance(Optional.empty()));
    }
    return study.standings().stream()
        .map(Standing::condition)
        .filter(c -> c.stance().equals(stance))
        .findFirst()
        .map(c -> options.withStance(Optional.of(c)));
  }
}
