package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxleLoadsTest {

  private static final List<MassPoint> MASSES =
      List.of(
          new MassPoint(38, 620, 420),
          new MassPoint(75, 640, 390),
          new MassPoint(32, 1490, 350),
          new MassPoint(18, 0, 315),
          new MassPoint(22, 760, 640),
          new MassPoint(10, 480, 500),
          new MassPoint(80, 560, 700));

  // Worked apart in double precision for seven masses and a wheelbase of 1500 mm.
  @Test
  void loadsMatchTheWorkedMachine() {
    AxleLoads loads = AxleLoads.of(1500, MASSES);
    assertThat(loads.total().massKg()).isEqualTo(275);
    assertThat(loads.total().at().x()).isCloseTo(674.763636363636, within(1e-9));
    assertThat(loads.total().at().z()).isCloseTo(498.763636363636, within(1e-9));
    assertThat(loads.frontShare()).isCloseTo(0.44984242424242, within(1e-12));
    assertThat(loads.frontN()).isCloseTo(1213.147982666667, within(1e-9));
    assertThat(loads.rearN()).isCloseTo(1483.680767333333, within(1e-9));
    assertThat(loads.brakeLiftG()).isCloseTo(1.654564012832, within(1e-9));
    assertThat(loads.driveLiftG()).isCloseTo(1.352872557597, within(1e-9));
  }

  @Test
  void wheelsLiftAtTheirLimits() {
    AxleLoads loads = AxleLoads.of(1500, MASSES);
    double perG = loads.weightN() * loads.total().at().z() / 1500;
    assertThat(loads.rearN() - loads.brakeLiftG() * perG).isCloseTo(0, within(1e-9));
    assertThat(loads.frontN() - loads.driveLiftG() * perG).isCloseTo(0, within(1e-9));
  }

  @Test
  void aCentreOnTheRoadNeverLifts() {
    assertThat(AxleLoads.of(1500, List.of(new MassPoint(10, 700, 0))).brakeLiftG()).isInfinite();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> AxleLoads.of(1500, List.of())).hasMessageContaining("total mass");
    assertThatThrownBy(() -> AxleLoads.of(-1, MASSES)).hasMessageContaining("wheelbase");
    assertThatThrownBy(() -> new MassPoint(-1, 0, 0)).hasMessageContaining("mass kg");
    assertThatThrownBy(() -> new MassPoint(1, null)).hasMessageContaining("place");
    assertThatThrownBy(() -> new MassPoint(Double.NaN, 0, 0)).hasMessageContaining("mass kg");
  }
}
