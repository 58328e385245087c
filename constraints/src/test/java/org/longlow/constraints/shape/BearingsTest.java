package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.shape.Bearings.Sector;
import org.longlow.rider.geom.PointMm;

/** What bodies hide in a plane from an eye, against rays cast at them one by one. */
class BearingsTest {

  private static final PointMm EYE = new PointMm(900, 1100);

  private static Bearings back(double dropRad) {
    return new Bearings(EYE, 40, PointMm.unit(Math.PI + dropRad));
  }

  private static Polygon polygon(SplittableRandom random, double far) {
    List<PointMm> points = new ArrayList<>();
    PointMm middle = new PointMm(EYE.x() - far, EYE.z() + random.nextDouble(-60, 60));
    for (int i = 0; i < 7; i++) {
      points.add(
          middle.plus(
              PointMm.unit(2 * Math.PI * (i + random.nextDouble(0, 0.9)) / 7)
                  .times(random.nextDouble(60, 140))));
    }
    return (Polygon) Curves.polygon(points).convexHull();
  }

  /** A ray of the plane: what it goes through, from the polygon's edges in the elevation. */
  private static boolean hits(Bearings eye, Geometry outline, Interval across, double rad) {
    double low = 1;
    double high = 1e5;
    double s = Math.sin(rad);
    if (Math.abs(s) > 1e-12) {
      double a = (across.from() - eye.eyeYMm()) / s;
      double b = (across.to() - eye.eyeYMm()) / s;
      low = Math.max(low, Math.min(a, b));
      high = Math.min(high, Math.max(a, b));
    } else if (eye.eyeYMm() < across.from() || eye.eyeYMm() > across.to()) {
      return false;
    }
    if (low > high) {
      return false;
    }
    PointMm step = eye.way().times(Math.cos(rad));
    Coordinate p = at(eye.eye().plus(step.times(low)));
    Coordinate q = at(eye.eye().plus(step.times(high)));
    return outline.intersects(outline.getFactory().createLineString(new Coordinate[] {p, q}));
  }

  private static Coordinate at(PointMm p) {
    return new Coordinate(p.x(), p.z());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void asFarAsRaysHitABodyItHides(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int seen = 0;
    for (int k = 0; k < 12; k++) {
      Bearings eye = back(random.nextDouble(-0.05, 0.05));
      Polygon outline = polygon(random, random.nextDouble(200, 900));
      double from = random.nextDouble(-400, 300);
      Interval across = new Interval(from, from + random.nextDouble(20, 300));
      Prism full = new Prism(outline, across);
      Prism inPieces = new Prism(outline, across, full.convex());
      double first = Double.NaN;
      double last = Double.NaN;
      int n = 1500;
      for (int i = 0; i <= n; i++) {
        double rad = Math.PI * (i - n / 2.0) / n * 0.998;
        if (hits(eye, outline, across, rad)) {
          first = Double.isNaN(first) ? rad : first;
          last = rad;
        }
      }
      for (Prism prism : List.of(full, inPieces)) {
        Optional<Sector> sector = eye.of(prism);
        assertThat(sector.isPresent()).isEqualTo(!Double.isNaN(first));
        // rays are some two thousandths apart
        if (sector.isPresent()) {
          assertThat(sector.get().fromRad()).isCloseTo(first, within(2.2e-3));
          assertThat(sector.get().toRad()).isCloseTo(last, within(2.2e-3));
          seen++;
        }
      }
    }
    assertThat(seen).isGreaterThan(8);
  }

  /** A ball: its section is a disc, whose tangents stand off by asin(r / d). */
  @Test
  void aBallHidesTheTangentsOfItsSection() {
    Bearings eye = new Bearings(EYE, 0, PointMm.unit(Math.PI));
    Prism ball = Prism.ball(new PointMm(EYE.x() - 500, EYE.z() + 60), 200, 100);
    double disc = Math.sqrt(100 * 100 - 60 * 60);
    double middle = Math.atan2(200, 500);
    double half = Math.asin(disc / Math.hypot(500, 200));
    Sector s = eye.of(ball).orElseThrow();
    // corners about it stand out by at most 8 % of its radius
    assertThat(s.toRad()).isBetween(middle + half - 1e-9, middle + half + 0.03);
    assertThat(s.fromRad()).isBetween(middle - half - 0.03, middle - half + 1e-9);
    assertThat(eye.of(Prism.ball(new PointMm(EYE.x() - 500, EYE.z() + 120), 200, 100))).isEmpty();
    assertThat(eye.of(Prism.ball(new PointMm(EYE.x() + 500, EYE.z()), 200, 100))).isEmpty();
  }

  /** The other side's image hides the image. */
  @Test
  void leftAndRightAreImages() {
    Bearings left = new Bearings(EYE, 30, PointMm.unit(3.1));
    Bearings right = new Bearings(EYE, -30, PointMm.unit(3.1));
    Prism body = new Prism(polygon(new SplittableRandom(9), 400), new Interval(50, 190));
    Sector a = left.of(body).orElseThrow();
    Sector b = right.of(body.mirrored()).orElseThrow();
    assertThat(b.fromRad()).isCloseTo(-a.toRad(), within(1e-12));
    assertThat(b.toRad()).isCloseTo(-a.fromRad(), within(1e-12));
    assertThat(a.fromRad()).isPositive();
  }

  @Test
  void whatOverlapsRoundADirectionIsOneSector() {
    List<Sector> all =
        List.of(
            new Sector(-0.5, -0.2),
            new Sector(-0.25, 0.1),
            new Sector(0.05, 0.3),
            new Sector(0.4, 0.6));
    Sector round = Bearings.round(0, all).orElseThrow();
    assertThat(round).isEqualTo(new Sector(-0.5, 0.3));
    assertThat(Bearings.round(0.35, all)).isEmpty();
    assertThat(Bearings.round(0.5, all)).contains(new Sector(0.4, 0.6));
    assertThat(Bearings.round(0, List.of())).isEmpty();
  }

  /** A body round the eye, cut off square to the direction. */
  @Test
  void whatReachesPastTheEyeIsCutOff() {
    Bearings eye = new Bearings(EYE, 0, PointMm.unit(Math.PI));
    Geometry beside =
        Curves.polygon(
            List.of(
                EYE.plus(new PointMm(-300, -50)),
                EYE.plus(new PointMm(300, -50)),
                EYE.plus(new PointMm(300, 50)),
                EYE.plus(new PointMm(-300, 50))));
    Prism wall = new Prism(beside, new Interval(100, 120));
    for (Prism p : List.of(wall, new Prism(beside, wall.across(), wall.convex()))) {
      Sector s = eye.of(p).orElseThrow();
      assertThat(s.fromRad()).isCloseTo(Math.atan2(100, 300), within(1e-9));
      assertThat(s.toRad()).isBetween(Math.atan2(120, 1) - 1e-9, Math.PI / 2);
    }
  }
}
