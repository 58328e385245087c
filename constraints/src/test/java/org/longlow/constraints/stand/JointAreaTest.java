package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;

/** What outlines cover together, by hand and against the union of a geometry library. */
class JointAreaTest {

  private static Coordinate[] at(double... xy) {
    Coordinate[] points = new Coordinate[xy.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    return points;
  }

  private static Coordinate[] box(double fromX, double fromY, double toX, double toY) {
    return at(fromX, fromY, toX, fromY, toX, toY, fromX, toY);
  }

  private static void is(double area, double x, double y, Coordinate[]... outlines) {
    Silhouette s = JointArea.of(List.of(outlines)).orElseThrow();
    assertThat(s.areaMm2()).isCloseTo(area, within(1e-7 * area));
    assertThat(s.centroid().distance(new PointMm(x, y))).isLessThan(1e-5);
  }

  @Test
  void edgesOnEachOtherCountOnceOrNotAtAll() {
    is(600, 10, 15, box(0, 0, 20, 30));
    is(600, 10, 15, box(0, 0, 20, 30), box(0, 0, 20, 30));
    // one within, with three edges on those of the other
    is(600, 10, 15, box(0, 0, 20, 30), box(0, 0, 20, 7));
    // side by side, whole edges and parts of edges
    is(600, 10, 15, box(0, 0, 8, 30), box(8, 0, 20, 30));
    is(600, 10, 15, box(0, 0, 20, 10), box(0, 10, 9, 30), box(9, 10, 20, 30));
    // a cross: 20 by 60 and 60 by 20
    is(2000, 0, 0, box(-10, -30, 10, 30), box(-30, -10, 30, 10));
    // overlapping along two edges
    is(600, 10, 15, box(0, 0, 20, 20), box(0, 10, 20, 30));
    // polygon formula; counting a 1 mm grid gave 905050, 958.725, 626.683
    is(
        905000,
        958.747697974217,
        626.703499079190,
        at(200, 300, 500, 900, 1100, 1150, 1500, 900, 1700, 450, 900, 200));
    // corners that touch and nothing more
    is(200, 10, 10, box(0, 0, 10, 10), box(10, 10, 20, 20));
  }

  @Test
  void whatIsOpenInTheMiddleStaysOpen() {
    is(
        400 - 100,
        10,
        10,
        box(0, 0, 20, 5),
        box(0, 15, 20, 20),
        box(0, 0, 5, 20),
        box(15, 0, 20, 20));
  }

  @Test
  void anOutlineWithoutAreaCoversNothing() {
    assertThat(JointArea.of(List.of())).isEmpty();
    assertThat(JointArea.of(List.<Coordinate[]>of(at(3, 4)))).isEmpty();
    assertThat(JointArea.of(List.of(at(3, 4, 5, 6), at(0, 0, 9, 9)))).isEmpty();
    is(600, 10, 15, box(0, 0, 20, 30), at(-50, 0, 90, 3), at(400, 4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-3, 1, 1e6})
  void manyOutlinesCoverWhatTheirUnionDoes(double size) {
    SplittableRandom random = new SplittableRandom(11);
    for (int round = 0; round < 40; round++) {
      // on a coarse lattice, so that edges and corners lie on each other often, turned and shifted
      double angle = round % 4 == 0 ? 0 : random.nextDouble(6);
      double shift = random.nextDouble(-20, 20) * size;
      List<Coordinate[]> outlines = new ArrayList<>();
      List<Geometry> areas = new ArrayList<>();
      for (int i = 0; i < 4 + round; i++) {
        int atX = random.nextInt(20);
        int atY = random.nextInt(20);
        Coordinate[] points = new Coordinate[3 + random.nextInt(6)];
        for (int k = 0; k < points.length; k++) {
          double x = (atX + random.nextInt(6)) * size;
          double y = (atY + random.nextInt(6)) * size;
          points[k] =
              new Coordinate(
                  shift + x * Math.cos(angle) - y * Math.sin(angle),
                  x * Math.sin(angle) + y * Math.cos(angle));
        }
        outlines.add(points);
        Geometry hull = Curves.FACTORY.createMultiPointFromCoords(points).convexHull();
        if (hull.getDimension() == 2) {
          areas.add(hull);
        }
      }
      Geometry union = OverlayNGRobust.union(areas, Curves.FACTORY);
      Silhouette s = JointArea.of(outlines).orElseThrow();
      assertThat(s.areaMm2())
          .as("round " + round)
          .isCloseTo(union.getArea(), within(1e-6 * union.getArea()));
      Coordinate middle = union.getCentroid().getCoordinate();
      assertThat(s.centroid().distance(new PointMm(middle.x, middle.y))).isLessThan(1e-5 * size);
    }
  }
}
