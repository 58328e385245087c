package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;

/** What a pointer near something means. */
class SnappingTest {

  private static final Layout WREN = Tried.wren();
  private static final Places PLACES = Drawn.places(WREN);
  private final Map<String, Geometry> outlines = new LinkedHashMap<>();
  private final Snapping snapping;

  SnappingTest() {
    Shapes.of(WREN, PLACES).forEach((name, shape) -> outlines.put(name, shape.outline()));
    snapping = new Snapping(WREN, PLACES, outlines, 8, 10);
  }

  @Test
  void aPinIsTakenBeforeAnEdgeAndAnAxleSaysWhoseItIs() {
    PointMm crank = PLACES.pin("crank");
    Snapping.Snap snap = snapping.of(crank.plus(new PointMm(4, -5)));
    assertThat(snap.pin()).contains("crank");
    assertThat(snap.at()).isEqualTo(crank);
    assertThat(snap.words(Units.MM)).startsWith("pin crank");
    assertThat(snapping.of(PLACES.pin("frontAxle").plus(new PointMm(-7, 0))).words(Units.MM))
        .startsWith("axle of frontWheel");
    assertThat(snapping.of(crank.plus(new PointMm(0, 9))).pin()).isEmpty();
  }

  @Test
  void nearAnEdgeItLiesOnTheEdge() {
    PointMm right = new PointMm(860 + 178, 380 - 118);
    Snapping.Snap snap = snapping.of(new PointMm(980, 380 - 117));
    assertThat(snap.to()).isEqualTo("edge of engine");
    assertThat(snap.at().z()).isCloseTo(260, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(snap.at().x()).isCloseTo(980, org.assertj.core.data.Offset.offset(1e-6));
    assertThat(snapping.of(right).to()).isEqualTo("edge of engine");
    Random random = new Random(11);
    int edges = 0;
    for (int i = 0; i < 1000; i++) {
      PointMm p = new PointMm(2000 * random.nextDouble(), 1000 * random.nextDouble());
      Snapping.Snap s = snapping.of(p);
      assertThat(Math.abs(s.at().x() - p.x())).isLessThanOrEqualTo(8);
      assertThat(Math.abs(s.at().z() - p.z())).isLessThanOrEqualTo(8);
      if (s.to().startsWith("edge of ")) {
        edges++;
        Geometry outline = outlines.get(s.to().substring(8));
        double off =
            outline
                .getBoundary()
                .distance(
                    new GeometryFactory().createPoint(new Coordinate(s.at().x(), s.at().z())));
        assertThat(off).isLessThan(1e-6);
      } else if (s.to().isEmpty()) {
        assertThat(s.at().x() % 10).isZero();
        assertThat(s.at().z() % 10).isZero();
      }
    }
    assertThat(edges).isGreaterThan(20);
  }

  @Test
  void inTheOpenItGoesToTheGroundToAxlesAndToTheGrid() {
    Snapping.Snap ground = snapping.of(new PointMm(703, 3));
    assertThat(ground.at()).isEqualTo(new PointMm(700, 0));
    assertThat(ground.words(Units.MM)).startsWith("on the ground");
    Snapping.Snap level = snapping.of(new PointMm(-603, 303));
    assertThat(level.at()).isEqualTo(new PointMm(-600, 300));
    assertThat(level.to()).startsWith("level with axle of ");
    Snapping.Snap plumb = snapping.of(new PointMm(1643, 1206));
    assertThat(plumb.at()).isEqualTo(new PointMm(1640, 1210));
    assertThat(plumb.to()).isEqualTo("plumb with axle of frontWheel");
    assertThat(snapping.of(new PointMm(-503, 1206)))
        .isEqualTo(
            new Snapping.Snap(new PointMm(-500, 1210), Optional.empty(), Optional.empty(), ""));
  }

  @Test
  void theGridIsAsFineAsTheEyeCanTell() {
    assertThat(Snapping.at(0.5, WREN, PLACES, outlines).gridMm()).isEqualTo(10);
    assertThat(Snapping.at(0.8, WREN, PLACES, outlines).gridMm()).isEqualTo(5);
  }

  /** Eight dots from a pin, four from a line, whatever the scale. */
  @Test
  void itReachesAsFarOnTheScreenAtEveryScale() {
    PointMm axle = PLACES.pin("frontAxle");
    for (double pxPerMm : new double[] {0.2, 0.45, 1, 3}) {
      Snapping at = Snapping.at(pxPerMm, WREN, PLACES, Map.of());
      PointMm out = new PointMm(axle.x() + 400, axle.z());
      assertThat(at.of(out.plus(new PointMm(0, 3.9 / pxPerMm))).to())
          .isEqualTo("level with axle of frontWheel");
      assertThat(at.of(out.plus(new PointMm(0, 4.1 / pxPerMm))).to()).isEmpty();
      assertThat(at.of(out.plus(new PointMm(0, -4.1 / pxPerMm))).to()).isEmpty();
      assertThat(at.of(axle.plus(new PointMm(-5.6, 5.6).times(1 / pxPerMm))).pin()).isPresent();
      assertThat(at.of(axle.plus(new PointMm(-5.7, 5.7).times(1 / pxPerMm))).pin()).isEmpty();
    }
  }

  @Test
  void theNearestIsMeantButAPinBeforeTheLinesThroughIt() {
    GeometryFactory shapes = new GeometryFactory();
    Coordinate[] line = {new Coordinate(700, 303), new Coordinate(1100, 303)};
    Snapping near =
        new Snapping(WREN, PLACES, Map.of("plank", shapes.createLineString(line)), 8, 10);
    assertThat(near.of(new PointMm(800, 302)).to()).isEqualTo("edge of plank");
    assertThat(near.of(new PointMm(800, 301)).to()).startsWith("level with axle of");
    // 6 below the crank and 1 above an edge that does not run through it
    Coordinate[] under = {new Coordinate(700, 373), new Coordinate(1100, 373)};
    Snapping two =
        new Snapping(WREN, PLACES, Map.of("plank", shapes.createLineString(under)), 8, 10);
    PointMm crank = PLACES.pin("crank");
    assertThat(two.of(crank.plus(new PointMm(0, -6))).to()).isEqualTo("edge of plank");
    assertThat(two.of(crank.plus(new PointMm(0, -3))).pin()).contains("crank");
    Coordinate[] through = {new Coordinate(700, 380), new Coordinate(1100, 380)};
    Snapping on =
        new Snapping(WREN, PLACES, Map.of("plank", shapes.createLineString(through)), 8, 10);
    assertThat(on.of(crank.plus(new PointMm(7, 0))).pin()).contains("crank");
    assertThat(on.of(crank.plus(new PointMm(9, 0))).to()).isEqualTo("edge of plank");
  }
}
