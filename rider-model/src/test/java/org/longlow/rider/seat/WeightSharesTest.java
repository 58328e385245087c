package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;

/** Masses and centres of de Leva 1996, Table 4, put together by hand. */
class WeightSharesTest {

  /**
   * Masses of head, trunk, upper arm, forearm, hand, thigh, shank, foot in per cent of the body;
   * centres of head from the vertex and of trunk from the cervicale in per cent of their lengths.
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "MALE, 6.94, 43.46, 2.71, 1.62, 0.61, 14.16, 4.33, 1.37, 50.02, 51.38",
    "FEMALE, 6.68, 42.57, 2.55, 1.38, 0.56, 14.78, 4.81, 1.29, 48.41, 49.64"
  })
  void massesAndCentresAreThoseOfTheTable(
      Sex sex,
      double head,
      double trunk,
      double upperArm,
      double forearm,
      double hand,
      double thigh,
      double shank,
      double foot,
      double headCentre,
      double trunkCentre) {
    Body body = Body.of(sex, 1700, 70, Gear.NONE);
    WeightShares shares = WeightShares.of(body, 0.07);
    // the women of the table add up to 99.99 %
    assertThat(shares.head()).isCloseTo(head / 100, within(2e-5));
    assertThat(shares.trunk()).isCloseTo(trunk / 100, within(6e-5));
    assertThat(shares.arms()).isCloseTo(2 * (upperArm + forearm + hand) / 100, within(2e-5));
    assertThat(shares.legs()).isCloseTo(2 * (thigh + shank + foot) / 100, within(6e-5));
    assertThat(shares.head() + shares.trunk() + shares.arms() + shares.legs())
        .isCloseTo(1, within(1e-12));
    assertThat(shares.feet()).isEqualTo(0.07);
    double neck = body.hipToNeckMm();
    double vertex = body.head().vertex().length();
    assertThat(shares.headHeight() * body.hipToShoulderMm())
        .isCloseTo(neck + vertex - headCentre / 100 * vertex, within(1e-9));
    assertThat(shares.trunkHeight() * body.hipToShoulderMm())
        .isCloseTo(neck - trunkCentre / 100 * neck, within(1e-9));
  }
}
