package org.longlow.constraints.solve.linear;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * Minimum-degree ordering of a symmetric pattern (Tinney and Walker's second scheme, Direct
 * solutions of sparse network equations by optimally ordered triangular factorization, Proc. IEEE
 * 55, 1967).
 *
 * <p>Eliminates the node with the fewest neighbours, joins its neighbours to each other, and
 * repeats. Ties go to the lower index, so the answer does not depend on chance. Cost is that of the
 * fill it creates; done once per structure.
 */
final class MinimumDegree {
  private MinimumDegree() {}

  /**
   * @param neighbours for each node its neighbours, ascending, without itself; the array is used up
   * @return nodes in the order of elimination
   */
  static int[] order(int[][] neighbours) {
    int n = neighbours.length;
    int[] order = new int[n];
    boolean[] gone = new boolean[n];
    PriorityQueue<long[]> queue =
        new PriorityQueue<>(
            (a, b) -> a[0] != b[0] ? Long.compare(a[0], b[0]) : Long.compare(a[1], b[1]));
    for (int i = 0; i < n; i++) {
      queue.add(new long[] {neighbours[i].length, i});
    }
    int done = 0;
    while (done < n) {
      long[] head = queue.remove();
      int node = (int) head[1];
      if (gone[node] || head[0] != neighbours[node].length) {
        continue;
      }
      gone[node] = true;
      order[done++] = node;
      int[] clique = neighbours[node];
      for (int other : clique) {
        int[] merged = merge(neighbours[other], clique, node, other);
        if (merged.length != neighbours[other].length) {
          queue.add(new long[] {merged.length, other});
        }
        neighbours[other] = merged;
      }
      neighbours[node] = new int[0];
    }
    return order;
  }

  /** Union of two ascending lists without two nodes. */
  private static int[] merge(int[] a, int[] b, int without, int self) {
    int[] out = new int[a.length + b.length];
    int i = 0;
    int j = 0;
    int k = 0;
    while (i < a.length || j < b.length) {
      int next;
      if (j >= b.length || (i < a.length && a[i] <= b[j])) {
        next = a[i];
        if (j < b.length && b[j] == next) {
          j++;
        }
        i++;
      } else {
        next = b[j++];
      }
      if (next != without && next != self) {
        out[k++] = next;
      }
    }
    return Arrays.copyOf(out, k);
  }
}
