package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** The beam by the heights of two pins of the frame over the road, which tip as the beam does. */
class AimFindingsTest {

  private static double noseUpDeg(Standing s) {
    PointMm head = s.ground().toRoad(s.places().pin("headTop"));
    PointMm pivot = s.ground().toRoad(s.places().pin("swingPivot"));
    return Math.toDegrees(Math.atan2(head.z() - pivot.z(), head.x() - pivot.x()));
  }

  /** The most between any two crews that have a rider in common. */
  private static double tippedDeg(Study study) {
    double most = 0;
    for (Standing one : study.standings()) {
      for (Standing other : study.standings()) {
        if (one.kind() == Stance.Kind.LADEN
            && other.kind() == Stance.Kind.LADEN
            && one.condition().aboard().stream()
                .anyMatch(w -> w.rides() && other.condition().aboard().contains(w))) {
          most = Math.max(most, noseUpDeg(one) - noseUpDeg(other));
        }
      }
    }
    return most;
  }

  private static Finding of(Study study) {
    return study.findings().stream()
        .filter(f -> f.id().equals("aim.headlamp"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theBeamTipsAsTheFrameDoes() {
    Study study = TestMachine.asFiled("tourer");
    Finding f = of(study);
    assertThat(f.value()).isCloseTo(tippedDeg(study), within(1e-9)).isGreaterThan(0.1);
    // falls of 0.5 and 2.5 in a hundred lie 1.1457 deg apart
    assertThat(f.limit()).isCloseTo(1.1457, within(1e-3));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
  }

  /** Springs of an arm that are less than half as stiff. */
  @Test
  void softSpringsAskForAnAdjuster() {
    Study study =
        TestMachine.tourer()
            .part("swingarm", "rate", "'12 N/mm'")
            .part("swingarm", "preload", "'900 N'")
            .study();
    Finding f = of(study);
    assertThat(f.value()).isCloseTo(tippedDeg(study), within(1e-9));
    assertThat(f.value()).isGreaterThan(f.limit());
    assertThat(f.text()).contains("adjuster");
  }

  @Test
  void whoeverRidesAloneSetsTheBeamForThemselves() {
    assertThat(TestMachine.asFiled("runabout").findings())
        .noneMatch(f -> f.kind() == AimFindings.AIM);
  }
}
