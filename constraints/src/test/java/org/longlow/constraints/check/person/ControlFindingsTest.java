package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;

/** Levers by the length of the hand, switches by the grip's end, pedals on either side. */
class ControlFindingsTest {

  private static final Study PLAIN = TestMachine.asFiled("runabout");

  private static TestMachine with(String by, PointMm pad, String breadth, String more) {
    return TestMachine.runabout()
        .pin("padPin", pad.x(), pad.z())
        .pin("hingePin", pad.x() - 120, pad.z() - 60)
        .with(
            "parts",
            "lever",
            "{'kind': 'lever', 'frame': 'padPin', 'outline': {'points': [['-8 mm', '-5 mm'], ['0"
                + " mm', '-5 mm'], ['0 mm', '5 mm'], ['-8 mm', '5 mm']]}, "
                + breadth
                + ", 'mass': '0.001 kg', 'worked': {'by': '"
                + by
                + "', 'pad': 'padPin'"
                + more
                + "}}");
  }

  private static PointMm grip() {
    return PLAIN.placed().places().pin("grip");
  }

  /**
   * A hand of 165 mm spans 74.25 mm and one of 190 mm 85.5 mm (section 2 of the reference: 0.45 of
   * its length); the grip's radius is 16 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "165, 58, 74.25, PASS",
    "165, 59, 74.25, FAIL",
    "190, 69, 85.5, PASS",
    "190, 70, 85.5, FAIL"
  })
  void aLeverIsHeldToTheLengthOfTheHand(double hand, double ahead, double limit, Verdict verdict) {
    Finding f =
        with(
                "fingers",
                grip().plus(new PointMm(ahead, 0)),
                "'left': '330 mm', 'right': '-290 mm'",
                "")
            .part("lever", "steered", "true")
            .field("crew", "Nell", "measured", "{'handlength': '" + hand + " mm'}")
            .field("crew", "Nell", "clothes", "false")
            .finding("lever.Nell.lever")
            .orElseThrow();
    assertThat(f.value()).isCloseTo(ahead + 16, within(1e-9));
    assertThat(f.limit()).isCloseTo(limit, within(1e-9));
    assertThat(f.verdict()).isEqualTo(verdict);
  }

  /** Gloves of 4 mm take 8 mm of the 85.5 mm that a hand of 190 mm spans. */
  @ParameterizedTest
  @CsvSource({"61, PASS", "62, FAIL"})
  void glovesShortenWhatAHandSpans(double ahead, Verdict verdict) {
    Finding f =
        with(
                "fingers",
                grip().plus(new PointMm(ahead, 0)),
                "'left': '330 mm', 'right': '-290 mm'",
                "")
            .part("lever", "steered", "true")
            .field("crew", "Nell", "measured", "{'handlength': '190 mm'}")
            .field("crew", "Nell", "clothes", "true")
            .field("crew", "Nell", "gloveThickness", "'4 mm'")
            .finding("lever.Nell.lever")
            .orElseThrow();
    assertThat(f.limit()).isCloseTo(77.5, within(1e-9));
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).contains("in gloves");
  }

  /** One that stays where it is while the grips turn, and one beside the grip. */
  @Test
  void aLeverMustTurnWithItsGripAndLieBeforeIt() {
    PointMm pad = grip().plus(new PointMm(50, 0));
    Finding still =
        with("fingers", pad, "'left': '-290 mm', 'right': '330 mm'", "")
            .finding("lever.Joss.lever")
            .orElseThrow();
    assertThat(still.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(still.text()).contains("does not turn with the grips");
    assertThat(
            with("fingers", pad, "'left': '60 mm', 'right': '-20 mm'", "")
                .part("lever", "steered", "true")
                .verdict("lever.Joss.lever"))
        .isEqualTo(Verdict.FAIL);
  }

  /**
   * Behind the grip, inside it, and both sides of 30 mm before its front, 16 mm from its middle.
   */
  @ParameterizedTest
  @CsvSource({"-51, FAIL", "12, FAIL", "20, FAIL", "45, FAIL", "47, PASS"})
  void aLeverLiesAheadOfItsGrip(double ahead, Verdict verdict) {
    Finding f = lever(ahead, "'left': '330 mm', 'right': '-290 mm'");
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text().contains("set it farther ahead")).isEqualTo(verdict == Verdict.FAIL);
    assertThat(f.margin() < 0).isEqualTo(verdict == Verdict.FAIL);
  }

  private static Finding lever(double ahead, String breadth) {
    return with("fingers", grip().plus(new PointMm(ahead, 0)), breadth, "")
        .part("lever", "steered", "true")
        .part(
            "lever",
            "bodies",
            "[{'name': 'perch', 'outline': {'points': [['-60 mm', '-6 mm'], ['0 mm', '-6 mm'], ['0"
                + " mm', '6 mm'], ['-60 mm', '6 mm']]}, 'left': '300 mm', 'right': '-284 mm'}]")
        .finding("lever.Joss.lever")
        .orElseThrow();
  }

  /** By its blade, whatever its perch is beside, and to where the grip is. */
  @ParameterizedTest
  @CsvSource({"690, 600, inwards", "100, 20, outwards"})
  void aLeverBesideItsGripIsMovedToIt(double left, double right, String way) {
    Finding f = lever(50, "'left': '" + left + " mm', 'right': '-" + right + " mm'");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).contains("it stands beside the grip").contains(" " + way + ".");
  }

  /** Inner ends of the grips are 250 mm out: 3-4-5 triangles, on either side. */
  @ParameterizedTest
  @CsvSource({"true, 36, 202, PASS", "false, 36, 202, PASS", "true, 39, 198, FAIL"})
  void aSwitchIsMeasuredFromTheEndOfItsGrip(
      boolean left, double ahead, double middle, Verdict verdict) {
    double a = middle + 5;
    double b = middle - 5;
    Finding f =
        with(
                "thumb",
                grip().plus(new PointMm(ahead, 0)),
                left
                    ? "'left': '" + a + " mm', 'right': '-" + b + " mm'"
                    : "'left': '-" + b + " mm', 'right': '" + a + " mm'",
                "")
            .part("lever", "steered", "true")
            .finding("switch.Nell.lever")
            .orElseThrow();
    assertThat(f.value()).isCloseTo(Math.hypot(ahead, 250 - middle), within(1e-9));
    assertThat(f.verdict()).isEqualTo(verdict);
  }

  private static Posture posture() {
    Sitting joss = PLAIN.sitting("Joss", "rider").orElseThrow();
    return joss.posture().orElseThrow();
  }

  /** A pedal along the sole from the heel, so far above it. */
  private static Finding pedal(String by, double along, double above, boolean left, double travel) {
    Posture p = posture();
    PointMm sole = p.ball().minus(p.heel());
    PointMm u = sole.times(1 / sole.length());
    return with(
            by,
            p.heel().plus(u.times(along)).plus(u.left().times(above)),
            left ? "'left': '240 mm', 'right': '-190 mm'" : "'left': '-190 mm', 'right': '240 mm'",
            ", 'pivot': 'hingePin', 'travel': '" + travel + " mm'")
        .finding("pedal.Joss.lever")
        .orElseThrow();
  }

  /** Pressed 30 mm at 200 mm from the heel the foot turns by about their ratio. */
  @Test
  void aPedalUnderTheBallIsPressedFromTheHeelOnEitherSide() {
    double ball = posture().ball().distance(posture().heel());
    Finding left = pedal("sole", ball, 0, true, 30);
    Finding right = pedal("sole", ball, 0, false, 30);
    assertThat(left.verdict()).isNotEqualTo(Verdict.FAIL);
    assertThat(right.value()).isEqualTo(left.value());
    assertThat(right.text()).isEqualTo(left.text());
    // ankles open as the sole goes down
    assertThat(pedal("sole", ball, 0, true, 60).value()).isGreaterThan(left.value());
    assertThat(pedal("sole", ball, 150, true, 20).verdict()).isEqualTo(Verdict.FAIL);
  }

  /** Ahead of the toes by more than the board lets the heel go. */
  @Test
  void aPedalAheadOfTheToesIsTooFar() {
    Finding far = pedal("sole", 900, 0, true, 20);
    assertThat(far.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(far.text()).contains("too far ahead of the heel");
    Finding farther = pedal("sole", 950, 0, true, 20);
    assertThat(farther.value() - far.value()).isCloseTo(50, within(1.0));
  }

  /** One behind the heel is not too far ahead of it. */
  @Test
  void aPedalBehindTheHeelIsSetFartherAhead() {
    Finding f = pedal("sole", -900, 0, true, 20);
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).contains("set it farther ahead").doesNotContain("bring it nearer");
  }

  /** The arm is √(120² + 60²) = 134.2 mm long. */
  @ParameterizedTest
  @CsvSource({"134, false", "135, true", "5000, true"})
  void noTravelIsLongerThanItsArm(double travel, boolean refused) {
    Finding f = pedal("sole", posture().ball().distance(posture().heel()), 0, true, travel);
    assertThat(f.text().contains("no travel longer than the arm")).isEqualTo(refused);
    assertThat(refused && f.verdict() != Verdict.FAIL).isFalse();
  }

  /** A turn of the same arm is 843.0 mm long; no more than one can be shown. */
  @ParameterizedTest
  @CsvSource({"421.5, 180, false", "842, 359, false", "844, 360, true", "5000, 360, true"})
  void aTravelOfMoreThanATurnIsSaidToBeMore(double travel, int deg, boolean more) {
    Finding f = pedal("sole", posture().ball().distance(posture().heel()), 0, true, travel);
    assertThat(f.text())
        .containsPattern("would turn " + deg + "(\\.\\d)?°" + (more ? " and more;" : ";"));
  }

  /** Less travel is advised only where half of it leaves the ankle nearer to what is easy. */
  @ParameterizedTest
  @CsvSource({"toes, 60, 30", "sole, 60, 5", "sole, 0, 130"})
  void onlyWhatHelpsIsAdvised(String by, double above, double travel) {
    double ball = posture().ball().distance(posture().heel());
    Finding f = pedal(by, ball, above, true, travel);
    Finding half = pedal(by, ball, above, true, travel / 2);
    if (f.text().contains("less travel.")) {
      assertThat(half.value() < f.value()).as(f.text() + half.text()).isTrue();
    } else {
      assertThat(half.value()).as(f.text()).isCloseTo(f.value(), within(2.0));
    }
  }

  /** An ankle too sharp wants the pedal lower, one too open higher: done, each strays less. */
  @ParameterizedTest
  @CsvSource({"60, 20, -10, farther from", "0, 110, 10, nearer to"})
  void aPedalIsMovedToTheSideOfTheShinThatHelps(
      double above, double travel, double by, String side) {
    double ball = posture().ball().distance(posture().heel());
    Finding f = pedal("sole", ball, above, true, travel);
    assertThat(f.text()).contains("set it with its pivot " + side + " the shin");
    assertThat(pedal("sole", ball, above + by, true, travel).margin())
        .isGreaterThan(f.margin() + 0.5);
    assertThat(pedal("sole", ball, above - by, true, travel).margin()).isLessThan(f.margin());
  }
}
