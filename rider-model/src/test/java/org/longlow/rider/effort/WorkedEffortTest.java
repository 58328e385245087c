package org.longlow.rider.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.Push;
import org.longlow.rider.seat.SeatLoad;

/**
 * Worked numbers of these models, from a page of references that worked them out apart from this
 * code; each to the digits printed there.
 */
class WorkedEffortTest {

  private static final double G = SeatLoad.GRAVITY;

  private static Push weight(double kg, PointMm at) {
    return new Push(at, new PointMm(0, -kg * G));
  }

  /** Head 4.6 kg at 155 mm, helmet 1.5 kg at 175 mm, neck line 30° behind the vertical. */
  @Test
  void aHeadHeldOffItsRest() {
    PointMm line = PointMm.unit(Math.toRadians(120));
    double nm =
        Push.aboutNm(
            PointMm.ORIGIN, List.of(weight(4.6, line.times(155)), weight(1.5, line.times(175))));
    assertThat(nm).isCloseTo(4.783194, within(5e-7));
    assertThat(Joint.NECK.against(nm, Math.PI)).isEqualTo(Strength.NECK_FLEXION);
    assertThat(nm / Strength.NECK_FLEXION.meanNm(Sex.MALE, 80)).isCloseTo(0.1594, within(5e-5));
    assertThat(nm / Strength.NECK_FLEXION.meanNm(Sex.FEMALE, 60)).isCloseTo(0.234, within(5e-4));
  }

  /** An arm of 0.05 of 80 kg, held level, its centre at 0.53 of 700 mm. */
  @Test
  void anArmHeldLevel() {
    double nm =
        Push.aboutNm(PointMm.ORIGIN, List.of(weight(0.05 * 80, new PointMm(0.53 * 700, 0))));
    assertThat(-nm).isCloseTo(14.553069, within(5e-7));
    Strength held = Joint.SHOULDER.against(nm, Math.PI);
    assertThat(held).isEqualTo(Strength.SHOULDER_FLEXION);
    assertThat(-nm / held.meanNm(Sex.MALE, 80)).isCloseTo(0.21, within(0.005));
    assertThat(-nm / held.meanNm(Sex.FEMALE, 80)).isCloseTo(0.42, within(0.005));
    assertThat(-nm / 0.700).isCloseTo(20.790, within(5e-4));
  }

  @ParameterizedTest
  @CsvSource({
    "ANKLE, 414.558, 450.1, 0.1051",
    "TRUNK, 348.955, 351.6, 0.1073",
    "GRIP, 233.092, 258.3, 0.0548",
    "ELBOW, 236.456, 292.7, 0.0840",
    "KNEE, 186.366, 177.0, 0.0621",
    "SHOULDER, 134.551, 144.4, 0.0498"
  })
  void muscleGroupsHoldThreeTenthsAndAnHour(
      Endurance group, double powerS, double compartmentsS, double hour) {
    assertThat(group.powerS(0.3)).isCloseTo(powerS, within(5e-4));
    assertThat(group.compartmentsS(0.3)).isCloseTo(compartmentsS, within(0.05));
    // shares are printed to four decimals
    assertThat(3600.0).isBetween(group.powerS(hour + 5e-5), group.powerS(hour - 5e-5));
    assertThat(group.leastS(0.3)).isEqualTo(Math.min(group.powerS(0.3), group.compartmentsS(0.3)));
  }

  @Test
  void aShoulderHoldsATenth() {
    assertThat(Endurance.SHOULDER.compartmentsS(0.1)).isCloseTo(1057.435713, within(5e-7));
    assertThat(Endurance.SHOULDER.powerS(0.1)).isCloseTo(1004.659, within(5e-4));
    double endless = 0.00168 / (0.0182 + 0.00168);
    assertThat(Endurance.SHOULDER.compartmentsS(endless * (1 - 1e-9))).isInfinite();
    assertThat(Endurance.SHOULDER.compartmentsS(endless * (1 + 1e-6))).isBetween(1e3, 1e5);
  }

  /** The compartments' rule run step by step: tired fibres until the rest are not enough. */
  @Test
  void compartmentsAreTheirOwnEquation() {
    double tired = 0;
    double t = 0;
    while (tired < 1 - 0.3) {
      tired += 1e-3 * (0.0182 * 0.3 - 0.00168 * tired);
      t += 1e-3;
    }
    assertThat(Endurance.SHOULDER.compartmentsS(0.3)).isCloseTo(t, within(0.05));
  }

  @ParameterizedTest
  @CsvSource({"UP, 5, 1.038826", "UP, 10, 0.988406", "ALONG, 1, 1.011017", "ALONG, 4, 0.511912"})
  void frequenciesAreFelt(Weighting way, double hz, double weight) {
    assertThat(way.at(hz)).isCloseTo(weight, within(5e-7));
  }

  @ParameterizedTest
  @CsvSource({"1, 1.943651", "2, 0.483442", "0, 1"})
  void aSeatPassesOn(double ratio, double transfer) {
    assertThat(Vibration.transfer(ratio, 0.3)).isCloseTo(transfer, within(5e-7));
  }

  @Test
  void seatsShakeByThemselves() {
    // 17.66 N/mm under 57.4 kg: 2.79 Hz pressed slowly, 3.4 to 3.9 Hz shaken
    Vibration v = Vibration.of(57.4, 17.66);
    assertThat(v.naturalHz() / Math.sqrt(Vibration.DYNAMIC)).isCloseTo(2.79, within(5e-3));
    assertThat(v.naturalHz()).isBetween(3.4, 3.95);
    assertThat(Vibration.transfer(v.isolatesHz() / v.naturalHz(), 0.7)).isCloseTo(1, within(1e-12));
    assertThat(v.peak()).isCloseTo(1.943651, within(5e-7));
  }

  /** A stiff seat follows the floor, a soft one lies still on it. */
  @Test
  void whatIsFeltGoesFromAllToNothing() {
    assertThat(new Vibration(1e4).felt()).isCloseTo(1, within(1e-4));
    assertThat(new Vibration(1e-3).felt()).isCloseTo(0, within(1e-3));
    assertThat(new Vibration(6).felt()).isGreaterThan(1);
    assertThat(new Vibration(3).felt()).isLessThan(0.75);
  }

  @Test
  void weakPeopleHaveThreeFifths() {
    assertThat(Strength.NECK_EXTENSION.weakNm(Sex.MALE, 70)).isCloseTo(30.6, within(1e-9));
    assertThat(Strength.KNEE_EXTENSION.meanNm(Sex.FEMALE, 50)).isCloseTo(120.5, within(1e-9));
    assertThat(Strength.KNEE_EXTENSION.read()).isTrue();
    assertThat(Strength.HIP_FLEXION.read()).isFalse();
  }
}
