package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.rider.words.Words;

/**
 * A ruled sheet laid flat: flat from ruling to ruling, each turned into the plane of the one
 * before.
 *
 * @param low the lower ends of the rulings in space, in the middle of the sheet
 * @param high their upper ends
 * @param below the lower ends of the rulings on the flat sheet
 * @param above their upper ends
 * @param folds rulings at which it bends sharply, with the angle; positive towards the inside
 * @param faults what cannot be folded as it is drawn; it is then laid flat by its outer face,
 *     without what folds and mitres take
 */
record Flattened(
    List<double[]> low,
    List<double[]> high,
    List<double[]> below,
    List<double[]> above,
    List<Fold> folds,
    List<Words> faults) {

  /** What is off a plane by more cannot be laid flat, mm. */
  static final double FLAT_MM = 0.02;

  private static final double LEAST_MM = 1e-6;

  record Fold(int ruling, double rad) {}

  /**
   * Lays a sheet flat; empty where it bends two ways.
   *
   * @param low lower ends of the rulings on its outer face, in space
   * @param high their upper ends
   * @param outward roughly the way it faces, of one that goes round where it begins
   * @param round whether its last ruling is its first
   * @param thicknessMm of the sheet
   * @param folded whether corners are folded; else they are joined, mitred
   */
  static Optional<Flattened> of(
      List<double[]> low,
      List<double[]> high,
      double[] outward,
      boolean round,
      double thicknessMm,
      boolean folded) {
    return of(low, high, outward, round, thicknessMm, folded, List.of());
  }

  private static Optional<Flattened> of(
      List<double[]> low,
      List<double[]> high,
      double[] outward,
      boolean round,
      double thicknessMm,
      boolean folded,
      List<Words> told) {
    int n = low.size();
    double way = 0;
    for (int i = 1; i + 1 < n; i++) {
      if (length(minus(high.get(i), low.get(i))) < LEAST_MM) {
        return Optional.empty();
      }
    }
    List<double[]> normals = new ArrayList<>();
    for (int i = 0; i + 1 < n; i++) {
      double[] normal =
          cross(minus(high.get(i + 1), low.get(i)), minus(high.get(i), low.get(i + 1)));
      double size = length(normal);
      if (size < LEAST_MM) {
        return Optional.empty();
      }
      // rulings in turn face the same way all along
      way = way == 0 ? Math.copySign(1, dot(normal, outward)) : way;
      normal = times(normal, way / size);
      for (double[] corner : List.of(high.get(i), low.get(i + 1), high.get(i + 1))) {
        if (Math.abs(dot(normal, minus(corner, low.get(i)))) > 2 * FLAT_MM) {
          return Optional.empty();
        }
      }
      normals.add(normal);
    }
    List<double[]> a = new ArrayList<>();
    List<double[]> b = new ArrayList<>();
    List<Fold> folds = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double[] p = normals.get(i > 0 ? i - 1 : round ? n - 2 : 0);
      double[] q = normals.get(i < n - 1 ? i : round ? 0 : n - 2);
      double[] in =
          thicknessMm == 0 ? new double[3] : times(plus(p, q), -thicknessMm / 2 / (1 + dot(p, q)));
      a.add(plus(low.get(i), in));
      b.add(plus(high.get(i), in));
      double turn = Math.acos(Math.max(-1, Math.min(1, dot(p, q))));
      if (folded && i > 0 && i < n - 1 && turn >= FlatLine.SHARP_RAD) {
        double[] on = minus(low.get(Math.min(n - 1, i + 1)), low.get(i));
        folds.add(new Fold(i, dot(on, p) < 0 ? turn : -turn));
      }
    }
    List<Words> faults =
        told.isEmpty() ? faults(low, high, a, b, normals, folds, thicknessMm) : told;
    if (thicknessMm > 0 && !faults.isEmpty()) {
      return of(low, high, outward, round, 0, folded, faults);
    }
    return tip(low, a, normals, thicknessMm) && tip(high, b, normals, thicknessMm)
        ? Optional.of(laid(a, b, folds, thicknessMm, faults))
        : Optional.empty();
  }

  /** Holds what corners take against the sheet between them, where that is longest. */
  private static List<Words> faults(
      List<double[]> low,
      List<double[]> high,
      List<double[]> a,
      List<double[]> b,
      List<double[]> normals,
      List<Fold> folds,
      double thicknessMm) {
    Legs legs = new Legs(thicknessMm);
    int last = normals.size();
    for (int i = 0; i < last; i++) {
      double[] u = minus(high.get(i), low.get(i));
      double[] v = minus(high.get(i + 1), low.get(i + 1));
      double[] up = length(u) > length(v) ? u : v;
      double[] on = cross(up, normals.get(i));
      double[] foot = minus(low.get(i + 1), low.get(i));
      double[] head = minus(high.get(i + 1), high.get(i));
      on = times(on, Math.copySign(1 / length(on), dot(on, plus(foot, head))));
      double drawn = Math.max(dot(foot, on), dot(head, on));
      double middle =
          Math.max(dot(minus(a.get(i + 1), a.get(i)), on), dot(minus(b.get(i + 1), b.get(i)), on));
      legs.on(drawn, drawn - middle);
      int next = i + 1;
      Optional<Fold> fold = folds.stream().filter(f -> f.ruling() == next).findFirst();
      if (fold.isPresent()) {
        legs.fold(fold.get().rad());
      } else if (next == last
          || dot(normals.get(i), normals.get(next)) < Math.cos(FlatLine.SHARP_RAD)) {
        legs.corner();
      }
    }
    return legs.faults();
  }

  /**
   * Where all rulings meet in one point of the outer face, takes the one in which they meet in the
   * middle of the sheet.
   *
   * @return false if there is none, or where only some of them meet
   */
  private static boolean tip(
      List<double[]> outer, List<double[]> middle, List<double[]> normals, double thicknessMm) {
    int n = outer.size();
    double[] o = outer.get(0);
    if (outer.stream().anyMatch(p -> length(minus(p, o)) > LEAST_MM)) {
      for (int i = 0; i + 1 < n; i++) {
        if (thicknessMm > 0 && length(minus(outer.get(i + 1), outer.get(i))) < LEAST_MM) {
          return false;
        }
      }
      return true;
    }
    double[] u = normals.get(0);
    double[] v = normals.get(normals.size() / 3);
    double[] w = normals.get(2 * normals.size() / 3);
    double volume = dot(u, cross(v, w));
    if (thicknessMm > 0 && Math.abs(volume) < LEAST_MM) {
      return false;
    }
    // three planes half the sheet's thickness inside of those of the outer face
    double[] to = plus(plus(cross(v, w), cross(w, u)), cross(u, v));
    double[] at = thicknessMm > 0 ? plus(o, times(to, -thicknessMm / 2 / volume)) : o;
    for (double[] normal : normals) {
      if (Math.abs(dot(normal, minus(at, o)) + thicknessMm / 2) > FLAT_MM) {
        return false;
      }
    }
    middle.replaceAll(p -> at);
    return true;
  }

  private static Flattened laid(
      List<double[]> a,
      List<double[]> b,
      List<Fold> folds,
      double thicknessMm,
      List<Words> faults) {
    int n = a.size();
    int start = 0;
    for (int i = 0; i < n; i++) {
      if (length(minus(b.get(i), a.get(i))) > length(minus(b.get(start), a.get(start)))) {
        start = i;
      }
    }
    double[][] below = new double[n][];
    double[][] above = new double[n][];
    below[start] = new double[] {0, 0};
    above[start] = new double[] {0, length(minus(b.get(start), a.get(start)))};
    for (int way = -1; way <= 1; way += 2) {
      for (int i = start; i + way >= 0 && i + way < n; i += way) {
        int here = i;
        int there = i + way;
        // half of what a fold takes to each side of it
        double less =
            folds.stream()
                .filter(f -> f.ruling() == here || f.ruling() == there)
                .mapToDouble(f -> FlatLine.shorter(thicknessMm, f.rad()) / 2)
                .sum();
        next(a, b, below, above, i, way, less);
      }
    }
    return new Flattened(a, b, List.of(below), List.of(above), folds, faults);
  }

  /** Lays the next ruling beside one that lies, nearer by what folds take. */
  private static void next(
      List<double[]> a,
      List<double[]> b,
      double[][] below,
      double[][] above,
      int i,
      int way,
      double lessMm) {
    double[] u = minus(b.get(i), a.get(i));
    double size = length(u);
    u = times(u, 1 / size);
    double fx = (above[i][0] - below[i][0]) / size;
    double fy = (above[i][1] - below[i][1]) / size;
    for (int end = 0; end < 2; end++) {
      double[] d = minus(end == 0 ? a.get(i + way) : b.get(i + way), a.get(i));
      double up = dot(d, u);
      double on = Math.max(0, Math.sqrt(Math.max(0, dot(d, d) - up * up)) - lessMm);
      // to the right of the ruling ahead, to its left behind
      double[] at = {below[i][0] + up * fx + way * on * fy, below[i][1] + up * fy - way * on * fx};
      (end == 0 ? below : above)[i + way] = at;
    }
  }

  private static double[] plus(double[] p, double[] q) {
    return new double[] {p[0] + q[0], p[1] + q[1], p[2] + q[2]};
  }

  private static double[] minus(double[] p, double[] q) {
    return new double[] {p[0] - q[0], p[1] - q[1], p[2] - q[2]};
  }

  private static double[] times(double[] p, double by) {
    return new double[] {by * p[0], by * p[1], by * p[2]};
  }

  private static double[] cross(double[] u, double[] v) {
    return new double[] {
      u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]
    };
  }

  private static double dot(double[] u, double[] v) {
    return u[0] * v[0] + u[1] * v[1] + u[2] * v[2];
  }

  private static double length(double[] v) {
    return Math.sqrt(dot(v, v));
  }
}
