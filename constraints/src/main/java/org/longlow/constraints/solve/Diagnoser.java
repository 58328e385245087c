package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.longlow.constraints.solve.block.BlockRank;
import org.longlow.constraints.solve.linear.LocalBasis;
import org.longlow.constraints.solve.linear.RankFactor;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.constraints.solve.problem.Work;
import org.longlow.constraints.solve.step.GroupSystem;
import org.longlow.constraints.solve.step.Restoration;

/**
 * Tells what the ties settle and leave open at given positions, group by group.
 *
 * <p>The scaled Jacobian of a group goes through a QR factorisation with column pivoting ({@link
 * RankFactor}), a large one through its blocks where all its ties count ({@link BlockRank}). Rows
 * that depend on others to first order are put to a second test: without them the layout is moved a
 * little in its free directions and restored; only when they still hold are they redundant, else
 * the layout is at a dead point.
 */
public final class Diagnoser {
  /** Finite motion tried, as a share of the extent of the group. */
  private static final double TRIAL_SHARE = 3e-3;

  /**
   * A relation left out still holds after the trial motion when it misses by no more of the extent.
   */
  private static final double HOLDS_SHARE = 1e-7;

  /**
   * From so many variables a group is looked at block by block where that serves. Below it the one
   * factor takes a fraction of a millisecond, and freedoms keep the basis it gives.
   */
  public static final int BLOCKS_FROM = 100;

  private final Problem problem;
  private final SolverSettings settings;
  private final List<Freedom> freedoms = new ArrayList<>();

  /** For each tie of which rows follow from others, how many do, and from which ties. */
  private final Map<Integer, Following> following = new TreeMap<>();

  private final Work work;
  private final Map<String, Double> nearSingular = new LinkedHashMap<>();
  private int rank;
  private int free;
  private double largestGain;

  Diagnoser(Problem problem, SolverSettings settings) {
    this.problem = problem;
    this.settings = settings;
    work = new Work(settings.workAllowed());
  }

  Diagnosis diagnose(SolveReport report) {
    double[] x = report.x();
    Problem tied = problem.withLimits(List.of()).withWishes(List.of());
    boolean[] seen = new boolean[problem.size()];
    for (Group group : Group.split(tied)) {
      for (int v : group.variables()) {
        seen[v] = true;
      }
      group(group, tied, x);
    }
    for (int v = 0; v < seen.length; v++) {
      if (!seen[v] && !problem.variables().get(v).fixed()) {
        String name = problem.variables().get(v).name();
        freedoms.add(new Freedom(name, Map.of(name, 1.0), true));
        free++;
      }
    }
    List<String> weak =
        nearSingular.entrySet().stream()
            .sorted(Comparator.comparingDouble((Map.Entry<String, Double> e) -> -e.getValue()))
            .map(Map.Entry::getKey)
            .toList();
    Optional<Conflict> conflict =
        report.status() == SolveStatus.CONTRADICTS || report.status() == SolveStatus.LIMIT_FAILS
            ? new Contradiction(problem, settings, work).smallest(report)
            : Optional.empty();
    List<Redundancy> redundant = following.entrySet().stream().map(this::redundancy).toList();
    boolean decided = !work.isSpent() && report.status() != SolveStatus.NOT_DECIDED;
    return new Diagnosis(rank, free, freedoms, redundant, conflict, decided, weak, largestGain);
  }

  /** Rows of a tie that follow from other ties; they may lie in several groups. */
  private static final class Following {
    private int rows;
    private final TreeSet<Integer> from = new TreeSet<>();
  }

  private Redundancy redundancy(Map.Entry<Integer, Following> entry) {
    SolverTie tie = problem.ties().get(entry.getKey());
    Following found = entry.getValue();
    List<String> from = found.from.stream().map(i -> problem.ties().get(i).name()).toList();
    return new Redundancy(tie.name(), from, found.rows == tie.relations().size());
  }

  private void group(Group group, Problem tied, double[] x) {
    GroupSystem system = new GroupSystem(group, tied);
    system.charge(work);
    if (work.isSpent() || !system.rows.evaluate(x)) {
      free += group.variables().length;
      return;
    }
    system.rows.equilibrate(system.ties);
    if (system.n >= BLOCKS_FROM) {
      BlockRank blocks = new BlockRank(system, tied, settings.rankTolerance());
      if (blocks.isRegular()) {
        rank += system.ties;
        free += system.n - system.ties;
        blocks.open().forEach(d -> freedoms.add(freedom(group, d, true)));
        gains(group, system, blocks.gains());
        return;
      }
    }
    work.addProducts((long) system.n * system.ties * Math.min(system.n, system.ties));
    if (work.isSpent()) {
      free += Math.max(0, system.n - system.ties);
      return;
    }
    RankFactor factor = new RankFactor(system.rows, system.n, settings.rankTolerance());
    rank += factor.rank();
    free += system.n - factor.rank();
    double[][] open = LocalBasis.localise(factor.nullSpace());
    double extent = extent(group, x);
    boolean smooth = factor.rank() == system.ties;
    GroupSystem kept = smooth ? system : keeping(tied, group, List.of(), x);
    for (double[] direction : open) {
      boolean lasting = smooth || lasts(kept, x.clone(), direction, TRIAL_SHARE * extent);
      freedoms.add(freedom(group, direction, lasting));
    }
    if (!smooth) {
      redundancies(group, tied, system, factor, open, x, extent);
    }
    gains(group, system, factor.gains());
  }

  private void gains(Group group, GroupSystem system, double[] gains) {
    for (int i = 0; i < gains.length; i++) {
      // Rows were made about 1 long; a millimetre in the relation is this much in the row.
      double gain = gains[i] * system.rows.weight[i];
      largestGain = Math.max(largestGain, gain);
      if (gain > settings.nearSingularGain()) {
        nearSingular.merge(tieName(group, i), gain, Math::max);
      }
    }
  }

  private String tieName(Group group, int row) {
    return problem.ties().get(group.tieRows()[row][0]).name();
  }

  private double extent(Group group, double[] x) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int[] row : group.tieRows()) {
      for (int v : problem.ties().get(row[0]).relations().get(row[1]).variables()) {
        double value = x[v] / problem.variables().get(v).scale();
        low = Math.min(low, value);
        high = Math.max(high, value);
      }
    }
    return high > low ? high - low : 1;
  }

  private Freedom freedom(Group group, double[] direction, boolean lasting) {
    Map<String, Double> moves = new TreeMap<>();
    int lead = 0;
    for (int j = 0; j < direction.length; j++) {
      if (Math.abs(direction[j]) > Math.abs(direction[lead]) * (1 + 1e-9)) {
        lead = j;
      }
    }
    for (int j = 0; j < direction.length; j++) {
      if (Math.abs(direction[j]) > 1e-7 * Math.abs(direction[lead])) {
        Problem.Variable v = problem.variables().get(group.variables()[j]);
        Problem.Variable first = problem.variables().get(group.variables()[lead]);
        moves.put(v.name(), direction[j] * v.scale() / (direction[lead] * first.scale()));
      }
    }
    return new Freedom(problem.variables().get(group.variables()[lead]).name(), moves, lasting);
  }

  /** Whether a finite motion along a direction survives being restored to what the ties have. */
  private boolean lasts(GroupSystem system, double[] x, double[] direction, double size) {
    double[] before = new double[system.n];
    double length = 0;
    for (double d : direction) {
      length += d * d;
    }
    length = Math.sqrt(length);
    for (int j = 0; j < system.n; j++) {
      before[j] = x[system.group.variables()[j]];
      x[system.group.variables()[j]] += size * direction[j] / length * system.rows.scaleOf(j);
    }
    if (new Restoration(system, true).run(x, aim(size), settings.maxIterations(), false, false)
        != Restoration.End.HOLDS) {
      return false;
    }
    double along = 0;
    for (int j = 0; j < system.n; j++) {
      along +=
          (x[system.group.variables()[j]] - before[j])
              / system.rows.scaleOf(j)
              * direction[j]
              / length;
    }
    return along > 0.5 * size;
  }

  private double aim(double size) {
    return Math.min(0.01 * settings.tieToleranceMm(), 1e-8 * size);
  }

  private void redundancies(
      Group group,
      Problem tied,
      GroupSystem system,
      RankFactor factor,
      double[][] open,
      double[] x,
      double extent) {
    double[][] dependencies = LocalBasis.reduceFromLast(factor.dependencies());
    Map<Integer, List<Integer>> rowsOfTie = new TreeMap<>();
    Map<Integer, TreeSet<Integer>> implied = new TreeMap<>();
    for (double[] dependency : dependencies) {
      int last = LocalBasis.lastPivot(dependency);
      int tie = group.tieRows()[last][0];
      rowsOfTie.computeIfAbsent(tie, k -> new ArrayList<>()).add(last);
      for (int i = 0; i < last; i++) {
        if (Math.abs(dependency[i]) > 1e-6 && group.tieRows()[i][0] != tie) {
          implied.computeIfAbsent(tie, k -> new TreeSet<>()).add(group.tieRows()[i][0]);
        }
      }
    }
    for (Map.Entry<Integer, List<Integer>> entry : rowsOfTie.entrySet()) {
      int tie = entry.getKey();
      if (work.isSpent()) {
        return;
      }
      if (!followsWithout(tied, group, entry.getValue(), open, x, extent)) {
        nearSingular.put(problem.ties().get(tie).name(), Double.POSITIVE_INFINITY);
        continue;
      }
      Following found = following.computeIfAbsent(tie, k -> new Following());
      found.rows += entry.getValue().size();
      found.from.addAll(implied.getOrDefault(tie, new TreeSet<>()));
    }
  }

  /** A relation that keeps the value it has, which is not 0 where it contradicts another. */
  private record Kept(Relation relation, double value) implements Relation {
    @Override
    public int[] variables() {
      return relation.variables();
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      return relation.evaluate(x, gradient) - value;
    }

    @Override
    public double scale() {
      return relation.scale();
    }
  }

  /** A group whose ties, but for some rows, keep the values they have at x. */
  private GroupSystem keeping(Problem tied, Group group, List<Integer> without, double[] x) {
    List<SolverTie> kept = new ArrayList<>();
    for (int i = 0; i < group.tieRows().length; i++) {
      if (!without.contains(i)) {
        int[] row = group.tieRows()[i];
        Relation relation = tied.ties().get(row[0]).relations().get(row[1]);
        kept.add(SolverTie.of("row " + i, new Kept(relation, relation.evaluate(x, null))));
      }
    }
    int[][] tieRows = new int[kept.size()][];
    Arrays.setAll(tieRows, i -> new int[] {i, 0});
    Group rest = new Group(group.variables(), tieRows, new int[0][], new int[0]);
    GroupSystem system = new GroupSystem(rest, tied.withTies(kept));
    system.charge(work);
    return system;
  }

  /**
   * Whether rows still have their values after a small motion in the free directions under the
   * other rows alone.
   */
  private boolean followsWithout(
      Problem tied, Group group, List<Integer> rows, double[][] open, double[] x, double extent) {
    if (open.length == 0) {
      return true;
    }
    GroupSystem system = keeping(tied, group, rows, x);
    double[] moved = x.clone();
    double length = 0;
    double[] mix = new double[system.n];
    for (int k = 0; k < open.length; k++) {
      for (int j = 0; j < system.n; j++) {
        // Unequal shares, so that no accident of symmetry keeps a row satisfied.
        mix[j] += open[k][j] * (1 + 0.37 * k);
      }
    }
    for (double v : mix) {
      length += v * v;
    }
    length = Math.sqrt(length);
    double size = TRIAL_SHARE * extent;
    for (int j = 0; j < system.n; j++) {
      moved[group.variables()[j]] += size * mix[j] / length * system.rows.scaleOf(j);
    }
    if (new Restoration(system, true).run(moved, aim(size), settings.maxIterations(), false, false)
        != Restoration.End.HOLDS) {
      return true;
    }
    for (int row : rows) {
      int[] at = group.tieRows()[row];
      Relation relation = tied.ties().get(at[0]).relations().get(at[1]);
      double change = relation.evaluate(moved, null) - relation.evaluate(x, null);
      if (Math.abs(change * relation.scale()) > HOLDS_SHARE * extent) {
        return false;
      }
    }
    return true;
  }
}
