package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;

/**
 * The space spanned by some rows, as an orthonormal basis (modified Gram-Schmidt, each row twice).
 */
final class RowSpace {

  /** A row whose new part is a smaller share of its length adds nothing. */
  private static final double NEW_SHARE = 1e-9;

  private final int size;
  private final List<double[]> basis = new ArrayList<>();

  RowSpace(int size) {
    this.size = size;
  }

  void add(double[] row) {
    double length = norm(row);
    double[] rest = rest(row);
    double left = norm(rest);
    if (length > 0 && left > NEW_SHARE * length) {
      for (int i = 0; i < size; i++) {
        rest[i] /= left;
      }
      basis.add(rest);
    }
  }

  /** Returns what is left of a vector square to the space. */
  double[] rest(double[] vector) {
    double[] rest = vector.clone();
    // the second pass takes away what rounding left in the first
    for (int pass = 0; pass < 2; pass++) {
      for (double[] b : basis) {
        double along = dot(b, rest);
        for (int i = 0; i < size; i++) {
          rest[i] -= along * b[i];
        }
      }
    }
    return rest;
  }

  static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  static double norm(double[] a) {
    return Math.sqrt(dot(a, a));
  }
}
