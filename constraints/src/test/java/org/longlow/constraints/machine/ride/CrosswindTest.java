package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.machine.chassis.Steering;
import org.longlow.constraints.machine.ride.Crosswind.Leans;
import org.longlow.constraints.machine.ride.Crosswind.Steers;
import org.longlow.rider.geom.PointMm;

class CrosswindTest {

  private static final double TRAIL = new Steering(299.9, Math.toRadians(27), 35).groundTrailMm();
  private static final Crosswind WIND = new Crosswind(Math.toRadians(27), 1500, TRAIL);

  // Worked as a cross-product line distance, printed to 1e-12 mm and 1e-9 N m.
  @ParameterizedTest
  @CsvSource({
    "1650, 700, 350.292577574048, 21.017554654",
    "1450, 500, 81.293172788465, 4.877590367",
    "1400, 900, 218.339046474865, 13.100342788",
    "1500, 300, 35.045399049974, 2.102723943",
    "1300, 650, 15.740769121142, 0.944446147",
    "1200, 400, -186.857508232582, -11.211450494"
  })
  void armsMatchWorkedFigures(double x, double z, double arm, double moment) {
    PointMm p = new PointMm(x, z);
    assertThat(WIND.armMm(p)).isCloseTo(arm, within(1e-9));
    assertThat(WIND.momentNm(p, 60)).isCloseTo(moment, within(1e-8));
    assertThat(WIND.steers(p, 60)).isEqualTo(arm > 0 ? Steers.DOWNWIND : Steers.UPWIND);
    assertThat(WIND.leans(p, -60)).isEqualTo(arm > 0 ? Leans.INTO_WIND : Leans.WITH_WIND);
  }

  @Test
  void theAxleItselfHasTheOffsetAsItsArm() {
    assertThat(WIND.armMm(new PointMm(1500, 299.9))).isCloseTo(35, within(1e-9));
  }

  @Test
  void noForceOrNoArmIsNeutral() {
    assertThat(WIND.steers(new PointMm(1650, 700), 0)).isEqualTo(Steers.NEUTRAL);
    assertThat(WIND.leans(new PointMm(1500 + TRAIL, 0), 60)).isEqualTo(Leans.NEUTRAL);
  }

  @Test
  void windFiguresMatchTheWorkedExample() {
    assertThat(Crosswind.relativeWindMs(25, 10)).isCloseTo(26.925824035673, within(1e-9));
    assertThat(Math.toDegrees(Crosswind.yawRad(25, 10))).isCloseTo(21.801409486352, within(1e-9));
    assertThat(Crosswind.sideForceN(25, 10, 0.6)).isCloseTo(266.4375, within(1e-9));
    assertThat(Math.toDegrees(Crosswind.balanceLeanRad(266.4375, 650, 275, 500)))
        .isCloseTo(7.318749246792, within(1e-9));
  }

  // Benchmark bicycle, v 5 m/s, F 10 N at 0.9 m: hands-off steady answer; printed decimals.
  @ParameterizedTest
  @CsvSource({
    "0.5, 0, 0.037296333972, -5.858215, -2.189261",
    "0.5, -0.05, -0.012703666028, 25.17, 10.85",
    "0.5, 0.05, 0.087296333972, -36.88, -15.23",
    "0.2, 0, 0.014918533589, 8.026634, 3.646475"
  })
  void steadyAnswerMatchesTheBenchmark(
      double x, double arm, double total, double lean, double steer) {
    Crosswind bicycle = new Crosswind(Math.PI / 10, 1020, 80);
    double m = arm + bicycle.trailArmMm(1000 * x) / 1000;
    assertThat(m).isCloseTo(total, within(1e-11));
    List<Double> q = steadyRad(10 * 0.9, 10 * m);
    double printed = Math.abs(lean) > 9 ? 0.006 : 1e-5;
    assertThat(Math.toDegrees(q.get(0))).isCloseTo(lean, within(printed));
    assertThat(Math.toDegrees(q.get(1))).isCloseTo(steer, within(printed));
  }

  /** Lean and steer at 5 m/s that (g K0 + v² K2) times them carries: Cramer's rule. */
  private static List<Double> steadyRad(double leanNm, double steerNm) {
    WhippleModel model = WhippleBenchmark.model();
    double[] m = new double[4];
    for (int i = 0; i < 4; i++) {
      m[i] =
          model.gravity() * model.k0().get(i / 2).get(i % 2)
              + 25 * model.k2().get(i / 2).get(i % 2);
    }
    double det = m[0] * m[3] - m[1] * m[2];
    return List.of((m[3] * leanNm - m[1] * steerNm) / det, (m[0] * steerNm - m[2] * leanNm) / det);
  }

  @Test
  void theIdealArmRunsStraightLeaningIntoTheWind() {
    double ideal = Crosswind.idealArmMm(900, WhippleBenchmark.model());
    assertThat(ideal).isCloseTo(28.901360930, within(1e-8));
    List<Double> q = steadyRad(9, 10 * ideal / 1000);
    assertThat(Math.toDegrees(q.get(0))).isCloseTo(-0.649351, within(1e-5));
    assertThat(q.get(1)).isCloseTo(0, within(1e-12));
  }

  @Test
  void windFromEitherSideTellsTheSameStory() {
    SplittableRandom random = new SplittableRandom(9);
    for (int i = 0; i < 200; i++) {
      PointMm p = new PointMm(random.nextDouble(0, 2000), random.nextDouble(0, 1200));
      double f = random.nextDouble(1, 300);
      assertThat(WIND.steers(p, f)).isEqualTo(WIND.steers(p, -f));
      assertThat(WIND.momentNm(p, f)).isEqualTo(-WIND.momentNm(p, -f));
    }
  }
}
