package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Worked numbers computed with another program (Python, double precision) from the same formulas;
 * they are printed to 10 to 16 digits, hence tolerances of 1e-9.
 */
class FoamTest {

  static final Foam SOFT = Foam.openCell(28, 90, 1.9);
  static final Foam SOFT_HR = Foam.openCell(35, 130, 2.4);
  static final Foam MEDIUM_HR = Foam.openCell(45, 170, 2.5);
  static final Foam FIRM = Foam.openCell(48, 245, 2.76);

  @ParameterizedTest
  @CsvSource({
    "28, 90, 1.9, 0.9673333333, 1740.0420432064, 935.8867160012, 1923.379, 2368.022, 3654.421",
    "35, 130, 2.4, 0.9591666667, 2212.1497652466, 2120.8316277891, 2778.215, 3688.770, 6667.716",
    "45, 170, 2.5, 0.9475, 2841.8357845987, 2858.3166779263, 3633.050, 4878.054, 9082.625",
    "48, 245, 2.76, 0.944, 3815.1459697196, 4813.2686590434, 5235.866, 7284.437, 14450.990"
  })
  void openCellConstantsMatchTheWorkedTable(
      double rho,
      double ifd,
      double sf,
      double lock,
      double a,
      double b,
      double s25,
      double s40,
      double s65) {
    Foam foam = Foam.openCell(rho, ifd, sf);
    assertThat(foam.lockStrain()).isCloseTo(lock, within(5e-11));
    // A and B are printed to ten decimals of a Pa.
    assertThat(foam.aPa()).isCloseTo(a, within(1e-9));
    assertThat(foam.bPa()).isCloseTo(b, within(1e-9));
    // Stresses are printed to 0.001 Pa.
    assertThat(foam.stressPa(0.25)).isCloseTo(s25, within(5.1e-4));
    assertThat(foam.stressPa(0.40)).isCloseTo(s40, within(5.1e-4));
    // The last column is the support factor times the rounded 25 % stress.
    assertThat(foam.stressPa(0.65)).isCloseTo(s65, within(5.1e-4 * sf));
  }

  @ParameterizedTest
  @CsvSource({
    "30, 5, 16.0, 40.3, 76.4, 113.3, 0.034, 0.075, 0.128",
    "45, 8, 18.8, 44.1, 81.5, 120.2, 0.027, 0.060, 0.108",
    "70, 14, 24.4, 51.4, 91.2, 133.3, 0.018, 0.040, 0.076",
    "100, 25, 34.4, 64.3, 107.3, 154.1, 0.011, 0.024, 0.044"
  })
  void closedCellMatchesTheWorkedTable(
      double rho,
      double wall,
      double s10,
      double s25,
      double s40,
      double s50,
      double e6,
      double e12,
      double e20) {
    Foam foam = Foam.closedCell(rho, wall, 930);
    // Printed to 0.1 kPa and to 0.001 strain.
    assertThat(foam.stressPa(0.10) / 1000).isCloseTo(s10, within(0.0501));
    assertThat(foam.stressPa(0.25) / 1000).isCloseTo(s25, within(0.0501));
    assertThat(foam.stressPa(0.40) / 1000).isCloseTo(s40, within(0.0501));
    assertThat(foam.stressPa(0.50) / 1000).isCloseTo(s50, within(0.0501));
    assertThat(foam.strainAt(6200)).isCloseTo(e6, within(5.1e-4));
    assertThat(foam.strainAt(12_400)).isCloseTo(e12, within(5.1e-4));
    assertThat(foam.strainAt(20_000)).isCloseTo(e20, within(5.1e-4));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void stressRisesAndItsInverseReturns(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int n = 0; n < 200; n++) {
      Foam foam =
          random.nextBoolean()
              ? Foam.openCell(random.nextDouble(20, 60), random.nextDouble(40, 320), 2.2)
              : Foam.closedCell(random.nextDouble(25, 200), random.nextDouble(0, 40), 930);
      double before = 0;
      for (int i = 1; i <= 40; i++) {
        double strain = foam.lockStrain() * i / 41;
        double stress = foam.stressPa(strain);
        assertThat(stress).isGreaterThan(before);
        before = stress;
        // The inverse is found to the last digits of the strain.
        assertThat(foam.strainAt(stress)).isCloseTo(strain, within(1e-13));
        double h = 1e-6;
        double slope = (foam.stressPa(strain + h) - foam.stressPa(strain - h)) / (2 * h);
        assertThat(foam.slopePa(strain)).isCloseTo(slope, within(1e-4 * slope));
      }
    }
  }

  @Test
  void wornFoamIsSofter() {
    assertThat(FIRM.worn().stressPa(0.5)).isCloseTo(0.85 * FIRM.stressPa(0.5), within(1e-9));
  }

  @Test
  void refusesFiguresThatNoFoamHas() {
    assertThatThrownBy(() -> Foam.openCell(35, 130, 1.01)).hasMessageContaining("supportFactor");
    assertThatThrownBy(() -> Foam.openCell(35, 130, 9)).hasMessageContaining("supportFactor");
    assertThatThrownBy(() -> Foam.openCell(Double.NaN, 130, 2)).hasMessageContaining("densityKgM3");
    assertThatThrownBy(() -> Foam.openCell(35, -1, 2)).hasMessageContaining("ifd25N");
    assertThatThrownBy(() -> Foam.openCell(300, 130, 2.2)).hasMessageContaining("solid at");
    assertThatThrownBy(() -> Foam.closedCell(930, 5, 930)).hasMessageContaining("densityKgM3");
    assertThatThrownBy(() -> Foam.closedCell(30, -5, 930)).hasMessageContaining("wallStressKPa");
    assertThatThrownBy(() -> new FoamLayer(0, SOFT)).hasMessageContaining("thicknessMm");
    assertThatThrownBy(() -> new FoamLayer(Double.NaN, SOFT)).hasMessageContaining("thicknessMm");
    assertThatThrownBy(() -> FoamStack.of()).hasMessageContaining("layers");
    assertThatThrownBy(() -> SOFT.strainAt(Double.NaN)).hasMessageContaining("stress");
    assertThatThrownBy(() -> SOFT.stressPa(0.99)).hasMessageContaining("strain");
  }

  @Test
  void eachFigureIsTakenUpToItsEndsAndNoFurther() {
    // ends of ranges, of foams that the law has
    Foam.openCell(10, 130, 2.2);
    Foam.openCell(48, 20_000, 2.76);
    Foam.closedCell(10, 0, 500);
    Foam.closedCell(2499, 10_000, 2500);
    refused("densityKgM3", () -> Foam.openCell(9.99, 130, 2.2));
    refused("densityKgM3", () -> Foam.openCell(300.1, 130, 2.2));
    refused("ifd25N", () -> Foam.openCell(35, 0, 2.2));
    refused("ifd25N", () -> Foam.openCell(35, 20_001, 2.2));
    refused("supportFactor must be above 1 to 10", () -> Foam.openCell(35, 130, 1));
    refused("supportFactor must be above 1 to 10", () -> Foam.openCell(35, 130, 10.1));
    refused("polymerDensityKgM3", () -> Foam.closedCell(30, 5, 499));
    refused("polymerDensityKgM3", () -> Foam.closedCell(30, 5, 2501));
    refused("densityKgM3", () -> Foam.closedCell(9.99, 5, 930));
    refused("densityKgM3", () -> Foam.closedCell(930, 5, 930));
    refused("wallStressKPa", () -> Foam.closedCell(30, -0.01, 930));
    refused("wallStressKPa", () -> Foam.closedCell(30, 10_001, 930));
    refused("plateau A", () -> new Foam(Foam.Kind.OPEN_CELL, -1, 2000, 0.1, 0.9));
    refused("hardening B", () -> new Foam(Foam.Kind.OPEN_CELL, 2000, -1, 0.1, 0.9));
    refused("A + B", () -> new Foam(Foam.Kind.OPEN_CELL, 0, 0, 0.1, 0.9));
    refused("knee strain", () -> new Foam(Foam.Kind.OPEN_CELL, 1, 1, 0, 0.9));
    refused("lock-up strain", () -> new Foam(Foam.Kind.OPEN_CELL, 1, 1, 0.1, 0));
    refused("lock-up strain", () -> new Foam(Foam.Kind.OPEN_CELL, 1, 1, 0.1, 1));
    refused("kind", () -> new Foam(null, 1, 1, 0.1, 0.9));
    new FoamLayer(1000, SOFT);
    refused("thicknessMm", () -> new FoamLayer(1000.1, SOFT));
    refused("foam", () -> new FoamLayer(10, null));
    refused("strain", () -> SOFT.stressPa(-0.001));
    refused("strain", () -> SOFT.stressPa(SOFT.lockStrain()));
    refused("stress", () -> SOFT.strainAt(-1));
    refused("stress", () -> SOFT.strainAt(Double.POSITIVE_INFINITY));
    assertThat(SOFT.stressPa(0)).isZero();
    assertThat(SOFT.strainAt(0)).isZero();
  }

  private static void refused(
      String words, org.assertj.core.api.ThrowableAssert.ThrowingCallable c) {
    assertThatThrownBy(c).hasMessageContaining(words);
  }

  /**
   * The law's least support factor has no hardening, its greatest no plateau: (1 − e^−6.5) / (1 −
   * e^−2.5) and 0.65 (εD − 0.25) / (0.25 (εD − 0.65)).
   */
  @Test
  void aSupportFactorOutsideTheLawIsRefusedWithWhatIsAllowed() {
    double lock = 1 - 1.4 * 35 / 1200;
    double least = (1 - Math.exp(-6.5)) / (1 - Math.exp(-2.5));
    double most = 0.65 * (lock - 0.25) / (0.25 * (lock - 0.65));
    assertThat(Foam.openCell(35, 130, least + 1e-6).bPa()).isBetween(0.0, 1.0);
    assertThat(Foam.openCell(35, 130, most - 1e-6).aPa()).isBetween(0.0, 1.0);
    String allowed = String.format(java.util.Locale.ROOT, "allowed %.3f to %.3f", least, most);
    refused(allowed, () -> Foam.openCell(35, 130, least - 1e-6));
    refused(allowed, () -> Foam.openCell(35, 130, most + 1e-6));
    // solid at 65 % of strain from 300 kg/m³ on
    assertThat(Foam.openCell(299.9, 130, 8).lockStrain()).isCloseTo(0.6501166667, within(1e-9));
    refused("solid at 65 % strain", () -> Foam.openCell(300, 130, 2.2));
  }

  /** The indentor of eight inches on 100 mm carries 1 + 0.9 · 100 / 203.2 of what is under it. */
  @Test
  void theGaugePointIsTheForceOnTheIndentor() {
    double area = Math.PI / 4 * 0.2032 * 0.2032;
    double factor = 1 + 0.9 * 100 / 203.2;
    for (double n : new double[] {60, 130, 245}) {
      Foam foam = Foam.openCell(40, n, 2.4);
      assertThat(foam.stressPa(0.25) * area * factor).isCloseTo(n, within(1e-9));
      assertThat(foam.stressPa(0.65) * area * factor).isCloseTo(2.4 * n, within(1e-9));
      Foam memory = Foam.memory(40, n, 2.4);
      assertThat(memory.kind()).isEqualTo(Foam.Kind.MEMORY);
      assertThat(memory.stressPa(0.25)).isEqualTo(foam.stressPa(0.25));
    }
  }

  @Test
  void theLawIsKnownAsFarAsFoamIsTested() {
    assertThat(SOFT.knownStrain()).isEqualTo(0.75);
    assertThat(Foam.memory(40, 60, 2.4).knownStrain()).isEqualTo(0.75);
    assertThat(Foam.closedCell(45, 8, 930).knownStrain()).isEqualTo(0.5);
  }

  /** Foams of one term only: their inverses are written down. */
  @Test
  void ofOneTermTheInverseIsPlain() {
    Foam plateau = new Foam(Foam.Kind.OPEN_CELL, 3000, 0, 0.1, 0.9);
    Foam gas = new Foam(Foam.Kind.CLOSED_CELL, 0, 100_000, 0.05, 0.95);
    for (double pa : new double[] {1, 500, 1500, 2900}) {
      assertThat(plateau.strainAt(pa)).isCloseTo(-0.1 * Math.log(1 - pa / 3000), within(1e-13));
      assertThat(gas.strainAt(pa)).isCloseTo(0.95 * pa / (pa + 100_000), within(1e-13));
    }
    // a plateau carries no more than itself: all of the strain there is
    assertThat(plateau.strainAt(3001)).isCloseTo(0.9, within(1e-12)).isLessThan(0.9);
  }

  /** Wherever the search begins it ends at the same strain. */
  @Test
  void theInverseDoesNotDependOnWhereItBegins() {
    for (double pa : new double[] {0.01, 10, 2000, 1e5, 1e8}) {
      double strain = FIRM.strainAt(pa);
      for (double guess : new double[] {-1, 1e-9, 0.3, 0.94, 2, Double.NaN}) {
        assertThat(FIRM.strainAt(pa, guess)).isCloseTo(strain, within(1e-13));
      }
    }
  }

  @Test
  void wornFoamIsTheSameFoamOfLess() {
    Foam worn = FIRM.worn();
    assertThat(worn.aPa()).isCloseTo(0.85 * FIRM.aPa(), within(1e-9));
    assertThat(worn.bPa()).isCloseTo(0.85 * FIRM.bPa(), within(1e-9));
    assertThat(worn.kneeStrain()).isEqualTo(FIRM.kneeStrain());
    assertThat(worn.lockStrain()).isEqualTo(FIRM.lockStrain());
    assertThat(worn.kind()).isEqualTo(FIRM.kind());
  }
}
