package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Dimension.Along;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** Dimensions by hand: right triangles, a plate turned by a quarter, a road that slopes. */
class MeasuredTest {

  private static final Layout LAYOUT =
      ((ReadResult.Read)
              LayoutReader.read(
                  """
                  {"longlow": 1, "name": "t",
                   "pins": {"a": [0, 300], "b": [1400, 300], "c": [600, 500]},
                   "parts": {
                     "rear": {"kind": "wheel", "end": "rear", "axle": "a", "radius": "300 mm",
                              "width": "100 mm", "mass": "9 kg"},
                     "front": {"kind": "wheel", "end": "front", "axle": "b", "radius": "300 mm",
                               "width": "100 mm", "mass": "9 kg"},
                     "plate": {"kind": "bracket", "frame": {"origin": "c", "angle": "90 deg"},
                               "outline": {"points": [[0, 0], [30, -40], [90, 0]], "half": true},
                               "left": 4, "right": 0, "mass": "1 kg"}}}
                  """,
                  null))
          .layout();

  private static final Places PLACES =
      new Places(
          Map.of("a", new PointMm(0, 300), "b", new PointMm(300, 700), "c", new PointMm(600, 500)),
          Map.of());

  private static final Ground LEVEL = new Ground(new PointMm(0, 0), new PointMm(1400, 0));

  private static Measured of(Along along, Ground ground, End... ends) {
    return Measured.of(
            new Dimension(along, List.of(ends), Optional.empty(), ""),
            LAYOUT,
            PLACES,
            MeasuredTest::outline,
            ground,
            Optional.empty())
        .orElseThrow();
  }

  /** Two squares of 100 mm, one with its near corner 30 ahead of and 40 above the other's. */
  private static Geometry outline(String part) {
    return switch (part) {
      case "rear" -> square(0, 0);
      case "front" -> square(130, 140);
      default -> null;
    };
  }

  private static Geometry square(double x, double z) {
    return new GeometryFactory()
        .createPolygon(
            new Coordinate[] {
              new Coordinate(x, z),
              new Coordinate(x + 100, z),
              new Coordinate(x + 100, z + 100),
              new Coordinate(x, z + 100),
              new Coordinate(x, z)
            });
  }

  @Test
  void aTriangleOfThreeAndFour() {
    End a = End.pin("a");
    End b = End.pin("b");
    assertThat(of(Along.STRAIGHT, LEVEL, a, b).value()).isCloseTo(500, within(1e-9));
    assertThat(of(Along.LEVEL, LEVEL, b, a).value()).isCloseTo(300, within(1e-9));
    assertThat(of(Along.UPRIGHT, LEVEL, b, a).value()).isCloseTo(400, within(1e-9));
    Measured height = of(Along.UPRIGHT, LEVEL, b);
    assertThat(height.value()).isCloseTo(700, within(1e-9));
    assertThat(height.to()).isEqualTo(new PointMm(300, 0));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, -0.11})
  void alongARoadThatSlopes(double slope) {
    PointMm rear = new PointMm(12, -30);
    Ground road = new Ground(rear, rear.plus(PointMm.unit(slope).times(1400)));
    double turned = Math.atan2(4, 3) - slope;
    End a = End.pin("a");
    End b = End.pin("b");
    assertThat(of(Along.STRAIGHT, road, a, b).value()).isCloseTo(500, within(1e-9));
    assertThat(of(Along.LEVEL, road, a, b).value()).isCloseTo(500 * Math.cos(turned), within(1e-9));
    assertThat(of(Along.UPRIGHT, road, a, b).value())
        .isCloseTo(500 * Math.sin(turned), within(1e-9));
    // the distance of a point from a line through the rear contact
    double off = Math.cos(slope) * (700 + 30) - Math.sin(slope) * (300 - 12);
    assertThat(of(Along.UPRIGHT, road, b).value()).isCloseTo(off, within(1e-9));
  }

  @Test
  void anAngleEitherWayRound() {
    End a = End.pin("a");
    End b = End.pin("b");
    End c = End.pin("c");
    // sides 500, sqrt(300^2 + 200^2), sqrt(600^2 + 200^2): by the law of cosines
    double cos = (250_000 + 130_000 - 400_000) / (2 * 500 * Math.sqrt(130_000));
    Measured angle = of(Along.ANGLE, LEVEL, a, b, c);
    assertThat(angle.value()).isCloseTo(Math.acos(cos), within(1e-12));
    assertThat(of(Along.ANGLE, LEVEL, c, b, a).value()).isCloseTo(Math.acos(cos), within(1e-12));
    assertThat(angle.at()).contains(new PointMm(300, 700));
  }

  @Test
  void pointsOfAnOutlineAlsoOfTheImageOfAHalf() {
    // turned by a quarter: x forward becomes up; 30, -40 lies 40 ahead and 30 up, its image behind
    Measured own = of(Along.STRAIGHT, LEVEL, End.pin("a"), End.point("plate", 1));
    assertThat(own.to().distance(new PointMm(640, 530))).isCloseTo(0, within(1e-9));
    Measured image = of(Along.STRAIGHT, LEVEL, End.pin("a"), End.point("plate", 3));
    assertThat(image.to().distance(new PointMm(560, 530))).isCloseTo(0, within(1e-9));
  }

  @Test
  void partsWhereTheyAreNearest() {
    Measured gap = of(Along.STRAIGHT, LEVEL, End.edge("rear"), End.edge("front"));
    assertThat(gap.value()).isCloseTo(50, within(1e-9));
    assertThat(gap.from()).isEqualTo(new PointMm(100, 100));
    assertThat(gap.to()).isEqualTo(new PointMm(130, 140));
    Measured over = of(Along.STRAIGHT, LEVEL, End.pin("a"), End.edge("rear"));
    assertThat(over.value()).isCloseTo(200, within(1e-9));
    Dimension nowhere =
        new Dimension(
            Along.STRAIGHT, List.of(End.pin("a"), End.edge("plate")), Optional.empty(), "");
    assertThat(Measured.of(nowhere, LAYOUT, PLACES, MeasuredTest::outline, LEVEL, Optional.empty()))
        .isEmpty();
  }
}
