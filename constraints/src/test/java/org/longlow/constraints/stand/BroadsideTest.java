package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.Made;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Side areas against closed forms, and against the exact union of outlines. */
class BroadsideTest {

  private static PartShape box(double... outline) {
    return Made.solid(Made.outline(outline), Made.spread(10, 10, false), Breadth.EVEN);
  }

  private static final PartShape LOW = box(0, 0, 400, 0, 400, 100, 0, 100);
  private static final PartShape OVER = box(200, 50, 960, 50, 960, 250, 200, 250);

  @Test
  void whatLiesOverEachOtherCountsOnce() {
    Broadside both = Broadside.of(List.of(LOW, OVER), Rider.NOBODY);
    // 40,000 and 152,000 less the 10,000 that both cover; columns end on the corners
    assertThat(both.areaMm2()).isCloseTo(182_000, within(1e-6));
    assertThat(both.centroid().x())
        .isCloseTo((40e3 * 200 + 152e3 * 580 - 10e3 * 300) / 182e3, within(1e-9));
    assertThat(both.centroid().z())
        .isCloseTo((40e3 * 50 + 152e3 * 150 - 10e3 * 75) / 182e3, within(1e-9));
    assertThat(both.fromMm()).isEqualTo(0);
    assertThat(both.toMm()).isEqualTo(960);
  }

  @Test
  void withoutTheOthersOnlyWhatIsShownIsLeft() {
    Broadside shown = Broadside.with(List.of(LOW), Rider.NOBODY, List.of(OVER)).more();
    assertThat(shown.areaMm2()).isCloseTo(142_000, within(1e-6));
    assertThat(shown.centroid().x()).isCloseTo((152e3 * 580 - 10e3 * 300) / 142e3, within(1e-6));
  }

  @Test
  void nothingShowsNothing() {
    assertThat(Broadside.of(List.of(), Rider.NOBODY).areaMm2()).isZero();
  }

  @Test
  void aWholeMachineShowsWhatTheUnionOfItsOutlinesDoes() {
    Study study = TestMachine.asFiled("tourer");
    for (Standing s : study.standings()) {
      Broadside quick = Broadside.of(s.shapes().values(), s.rider());
      Silhouette exact =
          Silhouettes.of(s.shapes().values(), s.rider(), s.ground(), SeenFrom.SIDE).orElseThrow();
      // columns of 10 mm: half of one at edges that stand upright
      assertThat(quick.areaMm2()).isCloseTo(exact.areaMm2(), within(3e-3 * exact.areaMm2()));
      assertThat(s.ground().toRoad(quick.centroid()).distance(exact.centroid())).isLessThan(2);
    }
  }
}
