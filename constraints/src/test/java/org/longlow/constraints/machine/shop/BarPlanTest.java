package org.longlow.constraints.machine.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bars against all ways to part the pieces, and against longest first. */
class BarPlanTest {

  /** Every piece is there once, and each bar holds its pieces with a kerf between each two. */
  private static void isSound(BarPlan plan, List<Double> lengths) {
    List<Integer> all = new ArrayList<>(plan.tooLong());
    for (BarPlan.Bar bar : plan.bars()) {
      assertThat(bar.pieces()).isNotEmpty();
      all.addAll(bar.pieces());
      double cut = bar.pieces().stream().mapToDouble(lengths::get).sum();
      double between = (bar.pieces().size() - 1) * plan.kerfMm();
      assertThat(cut + between).isLessThanOrEqualTo(plan.barMm() + 1e-5);
      double left = Math.max(0, plan.barMm() - cut - between - plan.kerfMm());
      assertThat(bar.leftMm()).isCloseTo(left, within(1e-5));
    }
    Collections.sort(all);
    assertThat(all).isEqualTo(IntStream.range(0, lengths.size()).boxed().toList());
    assertThat(plan.leastBars()).isLessThanOrEqualTo(plan.bars().size());
  }

  /** The fewest bars of all ways to part the pieces, gone through one by one. */
  private static int fewest(List<Double> lengths, double bar, double kerf) {
    return fewest(lengths, 0, new ArrayList<>(), bar, kerf);
  }

  private static int fewest(
      List<Double> lengths, int next, List<Double> used, double bar, double kerf) {
    if (next == lengths.size()) {
      return used.size();
    }
    int best = Integer.MAX_VALUE;
    for (int b = 0; b <= used.size(); b++) {
      boolean fresh = b == used.size();
      double with = fresh ? lengths.get(next) : used.get(b) + kerf + lengths.get(next);
      if (with > bar + 1e-6) {
        continue;
      }
      List<Double> then = new ArrayList<>(used);
      if (fresh) {
        then.add(with);
      } else {
        then.set(b, with);
      }
      best = Math.min(best, fewest(lengths, next + 1, then, bar, kerf));
    }
    return best;
  }

  /** Longest first, each into the first bar with room. */
  private static int longestFirst(List<Double> lengths, double bar, double kerf) {
    List<Double> sorted = new ArrayList<>(lengths);
    sorted.sort(Collections.reverseOrder());
    List<Double> used = new ArrayList<>();
    for (double l : sorted) {
      int b = 0;
      while (b < used.size() && used.get(b) + kerf + l > bar + 1e-6) {
        b++;
      }
      if (b == used.size()) {
        used.add(l);
      } else {
        used.set(b, used.get(b) + kerf + l);
      }
    }
    return used.size();
  }

  @Test
  void aFewPiecesAreCutFromAsFewBarsAsAnyWayNeeds() {
    Random random = new Random(4);
    for (int i = 0; i < 300; i++) {
      double kerf = i % 3;
      int count = 1 + random.nextInt(8);
      List<Double> lengths = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        lengths.add(1.0 + random.nextInt(i % 2 == 0 ? 60 : 20) * 5);
      }
      BarPlan plan = BarPlan.of(lengths, 300, kerf);
      isSound(plan, lengths);
      int fewest = fewest(lengths, 300, kerf);
      assertThat(plan.bars()).as("%s, kerf %s", lengths, kerf).hasSize(fewest);
      assertThat(plan.leastBars()).isEqualTo(fewest);
    }
    // halves and quarters that longest first spoils
    List<Double> spoilt = List.of(44.0, 24.0, 24.0, 22.0, 21.0, 17.0, 8.0, 8.0, 6.0, 6.0);
    assertThat(longestFirst(spoilt, 61, 0)).isEqualTo(4);
    assertThat(fewest(spoilt, 61, 0)).isEqualTo(3);
    assertThat(BarPlan.of(spoilt, 61, 0).bars()).hasSize(3);
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 150, 600})
  void manyPiecesNeverTakeMoreThanLongestFirst(int count) {
    Random random = new Random(count);
    List<Double> lengths = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      lengths.add(100 + random.nextDouble() * 2400);
    }
    BarPlan plan = BarPlan.of(lengths, 6000, 3);
    isSound(plan, lengths);
    assertThat(plan.bars().size()).isLessThanOrEqualTo(longestFirst(lengths, 6000, 3));
    double all = lengths.stream().mapToDouble(l -> l + 3).sum();
    assertThat(plan.leastBars()).isGreaterThanOrEqualTo((int) Math.ceil(all / 6003 - 1e-9));
    assertThat(BarPlan.of(lengths, 6000, 3)).isEqualTo(plan);
  }

  @Test
  void aKerfLiesBetweenPiecesAndNotBehindTheLast() {
    List<Double> exact = List.of(1998.0, 1998.0, 1998.0);
    BarPlan fits = BarPlan.of(exact, 6000, 3);
    assertThat(fits.bars()).hasSize(1);
    assertThat(fits.bars().get(0).leftMm()).isZero();
    assertThat(BarPlan.of(List.of(1998.0, 1998.0, 1998.1), 6000, 3).bars()).hasSize(2);
    // less than a kerf is left: the last cut takes it
    assertThat(BarPlan.of(List.of(5998.0), 6000, 3).bars().get(0).leftMm()).isZero();
    assertThat(BarPlan.of(List.of(5990.0), 6000, 3).bars().get(0).leftMm())
        .isCloseTo(7, within(1e-9));
    assertThat(BarPlan.of(List.of(3000.0, 3000.0), 6000, 0).bars()).hasSize(1);
  }

  @Test
  void whatIsTooLongIsToldAndTheRestIsCut() {
    BarPlan plan = BarPlan.of(List.of(500.0, 6000.001, 6000.0), 6000, 3);
    assertThat(plan.tooLong()).containsExactly(1);
    assertThat(plan.bars()).hasSize(2);
    assertThat(plan.bars()).hasSize(plan.leastBars());
    assertThat(BarPlan.of(List.of(), 6000, 3).bars()).isEmpty();
    assertThat(BarPlan.of(List.of(7.0), 6, 1).leastBars()).isZero();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> BarPlan.of(List.of(0.0), 6000, 3)).hasMessageContaining("length");
    assertThatThrownBy(() -> BarPlan.of(List.of(1.0), 0, 3)).hasMessageContaining("bar mm");
    assertThatThrownBy(() -> BarPlan.of(List.of(1.0), 6, -1)).hasMessageContaining("kerf");
    assertThatThrownBy(() -> BarPlan.of(List.of(Double.NaN), 6, 1)).hasMessageContaining("length");
  }

  /** Bounds: of pieces longer than half a bar each needs its own; small ones fill by length. */
  @Test
  void theLeastIsThatOfLargeAndSmallTogether() {
    assertThat(BarPlan.of(List.of(51.0, 51.0, 51.0), 100, 0).leastBars()).isEqualTo(3);
    // 60 leaves 40, into which neither 45 goes
    assertThat(BarPlan.of(List.of(60.0, 60.0, 45.0, 45.0), 100, 0).leastBars()).isEqualTo(3);
    assertThat(BarPlan.of(List.of(60.0, 60.0, 40.0, 40.0), 100, 0).leastBars()).isEqualTo(2);
  }
}
