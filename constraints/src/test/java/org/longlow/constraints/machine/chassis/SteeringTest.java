package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.geom.PointMm;

class SteeringTest {

  // Worked apart in double precision and checked by intersecting the axis with the ground.
  @ParameterizedTest
  @CsvSource({
    "299.9, 24, 30, 100.684994368849, 91.980319258432, 37.411766284215",
    "299.9, 27, 35, 113.525263986177, 101.151750871890, 45.921933927860",
    "320.2, 32, 45, 147.020138330072, 124.680148407472, 66.070412508574",
    "299.9, 45, 100, 158.478643762690, 112.061323677846, 79.239321881345",
    "254.0, 20, 0, 92.448439503615, 86.873116404720, 29.712355723890"
  })
  void trailAndFlopMatchWorkedFigures(
      double r, double deg, double o, double ground, double normal, double flop) {
    Steering s = new Steering(r, Math.toRadians(deg), o);
    assertThat(s.groundTrailMm()).isCloseTo(ground, within(1e-9));
    assertThat(s.normalTrailMm()).isCloseTo(normal, within(1e-9));
    assertThat(s.flopMm()).isCloseTo(flop, within(1e-9));
  }

  private static Steering pitched(double noseDownDeg) {
    return new Steering(299.9, Math.toRadians(27 - noseDownDeg), 35);
  }

  @Test
  void noseDownPitchTakesTrailAway() {
    // Worked figures for R 299.9, rake 27 deg, offset 35.
    Steering dived = pitched(2);
    assertThat(dived.groundTrailMm()).isCloseTo(101.227439516997, within(1e-9));
    assertThat(dived.normalTrailMm()).isCloseTo(91.743216696036, within(1e-9));
    assertThat(dived.flopMm()).isCloseTo(38.772358766579, within(1e-9));
    assertThat(pitched(-2).groundTrailMm()).isCloseTo(126.219892155119, within(1e-9));
  }

  // Rake 20 deg, axis point (1310, 750), R 300, link 130 mm; worked apart, 1e-9.
  @ParameterizedTest
  @CsvSource({
    "1370, 310, -10, 1498.025007892, 287.425736903, 18.475996675837, 89.529325293096, 84.130046321864",
    "1370, 310, -5, 1499.505310752, 298.669753443, 23.712706498625, 83.956535098779, 78.893336499076",
    "1370, 310, 0, 1500, 310, 28.052734886028, 79.337973356990, 74.553308111672",
    "1370, 310, 10, 1498.025007892, 332.574263097, 33.917702075447, 73.096605637710, 68.688340922253",
    "1620, 360, 170, 1491.974992108, 382.574263097, 45.333554054644, 60.948109707573, 57.272488943057",
    "1620, 360, 185, 1490.494689248, 348.669753443, 32.346499129042, 74.768644889323, 70.259543868659",
    "1620, 360, 195, 1494.429642582, 326.353524137, 28.411545794694, 78.956134763466, 74.194497203007",
    "1620, 360, 205, 1502.179987685, 305.059625974, 28.411545794694, 78.956134763466, 74.194497203007"
  })
  void linkFrontEndsMatchWorkedFigures(
      double px, double pz, double deg, double ax, double az, double o, double a, double an) {
    PointMm axle = new PointMm(px, pz).plus(PointMm.unit(Math.toRadians(deg)).times(130));
    assertThat(axle.x()).isCloseTo(ax, within(1e-9));
    assertThat(axle.z()).isCloseTo(az, within(1e-9));
    Steering s = Steering.of(300, Math.toRadians(20), axle, new PointMm(1310, 750));
    assertThat(s.offsetMm()).isCloseTo(o, within(1e-9));
    assertThat(s.groundTrailMm()).isCloseTo(a, within(1e-9));
    assertThat(s.normalTrailMm()).isCloseTo(an, within(1e-9));
  }

  @Test
  void groundTrailIsWhereTheAxisMeetsTheGround() {
    SplittableRandom random = new SplittableRandom(41);
    for (int i = 0; i < 500; i++) {
      double rake = Math.toRadians(random.nextDouble(-10, 50));
      PointMm axle = new PointMm(random.nextDouble(1200, 2000), random.nextDouble(200, 380));
      PointMm axis = new PointMm(random.nextDouble(1000, 1500), random.nextDouble(600, 1000));
      Steering s = Steering.of(axle.z(), rake, axle, axis);
      double ground = axis.x() + axis.z() * Math.tan(rake);
      assertThat(s.groundTrailMm()).isCloseTo(ground - axle.x(), within(1e-9));
      // Any point along the axis gives the same offset.
      PointMm along = axis.plus(new PointMm(-Math.sin(rake), Math.cos(rake)).times(123));
      assertThat(Steering.offsetMm(axle, along, rake)).isCloseTo(s.offsetMm(), within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "NaN, 0.4, 30",
    "-1, 0.4, 30",
    "0, 0.4, 30",
    "300, NaN, 30",
    "300, 1.6, 30",
    "300, 0.4, Infinity"
  })
  void nonsenseIsRefused(double r, double rake, double o) {
    assertThatThrownBy(() -> new Steering(r, rake, o))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("allowed is");
  }
}
