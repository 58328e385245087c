package org.longlow.constraints.solve.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.solve.linear.RowSet;
import org.longlow.constraints.solve.problem.Group;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.Work;

/** What one connected group is made of: its variables, and a row for each tie, wish and limit. */
abstract class GroupRows {
  public final Group group;

  /** Number of variables. */
  public final int n;

  /** Number of tie rows; the rows after them are wishes. */
  public final int ties;

  public final RowSet rows;
  public final RowSet limits;
  public final TurnWatch watch;
  final double[] wishWeight;

  /** Which tie rows count; all but while ties are taken in one after the other. */
  final boolean[] tieOn;

  private final boolean costly;
  private final boolean costlyWishes;
  private Work work = Work.unbounded();

  /**
   * @param localOf workspace, as many as the problem has variables, all -1; left so
   */
  GroupRows(Group group, Problem problem, int[] localOf) {
    this.group = group;
    n = group.variables().length;
    double[] scale = new double[n];
    for (int j = 0; j < n; j++) {
      localOf[group.variables()[j]] = j;
      scale[j] = problem.variables().get(group.variables()[j]).scale();
    }
    List<Relation> tieRelations = group.tieRelations(problem);
    List<Relation> all = new ArrayList<>(tieRelations);
    all.addAll(group.wishRelations(problem));
    costlyWishes = all.stream().anyMatch(Relation::costly);
    ties = tieRelations.size();
    rows = new RowSet(all, localOf, scale);
    List<Relation> limitRelations = group.limitRelations(problem);
    costly = limitRelations.stream().anyMatch(Relation::costly);
    limits = new RowSet(limitRelations, localOf, scale);
    for (int v : group.variables()) {
      localOf[v] = -1;
    }
    watch = TurnWatch.of(tieRelations);
    wishWeight = new double[rows.count - ties];
    tieOn = new boolean[ties];
    Arrays.fill(tieOn, true);
    bindWeights(problem);
  }

  /** For each variable of a problem that it is in no group. */
  public static int[] noneOf(Problem problem) {
    int[] localOf = new int[problem.size()];
    Arrays.fill(localOf, -1);
    return localOf;
  }

  /** Takes the relations and weights of another problem of the same structure. */
  final void bind(Problem problem) {
    List<Relation> all = new ArrayList<>(group.tieRelations(problem));
    all.addAll(group.wishRelations(problem));
    rows.bind(all);
    limits.bind(group.limitRelations(problem));
    bindWeights(problem);
  }

  private void bindWeights(Problem problem) {
    for (int i = 0; i < wishWeight.length; i++) {
      wishWeight[i] = problem.wishes().get(group.wishes()[i]).weight();
    }
  }

  /** The values of the group's variables in {@code x}. */
  final double[] take(double[] x) {
    double[] values = new double[n];
    for (int j = 0; j < n; j++) {
      values[j] = x[group.variables()[j]];
    }
    return values;
  }

  /** Puts values of the group's variables into {@code x}. */
  final void put(double[] values, double[] x) {
    for (int j = 0; j < n; j++) {
      x[group.variables()[j]] = values[j];
    }
  }

  final boolean hasWishes() {
    return wishWeight.length > 0;
  }

  /** Whether a wish takes long to evaluate. */
  final boolean hasCostlyWishes() {
    return costlyWishes;
  }

  /** Whether a limit takes long to evaluate. */
  final boolean isCostly() {
    return costly;
  }

  /** Counts what is done from now on. */
  public void charge(Work other) {
    work = other;
    rows.charge(other);
    limits.charge(other);
  }

  /** What is counted. */
  final Work work() {
    return work;
  }
}
