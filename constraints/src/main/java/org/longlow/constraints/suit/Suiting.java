package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Progress;

/** Finds places of seats, pegs and grips that suit the whole crew. */
public final class Suiting {

  /** Places whose pins all lie this near each other are one alternative, mm. */
  static final double SAME_MM = 20;

  private final LayoutProblem problem;
  private final Study before;
  private final double[] start;
  private final Map<String, List<String>> groups;
  private final List<String> pins;
  private final SuitSettings settings;
  private final Progress progress;
  private final Alternatives seen;

  private final AtomicInteger measured = new AtomicInteger();
  private volatile boolean cutShort;

  private Suiting(
      Study before, Map<String, List<String>> groups, SuitSettings settings, Progress progress) {
    this.before = before;
    this.problem = before.placed().problem();
    this.start = before.placed().report().x();
    this.groups = groups;
    this.pins = groups.values().stream().flatMap(List::stream).toList();
    this.settings = settings;
    this.progress = progress;
    seen = new Alternatives(before, pins);
  }

  /**
   * Lets words pass that name what may move; it takes no study.
   *
   * @throws UnknownNames if a name is unknown or what it names cannot move
   */
  public static void checkMoves(Placed placed, List<String> moves) {
    new Movable(placed).resolve(moves);
  }

  /**
   * Returns where the things named may go.
   *
   * @param layout the layout; if it contradicts itself there are no alternatives
   * @param moves names of pins or parts, or of the rider's seat {@code pan}, {@code back}, {@code
   *     head}, {@code pegs}, {@code grips}
   * @throws UnknownNames if a name is unknown or what it names cannot move
   */
  public static SuitReport of(Layout layout, List<String> moves, SuitSettings settings) {
    return of(layout, moves, settings, Progress.NONE);
  }

  /**
   * As {@link #of(Layout, List, SuitSettings)}, saying how far it is.
   *
   * @param progress told from several threads
   */
  public static SuitReport of(
      Layout layout, List<String> moves, SuitSettings settings, Progress progress) {
    Study before = Study.of(layout);
    if (before.contradicts()) {
      return new SuitReport(
          before, Alternatives.comfort(before), List.of(), Optional.empty(), List.of(), true);
    }
    return new Suiting(before, new Movable(before.placed()).resolve(moves), settings, progress)
        .report();
  }

  private SuitReport report() {
    Mover mover = new Mover(problem, pins, start);
    double[] home = mover.at(start);
    Search.Aim aim = Search.Aim.crew(problem, home);
    double[][] ways = mover.directions(start);
    // each start has a mover of its own: nothing is shared, so order and threads do not matter
    AtomicInteger done = new AtomicInteger();
    int all = settings.seeds();
    List<Search.Trial> rough =
        IntStream.range(0, settings.seeds())
            .parallel()
            .mapToObj(seed -> rough(seed, home, ways, aim))
            .peek(t -> progress.at("looking from several starts", done.incrementAndGet(), all))
            .filter(Objects::nonNull)
            .toList();
    List<Search.Trial> promising = best(rough, aim, settings.alternatives() + 1);
    AtomicInteger refined = new AtomicInteger();
    List<Search.Trial> found =
        new ArrayList<>(
            promising.parallelStream()
                .map(t -> finish(t, aim))
                .peek(t -> progress.at("refining", refined.incrementAndGet(), promising.size()))
                .toList());
    Search.Trial present = search(aim).measure(start);
    found.add(present);
    double worst = merit(present, aim);
    List<Search.Trial> kept = new ArrayList<>(best(found, aim, settings.alternatives()));
    Search.Trial shared = kept.get(0);
    kept.removeIf(t -> t != shared && (t == present || merit(t, aim) > worst));
    List<SuitReport.Alternative> alternatives = new ArrayList<>();
    kept.forEach(t -> alternatives.add(seen.at(t.x())));
    // margins are measured on the way, verdicts only here: a place may lose one and be easier
    alternatives.sort(
        Comparator.comparing((SuitReport.Alternative a) -> a.isWorseThan(before))
            .thenComparingLong(a -> a.study().failing()));
    if (alternatives.get(0).isWorseThan(before)) {
      alternatives.add(0, seen.at(present.x()));
      alternatives
          .subList(Math.min(alternatives.size(), settings.alternatives()), alternatives.size())
          .clear();
    }
    Adjusting adjusting =
        new Adjusting(problem, groups, settings, settings.measured() - measured.get(), progress);
    Optional<SuitReport.Adjustment> adjustment =
        settings.adjust() && layout().crew().size() > 1 && shared.fails() > 0
            ? adjusting.from(shared.x())
            : Optional.empty();
    return new SuitReport(
        before,
        Alternatives.comfort(before),
        alternatives,
        adjustment,
        limiting(alternatives.get(0).study()),
        !cutShort && !adjusting.wasCutShort());
  }

  private Search search(Search.Aim aim) {
    return new Search(new Mover(problem, pins, start), aim, start);
  }

  private double merit(Search.Trial trial, Search.Aim aim) {
    return Search.merit(trial, aim, Search.FULL_WEIGHT);
  }

  /** The best distinct trials, fewest failing findings first. */
  private List<Search.Trial> best(List<Search.Trial> trials, Search.Aim aim, int most) {
    List<Search.Trial> ranked = new ArrayList<>(trials);
    ranked.sort(
        Comparator.comparingLong(Search.Trial::fails).thenComparingDouble(t -> merit(t, aim)));
    List<Search.Trial> kept = new ArrayList<>();
    for (Search.Trial trial : ranked) {
      boolean seen = kept.stream().anyMatch(k -> Nearing.farthest(k.at(), trial.at()) < SAME_MM);
      if (!seen && kept.size() < most) {
        kept.add(trial);
      }
    }
    return kept;
  }

  private Search.Trial finish(Search.Trial trial, Search.Aim aim) {
    Search search = search(aim).within(share(settings.alternatives() + 1));
    Search.Trial end = search.finish(trial, settings.stepsPerSeed());
    return counted(search, end);
  }

  private Search.Trial rough(int seed, double[] home, double[][] ways, Search.Aim aim) {
    Mover own = new Mover(problem, pins, start);
    double[] x = start;
    if (seed > 0) {
      double[] target = Starts.of(seed, home, ways, settings.spreadMm());
      Optional<double[]> there = own.to(start, target);
      if (there.isEmpty()) {
        return null;
      }
      x = there.get();
    }
    Search search = new Search(own, aim, start).within(share(settings.seeds()));
    Search.Trial end = search.rough(x, settings.stepsPerSeed());
    return counted(search, end);
  }

  private Search.Trial counted(Search search, Search.Trial end) {
    cutShort |= search.isSpent();
    measured.addAndGet(search.measured());
    return end;
  }

  /**
   * A quarter of what may be measured goes to each of the two passes, and what is left to
   * adjusting.
   */
  private int share(int searches) {
    return settings.measured() / (4 * searches);
  }

  private Layout layout() {
    return before.layout();
  }

  /** For each person the worst failing finding about them, or the one with least to spare. */
  private List<SuitReport.Limiting> limiting(Study study) {
    List<SuitReport.Limiting> limiting = new ArrayList<>();
    Set<String> others = seatsThatStay(study);
    Map<String, Finding> old = Alternatives.byId(before);
    for (String person : layout().crew().keySet()) {
      study.findings().stream()
          .filter(f -> Concerns.person(f, person) && Tightness.known(f))
          .filter(f -> f.who().filter(w -> others.contains(w.seat())).isEmpty())
          .filter(f -> f.verdict() == Verdict.FAIL || study == before || hangsOnMoves(f, old))
          .min(
              Comparator.comparing((Finding f) -> f.verdict())
                  .thenComparingDouble(Tightness::of)
                  .thenComparing(Finding::id))
          .ifPresent(f -> limiting.add(new SuitReport.Limiting(person, f)));
    }
    return limiting;
  }

  /** Whether a figure changed with the moves, so that these can have a say in it. */
  private static boolean hangsOnMoves(Finding f, Map<String, Finding> before) {
    Finding was = before.get(f.id());
    return was == null || !(Math.abs(was.value() - f.value()) < 1e-6);
  }

  /** Seats of which no part has moved: what holds people there is not for these moves to mend. */
  private Set<String> seatsThatStay(Study study) {
    Places was = before.placed().places();
    Places now = study.placed().places();
    Set<String> stay = new LinkedHashSet<>();
    SeatParts.of(layout())
        .forEach(
            (name, seat) -> {
              boolean moves =
                  seat.parts().stream()
                      .flatMap(part -> part.pins().stream())
                      .anyMatch(p -> pins.contains(p) || was.pin(p).distance(now.pin(p)) > 1e-6);
              if (!moves) {
                stay.add(name);
              }
            });
    return stay;
  }
}
