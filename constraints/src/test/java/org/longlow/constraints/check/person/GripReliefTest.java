package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.geom.PointMm;

/** What is said of the grips, done, leaves of the load on the arms what is said. */
class GripReliefTest {

  private static double arms(Effort e) {
    return Math.max(e.riding().get(Joint.SHOULDER).weak(), e.riding().get(Joint.ELBOW).weak());
  }

  private static Study passenger(PointMm grip) {
    return TestMachine.tourer()
        .without("pillionGrips", "touches")
        .pin("pillionGrip", grip.x(), grip.z())
        .study();
  }

  private static Effort effort(Study study, Sitting sitting) {
    return Effort.of(study.layout(), sitting, study.standings(), study.placed().places())
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "0, -150", "-60, 60", "60, -60", "40, 100"})
  void itIsAsGoodAsItSays(double ahead, double up) {
    PointMm grip = new PointMm(300 + ahead, 955 + up);
    Study before = passenger(grip);
    Sitting sitting = before.sitting("Runa", "passenger").orElseThrow();
    Effort now = effort(before, sitting);
    Optional<GripRelief> best = GripRelief.of(sitting, before.placed().places(), now.wind());
    double least = best.map(GripRelief::weak).orElse(0.9 * arms(now));
    double s = GripRelief.STEP_MM;
    for (PointMm by :
        new PointMm[] {
          new PointMm(0, s), new PointMm(0, -s), new PointMm(-s, 0), new PointMm(s, 0)
        }) {
      Study after = passenger(grip.plus(by));
      Sitting moved = after.sitting("Runa", "passenger").orElseThrow();
      if (!moved.seated().orElseThrow().pose().shortfalls().isEmpty()) {
        continue;
      }
      double weak = arms(effort(after, moved));
      assertThat(weak).isGreaterThan(least - 0.002);
      if (best.isPresent() && best.get().grip().distance(grip.plus(by)) < 1e-6) {
        assertThat(weak).isCloseTo(best.get().weak(), within(0.002)).isLessThan(0.9 * arms(now));
        assertThat(best.get().pull().thing()).isEqualTo(Tug.Thing.GRIPS);
      }
    }
  }
}
