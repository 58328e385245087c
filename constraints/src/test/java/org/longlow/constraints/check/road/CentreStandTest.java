package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** Two feet and a wheel by least energy and by the fall of a lever; a pair by its wedge. */
class CentreStandTest {

  private static final double G = 9.80665;

  private static TestMachine centre() {
    return TestMachine.named("trolley")
        .part("st", "type", "'centre'")
        .part("st", "lever", "'tread'")
        .part("st", "lean", "'0 deg'")
        .pin("tread", 330, 40)
        .pin("sp", 560, 230)
        .pin("ss", 275, 150)
        .pin("sf", 620, -60);
  }

  private static Finding of(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  /** How the trolley rests on a foot and its front wheel where that takes the least energy. */
  private static final class Rested {
    private final Wheels wheels;
    private final PointMm foot;
    private final double rearMm;
    private final double droopMm;
    private PointMm up;
    double centreAhead;
    double wheelAhead;
    double height;
    double airMm;

    Rested(Study study) {
      wheels = Wheels.of(study.layout(), study.placed().places());
      foot = study.placed().places().pin("sf");
      rearMm = -wheels.rearSuspension().droopMm();
      droopMm = wheels.frontSuspension().droopMm();
      double low = -droopMm;
      double high = 60;
      for (int i = 0; i < 100; i++) {
        double a = low + (high - low) / 3;
        double b = high - (high - low) / 3;
        if (energy(a) < energy(b)) {
          high = b;
        } else {
          low = a;
        }
      }
      energy(low);
    }

    /** Puts it on the road at a front travel; returns the energy, N mm. */
    private double energy(double frontMm) {
      PointMm front = wheels.frontSuspension().path().axle(frontMm);
      PointMm rear = wheels.rearSuspension().path().axle(rearMm);
      PointMm to = front.minus(foot);
      double road = Math.atan2(to.z(), to.x()) - Math.asin(280 / to.length());
      PointMm along = new PointMm(Math.cos(road), Math.sin(road));
      up = along.left();
      PointMm[] at = {new PointMm(700, 550), front, rear};
      double[] kg = {140, 10, 10};
      double x = 0;
      double z = 0;
      for (int i = 0; i < 3; i++) {
        x += kg[i] / 160 * at[i].minus(foot).dot(along);
        z += kg[i] / 160 * at[i].minus(foot).dot(up);
      }
      centreAhead = x;
      height = z;
      wheelAhead = to.dot(along);
      airMm = rear.minus(foot).dot(up) - 300;
      double pressed = frontMm + droopMm;
      return 160 * G * z + 170 * pressed + 12 * pressed * pressed / 2;
    }
  }

  @Test
  void itRestsOnTwoFeetAndAWheelWhereEnergyIsLeast() {
    Study study = centre().study();
    Rested by = new Rested(study);
    double share = 1 - by.centreAhead / by.wheelAhead;
    Finding f = of(study, "stand.st");
    assertThat(f.text())
        .contains("the rear wheel is up and the feet carry " + Say.newton(share * 160 * G));
    // a triangle: its sides at the middle of the mass are as broad as its share of the feet
    double y = 140 * 20 / 160.0;
    double half = Math.atan2(230, by.wheelAhead);
    double left = (230 * share - y) * Math.cos(half);
    double right = (230 * share + y) * Math.cos(half);
    assertThat(f.text())
        .contains("to the left at " + Say.deg(Math.toDegrees(Math.atan(left / by.height))))
        .contains("to the right at " + Say.deg(Math.toDegrees(Math.atan(right / by.height))))
        .contains(
            "back over its feet at "
                + Say.deg(Math.toDegrees(Math.atan(by.centreAhead / by.height))));
    PointMm past = by.foot.minus(study.placed().places().pin("sp"));
    double legs = Math.atan2(past.cross(by.up), -past.dot(by.up));
    assertThat(f.text())
        .contains(
            "rolls forward off them at "
                + Say.deg(Math.toDegrees(Math.atan(share * Math.tan(legs)))));
    assertThat(f.stance()).contains(Condition.empty(Stance.Kind.PARKED));
    Finding air = of(study, "stand.st.wheel");
    assertThat(air.value()).isCloseTo(by.airMm, within(1e-3));
    assertThat(air.verdict()).isEqualTo(Verdict.PASS);
  }

  /** By what the hinge rises for each mm that the lever falls, all about the feet on the road. */
  @Test
  void theLeverPressesAsItFallsAndTheMachineRises() {
    Study study = centre().study();
    Rested by = new Rested(study);
    double heaved = (1 - by.centreAhead / by.wheelAhead) * 160 * G;
    PointMm right = by.up.turned(-Math.PI / 2);
    double start =
        study
            .standing(Condition.empty(Stance.Kind.PARKED))
            .orElseThrow()
            .ground()
            .heightMm(study.placed().places().pin("sp"));
    PointMm pivot = study.placed().places().pin("sp").minus(by.foot);
    PointMm lever = study.placed().places().pin("tread").minus(by.foot);
    double most = 0;
    for (double back = 0; pivot.turned(-back).dot(by.up) > start || back < 0.25; back += 1e-4) {
      if (pivot.turned(-back).dot(right) < 0) {
        continue;
      }
      double rise = pivot.turned(-back + 1e-6).minus(pivot.turned(-back)).dot(by.up);
      double fall = lever.turned(-back).minus(lever.turned(-back + 1e-6)).dot(by.up);
      most = Math.max(most, heaved * rise / fall);
    }
    Finding f = of(study, "stand.st.heave");
    assertThat(f.value()).isCloseTo(most, within(most * 2e-3));
    assertThat(f.limit()).isEqualTo(400);
  }

  @ParameterizedTest
  @CsvSource({"0.1, FAIL", "-0.1, PASS"})
  void theForceIsHeldToWhatIsAsked(double over, Verdict verdict) {
    double force = of(centre().study(), "stand.st.heave").value();
    Finding f =
        of(
            centre()
                .with("demands", Demands.Key.HEAVE.word(), "'" + (force - over) + " N'")
                .study(),
            "stand.st.heave");
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text().contains("make the lever longer")).isEqualTo(over > 0);
  }

  @Test
  void whatIsDrawnWrongIsSaid() {
    // short legs
    Finding air = of(centre().pin("sf", 620, -18).study(), "stand.st.wheel");
    assertThat(air.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(air.text()).contains("still on the road");
    // legs that have not gone past upright roll off by themselves
    Finding rolls = of(centre().pin("sf", 540, -60).study(), "stand.st");
    assertThat(rolls.value()).isNegative();
    assertThat(rolls.text()).endsWith("Let its legs swing farther past upright, to a stop.");
    // feet ahead of the mass: the front wheel is up
    Study ahead = centre().pin("sp", 800, 230).pin("sf", 860, -60).pin("ss", 515, 150).study();
    assertThat(of(ahead, "stand.st").text()).contains("the front wheel is up", "forward over");
    // a lever ahead of the feet heaves nothing
    Finding lever = of(centre().pin("tread", 760, 40).study(), "stand.st.heave");
    assertThat(lever.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(lever.text()).contains("set the lever to the side");
  }

  /** On hard springs it leans by about the wedge under a foot 230 mm out. */
  @Test
  void aPairHoldsOnEitherSideAndTellsTheWorse() {
    TestMachine pair =
        TestMachine.named("trolley")
            .part("st", "type", "'pair'")
            .part("st", "lean", "'0 deg'")
            .part("fr", "rate", "'900 N/mm'")
            .part("sw", "rate", "'900 N/mm'")
            .pin("sf", 620, -28);
    Finding f = of(pair.study(), "stand.st");
    // the mass is left of the middle
    assertThat(f.text()).contains("forward and to the left", "until the left one touches");
    double over = said(f, ".*feet are ([0-9.]+) mm over.*");
    assertThat(over).isBetween(5.0, 25.0);
    assertThat(said(f, ".*leans by ([0-9.]+)°.*"))
        .isCloseTo(Math.toDegrees(Math.atan2(over, 230)), within(0.5));
    Finding other =
        of(
            pair.part("blk", "left", "'80 mm'").part("blk", "right", "'120 mm'").study(),
            "stand.st");
    assertThat(other.text()).contains("forward and to the right", "until the right one touches");
    assertThat(other.value()).isCloseTo(f.value(), within(1e-6));
    assertThat(f.value()).isGreaterThan(8);
  }

  private static double said(Finding f, String how) {
    return Double.parseDouble(f.text().replaceAll(how, "$1"));
  }

  /** Both legs are there, parked and folded, so that one drags at either side of the road. */
  @Test
  void bothLegsAreShaped() {
    Study study = centre().study();
    for (Stance.Kind stance : new Stance.Kind[] {Stance.Kind.UNLADEN, Stance.Kind.PARKED}) {
      var shape = study.standing(Condition.empty(stance)).orElseThrow().shapes().get("st");
      assertThat(shape.leftMm()).isCloseTo(240, within(1e-9));
      assertThat(shape.rightMm()).isCloseTo(240, within(1e-9));
      assertThat(shape.prisms()).hasSize(2);
    }
  }
}
