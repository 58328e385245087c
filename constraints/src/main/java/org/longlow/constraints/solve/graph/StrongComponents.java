package org.longlow.constraints.solve.graph;

import java.util.Arrays;

/**
 * Strongly connected components of a directed graph, those that are pointed at first.
 *
 * <p>R. E. Tarjan, Depth-first search and linear graph algorithms, SIAM J. Comput. 1, 1972, on a
 * stack of its own.
 */
public final class StrongComponents {
  private StrongComponents() {}

  /**
   * Component of each node. Components are numbered so that every edge stays in its component or
   * leads to one of a lower number.
   *
   * @param edges node i points at the nodes in its row; -1 is no node
   */
  public static int[] of(Pattern edges) {
    int n = edges.rows();
    int[] component = new int[n];
    int[] seen = new int[n];
    int[] low = new int[n];
    int[] next = Arrays.copyOf(edges.start(), n);
    int[] open = new int[n];
    int[] path = new int[n];
    int opened = 0;
    int clock = 0;
    int count = 0;
    Arrays.fill(component, -1);
    Arrays.fill(seen, -1);
    for (int root = 0; root < n; root++) {
      if (seen[root] >= 0) {
        continue;
      }
      int depth = 0;
      path[0] = root;
      seen[root] = low[root] = clock++;
      open[opened++] = root;
      while (depth >= 0) {
        int i = path[depth];
        if (next[i] < edges.start()[i + 1]) {
          int j = edges.column()[next[i]++];
          if (j < 0) {
            continue;
          }
          if (seen[j] < 0) {
            path[++depth] = j;
            seen[j] = low[j] = clock++;
            open[opened++] = j;
          } else if (component[j] < 0) {
            low[i] = Math.min(low[i], seen[j]);
          }
          continue;
        }
        if (low[i] == seen[i]) {
          int j;
          do {
            j = open[--opened];
            component[j] = count;
          } while (j != i);
          count++;
        }
        depth--;
        if (depth >= 0) {
          low[path[depth]] = Math.min(low[path[depth]], low[i]);
        }
      }
    }
    return component;
  }
}
