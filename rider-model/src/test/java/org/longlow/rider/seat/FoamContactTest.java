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

  @Test
  void anOutlineIsCutWhereThePanEnds() {
    Underside adult = adult();
    assertThat(adult.clipped(-200, 400)).isSameAs(adult);
    Underside cut = adult.clipped(-60, 200);
    assertThat(cut.rearMm()).isEqualTo(-60);
    assertThat(cut.frontMm()).isEqualTo(200);
    assertThat(cut.radiusMm()).isEqualTo(130);
    assertThat(cut.flatGapMm()).isEqualTo(25);
    assertThat(cut.widthM()).isEqualTo(0.28);
    assertThat(adult.clipped(-60, 400).frontMm()).isEqualTo(300);
    assertThat(adult.clipped(-200, 200).rearMm()).isEqualTo(-110);
    // nothing is left of it where its lowest point is off the board
    assertThat(adult.clipped(1, 400)).isNull();
    assertThat(adult.clipped(-400, -1)).isNull();
    assertThat(adult.clipped(0, 0)).isNull();
    assertThat(adult.clipped(0, 400)).isNotNull();
    assertThat(adult.clipped(-400, 0)).isNotNull();
    // circle and thigh meet where the circle has risen by 25: √(130² − 105²)
    assertThat(adult.meetMm()).isCloseTo(Math.sqrt(130 * 130 - 105 * 105), within(1e-12));
    assertThat(adult.clipped(-110, 50).meetMm()).isEqualTo(50);
  }

  @Test
  void eachMeasureOfAnOutlineIsTakenUpToItsEnds() {
    new Underside(10_000, 10_000, -10_000, 10_000, 10);
    new Underside(1, 1, 0, 0, 0.001);
    double[][] wrong = {
      {0, 25, -110, 300, 0.28},
      {10_001, 25, -110, 300, 0.28},
      {130, 0, -110, 300, 0.28},
      {130, 131, -110, 300, 0.28},
      {130, 25, 1, 300, 0.28},
      {130, 25, -10_001, 300, 0.28},
      {130, 25, -110, -1, 0.28},
      {130, 25, -110, 10_001, 0.28},
      {130, 25, -110, 300, 0},
      {130, 25, -110, 300, 10.1}
    };
    for (double[] w : wrong) {
      assertThatThrownBy(() -> new Underside(w[0], w[1], w[2], w[3], w[4]))
          .hasMessageContaining("outline needs");
    }
  }

  /** The contact reaches to where the circle leaves the surface, and to the front on the thigh. */
  @Test
  void areaIsThatOfTheOutlineBelowTheSurface() {
    double at10 = Math.sqrt(130 * 130 - 120 * 120);
    assertThat(FoamContact.areaCm2(adult(), 10)).isCloseTo(2 * at10 * 2.8, within(1e-9));
    double at24 = Math.sqrt(130 * 130 - 106 * 106);
    assertThat(FoamContact.areaCm2(adult(), 24)).isCloseTo(2 * at24 * 2.8, within(1e-9));
    double at26 = Math.sqrt(130 * 130 - 104 * 104);
    assertThat(FoamContact.areaCm2(adult(), 26)).isCloseTo((300 + at26) * 2.8, within(1e-9));
    // the buttock ends 110 mm behind its lowest point
    assertThat(FoamContact.areaCm2(adult(), 65)).isCloseTo(410 * 2.8, within(1e-9));
    assertThat(FoamContact.areaCm2(adult(), 140)).isCloseTo(410 * 2.8, within(1e-9));
    assertThat(FoamContact.areaCm2(adult(), 0)).isZero();
    assertThat(FoamContact.areaCm2(adult(), -1)).isZero();
    Underside ball = new Underside(80, 80, -80, 80, 0.1);
    assertThat(FoamContact.areaCm2(ball, 90)).isCloseTo(160, within(1e-9));
  }

  @Test
  void theRimHelpsByItsShareOfTheDepth() {
    double diameter = Math.sqrt(4 * 100_000 / Math.PI);
    assertThat(FoamContact.edgeFactor(0.5, 95, 1000))
        .isCloseTo(1 + 0.9 * 0.5 * 95 / diameter, within(1e-12));
    assertThat(FoamContact.edgeFactor(0, 95, 1000)).isEqualTo(1);
    assertThat(FoamContact.edgeFactor(0.5, 95, 0)).isEqualTo(1);
    assertThat(FoamContact.edgeFactor(0.5, 95, -1)).isEqualTo(1);
  }

  /** With help of the rim the body feels more than the foam carries under it, by that factor. */
  @Test
  void pressureOnTheBodyIsThatOfFoamAndRim() {
    FoamContact plain = FoamContact.press(FoamStackTest.TWO, adult(), 400);
    FoamContact helped = FoamContact.press(FoamStackTest.TWO, adult(), 500, 1.25);
    assertThat(helped.sinkMm()).isCloseTo(plain.sinkMm(), within(1e-7));
    assertThat(helped.peakKPa()).isCloseTo(1.25 * plain.peakKPa(), within(1e-6));
    assertThat(helped.meanKPa()).isCloseTo(500 / helped.areaCm2() * 10, within(1e-9));
    assertThat(helped.forceN()).isEqualTo(500);
    assertThat(helped.remainingMm()).isCloseTo(95 - helped.sinkMm(), within(1e-9));
    assertThat(helped.stack().pressureKPa()).isCloseTo(plain.peakKPa(), within(1e-6));
  }

  @Test
  void memoryFoamIsSunkThroughFirst() {
    FoamStack both =
        FoamStack.of(new FoamLayer(20, Foam.memory(60, 60, 2)), new FoamLayer(60, FoamTest.FIRM));
    FoamStack firm = FoamStack.of(new FoamLayer(60, FoamTest.FIRM));
    FoamContact c = FoamContact.press(both, adult(), FORCE);
    FoamContact alone = FoamContact.press(firm, adult(), FORCE);
    assertThat(c.sinkMm()).isCloseTo(alone.sinkMm() + 16, within(1e-6));
    assertThat(c.remainingMm()).isCloseTo(alone.remainingMm() + 4, within(1e-6));
    FoamContact dead =
        FoamContact.press(FoamStack.of(new FoamLayer(60, Foam.memory(60, 60, 2))), adult(), 500, 2);
    // 48 mm deep in it, 410 mm long less nothing: force over area on the body, half of it foam
    double area = FoamContact.areaCm2(adult(), 48);
    assertThat(dead.areaCm2()).isCloseTo(area, within(1e-9));
    assertThat(dead.peakKPa()).isCloseTo(500 / area * 10, within(1e-9));
    assertThat(dead.meanKPa()).isCloseTo(500 / area * 10, within(1e-9));
  }

  @Test
  void forceIsTakenUpToItsEnds() {
    assertThat(FoamContact.press(FoamStackTest.TWO, adult(), 1e6).sinkMm())
        .isLessThan(FoamStackTest.TWO.curve().limitMm() + 25);
    assertThatThrownBy(() -> FoamContact.press(FoamStackTest.TWO, adult(), -1))
        .hasMessageContaining("forceN");
    assertThatThrownBy(() -> FoamContact.press(FoamStackTest.TWO, adult(), 1.1e6))
        .hasMessageContaining("forceN");
    assertThat(FoamContact.depth(FoamStackTest.TWO, adult(), 0, Double.NaN)).isZero();
  }

  /** Wherever the search begins it ends at the same sink. */
  @Test
  void theSinkDoesNotDependOnWhereTheSearchBegins() {
    for (double force : new double[] {1, 100, FORCE, 5000}) {
      double depth = FoamContact.depth(FoamStackTest.TWO, adult(), force, Double.NaN);
      for (double guess : new double[] {-1, 0.01, 20, 60, 89, 1000}) {
        assertThat(FoamContact.depth(FoamStackTest.TWO, adult(), force, guess))
            .isCloseTo(depth, within(1e-9));
      }
    }
  }

  // Abramowitz and Stegun, Table 25.4, n = 8
  @Test
  void nodesAreThoseOfTheTable() {
    double[] x = {0.960289856497536, 0.796666477413627, 0.525532409916329, 0.183434642495650};
    double[] w = {0.101228536290376, 0.222381034453374, 0.313706645877887, 0.362683783378362};
    for (int i = 0; i < 4; i++) {
      assertThat(Gauss.NODE[i]).isCloseTo(x[i], within(1e-14));
      assertThat(Gauss.NODE[7 - i]).isCloseTo(-x[i], within(1e-14));
      assertThat(Gauss.WEIGHT[i]).isCloseTo(w[i], within(1e-14));
      assertThat(Gauss.WEIGHT[7 - i]).isCloseTo(w[i], within(1e-14));
    }
  }

  @Test
  void aTorsoParallelToItsBoardPressesAlikeAllAlong() {
    BackContact c = BackContact.parallel(FoamStackTest.TWO, 400, 0.3, 240);
    assertThat(c.peakPa()).isCloseTo(240 / (0.3 * 0.4), within(1e-9));
    assertThat(c.lowMm()).isEqualTo(c.highMm());
    assertThat(c.lowMm()).isCloseTo(FoamStackTest.TWO.compress(2).sinkMm(), within(1e-9));
    assertThat(c.lengthMm()).isEqualTo(400);
    BackContact none = BackContact.parallel(FoamStackTest.TWO, 400, 0.3, 0);
    assertThat(none).isEqualTo(new BackContact(0, 0, 0, 0));
    assertThat(BackContact.press(FoamStackTest.TWO, 100, 500, 0.3, 0, 300, null)).isEqualTo(none);
  }

  /** In the middle of its contact a tilted torso is parallel, wherever its search begins. */
  @Test
  void aTorsoPressedInItsMiddleIsParallel() {
    BackContact flat = BackContact.parallel(FoamStackTest.TWO, 400, 0.3, 240);
    for (BackContact guess : new BackContact[] {null, new BackContact(5, 30, 0, 0)}) {
      BackContact c = BackContact.press(FoamStackTest.TWO, 100, 500, 0.3, 240, 300, guess);
      assertThat(c.lowMm()).isCloseTo(flat.lowMm(), within(1e-3));
      assertThat(c.highMm()).isCloseTo(flat.highMm(), within(1e-3));
      assertThat(c.peakPa()).isCloseTo(2000, within(1.0));
      assertThat(c.lengthMm()).isCloseTo(400, within(1e-9));
    }
  }

  /** Pressed near an end it lifts off at the other: the length that still touches. */
  @Test
  void aTorsoPressedNearAnEndLiftsOffAtTheOther() {
    BackContact top = BackContact.press(FoamStackTest.TWO, 100, 500, 0.3, 240, 420, null);
    assertThat(top.lowMm()).isNegative();
    assertThat(top.lengthMm())
        .isCloseTo(400 * top.highMm() / (top.highMm() - top.lowMm()), within(1e-9));
    assertThat(top.peakPa())
        .isCloseTo(FoamStackTest.TWO.curve().pressurePa(top.highMm()), within(1e-9));
    BackContact low = BackContact.press(FoamStackTest.TWO, 100, 500, 0.3, 240, 180, null);
    assertThat(low.lowMm()).isCloseTo(top.highMm(), within(1e-9));
    assertThat(low.highMm()).isCloseTo(top.lowMm(), within(1e-9));
    assertThat(low.lengthMm()).isCloseTo(top.lengthMm(), within(1e-9));
    assertThat(low.peakPa()).isCloseTo(top.peakPa(), within(1e-6));
  }
}
