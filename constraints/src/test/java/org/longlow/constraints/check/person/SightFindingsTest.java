package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** The road seen over any slope and through screens, and what a leg comes down on. */
class SightFindingsTest {

  private static Sitting nell(Study study) {
    return study.sitting("Nell", Occupant.RIDER).orElseThrow();
  }

  private static PointMm eye(Study study) {
    return nell(study).posture().orElseThrow().eye();
  }

  private static Standing laden(Study study) {
    return study.standing(Sat.STANCE).orElseThrow();
  }

  private static Finding sight(Study study, Standing s) {
    return SightFindings.of(study.layout(), nell(study), List.of(s)).get(0);
  }

  private static Finding foot(Study study) {
    return SightFindings.of(study.layout(), nell(study), List.of(laden(study))).get(1);
  }

  // --- sight

  /** Each corner straight ahead throws a shadow on the road; the farthest end of one is seen. */
  @Test
  void theRoadIsSeenBeyondTheLongestShadow() {
    Study study = round().study();
    PointMm eye = eye(study);
    Random random = new Random(5);
    int seen = 0;
    int hidden = 0;
    for (int i = 0; i < 200; i++) {
      PointMm rear = new PointMm(600 * random.nextDouble() - 300, -300 * random.nextDouble());
      double slope = 1.2 * random.nextDouble() - 0.8;
      PointMm way = new PointMm(Math.cos(slope), Math.sin(slope));
      Ground road = new Ground(rear, rear.plus(way.times(1640)));
      Standing s = Changed.with(laden(study), Map.of("ground", road));
      double foot = way.dot(eye.minus(rear));
      double farthest = 0;
      for (PointMm c : ahead(s)) {
        PointMm ray = c.minus(eye);
        if (ray.dot(way) > 0) {
          // where eye + t ray meets rear + u way
          double u = eye.minus(rear).cross(ray) / way.cross(ray);
          boolean down = way.cross(ray) < 0;
          farthest = Math.max(farthest, down ? u - foot : Double.POSITIVE_INFINITY);
        }
      }
      Finding f = sight(study, s);
      if (Double.isInfinite(farthest)) {
        hidden++;
        assertThat(f.value()).isNaN();
        assertThat(f.text()).startsWith("Nell sees no road over everything");
      } else {
        seen++;
        assertThat(f.value()).as("road %s", road).isCloseTo(farthest, within(1e-6 * farthest));
      }
    }
    assertThat(seen).isGreaterThan(20);
    assertThat(hidden).isGreaterThan(20);
  }

  /**
   * With a round hood all about the rider: of its many corners another hides most on each slope.
   */
  private static TestMachine round() {
    PointMm eye = eye(Sat.runabout());
    StringBuilder points = new StringBuilder();
    for (int deg = 0; deg < 360; deg += 12) {
      double a = Math.toRadians(deg);
      points.append(deg == 0 ? "" : ", ");
      points.append("[" + Boxes.mm(900 * Math.cos(a)) + ", " + Boxes.mm(350 * Math.sin(a)) + "]");
    }
    return TestMachine.runabout()
        .with(
            "parts",
            "hood",
            "{'kind': 'box', 'frame': 'hoodPin', 'outline': {'points': ["
                + points
                + "]}, 'left': '200 mm', 'right': '200 mm', 'mass': '1 kg'}")
        .pin("hoodPin", eye.x() + 500, eye.z() - 500);
  }

  /** Corners of what reaches into the 80 mm in the middle of the machine. */
  private static List<PointMm> ahead(Standing s) {
    List<PointMm> corners = new ArrayList<>();
    for (PartShape shape : s.shapes().values()) {
      for (Prism prism : shape.prisms()) {
        if (prism.across().to() >= -40 && prism.across().from() <= 40) {
          for (Coordinate c : prism.outline().getCoordinates()) {
            corners.add(new PointMm(c.x, c.y));
          }
        }
      }
    }
    return corners;
  }

  /** A sheet from below the apron's top to so far over the eye, of what it is called. */
  private static TestMachine withSheet(String kind, double overEyeMm) {
    return TestMachine.runabout()
        .with(
            "parts",
            "sheet",
            "{'kind': '"
                + kind
                + "', 'frame': 'sheetFoot', 'outline': {'points': [['0 mm', '0 mm'], ['-40 mm', '"
                + (eye(Sat.runabout()).z() + overEyeMm - 700)
                + " mm']], 'closed': false}, 'thickness': '3 mm', 'open': true, 'left': '200 mm',"
                + " 'right': '200 mm', 'mass': '1 kg'}")
        .pin("sheetFoot", 1400, 700);
  }

  /** However high a screen reaches, one looks through it with care. */
  @ParameterizedTest
  @ValueSource(doubles = {-60, -1, 120})
  void theRoadIsSeenThroughAScreenAndNotThroughACowl(double overEyeMm) {
    Study bare = Sat.runabout();
    double without = sight(bare, laden(bare)).value();
    Study screen = withSheet("screen", overEyeMm).study();
    Study cowl = withSheet("cowl", overEyeMm).study();
    Finding through = sight(screen, laden(screen));
    Finding over = sight(cowl, laden(cowl));
    assertThat(over.value() > 2 * without).isEqualTo(overEyeMm < 0);
    assertThat(Double.isNaN(over.value())).isEqualTo(overEyeMm > 0);
    assertThat(over.text()).doesNotContain("hrough the sheet").doesNotContain("taken as clear");
    assertThat(over.verdict()).isEqualTo(Verdict.FAIL);
    // the sheet's mass presses the springs a little
    assertThat(through.value()).isCloseTo(without, within(0.02 * without));
    assertThat(through.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(through.text()).contains(" through sheet", "taken as clear").doesNotContain("raise");
    // so do people built alike, all of them
    Finding eyes = eyes(screen);
    assertThat(eyes.value()).isCloseTo(eyes(bare).value(), within(0.02 * without));
    assertThat(eyes.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(eyes.text()).contains("through sheet").doesNotContain("nowhere");
    assertThat(eyes(bare).verdict()).isEqualTo(Verdict.PASS);
  }

  private static Finding eyes(Study study) {
    return study.findings().stream()
        .filter(f -> f.id().equals("eyes.Nell.eyes"))
        .findFirst()
        .orElseThrow();
  }

  private static TestMachine asking(String demand, double mm) {
    return TestMachine.runabout().with("demands", demand, "'" + mm + " mm'");
  }

  @Test
  void roadSeenFromExactlyWhatIsAskedPasses() {
    double seen = sight(Sat.runabout(), laden(Sat.runabout())).value();
    Study exact = asking("sight", seen).study();
    Finding f = sight(exact, laden(exact));
    assertThat(f.margin()).isZero();
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.text()).doesNotContain("raise the eye");
  }

  @ParameterizedTest
  @CsvSource({"80, -40, true", "-40, 80, true", "80, -40.5, false", "-40.5, 80, false"})
  void whatReachesTheEdgeOfStraightAheadHides(double left, double right, boolean hides) {
    TestMachine m = TestMachine.runabout();
    Study study = Boxes.add(m, "wall", Boxes.at(1900, 300, 1920, 1800), left, right, "").study();
    assertThat(sight(study, laden(study)).text().contains("sees no road")).isEqualTo(hides);
  }

  @Test
  void nothingIsSeenFromASeatThatNobodyIsOn() {
    Study study = Sat.runabout();
    Layout layout = study.layout();
    Sitting nobody = Sat.unseatable(nell(study), "the pan is too short");
    assertThat(SightFindings.of(layout, nobody, study.standings())).isEmpty();
    Sitting behind = Sat.as(nell(study), "Nell", "pillion");
    assertThat(SightFindings.of(layout, behind, study.standings())).isEmpty();
    assertThat(SightFindings.of(layout, nell(study), study.standings())).hasSize(2);
  }

  /** Who sits lower presses the springs otherwise; each is asked on the machine as they load it. */
  @Test
  void eachIsAskedWithThemselvesAboard() {
    Study study = Sat.runabout();
    for (String person : List.of("Nell", "Joss")) {
      Occupant rider = new Occupant(person, Occupant.RIDER);
      Sitting sitting = study.sitting(person, Occupant.RIDER).orElseThrow();
      assertThat(SightFindings.of(study.layout(), sitting, study.standings()))
          .hasSize(2)
          .allMatch(f -> f.stance().equals(Optional.of(Condition.laden(List.of(rider)))));
    }
  }

  // --- a foot on the ground

  /** The leg that feet-down finds short over the pan is as short for the one foot. */
  @Test
  void aFootAsShortAsIsAllowedPasses() {
    String high = "'720 mm'";
    double off =
        asking("footDown", 0)
            .with("measures", "seatHeight", high)
            .finding("feet-down.Nell.feet")
            .orElseThrow()
            .value();
    assertThat(off).isGreaterThan(1);
    for (double more : new double[] {0, -1}) {
      Finding f = foot(asking("footDown", off + more).with("measures", "seatHeight", high).study());
      assertThat(f.verdict()).isEqualTo(more == 0 ? Verdict.PASS : Verdict.FAIL);
      assertThat(f.text().contains("lower the seat")).isEqualTo(more < 0);
    }
  }

  /** A box below the hip, so far off from straight below and so high over the drawn road. */
  private static TestMachine below(double offMm, double topMm, double leftMm, double rightMm) {
    PointMm hip = Sat.nell().posture().orElseThrow().hip();
    double x = hip.x() + offMm;
    double[] corners = Boxes.at(x - 30, topMm - 20, x + 30, topMm);
    return Boxes.add(TestMachine.runabout(), "ledge", corners, leftMm, rightMm, "");
  }

  @ParameterizedTest
  @CsvSource({
    // farther out than the leg reaches from the hip, to either side
    "0, 250, 800, 100, true",
    "0, 250, 100, 800, true",
    // as wide as the pan: the leg hangs beside it
    "0, 250, 180, 180, false",
    // wider, but a leg still comes down beside it
    "0, 250, 190, 190, false",
    "0, 250, 280, 100, false",
    // ahead of and behind the leg
    "40, 250, 800, 800, false",
    "-40, 250, 800, 800, false",
    // so low that the foot steps over it
    "0, 35, 800, 800, false"
  })
  void aLegGoesRoundWhatStandsOutBelowTheHip(
      double offMm, double topMm, double leftMm, double rightMm, boolean inTheWay) {
    Study study = below(offMm, topMm, leftMm, rightMm).study();
    Finding f = foot(study);
    assertThat(f.verdict()).isEqualTo(inTheWay ? Verdict.CAUTION : Verdict.PASS);
    assertThat(f.text().endsWith(wayRound("ledge", 800))).isEqualTo(inTheWay);
  }

  /**
   * Nor is there a way before what stands beside the hip where something else stands on: two with
   * less between than a foot needs are as one.
   */
  @Test
  void aLegSetForwardGoesRoundWhatStandsThere() {
    double x = Sat.nell().posture().orElseThrow().hip().x();
    TestMachine one = TestMachine.runabout();
    double[] corners = Boxes.at(x - 100, 200, x + 45, 250);
    double beside = legMm(Boxes.add(one, "ledge", corners, 600, 600, "").study());
    double[] onward = Boxes.at(x + 70, 200, x + 700, 250);
    double two = legMm(Boxes.add(one, "shelf", onward, 600, 600, "").study());
    double[] whole = Boxes.at(x - 100, 200, x + 700, 250);
    TestMachine through = TestMachine.runabout();
    double all = legMm(Boxes.add(through, "ledge", whole, 600, 600, "").study());
    // the second weighs 0.1 kg, by which the springs sink
    assertThat(two).isCloseTo(all, within(0.1)).isGreaterThan(beside + 1);
  }

  private static double legMm(Study study) {
    return GroundLeg.of(nell(study), laden(study)).better().flatMm();
  }

  /** 45 degrees are normal for a hip (American Academy of Orthopaedic Surgeons, from memory). */
  @ParameterizedTest
  @ValueSource(strings = {"left", "right"})
  void noLegGoesFartherOutThan45Degrees(String side) {
    String low = "'420 mm'";
    Study plain = TestMachine.runabout().with("measures", "seatHeight", low).study();
    double hip = laden(plain).ground().heightMm(nell(plain).posture().orElseThrow().hip());
    double down = hip - nell(plain).body().foot().ankle().z();
    for (int more : new int[] {-15, 15}) {
      boolean far = more > 0;
      String wide = "'" + (down + more) + " mm'";
      Finding f =
          foot(
              TestMachine.runabout()
                  .with("measures", "seatHeight", low)
                  .part("pan", side, wide)
                  // the leg is long enough for both
                  .with("demands", "footDown", "'300 mm'")
                  .study());
      assertThat(f.text()).startsWith("Nell puts a whole foot on the ground");
      assertThat(f.verdict()).isEqualTo(far ? Verdict.CAUTION : Verdict.PASS);
      assertThat(f.text().contains("out to the side; 45\u00b0 is as far")).isEqualTo(far);
    }
  }

  /** The same beside a box below the hip. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void noLegGoesFartherOutBesideABox(boolean left) {
    Study plain = below(0, 250, 190, 190).study();
    double hip = laden(plain).ground().heightMm(nell(plain).posture().orElseThrow().hip());
    double down = hip - nell(plain).body().foot().ankle().z();
    for (int more : new int[] {-15, 15}) {
      double half = down + more;
      // as short as it is allowed to be, the leg is long enough for both
      TestMachine m = below(0, 250, left ? half : 100, left ? 100 : half);
      Finding f = foot(m.with("demands", "footDown", "'300 mm'").study());
      assertThat(f.verdict()).isEqualTo(more > 0 ? Verdict.CAUTION : Verdict.PASS);
      assertThat(f.text().endsWith(wayRound("ledge", half))).isEqualTo(more > 0);
    }
  }

  private static String wayRound(String part, double halfMm) {
    return " That is beside the pan; "
        + part
        + " reaches out to "
        + Say.mm(halfMm)
        + " there, and the leg has to go over or round it.";
  }

  @Test
  void ofTwoThatStandOutTheWiderIsNamed() {
    TestMachine m = below(0, 250, 800, 800);
    PointMm hip = Sat.nell().posture().orElseThrow().hip();
    double[] corners = Boxes.at(hip.x() - 30, 300, hip.x() + 30, 320);
    assertThat(foot(Boxes.add(m, "sill", corners, 100, 820, "").study()).text())
        .endsWith(wayRound("sill", 820));
  }

  /** Whoever stands on one leg puts it beside the side stand. */
  @Test
  void aStandIsNotInTheWayOfALeg() {
    PointMm hip = Sat.nell().posture().orElseThrow().hip();
    TestMachine m =
        TestMachine.runabout()
            .part("sideStand", "y", "'500 mm'")
            .pin("standStowed", hip.x() - 100, 165)
            .pin("standPivot", hip.x() + 100, 210);
    assertThat(foot(m.study()).verdict()).isEqualTo(Verdict.PASS);
  }
}
