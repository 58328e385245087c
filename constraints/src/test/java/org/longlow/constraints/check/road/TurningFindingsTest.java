package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.check.road.OfStudy.finding;
import static org.longlow.constraints.check.road.OfStudy.standings;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.TurnedWheel;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** The circle of whole machines, from pins and tyres. */
class TurningFindingsTest {

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void theCircleIsThatOfTheWheelTurnedInSpace(String name) {
    Study study = TestMachine.asFiled(name);
    Standing s = standings(study, Stance.Kind.UNLADEN).get(0);
    OnRoad road = OnRoad.of(study, s);
    double topX = road.x(s.places().pin("headTop"));
    double topZ = road.z(s.places().pin("headTop"));
    double lowX = road.x(s.places().pin("headBottom"));
    double lowZ = road.z(s.places().pin("headBottom"));
    Wheels wheels = Wheels.of(study.layout(), s.places());
    Tyre front = Tyres.of(wheels.front(), s.places());
    Tyre rear = Tyres.of(wheels.rear(), s.places());
    // how far the axle is from the line through the head, ahead positive
    double offset =
        ((road.wheelbaseMm() - lowX) * (topZ - lowZ)
                - (front.freeRadiusMm() - lowZ) * (topX - lowX))
            / Math.hypot(topX - lowX, topZ - lowZ);
    double[] radii =
        new TurnedWheel(
                road.wheelbaseMm(),
                front.freeRadiusMm(),
                front.sectionRadiusMm(),
                rear.freeRadiusMm(),
                Math.atan2(lowX - topX, topZ - lowZ),
                offset)
            .radii(Math.toRadians(30));
    Finding f = finding(study, "circle.turning", s);
    assertThat(f.value()).isCloseTo(2 * radii[0], within(1e-2));
    assertThat(f.text())
        .contains(String.format(Locale.ROOT, "%.2f m across", 2 * radii[0] / 1000))
        .contains(String.format(Locale.ROOT, "one of %.2f m.", 2 * radii[1] / 1000));
  }

  @Test
  void atNoLockOrARightAngleThereIsNoCircleAndThatIsSaid() {
    for (String lock : List.of("'0 deg'", "'90 deg'")) {
      Study study = TestMachine.runabout().with("demands", "lock", lock).study();
      assertThat(study.findings())
          .filteredOn(f -> f.id().startsWith("circle"))
          .singleElement()
          .satisfies(
              f -> {
                assertThat(f.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
                assertThat(f.text()).contains("the wheels roll on no circle");
              });
    }
    assertThat(
            TestMachine.runabout().with("demands", "lock", "'88 deg'").study().findings().stream()
                .filter(f -> f.id().startsWith("circle")))
        .singleElement()
        .satisfies(f -> assertThat(f.verdict()).isEqualTo(Verdict.PASS));
  }

  @Test
  void anAxisNearlyLevelHasNoCircle() {
    Study study = TestMachine.runabout().with("measures", "rake", "'86 deg'").study();
    assertThat(study.findings()).noneMatch(f -> f.id().startsWith("circle"));
  }
}
