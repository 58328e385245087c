package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.relation.Relations;

/**
 * Layouts like a chassis, of any size: a triangulated frame bay after bay, two-link struts hung on
 * it that meet at a given angle, and a few free measures that several bars share.
 *
 * <p>As many ties as unknowns, so that the reference solves the same square system.
 */
final class ChassisLayout {
  private final int bays;
  private final Problem.Builder builder = Problem.builder();
  private final List<Double> placed = new ArrayList<>();

  private ChassisLayout(int bays) {
    this.bays = bays;
  }

  /**
   * A layout of about {@code unknowns} unknowns whose first bar is {@code lengthMm} long.
   *
   * @param lengthMm of the bar that is edited; 300 fits the start
   */
  static Problem of(int unknowns, double lengthMm) {
    // A bay has a lower pin, an upper pin and, every third, a strut pin; every fifth shares a
    // measure: 4.87 on average.
    return new ChassisLayout(Math.max(2, (int) Math.round(unknowns / 4.87))).build(lengthMm);
  }

  private Problem build(double lengthMm) {
    SplittableRandom random = new SplittableRandom(42);
    Pt lower = pin("lower 0", 0, 0);
    Pt upper = pin("upper 0", 40, 200);
    tie("place", Relations.fix(lower, 0, 0));
    tie("lean", Relations.angleToVertical(lower, upper, Quantity.of(Math.atan2(-40, 200))));
    tie("head", Relations.distance(lower, upper, Math.hypot(40, 200)));
    Quantity shared = null;
    for (int k = 1; k <= bays; k++) {
      double x = 300.0 * k;
      Pt lowerNext = pin("lower " + k, x, 15 * random.nextDouble(-1, 1));
      Pt upperNext = pin("upper " + k, x + 40, 200 + 15 * random.nextDouble(-1, 1));
      if (k == 1) {
        tie("rail 1", Relations.distance(lower, lowerNext, Quantity.of(lengthMm)));
      } else if (k % 5 == 0) {
        shared = Quantity.variable(measure("rail " + k, length(lower, lowerNext)));
        tie("measure " + k, Relations.fix(shared, length(lower, lowerNext)));
        tie("rail " + k, Relations.distance(lower, lowerNext, shared));
      } else {
        tie("rail " + k, Relations.distance(lower, lowerNext, length(lower, lowerNext)));
      }
      tie("brace " + k, Relations.distance(upper, lowerNext, length(upper, lowerNext)));
      tie("post " + k, Relations.distance(lowerNext, upperNext, length(lowerNext, upperNext)));
      if (shared != null && k % 5 == 1) {
        double ratio = length(upper, upperNext) / value(shared);
        int v = shared.variables()[0];
        tie(
            "top " + k,
            Relations.distance(
                upper,
                upperNext,
                Quantity.formula(
                    new int[] {v},
                    (y, g) -> {
                      if (g != null) {
                        g[0] = ratio;
                      }
                      return ratio * y[v];
                    })));
      } else {
        tie("top " + k, Relations.distance(upper, upperNext, length(upper, upperNext)));
      }
      if (k % 3 != 0) {
        Pt strut = pin("strut " + k, x - 150, -120);
        tie("leg " + k, Relations.distance(lower, strut, length(lower, strut)));
        if (k % 2 == 0) {
          tie(
              "angle " + k,
              Relations.angleBetween(
                  lower, lowerNext, lower, strut, Quantity.of(turn(lower, lowerNext, strut))));
        } else {
          tie("foot " + k, Relations.distance(lowerNext, strut, length(lowerNext, strut)));
        }
      }
      lower = lowerNext;
      upper = upperNext;
    }
    return builder.build();
  }

  private Pt pin(String name, double x, double z) {
    placed.add(x);
    placed.add(z);
    return builder.pin(name, x, z);
  }

  private int measure(String name, double value) {
    placed.add(value);
    return builder.variable(name, value);
  }

  private double value(Quantity q) {
    return placed.get(q.variables()[0]);
  }

  private double length(Pt a, Pt b) {
    return Math.hypot(value(b.x()) - value(a.x()), value(b.z()) - value(a.z()));
  }

  private double turn(Pt a, Pt b, Pt c) {
    double ex = value(b.x()) - value(a.x());
    double ez = value(b.z()) - value(a.z());
    double fx = value(c.x()) - value(a.x());
    double fz = value(c.z()) - value(a.z());
    return Math.atan2(ex * fz - ez * fx, ex * fx + ez * fz);
  }

  private void tie(String name, Relation... some) {
    builder.tie(name, some);
  }

  /** All relations of a problem in order, for the reference. */
  static List<Relation> relations(Problem problem) {
    return problem.ties().stream().flatMap(t -> t.relations().stream()).toList();
  }
}
