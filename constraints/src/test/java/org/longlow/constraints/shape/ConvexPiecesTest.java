package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.rider.geom.PointMm;

/** What outlines are cut into: convex, and together the outline. */
class ConvexPiecesTest {

  private static Geometry polygon(double[] ring) {
    List<PointMm> points = new ArrayList<>();
    for (int i = 0; i < ring.length; i += 2) {
      points.add(new PointMm(ring[i], ring[i + 1]));
    }
    return Curves.polygon(points);
  }

  private static List<Geometry> whole(Geometry outline) {
    List<Geometry> pieces =
        ConvexPieces.of(outline).stream().map(ConvexPiecesTest::polygon).toList();
    double area = 0;
    Geometry all = null;
    for (Geometry piece : pieces) {
      assertThat(piece.convexHull().getArea()).isCloseTo(piece.getArea(), within(1e-3));
      area += piece.getArea();
      all = all == null ? piece : all.union(piece);
    }
    assertThat(area).isCloseTo(outline.getArea(), within(1e-6 * outline.getArea()));
    assertThat(all.symDifference(outline).getArea()).isLessThan(1e-6 * outline.getArea());
    return pieces;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void starsAreCutWhole(long seed) {
    Random random = new Random(seed);
    List<PointMm> ring = new ArrayList<>();
    for (int i = 0; i < 19; i++) {
      ring.add(PointMm.unit(2 * Math.PI * i / 19).times(20 + 100 * random.nextDouble()));
    }
    assertThat(whole(Curves.polygon(ring))).hasSizeBetween(2, 17);
  }

  @Test
  void whatIsConvexStaysOnePieceAndHolesStayOpen() {
    assertThat(whole(Curves.disc(new PointMm(3, 4), 50))).hasSize(1);
    Geometry ring = Curves.ring(PointMm.ORIGIN, 50, 30);
    assertThat(whole(ring)).hasSizeGreaterThan(2);
    Geometry bent =
        Curves.strip(List.of(new PointMm(0, 0), new PointMm(100, 0), new PointMm(160, 90)), 22);
    assertThat(whole(bent)).hasSizeLessThan(12);
  }
}
