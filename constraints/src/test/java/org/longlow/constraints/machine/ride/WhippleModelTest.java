package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.machine.ride.WhippleModel.Eigenvalue;

class WhippleModelTest {

  // Meijaard et al. 2007, eq. 5.4, all printed digits.
  @Test
  void matricesMatchThePublishedBenchmark() {
    WhippleModel model = WhippleBenchmark.model();
    matches(model.m(), 80.81722, 2.31941332208709, 2.31941332208709, 0.29784188199686);
    matches(model.c1(), 0, 33.86641391492494, -0.85035641456978, 1.68540397397560);
    matches(model.k0(), -80.95, -2.59951685249872, -2.59951685249872, -0.80329488458618);
    matches(model.k2(), 0, 76.59734589573222, 0, 2.65431523794604);
  }

  private static void matches(List<List<Double>> rows, double a, double b, double c, double d) {
    assertThat(rows.get(0).get(0)).isCloseTo(a, within(1e-12));
    assertThat(rows.get(0).get(1)).isCloseTo(b, within(1e-12));
    assertThat(rows.get(1).get(0)).isCloseTo(c, within(1e-12));
    assertThat(rows.get(1).get(1)).isCloseTo(d, within(1e-12));
  }

  // Meijaard et al. 2007, table 2; columns: pair (re, im) or two reals, then two reals.
  @ParameterizedTest
  @CsvSource({
    "1, 3.52696170990070, 0.80774027519930, -3.13423125066578, -7.11008014637442",
    "2, 2.68234517512745, 1.68066296590675, -3.07158645641514, -8.67387984831735",
    "3, 1.70675605663975, 2.31582447384325, -2.63366137253667, -10.35101467245920",
    "4, 0.41325331521125, 3.07910818603206, -1.42944427361326, -12.15861426576447",
    "5, -0.77534188219585, 4.46486771378823, -0.32286642900409, -14.07838969279822",
    "6, -1.52644486584142, 5.87673060598709, -0.00406690076970, -16.08537123098026",
    "7, -2.13875644258362, 7.19525913329805, 0.10268170574766, -18.15788466125262",
    "8, -2.69348683581097, 8.46037971396931, 0.14327879765713, -20.27940894394569",
    "9, -3.21675402252485, 9.69377351531791, 0.15790184030917, -22.43788559040858",
    "10, -3.72016840437287, 10.90681139476287, 0.16105338653172, -24.62459635017404"
  })
  void eigenvaluesMatchThePublishedTable(double v, double re, double im, double slow, double fast) {
    List<Eigenvalue> expected =
        new ArrayList<>(
            List.of(
                new Eigenvalue(re, im),
                new Eigenvalue(re, -im),
                new Eigenvalue(slow, 0),
                new Eigenvalue(fast, 0)));
    expected.sort(
        Comparator.comparingDouble(Eigenvalue::re).thenComparingDouble(Eigenvalue::im).reversed());
    near(WhippleBenchmark.model().eigenvalues(v), expected, 1e-11);
  }

  @Test
  void standingStillFallsOverAndFlops() {
    List<Eigenvalue> values = WhippleBenchmark.model().eigenvalues(0);
    near(
        values,
        List.of(
            new Eigenvalue(5.53094371765393, 0),
            new Eigenvalue(3.13164324790656, 0),
            new Eigenvalue(-3.13164324790656, 0),
            new Eigenvalue(-5.53094371765393, 0)),
        1e-11);
  }

  private static void near(List<Eigenvalue> got, List<Eigenvalue> expected, double tolerance) {
    assertThat(got).hasSize(4);
    for (int i = 0; i < 4; i++) {
      assertThat(got.get(i).re()).isCloseTo(expected.get(i).re(), within(tolerance));
      assertThat(got.get(i).im()).isCloseTo(expected.get(i).im(), within(tolerance));
    }
  }

  // Published: stable between 4.29238253634111 and 6.02426201538837 m/s.
  @Test
  void stableSpeedsMatchThePublishedOnes() {
    assertThat(WhippleBenchmark.model().weaveSpeedMs().getAsDouble())
        .isCloseTo(4.29238253634111, within(1e-11));
    assertThat(WhippleBenchmark.model().capsizeSpeedMs().getAsDouble())
        .isCloseTo(6.02426201538837, within(1e-11));
  }

  @Test
  void anotherLibraryFindsTheSameRootsForRandomMachines() {
    SplittableRandom random = new SplittableRandom(2007);
    int withWeave = 0;
    for (int i = 0; i < 150; i++) {
      WhippleModel model = randomMachine(random);
      for (double v : new double[] {0, 3, 9, 25}) {
        List<Eigenvalue> mine = model.eigenvalues(v);
        List<Eigenvalue> other = new ArrayList<>();
        for (Complex z : new EigenDecompositionNonSymmetric(companion(model, v)).getEigenvalues()) {
          other.add(new Eigenvalue(z.getReal(), z.getImaginary()));
        }
        for (Eigenvalue e : mine) {
          double nearest =
              other.stream()
                  .mapToDouble(o -> Math.hypot(o.re() - e.re(), o.im() - e.im()))
                  .min()
                  .orElseThrow();
          // Near-double roots lose half the digits in any method.
          assertThat(nearest).isLessThan(1e-6 * (1 + Math.hypot(e.re(), e.im())));
        }
      }
      if (model.weaveSpeedMs().isPresent()) {
        withWeave++;
        double v = model.weaveSpeedMs().getAsDouble();
        assertThat(largestPair(model, v * 0.999)).isPositive();
        assertThat(largestPair(model, v * 1.001)).isNegative();
      }
      if (model.capsizeSpeedMs().isPresent()) {
        double v = model.capsizeSpeedMs().getAsDouble();
        double smallest =
            model.eigenvalues(v).stream()
                .mapToDouble(e -> Math.hypot(e.re(), e.im()))
                .min()
                .orElseThrow();
        assertThat(smallest).isLessThan(1e-6);
      }
    }
    assertThat(withWeave).isGreaterThan(50);
  }

  /** Wheels that do not turn, as in a skate, have no gyroscopic moment; balance is left. */
  @Test
  void weaveSettlesWhereAScanOfSpeedsFirstFindsIt() {
    SplittableRandom random = new SplittableRandom(33);
    int[] found = new int[2];
    for (int i = 0; i < 120; i++) {
      WhippleModel model = randomMachine(random, i % 2);
      double scanned = Double.NaN;
      double before = -1;
      for (double v = 0.02; v < 40 && Double.isNaN(scanned); v += 0.04) {
        double growth = growingPair(model, v);
        if (before > 0 && growth < 0) {
          scanned = v - 0.02;
        }
        before = growth;
      }
      if (Double.isNaN(scanned)) {
        assertThat(model.weaveSpeedMs().orElse(40)).isGreaterThan(39.9);
      } else {
        assertThat(model.weaveSpeedMs().orElseThrow()).isCloseTo(scanned, within(0.0201));
        found[i % 2]++;
      }
    }
    assertThat(found[0]).isPositive();
    assertThat(found[1]).isGreaterThan(20);
  }

  /** Largest real part among the pairs; 0 if there is none. */
  private static double growingPair(WhippleModel model, double v) {
    return model.eigenvalues(v).stream()
        .filter(e -> e.im() > 1e-6)
        .mapToDouble(Eigenvalue::re)
        .max()
        .orElse(0);
  }

  @Test
  void matricesOfNoMachineAreRefused() {
    List<List<Double>> one = List.of(List.of(2.0, 1.0), List.of(1.0, 2.0));
    List<List<Double>> flat = List.of(List.of(2.0, 2.0), List.of(2.0, 2.0));
    List<List<Double>> hole = List.of(List.of(2.0, Double.NaN), List.of(1.0, 2.0));
    assertThat(new WhippleModel(one, one, one, one, 9.81).eigenvalues(1)).hasSize(4);
    assertThatThrownBy(() -> new WhippleModel(flat, one, one, one, 9.81))
        .hasMessageContaining("determinant");
    assertThatThrownBy(() -> new WhippleModel(one, hole, one, one, 9.81))
        .hasMessageContaining("matrix entry");
  }

  /** Largest real part among the pair nearest the imaginary axis. */
  private static double largestPair(WhippleModel model, double v) {
    return model.eigenvalues(v).stream()
        .filter(e -> e.im() > 1e-6)
        .min(Comparator.comparingDouble(e -> Math.abs(e.re())))
        .orElseThrow()
        .re();
  }

  private static RealMatrix companion(WhippleModel model, double v) {
    RealMatrix m = matrix(model.m());
    RealMatrix inverse = MatrixUtils.inverse(m);
    RealMatrix stiff =
        inverse.multiply(
            matrix(model.k0())
                .scalarMultiply(model.gravity())
                .add(matrix(model.k2()).scalarMultiply(v * v)));
    RealMatrix damp = inverse.multiply(matrix(model.c1()).scalarMultiply(v));
    RealMatrix a = MatrixUtils.createRealMatrix(4, 4);
    a.setEntry(0, 2, 1);
    a.setEntry(1, 3, 1);
    a.setSubMatrix(stiff.scalarMultiply(-1).getData(), 2, 0);
    a.setSubMatrix(damp.scalarMultiply(-1).getData(), 2, 2);
    return a;
  }

  private static RealMatrix matrix(List<List<Double>> rows) {
    return MatrixUtils.createRealMatrix(
        rows.stream()
            .map(r -> r.stream().mapToDouble(Double::doubleValue).toArray())
            .toArray(double[][]::new));
  }

  private static WhippleModel randomMachine(SplittableRandom random) {
    return randomMachine(random, 1);
  }

  /** A machine whose wheels spin with a share of what they are about their axles. */
  private static WhippleModel randomMachine(SplittableRandom random, double spin) {
    return new WhippleParameters(
            random.nextDouble(1.2, 2),
            random.nextDouble(0.05, 0.15),
            random.nextDouble(0.3, 0.6),
            9.80665,
            new WhippleParameters.Wheel(0.31, 18, 0.5, spin * random.nextDouble(0.5, 1)),
            new WhippleParameters.Body(
                random.nextDouble(0.5, 0.8),
                -random.nextDouble(0.4, 0.8),
                random.nextDouble(150, 260),
                random.nextDouble(10, 25),
                random.nextDouble(-4, 4),
                random.nextDouble(15, 35)),
            new WhippleParameters.Body(
                random.nextDouble(1.0, 1.2), -0.7, random.nextDouble(5, 20), 1, -0.2, 0.6),
            new WhippleParameters.Wheel(0.3, 13, 0.3, spin * random.nextDouble(0.4, 0.7)))
        .model();
  }

  @Test
  void aModelWithoutMassIsRefused() {
    WhippleParameters.Wheel nothing = new WhippleParameters.Wheel(0.3, 0, 0, 0);
    WhippleParameters.Body empty = new WhippleParameters.Body(0, 0, 0, 0, 0, 0);
    assertThatThrownBy(
            () -> new WhippleParameters(1, 0.1, 0.4, 9.81, nothing, empty, empty, nothing).model())
        .hasMessageContaining("mass");
    assertThatThrownBy(() -> WhippleBenchmark.model().eigenvalues(-1))
        .hasMessageContaining("speed");
    assertThatThrownBy(() -> WhippleBenchmark.model().eigenvalues(Double.NaN))
        .hasMessageContaining("speed");
  }
}
