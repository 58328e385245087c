package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.machine.ride.ParkedStability.PlanMm;

class ParkedStabilityTest {

  private static final PlanMm FRONT = new PlanMm(1500, 0);
  private static final PlanMm REAR = new PlanMm(0, 0);
  private static final PlanMm FOOT = new PlanMm(620, 260);

  // Worked apart by barycentric coordinates, mass 195 kg; printed to 1e-9.
  @Test
  void sideStandMatchesTheWorkedExample() {
    ParkedStability s = ParkedStability.on(FRONT, REAR, FOOT, new PlanMm(648, 95), 480);
    double weight = 195 * 9.80665;
    assertThat(s.frontShare()).isCloseTo(0.280974359, within(1e-9));
    assertThat(s.rearShare()).isCloseTo(0.353641026, within(1e-9));
    assertThat(s.footShare()).isCloseTo(0.365384615, within(1e-9));
    assertThat(s.frontShare() * weight).isCloseTo(537.306353, within(1e-6));
    assertThat(s.rearShare() * weight).isCloseTo(676.266584, within(1e-6));
    assertThat(s.footShare() * weight).isCloseTo(698.723813, within(1e-6));
    assertThat(s.overFrontEdgeMm()).isCloseTo(150.304229881, within(1e-8));
    assertThat(Math.toDegrees(s.tipOverFrontEdgeRad())).isCloseTo(17.387102580, within(1e-8));
    assertThat(s.overRearEdgeMm()).isCloseTo(162.990419937, within(1e-8));
    assertThat(Math.toDegrees(s.tipOverRearEdgeRad())).isCloseTo(18.755605735, within(1e-8));
    assertThat(s.overWheelsMm()).isCloseTo(95, within(1e-9));
    assertThat(Math.toDegrees(s.leastTipRad())).isCloseTo(11.195111426, within(1e-8));
    assertThat(s.stands()).isTrue();
  }

  @Test
  void aStandOnTheOtherSideAnswersTheSame() {
    ParkedStability s = ParkedStability.on(FRONT, REAR, FOOT, new PlanMm(648, 95), 480);
    ParkedStability mirrored =
        ParkedStability.on(FRONT, REAR, new PlanMm(620, -260), new PlanMm(648, -95), 480);
    assertThat(mirrored.footShare()).isCloseTo(s.footShare(), within(1e-12));
    assertThat(mirrored.leastTipRad()).isCloseTo(s.leastTipRad(), within(1e-12));
  }

  /** How the machine stands in the yard changes nothing. */
  @Test
  void turnedAndMovedInPlanItAnswersTheSame() {
    ParkedStability s = ParkedStability.on(FRONT, REAR, FOOT, new PlanMm(648, 95), 480);
    for (double deg : new double[] {35, 120, -75}) {
      double c = Math.cos(Math.toRadians(deg));
      double n = Math.sin(Math.toRadians(deg));
      PlanMm[] moved =
          List.of(FRONT, REAR, FOOT, new PlanMm(648, 95)).stream()
              .map(
                  p ->
                      new PlanMm(900 + c * p.xMm() - n * p.yMm(), -400 + n * p.xMm() + c * p.yMm()))
              .toArray(PlanMm[]::new);
      ParkedStability t = ParkedStability.on(moved[0], moved[1], moved[2], moved[3], 480);
      assertThat(t.frontShare()).isCloseTo(s.frontShare(), within(1e-9));
      assertThat(t.tipOverFrontEdgeRad()).isCloseTo(s.tipOverFrontEdgeRad(), within(1e-9));
      assertThat(t.tipOverRearEdgeRad()).isCloseTo(s.tipOverRearEdgeRad(), within(1e-9));
      assertThat(t.tipOverWheelsRad()).isCloseTo(s.tipOverWheelsRad(), within(1e-9));
    }
  }

  @Test
  void aCentreOutsideTheSupportsTips() {
    ParkedStability s = ParkedStability.on(FRONT, REAR, FOOT, new PlanMm(648, -5), 480);
    assertThat(s.stands()).isFalse();
    assertThat(s.leastTipRad()).isNegative();
  }

  /** Outward as the road falls: by the lever of the mass about the line of the wheels. */
  @Test
  void theFootCarriesMoreWhereTheRoadFallsToIt() {
    ParkedStability s =
        ParkedStability.on(
            new PlanMm(1500, 0), REAR, new PlanMm(620, 260), new PlanMm(648, 95), 480);
    double slope = Math.toRadians(4);
    double out = Math.hypot(95, 480) * Math.sin(Math.atan2(95, 480) + slope);
    assertThat(s.footShareOn(slope)).isCloseTo(out / 260, within(1e-12));
    assertThat(s.footShareOn(0)).isCloseTo(s.footShare(), within(1e-12));
  }

  @Test
  void aCentreOverAnEdgeDoesNotStand() {
    // a triangle of whole numbers, so that the centre lies on its edges exactly
    PlanMm front = new PlanMm(1600, 0);
    PlanMm foot = new PlanMm(800, 400);
    assertThat(ParkedStability.on(front, REAR, foot, new PlanMm(800, 0), 480).stands()).isFalse();
    assertThat(ParkedStability.on(front, REAR, foot, new PlanMm(400, 200), 480).stands()).isFalse();
    assertThat(ParkedStability.on(front, REAR, foot, new PlanMm(1200, 200), 480).stands())
        .isFalse();
    assertThat(ParkedStability.on(front, REAR, foot, new PlanMm(800, 1), 480).stands()).isTrue();
  }

  /** A foot a tenth of a micrometre out on a long machine stands; nanometres are one line. */
  @Test
  void theFootMayBeBarelyOut() {
    PlanMm cg = new PlanMm(700, 0);
    assertThat(
            ParkedStability.on(
                    new PlanMm(2000, 3000),
                    new PlanMm(0, 3000),
                    new PlanMm(620, 3000.0001),
                    cg,
                    480)
                .footShare())
        .isNotNaN();
    assertThatThrownBy(
            () ->
                ParkedStability.on(
                    new PlanMm(2000, 3000),
                    new PlanMm(0, 3000),
                    new PlanMm(620, 3000 + 1e-9),
                    cg,
                    480))
        .hasMessageContaining("one line");
  }

  @Test
  void supportsInOneLineAreRefused() {
    assertThatThrownBy(() -> ParkedStability.on(FRONT, REAR, new PlanMm(620, 0), FOOT, 480))
        .hasMessageContaining("one line");
    assertThatThrownBy(() -> ParkedStability.on(REAR, REAR, REAR, FOOT, 480))
        .hasMessageContaining("one line");
    assertThatThrownBy(() -> new PlanMm(Double.NaN, 0)).hasMessageContaining("x mm");
  }
}
