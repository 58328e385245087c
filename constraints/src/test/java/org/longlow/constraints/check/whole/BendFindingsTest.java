package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** A tube of 20 mm through three pins, 100 mm along the way and then up or back. */
class BendFindingsTest {

  private static Optional<Finding> finding(double x, double z, String radius) {
    return hoop(
        TestMachine.runabout().pin("one", 300, 1500).pin("two", 400, 1500).pin("three", x, z),
        "['one', 'two', 'three']",
        "'20 mm', 'wall': '2 mm'",
        radius);
  }

  /** What is told of a tube along a path; its diameter and wall are given as the file has them. */
  private static Optional<Finding> hoop(
      TestMachine machine, String path, String diameterAndWall, String radius) {
    return machine
        .with(
            "parts",
            "hoop",
            "{'kind': 'rail', 'path': "
                + path
                + ", 'diameter': "
                + diameterAndWall
                + ", 'bendRadius': '"
                + radius
                + "', 'y': '0 mm', 'material': 'steel'}")
        .finding("tube.hoop");
  }

  @Test
  void aBendThatFitsIsNotTold() {
    assertThat(finding(400, 1600, "99 mm")).isEmpty();
    assertThat(finding(400, 1600, "40 mm")).isEmpty();
    assertThat(finding(500, 1500, "10 mm")).as("straight").isEmpty();
  }

  /** At a right angle the tangent is as long as the radius. */
  @Test
  void aBendWithoutRoomIsTold() {
    Finding f = finding(400, 1600, "101 mm").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("at two there is room for a radius of 100 mm only, and 101 mm");
    assertThat(finding(400, 1508, "100 mm").orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
  }

  /**
   * Two bends share the way between them as they need it: 90° takes a radius of it and 45° 0.414 of
   * one, so 141.42 mm have room for 100 mm; with half of it each, the first would have 70.7 mm
   * only.
   */
  @Test
  void bendsShareTheWayBetweenThemAsTheyNeedIt() {
    for (boolean back : new boolean[] {false, true}) {
      assertThat(twoBends(back, "99.9 mm")).as("%s", back).isEmpty();
      assertThat(twoBends(back, "100.5 mm").orElseThrow().text())
          .contains("at two there is room for a radius of 100 mm only")
          .contains("at three there is room for a radius of 100 mm only");
    }
  }

  private static Optional<Finding> twoBends(boolean back, String radius) {
    return hoop(
        TestMachine.runabout()
            .pin("one", 100, 1500)
            .pin("two", 400, 1500)
            .pin("three", 400, 1500 + 100 * Math.sqrt(2))
            .pin("four", 600, 1700 + 100 * Math.sqrt(2)),
        back ? "['four', 'three', 'two', 'one']" : "['one', 'two', 'three', 'four']",
        "'20 mm', 'wall': '2 mm'",
        radius);
  }

  @Test
  void aBendTighterThanUsualNeedsCareAndOneInsideTheTubeFails() {
    Finding f = finding(400, 1600, "39.9 mm").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("may kink a tube of 20 mm", "at least 40 mm");
    assertThat(finding(400, 1600, "20 mm").orElseThrow().text()).contains("may kink");
    Finding tight = finding(400, 1600, "10 mm").orElseThrow();
    assertThat(tight.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(tight.text()).contains("10 mm is tighter than a tube is commonly bent");
    Finding never = finding(400, 1600, "9.9 mm").orElseThrow();
    assertThat(never.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(never.text()).contains("no tool bends it");
    assertThat(finding(400, 1515, "100 mm").orElseThrow().text())
        .as("what there is room for counts")
        .contains("15 mm is tighter than a tube is commonly bent");
  }

  /**
   * A right angle of 40 mm tube, 1 mm thick: [4 + 0.2 · 40/1 + 90/180] · 40/R is 7 at R = 71.4 mm,
   * less than two diameters; half as thick it is 7 at 117.1 mm, and at 100 mm thins by 20/120
   * outside.
   */
  @Test
  void aThinWallAsksForAWiderBend() {
    assertThat(walled("1 mm", "81 mm")).isEmpty();
    assertThat(walled("0.5 mm", "117.2 mm")).isEmpty();
    Finding f = walled("0.5 mm", "100 mm").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text())
        .contains(
            "at two a wall of 0.5 mm is thin for a radius of 100 mm and thins outside by 16.7 %")
        .contains("at least 117.1 mm are usual");
  }

  private static Optional<Finding> walled(String wall, String radius) {
    return hoop(
        TestMachine.runabout().pin("one", 100, 1500).pin("two", 400, 1500).pin("three", 400, 1800),
        "['one', 'two', 'three']",
        "'40 mm', 'wall': '" + wall + "'",
        radius);
  }

  @Test
  void aTubeThatGoesBackAlongItselfOrNowhereFails() {
    Finding back = finding(310, 1500, "50 mm").orElseThrow();
    assertThat(back.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(back.text()).contains("at two it turns back along itself");
    Finding nowhere = finding(400, 1500.2, "50 mm").orElseThrow();
    assertThat(nowhere.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(nowhere.text()).contains("two and three are in one place");
  }
}
