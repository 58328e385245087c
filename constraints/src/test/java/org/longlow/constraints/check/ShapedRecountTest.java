package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * Bodies whose breadth varies, worked out again by points of their surface: against the road of two
 * leant tori, the road upright, and limbs of somebody seated. Surfaces are those of plain formulas,
 * not of the body's pieces.
 */
class ShapedRecountTest {

  private static final GeometryFactory JTS = new GeometryFactory();

  /**
   * A box 300 by 80 that is broader behind: a trapezium from above, cut square or with rounded
   * corners.
   *
   * @param left reaches to the left, behind and ahead, mm
   * @param right likewise to the right
   * @param corner radius of its corners; 0 for none
   */
  private record Keel(double x, double z, double[] left, double[] right, double corner) {

    static final double LONG = 300;
    static final double HIGH = 80;

    String json() {
      return String.format(
          Locale.ROOT,
          "{'kind': 'box', 'frame': 'keelAt', 'mass': '1 kg', 'outline': {'points': [[0, 0], [300,"
              + " 0], [300, 80], [0, 80]]}, 'stations': [{'x': 0, 'left': %s, 'right': %s}, {'x':"
              + " 300, 'left': %s, 'right': %s}]%s}",
          left[0],
          right[0],
          left[1],
          right[1],
          corner > 0 ? ", 'profile': {'shape': 'flat', 'corner': '" + corner + " mm'}" : "");
    }

    TestMachine on(TestMachine machine) {
      return machine.pin("keelAt", x, z).with("parts", "keel", json());
    }

    /** Points of its sides in the axes of the machine, both edges of them included. */
    List<double[]> surface(double step) {
      List<double[]> points = new ArrayList<>();
      int n = (int) Math.ceil(LONG / step);
      for (int i = 0; i <= n; i++) {
        double t = (double) i / n;
        double toLeft = left[0] + t * (left[1] - left[0]);
        double toRight = right[0] + t * (right[1] - right[0]);
        for (double[] p : side(step)) {
          points.add(new double[] {x + t * LONG, toLeft - p[1], z + p[0]});
          points.add(new double[] {x + t * LONG, p[1] - toRight, z + p[0]});
        }
      }
      return points;
    }

    /** Height and how far within the reach a side is there. */
    private List<double[]> side(double step) {
      List<double[]> side = new ArrayList<>();
      for (double up = corner; up <= HIGH - corner + 1e-9; up += step) {
        side.add(new double[] {up, 0});
      }
      side.add(new double[] {HIGH - corner, 0});
      for (int deg = 0; deg <= 90 && corner > 0; deg += 2) {
        double in = corner * (1 - Math.sin(Math.toRadians(deg)));
        double off = corner * (1 - Math.cos(Math.toRadians(deg)));
        side.add(new double[] {off, in});
        side.add(new double[] {HIGH - off, in});
      }
      return side;
    }
  }

  private static TestMachine rigid() {
    return TestMachine.runabout()
        .lacking("sideStand")
        .part("front", "bump", "'0 mm'")
        .part("front", "droop", "'0 mm'")
        .part("swingarm", "bump", "'0 mm'")
        .part("swingarm", "droop", "'0 mm'");
  }

  private static Standing laden(Study study) {
    return study.standings().stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .findFirst()
        .orElseThrow();
  }

  private static Optional<Finding> found(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst();
  }

  /**
   * The least height of points over the road of a machine that leans, mm. The machine stays, and
   * the plane that both tyres touch turns: a torus reaches down to n·centre − ring·|(nx, nz)| −
   * section along a unit normal n, and the pitch is that at which both reach equally far.
   */
  private static double lowest(List<double[]> points, OnRoad on, double rollRad, int side) {
    double low = -0.3;
    double high = 0.3;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      double[] n = normal(middle, rollRad, side);
      if (reach(n, on.front(), on.frontRadiusMm(), 45)
          < reach(n, on.rear(), on.rearRadiusMm(), 55)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double[] n = normal((low + high) / 2, rollRad, side);
    double road = reach(n, on.rear(), on.rearRadiusMm(), 55);
    double least = Double.POSITIVE_INFINITY;
    for (double[] p : points) {
      least = Math.min(least, n[0] * p[0] + n[1] * p[1] + n[2] * p[2] - road);
    }
    return least;
  }

  private static double[] normal(double pitch, double roll, int side) {
    double c = Math.cos(roll);
    return new double[] {c * Math.sin(pitch), -side * Math.sin(roll), c * Math.cos(pitch)};
  }

  private static double reach(double[] n, PointMm axle, double radius, double section) {
    return n[0] * axle.x()
        + n[2] * axle.z()
        - (radius - section) * Math.hypot(n[0], n[2])
        - section;
  }

  private static double touchDeg(List<double[]> points, OnRoad on, int side) {
    double low = 0;
    double high = Math.toRadians(60);
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (lowest(points, on, middle, side) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.toDegrees(high);
  }

  @ParameterizedTest
  @CsvSource({"420, 130, 0", "700, 150, 0", "900, 140, 0", "420, 130, 25", "800, 150, 30"})
  void leanIsThatOfPointsOverAPlaneUnderTwoTori(double x, double z, double corner) {
    Keel keel = new Keel(x, z, new double[] {300, 160}, new double[] {210, 260}, corner);
    Study study = keel.on(rigid()).study();
    OnRoad on = OnRoad.of(study, laden(study));
    List<double[]> surface = keel.surface(5);
    for (int side = -1; side <= 1; side += 2) {
      String id = "lean." + (side > 0 ? "left" : "right") + ".keel";
      double deg = touchDeg(surface, on, side);
      assertThat(deg).isBetween(2.0, 59.0);
      double found = found(study, id).orElseThrow().value();
      if (corner == 0) {
        assertThat(found).as(id).isCloseTo(deg, within(1e-3));
      } else {
        // 0.2 mm of curves, and points 2° apart, over a lever of 200 mm and more: no later
        assertThat(found).as(id).isLessThan(deg + 1e-3).isGreaterThan(deg - 0.1);
      }
    }
  }

  @Test
  void clearanceIsThatOfItsLowestPoint() {
    for (double corner : new double[] {0, 30}) {
      Keel keel = new Keel(600, 95, new double[] {300, 160}, new double[] {210, 260}, corner);
      Study study = keel.on(rigid()).study();
      OnRoad on = OnRoad.of(study, laden(study));
      double least =
          keel.surface(10).stream()
              .mapToDouble(p -> on.z(new PointMm(p[0], p[2])))
              .min()
              .orElseThrow();
      Finding f = found(study, "clearance.laden").orElseThrow();
      assertThat(f.subject()).isEqualTo("keel");
      assertThat(f.value()).isCloseTo(least, within(1e-6));
    }
  }

  /** The distance of a point from what somebody is made of, by JTS and Pythagoras. */
  private static double apart(double[] p, List<Prism> body) {
    double least = Double.POSITIVE_INFINITY;
    for (Prism prism : body) {
      double side = prism.outline().distance(JTS.createPoint(new Coordinate(p[0], p[2])));
      double across =
          Math.max(0, Math.max(prism.across().from() - p[1], p[1] - prism.across().to()));
      least = Math.min(least, Math.hypot(side, across));
    }
    return least;
  }

  /** Beside and over the legs of somebody who leans back, narrowing to where they are. */
  @ParameterizedTest
  @CsvSource({"620, 745, 0, 300", "700, 760, 25, 200", "980, 640, 0, 250", "900, 700, 30, 120"})
  void limbsAreAsFarOffAsPointsSay(double x, double z, double corner, double left) {
    Keel keel =
        new Keel(x, z, new double[] {left, left / 3}, new double[] {left / 2, left}, corner);
    Study study = keel.on(TestMachine.runabout()).study();
    Sitting sitting = study.sittings().get(0);
    List<Prism> body = Resting.clear(sitting, study.layout().parts().get("keel")).prisms(sitting);
    assertThat(body).isNotEmpty();
    double step = 4;
    double least = keel.surface(step).stream().mapToDouble(p -> apart(p, body)).min().orElseThrow();
    Optional<Finding> f = found(study, "gap.keel." + sitting.occupant().name());
    if (least > 41) {
      assertThat(f).isEmpty();
      return;
    }
    double mm = f.orElseThrow().value();
    if (least <= 0) {
      assertThat(mm).isNotPositive();
    } else {
      // half the diagonal of a step along the surface; curves are gone round by 0.2 mm
      assertThat(mm).isLessThan(least + 1e-3).isGreaterThan(least - step * Math.sqrt(0.5) - 0.21);
    }
  }
}
