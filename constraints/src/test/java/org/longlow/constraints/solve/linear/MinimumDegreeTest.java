package org.longlow.constraints.solve.linear;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The order of elimination, beside a graph of sets that is eliminated by hand. */
class MinimumDegreeTest {

  @Test
  void eachNodeHasTheFewestNeighboursWhenItsTurnComesAndOfEqualOnesTheFirst() {
    SplittableRandom random = new SplittableRandom(6);
    for (int trial = 0; trial < 300; trial++) {
      int n = 1 + random.nextInt(15);
      TreeSet<?>[] raw = new TreeSet<?>[n];
      @SuppressWarnings("unchecked")
      TreeSet<Integer>[] near = (TreeSet<Integer>[]) raw;
      Arrays.setAll(near, i -> new TreeSet<>());
      for (int k = random.nextInt(2 * n + 1); k > 0; k--) {
        int i = random.nextInt(n);
        int j = random.nextInt(n);
        if (i != j) {
          near[i].add(j);
          near[j].add(i);
        }
      }
      int[][] neighbours = new int[n][];
      Arrays.setAll(neighbours, i -> near[i].stream().mapToInt(Integer::intValue).toArray());
      int[] order = MinimumDegree.order(neighbours);
      assertThat(order).hasSize(n).doesNotHaveDuplicates();
      boolean[] gone = new boolean[n];
      for (int node : order) {
        for (int other = 0; other < n; other++) {
          if (!gone[other]) {
            assertThat(near[node].size()).isLessThanOrEqualTo(near[other].size());
            if (other < node) {
              assertThat(near[node].size()).isLessThan(near[other].size());
            }
          }
        }
        gone[node] = true;
        for (int a : near[node]) {
          near[a].addAll(near[node]);
          near[a].remove(a);
          near[a].remove(node);
        }
      }
    }
  }
}
