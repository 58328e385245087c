package org.longlow.constraints.place;

import java.util.List;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.gap.Solid;

/**
 * A body of the layout that follows variables of the solver. Safe for several threads; what was
 * worked out last is kept, since the solver asks for a value and then its slope, and for several
 * limits of one body.
 */
abstract class MovingBody {

  /** How far variables and joints are moved to either side for slopes, mm. */
  static final double STEP_MM = 1e-3;

  private final int[] variables;
  private volatile At last;

  MovingBody(int[] variables) {
    this.variables = variables;
  }

  /** Returns the variables it follows, ascending. */
  final int[] variables() {
    return variables;
  }

  /** Returns the body where the values {@code x} of all variables have it. */
  final At at(double[] x) {
    At known = last;
    if (known == null || !same(known.values, x, variables)) {
      known = make(x, take(x, variables));
      last = known;
    }
    return known;
  }

  abstract At make(double[] x, double[] values);

  static double[] take(double[] x, int[] variables) {
    double[] values = new double[variables.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = x[variables[i]];
    }
    return values;
  }

  static boolean same(double[] values, double[] x, int[] variables) {
    for (int i = 0; i < values.length; i++) {
      if (values[i] != x[variables[i]]) {
        return false;
      }
    }
    return true;
  }

  /** A body in one place, and near by. */
  static final class At {
    private final double[] values;
    private final Solid body;
    private final Supplier<List<Beside>> work;
    private List<Beside> besides;

    At(double[] values, Solid body, Supplier<List<Beside>> work) {
      this.values = values;
      this.body = body;
      this.work = work;
    }

    /** Returns the body, or null where there is none. */
    Solid body() {
      return body;
    }

    /** Returns the body a little to both sides of each of its ways to move. */
    synchronized List<Beside> besides() {
      if (besides == null) {
        besides = work.get();
      }
      return besides;
    }
  }

  /**
   * A body a little to both sides along one way to move: its outlines by their place in {@link
   * Solid#outlines}, null where there is none.
   *
   * @param less to one side
   * @param more to the other
   * @param apart how far from each other along that way
   * @param slopes what one unit of each variable moves along it
   */
  record Beside(
      IntFunction<Geometry> less, IntFunction<Geometry> more, double apart, double[] slopes) {}
}
