package org.longlow.constraints.solve.relation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;

/** Every analytic gradient against central differences of the value. */
class RelationGradientTest {
  private static final int POINTS = 6;
  private static final int FIRST_MEASURE = 2 * POINTS;

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  private static Pt pt(int i) {
    return Pt.variables(2 * i, 2 * i + 1);
  }

  private static Quantity measure(int i) {
    return Quantity.variable(FIRST_MEASURE + i);
  }

  /** A formula with variables that other inputs use too: the chain rule must add up. */
  private static final Quantity FORMULA =
      Quantity.formula(
          new int[] {0, FIRST_MEASURE, FIRST_MEASURE + 1},
          (x, g) -> {
            double a = x[FIRST_MEASURE];
            double b = x[FIRST_MEASURE + 1];
            if (g != null) {
              g[0] = 0.01;
              g[1] = b / 100;
              g[2] = a / 100;
            }
            return 0.01 * x[0] + a * b / 100;
          });

  static Map<String, Relation> all() {
    Pt a = pt(0);
    Pt b = pt(1);
    Pt c = pt(2);
    Pt d = pt(3);
    Pt e = pt(4);
    Pt still = Pt.at(12, -7);
    Quantity q = measure(0);
    Quantity r = measure(1);
    Map<String, Relation> all = new LinkedHashMap<>();
    all.put("distance", Relations.distance(a, b, 40));
    all.put("distance to a formula", Relations.distance(a, b, FORMULA));
    all.put("distance to a still point", Relations.distance(a, still, q));
    all.put("distance on a shared level", Relations.distance(a, new Pt(c.x(), a.z()), q));
    all.put("horizontal", Relations.horizontal(a, b, FORMULA));
    all.put("vertical", Relations.vertical(a, b, q));
    all.put("equal", Relations.equal(FORMULA, q));
    all.put("angle to horizontal", Relations.angleToHorizontal(a, b, q));
    all.put("angle to vertical", Relations.angleToVertical(a, b, FORMULA));
    all.put("angle between", Relations.angleBetween(a, b, c, d, q));
    all.put("angle at a shared point", Relations.angleBetween(a, b, a, c, FORMULA));
    all.put("parallel", Relations.parallel(a, b, c, d));
    all.put("perpendicular", Relations.perpendicular(a, b, b, d));
    all.put("point to line", Relations.pointToLine(a, b, c, q));
    all.put("point on still line", Relations.pointOnLine(a, still, c));
    Relation[] attached = Relations.attached(a, b, c, q, FORMULA);
    all.put("attached x", attached[0]);
    all.put("attached z", attached[1]);
    Relation[] mirror = Relations.mirror(a, b, c, d);
    all.put("mirror midpoint", mirror[0]);
    all.put("mirror square", mirror[1]);
    all.put("equal length", Relations.equalLength(a, b, c, d));
    all.put("equal length from one end", Relations.equalLength(a, b, b, c));
    all.put("negative", Relations.negative(Relations.distance(a, b, q)));
    all.put("within arc", Circles.withinArc(a, b, q, r, 100));
    all.put("tangent left", Circles.tangentLine(a, q, b, c, Circles.Side.LEFT));
    all.put("tangent right", Circles.tangentLine(a, FORMULA, b, c, Circles.Side.RIGHT));
    all.put("tangent outside", Circles.tangentOutside(a, q, b, r));
    all.put("tangent inside", Circles.tangentInside(a, q, b, FORMULA));
    all.put("inside outline", OutlineRelations.inside(a, List.of(b, c, d, still)));
    all.put("tube", Paths.tubeLength(List.of(a, b, c, d, e), q, FORMULA));
    all.put("open belt", Paths.openBelt(a, q, b, r, FORMULA));
    all.put("chain", Paths.chain(a, 15, b, 42, 1.5, q));
    all.put(
        "belt",
        Paths.belt(
            List.of(
                new Paths.Wheel(a, q, Circles.Side.LEFT),
                new Paths.Wheel(b, r, Circles.Side.RIGHT),
                new Paths.Wheel(c, Quantity.of(2), Circles.Side.LEFT)),
            FORMULA));
    all.put("height", Relations.equal(a.z(), q));
    all.put("turned angle", Relations.negative(Relations.angleToHorizontal(a, b, q)));
    all.put("turned inside", Relations.negative(Circles.tangentInside(a, q, b, r)));
    return all;
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void gradientsAgreeWithCentralDifferences(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] x = new double[FIRST_MEASURE + 2];
    for (int i = 0; i < FIRST_MEASURE; i++) {
      x[i] = random.nextDouble(-100, 100);
    }
    x[FIRST_MEASURE] = random.nextDouble(0.2, 2.5);
    x[FIRST_MEASURE + 1] = random.nextDouble(0.2, 2.5);
    for (Map.Entry<String, Relation> entry : all().entrySet()) {
      Relation relation = entry.getValue();
      int[] used = relation.variables();
      double[] gradient = new double[used.length];
      double value = relation.evaluate(x, gradient);
      assertThat(relation.evaluate(x, null)).as(entry.getKey()).isEqualTo(value);
      double size = 1;
      for (double g : gradient) {
        size = Math.max(size, Math.abs(g));
      }
      for (int k = 0; k < used.length; k++) {
        double wide = difference(relation, x, used[k], 2e-5);
        double narrow = difference(relation, x, used[k], 1e-5);
        // At a corner or a wrap the two differences disagree, and there is no derivative to compare
        // with.
        if (Math.abs(wide - narrow) > 1e-5 * size) {
          continue;
        }
        // Central differences of step 1e-5 are good to about 1e-16 * 1e3 / 1e-5 = 1e-8 and the
        // curvature at 1e-10.
        assertThat(gradient[k])
            .as("%s by variable %d", entry.getKey(), used[k])
            .isCloseTo(narrow, org.assertj.core.data.Offset.offset(2e-5 * size));
      }
    }
  }

  private static double difference(Relation relation, double[] x, int variable, double h) {
    double kept = x[variable];
    x[variable] = kept + h;
    double plus = relation.evaluate(x, null);
    x[variable] = kept - h;
    double minus = relation.evaluate(x, null);
    x[variable] = kept;
    return (plus - minus) / (2 * h);
  }

  @Test
  void zeroLengthGivesFiniteValuesAndGradients() {
    double[] x = new double[FIRST_MEASURE + 2];
    for (Map.Entry<String, Relation> entry : all().entrySet()) {
      double[] gradient = new double[entry.getValue().variables().length];
      assertThat(entry.getValue().evaluate(x, gradient)).as(entry.getKey()).isFinite();
      for (double g : gradient) {
        assertThat(g).as(entry.getKey()).isFinite();
      }
    }
  }
}
