package org.longlow.constraints.solve.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Variables that demands join together, directly or through others, with those demands.
 *
 * @param variables indices of the free variables, ascending
 * @param tieRows pairs of tie index and relation index in it, in the order of the problem
 * @param limitRows pairs of limit index and gap index in it
 * @param wishes indices of wishes
 */
public record Group(int[] variables, int[][] tieRows, int[][] limitRows, int[] wishes) {
  /**
   * Splits a problem. Demands that only touch fixed variables come in a last group without
   * variables.
   */
  public static List<Group> split(Problem problem) {
    int n = problem.size();
    int[] parent = new int[n];
    Arrays.setAll(parent, i -> i);
    List<Relation> all = new ArrayList<>();
    problem.ties().forEach(t -> all.addAll(t.relations()));
    problem.limits().forEach(l -> all.addAll(l.gaps()));
    problem.wishes().forEach(w -> all.add(w.residual()));
    for (Relation relation : all) {
      int first = -1;
      for (int v : relation.variables()) {
        if (problem.variables().get(v).fixed()) {
          continue;
        }
        if (first < 0) {
          first = v;
        } else {
          parent[root(parent, v)] = root(parent, first);
        }
      }
    }
    int[] groupOf = new int[n];
    Arrays.fill(groupOf, -1);
    List<Parts> parts = new ArrayList<>();
    int[] byRoot = new int[n];
    Arrays.fill(byRoot, -1);
    boolean[] touched = new boolean[n];
    for (Relation relation : all) {
      for (int v : relation.variables()) {
        touched[v] = true;
      }
    }
    for (int v = 0; v < n; v++) {
      if (problem.variables().get(v).fixed() || !touched[v]) {
        continue;
      }
      int r = root(parent, v);
      if (byRoot[r] < 0) {
        byRoot[r] = parts.size();
        parts.add(new Parts());
      }
      groupOf[v] = byRoot[r];
      parts.get(byRoot[r]).variables.add(v);
    }
    Parts still = new Parts();
    for (int t = 0; t < problem.ties().size(); t++) {
      List<Relation> relations = problem.ties().get(t).relations();
      for (int k = 0; k < relations.size(); k++) {
        partOf(relations.get(k), groupOf, parts, still).ties.add(new int[] {t, k});
      }
    }
    for (int i = 0; i < problem.limits().size(); i++) {
      List<Relation> gaps = problem.limits().get(i).gaps();
      for (int k = 0; k < gaps.size(); k++) {
        partOf(gaps.get(k), groupOf, parts, still).limits.add(new int[] {i, k});
      }
    }
    for (int i = 0; i < problem.wishes().size(); i++) {
      partOf(problem.wishes().get(i).residual(), groupOf, parts, still).wishes.add(i);
    }
    if (!still.ties.isEmpty() || !still.limits.isEmpty()) {
      parts.add(still);
    }
    return parts.stream().map(Parts::build).toList();
  }

  private static Parts partOf(Relation relation, int[] groupOf, List<Parts> parts, Parts still) {
    for (int v : relation.variables()) {
      if (groupOf[v] >= 0) {
        return parts.get(groupOf[v]);
      }
    }
    return still;
  }

  public static int root(int[] parent, int v) {
    int r = v;
    while (parent[r] != r) {
      parent[r] = parent[parent[r]];
      r = parent[r];
    }
    return r;
  }

  public List<Relation> tieRelations(Problem problem) {
    List<Relation> list = new ArrayList<>(tieRows.length);
    for (int[] row : tieRows) {
      list.add(problem.ties().get(row[0]).relations().get(row[1]));
    }
    return list;
  }

  public List<Relation> limitRelations(Problem problem) {
    return Arrays.stream(limitRows)
        .map(row -> problem.limits().get(row[0]).gaps().get(row[1]))
        .toList();
  }

  public List<Relation> wishRelations(Problem problem) {
    return Arrays.stream(wishes).mapToObj(i -> problem.wishes().get(i).residual()).toList();
  }

  /** Collects a group. */
  public static final class Parts {
    public final List<Integer> variables = new ArrayList<>();
    public final List<int[]> ties = new ArrayList<>();
    public final List<int[]> limits = new ArrayList<>();
    public final List<Integer> wishes = new ArrayList<>();

    public Group build() {
      return new Group(
          array(variables),
          ties.toArray(int[][]::new),
          limits.toArray(int[][]::new),
          array(wishes));
    }

    private static int[] array(List<Integer> list) {
      return list.stream().mapToInt(Integer::intValue).toArray();
    }
  }
}
