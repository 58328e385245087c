package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;

/**
 * Worked with another program for an 80 kg rider (562.78 N), same outline. Printed to 0.01 mm and
 * kPa, 1 cm² and 0.001 strain; that program's own integration adds up to one unit in the last
 * place.
 */
class FoamContactTest {

  /** The calibrated buttock and thigh of an adult. */
  private static Underside adult() {
    return new Underside(
        Underside.BUTTOCK_RADIUS_MM,
        Underside.THIGH_GAP_MM,
        Underside.BUTTOCK_REAR_MM,
        Underside.THIGH_FRONT_MM,
        Underside.SEAT_WIDTH_M);
  }

  private static final double FORCE = 562.7782658;

  private static void check(
      FoamContact c, double sink, double peak, double mean, double area, double left) {
    assertThat(c.sinkMm()).isCloseTo(sink, within(0.011));
    assertThat(c.peakKPa()).isCloseTo(peak, within(0.011));
    assertThat(c.meanKPa()).isCloseTo(mean, within(0.011));
    assertThat(c.areaCm2()).isCloseTo(area, within(1.01));
    assertThat(c.remainingMm()).isCloseTo(left, within(0.0501));
  }

  private static void strains(FoamContact c, double... strain) {
    for (int i = 0; i < strain.length; i++) {
      assertThat(c.stack().layers().get(i).strain()).isCloseTo(strain[i], within(6e-4));
    }
  }

  @Test
  void softFoamBottoms() {
    FoamContact c = FoamContact.press(FoamStackTest.ONE, adult(), FORCE);
    check(c, 46.34, 23.15, 5.03, 1119, 3.7);
    strains(c, 0.927);
    assertThat(c.stack().verdict()).isEqualTo(Compression.Verdict.BOTTOMS);
  }

  @Test
  void gradedFoamHolds() {
    FoamContact c = FoamContact.press(FoamStackTest.TWO, adult(), FORCE);
    check(c, 53.06, 7.90, 4.96, 1134, 41.9);
    strains(c, 0.699, 0.605, 0.436);
    assertThat(c.stack().verdict()).isEqualTo(Compression.Verdict.SOUND);
    assertThat(c.stack().layers().get(0).verdict()).isEqualTo(Compression.LayerVerdict.MARGINAL);
  }

  @Test
  void foamBesideTheBodyHelps() {
    FoamContact plain = FoamContact.press(FoamStackTest.TWO, adult(), FORCE);
    double k = FoamContact.edgeFactor(0.5, 95, plain.areaCm2());
    assertThat(k).isCloseTo(1.1125, within(5.1e-5));
    FoamContact c = FoamContact.press(FoamStackTest.TWO, adult(), FORCE, k);
    check(c, 49.14, 7.87, 5.00, 1125, 45.9);
    strains(c, 0.668, 0.566, 0.387);
  }

  @Test
  void aBumpSpendsTheUpperLayersOnly() {
    FoamContact c = FoamContact.press(FoamStackTest.TWO, adult(), 1000);
    check(c, 72.26, 16.97, 8.71, 1148, 22.7);
    strains(c, 0.839, 0.788, 0.691);
  }

  @Test
  void calibrationGivesTheMeasuredMeans() {
    FoamStack pad = FoamStack.of(new FoamLayer(60, FoamTest.MEDIUM_HR));
    FoamContact c = FoamContact.press(pad, adult(), 546);
    // Printed 9.8 kPa peak on 60 mm of medium foam.
    assertThat(c.peakKPa()).isCloseTo(9.8, within(0.0501));
  }

  @ParameterizedTest
  @ValueSource(doubles = {5, 20, 45, 60})
  void forceIsTheIntegralOfPressure(double depth) {
    Underside outline = adult();
    FoamContact c = FoamContact.at(FoamStackTest.TWO, outline, depth, 1, 1);
    int n = 200_000;
    double sum = 0;
    double moment = 0;
    for (int i = 0; i < n; i++) {
      double s = -110 + 410 * (i + 0.5) / n;
      double gap = s > outline.meetMm() ? 25 : 130 - Math.sqrt(130 * 130 - s * s);
      double p = FoamStackTest.TWO.curve().pressurePa(depth - gap);
      sum += p * 410 / n;
      moment += s * p * 410 / n;
    }
    // Midpoint sum of 200000 strips against eight Gauss-Legendre nodes an arc: seen 2e-3 mm.
    assertThat(c.centreMm()).isCloseTo(moment / sum, within(5e-3));
    double found = FoamContact.depth(FoamStackTest.TWO, outline, sum * 0.28e-3, Double.NaN);
    assertThat(found).isCloseTo(depth, within(1e-3));
  }

  @Test
  void sinkRisesWithForce() {
    double before = 0;
    for (double force = 1; force < 5000; force *= 1.3) {
      double sink = FoamContact.press(FoamStackTest.TWO, adult(), force).sinkMm();
      assertThat(sink).isGreaterThan(before);
      before = sink;
    }
    assertThat(before).isLessThan(95);
  }

  /**
   * A rigid cylinder on a linear foundation: F = kf b [R² acos((R−δ)/R) − (R−δ) a], a = √(2Rδ −
   * δ²). Twenty metres of a foam without plateau are linear to 0.2 % at 30 mm.
   */
  @ParameterizedTest
  @ValueSource(doubles = {2, 8, 20, 30})
  void aCylinderOnALinearFoundationCarriesItsFormula(double depth) {
    Foam linear = new Foam(Foam.Kind.OPEN_CELL, 0, 2e7, 0.1, 0.99);
    FoamLayer[] layers = new FoamLayer[20];
    java.util.Arrays.fill(layers, new FoamLayer(1000, linear));
    FoamStack bed = FoamStack.of(layers);
    double kf = 2e7 / 0.99 / 20_000;
    double r = 130;
    double half = Math.sqrt(2 * r * depth - depth * depth);
    double force = kf * 0.28e-3 * (r * r * Math.acos((r - depth) / r) - (r - depth) * half);
    Underside cylinder = new Underside(r, r, -r, r, 0.28);
    FoamContact c = FoamContact.press(bed, cylinder, force);
    assertThat(c.sinkMm()).isCloseTo(depth, within(0.003 * depth));
    assertThat(c.areaCm2()).isCloseTo(2 * half * 0.28 * 10, within(0.003 * c.areaCm2()));
    assertThat(c.centreMm()).isCloseTo(0, within(1e-9));
  }

  @Test
  void theMeanManHasTheCalibratedOutline() {
    Underside mean = Underside.seatOf(Body.of(Sex.MALE, 1756.21, 85.52, Gear.NONE), 400);
    // The regressions pass through the means to the rounding of their coefficients.
    assertThat(mean.widthM()).isCloseTo(Underside.SEAT_WIDTH_M, within(1e-5));
    assertThat(mean.frontMm()).isCloseTo(Underside.THIGH_FRONT_MM, within(0.01));
    assertThat(Underside.seatOf(Body.of(Sex.MALE, 1756.21, 85.52, Gear.NONE), 200).widthM())
        .isEqualTo(0.2);
  }

  @Test
  void memoryFoamAloneBottoms() {
    FoamStack memory = FoamStack.of(new FoamLayer(60, Foam.memory(60, 60, 2)));
    FoamContact c = FoamContact.press(memory, adult(), FORCE);
    assertThat(c.sinkMm()).isCloseTo(48, within(1e-9));
    assertThat(c.stack().verdict()).isEqualTo(Compression.Verdict.BOTTOMS);
    assertThat(c.peakKPa()).isPositive().isFinite();
  }

  @Test
  void noForceNoSink() {
    FoamContact c = FoamContact.press(FoamStackTest.TWO, adult(), 0);
    assertThat(c.sinkMm()).isZero();
    assertThat(c.meanKPa()).isZero();
    assertThatThrownBy(() -> FoamContact.press(FoamStackTest.TWO, adult(), Double.NaN))
        .hasMessageContaining("forceN");
    assertThatThrownBy(() -> new Underside(0, 25, -110, 300, 0.28)).hasMessageContaining("outline");
  }

  @Test
  void aTiltedBackCarriesForceAtItsPlace() {
    FoamStack stack = FoamStackTest.TWO;
    for (double centre = 230; centre <= 380; centre += 10) {
      BackContact c = BackContact.press(stack, 100, 500, 0.29, 245, centre, null);
      double force = 0;
      double moment = 0;
      int n = 20_000;
      for (int i = 0; i < n; i++) {
        double t = (i + 0.5) / n;
        double p = stack.curve().pressurePa(c.lowMm() + (c.highMm() - c.lowMm()) * t);
        force += p * 0.29e-3 * 400 / n;
        moment += p * 0.29e-3 * 400 / n * (100 + 400 * t);
      }
      // Midpoint sum of 20000 strips.
      assertThat(force).isCloseTo(245, within(1e-3));
      assertThat(moment / force).isCloseTo(centre, within(1e-3));
    }
  }
}
