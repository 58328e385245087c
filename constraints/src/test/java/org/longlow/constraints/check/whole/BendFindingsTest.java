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
    return TestMachine.runabout()
        .pin("one", 300, 1500)
        .pin("two", 400, 1500)
        .pin("three", x, z)
        .with(
            "parts",
            "hoop",
            "{'kind': 'rail', 'path': ['one', 'two', 'three'], 'diameter': '20 mm',"
                + " 'wall': '2 mm', 'bendRadius': '"
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

  @Test
  void aBendTighterThanUsualNeedsCareAndOneInsideTheTubeFails() {
    Finding f = finding(400, 1600, "39.9 mm").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("may kink a tube of 20 mm", "at least 40 mm");
    assertThat(finding(400, 1600, "10 mm").orElseThrow().verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(finding(400, 1600, "9.9 mm").orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
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
