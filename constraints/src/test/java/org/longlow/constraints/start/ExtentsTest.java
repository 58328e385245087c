package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** How far outlines reach beyond a line, against JTS: what the half plane leaves of them. */
class ExtentsTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double FAR = 1e4;

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  private static Geometry hull(Random random) {
    Coordinate[] points = new Coordinate[5 + random.nextInt(5)];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(300 * random.nextGaussian(), 200 * random.nextGaussian());
    }
    return FACTORY.createMultiPointFromCoords(points).convexHull();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void reachesAreThoseOfWhatAHalfPlaneLeaves(long seed) {
    Random random = new Random(seed);
    Geometry outline = hull(random);
    Coordinate[] ring = outline.getCoordinates();
    for (int i = 0; i < 20; i++) {
      double from = 250 * random.nextGaussian();
      Geometry above = outline.intersection(FACTORY.toGeometry(new Envelope(-FAR, FAR, from, FAR)));
      if (above.isEmpty()) {
        assertThat(Extents.foremostAbove(ring, from)).isEqualTo(Double.NEGATIVE_INFINITY);
      } else {
        assertThat(Extents.foremostAbove(ring, from))
            .isCloseTo(above.getEnvelopeInternal().getMaxX(), within(1e-6));
      }
      Geometry ahead = outline.intersection(FACTORY.toGeometry(new Envelope(from, FAR, -FAR, FAR)));
      if (ahead.isEmpty()) {
        assertThat(Extents.lowestFrom(ring, from)).isEqualTo(Double.MAX_VALUE);
      } else {
        assertThat(Extents.lowestFrom(ring, from))
            .isCloseTo(ahead.getEnvelopeInternal().getMinY(), within(1e-6));
      }
    }
  }

  /** A corner on the line belongs to what is beyond it. */
  @Test
  void aCornerOnTheLineCounts() {
    Coordinate[] ring = {
      new Coordinate(0, 0), new Coordinate(10, 0), new Coordinate(4, 7), new Coordinate(0, 0)
    };
    assertThat(Extents.foremostAbove(ring, 7)).isEqualTo(4);
    assertThat(Extents.foremostAbove(ring, 0)).isEqualTo(10);
    assertThat(Extents.lowestFrom(ring, 10)).isZero();
    assertThat(Extents.foremostAbove(ring, 7.001)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(Extents.lowestFrom(ring, 10.001)).isEqualTo(Double.MAX_VALUE);
  }
}
