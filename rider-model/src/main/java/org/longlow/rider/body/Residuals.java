package org.longlow.rider.body;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How people of one stature and mass still differ: the covariance of the survey's block of raw
 * columns with stature and mass taken out (Schur complement of the covariance matrix).
 */
final class Residuals {

  private static final String GRIP = "d_wristtogrip";

  /** Columns outside the block that the derived ones read; they follow their neighbours. */
  private static final List<String> UNBLOCKED = List.of("forearmhandlength", "shoulderelbowlength");

  /** Share of its variance below which a measurement follows from the others. */
  private static final double LEAST_NEWS = 1e-9;

  private static final Map<Sex, Residuals> BY_SEX = new EnumMap<>(Sex.class);

  static {
    for (Sex sex : Sex.values()) {
      BY_SEX.put(sex, new Residuals(Anthropometry.survey().correlation(sex), gripSd(sex)));
    }
  }

  private final List<String> names;
  private final double[][] covariance;
  private final double[][] factor;
  private final double[][] spread;
  private final Map<String, double[]> sums;

  private Residuals(Anthropometry.Correlation block, double gripSd) {
    int n = block.order().size();
    names = block.order().subList(2, n);
    double[][] full = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        full[i][j] = block.matrix()[i][j] * block.sd()[i] * block.sd()[j];
      }
    }
    double det = full[0][0] * full[1][1] - full[0][1] * full[1][0];
    covariance = new double[n - 2][n - 2];
    for (int i = 2; i < n; i++) {
      double a = (full[i][0] * full[1][1] - full[i][1] * full[1][0]) / det;
      double b = (full[i][1] * full[0][0] - full[i][0] * full[0][1]) / det;
      for (int j = 2; j < n; j++) {
        covariance[i - 2][j - 2] = full[i][j] - a * full[0][j] - b * full[1][j];
      }
    }
    factor = cholesky(covariance);
    spread = spread(gripSd);
    sums = sums();
  }

  private static double gripSd(Sex sex) {
    return Anthropometry.survey().measures(sex).get(GRIP).onStatureAndMass().residualSd();
  }

  static Residuals of(Sex sex) {
    return BY_SEX.get(sex);
  }

  List<String> names() {
    return names;
  }

  /** Returns L·z: residuals with the block's covariance from independent unit normals. */
  double[] shape(double[] z) {
    double[] out = new double[z.length];
    for (int i = 0; i < z.length; i++) {
      for (int j = 0; j <= i; j++) {
        out[i] += factor[i][j] * z[j];
      }
    }
    return out;
  }

  double sd(int i) {
    return Math.sqrt(covariance[i][i]);
  }

  /**
   * Returns the likeliest residual of every column of the block and of wrist-to-grip, given the
   * residuals of some measurements: the conditional mean of the normal distribution. A measurement
   * that is a sum of columns counts as that sum; one that the block says nothing about, or that
   * follows from the others given, is passed over.
   */
  Map<String, Double> likeliest(Map<String, Double> known) {
    Given given = given(known);
    if (given.residuals().length == 0) {
      return Map.of();
    }
    double[] weight = solve(given.factor(), given.residuals());
    Map<String, Double> out = new HashMap<>();
    for (int k = 0; k < spread.length; k++) {
      double sum = 0;
      for (int i = 0; i < weight.length; i++) {
        for (int j = 0; j < spread.length; j++) {
          sum += spread[k][j] * given.rows()[i][j] * weight[i];
        }
      }
      out.put(k < names.size() ? names.get(k) : GRIP, sum);
    }
    return out;
  }

  /**
   * Returns how far these residuals lie from what is usual, all taken together: Mahalanobis'
   * squared distance, chi-squared with as many degrees of freedom as independent measurements.
   */
  Oddity oddity(Map<String, Double> known) {
    Given given = given(known);
    double[] weight = solve(given.factor(), given.residuals());
    double square = 0;
    for (int i = 0; i < weight.length; i++) {
      square += weight[i] * given.residuals()[i];
    }
    return new Oddity(square, weight.length);
  }

  /** A squared distance and its degrees of freedom. */
  record Oddity(double square, int freedoms) {}

  /** Known sums of columns, independent of one another, and the Cholesky factor of their spread. */
  private record Given(double[][] rows, double[] residuals, double[][] factor) {}

  private Given given(Map<String, Double> known) {
    List<double[]> rows = new ArrayList<>();
    List<Double> residuals = new ArrayList<>();
    List<double[]> factors = new ArrayList<>();
    for (Map.Entry<String, double[]> sum : sums.entrySet()) {
      if (!known.containsKey(sum.getKey())) {
        continue;
      }
      double[] times = new double[spread.length];
      for (int k = 0; k < spread.length; k++) {
        times[k] = dot(spread[k], sum.getValue());
      }
      int n = rows.size();
      double[] line = new double[n + 1];
      double own = dot(times, sum.getValue());
      double left = own;
      for (int i = 0; i < n; i++) {
        double reach = dot(times, rows.get(i));
        for (int j = 0; j < i; j++) {
          reach -= factors.get(i)[j] * line[j];
        }
        line[i] = reach / factors.get(i)[i];
        left -= line[i] * line[i];
      }
      if (left > LEAST_NEWS * own) {
        line[n] = Math.sqrt(left);
        rows.add(sum.getValue());
        factors.add(line);
        residuals.add(known.get(sum.getKey()));
      }
    }
    return new Given(
        rows.toArray(new double[0][]),
        residuals.stream().mapToDouble(r -> r).toArray(),
        factors.toArray(new double[0][]));
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** The block's covariance with wrist-to-grip beside it, which no column tells anything about. */
  private double[][] spread(double gripSd) {
    int n = names.size();
    double[][] out = new double[n + 1][n + 1];
    for (int i = 0; i < n; i++) {
      System.arraycopy(covariance[i], 0, out[i], 0, n);
    }
    out[n][n] = gripSd * gripSd;
    return out;
  }

  /** Every measurement as a sum of the block's columns and wrist-to-grip, columns first. */
  private Map<String, double[]> sums() {
    int n = names.size() + 1;
    Map<String, double[]> out = new LinkedHashMap<>();
    for (int k = 0; k < n; k++) {
      double[] row = new double[n];
      row[k] = 1;
      out.put(k < n - 1 ? names.get(k) : GRIP, row);
    }
    for (String name : UNBLOCKED) {
      out.put(name, new double[n]);
    }
    for (int k = 0; k < n; k++) {
      Map<String, Double> one = new HashMap<>();
      one.put("stature", 0.0);
      for (int i = 0; i < n; i++) {
        one.put(i < n - 1 ? names.get(i) : GRIP, i == k ? 1.0 : 0.0);
      }
      one.put(
          "forearmhandlength",
          one.get("forearmcenterofgriplength") + one.get("handlength") - one.get(GRIP));
      one.put("shoulderelbowlength", one.get("acromionradialelength"));
      for (String name : UNBLOCKED) {
        out.get(name)[k] = one.get(name);
      }
      for (Map.Entry<String, Derived.Rule> rule : Derived.rules().entrySet()) {
        if (!one.containsKey(rule.getKey()) && one.keySet().containsAll(rule.getValue().reads())) {
          double value = rule.getValue().formula().applyAsDouble(one);
          one.put(rule.getKey(), value);
          out.computeIfAbsent(rule.getKey(), x -> new double[n])[k] = value;
        }
      }
    }
    return out;
  }

  private static double[] solve(double[][] l, double[] b) {
    int n = b.length;
    double[] x = Arrays.copyOf(b, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        x[i] -= l[i][j] * x[j];
      }
      x[i] /= l[i][i];
    }
    for (int i = n - 1; i >= 0; i--) {
      for (int j = i + 1; j < n; j++) {
        x[i] -= l[j][i] * x[j];
      }
      x[i] /= l[i][i];
    }
    return x;
  }

  private static double[][] cholesky(double[][] a) {
    int n = a.length;
    double[][] l = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = a[i][j];
        for (int k = 0; k < j; k++) {
          sum -= l[i][k] * l[j][k];
        }
        if (i == j && !(sum > 0)) {
          throw new IllegalStateException("survey covariance is not positive definite at row " + i);
        }
        l[i][j] = i == j ? Math.sqrt(sum) : sum / l[j][j];
      }
    }
    return l;
  }
}
