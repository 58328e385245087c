package org.longlow.rider.body;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How people of one stature and mass still differ: the covariance of the survey's block of raw
 * columns with stature and mass taken out (Schur complement of the covariance matrix).
 */
final class Residuals {

  private static final Map<Sex, Residuals> BY_SEX = new EnumMap<>(Sex.class);

  static {
    for (Sex sex : Sex.values()) {
      BY_SEX.put(sex, new Residuals(Anthropometry.survey().correlation(sex)));
    }
  }

  private final List<String> names;
  private final Map<String, Integer> index = new HashMap<>();
  private final double[][] covariance;
  private final double[][] factor;

  private Residuals(Anthropometry.Correlation block) {
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
      index.put(names.get(i - 2), i - 2);
    }
    factor = cholesky(covariance);
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
   * Returns the likeliest residual of every column of the block, given the residuals of some: the
   * conditional mean of the normal distribution. Names outside the block are ignored.
   */
  Map<String, Double> likeliest(Map<String, Double> known) {
    int[] at =
        known.keySet().stream().filter(index::containsKey).mapToInt(index::get).sorted().toArray();
    if (at.length == 0) {
      return Map.of();
    }
    double[][] s = new double[at.length][at.length];
    double[] e = new double[at.length];
    for (int i = 0; i < at.length; i++) {
      e[i] = known.get(names.get(at[i]));
      for (int j = 0; j < at.length; j++) {
        s[i][j] = covariance[at[i]][at[j]];
      }
    }
    double[] weight = solve(cholesky(s), e);
    Map<String, Double> out = new HashMap<>();
    for (int k = 0; k < names.size(); k++) {
      double sum = 0;
      for (int j = 0; j < at.length; j++) {
        sum += covariance[k][at[j]] * weight[j];
      }
      out.put(names.get(k), sum);
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
