package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;

/** The index of an outline, beside JTS: rings, holes, several pieces, points in and out. */
class EdgesTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static Geometry shape(SplittableRandom random) {
    Geometry one = Bodies.outline(random, 0, 0, 30 + random.nextDouble(60));
    Geometry two = Bodies.outline(random, 250, 40, 30 + random.nextDouble(60));
    Geometry shape = random.nextBoolean() ? one : one.union(two);
    // rings may be drawn either way round
    return random.nextBoolean() ? shape.reverse() : shape;
  }

  private static Point point(double x, double z) {
    return FACTORY.createPoint(new Coordinate(x, z));
  }

  @Test
  void theAreaShortOfALineIsThatOfWhatIsCutOff() {
    SplittableRandom random = new SplittableRandom(43);
    for (int i = 0; i < 80; i++) {
      Geometry shape = shape(random);
      Edges edges = Edges.of(shape);
      PointMm line = new PointMm(random.nextDouble(-60, 310), random.nextDouble(-60, 100));
      PointMm past = PointMm.unit(random.nextDouble(6.28));
      PointMm far = past.left().times(2000);
      PointMm deep = past.times(-2000);
      Geometry half =
          Curves.polygon(
              List.of(
                  line.plus(far),
                  line.plus(far).plus(deep),
                  line.minus(far).plus(deep),
                  line.minus(far)));
      assertThat(edges.areaMm2(line, past))
          .isCloseTo(shape.intersection(half).getArea(), within(1e-6));
      assertThat(edges.areaMm2()).isCloseTo(shape.getArea(), within(1e-6));
    }
    assertThat(Edges.of(FACTORY.createPolygon()).areaMm2()).isZero();
  }

  @Test
  void outlineComesBackAsItWas() {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < 80; i++) {
      Geometry shape = shape(random);
      Edges edges = Edges.of(shape);
      assertThat(edges.count())
          .isEqualTo(shape.getNumPoints() - shape.getBoundary().getNumGeometries());
      assertThat(edges.outline().symDifference(shape).getArea()).isLessThan(1e-6);
      Envelope box = shape.getEnvelopeInternal();
      assertThat((Object) edges.envelope()).isEqualTo(box);
      PointMm from = new PointMm(random.nextDouble(-300, 300), random.nextDouble(-300, 300));
      PointMm towards = PointMm.unit(random.nextDouble(6.28));
      double reach = 0;
      double most = Double.NEGATIVE_INFINITY;
      for (Coordinate c : shape.getCoordinates()) {
        reach = Math.max(reach, Math.hypot(c.x - from.x(), c.y - from.z()));
        most = Math.max(most, c.x * towards.x() + c.y * towards.z());
      }
      assertThat(edges.reachMm(from)).isCloseTo(reach, within(1e-9));
      assertThat(edges.mostMm(towards)).isCloseTo(most, within(1e-9));
    }
    assertThat(Edges.of(FACTORY.createPolygon()).envelope().isNull()).isTrue();
    assertThat(Edges.of(FACTORY.createPolygon()).reachMm(PointMm.ORIGIN)).isZero();
    // lines and points have no body
    assertThat(Edges.of(point(1, 2)).count()).isZero();
  }

  @Test
  void insideIsToTheLeftOfEveryEdge() {
    SplittableRandom random = new SplittableRandom(42);
    for (int i = 0; i < 100; i++) {
      Geometry shape = shape(random);
      Edges edges = Edges.of(shape);
      for (int e = 0; e < edges.ends.length; e += 4) {
        double ux = edges.ends[e + 2] - edges.ends[e];
        double uz = edges.ends[e + 3] - edges.ends[e + 1];
        double length = Math.hypot(ux, uz);
        if (length < 0.1) {
          continue;
        }
        double x = edges.ends[e] + ux / 2 - uz / length * 1e-3;
        double z = edges.ends[e + 1] + uz / 2 + ux / length * 1e-3;
        assertThat(shape.contains(point(x, z))).isTrue();
        assertThat(edges.inside(x, z)).isTrue();
      }
    }
  }

  @Test
  void pointsAreInsideWhereJtsHasThem() {
    SplittableRandom random = new SplittableRandom(43);
    int inside = 0;
    for (int i = 0; i < 80; i++) {
      Geometry shape = shape(random);
      Edges edges = Edges.of(shape);
      for (int k = 0; k < 40; k++) {
        double x = random.nextDouble(-120, 350);
        double z = random.nextDouble(-120, 160);
        boolean in = shape.contains(point(x, z));
        inside += in ? 1 : 0;
        assertThat(edges.inside(x, z)).isEqualTo(in);
      }
    }
    assertThat(inside).isGreaterThan(100);
  }

  /** The nearest edge to a point, and where on it, is where JTS has the distance. */
  @Test
  void nearestEdgeIsAtTheDistanceOfJts() {
    SplittableRandom random = new SplittableRandom(44);
    for (int i = 0; i < 80; i++) {
      Geometry shape = shape(random);
      Edges edges = Edges.of(shape);
      for (int k = 0; k < 20; k++) {
        double x = random.nextDouble(-200, 400);
        double z = random.nextDouble(-200, 250);
        double distance = shape.getBoundary().distance(point(x, z));
        PointSearch found = PointSearch.of(edges, x, z, 1e6);
        assertThat(found.distanceMm()).isCloseTo(distance, within(1e-9));
        int e = 4 * found.edge;
        double fx = edges.ends[e] + found.share * (edges.ends[e + 2] - edges.ends[e]);
        double fz = edges.ends[e + 1] + found.share * (edges.ends[e + 3] - edges.ends[e + 1]);
        assertThat(Math.hypot(x - fx, z - fz)).isCloseTo(distance, within(1e-9));
        assertThat(PointSearch.of(edges, x, z, distance * 0.999).edge).isEqualTo(-1);
        assertThat(PointSearch.of(edges, x, z, distance * 1.001).edge).isEqualTo(found.edge);
      }
    }
  }

  @Test
  void boxesAreAsFarApartAsThoseOfJts() {
    SplittableRandom random = new SplittableRandom(45);
    for (int i = 0; i < 300; i++) {
      Geometry a = Bodies.outline(random, 0, 0, 40);
      Geometry b =
          Bodies.outline(random, random.nextDouble(-200, 200), random.nextDouble(-200, 200), 40);
      Face first = new Face(Edges.of(a), List.of());
      Face second = new Face(Edges.of(b), List.of());
      assertThat(first.apartMm(second))
          .isCloseTo(a.getEnvelopeInternal().distance(b.getEnvelopeInternal()), within(1e-9));
    }
  }

  @Test
  void movedIsTheMovedOutline() {
    SplittableRandom random = new SplittableRandom(46);
    for (int i = 0; i < 100; i++) {
      Geometry shape = shape(random);
      double turn = random.nextDouble(-3, 3);
      PointMm shift = new PointMm(random.nextDouble(-300, 300), random.nextDouble(-300, 300));
      Geometry moved =
          AffineTransformation.rotationInstance(turn)
              .translate(shift.x(), shift.z())
              .transform(shape);
      Edges edges = Edges.of(shape).moved(new RigidMotion(turn, shift));
      assertThat(edges.outline().symDifference(moved).getArea()).isLessThan(1e-6);
    }
  }
}
