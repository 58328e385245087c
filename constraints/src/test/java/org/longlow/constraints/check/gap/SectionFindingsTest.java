package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.TestMachine;

/** A flap that swings far above the machine, and what it meets on its way. */
class SectionFindingsTest {

  private static final double X = 600;
  private static final double Z = 2000;
  private static final double LONG = 400;

  /** A thin flap from its hinge forward; it swings up by 90 degrees. */
  private static TestMachine flap(String angle) {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "flap", Boxes.at(X, Z - 1, X + LONG, Z + 1), 50, 50, "");
    return m.with(
            "sections", "roof", "{'parts': ['flap'], 'pivot': 'hinge', 'angle': '" + angle + "'}")
        .pin("hinge", X, Z);
  }

  /** A small diamond whose nearest corner is at a distance from the hinge and an angle. */
  private static TestMachine stone(TestMachine m, double distance, double deg, String more) {
    double a = Math.toRadians(deg);
    double c = Math.cos(a);
    double s = Math.sin(a);
    StringBuilder points = new StringBuilder();
    double[][] corners = {{0, 0}, {10, -6}, {20, 0}, {10, 6}};
    for (double[] p : corners) {
      points.append(points.length() == 0 ? "" : ", ");
      points.append("[");
      points.append(Boxes.mm(p[0] * c - p[1] * s));
      points.append(", ");
      points.append(Boxes.mm(p[0] * s + p[1] * c));
      points.append("]");
    }
    return m.with(
            "parts",
            "stone",
            "{'kind': 'box', 'frame': 'stonePin', 'outline': {'points': ["
                + points
                + "]}, 'left': '20 mm', 'right': '20 mm', 'mass': '0.1 kg'"
                + more
                + "}")
        .with(
            "pins",
            "stonePin",
            "{'at': ["
                + Boxes.mm(X + distance * c)
                + ", "
                + Boxes.mm(Z + distance * s)
                + "], 'nailed': true}");
  }

  @Test
  void aFreeWayPasses() {
    Finding f = stone(flap("90 deg"), 404, 45, "").finding("open.roof").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.text()).isEqualTo("Section roof opens clear of everything on the machine.");
    assertThat(f.stance()).contains(Condition.open("roof"));
    assertThat(f.value()).isZero();
  }

  // the corners of the flap's end go round at hypot(400, 1) mm
  @ParameterizedTest
  @CsvSource({"402, 45", "401, 30", "402.9, 60"})
  void aStoneJustBeyondTheEndComesTooClose(double distance, double deg) {
    double reach = Math.hypot(LONG, 1);
    Finding f =
        stone(flap("90 deg"), distance, deg, "").finding("open.roof.flap.stone").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    // found to within 0.1 mm
    assertThat(f.value()).isCloseTo(distance - reach, within(0.1));
    assertThat(f.limit()).isEqualTo(3);
    assertThat(f.where().orElseThrow().x())
        .isCloseTo(X + distance * Math.cos(Math.toRadians(deg)), within(3.5));
    // either corner of the end is the nearest where it points at the stone
    assertThat(f.opening().orElseThrow() * 90).isCloseTo(deg, within(0.3));
    double away =
        Math.toDegrees(
            Math.acos((reach * reach + distance * distance - 9) / (2 * reach * distance)));
    double first = (deg - away - Math.toDegrees(Math.atan(1 / LONG))) / 90;
    assertThat(f.from().orElseThrow()).isCloseTo(first, within(0.005));
    assertThat(f.text())
        .startsWith("Section roof: flap and stone come too close from ")
        .contains(
            String.format(
                Locale.ROOT, "from %.0f %% open on; worst at %.0f %%", 100 * first, deg / 0.9))
        .contains("To keep the 3 mm asked all the way, ");
    assertThat(f.stance()).contains(Condition.open("roof"));
    assertThat(flap("90 deg").finding("open.roof.flap.stone")).isEmpty();
    assertThat(stone(flap("90 deg"), distance, deg, "").finding("open.roof")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"300, 45, 90 deg", "300, -45, -90 deg"})
  void aStoneInTheWayIsRunInto(double distance, double deg, String angle) {
    Finding f = stone(flap(angle), distance, deg, "").finding("open.roof.flap.stone").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isNegative();
    assertThat(f.text())
        .contains("flap and stone run into each other from ")
        .contains(", where they are " + Say.mm(-f.value()) + " in each other")
        .contains("or list it under touches if they are meant to meet.");
    // swung the other way it is clear
    String other = angle.startsWith("-") ? "90 deg" : "-90 deg";
    assertThat(stone(flap(other), distance, deg, "").finding("open.roof.flap.stone")).isEmpty();
    // and beside it, and where that is meant
    TestMachine beside =
        stone(flap(angle), distance, deg, "")
            .part("stone", "left", "'80 mm'")
            .part("stone", "right", "'-54 mm'");
    assertThat(beside.finding("open.roof.flap.stone")).isEmpty();
    assertThat(
            stone(flap(angle), distance, deg, ", 'touches': ['flap']")
                .finding("open.roof.flap.stone"))
        .isEmpty();
  }

  /** Moved as it is told to, a stone is out of the way. */
  @Test
  void aMoveThatIsSaidClearsTheWay() {
    Finding f = stone(flap("90 deg"), 402, 45, "").finding("open.roof.flap.stone").orElseThrow();
    var m =
        java.util.regex.Pattern.compile("move stone ([0-9.]+) mm forward(?: and ([0-9.]+) mm up)?")
            .matcher(f.text());
    assertThat(m.find()).as(f.text()).isTrue();
    double by = Double.parseDouble(m.group(1));
    double up = m.group(2) == null ? 0 : Double.parseDouble(m.group(2));
    TestMachine moved = stone(flap("90 deg"), 402, 45, "");
    double a = Math.toRadians(45);
    moved.with(
        "pins",
        "stonePin",
        "{'at': ["
            + Boxes.mm(X + 402 * Math.cos(a) + by)
            + ", "
            + Boxes.mm(Z + 402 * Math.sin(a) + up)
            + "], 'nailed': true}");
    assertThat(moved.finding("open.roof.flap.stone")).isEmpty();
    assertThat(moved.finding("open.roof").orElseThrow().verdict()).isEqualTo(Verdict.PASS);
  }

  /** What is made for the machine may be cut to clear the way, a bought motor may not. */
  @ParameterizedTest
  @CsvSource({"box, motor", "motor, box", "box, box", "motor, motor"})
  void onlyWhatIsMadeIsToldToBeCut(String flap, String stone) {
    TestMachine m = stone(flap("90 deg"), 397, 45, "");
    m.part("flap", "kind", "'" + flap + "'").part("stone", "kind", "'" + stone + "'");
    String text = m.finding("open.roof.flap.stone").orElseThrow().text();
    assertThat(text.contains(" off flap straight across")).isEqualTo(flap.equals("box"));
    assertThat(text.contains(" off stone straight across")).isEqualTo(stone.equals("box"));
  }

  @Test
  void whatIsTooCloseWhenShutIsSaidFromShutOn() {
    Finding f = stone(flap("90 deg"), 401, 0, "").finding("open.roof.flap.stone").orElseThrow();
    assertThat(f.text()).contains(" from shut on; worst at 0 %");
    assertThat(f.opening().orElseThrow()).isCloseTo(0, within(0.01));
  }

  /** Two parts of one section stay as they are to each other. */
  @Test
  void partsOfOneSectionSwingTogether() {
    TestMachine m = stone(flap("90 deg"), 300, 45, "");
    m.with("sections", "roof", "{'parts': ['flap', 'stone'], 'pivot': 'hinge', 'angle': '90 deg'}");
    assertThat(m.findings()).noneMatch(f -> f.id().startsWith("open.roof.flap.stone"));
    assertThat(m.findings()).noneMatch(f -> f.id().startsWith("open.roof.stone.flap"));
  }

  /** A block beside a wall: up it goes into that by all its height, down it goes clear. */
  @Test
  void whatIsDeepInItsWayButClearTheOtherWaySeemsToTurnWrong() {
    TestMachine m = block("90 deg");
    Finding f = m.finding("open.roof.flap.wall").orElseThrow();
    assertThat(f.value()).isBetween(-300.0, -100.0);
    assertThat(f.text())
        .startsWith(
            "Section roof seems to open the wrong way: with an angle of -90° instead of 90°")
        .contains("That is more than a shift or a cut mends")
        .doesNotContain("move ");
    // done as it says
    assertThat(block("-90 deg").verdict("open.roof")).isEqualTo(Verdict.PASS);
    // and not said where that way is not clear, by a stone below
    assertThat(stone(m, 350, -60, "").finding("open.roof.flap.wall").orElseThrow().text())
        .startsWith("Section roof: flap and wall run into each other");
  }

  private static TestMachine block(String angle) {
    TestMachine m = flap(angle);
    Boxes.add(m, "flap", Boxes.at(X, Z, X + LONG, Z + 300), 150, 150, "");
    return Boxes.add(m, "wall", Boxes.at(X - 300, Z + 10, X - 10, Z + 300), 150, 150, "");
  }

  /** Of what meets many things none is said to be moved or cut; of what meets one it is. */
  @Test
  void whatMeetsManyThingsIsToOpenAnotherWay() {
    TestMachine m = flap("90 deg");
    for (int k = 0; k < 9; k++) {
      double a = Math.toRadians(5 + 9 * k);
      double x = X + 380 * Math.cos(a);
      double z = Z + 380 * Math.sin(a);
      Boxes.add(m, "post" + k, Boxes.at(x, z, x + 10, z + 10), 20, 20, "");
    }
    assertThat(m.findings().stream().filter(f -> f.id().startsWith("open.roof.flap.post")))
        .hasSize(9)
        .allMatch(f -> f.text().contains("all the way, change how it opens"));
  }

  // --- people

  /** A flap over her head falls forward onto her or swings up. */
  private static TestMachine overHead(String angle, String touches) {
    double x = Sat.nell().posture().orElseThrow().vertex().x();
    double z = Sat.nell().posture().orElseThrow().vertex().z();
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "flap", Boxes.at(x - 300, z + 150, x + 100, z + 154), 50, 50, touches);
    return m.with(
            "sections", "roof", "{'parts': ['flap'], 'pivot': 'hinge', 'angle': '" + angle + "'}")
        .pin("hinge", x - 300, z + 150);
  }

  @Test
  void nobodyIsHitByWhatOpens() {
    Finding f = overHead("-110 deg", "").finding("open.roof.flap.Nell").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.limit()).isEqualTo(10);
    assertThat(f.text()).contains("flap and Nell ");
    assertThat(f.who().orElseThrow().person()).isEqualTo("Nell");
    assertThat(f.source()).contains("between a person and parts");
    assertThat(overHead("-110 deg", "").finding("open.roof.flap.Joss")).isPresent();
    assertThat(overHead("90 deg", "").finding("open.roof.flap.Nell")).isEmpty();
    assertThat(overHead("-110 deg", ", 'touches': ['rider']").finding("open.roof.flap.Nell"))
        .isEmpty();
    Finding hot =
        overHead("-110 deg", ", 'hot': true").finding("open.roof.flap.Nell").orElseThrow();
    assertThat(hot.limit()).isEqualTo(25);
  }

  // --- joints

  /** A bar on the hinge's pin that stays: only beyond their joint they may not meet. */
  private static TestMachine hinged(double barDeg, String angle) {
    TestMachine m = TestMachine.runabout();
    double a = Math.toRadians(barDeg);
    m.pin("hinge", X, Z)
        .pin("end", X + LONG, Z)
        .pin("barEnd", X + LONG * Math.cos(a), Z + LONG * Math.sin(a));
    m.with("parts", "leaf", Boxes.rail("hinge", "end", 10, 0, ""));
    m.with("parts", "bar", Boxes.rail("hinge", "barEnd", 10, 0, ""));
    return m.with(
        "sections", "roof", "{'parts': ['leaf'], 'pivot': 'hinge', 'angle': '" + angle + "'}");
  }

  @Test
  void whatSharesAPinMeetsNowhereElse() {
    Finding f = hinged(60, "90 deg").finding("open.roof.leaf.bar").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text())
        .contains("beyond their joint leaf and bar run into each other")
        .contains("change their shape there");
    assertThat(f.limit()).isZero();
    // at 60 degrees the leaf lies in the bar
    assertThat(f.opening().orElseThrow()).isCloseTo(60 / 90.0, within(0.05));
    assertThat(hinged(60, "-90 deg").finding("open.roof.leaf.bar")).isEmpty();
    assertThat(hinged(60, "30 deg").finding("open.roof.leaf.bar")).isEmpty();
  }

  /** What is so when shut is the joint's own finding. */
  @ParameterizedTest
  @ValueSource(strings = {"90 deg", "-90 deg"})
  void aJointThatOverlapsWhenShutIsNoFaultOfItsWay(String angle) {
    TestMachine m = hinged(3, angle);
    assertThat(m.finding("open.roof.leaf.bar")).isEmpty();
    assertThat(m.finding("joint.bar.leaf").orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
  }

  @Test
  void aLinkageThatCannotMoveFails() {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "flap", Boxes.at(X, Z - 1, X + LONG, Z + 1), 50, 50, "");
    m.pin("f1", X, Z).pin("f2", X + 300, Z).pin("s1", X + 20, Z + 50).pin("s2", X + 320, Z + 50);
    m.with(
        "sections",
        "roof",
        "{'parts': ['flap'], 'frameArms': ['f1', 'f1'], 'sectionArms': ['s1', 's2'], 'angle': '90"
            + " deg'}");
    List<Finding> open = m.findings().stream().filter(f -> f.id().equals("open.roof")).toList();
    assertThat(open).hasSize(1);
    assertThat(open.get(0).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(open.get(0).text()).startsWith("Section roof cannot open: ");
    assertThat(open.get(0).stance()).contains(Condition.open("roof"));
  }
}
