package org.longlow.constraints.check.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * A lid on a hinge, held by gas springs and a catch, on both sides of each limit. Figures are
 * worked out again with levers: the mass of the lid, where its centre is, the sine rule for a gas
 * spring.
 */
class OpenerFindingsTest {

  private static final double G = 9.80665;

  /** The hinge of the lid of the tourer. */
  private static final PointMm HINGE = new PointMm(-560, 950);

  /** What is as far from the hinge and level with it. */
  private static TestMachine grip(TestMachine machine) {
    return machine.pin("lift", -260, 950).field("sections", "lid", "grip", "'lift'");
  }

  private static TestMachine lid() {
    return grip(TestMachine.tourer());
  }

  private static TestMachine sprung(String force) {
    return sprung(-520, 790, force, "100 mm");
  }

  private static TestMachine sprung(double footX, double footZ, String force, String stroke) {
    return lid()
        .pin("foot", footX, footZ)
        .pin("eye", -450, 945)
        .field(
            "sections",
            "lid",
            "gasSprings",
            "[{'frame': 'foot', 'section': 'eye', 'force': '"
                + force
                + "', 'length': '270 mm', 'stroke': '"
                + stroke
                + "'}]");
  }

  private static Finding of(TestMachine machine, String id) {
    return machine.finding(id).orElseThrow();
  }

  @Test
  void aLidOfWhichNothingIsSaidHasNoSuchFinding() {
    assertThat(TestMachine.tourer().findings())
        .noneMatch(f -> f.id().startsWith("hand-force") || f.id().startsWith("stays-open"));
  }

  /** By the lever of weight and hand, where the lid is shut and its weight farthest out. */
  @Test
  void aHandLiftsItsWeightByLevers() {
    TestMachine machine = lid();
    PartShape lid = machine.study().shapes().get("lid");
    Finding f = of(machine, "hand-force.lid");
    double most = 0;
    for (int deg = 0; deg <= 80; deg++) {
      PointMm arm = lid.centre().minus(HINGE).turned(Math.toRadians(deg));
      most = Math.max(most, lid.massKg() * G * arm.x() / 300);
    }
    assertThat(f.value()).isCloseTo(most, within(0.02 * most));
    assertThat(f.limit()).isEqualTo(60);
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.text()).contains("It does not go up by itself.");
  }

  @Test
  void whatIsHeavierThanAHandMayLiftFails() {
    double needs = of(lid(), "hand-force.lid").value();
    assertThat(
            lid()
                .with("demands", "handForce", Double.toString(needs + 0.01))
                .verdict("hand-force.lid"))
        .isEqualTo(Verdict.PASS);
    Finding over =
        of(lid().with("demands", "handForce", Double.toString(needs - 0.01)), "hand-force.lid");
    assertThat(over.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(over.text()).contains("Let gas springs or a counterweight help");
    // done as it says: less to lift
    assertThat(
            lid()
                .part("lid", "mass", "'1 kg'")
                .with("demands", "handForce", Double.toString(needs - 0.01))
                .verdict("hand-force.lid"))
        .isEqualTo(Verdict.PASS);
  }

  /** By the lever of the spring's line about the hinge: the area of a triangle over its base. */
  @Test
  void aGasSpringHoldsItByLevers() {
    Finding f = of(sprung("100 N"), "stays-open.lid");
    PointMm foot = new PointMm(-520, 790).minus(HINGE);
    PointMm eye = new PointMm(-450, 945).minus(HINGE).turned(Math.toRadians(80));
    double length = eye.distance(foot);
    double push = 100 * (1 + 0.3 * (270 - length) / 100) * 0.9 * 263.15 / 293.15;
    double arm = foot.cross(eye) / length;
    PartShape lid = sprung("100 N").study().shapes().get("lid");
    PointMm centre = lid.centre().minus(HINGE).turned(Math.toRadians(80));
    double level = (push * arm - lid.massKg() * G * centre.x()) / 300;
    // the road slopes by the sag of the empty machine, less than a degree
    assertThat(f.value()).isCloseTo(level, within(0.3)).isPositive();
    // what a spring loses over the years is from memory
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
  }

  @Test
  void tooWeakASpringLetsItFall() {
    Finding weak = of(sprung("1 N"), "stays-open.lid");
    assertThat(weak.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(weak.text()).contains("falls shut").contains("Take more help");
    // without any help it is propped
    assertThat(lid().verdict("stays-open.lid")).isEqualTo(Verdict.CAUTION);
    assertThat(lid().finding("no-help.lid")).isEmpty();
  }

  /** 60 kg that nothing holds: the hand that it falls on would have to hold more than is asked. */
  @Test
  void whatFallsOnHandsFailsWhereAHandCannotHoldIt() {
    TestMachine heavy = lid().part("lid", "mass", "'60 kg'");
    Finding f = of(heavy, "stays-open.lid");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    double most = of(heavy, "hand-force.lid").value();
    assertThat(f.text()).contains(Math.round(most) + " N come on a hand");
    for (int by : new int[] {-1, 1}) {
      assertThat(
              heavy
                  .with("demands", "handForce", Double.toString(most + by))
                  .verdict("stays-open.lid"))
          .isEqualTo(by < 0 ? Verdict.FAIL : Verdict.CAUTION);
    }
  }

  @Test
  void deadSpringsAreTold() {
    Finding dead = of(sprung("100 N"), "no-help.lid");
    assertThat(dead.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(dead.value()).isCloseTo(-of(lid(), "stays-open.lid").value(), within(1e-9));
    Finding power = of(lid().field("sections", "lid", "drive", "'hoist'"), "no-help.lid");
    assertThat(power.text()).contains("the power of hoist gone");
  }

  @Test
  void aWayOutIsLiftedWithoutHelp() {
    TestMachine out = sprung("100 N").field("sections", "lid", "wayOut", "true");
    Finding f = of(out, "way-out.lid");
    assertThat(f.value()).isCloseTo(of(lid(), "hand-force.lid").value(), within(1e-9));
    String own = Double.toString(f.value() + 0.01);
    assertThat(out.with("demands", "wayOutForce", own).verdict("way-out.lid"))
        .isEqualTo(Verdict.PASS);
    String less = Double.toString(f.value() - 0.01);
    assertThat(out.with("demands", "wayOutForce", less).verdict("way-out.lid"))
        .isEqualTo(Verdict.FAIL);
  }

  /** Half of the 50 N of EN 1005-3 for arms of somebody sitting; standing 60 N stay asked. */
  @Test
  void whoSitsLiftsLessThanWhoStandsBeside() {
    double perKg = of(lid(), "hand-force.lid").value() / lidKg();
    assertThat(wayOut(24.9 / perKg).verdict()).isEqualTo(Verdict.PASS);
    Finding heavy = wayOut(25.1 / perKg);
    assertThat(heavy.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(heavy.limit()).isEqualTo(25);
  }

  private static double lidKg() {
    return lid().study().shapes().get("lid").massKg();
  }

  private static Finding wayOut(double kg) {
    TestMachine out = lid().part("lid", "mass", "'" + kg + " kg'");
    return of(out.field("sections", "lid", "wayOut", "true"), "way-out.lid");
  }

  @Test
  void whatNothingIsSaidOfIsToldAsNotJudged() {
    Finding f = of(TestMachine.tourer(), "unjudged.sections");
    assertThat(f.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(f.text()).contains("not said of lid,");
    assertThat(lid().finding("unjudged.sections")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"270, 100, PASS", "170, 100, FAIL", "330, 100, FAIL", "270, 40, FAIL"})
  void aGasSpringIsAsLongAsItsWay(double length, double stroke, Verdict verdict) {
    TestMachine machine =
        sprung("50 N")
            .field(
                "sections",
                "lid",
                "gasSprings",
                "[{'frame': 'foot', 'section': 'eye', 'force': 50, 'length': "
                    + length
                    + ", 'stroke': "
                    + stroke / (length < 200 ? 2 : 1)
                    + "}]");
    Finding f = of(machine, "gas-spring.lid.1");
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    if (stroke < 50) {
      assertThat(f.text()).contains("with a stroke of at least", "mm that is at least ");
      java.util.regex.Matcher said =
          java.util.regex.Pattern.compile(
                  "stroke of at least ([0-9.]+) mm that is at least ([0-9.]+) mm long drawn out and"
                      + " at most ([0-9.]+) mm pushed in")
              .matcher(f.text());
      assertThat(said.find()).as(f.text()).isTrue();
      double drawn = Double.parseDouble(said.group(2));
      assertThat(drawn - Double.parseDouble(said.group(3)))
          .isCloseTo(Double.parseDouble(said.group(1)), within(0.21));
    }
  }

  private static TestMachine caught(String depth, double ahead, String more) {
    return sprung("200 N")
        .pin("jaw", -290, 820)
        .pin("striker", -290 + ahead, 820)
        .field(
            "sections",
            "lid",
            "catches",
            "[{'jaw': 'jaw', 'striker': 'striker', 'depth': '"
                + depth
                + "', 'play': '3 mm'"
                + more
                + "}]");
  }

  @Test
  void aCatchEngagesByWhatItsPlayLeaves() {
    Finding f = of(caught("9 mm", 2, ", 'spring': 12"), "catch.lid.1");
    assertThat(f.value()).isCloseTo(4, within(1e-9));
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(caught("9 mm", -2, ", 'spring': 12").verdict("catch.lid.1")).isEqualTo(Verdict.PASS);
    assertThat(caught("9 mm", 2.01, ", 'spring': 12").verdict("catch.lid.1"))
        .isEqualTo(Verdict.FAIL);
    Finding far = of(caught("9 mm", 11, ", 'spring': 12"), "catch.lid.1");
    assertThat(far.value()).isCloseTo(-5, within(1e-9));
    assertThat(far.text()).contains("does not engage, by 5 mm at worst");
    // nothing keeps its jaw shut
    assertThat(caught("9 mm", 2, "").verdict("catch.lid.1")).isEqualTo(Verdict.CAUTION);
  }

  @Test
  void aPushedLidNeedsACatch() {
    assertThat(sprung("200 N").verdict("shut.lid")).isEqualTo(Verdict.FAIL);
    assertThat(caught("9 mm", 0, "").verdict("shut.lid")).isEqualTo(Verdict.CAUTION);
    assertThat(caught("9 mm", 0, ", 'spring': 12").verdict("shut.lid")).isEqualTo(Verdict.PASS);
    assertThat(sprung("1 N").verdict("shut.lid")).isEqualTo(Verdict.CAUTION);
  }

  /** What does not engage holds nothing; of two, one that does not asks for care. */
  @Test
  void aCatchThatFailsHoldsNothingShut() {
    TestMachine loose = caught("9 mm", 5, ", 'spring': 12");
    assertThat(loose.verdict("catch.lid.1")).isEqualTo(Verdict.FAIL);
    assertThat(of(loose, "shut.lid").text()).contains("its catch does not engage");
    assertThat(loose.verdict("shut.lid")).isEqualTo(Verdict.FAIL);
    assertThat(caught("9 mm", 0, ", 'spring': 12").verdict("shut.lid")).isEqualTo(Verdict.PASS);
    String good = "{'jaw': 'jaw', 'striker': 'striker', 'depth': 9, 'play': 3, 'spring': 12}";
    String bad = good.replace("'play': 3", "'play': 8");
    TestMachine two = caught("9 mm", 0, "");
    assertThat(
            two.field("sections", "lid", "catches", "[" + good + ", " + bad + "]")
                .verdict("shut.lid"))
        .isEqualTo(Verdict.CAUTION);
    assertThat(
            two.field("sections", "lid", "catches", "[" + good + ", " + good + "]")
                .verdict("shut.lid"))
        .isEqualTo(Verdict.PASS);
  }

  /** Its eyes are 268 mm apart at most on its way. */
  @Test
  void whatAGasSpringHoldsPastItsLengthAsksForCare() {
    TestMachine far = sprung(-520, 790, "100 N", "100 mm");
    assertThat(of(far, "stays-open.lid").value()).isPositive();
    TestMachine past =
        far.field(
            "sections",
            "lid",
            "gasSprings",
            "[{'frame': 'foot', 'section': 'eye', 'force': 100, 'length': 200, 'stroke': 80}]");
    assertThat(past.verdict("gas-spring.lid.1")).isEqualTo(Verdict.FAIL);
    Finding stays = of(past, "stays-open.lid");
    assertThat(stays.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(stays.text()).contains("stays there").contains("mend that first");
    assertThat(past.verdict("hand-force.lid")).isNotEqualTo(Verdict.PASS);
  }

  /**
   * What hangs on the lid alone and is not said to move with it; on a pin that stays it is well.
   */
  @Test
  void whatHangsOnALidBelongsToItsParts() {
    TestMachine box = Boxes.add(lid(), "box", Boxes.at(-400, 990, -300, 1040), 50, 50, "");
    assertThat(box.finding("left-behind.lid.box")).isEmpty();
    TestMachine hung =
        box.with("pins", "boxPin", "{'at': [-400, 990], 'nailed': true, 'with': 'lid'}");
    Finding f = of(hung, "left-behind.lid.box");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).contains("box hangs on boxPin").contains("Add it to the parts of lid");
    double without = of(hung, "hand-force.lid").value();
    TestMachine added = hung.field("sections", "lid", "parts", "['lid', 'box']");
    assertThat(added.finding("left-behind.lid.box")).isEmpty();
    // 0.1 kg, 210 mm from the hinge, and the hand 300 mm
    assertThat(of(added, "hand-force.lid").value() - without)
        .isCloseTo(0.1 * G * 210 / 300, within(0.03));
  }

  @Test
  void aSectionThatDoesNotMoveSaysWhatItLacks() {
    TestMachine still = caught("9 mm", 0, "").field("sections", "lid", "angle", "'0 deg'");
    assertThat(still.verdict("open.lid")).isEqualTo(Verdict.FAIL);
    assertThat(of(still, "open.lid").text()).contains("with its angle of 0° nothing of it moves");
    assertThat(still.verdict("hand-force.lid")).isEqualTo(Verdict.NOT_APPLICABLE);
    // 1 mm of way at its far end
    assertThat(lid().field("sections", "lid", "angle", "'0.5 deg'").verdict("open.lid"))
        .isEqualTo(Verdict.PASS);
  }

  /** A hatch that opens down hangs on what holds it shut; by the lever of its weight. */
  @Test
  void aHatchThatItsWeightOpensNeedsACatch() {
    TestMachine hatch = lid().field("sections", "lid", "angle", "'-60 deg'");
    Finding f = of(hatch, "shut.lid");
    PartShape lid = hatch.study().shapes().get("lid");
    double push = lid.massKg() * G * lid.centre().minus(HINGE).x() / 300;
    assertThat(f.value()).isCloseTo(push, within(0.02 * push));
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).doesNotContain("gas springs");
    assertThat(lid().finding("shut.lid")).isEmpty();
  }

  /** A spring over the lid pushes it shut: what it hinders with is most where it is hot. */
  private static TestMachine hindered(String force) {
    return sprung(-450, 1200, force, "125 mm");
  }

  /** By the lever of the spring, 110 mm, and a hand, 300 mm from the hinge. */
  @Test
  void aSpringThatHindersIsLookedAtHot() {
    double push = 100 * (1 + 0.3 * 15 / 125) * 313.15 / 293.15;
    double weight = -of(hindered("1 N"), "shut.lid").value();
    Finding f = of(hindered("100 N"), "hand-force.lid");
    assertThat(f.value()).isGreaterThan(0.98 * (weight + push * 110 / 300));
    // its weight shuts it too
    assertThat(of(hindered("100 N"), "shut.lid").verdict()).isEqualTo(Verdict.CAUTION);
  }

  /** What only a gas spring holds shut falls open when that is dead. */
  @Test
  void aHatchThatASpringHoldsShutIsLookedAtWithItDead() {
    TestMachine hatch =
        hindered("100 N").pin("foot", -450, 690).field("sections", "lid", "angle", "'-40 deg'");
    Finding f = of(hatch, "shut.lid");
    double weight = of(lid().field("sections", "lid", "angle", "'-60 deg'"), "shut.lid").value();
    assertThat(f.value()).isCloseTo(weight, within(1e-9));
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
  }

  @Test
  void aJawAtTheHingeHoldsNothing() {
    TestMachine machine =
        caught("9 mm", 0, ", 'spring': 12, 'pull': 500")
            .pin("jaw", HINGE.x() + 10, HINGE.z())
            .pin("striker", HINGE.x() + 10, HINGE.z());
    assertThat(machine.verdict("catch.lid.1")).isEqualTo(Verdict.FAIL);
    assertThat(of(machine, "catch.lid.1").text()).contains("holds nothing");
    assertThat(machine.finding("release.lid.1")).isEmpty();
    TestMachine farther =
        machine.pin("jaw", HINGE.x() + 20, HINGE.z()).pin("striker", HINGE.x() + 20, HINGE.z());
    assertThat(farther.verdict("catch.lid.1")).isEqualTo(Verdict.PASS);
  }

  @Test
  void aGripThatStandsStillSilencesNothing() {
    TestMachine still = sprung("100 N").pin("lift", HINGE.x(), HINGE.z());
    assertThat(of(still, "hand-force.lid").text()).contains("at its far end (lift stands still)");
    assertThat(still.finding("gas-spring.lid.1")).isPresent();
  }

  /** The load of the jaw by levers: what pushes at the grip, 300 mm from the hinge. */
  @Test
  void aReleaseIsPulledAgainstSpringAndFriction() {
    TestMachine machine = caught("9 mm", 0, ", 'spring': 12, 'pull': 500");
    double jaw = new PointMm(-290, 820).distance(HINGE);
    double load = of(machine, "shut.lid").value() * 300 / jaw;
    Finding f = of(machine, "release.lid.1");
    assertThat(f.limit()).isCloseTo(12 + 0.3 * load, within(1e-9));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION); // friction from memory
    String less = ", 'spring': 12, 'pull': " + (f.limit() - 0.01);
    assertThat(caught("9 mm", 0, less).verdict("release.lid.1")).isEqualTo(Verdict.FAIL);
  }

  /** Two lids on one drive: what one grips on the other goes away from it as both open. */
  @Test
  void aCatchBetweenTwoOfOneDriveIsHeldOverTheirWay() {
    TestMachine apart = two("");
    assertThat(of(apart, "catch.lid.1").value()).isCloseTo(6, within(1e-9));
    TestMachine together = two("'hoist'");
    PointMm jaw = new PointMm(-290, 820);
    PointMm one = jaw.turnedAbout(HINGE, Math.toRadians(80));
    PointMm other = jaw.turnedAbout(new PointMm(-560, 940), Math.toRadians(80));
    Finding f = of(together, "catch.lid.1");
    assertThat(f.value()).isCloseTo(9 - 3 - one.distance(other), within(1e-6));
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text())
        .contains("driven together with bin", "They part on the way", "shut they are 0 mm apart")
        .contains("what the catch is to hold lid to, which is not bin")
        .doesNotContain("deeper");
  }

  private static TestMachine two(String drive) {
    String driven = drive.isEmpty() ? "" : ", 'drive': " + drive;
    TestMachine machine =
        caught("9 mm", 0, ", 'spring': 12")
            .pin("low", -560, 940)
            .with(
                "sections",
                "bin",
                "{'parts': ['boot'], 'pivot': 'low', 'angle': '80 deg'" + driven + "}")
            .with("pins", "striker", "{'at': [-290, 820], 'nailed': true, 'with': 'bin'}");
    return drive.isEmpty() ? machine : machine.field("sections", "lid", "drive", drive);
  }

  @Test
  void aStrikerOnTheSameSectionHoldsNothing() {
    TestMachine machine =
        caught("9 mm", 0, ", 'spring': 12")
            .with("pins", "striker", "{'at': [-290, 820], 'nailed': true, 'with': 'lid'}");
    assertThat(machine.verdict("catch.lid.1")).isEqualTo(Verdict.FAIL);
    assertThat(of(machine, "catch.lid.1").text()).contains("holds nothing");
  }

  @Test
  void aMachineOfTwoWheelsGivesFiguresOrNone() {
    List<Finding> all = sprung("100 N").field("sections", "lid", "angle", "'0 deg'").findings();
    assertThat(all)
        .filteredOn(f -> f.about().words().startsWith("lid"))
        .noneMatch(f -> f.text().contains("NaN") || f.text().contains("Infinity"));
  }
}
