package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Machines held on their stands at leans that are no rest, and at more rests than one. */
class OnStandTest {

  private static OnStand on(TestMachine machine) {
    Study study = machine.study();
    Standing parked = study.standing(Condition.empty(Stance.Kind.PARKED)).orElseThrow();
    return new OnStand(
        Wheels.of(study.layout(), study.placed().places()),
        parked,
        MassPoint.Sum.of(List.of(parked.load().total())),
        study.layout().parts(StandPart.class).findFirst().orElseThrow());
  }

  private static TestMachine soft(String footZ) {
    TestMachine machine = TestMachine.named("trolley");
    for (String end : new String[] {"fr", "sw"}) {
      machine.part(end, "rate", "'4 N/mm'").part(end, "preload", "'200 N'");
    }
    return machine.with("pins", "sf", "['620 mm', '" + footZ + " mm']");
  }

  /** Nearly upright on springs almost home, or far over on springs let out. */
  @Test
  void ofTwoRestsTheOneThatTipsSoonerCounts() {
    OnStand on = on(soft("50"));
    List<OnStand.Held> rests = new ArrayList<>();
    for (double deg = 0; deg < 45; deg += 0.25) {
      double low = Math.toRadians(deg);
      double high = Math.toRadians(deg + 0.25);
      if (on.at(low).footOffMm() > 0 && on.at(high).footOffMm() <= 0) {
        for (int i = 0; i < 40; i++) {
          double middle = (low + high) / 2;
          if (on.at(middle).footOffMm() > 0) {
            low = middle;
          } else {
            high = middle;
          }
        }
        rests.add(on.at(low));
      }
    }
    assertThat(rests).hasSize(2);
    double least =
        rests.stream()
            .mapToDouble(r -> r.statics().orElseThrow().leastTipRad())
            .min()
            .orElseThrow();
    OnStand.Held rest = on.rest().orElseThrow();
    assertThat(rest.statics().orElseThrow().leastTipRad()).isCloseTo(least, within(1e-5));
    assertThat(rests)
        .extracting(r -> r.statics().orElseThrow().leastTipRad())
        .anyMatch(tip -> tip > least + 0.005);
  }

  /** Shares add up to the weight, and at rest, not elsewhere, the foot is on the road. */
  @Test
  void aRestIsWhereTheFootIsOnTheRoad() {
    OnStand on = on(TestMachine.runabout());
    OnStand.Held rest = on.rest().orElseThrow();
    assertThat(rest.footOffMm()).isCloseTo(0, within(1e-4));
    assertThat(on.at(rest.leanRad() - 0.02).footOffMm()).isGreaterThan(2);
    assertThat(on.at(rest.leanRad() + 0.02).footOffMm()).isLessThan(-2);
    rest.statics()
        .ifPresent(
            s ->
                assertThat(s.frontShare() + s.rearShare() + s.footShare())
                    .isCloseTo(1, within(1e-12)));
    // the foot takes load off both springs
    OnStand.Held upright = on.at(0);
    assertThat(rest.frontTravelMm()).isLessThan(upright.frontTravelMm());
  }
}
