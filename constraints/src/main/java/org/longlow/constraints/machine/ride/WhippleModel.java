package org.longlow.constraints.machine.ride;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.ejml.data.Complex_F64;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.longlow.constraints.machine.Values;

/**
 * The linear equations of a single-track machine upright at a steady speed, knife-edge wheels:
 *
 * <pre>M q'' + v C1 q' + (g K0 + v² K2) q = f,  q = (lean, steer)</pre>
 *
 * <p>J. P. Meijaard, J. M. Papadopoulos, A. Ruina, A. L. Schwab, "Linearized dynamics equations for
 * the balance and steer of a bicycle", Proc. R. Soc. A 463 (2007) 1955-1982, appendix A.
 *
 * @param m mass matrix, two rows of two, kg·m²
 * @param c1 damping per speed, kg·m
 * @param k0 stiffness per gravity, kg·m
 * @param k2 stiffness per speed squared, kg
 * @param gravity N/kg, &gt; 0
 */
public record WhippleModel(
    List<List<Double>> m,
    List<List<Double>> c1,
    List<List<Double>> k0,
    List<List<Double>> k2,
    double gravity) {

  /** The caution that belongs beside every figure of this class. */
  public static final String CAUTION =
      "Low-speed balance only: knife-edge wheels, no tyre slip, no suspension, a rigid rider. It does"
          + " not predict high-speed weave or wobble.";

  /** A root of the characteristic equation, 1/s; a positive real part grows. */
  public record Eigenvalue(double re, double im) {}

  public WhippleModel {
    m = matrix(m);
    c1 = matrix(c1);
    k0 = matrix(k0);
    k2 = matrix(k2);
    Values.positive("gravity N/kg", gravity);
    if (!(determinant(m) > 0)) {
      throw Values.refused(
          "determinant of M", determinant(m), "above 0; check the masses and inertias");
    }
  }

  private static List<List<Double>> matrix(List<List<Double>> rows) {
    for (List<Double> row : rows) {
      row.forEach(v -> Values.finite("matrix entry", v));
    }
    return List.of(List.copyOf(rows.get(0)), List.copyOf(rows.get(1)));
  }

  private static double determinant(List<List<Double>> a) {
    return a.get(0).get(0) * a.get(1).get(1) - a.get(0).get(1) * a.get(1).get(0);
  }

  /** Mixed term of det(A + B): the part linear in both. */
  private static double mixed(List<List<Double>> a, List<List<Double>> b) {
    return a.get(0).get(0) * b.get(1).get(1)
        + b.get(0).get(0) * a.get(1).get(1)
        - a.get(0).get(1) * b.get(1).get(0)
        - b.get(0).get(1) * a.get(1).get(0);
  }

  /**
   * Returns the four eigenvalues at a speed, largest real part first; of a pair the positive
   * imaginary part first.
   *
   * @param speedMs m/s, &gt;= 0
   */
  public List<Eigenvalue> eigenvalues(double speedMs) {
    Values.notNegative("speed m/s", speedMs);
    double det = determinant(m);
    double[][] inverse = {
      {m.get(1).get(1) / det, -m.get(0).get(1) / det},
      {-m.get(1).get(0) / det, m.get(0).get(0) / det}
    };
    DMatrixRMaj a = new DMatrixRMaj(4, 4);
    a.set(0, 2, 1);
    a.set(1, 3, 1);
    for (int i = 0; i < 2; i++) {
      for (int j = 0; j < 2; j++) {
        double stiff = 0;
        double damp = 0;
        for (int k = 0; k < 2; k++) {
          stiff +=
              inverse[i][k] * (gravity * k0.get(k).get(j) + speedMs * speedMs * k2.get(k).get(j));
          damp += inverse[i][k] * speedMs * c1.get(k).get(j);
        }
        a.set(2 + i, j, -stiff);
        a.set(2 + i, 2 + j, -damp);
      }
    }
    EigenDecomposition_F64<DMatrixRMaj> eig = DecompositionFactory_DDRM.eig(4, false);
    if (!eig.decompose(a)) {
      throw new ArithmeticException("eigenvalues did not converge at " + speedMs + " m/s");
    }
    List<Eigenvalue> values = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Complex_F64 value = eig.getEigenvalue(i);
      values.add(new Eigenvalue(value.real, value.imaginary));
    }
    values.sort(
        Comparator.comparingDouble(Eigenvalue::re).thenComparingDouble(Eigenvalue::im).reversed());
    return List.copyOf(values);
  }

  /**
   * Returns the speed, m/s, at which the weave settles: the lowest one where a growing oscillation
   * starts to die out. Empty if there is none.
   *
   * <p>The Hurwitz determinant a3 a2 a1 − a4 a1² − a0 a3² over v² is a quadratic in v²; of its
   * roots those with a1/a3 &gt; 0 are pairs on the imaginary axis.
   */
  public OptionalDouble weaveSpeedMs() {
    double a4 = determinant(m);
    double a3 = mixed(m, c1);
    double a20 = gravity * mixed(m, k0);
    double a22 = mixed(m, k2) + determinant(c1);
    double a10 = gravity * mixed(c1, k0);
    double a12 = mixed(c1, k2);
    double a00 = gravity * gravity * determinant(k0);
    double a02 = gravity * mixed(k0, k2);
    double a04 = determinant(k2);
    double p0 = a3 * a20 * a10 - a4 * a10 * a10 - a3 * a3 * a00;
    double p1 = a3 * (a20 * a12 + a22 * a10) - 2 * a4 * a10 * a12 - a3 * a3 * a02;
    double p2 = a3 * a22 * a12 - a4 * a12 * a12 - a3 * a3 * a04;
    double best = Double.POSITIVE_INFINITY;
    for (double u : roots(p2, p1, p0)) {
      boolean settles = 2 * p2 * u + p1 > 0;
      if (u > 0 && settles && (a10 + a12 * u) * a3 > 0) {
        best = Math.min(best, u);
      }
    }
    return best < Double.POSITIVE_INFINITY
        ? OptionalDouble.of(Math.sqrt(best))
        : OptionalDouble.empty();
  }

  /** Real roots of a u² + b u + c, without cancellation. */
  private static double[] roots(double a, double b, double c) {
    if (a == 0) {
      return b == 0 ? new double[0] : new double[] {-c / b};
    }
    double under = b * b - 4 * a * c;
    if (under < 0) {
      return new double[0];
    }
    double q = -0.5 * (b + Math.copySign(Math.sqrt(under), b));
    return q == 0 ? new double[] {0} : new double[] {q / a, c / q};
  }

  /**
   * Returns the speed, m/s, above which the machine slowly falls over (a real root turns positive):
   * det(g K0 + v² K2) = 0. Empty if there is none.
   */
  public OptionalDouble capsizeSpeedMs() {
    double squared = -gravity * determinant(k0) / mixed(k0, k2);
    return squared > 0 && Double.isFinite(squared)
        ? OptionalDouble.of(Math.sqrt(squared))
        : OptionalDouble.empty();
  }
}
