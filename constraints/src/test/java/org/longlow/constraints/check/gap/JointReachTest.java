package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** How far joints reach and what fits on an axle, from plain geometry. */
class JointReachTest {

  /** Two bars from one pin with an angle between them, far above the machine. */
  private static Optional<Finding> bars(double angleDeg, double thinMm, double thickMm) {
    double a = Math.toRadians(angleDeg);
    TestMachine m =
        TestMachine.runabout()
            .pin("knot", 500, 2000)
            .pin("one", 1000, 2000)
            .with("parts", "barA", Boxes.rail("knot", "one", thickMm, 0, ""))
            .with("parts", "barB", Boxes.rail("knot", "two", thinMm, 0, ""))
            .with(
                "pins",
                "two",
                "{'at': ["
                    + Boxes.mm(500 + 500 * Math.cos(a))
                    + ", "
                    + Boxes.mm(2000 + 500 * Math.sin(a))
                    + "], 'nailed': true}");
    return m.finding("joint.barA.barB");
  }

  // two edges at r beside lines that part by an angle meet at r / sin(angle / 2)
  @ParameterizedTest
  @CsvSource({
    "20, 20, 18.9, true",
    "20, 20, 19.4, false",
    "10, 10, 18.9, true",
    "10, 10, 19.4, false"
  })
  void barsOverlapAsFarAsThreeOfTheirDepths(double d, double other, double deg, boolean fails) {
    Optional<Finding> f = bars(deg, d, other);
    assertThat(f.isPresent()).isEqualTo(fails);
    if (fails) {
      double away = d / 2 / Math.sin(Math.toRadians(deg / 2));
      assertThat(f.get().verdict()).isEqualTo(Verdict.FAIL);
      assertThat(f.get().value()).isCloseTo(away, within(0.5));
      assertThat(f.get().limit()).isCloseTo(3 * d, within(1e-9));
      assertThat(f.get().where().orElseThrow().x()).isEqualTo(500);
      assertThat(f.get().text())
          .startsWith("barA and barB share knot but are in each other as far as ")
          .contains("a joint of theirs reaches " + Say.mm(3 * d));
    }
  }

  @Test
  void theThinnerPartSaysHowFarAJointReaches() {
    // edges at r and s beside lines that part by an angle a meet at √(r² + s² + 2 r s cos a) / sin
    // a
    double away = Math.sqrt(5 * 5 + 15 * 15 + 2 * 5 * 15 * Math.cos(Math.PI / 6)) / 0.5;
    for (Finding f : List.of(bars(30, 10, 30).orElseThrow(), bars(30, 30, 10).orElseThrow())) {
      assertThat(f.limit()).isCloseTo(30, within(1e-9));
      assertThat(f.value()).isCloseTo(away, within(0.5));
    }
  }

  private static TestMachine bigBoxOn(double halfMm) {
    TestMachine m = TestMachine.runabout().pin("knot", 500, 2000).pin("one", 1000, 2000);
    m.with("parts", "bar", Boxes.rail("knot", "one", 40, 0, ""));
    Boxes.add(m, "crate", Boxes.at(500, 1900, 500 + halfMm, 2100), 50, 50, "");
    return m.part("crate", "frame", "'knot'");
  }

  /** Of what is no bar a joint reaches 60 mm at most, and not three times 40. */
  @ParameterizedTest
  @CsvSource({"55, false", "70, true"})
  void aJointOfABoxReachesSixtyMillimetres(double boxMm, boolean fails) {
    // the box begins at the pin and goes forward along the bar, which is 40 mm deep
    Optional<Finding> f = bigBoxOn(boxMm).finding("joint.bar.crate");
    assertThat(f.isPresent()).isEqualTo(fails);
    f.ifPresent(x -> assertThat(x.limit()).isEqualTo(60));
  }

  private static TestMachine plates(double overlapMm, String more) {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "plateA", Boxes.at(500, 2000, 540, 2040), 20, 20, "");
    Boxes.add(m, "plateB", Boxes.at(540 - overlapMm, 2000, 640 - overlapMm, 2040), 20, 20, more);
    m.with("pins", "knot", "{'at': ['540 mm', '2020 mm'], 'nailed': true}");
    String at = "{'origin': 'knot'}";
    m.part(
        "plateA",
        "outline",
        "{'points': [['-40 mm', '-20 mm'], ['0 mm', '-20 mm'], ['0 mm', '20 mm'], ['-40 mm', '20"
            + " mm']]}");
    m.part(
        "plateB",
        "outline",
        "{'points': [['"
            + -overlapMm
            + " mm', '-20 mm'], ['60 mm', '-20 mm'], ['60 mm', '20 mm'], ['"
            + -overlapMm
            + " mm', '20 mm']]}");
    return m.part("plateA", "frame", at).part("plateB", "frame", at);
  }

  /** Half of the smaller may be in the larger, which is 40 mm long. */
  @ParameterizedTest
  @CsvSource({"19, false", "21, true", "35, true"})
  void bodiesOnOnePinAreNotInOnePlace(double overlap, boolean fails) {
    Optional<Finding> f = plates(overlap, "").finding("joint.plateA.plateB");
    assertThat(f.isPresent()).isEqualTo(fails);
    if (fails) {
      assertThat(f.get().verdict()).isEqualTo(Verdict.FAIL);
      assertThat(f.get().value()).isCloseTo(overlap / 40, within(1e-9));
      assertThat(f.get().limit()).isEqualTo(0.5);
      assertThat(f.get().text())
          .contains(
              "share knot, and " + Say.percent(overlap / 40) + " of the smaller is in the other");
    }
    assertThat(plates(overlap, ", 'touches': ['plateA']").finding("joint.plateA.plateB")).isEmpty();
  }

  @Test
  void bodiesBesideEachOtherAcrossAreNotInOnePlace() {
    TestMachine beside =
        plates(35, "").part("plateB", "left", "'80 mm'").part("plateB", "right", "'-25 mm'");
    assertThat(beside.finding("joint.plateA.plateB")).isEmpty();
  }

  // --- swingarms

  private static Finding arm(TestMachine m) {
    return m.finding("joint.swingarm.rearWheel").orElseThrow();
  }

  // 110 mm of tyre: 40 mm lie between its side and the outside of an arm of 95 mm
  @Test
  void anArmIsTwoLegsBesideTheTyre() {
    Finding f = arm(TestMachine.runabout());
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.value()).isCloseTo(40, within(1e-9));
    assertThat(f.limit()).isEqualTo(30);
    assertThat(f.text()).endsWith("need 30 mm.");
    Finding narrow = arm(TestMachine.runabout().part("swingarm", "right", "'80 mm'"));
    assertThat(narrow.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(narrow.value()).isCloseTo(25, within(1e-9));
    assertThat(narrow.text()).endsWith("need 30 mm; set each side 5 mm farther out.");
    assertThat(arm(TestMachine.runabout().part("swingarm", "left", "'85 mm'")).verdict())
        .isEqualTo(Verdict.PASS);
  }

  @Test
  void anArmInsideTheTyreFails() {
    TestMachine inside =
        TestMachine.runabout()
            .part("swingarm", "left", "'50 mm'")
            .part("swingarm", "right", "'50 mm'");
    assertThat(arm(inside).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(arm(inside).value()).isNegative();
  }

  // all of it on the left of the tyre's 55 mm, 16 and 14 mm from it
  @ParameterizedTest
  @CsvSource({"71, false", "69, true"})
  void anArmOnOneSideStandsBesideTheTyre(int fromMm, boolean fails) {
    Optional<Finding> f =
        TestMachine.runabout()
            .part("swingarm", "left", "'110 mm'")
            .part("swingarm", "right", "'-" + fromMm + " mm'")
            .finding("joint.swingarm.rearWheel");
    assertThat(f.isPresent()).isEqualTo(fails);
    f.ifPresent(x -> assertThat(x.verdict()).isEqualTo(Verdict.FAIL));
  }

  // 331.8 from pivot to axle, 265.8 of tyre and half of 45 of the bridge leave 43.5 mm
  @ParameterizedTest
  @CsvSource({"303.4, PASS", "303.2, FAIL", "331.8, PASS"})
  void theBridgeOfAnArmKeepsClearOfTheTyre(double length, Verdict verdict) {
    Finding f = arm(TestMachine.runabout().with("measures", "armLength", Boxes.mm(length)));
    assertThat(f.verdict()).isEqualTo(verdict);
    if (verdict == Verdict.FAIL) {
      assertThat(f.value()).isCloseTo(length - 265.8 - 22.5, within(1e-6));
      assertThat(f.limit()).isEqualTo(15);
      assertThat(f.text()).startsWith("The bridge of swingarm at its pivot comes within 14.9 mm");
    } else {
      assertThat(f.value()).isCloseTo(40, within(1e-9));
    }
    assertThat(f.where().orElseThrow().x()).isCloseTo(0, within(1e-6));
  }

  // --- on an axle

  /** A strut that goes up and away from the machine, so that it meets nothing but the tyre. */
  private static Optional<Finding> strut(String axle, double yMm) {
    boolean rear = axle.equals("rearAxle");
    return TestMachine.runabout()
        .with("parts", "strut", Boxes.rail(axle, "q", 20, yMm, ""))
        .pin("q", rear ? -1000 : 2640, 1300)
        .finding("joint.strut." + (rear ? "rearWheel" : "frontWheel"));
  }

  // half of 110 or 90 mm of tyre, 15 mm asked, half of 20 mm of tube
  @ParameterizedTest
  @CsvSource({"rearAxle, 55", "frontAxle, 45"})
  void whatIsOnAnAxleStandsBesideTheTyre(String axle, double half) {
    for (int side : new int[] {1, -1}) {
      assertThat(strut(axle, side * (half + 25.1))).isEmpty();
      Finding near = strut(axle, side * (half + 24)).orElseThrow();
      assertThat(near.verdict()).isEqualTo(Verdict.FAIL);
      // the distance of what is round is searched for to a millionth
      assertThat(near.value()).isCloseTo(14, within(3e-6));
      assertThat(near.limit()).isEqualTo(15);
      assertThat(near.text())
          .contains("it is 14 mm off it where 15 mm are asked; set it farther out");
      Finding in = strut(axle, side * half).orElseThrow();
      assertThat(in.value()).isNegative();
      assertThat(in.text()).contains("it is in it by ");
    }
  }

  /** An outline about the axle, its corners ahead, above, behind and below. */
  private static String square(double cornerMm) {
    return String.format(
        Locale.ROOT,
        "{'points': [['%1$s mm', '0 mm'], ['0 mm', '%1$s mm'], ['-%1$s mm', '0 mm'], ['0 mm',"
            + " '-%1$s mm']]}",
        cornerMm);
  }

  // 14 inches of rim: 177.8 mm of bead seat less 25 mm of well, 305.6 mm across inside
  @ParameterizedTest
  @CsvSource({"152, false", "153.5, true", "160, true"})
  void aMotorFitsInsideItsRim(double cornerMm, boolean fails) {
    Optional<Finding> f =
        TestMachine.runabout()
            .part("motor", "outline", square(cornerMm))
            .part("motor", "touches", "['swingarm']")
            .finding("joint.motor.rearWheel");
    assertThat(f.isPresent()).isEqualTo(fails);
    f.ifPresent(
        x -> {
          // smaller by what its corners reach past the inside lets it in
          assertThat(x.value()).isCloseTo(305.6 / 2 - cornerMm, within(1e-6));
          assertThat(x.limit()).isZero();
          assertThat(x.source()).contains("common practice");
          assertThat(x.text())
              .contains("it is in it by " + Say.mm(cornerMm - 305.6 / 2))
              .contains("not inside its rim (305.6 mm across)")
              .contains("a smaller one, or a wheel with a larger rim, is needed");
        });
  }

  /** Without a size a tyre is as high as it is wide: 265.8 - 60 - 25 = 180.8 mm inside. */
  @ParameterizedTest
  @CsvSource({"180, false", "182, true"})
  void aRimWithoutASizeFollowsFromTheWidth(double cornerMm, boolean fails) {
    Optional<Finding> f =
        TestMachine.runabout()
            .without("rearWheel", "tyre")
            .part("rearWheel", "radius", "'265.8 mm'")
            .part("rearWheel", "width", "'60 mm'")
            .part("motor", "outline", square(cornerMm))
            .part("motor", "left", "'30 mm'")
            .part("motor", "right", "'30 mm'")
            .part("motor", "touches", "['swingarm']")
            .finding("joint.motor.rearWheel");
    assertThat(f.isPresent()).isEqualTo(fails);
    f.ifPresent(x -> assertThat(x.text()).contains("(361.6 mm across)"));
  }

  /** Only a hub turns with the rim; a plate at the end of an arm keeps the gap of 15 mm to it. */
  @ParameterizedTest
  @CsvSource({"block, 152, false", "bracket, 137, false", "bracket, 138.5, true", "box, 152, true"})
  void whatIsNoHubKeepsItsGapInsideTheRim(String kind, double cornerMm, boolean fails) {
    Optional<Finding> f =
        TestMachine.runabout()
            .lacking("motor")
            .with(
                "parts",
                "onAxle",
                "{'kind': '"
                    + kind
                    + "', 'frame': 'rearAxle', 'left': '30 mm', 'right': '30 mm', 'mass': '3 kg',"
                    + " 'touches': ['swingarm'], 'outline': "
                    + square(cornerMm)
                    + "}")
            .finding("joint.onAxle.rearWheel");
    assertThat(f.isPresent()).isEqualTo(fails);
    f.ifPresent(
        x -> {
          assertThat(x.verdict()).isEqualTo(Verdict.FAIL);
          assertThat(x.limit()).isEqualTo(15);
          assertThat(x.text()).contains("set it farther out or give it another shape");
          assertThat(x.source()).contains("common practice");
        });
  }

  @Test
  void partsOnOnePinOverlapNearItOnly() {
    String id = "joint.headPost.headRest";
    assertThat(TestMachine.tourer().finding(id)).isEmpty();
    Finding post =
        TestMachine.tourer()
            .part("headPost", "touches", "['back', 'rider']")
            .finding(id)
            .orElseThrow();
    assertThat(post.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(post.value()).isGreaterThan(post.limit());
  }
}
