package org.longlow.constraints.solve.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Components of random graphs, beside what each node reaches by trying all ways. */
class StrongComponentsTest {

  /** Warshall's closure. */
  private static boolean[][] reached(int n, Pattern edges) {
    boolean[][] reach = new boolean[n][n];
    for (int i = 0; i < n; i++) {
      reach[i][i] = true;
      for (int e = edges.start()[i]; e < edges.start()[i + 1]; e++) {
        if (edges.column()[e] >= 0) {
          reach[i][edges.column()[e]] = true;
        }
      }
    }
    for (int k = 0; k < n; k++) {
      for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) {
          reach[i][j] |= reach[i][k] && reach[k][j];
        }
      }
    }
    return reach;
  }

  @Test
  void nodesThatReachEachOtherAreOneAndEdgesLeadDown() {
    SplittableRandom random = new SplittableRandom(2);
    int joined = 0;
    for (int trial = 0; trial < 400; trial++) {
      int n = 1 + random.nextInt(12);
      int[] start = new int[n + 1];
      int[] column = new int[4 * n];
      int next = 0;
      for (int i = 0; i < n; i++) {
        for (int k = random.nextInt(3); k > 0; k--) {
          column[next++] = random.nextInt(-1, n);
        }
        start[i + 1] = next;
      }
      Pattern edges = new Pattern(n, n, start, Arrays.copyOf(column, next));
      boolean[][] reach = reached(n, edges);
      int[] component = StrongComponents.of(edges);
      int most = -1;
      for (int i = 0; i < n; i++) {
        most = Math.max(most, component[i]);
        for (int j = 0; j < n; j++) {
          boolean same = reach[i][j] && reach[j][i];
          assertThat(component[i] == component[j]).isEqualTo(same);
          joined += i != j && same ? 1 : 0;
          if (reach[i][j] && !same) {
            assertThat(component[j]).isLessThan(component[i]);
          }
        }
      }
      assertThat(Arrays.stream(component).distinct().count()).isEqualTo(most + 1L);
    }
    assertThat(joined).isGreaterThan(100);
  }
}
