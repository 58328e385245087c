package org.longlow.constraints.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.longlow.constraints.check.Checks;
import org.longlow.constraints.check.finding.Contradicting;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.words.Progress;

/**
 * A layout with everything that is known about it. Its findings take longer than all the rest, so
 * they may be left until somebody asks for them; for any number of threads.
 */
public final class Study {

  private final Layout layout;
  private final Placed placed;
  private final Map<String, PartShape> shapes;
  private final List<Sitting> sittings;
  private final List<Standing> standings;

  /** Works the findings out; null once that is done. */
  private Supplier<List<Finding>> checks;

  private volatile List<Finding> findings;

  /**
   * @param layout the document
   * @param placed where its pins are
   * @param shapes its parts as placed, in the order of the layout
   * @param sittings its crew, person by person
   * @param standings its stances
   * @param findings its findings, in a fixed order
   */
  public Study(
      Layout layout,
      Placed placed,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      List<Standing> standings,
      List<Finding> findings) {
    this(layout, placed, shapes, sittings, standings, () -> findings);
    findings();
  }

  private Study(
      Layout layout,
      Placed placed,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      List<Standing> standings,
      Supplier<List<Finding>> checks) {
    this.layout = layout;
    this.placed = placed;
    this.shapes = Collections.unmodifiableMap(shapes);
    this.sittings = List.copyOf(sittings);
    this.standings = List.copyOf(standings);
    this.checks = checks;
  }

  /** Returns the study of {@code layout}, solved from where it is drawn. */
  public static Study of(Layout layout) {
    return of(Placer.place(layout));
  }

  /** Returns the study of a layout that is solved already. */
  public static Study of(Placed placed) {
    return of(placed, Progress.NONE);
  }

  /** As {@link #of(Placed)}, saying how far it is; a crew of dozens takes a while. */
  public static Study of(Placed placed, Progress progress) {
    Study study = unchecked(placed, progress);
    study.findings();
    return study;
  }

  /** As {@link #of(Placed)}, but its findings are worked out by whoever asks for them first. */
  public static Study unchecked(Placed placed) {
    return unchecked(placed, Progress.NONE);
  }

  private static Study unchecked(Placed placed, Progress progress) {
    Layout layout = placed.layout();
    Map<String, PartShape> shapes = Shapes.of(layout, placed.places());
    List<Sitting> sittings = Seats.of(layout, placed.places());
    Wheels wheels = Wheels.of(layout, placed.places());
    List<Standing> standings = new Stances(wheels, shapes).all(riders(sittings));
    return new Study(
        layout,
        placed,
        shapes,
        sittings,
        standings,
        () ->
            Contradicting.told(Checks.all(placed, shapes, sittings, wheels, standings, progress)));
  }

  /** Returns the same machine with these findings. */
  public Study withFindings(List<Finding> others) {
    return new Study(layout, placed, shapes, sittings, standings, others);
  }

  public Layout layout() {
    return layout;
  }

  public Placed placed() {
    return placed;
  }

  public Map<String, PartShape> shapes() {
    return shapes;
  }

  public List<Sitting> sittings() {
    return sittings;
  }

  public List<Standing> standings() {
    return standings;
  }

  /** Returns its findings, in a fixed order; works them out if nobody has asked yet. */
  public List<Finding> findings() {
    if (findings == null) {
      check();
    }
    return findings;
  }

  private synchronized void check() {
    if (findings == null) {
      findings = List.copyOf(checks.get());
      checks = null;
    }
  }

  /** Returns whether its findings are worked out. */
  public boolean isChecked() {
    return findings != null;
  }

  /** Returns whether the other is of the very same machine, whatever was found of it. */
  public boolean isOfSame(Study other) {
    return placed == other.placed
        && layout == other.layout
        && sittings == other.sittings
        && standings == other.standings;
  }

  /** Returns each person alone on the rider's seat, and each pair where there is a second seat. */
  public static List<Rider> riders(List<Sitting> sittings) {
    List<Rider> riders = new ArrayList<>();
    // one body for each of them, shared by all pairs they are in
    List<Rider.Seated> seated =
        sittings.stream().filter(s -> s.posture().isPresent()).map(Study::aboard).toList();
    for (Rider.Seated first : seated) {
      if (!first.who().rides()) {
        continue;
      }
      riders.add(new Rider(List.of(first)));
      for (Rider.Seated second : seated) {
        if (!second.who().rides() && !second.who().person().equals(first.who().person())) {
          riders.add(new Rider(List.of(first, second)));
        }
      }
    }
    return riders;
  }

  private static Rider.Seated aboard(Sitting sitting) {
    return new Rider.Seated(sitting.occupant(), sitting.masses(), sitting.prisms());
  }

  /** Returns whether the ties or limits of the layout cannot all hold. */
  public boolean contradicts() {
    SolveStatus status = placed.report().status();
    return status == SolveStatus.CONTRADICTS || status == SolveStatus.LIMIT_FAILS;
  }

  /** Returns how many findings fail. */
  public long failing() {
    return count(Verdict.FAIL);
  }

  /** Returns how many findings have this verdict. */
  public long count(Verdict verdict) {
    return findings().stream().filter(f -> f.verdict() == verdict).count();
  }

  /** Returns the sitting of a person on a seat, if there is one. */
  public Optional<Sitting> sitting(String person, String seat) {
    return sittings.stream()
        .filter(s -> s.person().equals(person) && s.seat().equals(seat))
        .findFirst();
  }

  /** Returns the machine in a condition that it has. */
  public Optional<Standing> standing(Condition condition) {
    return standings.stream().filter(s -> s.condition().equals(condition)).findFirst();
  }

  /** Returns one line: how many findings fail, need care and pass. */
  public String summary() {
    String counts =
        Arrays.stream(Verdict.values())
            .filter(v -> v != Verdict.NOT_APPLICABLE || count(v) > 0)
            .map(v -> v.says(count(v)))
            .collect(Collectors.joining(", "));
    return layout.name()
        + ": "
        + findings().size()
        + " findings: "
        + counts
        + aside()
        + (contradicts() ? "; the layout contradicts itself" : "");
  }

  /** Returns a line for each of the crew whose body is not the survey's, with the reasons. */
  public List<String> doubts() {
    return sittings.stream()
        .filter(s -> s.doubt().isPresent())
        .map(
            s ->
                "Rough, as "
                    + s.doubt().get()
                    + ": "
                    + String.join(" ", s.body().measures().notes()))
        .distinct()
        .toList();
  }

  private String aside() {
    long aside = findings().stream().filter(Finding::aside).count();
    return aside == 0 ? "" : " (" + aside + " of those that need care only for a text to be read)";
  }
}
