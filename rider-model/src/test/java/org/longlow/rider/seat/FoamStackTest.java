package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
    assertThat(stack.warnings()).hasSize(2).allMatch(w -> w.contains("memory foam"));
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
      double before = 0;
      for (int k = 1; k < 300; k++) {
        double kPa = 0.02 * Math.pow(1.035, k);
        Compression exact = stack.compress(kPa);
        double p = stack.curve().pressurePa(exact.sinkMm());
        // Cubic Hermite between 192 knots; seats see less than 50 kPa.
        double share = kPa < 50 ? 1e-5 : 5e-5;
        assertThat(p).isCloseTo(kPa * 1000, within(share * kPa * 1000));
        assertThat(p).isGreaterThan(before);
        before = p;
        double[] reading = new double[2];
        stack.curve().read(exact.sinkMm(), reading);
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
}
