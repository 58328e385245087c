package org.longlow.constraints.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.problem.SolverWish;

/**
 * Constrained minima of W. Hock and K. Schittkowski, Test Examples for Nonlinear Programming Codes,
 * Lecture Notes in Economics and Mathematical Systems 187, Springer 1981.
 *
 * <p>Problems, starts and minima written down from the published collection as it is commonly
 * reprinted; each minimum is checked here once more by its own arithmetic where it has a closed
 * form. Objectives that are not sums of squares as published are completed to squares, and the
 * constant left over is subtracted again.
 */
class HockSchittkowskiTest {
  /**
   * The optimum is flat: an error e in position costs e squared in value, so this is loose by far.
   */
  private static final double VALUE = 1e-7;

  private static final double PLACE = 1e-4;

  /** A function of all variables with its gradient. */
  private interface F {
    double at(double[] x, double[] g);
  }

  private static final class Case {
    private final Problem.Builder builder = Problem.builder();
    private final int[] all;

    Case(double... start) {
      all = new int[start.length];
      for (int i = 0; i < start.length; i++) {
        all[i] = builder.variable("x" + (i + 1), start[i]);
      }
    }

    private Relation relation(F f) {
      int[] used = all;
      return new Relation() {
        @Override
        public int[] variables() {
          return used;
        }

        @Override
        public double evaluate(double[] x, double[] gradient) {
          if (gradient != null) {
            java.util.Arrays.fill(gradient, 0);
          }
          return f.at(x, gradient);
        }
      };
    }

    Case square(double weight, F f) {
      builder.wish("square " + builder.build().wishes().size(), weight, relation(f));
      return this;
    }

    /** Weight times (sum of coefficients times x, less a constant) squared. */
    Case square(double weight, double constant, double... coefficients) {
      return square(weight, linear(constant, coefficients));
    }

    Case zero(F f) {
      builder.tie("tie " + builder.build().ties().size(), relation(f));
      return this;
    }

    Case zero(double constant, double... coefficients) {
      return zero(linear(constant, coefficients));
    }

    Case positive(F f) {
      builder.limit("limit " + builder.build().limits().size(), relation(f));
      return this;
    }

    Case positive(double constant, double... coefficients) {
      return positive(linear(constant, coefficients));
    }

    static F linear(double constant, double... coefficients) {
      return (x, g) -> {
        double sum = -constant;
        for (int i = 0; i < coefficients.length; i++) {
          sum += coefficients[i] * x[i];
          if (g != null) {
            g[i] = coefficients[i];
          }
        }
        return sum;
      };
    }

    void expect(double minimum, double constant, double... place) {
      Problem problem = builder.build();
      SolveReport report = Solver.solve(problem, SolverSettings.DEFAULT.withMaxIterations(1000));
      assertThat(report.status().holds()).as(report.toString()).isTrue();
      assertThat(report.failedLimits()).isEmpty();
      double value = constant;
      for (SolverWish wish : problem.wishes()) {
        double r = wish.residual().evaluate(report.x(), null);
        value += wish.weight() * r * r;
      }
      assertThat(value).isCloseTo(minimum, offset(VALUE * (1 + Math.abs(minimum))));
      if (place.length > 0) {
        assertThat(report.x()).containsExactly(place, offset(PLACE));
      }
    }
  }

  private static double set(double[] g, double value, double... gradient) {
    if (g != null) {
      System.arraycopy(gradient, 0, g, 0, gradient.length);
    }
    return value;
  }

  @Test
  void hs6CurvedValley() {
    new Case(-1.2, 1)
        .square(1, 1, 1)
        .zero((x, g) -> set(g, 10 * (x[1] - x[0] * x[0]), -20 * x[0], 10))
        .expect(0, 0, 1, 1);
  }

  @Test
  void hs7LogarithmOnAClosedCurve() {
    // f = ln(1 + x1^2) - x2 is no square; f + 10 is positive near the curve, so its root is the
    // residual.
    new Case(2, 2)
        .square(
            1,
            (x, g) -> {
              double r = Math.sqrt(10 + Math.log(1 + x[0] * x[0]) - x[1]);
              return set(g, r, x[0] / (1 + x[0] * x[0]) / r, -0.5 / r);
            })
        .zero(
            (x, g) ->
                set(
                    g,
                    Math.pow(1 + x[0] * x[0], 2) + x[1] * x[1] - 4,
                    4 * x[0] * (1 + x[0] * x[0]),
                    2 * x[1]))
        .expect(-Math.sqrt(3), -10, 0, Math.sqrt(3));
  }

  @Test
  void hs14LineAndEllipse() {
    new Case(2, 2)
        .square(1, 2, 1, 0)
        .square(1, 1, 0, 1)
        .positive((x, g) -> set(g, 1 - x[0] * x[0] / 4 - x[1] * x[1], -x[0] / 2, -2 * x[1]))
        .zero(-1, 1, -2)
        .expect(9 - 2.875 * Math.sqrt(7), 0, (Math.sqrt(7) - 1) / 2, (Math.sqrt(7) + 1) / 4);
  }

  @Test
  void hs21BoundsAndAStraightLimit() {
    new Case(-1, -1)
        .square(0.01, 0, 1, 0)
        .square(1, 0, 0, 1)
        .positive(10, 10, -1)
        .positive(2, 1, 0)
        .positive(-50, -1, 0)
        .positive(-50, 0, 1)
        .positive(-50, 0, -1)
        .expect(-99.96, -100, 2, 0);
  }

  @Test
  void hs26FlatQuartic() {
    new Case(-2.6, 2, 2)
        .square(1, 0, 1, -1, 0)
        .square(
            1,
            (x, g) -> {
              double d = x[1] - x[2];
              return set(g, d * d, 0, 2 * d, -2 * d);
            })
        .zero(
            (x, g) ->
                set(
                    g,
                    (1 + x[1] * x[1]) * x[0] + Math.pow(x[2], 4) - 3,
                    1 + x[1] * x[1],
                    2 * x[1] * x[0],
                    4 * Math.pow(x[2], 3)))
        .expect(0, 0);
  }

  @Test
  void hs27TiltedParabola() {
    new Case(2, 2, 2)
        .square(0.01, 1, 1, 0, 0)
        .square(1, (x, g) -> set(g, x[1] - x[0] * x[0], -2 * x[0], 1, 0))
        .zero((x, g) -> set(g, x[0] + x[2] * x[2] + 1, 1, 0, 2 * x[2]))
        .expect(0.04, 0, -1, 1, 0);
  }

  @Test
  void hs28TwoSumsOnAPlane() {
    new Case(-4, 1, 1)
        .square(1, 0, 1, 1, 0)
        .square(1, 0, 0, 1, 1)
        .zero(1, 1, 2, 3)
        .expect(0, 0, 0.5, -0.5, 0.5);
  }

  @Test
  void hs35BealesQuadratic() {
    // 9 - 8x1 - 6x2 - 4x3 + 2x1^2 + 2x2^2 + x3^2 + 2x1x2 + 2x1x3
    //   = 2 (x1 + x2/2 + x3/2 - 2)^2 + 3/2 (x2 - x3/3 - 2/3)^2 + 1/3 (x3 - 1)^2.
    new Case(0.5, 0.5, 0.5)
        .square(2, 2, 1, 0.5, 0.5)
        .square(1.5, 2.0 / 3, 0, 1, -1.0 / 3)
        .square(1.0 / 3, 1, 0, 0, 1)
        .positive(0, 1, 0, 0)
        .positive(0, 0, 1, 0)
        .positive(0, 0, 0, 1)
        .positive(-3, -1, -1, -2)
        .expect(1.0 / 9, 0, 4.0 / 3, 7.0 / 9, 4.0 / 9);
  }

  @Test
  void hs43RosenSuzuki() {
    new Case(0, 0, 0, 0)
        .square(1, 2.5, 1, 0, 0, 0)
        .square(1, 2.5, 0, 1, 0, 0)
        .square(2, 21.0 / 4, 0, 0, 1, 0)
        .square(1, -3.5, 0, 0, 0, 1)
        .positive(
            (x, g) ->
                set(
                    g,
                    8
                        - x[0] * x[0]
                        - x[1] * x[1]
                        - x[2] * x[2]
                        - x[3] * x[3]
                        - x[0]
                        + x[1]
                        - x[2]
                        + x[3],
                    -2 * x[0] - 1,
                    -2 * x[1] + 1,
                    -2 * x[2] - 1,
                    -2 * x[3] + 1))
        .positive(
            (x, g) ->
                set(
                    g,
                    10
                        - x[0] * x[0]
                        - 2 * x[1] * x[1]
                        - x[2] * x[2]
                        - 2 * x[3] * x[3]
                        + x[0]
                        + x[3],
                    -2 * x[0] + 1,
                    -4 * x[1],
                    -2 * x[2],
                    -4 * x[3] + 1))
        .positive(
            (x, g) ->
                set(
                    g,
                    5 - 2 * x[0] * x[0] - x[1] * x[1] - x[2] * x[2] - 2 * x[0] + x[1] + x[3],
                    -4 * x[0] - 2,
                    -2 * x[1] + 1,
                    -2 * x[2],
                    1))
        .expect(-44, -(2 * 2.5 * 2.5 + 2 * Math.pow(21.0 / 4, 2) + 3.5 * 3.5), 0, 1, 2, -1);
  }

  @Test
  void hs48FiveVariablesTwoPlanes() {
    new Case(3, 5, -3, 2, -2)
        .square(1, 1, 1)
        .square(1, 0, 0, 1, -1)
        .square(1, 0, 0, 0, 0, 1, -1)
        .zero(5, 1, 1, 1, 1, 1)
        .zero(-3, 0, 0, 1, -2, -2)
        .expect(0, 0, 1, 1, 1, 1, 1);
  }

  @Test
  void hs49SixthPowers() {
    new Case(10, 7, 2, -3, 0.8)
        .square(1, 0, 1, -1)
        .square(1, 1, 0, 0, 1)
        .square(
            1,
            (x, g) -> {
              double d = x[3] - 1;
              return set(g, d * d, 0, 0, 0, 2 * d, 0);
            })
        .square(
            1,
            (x, g) -> {
              double d = x[4] - 1;
              return set(g, d * d * d, 0, 0, 0, 0, 3 * d * d);
            })
        .zero(7, 1, 1, 1, 4, 0)
        .zero(6, 0, 0, 1, 0, 5)
        .expect(0, 0);
  }

  @Test
  void hs50QuarticDifferences() {
    new Case(35, -31, 11, 5, -5)
        .square(1, 0, 1, -1)
        .square(1, 0, 0, 1, -1)
        .square(
            1,
            (x, g) -> {
              double d = x[2] - x[3];
              return set(g, d * d, 0, 0, 2 * d, -2 * d, 0);
            })
        .square(1, 0, 0, 0, 0, 1, -1)
        .zero(6, 1, 2, 3)
        .zero(6, 0, 1, 2, 3)
        .zero(6, 0, 0, 1, 2, 3)
        .expect(0, 0);
  }

  @Test
  void hs51ThreePlanes() {
    new Case(2.5, 0.5, 2, -1, 0.5)
        .square(1, 0, 1, -1)
        .square(1, 2, 0, 1, 1)
        .square(1, 1, 0, 0, 0, 1)
        .square(1, 1, 0, 0, 0, 0, 1)
        .zero(4, 1, 3)
        .zero(0, 0, 0, 1, 1, -2)
        .zero(0, 0, 1, 0, 0, -1)
        .expect(0, 0, 1, 1, 1, 1, 1);
  }

  @Test
  void hs52WithHiddenRest() {
    new Case(2, 2, 2, 2, 2)
        .square(1, 0, 4, -1)
        .square(1, 2, 0, 1, 1)
        .square(1, 1, 0, 0, 0, 1)
        .square(1, 1, 0, 0, 0, 0, 1)
        .zero(0, 1, 3)
        .zero(0, 0, 0, 1, 1, -2)
        .zero(0, 0, 1, 0, 0, -1)
        .expect(1859.0 / 349, 0, -33.0 / 349, 11.0 / 349, 180.0 / 349, -158.0 / 349, 11.0 / 349);
  }

  @Test
  void hs53WithBounds() {
    Case c =
        new Case(2, 2, 2, 2, 2)
            .square(1, 0, 1, -1)
            .square(1, 2, 0, 1, 1)
            .square(1, 1, 0, 0, 0, 1)
            .square(1, 1, 0, 0, 0, 0, 1)
            .zero(0, 1, 3)
            .zero(0, 0, 0, 1, 1, -2)
            .zero(0, 0, 1, 0, 0, -1);
    for (int i = 0; i < 5; i++) {
      double[] up = new double[5];
      double[] down = new double[5];
      up[i] = 1;
      down[i] = -1;
      c.positive(-10, up).positive(-10, down);
    }
    c.expect(176.0 / 43, 0, -33.0 / 43, 11.0 / 43, 27.0 / 43, -5.0 / 43, 11.0 / 43);
  }

  @Test
  void hs76FourVariablesThreeLimits() {
    // x1^2 + x2^2/2 + x3^2 + x4^2/2 - x1x3 + x3x4 - x1 - 3x2 + x3 - x4, by completing squares:
    // (x1 - x3/2 - 1/2)^2 + (x2 - 3)^2/2 + (x4 + x3 - 1)^2/2 + x3^2/4 + 3 x3/2 - 1/4 - 9/2 - 1/2
    new Case(0.5, 0.5, 0.5, 0.5)
        .square(1, 0.5, 1, 0, -0.5, 0)
        .square(0.5, 3, 0, 1)
        .square(0.5, 1, 0, 0, 1, 1)
        .square(0.25, -3, 0, 0, 1)
        .positive(-5, -1, -2, -1, -1)
        .positive(-4, -3, -1, -2, 1)
        .positive(1.5, 0, 1, 4)
        .positive(0, 1)
        .positive(0, 0, 1)
        .positive(0, 0, 0, 1)
        .positive(0, 0, 0, 0, 1)
        .expect(-103.0 / 22, -0.25 - 4.5 - 0.5 - 9.0 / 4, 3.0 / 11, 23.0 / 11, 0, 6.0 / 11);
  }
}
