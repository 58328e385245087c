package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.seat.DiscTest.Press;

/** Foam from other figures of data sheets, and from a disc on a bathroom scale. */
class FoamSheetsTest {

  private static final double G = 9.80665;

  /** A disc of 203.2 mm over a slab: stress by its area and the skirt, written out anew. */
  private static double discN(double a, double b, double lock, double depth, double thick) {
    double e = depth / thick;
    double stress = a * (1 - Math.exp(-e / 0.1)) + b * e / (lock - e);
    return stress * 32_429.27865e-6 * (1 + 0.9 * thick / 203.2);
  }

  // --- other figures

  @ParameterizedTest
  @CsvSource({"35, 3.0, 1.9", "45, 4.5, 2.9", "30, 1.5, 2.0"})
  void cv40IsWhatIsLeftOfItWhenHeldAndTheFactorHolds(double rho, double cv40, double sf) {
    Foam foam = FoamSheets.openCellByCv40(rho, cv40, sf);
    assertThat(foam.stressPa(0.40)).isCloseTo(870 * cv40, within(1e-9));
    assertThat(foam.stressPa(0.65) / foam.stressPa(0.25)).isCloseTo(sf, within(1e-12));
    assertThat(FoamSheets.cv40KPa(foam)).isCloseTo(cv40, within(1e-12));
    // a rule of the trade: IFD40 in N is some 38 to 40 times CV40 in kPa (from memory, to a tenth)
    assertThat(FoamSheets.indentN(foam.stressPa(0.40), 100) / cv40).isBetween(36.0, 42.0);
    assertThat(FoamSheets.ifd25N(Foam.openCell(rho, 123, sf))).isCloseTo(123, within(1e-9));
  }

  @Test
  void aThinSlabIndentsLessAtTheSameStrain() {
    // 0.846 and 0.923, the worked ratios of k(50) and k(75) to k(100)
    assertThat(FoamSheets.indentN(1000, 50) / FoamSheets.indentN(1000, 100))
        .isCloseTo(0.846, within(6e-4));
    assertThat(FoamSheets.indentN(1000, 75) / FoamSheets.indentN(1000, 100))
        .isCloseTo(0.923, within(6e-4));
    assertThat(FoamSheets.indentN(1e6, 100) / 32_429.27865).isCloseTo(1.442913, within(1e-6));
  }

  /** Middles of the grades of D1056, psi by 6.894757 kPa; the softest is less than its gas. */
  @ParameterizedTest
  @CsvSource({
    "150, 3.5, true",
    "180, 7, false",
    "210, 11, false",
    "250, 15, false",
    "300, 21, false"
  })
  void closedCellsCarryTheStressOfTheirGrade(double rho, double psi, boolean open) {
    double kPa = psi * 6.894757;
    Foam foam = FoamSheets.closedCellByStress25(rho, kPa, 1230);
    assertThat(foam.stressPa(0.25) / 1000).isCloseTo(kPa, within(1e-9));
    assertThat(foam.bPa() < 101_325).isEqualTo(open);
    assertThat(foam.aPa() > 0).isEqualTo(!open);
  }

  @Test
  void nonsenseIsRefusedByName() {
    assertThatThrownBy(() -> FoamSheets.openCellByCv40(35, 0, 2)).hasMessageContaining("cv40KPa");
    assertThatThrownBy(() -> FoamSheets.openCellByCv40(35, Double.NaN, 2))
        .hasMessageContaining("cv40KPa");
    assertThatThrownBy(() -> FoamSheets.closedCellByStress25(150, 1001, 1230))
        .hasMessageContaining("stress25KPa");
    assertThatThrownBy(() -> FoamSheets.closedCellByStress25(1000, 50, 1230))
        .hasMessageContaining("solid at");
  }

  // --- uncertainty, example 2 of the worked stacks at 6.2 kPa

  private static double sinkMm(double ifdShare, double pressure) {
    return FoamStack.of(
            new FoamLayer(25, Foam.openCell(35, 130 * ifdShare, 2.4)),
            new FoamLayer(30, Foam.openCell(45, 170 * ifdShare, 2.5)),
            new FoamLayer(40, Foam.openCell(48, 245 * ifdShare, 2.76)))
        .compress(pressure)
        .sinkMm();
  }

  /** Printed to 0.1 mm: edge factors 1.2 and 1.6, IFD a sixth off, foam beside the body. */
  @Test
  void whatIsUncertainMovesTheSinkAsWorked() {
    double k = 1.442913;
    assertThat(sinkMm(k / 1.2, 6.2)).isCloseTo(36.5, within(0.051));
    assertThat(sinkMm(k / 1.6, 6.2)).isCloseTo(48.1, within(0.051));
    assertThat(sinkMm(0.85, 6.2)).isCloseTo(50.3, within(0.051));
    assertThat(sinkMm(1.15, 6.2)).isCloseTo(38.4, within(0.051));
    // the factor is printed to four decimals, and the sink moves by some 40 mm for each 1 of it
    assertThat(sinkMm(1, 6.2 / 1.1125)).isCloseTo(39.7451626, within(0.003));
  }

  /** Another knee of the curve through the same anchors, printed to 0.1 mm. */
  @ParameterizedTest
  @CsvSource({"0.05, 44.7", "0.15, 43.4"})
  void anotherKneeMovesTheSinkALittle(double knee, double mm) {
    FoamStack stack =
        FoamStack.of(
            new FoamLayer(25, kneed(FoamTest.SOFT_HR, knee)),
            new FoamLayer(30, kneed(FoamTest.MEDIUM_HR, knee)),
            new FoamLayer(40, kneed(FoamTest.FIRM, knee)));
    assertThat(stack.compress(6.2).sinkMm()).isCloseTo(mm, within(0.051));
  }

  private static Foam kneed(Foam foam, double knee) {
    double f25 = 1 - Math.exp(-0.25 / knee);
    double f65 = 1 - Math.exp(-0.65 / knee);
    double g25 = 0.25 / (foam.lockStrain() - 0.25);
    double g65 = 0.65 / (foam.lockStrain() - 0.65);
    double det = f25 * g65 - f65 * g25;
    double s25 = foam.stressPa(0.25);
    double s65 = foam.stressPa(0.65);
    return new Foam(
        foam.kind(),
        (s25 * g65 - s65 * g25) / det,
        (f25 * s65 - f65 * s25) / det,
        knee,
        foam.lockStrain());
  }

  // --- the builder's own test

  private static List<Press> presses(double... depthAndLoad) {
    List<Press> all = new java.util.ArrayList<>();
    for (int i = 0; i < depthAndLoad.length; i += 2) {
      all.add(new Press(depthAndLoad[i], depthAndLoad[i + 1]));
    }
    return all;
  }

  @ParameterizedTest
  @ValueSource(doubles = {30, 50, 100})
  void pressesOfAFoamGiveThatFoam(double thick) {
    Foam foam = FoamTest.MEDIUM_HR;
    double[] at = new double[6];
    for (int i = 0; i < 3; i++) {
      at[2 * i] = thick * new double[] {0.65, 0.25, 0.45}[i];
      at[2 * i + 1] = discN(foam.aPa(), foam.bPa(), 0.9475, at[2 * i], thick);
    }
    DiscTest test = DiscTest.fit(45, thick, presses(at));
    assertThat(test.ifd25N()).isCloseTo(170, within(1e-6));
    assertThat(test.supportFactor()).isCloseTo(2.5, within(1e-9));
    assertThat(test.residualShare()).isLessThan(1e-9);
    assertThat(test.isRough()).isFalse();
    assertThat(test.loadN(at[0], thick)).isCloseTo(at[1], within(1e-6));
  }

  /** No foam near the one found lies nearer to what was read. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void noFoamNearByIsNearerToWhatWasRead(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] at = new double[8];
    for (int i = 0; i < 4; i++) {
      at[2 * i] = 12 + 7 * i;
      at[2 * i + 1] =
          discN(2800, 2800, 0.9475, at[2 * i], 50) * (1 + random.nextDouble(-0.06, 0.06));
    }
    List<Press> read = presses(at);
    DiscTest test = DiscTest.fit(45, 50, read);
    double least = misfit(test.foam().aPa(), test.foam().bPa(), read);
    assertThat(test.residualShare()).isCloseTo(Math.sqrt(least / 4), within(1e-9));
    for (double da : new double[] {-20, 0, 20}) {
      for (double db : new double[] {-20, 0, 20}) {
        assertThat(misfit(test.foam().aPa() + da, test.foam().bPa() + db, read))
            .isGreaterThanOrEqualTo(least);
      }
    }
  }

  private static double misfit(double a, double b, List<Press> read) {
    return read.stream()
        .mapToDouble(p -> discN(a, b, 0.9475, p.depthMm(), 50) / p.loadN() - 1)
        .map(x -> x * x)
        .sum();
  }

  @Test
  void whatCannotBeAFoamIsRefusedWithWhy() {
    refused(presses(12, 15 * G, 32, 30 * G), "number 3 to 50, got 2");
    refused(presses(12, 20 * G, 22, 19 * G, 32, 40 * G), "loads must rise with depth");
    refused(presses(12, 20 * G, 12, 22 * G, 32, 40 * G), "loads must rise with depth");
    refused(presses(12, 15 * G, 18, 18 * G, 24, 22 * G), "must reach from");
    refused(presses(18, 15 * G, 25, 18 * G, 34, 30 * G), "must reach from");
    refused(presses(12, 15 * G, 22, 20 * G, 49, 90 * G), "where this foam is solid");
    refused(presses(12, 1 * G, 22, 9 * G, 32, 90 * G), "rise faster");
    refused(presses(12, 30 * G, 22, 30.1 * G, 32, 30.2 * G), "rise slower");
    refused(presses(12, -5, 22, 20 * G, 32, 30 * G), "loadN");
    refused(presses(12, Double.NaN, 22, 20 * G, 32, 30 * G), "loadN");
    assertThatThrownBy(() -> DiscTest.fit(45, 10, presses(3, 10, 5, 20, 7, 40)))
        .hasMessageContaining("thicknessMm");
    assertThatThrownBy(() -> DiscTest.fit(4, 50, presses(12, 100, 22, 150, 32, 300)))
        .hasMessageContaining("densityKgM3");
    // at the ends of what is asked: 17.5 mm of 50 and 25 mm
    assertThat(DiscTest.fit(45, 50, presses(17.5, 17 * G, 21, 20 * G, 25, 24 * G)).ifd25N())
        .isPositive();
  }

  private static void refused(List<Press> presses, String why) {
    assertThatThrownBy(() -> DiscTest.fit(45, 50, presses)).hasMessageContaining(why);
  }

  @Test
  void roughReadingsSaySo() {
    DiscTest test =
        DiscTest.fit(45, 50, presses(12, 21 * G, 20, 15.2 * G + 6.5 * G, 26, 22 * G, 33, 52 * G));
    assertThat(test.residualShare()).isGreaterThan(DiscTest.ROUGH_RESIDUAL);
    assertThat(test.isRough()).isTrue();
  }

  // --- long rides and angles

  /** The line of a cover along a pressed circle, summed over many chords. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 5, 20, 45, 80})
  void aCoverMustGiveTheArcLessItsChord(double sink) {
    double r = 130;
    double sum = 0;
    int n = 200_000;
    // the buttock's rear end 110 mm back, the thigh's straight part 25 mm up: at 76.6 mm
    double front = Math.sqrt(r * r - 105.0 * 105.0);
    for (int i = 0; i < n; i++) {
      double a = -110 + (110 + front) * i / n;
      double b = -110 + (110 + front) * (i + 1) / n;
      sum += Math.hypot(b - a, deep(b, sink) - deep(a, sink)) - (b - a);
    }
    assertThat(LongRide.coverGiveMm(OnSeat.man(), sink, 500)).isCloseTo(sum, within(1e-3));
  }

  private static double deep(double s, double sink) {
    return Math.max(0, sink - (130 - Math.sqrt(130 * 130 - s * s)));
  }

  /** Resolved along and square to a pan at that angle, shear is 0.30 of the normal force. */
  @Test
  void atTheAnglesFoundFrictionJustHolds() {
    SeatOutcome.Seated man = OnSeat.seated(OnSeat.man(), SettleTest.seat(12, 36, 36));
    for (double g : new double[] {0.2, 0.5}) {
      SlideAngles angles = SlideAngles.of(man, Braced.of(OnSeat.man(), man, g), g);
      SeatLoad.Shares rest = man.load();
      double most = angles.mostPanRad();
      double shear = rest.forwardN() * Math.cos(most) - rest.panVerticalN() * Math.sin(most);
      double normal = rest.panVerticalN() * Math.cos(most) + rest.forwardN() * Math.sin(most);
      assertThat(shear / normal).isCloseTo(-0.30, within(1e-9));
      // the pan that SettleTest makes has a slope of 12 degrees
      double turn = angles.leastPanRad() - Math.toRadians(12);
      double f = Braced.of(OnSeat.man(), man, g).frictionNeeded();
      double leftN = Math.cos(turn) + f * Math.sin(turn);
      assertThat((f * Math.cos(turn) - Math.sin(turn)) / leftN).isCloseTo(0.30, within(1e-6));
      assertThat(Math.tan(angles.leastBackRad())).isCloseTo(g, within(1e-12));
      assertThat(angles.canBe()).isEqualTo(angles.leastPanRad() <= angles.mostPanRad());
    }
  }

  /** Sit bones: 10 to 30 kPa are aimed at (from memory), 546.2 N over 869.3 cm² are 6.284 kPa. */
  @Test
  void pressuresAreThoseThatWereMeasured() {
    assertThat(546.2 / 869.3 * 10).isCloseTo(6.284, within(1e-3));
    FoamContact c =
        FoamContact.press(
            FoamStack.of(new FoamLayer(60, FoamTest.MEDIUM_HR)),
            new Underside(130, 25, -110, 300, 0.28),
            546.2);
    // mean pressures measured on whole seats: rear half 7.1 to 8.1, front half 3.5 to 4.9
    assertThat(c.meanKPa()).isBetween(3.5, 8.1);
    assertThat(LongRide.SIT_BONES * c.peakKPa()).isBetween(10.0, LongRide.MOST_KPA);
  }

  /** Example 2 as a spring under the rider of the worked load: 17.66 kN/m, 57.4 kg, 2.79 Hz. */
  @Test
  void aStackIsAsStiffUnderItsRiderAsWorked() {
    double stiffness =
        FoamStack.of(
                new FoamLayer(25, FoamTest.SOFT_HR),
                new FoamLayer(30, FoamTest.MEDIUM_HR),
                new FoamLayer(40, FoamTest.FIRM))
            .compress(6.2)
            .stiffnessKPaPerMm();
    double nPerM = stiffness * 1e3 * 0.1134 * 1e3;
    assertThat(nPerM / 1000).isCloseTo(17.66, within(0.006));
    assertThat(Math.sqrt(nPerM / 57.4) / (2 * Math.PI)).isCloseTo(2.79, within(0.006));
  }
}
