package org.longlow.constraints.solve.graph;

import java.util.Arrays;

/**
 * As many rows as possible, each with a column of its own that it reads.
 *
 * <p>J. E. Hopcroft and R. M. Karp, An n^(5/2) algorithm for maximum matchings in bipartite graphs,
 * SIAM J. Comput. 2, 1973, after a first round that takes the first free column. Searches run on
 * stacks of their own, so that long chains cannot overflow the machine's, and always in the order
 * of rows and entries, so that the answer does not depend on chance.
 */
public final class Matching {
  /** Column of each row, or -1. */
  public final int[] columnOf;

  /** Row of each column, or -1. */
  public final int[] rowOf;

  private final Pattern pattern;
  private final int[] level;
  private final int[] next;
  private final int[] queue;
  private final int[] path;

  private Matching(Pattern pattern) {
    this.pattern = pattern;
    columnOf = new int[pattern.rows()];
    rowOf = new int[pattern.columns()];
    level = new int[pattern.rows()];
    next = new int[pattern.rows()];
    queue = new int[pattern.rows()];
    path = new int[pattern.rows()];
    Arrays.fill(columnOf, -1);
    Arrays.fill(rowOf, -1);
  }

  /** A largest matching. */
  public static Matching of(Pattern pattern) {
    Matching m = new Matching(pattern);
    for (int i = 0; i < pattern.rows(); i++) {
      for (int e = pattern.start()[i]; e < pattern.start()[i + 1]; e++) {
        if (m.rowOf[pattern.column()[e]] < 0) {
          m.join(i, pattern.column()[e]);
          break;
        }
      }
    }
    while (m.layer()) {
      System.arraycopy(pattern.start(), 0, m.next, 0, pattern.rows());
      for (int i = 0; i < pattern.rows(); i++) {
        if (m.columnOf[i] < 0) {
          m.augment(i);
        }
      }
    }
    return m;
  }

  /** Number of rows that have a column. */
  public int size() {
    int count = 0;
    for (int c : columnOf) {
      count += c >= 0 ? 1 : 0;
    }
    return count;
  }

  private void join(int row, int column) {
    columnOf[row] = column;
    rowOf[column] = row;
  }

  /** Distances of rows from the rows without a column; whether a free column can be reached. */
  private boolean layer() {
    int size = 0;
    for (int i = 0; i < columnOf.length; i++) {
      level[i] = columnOf[i] < 0 ? 0 : -1;
      if (columnOf[i] < 0) {
        queue[size++] = i;
      }
    }
    boolean reached = false;
    for (int k = 0; k < size; k++) {
      int i = queue[k];
      for (int e = pattern.start()[i]; e < pattern.start()[i + 1]; e++) {
        int owner = rowOf[pattern.column()[e]];
        if (owner < 0) {
          reached = true;
        } else if (level[owner] < 0) {
          level[owner] = level[i] + 1;
          queue[size++] = owner;
        }
      }
    }
    return reached;
  }

  /** Looks for a way from a row to a free column along the layers and exchanges along it. */
  private void augment(int from) {
    int depth = 0;
    path[0] = from;
    while (depth >= 0) {
      int i = path[depth];
      if (next[i] >= pattern.start()[i + 1]) {
        // Nothing from here: the row is not entered again in this round.
        level[i] = -1;
        depth--;
        continue;
      }
      int column = pattern.column()[next[i]++];
      int owner = rowOf[column];
      if (owner < 0) {
        for (int d = depth; d >= 0; d--) {
          int given = columnOf[path[d]];
          join(path[d], column);
          level[path[d]] = -1;
          column = given;
        }
        return;
      }
      if (level[owner] == level[i] + 1) {
        path[++depth] = owner;
      }
    }
  }
}
