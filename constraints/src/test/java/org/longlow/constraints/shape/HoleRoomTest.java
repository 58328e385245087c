package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Opening;
import org.longlow.rider.geom.PointMm;

/** Bolts and openings in a plate of 200 by 160, what is asked told by hand. */
class HoleRoomTest {

  private static final Geometry PLATE =
      Curves.polygon(
          List.of(
              new PointMm(0, 0), new PointMm(200, 0), new PointMm(200, 160), new PointMm(0, 160)));

  /** Holes as x, z, diameter. */
  private static List<HoleRoom> of(String material, double[]... holes) {
    List<Holes.Placed> placed = new ArrayList<>();
    for (double[] h : holes) {
      PointMm at = new PointMm(h[0], h[1]);
      Hole hole = new Hole.Round(null, null);
      placed.add(new Holes.Placed(placed.size(), hole, Opening.round(at, h[2]), List.of(at)));
    }
    return HoleRoom.of(PLATE, placed, material);
  }

  /** A bolt of 8 wants 12 mm from its middle to the edge, in plywood 32; of 5 in plywood 25. */
  @ParameterizedTest
  @CsvSource({
    "steel, 8, 12, true, 8",
    "steel, 8, 11.8, false, 8",
    "'', 8, 11.8, false, 8",
    "plywood, 8, 32, true, 28",
    "plywood, 8, 31.8, false, 28",
    "plywood, 5, 25, true, 22.5",
    "plywood, 5, 24.8, false, 22.5",
    "steel, 13, 19.5, true, 13",
    "steel, 13, 19.4, false, 13",
    "steel, 14, 10, true, 3",
    "steel, 14, 9.9, false, 3",
    "steel, 2, 4, true, 3",
    "steel, 2, 3.9, false, 3"
  })
  void aBoltKeepsItsDistanceFromAnEdge(
      String material, double d, double x, boolean enough, double need) {
    HoleRoom room = of(material, new double[] {x, 80, d}).get(0);
    assertThat(room.webMm()).isCloseTo(x - d / 2, within(1e-9));
    assertThat(room.needMm()).isCloseTo(need, within(1e-9));
    assertThat(room.isTight()).isEqualTo(!enough);
    assertThat(HoleRoom.tightest(List.of(room))).isEqualTo(Optional.of(room).filter(r -> !enough));
  }

  /**
   * Middles of two bolts of 8 are 24 apart at least, in plywood 32; beside an opening 3 mm stand.
   */
  @ParameterizedTest
  @CsvSource({
    "steel, 24, 8, true", "steel, 23.8, 8, false", "plywood, 32, 8, true",
    "plywood, 31.8, 8, false", "steel, 27, 40, true", "steel, 26.8, 40, false"
  })
  void boltsKeepTheirPitch(String material, double pitch, double other, boolean enough) {
    List<HoleRoom> all =
        of(material, new double[] {80, 80, 8}, new double[] {80 + pitch, 80, other});
    assertThat(all).hasSize(3);
    HoleRoom between = all.get(2);
    assertThat(between.between()).isEqualTo("hole 1 and hole 2");
    assertThat(between.webMm()).isCloseTo(pitch - 4 - other / 2, within(1e-9));
    assertThat(between.isTight()).isEqualTo(!enough);
  }

  @Test
  void leastAndTightestAreNotTheSame() {
    List<HoleRoom> all =
        of(
            "steel",
            new double[] {100, 24, 40},
            new double[] {20, 120, 12},
            new double[] {190, 80, 10});
    assertThat(HoleRoom.least(all).between()).isEqualTo("hole 1 and the edge");
    assertThat(HoleRoom.tightest(all).map(HoleRoom::between)).contains("hole 3 and the edge");
  }
}
