package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds a smallest set of ties and limits that cannot all hold.
 *
 * <p>Where limits fail, ties and limits are gathered one by one until they cannot hold. Else divide
 * and conquer (U. Junker, QuickXplain, AAAI 2004), then a deletion filter that leaves out each
 * member once more: whatever is left holds without it. "Smallest" means that no member can be
 * spared; another set may have fewer members. Whether a set can hold is asked of the solver itself,
 * from the start and from where the whole came to rest.
 */
final class Contradiction {
  /** How many times longer the search is that confirms a contradiction. */
  private static final int LONG_SEARCH = 4;

  private record Demand(boolean isLimit, int index) {}

  private final Problem problem;
  private final SolverSettings settings;
  private SolverSettings asking;
  private double[] rest;

  Contradiction(Problem problem, SolverSettings settings) {
    this.problem = problem.withWishes(List.of());
    this.settings = settings;
    asking = settings.withKeepTurns(false);
  }

  /**
   * Names of the demands, limits after ties; empty when the solver finds that all can hold after
   * all.
   */
  List<String> smallest(SolveReport report) {
    rest = report.x();
    boolean limits = report.status() == SolveStatus.LIMIT_FAILS;
    Set<String> failing = new HashSet<>(report.failedTies());
    Set<String> failingLimits = new HashSet<>();
    report.failedLimits().forEach(f -> failingLimits.add(f.limit()));
    // Only the group of the first failure matters: each contradiction lies within one group.
    Problem asked = limits ? problem : problem.withLimits(List.of());
    for (Group group : Group.split(asked)) {
      List<Demand> ties = new ArrayList<>();
      boolean concerned = false;
      for (int[] row : group.tieRows()) {
        Demand demand = new Demand(false, row[0]);
        if (!ties.contains(demand)) {
          ties.add(demand);
          concerned |= failing.contains(problem.ties().get(row[0]).name());
        }
      }
      List<Demand> all = new ArrayList<>(ties);
      if (limits) {
        for (int[] row : group.limitRows()) {
          Demand demand = new Demand(true, row[0]);
          if (!all.contains(demand)) {
            all.add(demand);
            concerned |= failingLimits.contains(name(demand));
          }
        }
      }
      if (!concerned) {
        continue;
      }
      List<Demand> suspects =
          all.stream().filter(d -> isSuspect(d, failing, failingLimits)).toList();
      List<Demand> found = limits ? gather(suspects, all) : search(suspects, all);
      if (!found.isEmpty() && holdsAfterAll(found)) {
        // A longer search holds what seemed impossible: look again with that.
        asking =
            settings.withRestarts(LONG_SEARCH * (settings.restarts() + 1)).withKeepTurns(false);
        found = limits ? gather(suspects, all) : search(suspects, all);
        asking = settings.withKeepTurns(false);
      }
      if (!found.isEmpty()) {
        return found.stream().map(this::name).toList();
      }
    }
    return List.of();
  }

  /**
   * Takes in, one after the other, what is off by most where those taken in so far hold, until they
   * cannot; then leaves out what can be spared. Sets that hold are found quickly and those that do
   * not are slow to give up on, so this asks as few of the latter as can be.
   */
  private List<Demand> gather(List<Demand> suspects, List<Demand> all) {
    List<Demand> taken = new ArrayList<>(suspects);
    while (taken.size() <= all.size()) {
      double[] at = held(taken);
      if (at == null) {
        return spare(taken);
      }
      Demand worst = null;
      double most = settings.tieToleranceMm();
      for (Demand demand : all) {
        double off = taken.contains(demand) ? 0 : offMm(demand, at);
        if (!(off <= most)) {
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

  /** By how much a demand is off, mm. */
  private double offMm(Demand demand, double[] x) {
    if (demand.isLimit()) {
      return -problem.limits().get(demand.index()).roomMm(x);
    }
    double most = 0;
    for (Relation relation : problem.ties().get(demand.index()).relations()) {
      double off = Math.abs(relation.evaluate(x, null) * relation.scale());
      most = off <= most ? most : off;
    }
    return most;
  }

  private List<Demand> search(List<Demand> suspects, List<Demand> all) {
    if (!suspects.isEmpty() && !canHold(suspects)) {
      return reduce(suspects);
    }
    return canHold(all) ? List.of() : reduce(all);
  }

  /** Whether a longer search finds that a set can hold after all. */
  private boolean holdsAfterAll(List<Demand> found) {
    asking = settings.withRestarts(LONG_SEARCH * (settings.restarts() + 1)).withKeepTurns(false);
    boolean holds = canHold(found);
    asking = settings.withKeepTurns(false);
    return holds;
  }

  private boolean isSuspect(Demand demand, Set<String> ties, Set<String> limits) {
    return demand.isLimit() ? limits.contains(name(demand)) : ties.contains(name(demand));
  }

  private String name(Demand demand) {
    return demand.isLimit()
        ? problem.limits().get(demand.index()).name()
        : problem.ties().get(demand.index()).name();
  }

  private List<Demand> reduce(List<Demand> all) {
    return spare(explain(List.of(), false, all));
  }

  /** Leaves out each that can be spared. */
  private List<Demand> spare(List<Demand> all) {
    List<Demand> small = new ArrayList<>(all);
    for (int k = small.size() - 1; k >= 0; k--) {
      List<Demand> without = new ArrayList<>(small);
      without.remove(k);
      if (!canHold(without)) {
        small = without;
      }
    }
    small.sort(java.util.Comparator.comparing(Demand::isLimit).thenComparing(Demand::index));
    return small;
  }

  private List<Demand> explain(List<Demand> base, boolean added, List<Demand> rest) {
    if (added && !canHold(base)) {
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
    List<Tie> ties = new ArrayList<>();
    List<Limit> limits = new ArrayList<>();
    for (Demand demand : demands) {
      if (demand.isLimit()) {
        limits.add(problem.limits().get(demand.index()));
      } else {
        ties.add(problem.ties().get(demand.index()));
      }
    }
    SolveSession session = new SolveSession(problem.withTies(ties).withLimits(limits), asking);
    double[] at = session.held(problem.start());
    return at != null ? at : session.held(rest);
  }
}
