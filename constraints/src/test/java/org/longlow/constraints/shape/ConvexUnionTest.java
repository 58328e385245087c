package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;

/** Centres of what convex polygons cover together, and boxes round bars. */
class ConvexUnionTest {

  private static Polygon box(double x, double z, double side) {
    return (Polygon) Curves.FACTORY.toGeometry(new Envelope(x, x + side, z, z + side));
  }

  @Test
  void whatTwoHaveInCommonCountsOnce() {
    // squares of 4 at (2, 2) and (4, 4) share one of 4 mm2 at (3, 3): (16*2+16*4-4*3)/28 = 3
    PointMm both = ConvexUnion.centre(List.of(box(0, 0, 4), box(2, 2, 4)));
    assertThat(both.x()).isCloseTo(3, within(1e-12));
    // one of 2 wholly within one of 4 adds nothing
    PointMm within = ConvexUnion.centre(List.of(box(0, 0, 4), box(2, 2, 2)));
    assertThat(within.x()).isCloseTo(2, within(1e-12));
    // apart: areas 16 and 4 at (2, 2) and (11, 1)
    PointMm apart = ConvexUnion.centre(List.of(box(0, 0, 4), box(10, 0, 2)));
    assertThat(apart.x()).isCloseTo((16 * 2 + 4 * 11) / 20.0, within(1e-12));
    assertThat(apart.z()).isCloseTo((16 * 2 + 4 * 1) / 20.0, within(1e-12));
    // nothing has no centre
    assertThat(ConvexUnion.centre(List.of(Curves.FACTORY.createPolygon())))
        .isEqualTo(PointMm.ORIGIN);
  }

  /** Three bars from seeds, joined or not, wound either way, beside the union of JTS. */
  @Test
  void isTheCentreOfTheUnion() {
    SplittableRandom random = new SplittableRandom(20);
    for (int run = 0; run < 40; run++) {
      List<Polygon> bars = new ArrayList<>();
      PointMm at = new PointMm(1500, 700);
      for (int k = 0; k < 3; k++) {
        PointMm from = random.nextInt(3) == 0 ? new PointMm(1500, 690) : at;
        at = from.plus(new PointMm(random.nextDouble(-250, 250), random.nextDouble(-250, 250)));
        Polygon bar = (Polygon) Curves.bar(from, at, random.nextDouble(10, 60));
        bars.add(random.nextBoolean() ? bar : bar.reverse());
      }
      Geometry union = bars.get(0).union(bars.get(1)).union(bars.get(2));
      Point centre = union.getCentroid();
      PointMm found = ConvexUnion.centre(bars);
      // rounding of both: 1e-12 of 1,700 mm, times the share of what is taken off
      assertThat(found.x()).as("run " + run).isCloseTo(centre.getX(), within(1e-7));
      assertThat(found.z()).as("run " + run).isCloseTo(centre.getY(), within(1e-7));
    }
  }

  /** The box of a fork is known before its outline, which touches each side but for its chords. */
  @Test
  void theBoxHoldsTheOutline() {
    List<List<PointMm>> lines =
        List.of(
            List.of(new PointMm(1500, 800), new PointMm(1620, 610)),
            List.of(new PointMm(1620, 610), new PointMm(1700, 330), new PointMm(1790, 300)));
    Envelope box = Curves.boxMm(lines, 36);
    Envelope outline = Curves.rounded(lines, 36).getEnvelopeInternal();
    assertThat(box.contains(outline)).isTrue();
    // 32 chords of half an end of 18 mm leave 0.02 mm
    assertThat(outline.getMinX() - box.getMinX()).isLessThan(0.03);
    assertThat(outline.getMinY() - box.getMinY()).isLessThan(0.03);
    assertThat(box.getMaxX() - outline.getMaxX()).isLessThan(0.03);
    assertThat(box.getMaxY() - outline.getMaxY()).isLessThan(0.03);
  }
}
