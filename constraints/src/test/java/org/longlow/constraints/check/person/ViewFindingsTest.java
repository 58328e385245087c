package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;

/** What is seen of lights, instruments, the road past own limbs, and behind, by hand. */
class ViewFindingsTest {

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
    assertThat(f.verdict()).isEqualTo(f.value() <= 75 ? Verdict.PASS : Verdict.CAUTION);
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

  private static TestMachine box(
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

  /** Far out a mirror shows all of its angle from the flank on; close in, arms hide it. */
  @Test
  void aMirrorShowsPastTheShouldersOnlyIfItStandsOutFarEnough() {
    PointMm eye = posture(TestMachine.asFiled("runabout")).eye();
    Finding out = mirror(box("glass", eye.x() + 500, eye.z() - 150, 20, 100, 660, -540, "mirror"));
    Finding near = mirror(box("glass", eye.x() + 500, eye.z() - 450, 20, 100, 160, -40, "mirror"));
    Finding right =
        mirror(box("glass", eye.x() + 500, eye.z() - 150, 20, 100, -540, 660, "mirror"));
    assertThat(out.about().words()).endsWith("glass left");
    assertThat(right.about().words()).endsWith("glass right");
    assertThat(right.value()).isCloseTo(out.value(), within(1e-6));
    // a flat glass of 120 mm some 800 mm away shows 8.4 degrees: under 3 m of road at 20 m
    assertThat(out.text()).contains("shows Nell");
    assertThat(out.value()).isBetween(2000.0, 4000.0);
    assertThat(out.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(near.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(near.text()).isNotEqualTo(out.text());
    Finding bulged =
        mirror(
            box("glass", eye.x() + 500, eye.z() - 150, 20, 100, 660, -540, "mirror")
                .part("glass", "glassRadius", "'1200 mm'"));
    assertThat(bulged.value()).isGreaterThan(4000);
    assertThat(bulged.verdict()).isEqualTo(Verdict.PASS);
  }

  private static Finding mirror(TestMachine machine) {
    return behind(machine.study()).get(1);
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
        HeadUpFindings.of(study.layout(), nell(study), posture(study), laden(study));
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
}
