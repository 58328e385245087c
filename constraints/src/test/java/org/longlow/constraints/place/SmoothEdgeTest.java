package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.rider.geom.PointMm;

/** Pins on and inside outlines whose edges are smooth, as the outlines are drawn. */
class SmoothEdgeTest {

  /** What is drawn is made of straight pieces this near to the curve. */
  private static final double DRAWN_MM = Curves.FLATNESS_MM + 1e-6;

  /** A cover hung on two pins that may turn, its upper edge smooth, and a pin near it. */
  private static Placed place(String ties, String limits) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "o": {"at": [400, 500], "nailed": true}, "a": [800, 540], "p": [640, 900]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "dome": {"kind": "block", "frame": {"origin": "o", "along": "a"}, "left": 50, "right": 50, "mass": 5,
             "outline": {"points": [[0, 0], [400, 0], [350, 180, "smooth"],
               [200, 260, "smooth"], [40, 150, "smooth"]], "closed": true}}},
         "ties": {"arm": {"tie": "distance", "pins": ["o", "a"], "is": 400}%s},
         "limits": {%s}}
        """
            .formatted(ties, limits);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return Placer.place(((ReadResult.Read) result).layout());
  }

  private static Geometry dome(Placed placed) {
    return Shapes.of(placed.layout().parts().get("dome"), placed.places(), false).outline();
  }

  private static Geometry point(PointMm p) {
    return new GeometryFactory().createPoint(new Coordinate(p.x(), p.z()));
  }

  @Test
  void aPinOnASmoothEdgeIsOnTheCurve() {
    Placed placed =
        place(
            ", \"t\": {\"tie\": \"on-edge\", \"pins\": [\"p\"], \"part\": \"dome\", \"edge\": 2}",
            "");
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    Geometry dome = dome(placed);
    PointMm p = placed.places().pin("p");
    assertThat(dome.getBoundary().distance(point(p))).isLessThan(DRAWN_MM);
    // and well off the chord between the two vertices of that edge
    PointMm o = placed.places().pin("o");
    PointMm axis = placed.places().pin("a").minus(o).times(1.0 / 400);
    PointMm from = o.plus(axis.times(350)).plus(axis.left().times(180));
    PointMm to = o.plus(axis.times(200)).plus(axis.left().times(260));
    PointMm chord = to.minus(from);
    assertThat(Math.abs(chord.cross(p.minus(from))) / chord.length()).isGreaterThan(5);
  }

  @Test
  void aPinIsKeptInsideASmoothOutline() {
    Placed placed =
        place(
            "",
            "\"in\": {\"limit\": \"inside\", \"pins\": [\"p\"], \"parts\": [\"dome\"], \"from\": 30}");
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
    Geometry dome = dome(placed);
    Geometry p = point(placed.places().pin("p"));
    assertThat(dome.contains(p)).isTrue();
    assertThat(dome.getBoundary().distance(p)).isCloseTo(30, within(DRAWN_MM));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void slopesAreThoseOfDifferences(long seed) {
    Placed placed =
        place(
            ", \"t\": {\"tie\": \"on-edge\", \"pins\": [\"p\"], \"part\": \"dome\", \"edge\": 3}",
            "\"in\": {\"limit\": \"inside\", \"pins\": [\"p\"], \"parts\": [\"dome\"], \"from\": 5}");
    Problem problem = placed.problem().problem();
    SplittableRandom random = new SplittableRandom(seed);
    Relation on = problem.ties().get(1).relations().get(0);
    Relation in = problem.limits().get(0).gaps().get(0);
    for (int i = 0; i < 50; i++) {
      double[] x = placed.report().x().clone();
      for (int v = 0; v < x.length; v++) {
        x[v] += random.nextDouble(-40, 40);
      }
      check(on, x, "on " + i);
      check(in, x, "in " + i);
    }
  }

  private static void check(Relation relation, double[] x, String what) {
    double[] gradient = new double[relation.variables().length];
    relation.evaluate(x, gradient);
    for (int k = 0; k < gradient.length; k++) {
      double wide = slope(relation, x, relation.variables()[k], 2e-3);
      double narrow = slope(relation, x, relation.variables()[k], 1e-3);
      if (Math.abs(wide - narrow) < 1e-5) {
        assertThat(gradient[k]).as(what + " " + k).isCloseTo(narrow, within(2e-5));
      }
    }
  }

  private static double slope(Relation relation, double[] x, int v, double step) {
    double[] y = x.clone();
    y[v] = x[v] + step;
    double more = relation.evaluate(y, null);
    y[v] = x[v] - step;
    return (more - relation.evaluate(y, null)) / (2 * step);
  }
}
