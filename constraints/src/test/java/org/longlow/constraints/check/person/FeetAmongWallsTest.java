package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.words.Units;

/** Walls beside the legs bar every foot alike, and what is shown as a limit is what decides. */
class FeetAmongWallsTest {

  private static Finding find(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  /** From 50 mm over the road to over the pan, 190 to 400 mm out. */
  private static Study walled(double leftMm, double rightMm, boolean both) {
    double[] corners = Boxes.at(-300, 50, 1200, 750);
    String more = both ? ", 'both': true" : "";
    return Boxes.add(TestMachine.runabout(), "wall", corners, leftMm, rightMm, more).study();
  }

  @Test
  void betweenWallsNoFootStandsHoldsOrRises() {
    Study walled = walled(400, -190, true);
    Finding down = find(walled, "feet-down.Joss.feet");
    Finding hold = find(walled, "hold-up.Joss.slope");
    assertThat(down.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(hold.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(hold.unit()).isEqualTo(FigureUnit.MM);
    assertThat(hold.margin()).isNegative();
    assertThat(hold.text()).contains("to either side no foot of Joss").contains("past wall");
    Finding foot = find(walled, "foot.Joss");
    assertThat(foot.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(foot.text()).startsWith("Joss cannot reach the ground past wall");
    // the same string, for either foot
    assertThat(foot.value()).isCloseTo(down.value(), within(1e-3));
    assertThat(find(walled, "rise.Joss.rise").verdict()).isNotEqualTo(Verdict.PASS);
    assertThat(find(walled, "rise.Joss.rise").text()).contains("none comes there past wall");
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void aWallAtOneSideBarsThatFoot(boolean left) {
    Study walled = left ? walled(400, -190, false) : walled(-190, 400, false);
    String side = left ? "left" : "right";
    Finding hold = find(walled, "hold-up.Joss.slope");
    assertThat(hold.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(hold.text()).contains("to the " + side + " no foot");
    assertThat(hold.across().orElseThrow() > 0).isEqualTo(left);
    assertThat(find(walled, "feet-down.Joss.feet").verdict()).isEqualTo(Verdict.CAUTION);
    Finding foot = find(walled, "foot.Joss");
    assertThat(foot.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(foot.text()).contains("at the " + side + " past wall");
    // they rise at the other side
    assertThat(find(walled, "rise.Joss.rise").text()).doesNotContain("none comes there");
  }

  /** 308 N is care, what they weigh is the end: the figures are held to the one that decides. */
  @ParameterizedTest
  @ValueSource(ints = {2, 5, 6, 12})
  void theLimitShownIsTheOneThatDecides(int slope) {
    Finding f =
        TestMachine.runabout()
            .with("demands", "crossSlope", "'" + slope + " deg'")
            .finding("hold-up.Joss.slope")
            .orElseThrow();
    assertThat(f.margin() >= 0).isEqualTo(f.verdict() == Verdict.PASS);
    assertThat(f.unit() == FigureUnit.NEWTON && f.limit() == StopFindings.LEG_N)
        .as(f.text())
        .isEqualTo(f.unit() == FigureUnit.NEWTON && f.verdict() != Verdict.FAIL);
  }

  /** 250 mm decide without a handhold, 450 mm with one: common practice without a source. */
  @Test
  void theHeightOfASillIsHeldToWhatDecides() {
    Finding bare = TestMachine.runabout().finding("step-over.Nell.step").orElseThrow();
    Finding held = hold("250 mm", "rider").finding("step-over.Nell.step").orElseThrow();
    assertThat(bare.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(bare.limit()).isEqualTo(250);
    assertThat(held.verdict()).isEqualTo(Verdict.PASS);
    assertThat(held.limit()).isEqualTo(450);
  }

  private static TestMachine hold(String y, String seat) {
    return TestMachine.runabout()
        .pin("holdPin", 150, 880)
        .with(
            "parts",
            "hold",
            "{'kind': 'handhold', 'at': 'holdPin', 'diameter': '25 mm', 'y': '"
                + y
                + "', 'length': '60 mm', 'seat': '"
                + seat
                + "', 'mass': '0.001 kg'}");
  }

  @Test
  void aHandholdOfNobodyOrOutOfReachIsSaid() {
    assertThat(hold("250 mm", "rider").finding("seat.hold")).isEmpty();
    Finding far = hold("5000 mm", "rider").finding("seat.hold").orElseThrow();
    Finding whose = hold("250 mm", "nobody").finding("seat.hold").orElseThrow();
    assertThat(far.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(far.text()).contains("out of reach of everybody");
    assertThat(whose.text()).contains("the nobody seat, which has no pan");
  }

  /** What they carry needs its own room, and none is won by sitting before it. */
  @Test
  void aRucksackWidensNoWayOut() {
    Finding bare = out("0 mm");
    Finding thick = out("150 mm");
    assertThat(thick.text()).contains("with the rucksack on needs");
    assertThat(thick.limit() - bare.limit()).isBetween(0.0, 150.0);
    // cells of 25 mm
    assertThat(thick.value()).isBetween(bare.value() - 51, bare.value() + 26);
  }

  private static Finding out(String thick) {
    return Boxes.add(TestMachine.runabout(), "roof", Boxes.at(-300, 1450, 900, 1500), 420, 420, "")
        .field("crew", "Joss", "rucksack", "'5 kg'")
        .field("crew", "Joss", "rucksackThickness", "'" + thick + "'")
        .finding("get-out.Joss.out")
        .orElseThrow();
  }

  /** Torques are said in the units of all other torques. */
  @Test
  void kneesAreSaidInTheUnitsOfTorques() {
    Finding rise = TestMachine.runabout().finding("rise.Joss.rise").orElseThrow();
    assertThat(rise.text()).contains(" N m in each").doesNotContain("Nm");
    assertThat(rise.text(Units.IN)).contains(" lbf ft in each");
  }
}
