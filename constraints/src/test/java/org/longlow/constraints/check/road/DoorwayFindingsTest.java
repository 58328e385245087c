package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** How wide and high a machine is, by a box that sticks out of it. */
class DoorwayFindingsTest {

  /** A box far out to both sides, unlike, and above everything. */
  private static TestMachine boxed() {
    TestMachine m = TestMachine.named("trolley");
    Boxes.add(m, "crate", Boxes.at(600, 1200, 700, 1300), 520, 410, "");
    return m;
  }

  private static Finding of(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"929.9, FAIL", "930.1, PASS"})
  void itIsAsWideAsItsWidestPartsReach(double asked, Verdict verdict) {
    Finding f =
        of(boxed().with("demands", "doorwayWidth", "'" + asked + " mm'").study(), "doorway.width");
    // 520 mm to the left, 410 mm to the right
    assertThat(f.value()).isCloseTo(930, within(1e-9));
    assertThat(f.verdict()).isEqualTo(verdict);
    // without it the stand, 230 mm out and 20 mm thick, and a leg of the fork, 95 and 38 mm
    assertThat(f.text().contains("fold or take off crate, then it is 354 mm wide"))
        .isEqualTo(verdict == Verdict.FAIL);
  }

  /** Its upper corners over the line of both contacts, of which the farther is higher. */
  @Test
  void itIsAsHighAsItsHighestPartOverTheRoad() {
    Study study = boxed().study();
    Finding f = of(study, "doorway.height");
    var ground = study.standing(Condition.empty(Stance.Kind.UNLADEN)).orElseThrow().ground();
    PointMm road = ground.frontContact().minus(ground.rearContact());
    double top = 0;
    for (double x : new double[] {600, 700}) {
      PointMm corner = new PointMm(x, 1300).minus(ground.rearContact());
      top = Math.max(top, road.cross(corner) / road.length());
    }
    assertThat(f.value()).isCloseTo(top, within(1e-6));
    for (double off : new double[] {-0.1, 0.1}) {
      Finding held =
          of(
              boxed().with("demands", "doorwayHeight", "'" + (top + off) + " mm'").study(),
              "doorway.height");
      assertThat(held.verdict()).isEqualTo(off < 0 ? Verdict.FAIL : Verdict.PASS);
      assertThat(held.text().endsWith(": fold or take off crate.")).isEqualTo(off < 0);
    }
  }
}
