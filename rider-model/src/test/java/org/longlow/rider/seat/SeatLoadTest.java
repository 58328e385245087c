package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures worked with another program (Python, double precision) from the same static model. */
class SeatLoadTest {

  private static SeatLoad.Shares shares(double kg, double back, double pan, boolean head) {
    return SeatLoad.of(
        SeatLoad.Input.of(kg, Math.toRadians(back), Math.toRadians(pan), 0.6, head, 0.03));
  }

  @Test
  void theWorkedRiderMatchesToTheLastPrintedDigit() {
    SeatLoad.Shares s = shares(80, 40, 20, true);
    // Printed to seven decimals.
    assertThat(s.panVerticalN()).isCloseTo(519.1525042, within(6e-8));
    assertThat(s.backN()).isCloseTo(245.1593433, within(6e-8));
    assertThat(s.headRestN()).isCloseTo(40.8472834, within(6e-8));
    assertThat(s.pegsN()).isCloseTo(58.0020198, within(6e-8));
    assertThat(s.handsN()).isCloseTo(23.5359600, within(6e-8));
    assertThat(s.forwardN()).isCloseTo(219.0937871, within(6e-8));
    assertThat(s.panNormalN()).isCloseTo(562.7782658, within(6e-8));
    assertThat(s.panShearN()).isCloseTo(28.3202011, within(6e-8));
    assertThat(Math.toDegrees(s.noShearPanRad())).isCloseTo(22.8808156, within(6e-8));
    assertThat(s.frictionNeeded()).isCloseTo(0.0503221, within(6e-8));
    assertThat(s.held()).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "10, 87.6, 11.7, 0.0, 0.116, 7.5, 0.044, -0.078, -0.221",
    "20, 81.7, 23.1, 0.0, 0.217, 14.9, 0.175, 0.051, -0.089",
    "25, 79.5, 20.5, 3.4, 0.217, 15.3, 0.181, 0.057, -0.082",
    "30, 75.4, 24.3, 4.0, 0.246, 18.0, 0.232, 0.106, -0.034",
    "35, 70.9, 27.9, 4.6, 0.266, 20.6, 0.279, 0.151, 0.010",
    "40, 66.2, 31.2, 5.2, 0.279, 22.9, 0.323, 0.192, 0.050",
    "45, 61.2, 34.4, 5.7, 0.284, 24.8, 0.361, 0.228, 0.085",
    "50, 56.3, 37.2, 6.2, 0.279, 26.4, 0.391, 0.256, 0.112",
    "60, 47.1, 42.1, 7.0, 0.246, 27.6, 0.415, 0.278, 0.133"
  })
  void sharesMatchTheTable(
      double back,
      double pan,
      double backShare,
      double head,
      double x,
      double phi,
      double mu5,
      double mu12,
      double mu20) {
    SeatLoad.Shares s = shares(80, back, 5, back >= 25);
    double percent = 100 / (80 * SeatLoad.GRAVITY);
    assertThat(s.panVerticalN() * percent).isCloseTo(pan, within(0.0501));
    assertThat(s.backN() * percent).isCloseTo(backShare, within(0.0501));
    assertThat(s.headRestN() * percent).isCloseTo(head, within(0.0501));
    assertThat(s.forwardN() * percent / 100).isCloseTo(x, within(5.1e-4));
    assertThat(Math.toDegrees(s.noShearPanRad())).isCloseTo(phi, within(0.0501));
    assertThat(s.frictionNeeded()).isCloseTo(mu5, within(5.1e-4));
    assertThat(shares(80, back, 12, back >= 25).frictionNeeded()).isCloseTo(mu12, within(5.1e-4));
    assertThat(shares(80, back, 20, back >= 25).frictionNeeded()).isCloseTo(mu20, within(5.1e-4));
  }

  /** Pan and back of chairs with little shear stand at 90 to 95 degrees: worked angles. */
  @ParameterizedTest
  @CsvSource({"5, 91.2", "10, 92.4", "15, 93.6", "20, 94.9"})
  void aPanWithoutShearStandsToItsBackAsWorked(double back, double corner) {
    SeatLoad.Shares s = SeatLoad.of(SeatLoad.Input.of(80, Math.toRadians(back), 0, 0.60, false, 0));
    assertThat(90 + back - Math.toDegrees(s.noShearPanRad())).isCloseTo(corner, within(0.0501));
  }

  /** Pans without shear for backs that bear at 0.75 to 0.50 of the trunk: worked to a degree. */
  @ParameterizedTest
  @CsvSource({"20, 10, 15", "40, 18, 28", "60, 21, 36"})
  void whereTheBackBearsMovesThePanWithoutShear(double back, double high, double low) {
    for (double[] at : new double[][] {{0.75, high}, {0.50, low}}) {
      SeatLoad.Shares s =
          SeatLoad.of(SeatLoad.Input.of(80, Math.toRadians(back), 0, at[0], true, 0.03));
      assertThat(Math.toDegrees(s.noShearPanRad())).isCloseTo(at[1], within(1.0));
    }
  }

  @Test
  void verticalForcesAddUpToTheWeight() {
    for (double back = 0; back < 80; back += 7) {
      SeatLoad.Shares s = shares(93, back, 11, true);
      double sin = Math.sin(Math.toRadians(back));
      double up = s.panVerticalN() + s.pegsN() + s.handsN() + s.backN() * sin + s.headRestN() * sin;
      assertThat(up).isCloseTo(93 * SeatLoad.GRAVITY, within(1e-9));
    }
  }

  @Test
  void brakingPushesForwardAndBracingHoldsBack() {
    double back = Math.toRadians(30);
    double pan = Math.toRadians(12);
    SeatLoad.Shares still = shares(80, 30, 12, true);
    SeatLoad.Shares braking =
        SeatLoad.of(
            new SeatLoad.Input(80, WeightShares.WORKED, back, pan, 0.6, true, back, 0.03, 0.5, 0));
    SeatLoad.Shares braced =
        SeatLoad.of(
            new SeatLoad.Input(
                80, WeightShares.WORKED, back, pan, 0.6, true, back, 0.03, 0.5, 392.266));
    assertThat(braking.frictionNeeded()).isGreaterThan(SeatLoad.DESIGN_FRICTION);
    assertThat(braking.forwardN() - still.forwardN()).isCloseTo(392.266, within(1e-9));
    assertThat(braced.frictionNeeded()).isCloseTo(still.frictionNeeded(), within(1e-12));
  }

  @Test
  void refusesNonsense() {
    assertThatThrownBy(() -> shares(Double.NaN, 20, 10, true)).hasMessageContaining("massKg");
    assertThatThrownBy(() -> shares(80, 90, 10, true)).hasMessageContaining("backDeg");
    assertThatThrownBy(() -> shares(80, 20, -80, true)).hasMessageContaining("panDeg");
    assertThatThrownBy(() -> SeatLoad.Input.of(80, 0.1, 0.1, 0.6, true, 0.2))
        .hasMessageContaining("handsShare");
  }

  private static SeatLoad.Shares sharesOf(double vertical, double normal, double friction) {
    return new SeatLoad.Shares(0, 0, 0, 0, 0, vertical, normal, friction * normal, friction, 0, 0);
  }

  @Test
  void designFrictionHoldsBothWaysAndAPanCarriesWhatPressesOnIt() {
    assertThat(sharesOf(1, 1, 0.2999).held()).isTrue();
    assertThat(sharesOf(1, 1, 0.3).held()).isFalse();
    assertThat(sharesOf(1, 1, -0.2999).held()).isTrue();
    assertThat(sharesOf(1, 1, -0.3).held()).isFalse();
    assertThat(sharesOf(1, 1, 0).carried()).isTrue();
    assertThat(sharesOf(0, 1, 0).carried()).isFalse();
    assertThat(sharesOf(1, 0, 0).carried()).isFalse();
    assertThat(sharesOf(-1, 1, 0).carried()).isFalse();
    assertThat(sharesOf(1, -1, 0).carried()).isFalse();
  }

  /** Braced so hard that nothing presses on a steep pan, no friction would do. */
  @Test
  void withoutWeightOnThePanNoFrictionIsEnough() {
    SeatLoad.Shares s =
        SeatLoad.of(
            new SeatLoad.Input(
                80,
                WeightShares.WORKED,
                Math.toRadians(30),
                Math.toRadians(50),
                0.6,
                true,
                Math.toRadians(30),
                0.03,
                0,
                2000));
    assertThat(s.panNormalN()).isNegative();
    assertThat(s.frictionNeeded()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(s.carried()).isFalse();
    assertThat(s.held()).isFalse();
  }

  /** Without a rest the head hangs on the back: by levers about the hip. */
  @Test
  void aFreeHeadLoadsTheBack() {
    for (double deg : new double[] {10, 25, 40}) {
      SeatLoad.Shares with = shares(80, deg, 12, true);
      SeatLoad.Shares without = shares(80, deg, 12, false);
      double head = 0.081 * 80 * SeatLoad.GRAVITY * 1.41 * Math.sin(Math.toRadians(deg)) / 0.6;
      assertThat(without.headBracketN()).isCloseTo(head, within(1e-9));
      assertThat(with.headBracketN()).isZero();
      assertThat(without.backN() - with.backN()).isCloseTo(head, within(1e-9));
      assertThat(without.headRestN()).isZero();
    }
  }

  /** A rest that leans otherwise than the back pushes in its own direction. */
  @Test
  void aHeadRestPushesSquareToItself() {
    double weight = 80 * SeatLoad.GRAVITY;
    SeatLoad.Shares steep = leaning(10);
    SeatLoad.Shares flat = leaning(50);
    for (int deg : new int[] {10, 50}) {
      double n = 0.081 * weight * Math.sin(Math.toRadians(deg));
      SeatLoad.Shares s = deg == 10 ? steep : flat;
      assertThat(s.headRestN()).isCloseTo(n, within(1e-9));
      assertThat(s.forwardN() - s.backN() * Math.cos(Math.toRadians(30)))
          .isCloseTo(n * Math.cos(Math.toRadians(deg)), within(1e-9));
    }
    assertThat(steep.backN()).isCloseTo(flat.backN(), within(1e-12));
  }

  private static SeatLoad.Shares leaning(double headDeg) {
    return SeatLoad.of(
        new SeatLoad.Input(
            80,
            WeightShares.WORKED,
            Math.toRadians(30),
            Math.toRadians(12),
            0.6,
            true,
            Math.toRadians(headDeg),
            0.03,
            0,
            0));
  }

  private static SeatLoad.Input input(
      double kg,
      double back,
      double pan,
      double centre,
      double head,
      double hands,
      double g,
      double brace) {
    return new SeatLoad.Input(
        kg,
        WeightShares.WORKED,
        Math.toRadians(back),
        Math.toRadians(pan),
        centre,
        true,
        Math.toRadians(head),
        hands,
        g,
        brace);
  }

  @Test
  void eachFigureIsTakenUpToItsEndsAndNoFurther() {
    input(1, 0, -59.999, 0.3, 0, 0, 0, 0);
    input(500, 89.999, 59.999, 1, 89.999, 0.1, 2, 5000);
    refused("massKg", () -> input(0.99, 20, 10, 0.6, 20, 0, 0, 0));
    refused("massKg", () -> input(500.1, 20, 10, 0.6, 20, 0, 0, 0));
    refused("backDeg", () -> input(80, -0.1, 10, 0.6, 20, 0, 0, 0));
    refused("backDeg", () -> input(80, 90.0001, 10, 0.6, 20, 0, 0, 0));
    refused("panDeg", () -> input(80, 20, -60.0001, 0.6, 20, 0, 0, 0));
    refused("panDeg", () -> input(80, 20, 60.0001, 0.6, 20, 0, 0, 0));
    refused("backCentreShare", () -> input(80, 20, 10, 0.299, 20, 0, 0, 0));
    refused("backCentreShare", () -> input(80, 20, 10, 1.001, 20, 0, 0, 0));
    refused("headDeg", () -> input(80, 20, 10, 0.6, -0.1, 0, 0, 0));
    refused("headDeg", () -> input(80, 20, 10, 0.6, 90.0001, 0, 0, 0));
    refused("handsShare", () -> input(80, 20, 10, 0.6, 20, -0.01, 0, 0));
    refused("handsShare", () -> input(80, 20, 10, 0.6, 20, 0.101, 0, 0));
    refused("brakingG", () -> input(80, 20, 10, 0.6, 20, 0, -0.1, 0));
    refused("brakingG", () -> input(80, 20, 10, 0.6, 20, 0, 2.1, 0));
    refused("bracingN", () -> input(80, 20, 10, 0.6, 20, 0, 0, -1));
    refused("bracingN", () -> input(80, 20, 10, 0.6, 20, 0, 0, 5001));
  }

  private static void refused(
      String name, org.assertj.core.api.ThrowableAssert.ThrowingCallable c) {
    assertThatThrownBy(c).hasMessageContaining(name + " must be ");
  }
}
