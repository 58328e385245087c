package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.machine.linkage.DrivenTogether;
import org.longlow.constraints.machine.linkage.FourBar;
import org.longlow.constraints.machine.linkage.Hinge;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** Two flaps far above the machine that one drive moves, or two. */
class DrivenTogetherTest {

  private static final double Z = 2000;
  private static final double LONG = 400;
  private static final double APART = 600;

  /** Hinged 600 mm apart, both lie towards each other and swing up, one above the other. */
  private static TestMachine facing(String frontAngle, String drive) {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "rearFlap", Boxes.at(0, Z - 1, LONG, Z + 1), 50, 50, "");
    Boxes.add(m, "frontFlap", Boxes.at(APART - LONG, Z + 9, APART, Z + 11), 50, 50, "");
    String driven = drive.isEmpty() ? "" : ", 'drive': '" + drive + "'";
    return m.pin("rearHinge", 0, Z)
        .pin("frontHinge", APART, Z + 10)
        .with(
            "sections",
            "rear",
            "{'parts': ['rearFlap'], 'pivot': 'rearHinge', 'angle': '60 deg'" + driven + "}")
        .with(
            "sections",
            "front",
            "{'parts': ['frontFlap'], 'pivot': 'frontHinge', 'angle': '"
                + frontAngle
                + "'"
                + driven
                + "}");
  }

  /** Alone the lower meets the upper that lies on it; as they swing up together they cross. */
  @Test
  void whatMeetsAtTheSameInstantMeets() {
    assertThat(facing("-60 deg", "").finding("open.rear.rearFlap.frontFlap")).isPresent();
    Finding f = facing("-60 deg", "hoist").finding("open.rear.rearFlap.frontFlap").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).startsWith("Section rear, driven together with front: ");
    // it is said once, of the first of the two, and the second does not open clear
    Finding second = facing("-60 deg", "hoist").finding("open.front").orElseThrow();
    assertThat(second.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(second.text()).contains("driven together with rear").contains(f.id());
    assertThat(facing("-60 deg", "hoist").finding("open.front.frontFlap.rearFlap")).isEmpty();
  }

  /** The front one as fast out of the way as the rear one comes: parallel, 10 mm apart or more. */
  @Test
  void whatKeepsOutOfEachOthersWayIsClear() {
    TestMachine parallel = facing("60 deg", "hoist");
    assertThat(parallel.finding("open.rear.rearFlap.frontFlap")).isPresent(); // front one falls
    TestMachine same = beside("hoist", 10);
    assertThat(same.verdict("open.low")).isEqualTo(Verdict.PASS);
    assertThat(same.finding("open.low").orElseThrow().text())
        .isEqualTo(
            "Section low, driven together with high, opens clear of everything on the machine.");
    // each alone would swing into the other
    assertThat(beside("", 10).verdict("open.low.lowFlap.highFlap")).isEqualTo(Verdict.FAIL);
  }

  /** Two flaps over each other, hinged over each other, by the same angle. */
  private static TestMachine beside(String drive, double gapMm) {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "lowFlap", Boxes.at(0, Z - 1, LONG, Z + 1), 50, 50, "");
    Boxes.add(m, "highFlap", Boxes.at(0, Z + 1 + gapMm, LONG, Z + 3 + gapMm), 50, 50, "");
    String driven = drive.isEmpty() ? "" : ", 'drive': '" + drive + "'";
    return m.pin("lowHinge", 0, Z)
        .pin("highHinge", 0, Z + 2 + gapMm)
        .with(
            "sections",
            "low",
            "{'parts': ['lowFlap'], 'pivot': 'lowHinge', 'angle': '60 deg'" + driven + "}")
        .with(
            "sections",
            "high",
            "{'parts': ['highFlap'], 'pivot': 'highHinge', 'angle': '60 deg'" + driven + "}");
  }

  /**
   * Parallel planes that turn alike, their hinges h over each other: at the angle a they are h cos
   * a less both half thicknesses apart, nearest when open; 3 mm are asked.
   */
  @ParameterizedTest
  @ValueSource(doubles = {7.9, 8.1})
  void theGapBetweenTwoMoversIsThatOfTheInstant(double gapMm) {
    TestMachine m = beside("hoist", gapMm);
    double open = (gapMm + 2) * Math.cos(Math.toRadians(60)) - 2;
    if (open >= 3) {
      assertThat(m.verdict("open.low")).isEqualTo(Verdict.PASS);
      return;
    }
    Finding f = m.finding("open.low.lowFlap.highFlap").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isCloseTo(open, within(0.1));
    assertThat(f.opening().orElseThrow()).isCloseTo(1, within(0.01));
    // told where it is on the open machine: along the flaps at 60 degrees
    PointMm at = f.where().orElseThrow().minus(new PointMm(0, Z)).turned(Math.toRadians(-60));
    assertThat(at.x()).isBetween(0.0, LONG + gapMm);
    assertThat(at.z()).isBetween(0.0, gapMm);
    assertThat(m.study().standing(Condition.open("low")).orElseThrow().shapes().get("highFlap"))
        .isNotSameAs(m.study().shapes().get("highFlap"));
  }

  /** No point goes farther than the bound says, seen from the other; motions from a seed. */
  @Test
  void pointsKeepWithinTheBoundOfTheTwo() {
    SplittableRandom random = new SplittableRandom(5);
    SectionMotion links =
        new FourBar(
            new PointMm(0, 0),
            new PointMm(300, 20),
            new PointMm(20, 200),
            new PointMm(330, 260),
            0.9);
    for (int k = 0; k < 300; k++) {
      Hinge hinge =
          new Hinge(
              new PointMm(random.nextDouble(-500, 500), random.nextDouble(500)),
              random.nextDouble(-2, 2));
      boolean first = random.nextBoolean();
      DrivenTogether both =
          first ? new DrivenTogether(links, hinge) : new DrivenTogether(hinge, links);
      double from = random.nextDouble(0.9);
      double to = from + random.nextDouble(1 - from);
      PointMm p = new PointMm(random.nextDouble(-500, 500), random.nextDouble(-500, 500));
      double a = random.nextDouble(from, to);
      double b = random.nextDouble(from, to);
      double most = both.swing(from, to).mostMm(p.distance(both.swing(from, to).pole()));
      assertThat(both.at(a).apply(p).distance(both.at(b).apply(p)))
          .isLessThanOrEqualTo(most + 1e-9);
      // where it is on the machine is where the mover takes it
      SectionMotion mover = first ? links : hinge;
      SectionMotion seat = first ? hinge : links;
      assertThat(seat.at(a).apply(both.at(a).apply(p)).distance(mover.at(a).apply(p)))
          .isLessThan(1e-9);
    }
  }
}
