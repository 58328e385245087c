package org.longlow.constraints.check.ride;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.ride.DrivenWheels;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** The grip that a machine's brakes need, by forces at the contacts, from both sides. */
class SlideFindingsTest {

  private static final double G = 9.80665;

  private static Finding at(String name, double grip) {
    return TestMachine.named(name)
        .with("demands", "grip", "'" + grip + "'")
        .finding("slide.tyres")
        .orElseThrow();
  }

  /** Grip with which each brake just does what 93/14/EEC asks, whoever rides. */
  private static double needed(String name) {
    double most = 5.8 / G;
    for (Standing s : TestMachine.asFiled(name).standings()) {
      if (s.kind() == Stance.Kind.LADEN) {
        AxleLoads axles = s.load().axles();
        double base = axles.wheelbaseMm();
        double b = axles.total().at().x();
        double h = axles.total().at().z();
        double front = 4.4 / G;
        double rear = 2.9 / G;
        most = Math.max(most, front / ((b + front * h) / base));
        most = Math.max(most, rear / ((base - b - rear * h) / base));
      }
    }
    return most;
  }

  @Test
  void itPassesFromTheGripThatTheBrakesNeed() {
    for (String name : new String[] {"tourer", "runabout"}) {
      double grip = needed(name);
      assertThat(at(name, grip + 1e-4).verdict()).as(name).isEqualTo(Verdict.PASS);
      Finding less = at(name, grip - 1e-4);
      assertThat(less.verdict()).as(name).isEqualTo(Verdict.CAUTION);
      assertThat(less.text()).contains("should do");
    }
  }

  /** A grip that is only remembered lets nothing pass; the same said by the builder does. */
  @Test
  void theGripThatIsRememberedAsksForCare() {
    Finding remembered = TestMachine.tourer().finding("slide.tyres").orElseThrow();
    Finding own = at("tourer", 0.9);
    assertThat(own.verdict()).isEqualTo(Verdict.PASS);
    assertThat(remembered.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(remembered.value()).isEqualTo(own.value());
    assertThat(remembered.text()).contains("from memory");
  }

  @Test
  void aRoadWithMuchGripLiftsTheWheelInstead() {
    Finding f = at("runabout", 2);
    assertThat(f.text()).contains("before the rear wheel lifts");
    assertThat(at("runabout", 0.5).text()).contains("before its tyre slides");
  }

  /** A brake never does more than the grip of the road, so no moved weight can make up for it. */
  @Test
  void aRoadThatHoldsTooLittleIsNotMendedByMovingWeight() {
    assertThat(at("runabout", 0.25).text())
        .contains("no machine does that on this road")
        .doesNotContain("move heavy");
  }

  @Test
  void noGripSaysNothing() {
    assertThat(TestMachine.runabout().with("demands", "grip", "'0'").finding("slide.tyres"))
        .isEmpty();
  }

  @Test
  void anUnknownMassMakesItIncomplete() {
    Finding f =
        TestMachine.runabout().without("motor", "mass").finding("slide.tyres").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("Incomplete: the mass of motor is not known");
  }

  /** By moments about the other contact; a wheel that drives itself off the road drives no more. */
  @ParameterizedTest
  @EnumSource(DrivenWheels.class)
  void itIsPulledByTheWheelThatDrives(DrivenWheels driven) {
    TestMachine machine = TestMachine.runabout().with("demands", "grip", "'0.9'");
    if (driven != DrivenWheels.REAR) {
      machine.part(
          "frontWheel",
          "inside",
          "[{'what': 'motor', 'radius': '100 mm', 'width': '60 mm', 'y': '0 mm'}]");
    }
    if (driven == DrivenWheels.FRONT) {
      machine.lacking("motor");
    }
    Study study = machine.study();
    Finding slide = machine.finding("slide.tyres").orElseThrow();
    var standing = study.standing(slide.stance().orElseThrow()).orElseThrow();
    var axles = standing.load().axles();
    double grip = 0.9;
    double front = axles.total().at().x() / axles.wheelbaseMm();
    double up = axles.total().at().z() / axles.wheelbaseMm();
    double lift = front / up;
    double pull =
        switch (driven) {
          case FRONT -> grip * front / (1 + grip * up);
          case REAR -> Math.min(lift, grip * (1 - front) / (1 - grip * up));
          case BOTH -> Math.min(lift, grip);
        };
    assertThat(slide.text()).contains(String.format(Locale.ROOT, "with a grip of %.2f", grip));
    assertThat(slide.text().replace("\n", " "))
        .containsPattern("pulling away .* at " + String.format(Locale.ROOT, "%.2f g", pull));
    assertThat(slide.text().contains("front tyre slides")).isEqualTo(driven == DrivenWheels.FRONT);
    Finding lifts =
        machine.findings().stream()
            .filter(f -> f.id().startsWith("lift."))
            .findFirst()
            .orElseThrow();
    assertThat(lifts.text().contains("lifts none")).isEqualTo(driven == DrivenWheels.FRONT);
  }
}
