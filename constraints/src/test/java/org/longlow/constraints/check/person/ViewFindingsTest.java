package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.EyeEllipse;
import org.longlow.rider.pose.Neck;
import org.longlow.rider.pose.Posture;

/** What is seen of lights, instruments, the road past own limbs, and behind, by hand. */
class ViewFindingsTest {

  /** Spread of sitting eye height of women of one stature and mass, mm: ANSUR II, residual. */
  private static final double BUILD_MM = 20.61;

  /** What a helmet and eyes turned up leave above the face, rad. */
  private static final double VIEW_RAD = Math.toRadians(7);

  private static Sitting nell(Study study) {
    return study.sitting("Nell", Occupant.RIDER).orElseThrow();
  }

  private static Standing laden(Study study) {
    return study.standing(Sat.STANCE).orElseThrow();
  }

  private static Posture posture(Study study) {
    return nell(study).posture().orElseThrow();
  }

  private static List<Finding> behind(Study study) {
    return BehindFindings.of(nell(study), posture(study), laden(study));
  }

  /** A plate square across behind the eye, as wide to both sides: its corner by trigonometry. */
  @ParameterizedTest
  @ValueSource(doubles = {120, 400, 1500})
  void aHighBackHidesTheAngleOfItsCorner(double half) {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    Study study = box("hood", eye.x() - 300, eye.z() - 400, 20, 800, half, half, "box").study();
    PointMm now = posture(study).eye();
    Finding f = behind(study).get(0);
    double near = now.x() - (eye.x() - 300 + 20);
    assertThat(f.value()).isCloseTo(Math.toDegrees(Math.atan2(half, near)), within(0.1));
    // how far heads turn is from memory, so nothing passes by it
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text().contains("from memory")).isEqualTo(f.value() <= 75);
    assertThat(f.text()).contains("hood").contains("none is drawn");
  }

  /** To one side alone: left is not right. */
  @Test
  void leftIsNotRight() {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    Study study = box("hood", eye.x() - 300, eye.z() - 400, 20, 800, 300, 10, "box").study();
    String text = behind(study).get(0).text();
    double left = Double.parseDouble(text.replaceAll(".*lamps ([0-9.]+)° to the left.*", "$1"));
    double right = Double.parseDouble(text.replaceAll(".*and ([0-9.]+)° to the right.*", "$1"));
    assertThat(left).isGreaterThan(40);
    assertThat(right).isLessThan(5);
  }

  static TestMachine box(
      String name,
      double x,
      double z,
      double longMm,
      double highMm,
      double left,
      double right,
      String kind) {
    return TestMachine.runabout()
        .with("pins", name + "Pin", "['" + x + " mm', '" + z + " mm']")
        .with(
            "parts",
            name,
            "{'kind':'"
                + kind
                + "','frame':'"
                + name
                + "Pin','outline':{'points':[['0 mm','0 mm'],['"
                + longMm
                + " mm','0 mm'],['"
                + longMm
                + " mm','"
                + highMm
                + " mm'],['0 mm','"
                + highMm
                + " mm']]},'left':'"
                + left
                + " mm','right':'"
                + right
                + " mm','mass':'0.1 kg'}");
  }

  @Test
  void instrumentsAreReadWithAGlanceOrNot() {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    Finding high =
        instrument(box("dial", eye.x() + 700, eye.z() - 250, 20, 60, 30, 30, "instrument"));
    Finding low =
        instrument(box("dial", eye.x() + 300, eye.z() - 500, 20, 60, 30, 30, "instrument"));
    assertThat(low.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(low.value()).isGreaterThan(25);
    assertThat(high.value()).isCloseTo(Math.toDegrees(Math.atan2(220, 710)), within(1.0));
  }

  /** 30 degrees aside or up is a glance, on both sides; behind is none. */
  @ParameterizedTest
  @CsvSource({
    "700, 0, 390, PASS",
    "700, 0, 420, CAUTION",
    "-300, 0, 100, CAUTION",
    "600, 330, -50, PASS",
    "600, 360, -50, CAUTION",
    "600, -330, -50, PASS",
    "600, -360, -50, CAUTION"
  })
  void noGlanceGoesFarAsideOrUp(double ahead, double y, double up, Verdict verdict) {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    double x = eye.x() + ahead;
    Finding f =
        instrument(
            box(
                "dial",
                x - 10,
                eye.z() + up - 10,
                20,
                20,
                10 + (int) y,
                10 - (int) y,
                "instrument"));
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.figures().margin() < 0).isEqualTo(verdict == Verdict.CAUTION);
  }

  private static Finding instrument(TestMachine machine) {
    Study study = machine.study();
    return InstrumentFindings.of(nell(study), posture(study), laden(study)).get(0);
  }

  /** Rays from the eye past every corner of limbs, out to half a right angle, end no farther. */
  @Test
  void ownLimbsHideTheRoadNoFartherThanTheirFarthestShadow() {
    Study study = TestMachine.asFiled("runabout");
    Finding f =
        OwnBodyFindings.of(study.layout(), nell(study), posture(study), laden(study)).orElseThrow();
    PointMm eye = laden(study).ground().toRoad(posture(study).eye());
    double most = 0;
    for (String limb : List.of("thigh", "shank", "foot", "forearm", "upperArm")) {
      for (var prism : nell(study).fineLimbs().get(limb)) {
        for (var c : prism.outline().getCoordinates()) {
          PointMm p = laden(study).ground().toRoad(new PointMm(c.x, c.y));
          for (int i = 0; i <= 50; i++) {
            double y =
                Math.abs(
                    prism.across().from() + (prism.across().to() - prism.across().from()) * i / 50);
            double x = p.x() - eye.x();
            if (x > 0 && y <= x && p.z() < eye.z()) {
              most = Math.max(most, Math.hypot(x, y) * eye.z() / (eye.z() - p.z()));
            }
          }
        }
      }
    }
    assertThat(f.value()).isBetween(most - 1e-6, 1.05 * most);
  }

  /** The head tips back by what neck and helmet leave; the eyes go down by 15 at ease. */
  @Test
  void headsTipBackAsFarAsNeckAndHelmetLeave() {
    Study study = TestMachine.asFiled("runabout");
    List<Finding> all =
        HeadUpFindings.of(study.layout(), nell(study), posture(study), laden(study), things(study));
    // what a helmet leaves free is from memory; 15 degrees only where the neck alone bends past 30
    assertThat(all.get(1).verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(all.get(0).verdict())
        .isEqualTo(all.get(0).value() + 15 <= 30 ? Verdict.PASS : Verdict.CAUTION);
    double recline = Math.toDegrees(posture(study).angles().recline());
    PointMm way = laden(study).ground().along();
    double tilt = Math.toDegrees(Math.atan2(way.z(), way.x()));
    double down =
        Math.toDegrees(Math.atan2(laden(study).ground().heightMm(posture(study).eye()), 9000));
    assertThat(all.get(0).value()).isCloseTo(recline - 15 + down - tilt, within(1e-6));
    if (nell(study).parts().head().isEmpty()) {
      assertThat(all.get(1).value()).isCloseTo(recline + 45 + 7 + tilt, within(1e-6));
    }
  }

  private static List<LookingAhead> things(Study study) {
    return LookingAhead.of(laden(study).ground().toRoad(posture(study).eye()), laden(study));
  }

  /** A roof 200 mm over the eye, so far ahead of it, from 45 or -300 mm to the right on. */
  private static TestMachine roofed(double aheadMm, double right, String kind) {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    return box("roof", eye.x() - 200, eye.z() + 200, 200 + aheadMm, 20, 300, right, kind);
  }

  private static Finding light(Study study) {
    return HeadUpFindings.of(
            study.layout(), nell(study), posture(study), laden(study), things(study))
        .get(1);
  }

  /** Up to its front edge, atan(200 / ahead); 22 degrees are asked. */
  @ParameterizedTest
  @ValueSource(doubles = {450, 520, 1200, 2400})
  void aRoofCutsOffTheLightAndNotTheRoad(double ahead) {
    Study study = roofed(ahead, 300, "box").study();
    Finding f = light(study);
    double deg = Math.toDegrees(Math.atan(200 / ahead));
    PointMm way = laden(study).ground().along();
    double tilt = Math.toDegrees(Math.atan2(way.z(), way.x()));
    assertThat(f.value()).isCloseTo(deg - tilt, within(0.3));
    assertThat(f.text()).contains("for roof is over that");
    assertThat(f.text().contains("cut that back")).isEqualTo(deg < 22);
    double eye = laden(study).ground().toRoad(posture(study).eye()).z();
    double hung = 850 + 12_200 * Math.tan(Math.toRadians(22));
    double off = Math.max(12_200, (hung - eye) / Math.tan(Math.toRadians(f.value())));
    assertThat(f.text().contains(" or more before the light")).isEqualTo(deg < 22 && off <= 50_000);
    assertThat(f.text()).doesNotContain("farther from the line");
    if (deg < 22 && off <= 50_000) {
      assertThat(f.text())
          .contains(String.format(java.util.Locale.ROOT, ", or stop %.1f m or more", off / 1000));
    }
    Study bare = TestMachine.asFiled("runabout");
    assertThat(sight(study).value()).isCloseTo(sight(bare).value(), within(20.0));
    // beside the middle, or clear
    double free = light(bare).value();
    assertThat(light(roofed(ahead, -45, "box").study()).value()).isCloseTo(free, within(0.3));
  }

  /** An edge that goes over the eye is seen from 80 degrees up on, above what it ends at. */
  @Test
  void whatGoesPastTheEyeIsSeenFromStraightOverItOn() {
    Study study = roofed(450, 300, "box").study();
    PointMm eye = laden(study).ground().toRoad(posture(study).eye());
    LookingAhead roof =
        things(study).stream().filter(a -> a.part().equals("roof")).findFirst().orElseThrow();
    PointMm to = roof.corner().minus(eye);
    assertThat(to.z() / to.x()).isCloseTo(5.671281819617709, within(1e-9)); // tan 80°
    assertThat(to.x()).isCloseTo(450, within(20.0)); // the road is not level
    assertThat(roof.overhead()).isTrue();
  }

  /** 20.6 mm of build, 10 mm of habit and a tenth of the sink, square to each other. */
  @Test
  void eyesSpreadByBuildHabitAndSink() {
    Study study = TestMachine.asFiled("runabout");
    PointMm eye = laden(study).ground().toRoad(posture(study).eye());
    EyeEllipse e = EyeFindings.ellipse(nell(study), posture(study), laden(study), eye);
    double pan = 0.1 * nell(study).seated().orElseThrow().pan().sinkMm();
    double back = 0.1 * nell(study).seated().orElseThrow().back().sinkMm();
    assertThat(pan).isNotEqualTo(back);
    assertThat(e.alongMm())
        .isCloseTo(Math.sqrt(BUILD_MM * BUILD_MM + 100 + pan * pan), within(1e-9));
    assertThat(e.acrossMm()).isCloseTo(Math.sqrt(100 + back * back), within(1e-9));
    PointMm way = laden(study).ground().along();
    assertThat(Math.toDegrees(e.alongRad()))
        .isCloseTo(
            90
                + Math.toDegrees(posture(study).angles().recline())
                - Math.toDegrees(Math.atan2(way.z(), way.x())),
            within(1e-9));
  }

  /** Tipped back, the helmet lies on foam pressed to half: so far from the board as by hand. */
  @Test
  void theRestGivesWayByHalfItsFoam() {
    Study study = TestMachine.asFiled("tourer");
    Sitting sitting = study.sitting("Bram", Occupant.RIDER).orElseThrow();
    Posture posture = sitting.posture().orElseThrow();
    Standing standing = Standing.carrying(sitting.occupant(), study.standings()).orElseThrow();
    Finding light = HeadUpFindings.of(study.layout(), sitting, posture, standing, List.of()).get(1);
    assertThat(light.text()).contains("as far as its rest gives way");
    PointMm way = standing.ground().along();
    double tilt = Math.atan2(way.z(), way.x());
    double head = Math.toRadians(light.value()) - tilt - VIEW_RAD;
    PointMm centre =
        Neck.of(sitting.body(), posture.hip(), posture.angles().recline())
            .head(sitting.body().head().centre(), head);
    CushionPart rest = sitting.parts().head().orElseThrow();
    PointMm from = study.placed().places().pin(rest.from());
    PointMm up = study.placed().places().pin(rest.to()).minus(from);
    double foam =
        rest.layers().stream().mapToDouble(l -> study.placed().places().value(l.thickness())).sum();
    double off = centre.minus(from).cross(up) / up.length();
    assertThat(off).isCloseTo(sitting.body().head().radiusMm() + foam / 2, within(1e-6));
  }

  private static Finding sight(Study study) {
    return SightFindings.of(study.layout(), nell(study), List.of(laden(study))).get(0);
  }

  private static Finding eyesFinding(Study study, int index) {
    return EyeFindings.of(study.layout(), nell(study), posture(study), laden(study), things(study))
        .get(index);
  }

  private static Finding crest(Study study) {
    PointMm eye = laden(study).ground().toRoad(posture(study).eye());
    return EyeFindings.crest(study.layout(), nell(study), laden(study), eye, things(study));
  }

  private static TestMachine ahead(double upMm, double highMm) {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    return box("wall", eye.x() + 400, eye.z() + upMm, 20, highMm, 200, 200, "box");
  }

  @Test
  void whatStandsBeforeTheEyesHidesLightsAndCrests() {
    Study study = ahead(-300, 600).study();
    assertThat(light(study).value()).isZero();
    assertThat(light(study).text()).contains("wall stands before");
    Finding crest = crest(study);
    assertThat(crest.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(crest.value()).isZero();
    assertThat(crest.text()).contains("nowhere").contains("hides the top of the crest");
  }

  /** A roof just over the eyes of one is before the eyes of others. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 150})
  void aRoofJustOverTheEyesIsBeforeHigherOnes(double over) {
    Finding eyes = eyesFinding(ahead(over, 20).study(), 0);
    assertThat(eyes.text().contains("the highest look against wall")).isEqualTo(over < 100);
    assertThat(eyes.verdict()).isEqualTo(over < 100 ? Verdict.CAUTION : Verdict.PASS);
  }

  /** One looks under what hangs only where there is sight over what stands before or behind it. */
  @ParameterizedTest
  @CsvSource({"200, true", "5, false"})
  void whatStandsUpToWhatHangsLeavesNoSightBetween(double noseUnderEye, boolean between) {
    TestMachine hung = ahead(-40, 400);
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    double[] nose = Boxes.at(eye.x() + 300, eye.z() - 600, eye.x() + 340, eye.z() - noseUnderEye);
    List<LookingAhead> things = things(Boxes.add(hung, "nose", nose, 300, 300, "").study());
    assertThat(things)
        .filteredOn(a -> a.part().equals("wall"))
        .singleElement()
        .matches(a -> a.overhead() == between);
  }

  /** Nose, back and roof of one outline that is open to the front: its arms apart. */
  @Test
  void oneLooksThroughTheMouthOfOneOutline() {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    TestMachine shell = box("shell", eye.x() - 200, eye.z() - 500, 900, 150, 300, 300, "box");
    Study nose = shell.study();
    shell.part(
        "shell",
        "outline",
        "{'points': [['0 mm','0 mm'], ['900 mm','0 mm'], ['900 mm','150 mm'], ['20 mm','150 mm'],"
            + " ['20 mm','680 mm'], ['600 mm','680 mm'], ['600 mm','700 mm'], ['0 mm','700 mm']]}");
    assertThat(sight(shell.study()).value()).isCloseTo(sight(nose).value(), within(1.0));
    PointMm way = laden(shell.study()).ground().along();
    double tilt = Math.toDegrees(Math.atan2(way.z(), way.x()));
    assertThat(light(shell.study()).value())
        .isCloseTo(Math.toDegrees(Math.atan(180 / 400.0)) - tilt, within(0.3));
  }

  /** What hangs before the eye, its lower edge so far below it: the road ends at h d / drop. */
  @ParameterizedTest
  @ValueSource(doubles = {12, 40})
  void aRoofWhoseEdgeHangsBelowTheEyeHidesTheRoadBeyond(double drop) {
    Study study = ahead(-drop, 400).study();
    PointMm eye = laden(study).ground().toRoad(posture(study).eye());
    PointMm pin = study.placed().places().pin("wallPin");
    PointMm edge = laden(study).ground().toRoad(pin);
    double far = eye.z() * (edge.x() - eye.x()) / (eye.z() - edge.z());
    Finding f = sight(study);
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    // what fails is the edge, by how much it hangs
    assertThat(f.value()).isCloseTo(eye.z() - edge.z(), within(1e-6));
    assertThat(f.margin()).isCloseTo(edge.z() - eye.z(), within(1e-6));
    assertThat(f.text()).doesNotContain("lower the eye").doesNotContain("raise the eye");
    assertThat(f.text())
        .contains(String.format(java.util.Locale.ROOT, "no farther than %.1f m", far / 1000))
        .contains("The edge of wall hangs before the road beyond")
        .contains("mm below the eye: raise that above the eye.");
    assertThat(f.where().orElseThrow().distance(pin)).isLessThan(1e-6);
    // the light is looked for under it
    Finding light = light(study);
    assertThat(light.value())
        .isCloseTo(
            -Math.toDegrees(Math.atan((eye.z() - edge.z()) / (edge.x() - eye.x()))), within(1e-6));
    assertThat(light.text())
        .contains("below the level, for wall is over that")
        .endsWith(": cut that back.");
    assertThat(eyesFinding(study, 0).text()).contains("the highest look against wall");
    // over the eye it hides no road, and what is clear hides none either
    assertThat(sight(ahead(5, 400).study()).verdict()).isEqualTo(Verdict.PASS);
    Study clear =
        ahead(-drop, 400)
            .part("wall", "kind", "'cowl'")
            .part("wall", "thickness", "'3 mm'")
            .part("wall", "material", "'polycarbonate'")
            .study();
    assertThat(sight(clear).verdict()).isEqualTo(Verdict.PASS);
    Finding low = eyesFinding(clear, 1);
    assertThat(low.text()).startsWith("Nell sees the lower edge of wall before the road ");
    // before the road nearer than 20 m it is looked through, beyond one looks at it
    assertThat(low.verdict()).isEqualTo(far < 20_000 ? Verdict.PASS : Verdict.CAUTION);
  }

  /** Road is seen between what stands and what hangs: each has its own cure, the eye is none. */
  @Test
  void whatStandsAndWhatHangsAreToldApart() {
    TestMachine hangs = ahead(-20, 400);
    TestMachine both = standing(ahead(-20, 400), -50);
    TestMachine stands = standing(TestMachine.runabout(), -50);
    Finding f = sight(both.study());
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.margin()).isNegative();
    assertThat(f.text())
        .contains(": lower what stands in front, and raise the edge of wall too")
        .contains("An eye raised or lowered mends one and spoils the other.")
        .doesNotContain("raise the eye");
    // as is said: both together mend it, neither alone
    assertThat(sight(standing(ahead(5, 400), -350).study()).verdict()).isEqualTo(Verdict.PASS);
    assertThat(sight(hangs.study()).verdict()).isEqualTo(Verdict.FAIL);
    Finding late = sight(stands.study());
    assertThat(late.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(late.text()).contains(": raise the eye or lower what stands in front.");
    // a roof just over the eye comes before one that is raised
    Finding low = sight(standing(ahead(5, 400), -50).study());
    assertThat(low.text())
        .contains(": lower what stands in front; an eye raised enough would have wall before it.");
    assertThat(SightFindings.hangs(f.about()) && SightFindings.late(f.about())).isTrue();
    assertThat(SightFindings.hangs(late.about())).isFalse();
    Finding far = sight(hangs.study());
    assertThat(SightFindings.hangs(far.about())).isTrue();
    assertThat(SightFindings.late(far.about())).isFalse();
    assertThat(far.id()).isEqualTo(late.id()).isEqualTo("sight.Nell");
  }

  /** With a post so far below the eye as its top, 500 mm ahead. */
  private static TestMachine standing(TestMachine machine, double upMm) {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    double x = eye.x() + 500;
    double[] post = Boxes.at(x, eye.z() + upMm - 200, x + 20, eye.z() + upMm);
    return Boxes.add(machine, "post", post, 100, 100, "");
  }

  /** Flat road over a crest, walked along: above the line over what stands, under the edge. */
  @ParameterizedTest
  @ValueSource(doubles = {16, 40, 1000})
  void overACrestTheRoadIsSeenFromWhereToWhere(double drop) {
    Study study = drop == 1000 ? TestMachine.asFiled("runabout") : ahead(-drop, 400).study();
    PointMm eye = laden(study).ground().toRoad(posture(study).eye());
    double fall = 0;
    if (drop < 1000) {
      PointMm edge = laden(study).ground().toRoad(study.placed().places().pin("wallPin"));
      fall = (eye.z() - edge.z()) / (edge.x() - eye.x());
    }
    double v =
        laden(study).places().value(study.layout().demands().limit(Demands.Key.SPEED)) / 1000;
    double laidOut = 1000 * (v * 2.5 + v * v / 2 / 3.4);
    double r = Math.pow(laidOut / (Math.sqrt(1080) + Math.sqrt(600)), 2) / 2;
    double far = 0;
    while (far < Math.sqrt(2 * r * eye.z()) && eye.z() + far * far / 2 / r >= fall * far) {
      far += 10;
    }
    String text = crest(study).text();
    String[] ends =
        text.replaceAll(".* flat on the road from ([0-9.]+) m to ([0-9.]+) m[,;].*", "$1 $2")
            .split(" ");
    assertThat(1000 * Double.parseDouble(ends[0]))
        .isCloseTo(sight(TestMachine.asFiled("runabout")).value(), within(120.0));
    assertThat(1000 * Double.parseDouble(ends[1])).isCloseTo(far, within(70.0));
    assertThat(text).contains("600 mm high up to ");
  }

  /** An object 600 mm high goes away over the crest; where it first goes up behind the edge. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 16, 40})
  void overACrestWhatHangsHidesWhatIsFar(double drop) {
    Study study = ahead(-drop, 400).study();
    PointMm eye = laden(study).ground().toRoad(posture(study).eye());
    PointMm edge = laden(study).ground().toRoad(study.placed().places().pin("wallPin"));
    double fall = (eye.z() - edge.z()) / (edge.x() - eye.x());
    double v =
        laden(study).places().value(study.layout().demands().limit(Demands.Key.SPEED)) / 1000;
    double laidOut = 1000 * (v * 2.5 + v * v / 2 / 3.4);
    double r = Math.pow(laidOut / (Math.sqrt(1080) + Math.sqrt(600)), 2) / 2;
    double bare = Math.sqrt(2 * r) * (Math.sqrt(eye.z()) + Math.sqrt(600));
    double seen = 0;
    while (seen < bare && eye.z() - 600 + seen * seen / 2 / r >= fall * seen) {
      seen += 10;
    }
    Finding f = crest(study);
    assertThat(f.value()).isCloseTo(Math.min(seen, bare), within(20.0));
    assertThat(f.text().contains("the edge of wall hangs before what is farther"))
        .isEqualTo(seen < bare);
  }

  /** A clear back hides nothing, and that is said. */
  @Test
  void throughAClearBackOneSeesWithCare() {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    TestMachine hood = box("hood", eye.x() - 300, eye.z() - 400, 20, 800, 400, 400, "cowl");
    hood.part("hood", "thickness", "'3 mm'");
    double opaque = behind(hood.study()).get(0).value();
    Finding clear = behind(hood.part("hood", "material", "'polycarbonate'").study()).get(0);
    double bare = behind(TestMachine.asFiled("runabout")).get(0).value();
    assertThat(opaque).isGreaterThan(bare + 10);
    assertThat(clear.value()).isCloseTo(bare, within(0.1));
    assertThat(clear.text()).contains("through hood, taken as clear");
    assertThat(clear.verdict()).isEqualTo(Verdict.CAUTION);
  }

  /** v t + v² / 2 a, a = 3.5 m/s² or as much of 9.80665 m/s² as the tyres hold. */
  @ParameterizedTest
  @ValueSource(doubles = {0.9, 0.3, 0.2})
  void overACrestOneStopsAsTheTyresHold(double grip) {
    Study study = TestMachine.runabout().with("demands", "grip", "" + grip).study();
    Finding f = crest(study);
    double speed = laden(study).places().value(study.layout().demands().limit(Demands.Key.SPEED));
    double v = speed / 1000;
    double stop = v + v * v / 2 / Math.min(3.5, grip * 9.80665);
    assertThat(f.limit()).isCloseTo(1000 * stop, within(1.0));
    assertThat(f.verdict()).isEqualTo(f.value() >= f.limit() ? Verdict.PASS : Verdict.CAUTION);
    assertThat(f.text().contains("g are held")).isEqualTo(grip < 0.35);
    assertThat(f.text()).contains("600 mm high").contains("lies flat on the road from");
  }
}
