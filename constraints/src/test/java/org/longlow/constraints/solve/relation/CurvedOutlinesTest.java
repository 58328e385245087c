package org.longlow.constraints.solve.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Relation;

/**
 * Quarters of ellipses, A cos t + B sin t for two vertices A and B as seen from the origin: of a
 * circle where they are square to each other and as far out, with every distance known.
 */
class CurvedOutlinesTest {

  private static final double R = 100;

  private static final CurvedOutlines.Curve QUARTER =
      (v, share, out) -> {
        double c = Math.cos(share * Math.PI / 2);
        double s = Math.sin(share * Math.PI / 2);
        out[0] = v[0] * c + v[2] * s;
        out[1] = v[1] * c + v[3] * s;
      };

  private static List<Pt> vertices(int count) {
    List<Pt> vertices = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      vertices.add(Pt.variables(2 * i, 2 * i + 1));
    }
    return vertices;
  }

  private static final Relation ON_QUARTER =
      CurvedOutlines.on(
          Pt.variables(0, 1), vertices(2), new CurvedOutlines.Edge(new int[] {0, 1}, QUARTER));

  private static double[] byQuarter(double x, double z) {
    return new double[] {x, z, R, 0, 0, R};
  }

  // counterclockwise, so the middle of the circle is on the left
  @ParameterizedTest
  @CsvSource({"40, 30", "40, 5", "130, 30", "99.9, 70", "100.1, 2", "100, 45", "1000, 88"})
  void besideAQuarterTheDistanceIsThatToTheCircle(double r, double deg) {
    double c = Math.cos(Math.toRadians(deg));
    double s = Math.sin(Math.toRadians(deg));
    double[] g = new double[6];
    assertThat(ON_QUARTER.evaluate(byQuarter(r * c, r * s), g)).isCloseTo(R - r, within(1e-9));
    // farther out is less by as much, and a vertex moved out moves its share of the edge out
    double[] expected = {-c, -s, c * c, c * s, s * c, s * s};
    for (int i = 0; i < 6; i++) {
      assertThat(g[i]).as("slope %d", i).isCloseTo(expected[i], within(1e-7));
    }
  }

  // 50 mm from an end: 30 to a side and 40 beyond
  @ParameterizedTest
  @CsvSource({
    "130, -40, -50, -0.6, 0.8",
    "70, -40, 50, -0.6, -0.8",
    "-40, 130, -50, 0.8, -0.6",
    "-40, 70, 50, -0.8, -0.6"
  })
  void beyondAnEndTheDistanceIsThatToTheEnd(
      double x, double z, double distance, double gx, double gz) {
    double[] g = new double[6];
    assertThat(ON_QUARTER.evaluate(byQuarter(x, z), g)).isCloseTo(distance, within(1e-9));
    assertThat(g[0]).isCloseTo(gx, within(1e-9));
    assertThat(g[1]).isCloseTo(gz, within(1e-9));
    // the end goes with its own vertex only
    int own = z < 0 ? 2 : 4;
    assertThat(g[own]).isCloseTo(-gx, within(1e-7));
    assertThat(g[own + 1]).isCloseTo(-gz, within(1e-7));
    assertThat(g[6 - own]).isCloseTo(0, within(1e-7));
    assertThat(g[7 - own]).isCloseTo(0, within(1e-7));
  }

  private static Relation room(boolean turned) {
    List<CurvedOutlines.Edge> edges = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      int next = (i + 1) % 4;
      edges.add(
          new CurvedOutlines.Edge(turned ? new int[] {next, i} : new int[] {i, next}, QUARTER));
    }
    if (turned) {
      Collections.reverse(edges);
    }
    return CurvedOutlines.inside(Pt.variables(0, 1), vertices(4), edges);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void roomInACircleIsWhatIsLeftOfItsRadius(boolean turned) {
    double[] u = {0, 0, R, 0, 0, R, -R, 0, 0, -R};
    for (double r : new double[] {1, 60, 99.99, 100.01, 250}) {
      for (int deg = 3; deg < 360; deg += 17) {
        u[0] = r * Math.cos(Math.toRadians(deg));
        u[1] = r * Math.sin(Math.toRadians(deg));
        double[] g = new double[10];
        assertThat(room(turned).evaluate(u, g))
            .as("%s at %s", r, deg)
            .isCloseTo(R - r, within(1e-9));
        assertThat(Math.hypot(g[0], g[1])).isCloseTo(1, within(1e-9));
        assertThat(g[0] * u[0] + g[1] * u[1]).isCloseTo(-r, within(1e-6));
      }
    }
  }

  /** Ovals with four corners, drawn in fine steps and measured by another library. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void roomInAnyOvalIsThatOfItsPolygon(boolean turned) {
    Random random = new Random(3);
    GeometryFactory jts = new GeometryFactory();
    Relation room = room(turned);
    int inside = 0;
    for (int i = 0; i < 120; i++) {
      double[] u = new double[10];
      for (int k = 0; k < 4; k++) {
        double a = Math.toRadians(90 * k + 40 * random.nextDouble() - 20);
        double far = 60 + 80 * random.nextDouble();
        u[2 + 2 * k] = far * Math.cos(a);
        u[3 + 2 * k] = far * Math.sin(a);
      }
      u[0] = 250 * random.nextDouble() - 125;
      u[1] = 250 * random.nextDouble() - 125;
      Polygon polygon = jts.createPolygon(fine(u));
      Point p = jts.createPoint(new Coordinate(u[0], u[1]));
      boolean in = polygon.contains(p);
      inside += in ? 1 : 0;
      double expected = (in ? 1 : -1) * polygon.getBoundary().distance(p);
      assertThat(room.evaluate(u, null)).as("case %d", i).isCloseTo(expected, within(2e-3));
      differencesAgree(room, u);
    }
    assertThat(inside).isBetween(20, 100);
  }

  private static Coordinate[] fine(double[] u) {
    List<Coordinate> ring = new ArrayList<>();
    double[] out = new double[2];
    for (int k = 0; k < 4; k++) {
      int a = 2 + 2 * k;
      int b = 2 + 2 * ((k + 1) % 4);
      for (int j = 0; j < 500; j++) {
        QUARTER.at(new double[] {u[a], u[a + 1], u[b], u[b + 1]}, j / 500.0, out);
        ring.add(new Coordinate(out[0], out[1]));
      }
    }
    ring.add(ring.get(0));
    return ring.toArray(Coordinate[]::new);
  }

  private static void differencesAgree(Relation room, double[] u) {
    double[] g = new double[10];
    room.evaluate(u, g);
    for (int k = 0; k < 10; k++) {
      double[] more = u.clone();
      double[] less = u.clone();
      more[k] += 1e-4;
      less[k] -= 1e-4;
      double slope = (room.evaluate(more, null) - room.evaluate(less, null)) / 2e-4;
      assertThat(g[k]).as("slope %d", k).isCloseTo(slope, within(1e-4));
    }
  }

  @Test
  void aPointOnACornerHasNoRoom() {
    double[] u = {R, 0, R, 0, 0, R, -R, 0, 0, -R};
    assertThat(room(false).evaluate(u, new double[10])).isCloseTo(0, within(1e-9));
  }
}
