package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.longlow.rider.geom.PointMm;

class CurvesTest {

  // Worked in the tube-bend reference: legs 500 and 400 with one 90° bend of CLR 114.3 cut to
  // 850.942020152657 mm. Flattening shortens an arc of 180 mm by less than 0.02 mm.
  @Test
  void bentTubeHasTheWorkedCutLength() {
    List<PointMm> pins = List.of(new PointMm(0, 0), new PointMm(500, 0), new PointMm(500, 400));
    assertThat(Curves.length(Curves.bent(pins, 114.3))).isCloseTo(850.942020152657, within(0.06));
  }

  @Test
  void bendStaysItsRadiusFromTheCentre() {
    List<PointMm> pins = List.of(new PointMm(0, 0), new PointMm(500, 0), new PointMm(500, -400));
    PointMm centre = new PointMm(400, -100);
    List<PointMm> line = Curves.bent(pins, 100);
    for (PointMm p : line.subList(1, line.size() - 1)) {
      assertThat(p.distance(centre)).isCloseTo(100, within(1e-9));
    }
  }

  @Test
  void bendThatDoesNotFitIsTightened() {
    List<PointMm> pins = List.of(new PointMm(0, 0), new PointMm(50, 0), new PointMm(50, 400));
    assertThat(Curves.fittingRadius(pins, 1, 200)).isCloseTo(50, within(1e-9));
    assertThat(Curves.length(Curves.bent(pins, 200))).isLessThan(450);
  }

  /** JTS is the reference, corner by corner from the same one on; 1e-9 mm is rounding. */
  @Test
  void aStraightStripIsTheBufferOfItsLine() {
    SplittableRandom random = new SplittableRandom(7);
    BufferParameters flat =
        new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_ROUND, 5);
    for (int k = 0; k < 50; k++) {
      PointMm a = new PointMm(random.nextDouble(-900, 900), random.nextDouble(-900, 900));
      PointMm b = k == 0 ? new PointMm(a.x(), 77) : new PointMm(random.nextDouble(900), a.z() / 3);
      double width = random.nextDouble(1, 90);
      Geometry strip = Curves.strip(List.of(a, b), width);
      Geometry reference = BufferOp.bufferOp(Curves.line(List.of(a, b)), width / 2, flat);
      assertThat(strip.equalsExact(reference, 1e-9)).as("%s to %s", a, b).isTrue();
    }
    assertThat(Curves.strip(List.of(PointMm.ORIGIN, PointMm.ORIGIN), 20).isEmpty()).isTrue();
  }

  /** A pin twice in one place, or a way there and back, leaves the next bend its room. */
  @Test
  void whatHasNoBendTakesNoneOfItsNeighboursRoom() {
    PointMm end = new PointMm(0, 0);
    PointMm corner = new PointMm(300, 0);
    PointMm far = new PointMm(300, 400);
    assertThat(Curves.fittingRadius(List.of(end, end, corner, far), 2, 100)).isEqualTo(100);
    assertThat(Curves.fittingRadius(List.of(corner, end, corner, far), 2, 100)).isEqualTo(100);
    assertThat(Curves.fittingRadius(List.of(corner, end, corner, far), 1, 100))
        .isCloseTo(0, within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void smoothEdgePassesThroughEveryVertex(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<PointMm> vertices = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      double angle = i * 2 * Math.PI / 9;
      vertices.add(PointMm.unit(angle).times(200 + random.nextDouble(200)));
    }
    List<PointMm> edge = Curves.through(vertices, Collections.nCopies(9, true), true);
    assertThat(edge).containsAll(vertices);
    assertThat(edge.size()).isGreaterThan(9);
    assertThat(Curves.polygon(edge).isValid()).isTrue();
  }

  @Test
  void straightEdgeIsJustItsVertices() {
    List<PointMm> square =
        List.of(new PointMm(0, 0), new PointMm(100, 0), new PointMm(100, 100), new PointMm(0, 100));
    assertThat(Curves.through(square, Collections.nCopies(4, false), true)).isEqualTo(square);
    assertThat(Curves.polygon(square).getArea()).isEqualTo(10000);
  }

  @Test
  void smoothEdgeThroughACircleStaysNearIt() {
    List<PointMm> vertices = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      vertices.add(PointMm.unit(i * Math.PI / 8).times(300));
    }
    // A Catmull-Rom curve through 16 points of a circle stays within 0.2 % of its radius.
    for (PointMm p : Curves.through(vertices, Collections.nCopies(16, true), true)) {
      assertThat(p.length()).isCloseTo(300, within(0.6));
    }
  }

  @Test
  void discHasTheAreaOfACircle() {
    double area = Curves.disc(PointMm.ORIGIN, 300).getArea();
    assertThat(area).isCloseTo(Math.PI * 300 * 300, within(Math.PI * 300 * 300 * 1e-3));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41, 42, 43})
  void discsAndBarsAreTheBuffersOfJts(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 100; i++) {
      PointMm a = new PointMm(random.nextDouble(2000), random.nextDouble(1000));
      PointMm b = a.plus(PointMm.unit(random.nextDouble(-3, 3)).times(random.nextDouble(1, 900)));
      double width = random.nextDouble(1, 300);
      assertThat(
              Curves.disc(a, width)
                  .equalsExact(
                      Curves.FACTORY.createPoint(Curves.coordinate(a)).buffer(width, 48), 1e-9))
          .isTrue();
      assertThat(
              Curves.bar(a, b, width)
                  .equalsExact(Curves.line(List.of(a, b)).buffer(width / 2, 16), 1e-9))
          .isTrue();
    }
    assertThat(Curves.bar(PointMm.ORIGIN, new PointMm(10, 0), 0).isEmpty()).isTrue();
    assertThat(Curves.disc(PointMm.ORIGIN, 0).isEmpty()).isTrue();
  }
}
