package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.check.BodyChecks;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.Crowd;
import org.longlow.constraints.fit.CrowdRun;
import org.longlow.constraints.fit.EvenlyTaken;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.body.Gear;

/**
 * Finds places at which most of a crowd fit the rider's seat.
 *
 * <p>Whether somebody fits is yes or no, so no slope leads there: from each start a pattern search
 * (Hooke and Jeeves, Journal of the ACM 8, 1961) looks one step either way along each direction in
 * which things can go, takes the best, goes on that way while it gets better, and halves its step
 * where nothing is. Better is: more people of whom nothing fails; of as many, fewer reasons; then
 * nearer to where things are. Places where ties and limits do not hold, or where what moves comes
 * too near to another part than it is now, are no places. A sample of the crowd decides on the way,
 * the whole crowd and a full study are told of what was found. The same for any number of threads.
 */
public final class CrowdSuiting {

  /** A step that the ties leave less of leads nowhere, mm. */
  private static final double MOVES_MM = 1;

  private final Study before;
  private final LayoutProblem problem;
  private final double[] start;
  private final List<String> pins;
  private final People people;
  private final CrowdSettings settings;
  private final Progress progress;
  private final Mover mover;
  private final double[] home;
  private final Set<String> company;
  private final Set<String> fouled;
  private int tried;

  /**
   * Whom places are for.
   *
   * @param crowd who they are
   * @param gear what all of them wear
   * @param without words of kinds of findings that do not count
   * @param threads on how many threads they are judged, from 1
   */
  public record People(Crowd crowd, Gear gear, Set<String> without, int threads) {
    public People {
      without = Set.copyOf(without);
    }
  }

  private CrowdSuiting(
      Study before, List<String> pins, People people, CrowdSettings settings, Progress progress) {
    this.before = before;
    this.problem = before.placed().problem();
    this.start = before.placed().report().x();
    this.pins = pins;
    this.people = people;
    this.settings = settings;
    this.progress = progress;
    mover = new Mover(problem, pins, start);
    home = mover.at(start);
    company = new HashSet<>(mover.company(start));
    company.addAll(pins);
    fouled = fouled(checks(start).orElseThrow());
  }

  /**
   * Returns where the things named may go; empty where the layout contradicts itself or nobody can
   * sit on a rider's seat.
   *
   * @param before the layout as it is, studied
   * @param moves names of pins or parts, or of the rider's seat {@code pan}, {@code back}, {@code
   *     head}, {@code pegs}, {@code grips}
   * @throws UnknownNames if a name is unknown or what it names cannot move
   */
  public static Optional<CrowdReport> of(
      Study before, List<String> moves, People people, CrowdSettings settings, Progress progress) {
    if (before.contradicts() || people.crowd().size() == 0 || !seats(before)) {
      return Optional.empty();
    }
    List<String> pins =
        new Movable(before.placed())
            .resolve(moves).values().stream().flatMap(List::stream).toList();
    return Optional.of(new CrowdSuiting(before, pins, people, settings, progress).report());
  }

  private static boolean seats(Study study) {
    SeatParts seat = SeatParts.of(study.layout()).get(Occupant.RIDER);
    return seat != null && seat.back().isPresent() && seat.feet().isPresent();
  }

  /**
   * A place that was looked at.
   *
   * @param x values of all variables of the layout
   * @param at coordinates of the moved pins
   * @param fit of how many of the sample nothing fails
   * @param reasons of how many and for how much something does
   * @param mm how far anything is from where it is now
   */
  private record Tried(double[] x, double[] at, int fit, int reasons, double mm) {
    static final Comparator<Tried> BEST_FIRST =
        Comparator.comparingInt((Tried t) -> -t.fit())
            .thenComparingInt(Tried::reasons)
            .thenComparingDouble(t -> Math.rint(t.mm()));
  }

  private CrowdReport report() {
    Crowd sample =
        new EvenlyTaken(people.crowd(), Math.min(settings.sample(), people.crowd().size()));
    double[][] ways = mover.directions(start);
    List<Tried> starts = new ArrayList<>();
    for (int seed = 0; seed < settings.starts(); seed++) {
      to(start, Starts.of(seed, home, ways, settings.spreadMm()), sample).ifPresent(starts::add);
    }
    starts.sort(Tried.BEST_FIRST);
    List<Tried> from = apart(starts, settings.alternatives());
    List<Tried> found = new ArrayList<>();
    for (int k = 0; k < from.size(); k++) {
      int allowed = tried + (settings.tried() - tried) / (from.size() - k);
      found.add(search(from.get(k), ways, sample, allowed));
    }
    found.sort(Tried.BEST_FIRST);
    Alternatives seen = new Alternatives(before, pins);
    FitReport now = judged(checks(start).orElseThrow(), people.crowd());
    List<CrowdReport.Place> places = new ArrayList<>();
    for (Tried one : apart(found, settings.alternatives())) {
      places.add(
          new CrowdReport.Place(
              seen.at(one.x()), judged(checks(one.x()).orElseThrow(), people.crowd())));
    }
    // what the sample did not know: of the whole crowd no more fit, or the machine itself fails
    places.removeIf(p -> p.fit().fitting().count() <= now.fitting().count());
    places.sort(
        Comparator.comparing(CrowdReport.Place::breaksTheMachine)
            .thenComparingInt(p -> -p.fit().fitting().count()));
    return new CrowdReport(before, now, places, sample.size(), tried < settings.tried());
  }

  private Tried search(Tried from, double[][] ways, Crowd sample, int allowed) {
    Tried best = from;
    double step = settings.stepMm();
    while (step >= settings.leastStepMm() && tried < allowed) {
      Tried around = best;
      List<Tried> next = new ArrayList<>();
      for (double[] way : ways) {
        for (int sign : new int[] {1, -1}) {
          if (tried < allowed) {
            to(best.x(), along(best.at(), way, sign * step), sample).ifPresent(next::add);
          }
        }
      }
      Optional<Tried> on = next.stream().min(Tried.BEST_FIRST).filter(t -> isBetter(t, around));
      if (on.isEmpty()) {
        step /= 2;
      }
      while (on.isPresent()) {
        Tried was = best;
        Tried reached = on.get();
        best = reached;
        on =
            tried < allowed
                ? to(reached.x(), onward(was.at(), reached.at()), sample)
                    .filter(t -> isBetter(t, reached))
                : Optional.empty();
      }
    }
    return best;
  }

  private static boolean isBetter(Tried one, Tried other) {
    return Tried.BEST_FIRST.compare(one, other) < 0;
  }

  private static double[] along(double[] at, double[] way, double mm) {
    double[] target = at.clone();
    for (int k = 0; k < target.length; k++) {
      target[k] += mm * way[k];
    }
    return target;
  }

  /** As far again. */
  private static double[] onward(double[] from, double[] to) {
    double[] target = to.clone();
    for (int k = 0; k < target.length; k++) {
      target[k] += to[k] - from[k];
    }
    return target;
  }

  /** Looks at the place nearest to a target; empty where it is none or no step away. */
  private Optional<Tried> to(double[] from, double[] target, Crowd sample) {
    boolean present = Nearing.farthest(target, home) < MOVES_MM;
    Optional<double[]> there = present ? Optional.of(start) : mover.to(from, target);
    if (there.isEmpty()) {
      return Optional.empty();
    }
    double[] x = there.get();
    double[] at = mover.at(x);
    if (!present && Nearing.farthest(at, mover.at(from)) < MOVES_MM) {
      return Optional.empty();
    }
    tried++;
    progress.at("places looked at", Math.min(tried, settings.tried()), settings.tried());
    return checks(x)
        .filter(c -> fouled.containsAll(fouled(c)))
        .map(c -> judged(c, sample))
        .map(
            fit ->
                new Tried(
                    x,
                    at,
                    fit.fitting().count(),
                    fit.people().stream().mapToInt(p -> p.fails().size()).sum(),
                    Nearing.farthest(at, home)));
  }

  private FitReport judged(BodyChecks checks, Crowd crowd) {
    BodyJudge judge = new BodyJudge(checks, people.gear(), people.without());
    return new CrowdRun(judge, crowd, people.threads(), Progress.NONE, () -> false)
        .run()
        .orElseThrow();
  }

  private Optional<BodyChecks> checks(double[] x) {
    Layout moved = problem.withPlaces(x);
    Places places = problem.places(x);
    BodyChecks checks =
        new BodyChecks(
            moved, SeatParts.of(moved).get(Occupant.RIDER), places, Shapes.of(moved, places));
    return Optional.of(checks).filter(c -> c.refusal().isEmpty());
  }

  /** What comes along and is too near to what stays. */
  private Set<String> fouled(BodyChecks checks) {
    Set<Part> moving =
        before.layout().parts().values().stream()
            .filter(part -> part.pins().stream().anyMatch(company::contains))
            .collect(Collectors.toSet());
    return checks.fouled(moving);
  }

  /** The first of those that lie within 20 mm of each other. */
  private static List<Tried> apart(List<Tried> sorted, int most) {
    List<Tried> kept = new ArrayList<>();
    for (Tried one : sorted) {
      if (kept.size() < most
          && kept.stream().allMatch(k -> Nearing.farthest(k.at(), one.at()) >= Suiting.SAME_MM)) {
        kept.add(one);
      }
    }
    return kept;
  }
}
