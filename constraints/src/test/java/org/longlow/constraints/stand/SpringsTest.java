package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What stands on each wheel and what on the springs, from the masses in the file. */
class SpringsTest {

  private static double kg(List<MassPoint> masses) {
    return masses.stream().mapToDouble(MassPoint::massKg).sum();
  }

  // wheels 8.5 and 8 kg, half of 14 and of 6 kg, guards of 0.6 and 0.5 kg on the axles, 15 kg of
  // motor in the hub
  @Test
  void aWheelCarriesItselfAndHalfOfWhatHoldsIt() {
    Study study = TestMachine.asFiled("runabout");
    Springs springs = Springs.of(study.shapes().values(), Rider.NOBODY);
    assertThat(kg(springs.atFront())).isCloseTo(8.5 + 7 + 0.6, within(1e-12));
    assertThat(kg(springs.atRear())).isCloseTo(8 + 3 + 0.5 + 15, within(1e-12));
    double all = study.shapes().values().stream().mapToDouble(s -> s.massKg()).sum();
    assertThat(kg(springs.sprung())).isCloseTo(all - 16.1 - 26.5, within(1e-9));
    assertThat(springs.known()).isTrue();
    assertThat(MassPoint.total(springs.atFront()).at().x()).isGreaterThan(1300);
    assertThat(MassPoint.total(springs.atRear()).at().x()).isLessThan(200);
  }

  @Test
  void whoSitsOnItIsOnTheSprings() {
    Study study = TestMachine.asFiled("runabout");
    Standing laden =
        study.standings().stream().filter(s -> s.kind() == Stance.Kind.LADEN).findFirst().get();
    Standing empty = study.standing(Condition.empty(Stance.Kind.UNLADEN)).orElseThrow();
    // 57 kg and 7.8 kg of gear
    assertThat(kg(laden.springs().orElseThrow().sprung()))
        .isCloseTo(kg(empty.springs().orElseThrow().sprung()) + 64.8, within(1e-9));
    assertThat(kg(laden.springs().orElseThrow().atFront())).isCloseTo(16.1, within(1e-12));
  }

  @Test
  void nothingIsKnownOfAWheelWithoutMass() {
    for (String[] bare : new String[][] {{"frontWheel", "front"}, {"rearWheel", "swingarm"}}) {
      TestMachine machine = TestMachine.runabout();
      for (String part : bare) {
        machine.without(part, "mass", "material");
      }
      Study study = machine.study();
      assertThat(Springs.of(study.shapes().values(), Rider.NOBODY).known()).isFalse();
    }
  }
}
