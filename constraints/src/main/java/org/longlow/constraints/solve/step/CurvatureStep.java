package org.longlow.constraints.solve.step;

import java.util.Arrays;
import org.longlow.constraints.solve.linear.LimitStep;
import org.longlow.constraints.solve.linear.RowSet;

/**
 * A truncated Newton step within the linearised ties and active limits.
 *
 * <p>Minimises the quadratic model of the Lagrangian by projected, preconditioned conjugate
 * gradients (Gould, Hribar, Nocedal, On the solution of equality constrained quadratic programming
 * problems arising in optimization, SIAM J. Sci. Comput. 23, 2001; stopping at the edge of a region
 * and at negative curvature as Steihaug, SIAM J. Numer. Anal. 20, 1983). The preconditioner is the
 * least-change projection whose factor is at hand; second derivatives come from differences of the
 * analytic gradients along one direction at a time.
 */
final class CurvatureStep {
  private static final int MOST = 60;
  private static final double REACH = 12;

  /** The residual counts as gone when the square of its size has fallen to this share. */
  private static final double SMALL = 1e-16;

  private final GroupSystem system;
  private final double[] step;
  private final double[] r;
  private final double[] z;
  private final double[] d;
  private final double[] hd;
  private final double[] shifted;
  private final double[] plus;
  private final double[] minus;
  private final double[] tieMultiplier;
  private final double[] limitMultiplier;

  CurvatureStep(GroupSystem system) {
    this.system = system;
    int n = system.n;
    step = new double[n];
    r = new double[n];
    z = new double[n];
    d = new double[n];
    hd = new double[n];
    plus = new double[n];
    minus = new double[n];
    shifted = new double[n];
    tieMultiplier = new double[system.rows.count];
    limitMultiplier = new double[system.limits.count];
  }

  double[] step() {
    return step;
  }

  /**
   * Finds a step from the point evaluated last, after {@link GroupSystem#nearingStep} there.
   *
   * @param target scaled way to the anchor
   * @param plain the plain step, where the search starts
   * @param unit weight of the distance to the anchor beside the wishes
   * @param region longest step allowed, scaled
   * @return whether a usable step was found
   */
  boolean find(double[] x, double[] target, double[] plain, double unit, double region) {
    int n = system.n;
    RowSet rows = system.rows;
    double length = Math.sqrt(dot(plain, plain));
    double radius = Math.min(REACH * length, region);
    // Everything is divided by unit: the identity part of the Hessian is 1.
    for (int i = 0; i < rows.count; i++) {
      tieMultiplier[i] =
          i < system.ties
              ? system.lambda[i]
              : system.wishWeight[i - system.ties] * rows.value[i] / unit;
    }
    double[] mu = system.limitStep.multipliers();
    for (int i = 0; i < mu.length; i++) {
      limitMultiplier[i] = -mu[i];
    }
    for (int j = 0; j < n; j++) {
      r[j] = -target[j];
    }
    for (int i = 0; i < rows.count; i++) {
      rows.addRow(i, tieMultiplier[i], r);
    }
    for (int i = 0; i < mu.length; i++) {
      system.limits.addRow(i, limitMultiplier[i], r);
    }
    // Start from the plain step: it closes what ties and active limits still miss, and the rest
    // stays within them.
    double share = Math.min(1, 0.5 * radius / length);
    for (int j = 0; j < n; j++) {
      step[j] = share * plain[j];
    }
    multiply(x, step, hd, unit);
    add(r, 1, hd);
    reduce(unit);
    double rz = dot(r, z);
    double first = rz;
    if (!(rz > 0)) {
      return rz == 0;
    }
    for (int j = 0; j < n; j++) {
      d[j] = -z[j];
    }
    for (int k = 0; k < Math.min(MOST, n + 5); k++) {
      multiply(x, d, hd, unit);
      double curve = dot(d, hd);
      if (!(curve - curve == 0)) {
        return false;
      }
      double alpha = rz / curve;
      double edge = toEdge(radius);
      if (curve <= 1e-12 * dot(d, d) || alpha >= edge) {
        add(step, edge, d);
        break;
      }
      add(step, alpha, d);
      add(r, alpha, hd);
      reduce(unit);
      double next = dot(r, z);
      if (!(next > SMALL * first)) {
        break;
      }
      double beta = next / rz;
      rz = next;
      for (int j = 0; j < n; j++) {
        d[j] = -z[j] + beta * d[j];
      }
    }
    double square = dot(step, step);
    return square > 0 && square - square == 0;
  }

  /**
   * Projects the residual and takes out of it what the ties hold back, so that rounding there does
   * no harm.
   */
  private void reduce(double unit) {
    projectWithinLimits(r, z);
    System.arraycopy(z, 0, r, 0, r.length);
    addWishes(z, r, unit);
  }

  private double toEdge(double radius) {
    double dd = dot(d, d);
    double sd = dot(step, d);
    double ss = dot(step, step);
    double root = Math.sqrt(Math.max(0, sd * sd + dd * (radius * radius - ss)));
    return dd > 0 ? (root - sd) / dd : 0;
  }

  /**
   * Hessian of the Lagrangian times v: identity, the Gauss-Newton part of the wishes, and curvature
   * by differences.
   */
  private void multiply(double[] x, double[] v, double[] out, double unit) {
    int[] variables = system.group.variables();
    RowSet rows = system.rows;
    double size = 0;
    double place = 1;
    for (int j = 0; j < system.n; j++) {
      size = Math.max(size, Math.abs(v[j]));
      place = Math.max(place, Math.abs(x[variables[j]] / rows.scaleOf(j)));
    }
    Arrays.fill(plus, 0);
    Arrays.fill(minus, 0);
    double h = 6e-6 * place / size;
    for (int j = 0; j < system.n; j++) {
      shifted[j] = x[variables[j]];
      x[variables[j]] = shifted[j] + h * v[j] * rows.scaleOf(j);
    }
    rows.addGradients(x, tieMultiplier, plus);
    system.limits.addGradients(x, limitMultiplier, plus);
    for (int j = 0; j < system.n; j++) {
      x[variables[j]] = shifted[j] - h * v[j] * rows.scaleOf(j);
    }
    rows.addGradients(x, tieMultiplier, minus);
    system.limits.addGradients(x, limitMultiplier, minus);
    for (int j = 0; j < system.n; j++) {
      x[variables[j]] = shifted[j];
      out[j] = v[j] + (plus[j] - minus[j]) / (2 * h);
    }
    addWishes(v, out, unit);
  }

  private void addWishes(double[] v, double[] out, double unit) {
    RowSet rows = system.rows;
    for (int i = system.ties; i < rows.count; i++) {
      double w = system.wishWeight[i - system.ties] / unit;
      rows.addRow(i, w * rows.dot(i, v), out);
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static void add(double[] to, double factor, double[] from) {
    for (int i = 0; i < to.length; i++) {
      to[i] += factor * from[i];
    }
  }

  /** Projects, and does not push against the limits that were active in the last step. */
  private void projectWithinLimits(double[] v, double[] out) {
    system.project(v, out);
    LimitStep last = system.limitStep;
    int k = last.activeCount();
    if (k == 0) {
      return;
    }
    double[][] m = new double[k][k];
    double[] b = new double[k];
    for (int i = 0; i < k; i++) {
      int limit = last.active(i);
      b[i] = -system.limits.dot(limit, out);
      for (int j = 0; j <= i; j++) {
        m[i][j] = system.limits.dot(limit, last.response(last.active(j)));
      }
      m[i][i] += last.compliance(limit, 0);
    }
    LimitStep.solveSymmetric(m, b);
    for (int i = 0; i < k; i++) {
      double[] u = last.response(last.active(i));
      for (int j = 0; j < system.n; j++) {
        out[j] += b[i] * u[j];
      }
    }
  }
}
