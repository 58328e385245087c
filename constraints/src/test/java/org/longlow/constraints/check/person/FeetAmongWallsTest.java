package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.JointLimits;
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

  /**
   * Hip, pan, wall and ankle by hand: the leg hangs over what stands highest between hip and foot.
   * Low or narrow enough a whole foot stands, then the ball of it, then none.
   */
  @ParameterizedTest
  @CsvSource({
    "180, 120",
    "230, 220",
    "260, 200",
    "260, 300",
    "400, 350",
    "450, 540",
    "520, 520",
    "600, 500"
  })
  void theLegGoesOverTheWallBesideIt(double outMm, double topMm) {
    double[] corners = Boxes.at(-300, 62, 1200, topMm);
    TestMachine both =
        Boxes.add(TestMachine.runabout(), "wall", corners, outMm, -150, ", 'both': true");
    Study study = both.study();
    Sitting joss = study.sitting("Joss", Occupant.RIDER).orElseThrow();
    Standing laden =
        study.standings().stream()
            .filter(s -> s.condition().ladenBy(joss.occupant()))
            .findFirst()
            .orElseThrow();
    Body body = joss.body();
    double up = laden.ground().heightMm(joss.posture().orElseThrow().hip());
    double round = body.measures().get("calfcircumference") / (2 * Math.PI);
    double half = Math.max(Figure.footBreadthMm(body) / 2, round + 1);
    // the wall lies level on the drawing, the road under it does not
    PointMm hip = joss.posture().orElseThrow().hip();
    double top =
        Math.max(
            laden.ground().heightMm(new PointMm(hip.x() - 60, topMm)),
            laden.ground().heightMm(new PointMm(hip.x() + 60, topMm)));
    double[] pan = {180 + round, up};
    double[] wall = {outMm + round, top + round};
    double foot = Math.max(180, outMm) + half;
    double[] from = {body.hipHalfMm(), up};
    double flat = over(from, pan, wall, new double[] {foot, body.foot().ankle().z()});
    double point = JointLimits.ANKLE_HIGH - Math.PI / 2;
    double raised =
        body.foot().ankle().z() * Math.cos(point)
            + (body.foot().ballMm() - body.foot().ankle().x()) * Math.sin(point);
    double leg = body.thighMm() + body.shankMm();
    double ball = over(from, pan, wall, new double[] {foot, raised}) - leg;
    Finding f = find(study, "foot.Joss");
    if (flat - leg > 40) {
      assertThat(f.verdict()).as(f.text()).isEqualTo(ball <= 0 ? Verdict.CAUTION : Verdict.FAIL);
      assertThat(f.value()).isCloseTo(flat - leg, within(2.0));
      assertThat(f.text())
          .startsWith(
              ball <= 0
                  ? "Joss stands on the ball of the foot past "
                  : "Joss cannot reach the ground past ");
    } else {
      assertThat(f.value()).isZero();
      assertThat(f.text()).startsWith("Joss puts a whole foot on the ground at a stop.");
    }
    Finding down = find(study, "feet-down.Joss.feet");
    assertThat(down.value()).isCloseTo(Math.max(0, flat - leg), within(2.0));
  }

  /** The shortest way from hip to foot on or over both corners, of all ways by some of them. */
  private static double over(double[] from, double[] one, double[] other, double[] to) {
    double[] a = one[0] <= other[0] ? one : other;
    double[] b = a == one ? other : one;
    double best = Double.POSITIVE_INFINITY;
    for (List<double[]> way :
        List.of(
            List.of(from, to),
            List.of(from, a, to),
            List.of(from, b, to),
            List.of(from, a, b, to))) {
      if (isOver(way, a) && isOver(way, b)) {
        double length = 0;
        for (int k = 1; k < way.size(); k++) {
          length +=
              Math.hypot(way.get(k)[0] - way.get(k - 1)[0], way.get(k)[1] - way.get(k - 1)[1]);
        }
        best = Math.min(best, length);
      }
    }
    return best;
  }

  private static boolean isOver(List<double[]> way, double[] corner) {
    for (int k = 1; k < way.size(); k++) {
      double[] p = way.get(k - 1);
      double[] q = way.get(k);
      if (p[0] <= corner[0] && corner[0] <= q[0] && q[0] > p[0]) {
        double z = p[1] + (q[1] - p[1]) * (corner[0] - p[0]) / (q[0] - p[0]);
        return z >= corner[1] - 1e-9;
      }
    }
    return true;
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
    // asked by the speed of the layout, and two legs alike
    assertThat(TestMachine.runabout().finding("crest.Joss.crest").orElseThrow().text())
        .contains("over a crest laid out for 90 km/h, Joss");
    assertThat(TestMachine.runabout().finding("legs-in.Joss.legs").orElseThrow().text())
        .startsWith("Getting in from either side")
        .contains("on the way of either leg of Joss");
  }

  /** Hands push a fifth to two fifths of the weight of somebody and what they wear. */
  @Test
  void handsPushAShareOfTheWeight() {
    TestMachine low = TestMachine.runabout().with("measures", "seatHeight", "'320 mm'");
    double kg = low.study().sitting("Joss", "rider").orElseThrow().body().massKg();
    String text = low.finding("rise.Joss.rise").orElseThrow().text();
    Matcher said = Pattern.compile("weak people push ([0-9]+) N to ([0-9]+) N").matcher(text);
    assertThat(said.find()).as(text).isTrue();
    double least = Double.parseDouble(said.group(1));
    assertThat(least).isBetween(0.2 * 9.8 * kg - 1, 0.2 * 9.8 * (kg + 10));
    assertThat(Double.parseDouble(said.group(2))).isCloseTo(2 * least, within(1.5));
  }
}
