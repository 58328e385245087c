package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverLimit;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.constraints.solve.problem.SolverWish;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.step.Cancelling;
import org.longlow.constraints.solve.step.GroupSystem;
import org.longlow.constraints.solve.step.Softened;

/**
 * Finds a smallest set of ties and limits that cannot all hold.
 *
 * <p>It begins with those whose slopes cancel where the whole came to rest ({@link Cancelling}).
 * While they can hold, what is off by most there is taken in too; then each is left out once more,
 * and those that can be spared stay out. Where nothing cancels, ties are divided and conquered (U.
 * Junker, QuickXplain, AAAI 2004). "Smallest" means that no member can be spared; another set may
 * have fewer members. Whether a set can hold is asked of the solver itself, from the start and from
 * where the whole came to rest. All of that together may cost a stated amount of work; a set that
 * was not tried to the end is not reported.
 */
final class Contradiction {
  /** How many times longer the search is that confirms a contradiction. */
  private static final int LONG_SEARCH = 4;

  /** What was easy to find is worth confirming by a longer search: up to this share of the work. */
  private static final double EASY_SHARE = 0.1;

  private record Demand(boolean isLimit, int index) {}

  private final Problem problem;
  private final SolverSettings settings;
  private final Work work;
  private SolverSettings asking;
  private boolean costly;
  private double[] rest;

  /** Where sets held that could. */
  private final List<double[]> positions = new ArrayList<>();

  /**
   * @param work what the search may cost
   */
  Contradiction(Problem problem, SolverSettings settings, Work work) {
    this.problem = problem.withWishes(List.of());
    this.settings = settings;
    this.work = work;
    asking = settings.withKeepTurns(false);
  }

  /**
   * The set; empty when the solver finds that all can hold after all, or when the work allowed is
   * used up.
   */
  Optional<Conflict> smallest(SolveReport report) {
    rest = report.x();
    boolean limits = !report.failedLimits().isEmpty() && report.failedTies().isEmpty();
    Set<String> failing = new HashSet<>(report.failedTies());
    report.failedLimits().forEach(f -> failing.add(f.limit()));
    // Only the group of the first failure matters: each contradiction lies within one group.
    Problem asked = limits ? problem : problem.withLimits(List.of());
    for (Group group : Group.split(asked)) {
      List<Demand> all = demands(group);
      List<Demand> suspects =
          all.stream().filter(d -> d.isLimit() == limits && failing.contains(name(d))).toList();
      if (suspects.isEmpty()) {
        continue;
      }
      costly = group.limitRelations(asked).stream().anyMatch(Relation::costly);
      if (costly) {
        // What holds is found near the start; far away seats turn over, which is no answer.
        asking = asking.withRestarts(0);
      }
      List<Demand> found = among(suspects, all);
      if (!found.isEmpty() && !costly && work.isWithin(EASY_SHARE) && holdsAfterAll(found)) {
        // A longer search holds what seemed impossible: look again with that.
        asking = longer();
        found = among(suspects, all);
      }
      if (work.isSpent()) {
        return Optional.empty();
      }
      if (!found.isEmpty()) {
        return conflict(found);
      }
    }
    return Optional.empty();
  }

  private static List<Demand> demands(Group group) {
    Set<Demand> all = new LinkedHashSet<>();
    Arrays.stream(group.tieRows()).forEach(row -> all.add(new Demand(false, row[0])));
    Arrays.stream(group.limitRows()).forEach(row -> all.add(new Demand(true, row[0])));
    return new ArrayList<>(all);
  }

  private List<Demand> among(List<Demand> suspects, List<Demand> all) {
    List<Demand> cancelling = cancelling(all, rest);
    if (!cancelling.isEmpty()) {
      // the last are tried first when it comes to leave some out
      Demand worst = worst(suspects);
      cancelling.sort(Comparator.comparing(d -> d.equals(worst) ? 0 : isCostly(d) ? 2 : 1));
      return gather(cancelling, false, all);
    }
    if (suspects.get(0).isLimit()) {
      return gather(List.of(worst(suspects)), false, all);
    }
    if (!canHold(suspects)) {
      return gather(explain(List.of(), false, suspects), true, all);
    }
    return canHold(all) ? List.of() : gather(explain(List.of(), false, all), true, all);
  }

  /** Those whose slopes cancel at x, where what the demands miss is least; empty if none do. */
  private List<Demand> cancelling(List<Demand> demands, double[] x) {
    List<Demand> ties = demands.stream().filter(d -> !d.isLimit()).toList();
    List<Demand> limits = demands.stream().filter(Demand::isLimit).toList();
    Problem some = only(demands, List.of());
    Set<Demand> set = new LinkedHashSet<>();
    for (Group group : Group.split(some)) {
      Softened soft = costly ? new Softened(group, some, work) : null;
      GroupSystem system = soft != null ? soft.system() : new GroupSystem(group, some);
      system.charge(work);
      boolean[] rows = Cancelling.rows(system, x, settings.tieToleranceMm());
      for (int i = 0; i < rows.length; i++) {
        if (rows[i] && i < system.ties) {
          set.add(ties.get(system.group.tieRows()[i][0]));
        } else if (rows[i] && i < system.rows.count) {
          set.add(limits.get(soft.limitOf(i - system.ties)));
        } else if (rows[i]) {
          set.add(limits.get(system.group.limitRows()[i - system.rows.count][0]));
        }
      }
    }
    return new ArrayList<>(set);
  }

  private Demand worst(List<Demand> suspects) {
    return suspects.stream().max(Comparator.comparingDouble(d -> offMm(d, rest))).orElseThrow();
  }

  /**
   * Takes in, one after the other, what is off by most where those taken in so far hold, until they
   * cannot; then leaves out what can be spared. Sets that hold are found quickly and those that do
   * not are slow to give up on, so this asks as few of the latter as can be. A search may give up
   * on a set that a later one holds: then it goes on from there.
   *
   * @param cannot whether the first of them are known not to hold together
   */
  private List<Demand> gather(List<Demand> first, boolean cannot, List<Demand> all) {
    List<Demand> taken = new ArrayList<>(first);
    boolean refused = cannot;
    while (!work.isSpent()) {
      double[] at = refused ? null : held(taken);
      if (at == null) {
        taken = spare(taken);
        at = known(taken);
        if (at == null) {
          return taken;
        }
      }
      refused = false;
      Demand worst = null;
      double most = settings.tieToleranceMm();
      for (Demand demand : all) {
        double off = taken.contains(demand) ? 0 : offMm(demand, at);
        if (off > most) {
          worst = demand;
          most = off;
        }
      }
      if (worst == null) {
        return List.of();
      }
      taken.add(worst);
    }
    return List.of();
  }

  /** By how much a demand is off, mm; what gives no number is off by more than any. */
  private double offMm(Demand demand, double[] x) {
    double off = 0;
    work.add(isCostly(demand) ? Work.COSTLY_VALUE : 1);
    if (demand.isLimit()) {
      off = -problem.limits().get(demand.index()).roomMm(x);
    } else {
      for (Relation relation : problem.ties().get(demand.index()).relations()) {
        off = Math.max(off, Math.abs(relation.evaluate(x, null) * relation.scale()));
      }
    }
    return Double.isNaN(off) ? Double.POSITIVE_INFINITY : off;
  }

  private SolverSettings longer() {
    return settings.withRestarts(LONG_SEARCH * (settings.restarts() + 1)).withKeepTurns(false);
  }

  /** Whether a longer search finds that a set can hold after all. */
  private boolean holdsAfterAll(List<Demand> found) {
    SolverSettings before = asking;
    asking = longer();
    boolean holds = canHold(found);
    asking = before;
    return holds;
  }

  private String name(Demand demand) {
    return demand.isLimit()
        ? problem.limits().get(demand.index()).name()
        : problem.ties().get(demand.index()).name();
  }

  /** Leaves out each that can be spared. */
  private List<Demand> spare(List<Demand> all) {
    List<Demand> small = new ArrayList<>(all);
    for (int k = small.size() - 1; k >= 0 && !work.isSpent(); k--) {
      List<Demand> without = new ArrayList<>(small);
      without.remove(k);
      if (!canHold(without)) {
        small = without;
      }
    }
    small.sort(Comparator.comparing(Demand::isLimit).thenComparing(Demand::index));
    return small;
  }

  private List<Demand> explain(List<Demand> base, boolean added, List<Demand> rest) {
    if (work.isSpent() || (added && !canHold(base))) {
      return List.of();
    }
    if (rest.size() == 1) {
      return rest;
    }
    int half = rest.size() / 2;
    List<Demand> left = rest.subList(0, half);
    List<Demand> right = rest.subList(half, rest.size());
    List<Demand> fromRight = explain(join(base, left), true, right);
    List<Demand> fromLeft = explain(join(base, fromRight), !fromRight.isEmpty(), left);
    return join(fromLeft, fromRight);
  }

  private static List<Demand> join(List<Demand> a, List<Demand> b) {
    List<Demand> both = new ArrayList<>(a);
    both.addAll(b);
    return both;
  }

  private boolean canHold(List<Demand> demands) {
    return demands.isEmpty() || held(demands) != null;
  }

  /** Values where demands hold, or null. */
  private double[] held(List<Demand> demands) {
    double[] at = known(demands);
    if (at != null) {
      return at;
    }
    SolveSession session = new SolveSession(only(demands, List.of()), asking, work);
    for (double[] from : near()) {
      SolveReport report = session.holdNearby(from);
      if (report.status().holds()) {
        positions.add(report.x());
        return report.x();
      }
    }
    SolveReport report = session.hold(problem.start());
    if (report.status().holds()) {
      positions.add(report.x());
      return report.x();
    }
    return null;
  }

  /** Values, of those found so far, where demands hold; null if there are none. */
  private double[] known(List<Demand> demands) {
    // bodies are looked at only where the rest holds
    List<Demand> ordered = demands.stream().sorted(Comparator.comparing(this::isCostly)).toList();
    return positions.stream()
        .filter(x -> ordered.stream().allMatch(d -> offMm(d, x) <= settings.tieToleranceMm()))
        .findFirst()
        .orElse(null);
  }

  /** Where to begin, the most promising first: sets that differ by one hold near each other. */
  private List<double[]> near() {
    if (costly) {
      // the search from the start begins with plain steps
      return positions.isEmpty() ? List.of() : List.of(positions.get(positions.size() - 1));
    }
    double[] first = positions.isEmpty() ? problem.start() : positions.get(positions.size() - 1);
    return List.of(first, rest);
  }

  private Problem only(List<Demand> demands, List<SolverWish> wishes) {
    List<SolverTie> ties = new ArrayList<>();
    List<SolverLimit> limits = new ArrayList<>();
    for (Demand demand : demands) {
      if (demand.isLimit()) {
        limits.add(problem.limits().get(demand.index()));
      } else {
        ties.add(problem.ties().get(demand.index()));
      }
    }
    return problem.withTies(ties).withLimits(limits).withWishes(wishes);
  }

  /** The set with what it takes: its most telling member gives way as little as it can. */
  private Optional<Conflict> conflict(List<Demand> set) {
    Demand gives =
        set.stream()
            .max(
                Comparator.comparing(Demand::isLimit)
                    .thenComparing(this::isCostly)
                    .thenComparingDouble(d -> offMm(d, rest)))
            .orElseThrow();
    List<Demand> others = set.stream().filter(d -> d != gives).toList();
    double[] at = others.isEmpty() ? rest : held(others);
    if (at == null) {
      return Optional.empty();
    }
    List<SolverWish> wishes = new ArrayList<>();
    for (Relation relation : missed(gives, at)) {
      wishes.add(new SolverWish(name(gives) + " " + wishes.size(), 1, relation));
    }
    SolveSession session = new SolveSession(only(others, wishes), asking, work);
    SolveReport nearest = session.solve(at, at);
    double miss = offMm(gives, at);
    for (double[] x : List.of(nearest.x(), rest)) {
      if (others.stream().allMatch(d -> offMm(d, x) <= settings.tieToleranceMm())) {
        miss = Math.min(miss, offMm(gives, x));
      }
    }
    List<String> names = set.stream().map(this::name).toList();
    return miss > 0 && !work.isSpent()
        ? Optional.of(new Conflict(names, name(gives), miss))
        : Optional.empty();
  }

  private boolean isCostly(Demand demand) {
    return demand.isLimit()
        && problem.limits().get(demand.index()).gaps().stream().anyMatch(Relation::costly);
  }

  /** The relations of a tie; of a limit that with the least room. */
  private List<Relation> missed(Demand demand, double[] x) {
    if (!demand.isLimit()) {
      return problem.ties().get(demand.index()).relations();
    }
    return problem.limits().get(demand.index()).gaps().stream()
        .min(Comparator.comparingDouble(gap -> gap.evaluate(x, null) * gap.scale()))
        .stream()
        .toList();
  }
}
