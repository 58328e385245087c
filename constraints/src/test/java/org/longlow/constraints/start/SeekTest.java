package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A bowl's bottom is found to its last step, in so many tries at most. */
class SeekTest {

  static LongStream seeds() {
    return LongStream.range(0, 30);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theBottomOfABowlIsFoundToTheLastStep(long seed) {
    Random random = new Random(seed);
    double[] bottom = random.doubles(3, -100, 100).toArray();
    double[] steep = random.doubles(3, 0.1, 10).toArray();
    double[] steps = {40, 40, 8};
    double[] least = {5, 2, 1};
    int[] tries = {0};
    double[] start = random.doubles(3, -100, 100).toArray();
    double[] kept = start.clone();
    double[] found =
        Seek.least(
            start,
            steps,
            least,
            x -> {
              tries[0]++;
              double sum = 0;
              for (int k = 0; k < 3; k++) {
                sum += steep[k] * (x[k] - bottom[k]) * (x[k] - bottom[k]);
              }
              return sum;
            });
    assertThat(start).isEqualTo(kept);
    assertThat(steps).containsExactly(40, 40, 8);
    for (int k = 0; k < 3; k++) {
      // a step farther either way is no better: halved until no longer than the least
      double last = steps[k];
      while (last > least[k]) {
        last /= 2;
      }
      assertThat(found[k]).isCloseTo(bottom[k], within(last / 2 + 1e-9));
      double strides = (found[k] - start[k]) / last;
      assertThat(strides).isCloseTo(Math.rint(strides), within(1e-9));
    }
    assertThat(tries[0]).isLessThan(400);
  }

  /** Down a slope without end it stops after 400 tries, having gone down at every one it could. */
  @Test
  void aSlopeWithoutEndIsLeftAfterFourHundredTries() {
    List<double[]> tried = new ArrayList<>();
    double[] found =
        Seek.least(
            new double[] {0, 0},
            new double[] {1, 1},
            new double[] {1, 1},
            x -> {
              tried.add(x.clone());
              return x[0];
            });
    assertThat(tried.size()).isBetween(400, 401);
    assertThat(tried.get(0)).containsExactly(0, 0);
    // one try down along x, two in vain along the other
    assertThat(found[0]).isCloseTo(-400 / 3.0, within(1.0));
    assertThat(found[1]).isZero();
  }

  /** Where nothing is better than the start, that is the answer, after a look each way. */
  @Test
  void aBottomIsLeftAlone() {
    int[] tries = {0};
    double[] found =
        Seek.least(
            new double[] {3, 4},
            new double[] {4, 4},
            new double[] {4, 1},
            x -> {
              tries[0]++;
              return Math.abs(x[0] - 3) + Math.abs(x[1] - 4);
            });
    assertThat(found).containsExactly(3, 4);
    // four looks at 4, at 2 and at 1 along the second
    assertThat(tries[0]).isEqualTo(1 + 3 * 4);
  }
}
