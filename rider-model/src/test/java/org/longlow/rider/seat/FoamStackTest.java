package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.words.Units;

/** Examples 1 to 3 were worked with another program and printed to double precision. */
class FoamStackTest {

  static final FoamStack ONE = FoamStack.of(new FoamLayer(50, FoamTest.SOFT));
  static final FoamStack TWO =
      FoamStack.of(
          new FoamLayer(25, FoamTest.SOFT_HR),
          new FoamLayer(30, FoamTest.MEDIUM_HR),
          new FoamLayer(40, FoamTest.FIRM));
  static final FoamStack THREE =
      FoamStack.of(
          new FoamLayer(20, FoamTest.SOFT),
          new FoamLayer(30, Foam.openCell(40, 155, 2.4)),
          new FoamLayer(40, FoamTest.FIRM));

  @Test
  void oneSoftLayerBottoms() {
    Compression c = ONE.compress(6.2);
    assertThat(c.layers().get(0).strain()).isCloseTo(0.7995716342073774, within(1e-9));
    assertThat(c.sinkMm()).isCloseTo(39.97858171036887, within(1e-9));
    assertThat(c.remainingMm()).isCloseTo(10.021418289631129, within(1e-9));
    assertThat(c.stiffnessKPaPerMm()).isCloseTo(0.6434620520, within(1e-9));
    assertThat(c.verdict()).isEqualTo(Compression.Verdict.BOTTOMS);
    assertThat(ONE.compress(12.4).layers().get(0).strain()).isCloseTo(0.8892626298, within(1e-9));
    assertThat(ONE.compress(12.4).sinkMm()).isCloseTo(44.4631, within(5.1e-5));
    assertThat(ONE.holdsBump(6.2)).isFalse();
  }

  @Test
  void threeGradedLayersAreSound() {
    Compression c = TWO.compress(6.2);
    double[] strain = {0.6263895553307157, 0.5130176857596809, 0.3254214149534984};
    double[] sink = {15.659738883267892, 15.390530572790425, 13.016856598139936};
    for (int i = 0; i < 3; i++) {
      assertThat(c.layers().get(i).strain()).isCloseTo(strain[i], within(1e-9));
      assertThat(c.layers().get(i).sinkMm()).isCloseTo(sink[i], within(1e-9));
    }
    assertThat(c.sinkMm()).isCloseTo(44.067126054198255, within(1e-9));
    assertThat(c.remainingMm()).isCloseTo(50.932873945801745, within(1e-9));
    assertThat(c.stiffnessKPaPerMm()).isCloseTo(0.1557270115, within(1e-9));
    assertThat(c.verdict()).isEqualTo(Compression.Verdict.SOUND);
    assertThat(c.layers().get(0).verdict()).isEqualTo(Compression.LayerVerdict.MARGINAL);
    assertThat(c.layers().get(2).verdict()).isEqualTo(Compression.LayerVerdict.SOUND);
    Compression bump = TWO.compress(12.4);
    assertThat(bump.layers().get(2).strain()).isCloseTo(0.6050958120, within(1e-9));
    assertThat(bump.sinkMm()).isCloseTo(65.93404890679099, within(1e-9));
    assertThat(TWO.holdsBump(6.2)).isTrue();
  }

  @Test
  void aSpentTopperDoesNotMakeTheStackBottom() {
    Compression c = THREE.compress(6.2);
    assertThat(c.sinkMm()).isCloseTo(45.87770979, within(5.1e-9));
    // Printed to five decimals.
    assertThat(c.layers().get(0).strain()).isCloseTo(0.79957, within(5.1e-6));
    assertThat(c.layers().get(1).strain()).isCloseTo(0.56231, within(5.1e-6));
    assertThat(c.layers().get(2).strain()).isCloseTo(0.32542, within(5.1e-6));
    assertThat(c.verdict()).isEqualTo(Compression.Verdict.TOPPER_SPENT);
    assertThat(THREE.compress(6.2).layers())
        .extracting(Compression.Layer::verdict)
        .contains(Compression.LayerVerdict.SPENT);
  }

  @Test
  void aStackOfMostlySpentFoamBottomsOnASoundBase() {
    FoamStack stack =
        FoamStack.of(new FoamLayer(80, FoamTest.SOFT), new FoamLayer(10, FoamTest.FIRM));
    Compression c = stack.compress(6.2);
    // Strains of examples 1 and 2: mean (80 * 0.79957 + 10 * 0.32542) / 90 = 0.747, 22.8 mm left.
    assertThat(c.layers().get(1).verdict()).isEqualTo(Compression.LayerVerdict.SOUND);
    assertThat(c.remainingMm()).isGreaterThan(FoamStack.LEAST_LEFT_MM);
    assertThat(c.verdict()).isEqualTo(Compression.Verdict.BOTTOMS);
  }

  @Test
  void lessThanFifteenMillimetresLeftIsTheBoard() {
    assertThat(FoamStack.of(new FoamLayer(20, FoamTest.FIRM)).compress(6.2).verdict())
        .isEqualTo(Compression.Verdict.BOTTOMS);
    assertThat(FoamStack.of(new FoamLayer(23, FoamTest.FIRM)).compress(6.2).verdict())
        .isEqualTo(Compression.Verdict.SOUND);
  }

  @Test
  void memoryFoamGivesNoSupport() {
    FoamLayer memory = new FoamLayer(40, Foam.memory(60, 60, 2));
    FoamStack stack = FoamStack.of(memory, new FoamLayer(60, FoamTest.FIRM));
    Compression c = stack.compress(3);
    assertThat(c.layers().get(0).sinkMm()).isCloseTo(32, within(1e-12));
    assertThat(c.verdict()).isEqualTo(Compression.Verdict.TOPPER_SPENT);
    assertThat(FoamStack.of(memory).compress(3).verdict()).isEqualTo(Compression.Verdict.BOTTOMS);
    assertThat(stack.warnings()).hasSize(2).allMatch(w -> w.in(Units.MM).contains("memory foam"));
    assertThat(TWO.warnings()).isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14})
  void theTabulatedCurveAgreesWithTheExactStack(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 20; n++) {
      FoamLayer[] layers = new FoamLayer[1 + random.nextInt(4)];
      for (int i = 0; i < layers.length; i++) {
        Foam foam =
            random.nextInt(4) == 0
                ? Foam.closedCell(random.nextDouble(30, 100), random.nextDouble(5, 25), 930)
                : Foam.openCell(
                    random.nextDouble(25, 60),
                    random.nextDouble(60, 300),
                    random.nextDouble(1.9, 2.9));
        layers[i] = new FoamLayer(random.nextDouble(8, 80), foam);
      }
      FoamStack stack = FoamStack.of(layers);
      StackCurve curve = new StackCurve(stack.layers());
      double before = 0;
      for (int k = 1; k < 300; k++) {
        double kPa = 0.02 * Math.pow(1.035, k);
        Compression exact = stack.compress(kPa);
        double p = curve.pressurePa(exact.sinkMm());
        // Cubic Hermite between 192 knots; seats see less than 50 kPa.
        double share = kPa < 50 ? 1e-5 : 5e-5;
        assertThat(p).isCloseTo(kPa * 1000, within(share * kPa * 1000));
        assertThat(p).isGreaterThan(before);
        before = p;
        double[] reading = new double[2];
        curve.read(exact.sinkMm(), reading);
        assertThat(reading[0]).isCloseTo(p, within(1e-9 * p));
        double slope = reading[1];
        assertThat(slope)
            .isCloseTo(
                exact.stiffnessKPaPerMm() * 1000, within(2e-3 * exact.stiffnessKPaPerMm() * 1000));
      }
    }
  }

  @Test
  void refusesNonsensePressure() {
    assertThatThrownBy(() -> TWO.compress(-1)).hasMessageContaining("pressureKPa");
    assertThatThrownBy(() -> TWO.compress(Double.NaN)).hasMessageContaining("pressureKPa");
  }

  @Test
  void anUnloadedStackIsSound() {
    assertThat(FoamStack.of(new FoamLayer(10, FoamTest.SOFT)).compress(0).verdict())
        .isEqualTo(Compression.Verdict.SOUND);
  }

  /** A foam whose strain at a pressure is chosen: B ε / (1 − ε) with ε near 1 at most. */
  private static FoamLayer strained(double mm, double strain, double pa) {
    double lock = 0.999;
    return new FoamLayer(
        mm, new Foam(Foam.Kind.OPEN_CELL, 0, pa * (lock - strain) / strain, 0.1, lock));
  }

  private static Compression.Verdict verdict(FoamLayer... layers) {
    return FoamStack.of(layers).compress(10).verdict();
  }

  // at 10 kPa; a base of 0.70, a mean of 0.65 or less than 15 mm left bottom
  @Test
  void aStackBottomsAtEachOfItsLimits() {
    assertThat(verdict(strained(100, 0.5, 1e4), strained(100, 0.699, 1e4)))
        .isEqualTo(Compression.Verdict.SOUND);
    assertThat(verdict(strained(100, 0.5, 1e4), strained(100, 0.701, 1e4)))
        .isEqualTo(Compression.Verdict.BOTTOMS);
    assertThat(verdict(strained(100, 0.701, 1e4), strained(100, 0.5, 1e4)))
        .isEqualTo(Compression.Verdict.TOPPER_SPENT);
    assertThat(verdict(strained(100, 0.699, 1e4), strained(100, 0.5, 1e4)))
        .isEqualTo(Compression.Verdict.SOUND);
    // means of 0.648 and 0.652
    assertThat(verdict(strained(100, 0.68, 1e4), strained(100, 0.616, 1e4)))
        .isEqualTo(Compression.Verdict.SOUND);
    assertThat(verdict(strained(100, 0.68, 1e4), strained(100, 0.624, 1e4)))
        .isEqualTo(Compression.Verdict.BOTTOMS);
    // 15.2 and 14.8 mm left
    assertThat(verdict(strained(38, 0.6, 1e4))).isEqualTo(Compression.Verdict.SOUND);
    assertThat(verdict(strained(37, 0.6, 1e4))).isEqualTo(Compression.Verdict.BOTTOMS);
    // a topper that is spent is told of wherever it lies above the base
    assertThat(verdict(strained(10, 0.8, 1e4), strained(100, 0.5, 1e4), strained(100, 0.5, 1e4)))
        .isEqualTo(Compression.Verdict.TOPPER_SPENT);
    assertThat(verdict(strained(100, 0.5, 1e4), strained(10, 0.8, 1e4), strained(100, 0.5, 1e4)))
        .isEqualTo(Compression.Verdict.TOPPER_SPENT);
  }

  @Test
  void aLayerIsMarginalFromSixTenthsAndSpentFromSeven() {
    double[] strains = {0.599, 0.601, 0.699, 0.701};
    Compression.LayerVerdict[] verdicts = {
      Compression.LayerVerdict.SOUND,
      Compression.LayerVerdict.MARGINAL,
      Compression.LayerVerdict.MARGINAL,
      Compression.LayerVerdict.SPENT
    };
    for (int i = 0; i < strains.length; i++) {
      Compression.Layer layer =
          FoamStack.of(strained(100, strains[i], 1e4)).compress(10).layers().get(0);
      assertThat(layer.verdict()).isEqualTo(verdicts[i]);
      assertThat(layer.strain()).isCloseTo(strains[i], within(1e-12));
      assertThat(layer.sinkMm()).isCloseTo(100 * strains[i], within(1e-9));
    }
  }

  /** The base must stay below 0.75 at twice the pressure, whatever lies above it. */
  @Test
  void aBumpDoublesThePressureOnTheBase() {
    FoamLayer soft = strained(20, 0.9, 1e4);
    assertThat(FoamStack.of(soft, strained(100, 0.749, 2e4)).holdsBump(10)).isTrue();
    assertThat(FoamStack.of(soft, strained(100, 0.751, 2e4)).holdsBump(10)).isFalse();
    assertThat(FoamStack.of(strained(100, 0.749, 2e4), soft).holdsBump(10)).isFalse();
  }

  /** Tangents of layers in series add as compliances. */
  @Test
  void stiffnessIsTheSlopeOfPressureOverSink() {
    FoamStack withMemory =
        FoamStack.of(new FoamLayer(20, Foam.memory(60, 60, 2)), new FoamLayer(60, FoamTest.FIRM));
    for (FoamStack stack : new FoamStack[] {TWO, THREE, withMemory}) {
      for (double kPa : new double[] {0.5, 3, 9}) {
        double slope =
            0.002 / (stack.compress(kPa + 0.001).sinkMm() - stack.compress(kPa - 0.001).sinkMm());
        double found = stack.compress(kPa).stiffnessKPaPerMm();
        assertThat(found).isCloseTo(slope, within(1e-4 * slope));
      }
    }
  }

  @Test
  void layersAreOneToTwenty() {
    FoamLayer[] most = new FoamLayer[20];
    java.util.Arrays.fill(most, new FoamLayer(5, FoamTest.FIRM));
    assertThat(FoamStack.of(most).thicknessMm()).isEqualTo(100);
    FoamLayer[] more = new FoamLayer[21];
    java.util.Arrays.fill(more, new FoamLayer(5, FoamTest.FIRM));
    assertThatThrownBy(() -> FoamStack.of(more)).hasMessageContaining("got 21");
    assertThat(TWO.compress(100_000).sinkMm()).isLessThan(TWO.thicknessMm());
    assertThatThrownBy(() -> TWO.compress(100_001)).hasMessageContaining("pressureKPa");
  }

  @Test
  void memoryFoamIsWarnedOfWhereItLiesAndHowThickItIs() {
    FoamLayer thin = new FoamLayer(25, Foam.memory(60, 60, 2));
    FoamLayer thick = new FoamLayer(26, Foam.memory(60, 60, 2));
    FoamLayer firm = new FoamLayer(60, FoamTest.FIRM);
    assertThat(FoamStack.of(thin, firm).warnings())
        .singleElement()
        .asString()
        .startsWith("Layer 1 is memory foam: it gives way");
    assertThat(FoamStack.of(thick, firm).warnings())
        .hasSize(2)
        .extracting(w -> w.in(Units.MM))
        .contains("Layer 1 is 26 mm of memory foam: use at most 25 mm.");
    assertThat(FoamStack.of(firm, thin).warnings())
        .hasSize(2)
        .extracting(w -> w.in(Units.MM))
        .contains("Layer 2 is memory foam below the top: use it on top only.");
  }

  @Test
  void memoryFoamLiesAtEightTenthsUnderAnythingAndSpringsBackUnderNothing() {
    FoamStack stack =
        FoamStack.of(new FoamLayer(20, Foam.memory(60, 60, 2)), new FoamLayer(60, FoamTest.FIRM));
    assertThat(stack.rigidSinkMm()).isCloseTo(16, within(1e-12));
    assertThat(stack.compress(1e-6).layers().get(0).strain()).isEqualTo(0.8);
    assertThat(stack.compress(0).sinkMm()).isZero();
    assertThat(stack.springySinkMm(5000) + 16).isCloseTo(stack.compress(5).sinkMm(), within(1e-9));
    StackCurve curve = new StackCurve(stack.layers());
    assertThat(curve.limitMm()).isCloseTo(60 * FoamTest.FIRM.lockStrain(), within(1e-9));
    assertThat(curve.pressurePa(stack.springySinkMm(5000))).isCloseTo(5000, within(0.05));
    FoamStack dead = FoamStack.of(new FoamLayer(20, Foam.memory(60, 60, 2)));
    assertThat(new StackCurve(dead.layers()).limitMm()).isZero();
    assertThat(new StackCurve(dead.layers()).pressurePa(0)).isZero();
  }

  @Test
  void theCurveEndsWhereAllIsSolid() {
    StackCurve curve = new StackCurve(TWO.layers());
    double limit =
        25 * FoamTest.SOFT_HR.lockStrain()
            + 30 * FoamTest.MEDIUM_HR.lockStrain()
            + 40 * FoamTest.FIRM.lockStrain();
    assertThat(curve.limitMm()).isCloseTo(limit, within(1e-9));
    assertThat(curve.pressurePa(-1)).isZero();
    assertThat(curve.pressurePa(0)).isZero();
    assertThat(curve.pressurePa(Double.NaN)).isZero();
    assertThat(curve.pressurePa(limit)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(curve.pressurePa(limit + 1)).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(curve.pressurePa(limit - 1e-3)).isBetween(1e6, 1e9);
    double[] out = new double[2];
    curve.read(-5, out);
    assertThat(out[0]).isZero();
    // the slope at nothing is that of the layers in series
    double compliance =
        25 / FoamTest.SOFT_HR.slopePa(0)
            + 30 / FoamTest.MEDIUM_HR.slopePa(0)
            + 40 / FoamTest.FIRM.slopePa(0);
    assertThat(out[1]).isCloseTo(1 / compliance, within(1e-9 / compliance));
    curve.read(limit, out);
    assertThat(out[0]).isEqualTo(Double.POSITIVE_INFINITY);
    assertThat(out[1]).isEqualTo(Double.POSITIVE_INFINITY);
  }

  /** Near lock-up a stack gives as its gas terms do: c = limit − Σ h B εD / p. */
  @Test
  void nearLockUpTheCurveFollowsItsGasTerms() {
    double tail =
        25 * FoamTest.SOFT_HR.bPa() * FoamTest.SOFT_HR.lockStrain()
            + 30 * FoamTest.MEDIUM_HR.bPa() * FoamTest.MEDIUM_HR.lockStrain()
            + 40 * FoamTest.FIRM.bPa() * FoamTest.FIRM.lockStrain();
    StackCurve curve = new StackCurve(TWO.layers());
    for (double left : new double[] {1e-2, 1e-3, 1e-4}) {
      double p = tail / left;
      assertThat(curve.pressurePa(curve.limitMm() - left)).isCloseTo(p, within(2e-2 * p));
      double[] out = new double[2];
      curve.read(curve.limitMm() - left, out);
      assertThat(out[1]).isCloseTo(tail / left / left, within(4e-2 * tail / left / left));
    }
  }

  @Test
  void stacksOfTheSameLayersAreEqual() {
    FoamStack again =
        FoamStack.of(
            new FoamLayer(25, FoamTest.SOFT_HR),
            new FoamLayer(30, FoamTest.MEDIUM_HR),
            new FoamLayer(40, FoamTest.FIRM));
    assertThat(again).isEqualTo(TWO).hasSameHashCodeAs(TWO);
    assertThat(again.curve()).isSameAs(TWO.curve());
    assertThat(ONE).isNotEqualTo(TWO);
  }
}
