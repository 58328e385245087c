package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** A flap ahead of the machine that falls towards the road, and the leg of a stand. */
class SwungFindingsTest {

  private static final double X = 2500;
  private static final double Z = 500;

  /** Lies level ahead of its hinge, far to one side of the middle or both, and swings down. */
  private static TestMachine flap(double longMm, double angleDeg, double leftMm, double rightMm) {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "flap", Boxes.at(X, Z, X + longMm, Z + 2), leftMm, rightMm, "");
    return m.pin("hinge", X, Z)
        .with(
            "sections",
            "nose",
            "{'parts': ['flap'], 'pivot': 'hinge', 'angle': '" + angleDeg + " deg'}");
  }

  /** The least height of the hinge over the road, standing upright. */
  private static double hinge() {
    return flap(430, -100, 20, 20).study().standings().stream()
        .filter(s -> s.kind() == Stance.Kind.UNLADEN || s.kind() == Stance.Kind.LADEN)
        .mapToDouble(s -> s.ground().heightMm(new PointMm(X, Z)))
        .min()
        .orElseThrow();
  }

  /** Straight down its corner hangs hypot(long, 2) under the hinge; care from 20 mm on. */
  @ParameterizedTest
  @CsvSource({"-19, CAUTION", "-1, CAUTION", "1, FAIL", "30, FAIL"})
  void aFlapThatSwingsIntoTheRoadIsFound(double pastMm, Verdict verdict) {
    double longMm = hinge() + pastMm;
    Finding f = flap(longMm, -100, 20, 20).finding("swung.nose.flap").orElseThrow();
    assertThat(f.value()).isCloseTo(hinge() - Math.hypot(longMm, 2), within(0.2));
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.where().orElseThrow().x()).isCloseTo(X, within(20.0));
    assertThat(f.opening().orElse(0.9) * 100).isCloseTo(90, within(3.0));
    assertThat(f.text()).startsWith("Section nose: standing upright, laden");
  }

  /**
   * Under each of many people the road is another: the nearest is that of the heaviest in front.
   */
  @ParameterizedTest
  @CsvSource({"50, 75, 100, 140", "140, 100, 75, 50", "75, 140, 50, 100"})
  void theNearestOfManyRoadsIsFound(double a, double b, double c, double d) {
    TestMachine machine = flap(hinge() + 40, -100, 20, 20);
    double[] kg = {a, b, c, d};
    for (int k = 0; k < kg.length; k++) {
      machine.with(
          "crew",
          "Crew" + k,
          "{'sex': 'male', 'stature': '" + (1650 + 40 * k) + " mm', 'mass': '" + kg[k] + " kg'}");
    }
    Study study = machine.study();
    Finding f = machine.finding("swung.nose.flap").orElseThrow();
    double least =
        study.standings().stream()
            .filter(s -> s.kind() == Stance.Kind.LADEN)
            .mapToDouble(s -> s.ground().heightMm(new PointMm(X, Z)))
            .min()
            .orElseThrow();
    assertThat(f.value()).isCloseTo(least - Math.hypot(hinge() + 40, 2), within(0.2));
    assertThat(
            study.standings().stream().filter(s -> s.condition().equals(f.stance().orElseThrow())))
        .singleElement()
        .satisfies(s -> assertThat(s.ground().heightMm(new PointMm(X, Z))).isEqualTo(least));
  }

  /** Turns about (1300, z) and ends in a box of 20 x 10 mm about 150 mm ahead or behind of that. */
  private static TestMachine pedal(String by, double ahead, double z, double y, double travel) {
    return TestMachine.runabout()
        .pin("pedalHinge", 1300, z)
        .pin("pedalPad", 1300 + ahead, z)
        .with(
            "parts",
            "brake",
            "{'kind': 'lever', 'frame': 'pedalPad', 'outline': {'points': [['-10 mm', '-5 mm'],"
                + " ['10 mm', '-5 mm'], ['10 mm', '5 mm'], ['-10 mm', '5 mm']], 'closed': true},"
                + " 'left': '"
                + (y + 10)
                + " mm', 'right': '"
                + (10 - y)
                + " mm', 'mass': '0.1 kg', 'worked': {'by': '"
                + by
                + "', 'pad': 'pedalPad', 'pivot': 'pedalHinge', 'travel': '"
                + travel
                + " mm'}}")
        .with("demands", "groundClearance", "'60 mm'");
  }

  /** Its lower corners, turned about the hinge by the angle whose arc at 150 mm is the travel. */
  private static double pressedMm(Study study, double ahead, double z, double travel) {
    double turn = -Math.signum(ahead) * travel / 150;
    return study.standings().stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .mapToDouble(
            s -> Math.min(corner(s, ahead - 10, -5, z, turn), corner(s, ahead + 10, -5, z, turn)))
        .min()
        .orElseThrow();
  }

  private static double corner(Standing s, double x, double dz, double z, double turn) {
    return s.ground()
        .heightMm(
            new PointMm(
                1300 + x * Math.cos(turn) - dz * Math.sin(turn),
                z + x * Math.sin(turn) + dz * Math.cos(turn)));
  }

  @ParameterizedTest
  @CsvSource({"sole, 150", "toes, 150", "toes, -150"})
  void aPedalIsHeldToTheRoadAsFarAsItGoes(String by, double ahead) {
    double off = pressedMm(pedal(by, ahead, 200, 0, 40).study(), ahead, 200, 40) - 60;
    double graze = 200 - off;
    assertThat(pedal(by, ahead, graze + 1, 0, 40).finding("swung.brake")).isEmpty();
    Finding f = pedal(by, ahead, graze - 1, 0, 40).finding("swung.brake").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isCloseTo(59, within(0.05)); // masses of the pedal move springs a little
    assertThat(f.text()).startsWith("Worked as far as it goes, brake comes to 5");
    assertThat(pedal(by, ahead, graze - 1, 0, 1).finding("swung.brake")).isEmpty();
  }

  /** Far out it touches in a lean before it does when nobody presses it, on that side alone. */
  @ParameterizedTest
  @CsvSource({"330, left, right", "-330, right, left"})
  void aPressedPedalGroundsInALean(double y, String side, String other) {
    TestMachine machine = pedal("sole", 150, 190, y, 60);
    Finding drawn = machine.finding("lean." + side + ".brake").orElseThrow();
    Finding pressed = machine.finding("lean." + side + ".brake.pressed").orElseThrow();
    assertThat(pressed.value()).isLessThan(drawn.value() - 3);
    assertThat(pressed.text()).contains("brake, worked as far as it goes, touches the road at");
    assertThat(machine.finding("lean." + other + ".brake.pressed")).isEmpty();
  }

  @Test
  void whatStaysAwayFromTheRoadIsNotSaid() {
    assertThat(flap(hinge() - 21, -100, 20, 20).finding("swung.nose.flap")).isEmpty();
    assertThat(flap(hinge() + 20, 100, 20, 20).finding("swung.nose.flap")).isEmpty();
    assertThat(flap(hinge() + 20, -30, 20, 20).finding("swung.nose.flap")).isEmpty();
  }

  /** As on the stand: far to its side a flap comes down by the sine of the lean, else it rises. */
  @Test
  void onItsStandTheSideLeanedToIsLower() {
    TestMachine towards = flap(440, -100, 400, -360);
    TestMachine away = flap(440, -100, -360, 400);
    Study study = towards.study();
    Standing parked = study.standing(Condition.empty(Stance.Kind.PARKED)).orElseThrow();
    double foot =
        parked
            .places()
            .value(
                ((org.longlow.constraints.layout.StandPart) study.layout().parts().get("sideStand"))
                    .y());
    TestMachine lower = foot > 0 ? towards : away;
    TestMachine higher = foot > 0 ? away : towards;
    Finding f = lower.finding("swung.nose.flap").orElseThrow();
    assertThat(f.text()).contains("leaning on sideStand");
    assertThat(f.stance()).contains(Condition.empty(Stance.Kind.PARKED));
    double lean = Propped.in(lower.study(), x -> x).leanRad;
    double upright = parked.ground().heightMm(new PointMm(X, Z));
    // closed form of a thin wheel; round tyres carry the machine higher by less than 8 mm here
    double thin = (upright - Math.hypot(440, 2)) * Math.cos(lean) - 400 * Math.sin(lean);
    assertThat(f.value()).isBetween(thin - 1, thin + 15);
    assertThat(higher.finding("swung.nose.flap")).isEmpty();
  }

  @Test
  void aLegThatIsTooLongToSwingPastItsPivotIsTold() {
    assertThat(TestMachine.runabout().finding("swung.sideStand")).isEmpty();
    Study study = TestMachine.asFiled("runabout");
    Standing parked = study.standing(Condition.empty(Stance.Kind.PARKED)).orElseThrow();
    var stand = (org.longlow.constraints.layout.StandPart) study.layout().parts().get("sideStand");
    PointMm pivot = parked.places().pin(stand.pivot());
    double high = parked.ground().heightMm(pivot);
    // 30 mm longer than high, back and ahead of its pivot
    double half = Math.sqrt((high + 30) * (high + 30) - high * high);
    TestMachine m =
        TestMachine.runabout()
            .pin(stand.foot(), pivot.x() + half, pivot.z() - high)
            .pin(stand.stowed(), pivot.x() - half, pivot.z() - high);
    Finding f = m.finding("swung.sideStand").orElseThrow();
    assertThat(f.value()).isCloseTo(-30, within(2.0));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    // swung over the top, or within one side, it passes nothing
    TestMachine ahead =
        TestMachine.runabout()
            .pin(stand.foot(), pivot.x() + half, pivot.z() - high)
            .pin(stand.stowed(), pivot.x() + high, pivot.z() - half);
    assertThat(ahead.finding("swung.sideStand")).isEmpty();
  }

  /** Halfway down, a millimetre of its length is less than one of height. */
  @ParameterizedTest
  @CsvSource({"-40", "-60", "-100"})
  void shorterByWhatIsSaidItIsHighEnough(double angle) {
    double reach = (hinge() - 5) / Math.sin(Math.toRadians(Math.min(90, -angle)));
    Finding f = flap(reach, angle, 20, 20).finding("swung.nose.flap").orElseThrow();
    java.util.regex.Matcher said =
        java.util.regex.Pattern.compile("make it shorter by ([0-9.]+) mm").matcher(f.text());
    assertThat(said.find()).as(f.text()).isTrue();
    double by = Double.parseDouble(said.group(1));
    assertThat(flap(reach - by - 0.2, angle, 20, 20).finding("swung.nose.flap")).isEmpty();
    assertThat(flap(reach - by + 2, angle, 20, 20).finding("swung.nose.flap")).isPresent();
  }
}
