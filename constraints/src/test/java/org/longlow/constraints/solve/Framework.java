package org.longlow.constraints.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.relation.Relations;

/**
 * Pin-and-bar frameworks whose verdict is known from how they are built.
 *
 * <p>Henneberg's steps (L. Henneberg, Die graphische Statik der starren Systeme, 1911; G. Laman, On
 * graphs and rigidity of plane skeletal structures, J. Eng. Math. 4, 1970): a new pin on two bars,
 * or a new pin that splits a bar and takes a third. From one bar these give exactly the frameworks
 * that are rigid with no bar to spare.
 */
final class Framework {
  final double size;
  final double[] px;
  final double[] pz;
  final List<int[]> bars = new ArrayList<>();

  /**
   * Bars of a rigid framework of {@code pins} pins in a square of side {@code size}, no two pins
   * near each other.
   */
  Framework(SplittableRandom random, int pins, double size) {
    this.size = size;
    px = new double[pins];
    pz = new double[pins];
    for (int i = 0; i < pins; i++) {
      boolean clear;
      do {
        px[i] = size * random.nextDouble();
        pz[i] = size * random.nextDouble();
        clear = true;
        for (int j = 0; j < i; j++) {
          clear &= Math.hypot(px[i] - px[j], pz[i] - pz[j]) > 0.15 * size;
        }
      } while (!clear);
    }
    bars.add(new int[] {0, 1});
    for (int k = 2; k < pins; k++) {
      if (k >= 3 && random.nextInt(3) == 0) {
        int[] split = bars.remove(random.nextInt(bars.size()));
        int third;
        do {
          third = random.nextInt(k);
        } while (third == split[0] || third == split[1]);
        bars.add(new int[] {split[0], k});
        bars.add(new int[] {split[1], k});
        bars.add(new int[] {third, k});
      } else {
        int a = random.nextInt(k);
        int b;
        do {
          b = random.nextInt(k);
        } while (b == a);
        bars.add(new int[] {a, k});
        bars.add(new int[] {b, k});
      }
    }
  }

  int pins() {
    return px.length;
  }

  double length(int[] bar) {
    return Math.hypot(px[bar[0]] - px[bar[1]], pz[bar[0]] - pz[bar[1]]);
  }

  boolean hasBar(int a, int b) {
    return bars.stream()
        .anyMatch(
            e ->
                e[0] == Math.min(a, b) && e[1] == Math.max(a, b)
                    || e[1] == Math.min(a, b) && e[0] == Math.max(a, b));
  }

  /** A pair of pins without a bar, or null when every pair has one. */
  int[] missing(SplittableRandom random) {
    List<int[]> open = new ArrayList<>();
    for (int a = 0; a < pins(); a++) {
      for (int b = a + 1; b < pins(); b++) {
        if (!hasBar(a, b)) {
          open.add(new int[] {a, b});
        }
      }
    }
    return open.isEmpty() ? null : open.get(random.nextInt(open.size()));
  }

  static String name(int[] bar) {
    return "bar " + bar[0] + "-" + bar[1];
  }

  /**
   * Singular values (by another library than the solver's) of the rigidity matrix of these bars at
   * the true positions, largest first.
   */
  double[] singularValues(List<int[]> some) {
    double[][] m = new double[some.size()][2 * pins()];
    for (int i = 0; i < some.size(); i++) {
      int a = some.get(i)[0];
      int b = some.get(i)[1];
      double l = length(some.get(i));
      m[i][2 * a] = (px[a] - px[b]) / l;
      m[i][2 * a + 1] = (pz[a] - pz[b]) / l;
      m[i][2 * b] = (px[b] - px[a]) / l;
      m[i][2 * b + 1] = (pz[b] - pz[a]) / l;
    }
    return new SingularValueDecomposition(new Array2DRowRealMatrix(m)).getSingularValues();
  }

  /** Smallest over largest singular value when all bars are independent. */
  double quality() {
    double[] s = singularValues(bars);
    return s[s.length - 1] / s[0];
  }

  int rankOf(List<int[]> some) {
    double[] s = singularValues(some);
    int rank = 0;
    for (double v : s) {
      rank += v > 1e-9 * s[0] ? 1 : 0;
    }
    return rank;
  }

  /**
   * Variables at the true positions moved by up to {@code spread}; pin i has variables 2i and 2i+1.
   */
  Problem.Builder pins(SplittableRandom random, double spread) {
    Problem.Builder builder = Problem.builder();
    for (int i = 0; i < pins(); i++) {
      builder.pin(
          "pin " + i,
          px[i] + spread * random.nextDouble(-1, 1),
          pz[i] + spread * random.nextDouble(-1, 1));
    }
    return builder;
  }

  Pt pin(int i) {
    return Pt.variables(2 * i, 2 * i + 1);
  }

  /**
   * Ties that take away the three motions of the whole: pin 0 keeps its place, the first bar keeps
   * its direction.
   */
  void hold(Problem.Builder builder) {
    builder.tie("place", Relations.fix(pin(0), px[0], pz[0]));
    int other = 1;
    for (int[] bar : bars) {
      if (bar[0] == 0 || bar[1] == 0) {
        other = bar[0] + bar[1];
        break;
      }
    }
    builder.tie(
        "direction",
        Relations.angleToHorizontal(
            pin(0), pin(other), Quantity.of(Math.atan2(pz[other] - pz[0], px[other] - px[0]))));
  }

  void bar(Problem.Builder builder, int[] bar, double stretch) {
    builder.tie(name(bar), Relations.distance(pin(bar[0]), pin(bar[1]), stretch * length(bar)));
  }
}
