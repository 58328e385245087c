package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.machine.chassis.Chain;
import org.longlow.rider.geom.PointMm;

class AntiSquatTest {

  private static final PointMm CONTACT = PointMm.ORIGIN;
  private static final PointMm AXLE = new PointMm(0, 314.9);
  private static final PointMm PIVOT = new PointMm(560, 390);
  private static final double FRONT = Chain.pitchRadiusMm(16, 15.875);
  private static final double REAR = Chain.pitchRadiusMm(42, 15.875);

  // Worked apart and verified by statics; printed to 1e-9.
  @Test
  void chainDriveMatchesTheWorkedExample() {
    assertThat(FRONT).isCloseTo(40.686282732896, within(1e-9));
    assertThat(REAR).isCloseTo(106.215576872260, within(1e-9));
    AntiSquat a = worked();
    assertThat(Math.toDegrees(a.chainRad())).isCloseTo(1.323317536, within(1e-9));
    assertThat(a.forceCentre().x()).isCloseTo(957.093845910, within(1e-8));
    assertThat(a.forceCentre().z()).isCloseTo(443.253121121, within(1e-8));
    assertThat(Math.toDegrees(a.squatRad())).isCloseTo(24.849986374, within(1e-9));
    assertThat(Math.toDegrees(a.transferRad())).isCloseTo(21.801409486, within(1e-9));
    assertThat(a.antiSquatPercent()).isCloseTo(115.780997604219, within(1e-8));
  }

  private static AntiSquat worked() {
    return AntiSquat.ofChain(CONTACT, AXLE, PIVOT, new PointMm(630, 395), FRONT, REAR, 600, 1500);
  }

  @Test
  void forcesOnSwingarmAndWheelBalanceAboutThePivot() {
    AntiSquat a = worked();
    double drive = 1000;
    double tension = drive * 314.9 / REAR;
    PointMm run = PointMm.unit(a.chainRad());
    PointMm tangent = AXLE.plus(run.left().times(REAR));
    PointMm road = new PointMm(drive, drive * Math.tan(a.squatRad()));
    double moment =
        CONTACT.minus(PIVOT).cross(road) + tangent.minus(PIVOT).cross(run.times(tension));
    // Moments of about 4e5 N mm cancel; 1e-7 is rounding.
    assertThat(moment).isCloseTo(0, within(1e-7));
  }

  @Test
  void withoutAChainThePivotIsTheCentre() {
    AntiSquat a = AntiSquat.withoutChain(CONTACT, PIVOT, 600, 1500);
    assertThat(Math.toDegrees(a.squatRad())).isCloseTo(34.854455566, within(1e-9));
    assertThat(a.antiSquatPercent()).isCloseTo(174.107142857143, within(1e-9));
    assertThat(a.chainRad()).isNaN();
  }

  @Test
  void parallelChainAndArmMeetAtInfinity() {
    AntiSquat a =
        AntiSquat.ofChain(
            CONTACT, AXLE, new PointMm(500, 314.9), new PointMm(600, 314.9), 50, 50, 600, 1500);
    assertThat(a.forceCentre()).isNull();
    assertThat(a.squatRad()).isCloseTo(0, within(1e-12));
  }

  @Test
  void overlappingSprocketsAreRefused() {
    assertThatThrownBy(() -> AntiSquat.ofChain(CONTACT, AXLE, PIVOT, AXLE, FRONT, REAR, 600, 1500))
        .hasMessageContaining("sprocket distance");
  }
}
