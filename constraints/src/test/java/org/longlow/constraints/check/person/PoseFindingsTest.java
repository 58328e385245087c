package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Contradicting;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.JointAngles;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;

/** Each joint against its band from both ends, and what is out of reach which way. */
class PoseFindingsTest {

  /** Angles in the middle of their bands, deg, in the order of {@link JointAngles}. */
  private static final List<String> JOINTS =
      List.of(
          "recline", "trunkThigh", "knee", "shankSole", "arm", "elbow", "neckFlexion", "headPitch");

  private static final double[] MIDDLE = {25, 115, 130, 100, 35, 130, 15, 0};

  private static Sitting bent(String joint, double deg) {
    double[] a = MIDDLE.clone();
    if (!joint.isEmpty()) {
      a[JOINTS.indexOf(joint)] = deg;
    }
    for (int i = 0; i < a.length; i++) {
      a[i] = Math.toRadians(a[i]);
    }
    JointAngles angles = new JointAngles(a[0], a[1], a[2], a[3], a[4], a[5], a[6], a[7]);
    return Sat.with(
        Sat.nell(), s -> Sat.pose(s, new PoseResult.Reached(Sat.bent(s.pose().posture(), angles))));
  }

  private static Finding of(Sitting sitting, String id) {
    return PoseFindings.of(sitting, Sat.STANCE).stream()
        .filter(f -> f.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  // bands and stops as the comfort bands and joint limits publish them
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          recline,     14,  CAUTION, 15,  -1,  lean the back rest farther back
          recline,     16,  PASS,    15,   1,  ''
          recline,     39,  PASS,    40,   1,  ''
          recline,     41,  CAUTION, 40,  -1,  set the back rest steeper
          trunkThigh,  59,  FAIL,    100, -41, move the foot rests lower or lean the back rest farther back
          trunkThigh,  99,  CAUTION, 100, -1,  move the foot rests lower or lean the back rest farther back
          trunkThigh,  129, PASS,    130,  1,  ''
          trunkThigh,  131, CAUTION, 130, -1,  raise the foot rests or set the back rest steeper
          knee,        49,  FAIL,    110, -61, move the foot rests farther from the seat
          knee,        109, CAUTION, 110, -1,  move the foot rests farther from the seat
          knee,        154, PASS,    155,  1,  ''
          knee,        156, CAUTION, 155, -1,  bring the foot rests nearer to the seat or farther in
          shankSole,   84,  CAUTION, 85,  -1,  tilt the foot boards away from the rider
          shankSole,   114, PASS,    115,  1,  ''
          shankSole,   116, CAUTION, 115, -1,  tilt the foot boards towards the rider
          shankSole,   136, FAIL,    115, -21, tilt the foot boards towards the rider
          arm,         14,  CAUTION, 15,  -1,  move the grips forward or up
          arm,         59,  PASS,    60,   1,  ''
          arm,         61,  CAUTION, 60,  -1,  bring the grips back or down
          arm,         171, FAIL,    60,  -111, bring the grips back or down
          elbow,       99,  CAUTION, 100, -1,  move the grips away from the seat
          elbow,       159, PASS,    160,  1,  ''
          elbow,       161, CAUTION, 160, -1,  bring the grips nearer to the seat or farther in
          elbow,       39,  FAIL,    100, -61, move the grips away from the seat
          neckFlexion, -1,  CAUTION, 0,   -1,  change the recline or the head rest
          neckFlexion, 29,  PASS,    30,   1,  ''
          neckFlexion, 31,  CAUTION, 30,  -1,  change the recline or the head rest
          neckFlexion, 46,  FAIL,    30,  -16, change the recline or the head rest
          headPitch,   -16, CAUTION, -15, -1,  change the recline or the head rest
          headPitch,   9,   PASS,    10,   1,  ''
          headPitch,   11,  CAUTION, 10,  -1,  change the recline or the head rest
          """)
  void anAngleIsHeldToTheNearerEndOfItsBand(
      String joint, double deg, Verdict verdict, double limit, double margin, String remedy) {
    Finding f = of(bent(joint, deg), "posture.Nell." + joint);
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isCloseTo(deg, within(1e-9));
    assertThat(f.limit()).isCloseTo(limit, within(1e-9));
    assertThat(f.margin()).isCloseTo(margin, within(1e-9));
    assertThat(f.stance()).contains(Sat.STANCE);
    if (remedy.isEmpty()) {
      assertThat(f.text()).contains(", comfortable (").endsWith(").");
    } else {
      assertThat(f.text())
          .contains(
              verdict == Verdict.FAIL
                  ? "beyond what the joint can do"
                  : "outside the comfortable band")
          .contains("); " + remedy);
    }
  }

  // women: hip flexion at most 76.3 and 0.49 of the knee's, so trunk to thigh at least
  // 180 - 76.3 - 0.49 * 20 = 93.9 at a knee of 160, and 15 more for comfort
  @ParameterizedTest
  @CsvSource({"93, FAIL", "95, CAUTION", "108, CAUTION", "110, PASS"})
  void straightLegsNeedAnOpenHip(double trunkThigh, Verdict verdict) {
    double rad = Math.toRadians(trunkThigh);
    JointAngles straight =
        new JointAngles(0.4, rad, Math.toRadians(160), Math.toRadians(100), 0.6, 2.2, 0.2, 0);
    Sitting sitting =
        Sat.with(
            Sat.nell(),
            s -> Sat.pose(s, new PoseResult.Reached(Sat.bent(s.pose().posture(), straight))));
    Finding f = of(sitting, "posture.Nell.hamstring");
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.limit()).isCloseTo(108.9, within(1e-9));
    assertThat(f.text().contains("move the foot rests lower")).isEqualTo(verdict != Verdict.PASS);
  }

  @Test
  void anAngleIsSaidInWordsAndShownAtItsJoint() {
    Sitting sitting = bent("", 0);
    Posture p = sitting.posture().orElseThrow();
    Map<String, PointMm> at =
        Map.of(
            "recline", p.hip(),
            "trunkThigh", p.hip(),
            "knee", p.knee(),
            "shankSole", p.ankle(),
            "arm", p.shoulder(),
            "elbow", p.elbow(),
            "neckFlexion", p.neckBase(),
            "headPitch", p.neckBase(),
            "hamstring", p.hip());
    at.forEach(
        (joint, place) -> {
          Finding f = of(sitting, "posture.Nell." + joint);
          assertThat(f.where()).as(joint).contains(place);
          assertThat(f.subject()).startsWith("Nell, ");
          assertThat(f.text()).startsWith(f.subject().replace("Nell, ", "Nell: "));
        });
    assertThat(of(sitting, "posture.Nell.knee").text())
        .isEqualTo("Nell: knee angle 130°, comfortable (110° to 155°).");
    assertThat(PoseFindings.of(sitting, Sat.STANCE)).hasSize(2 + at.size());
  }

  private static Sitting outOfReach(PoseResult.Shortfall... shortfalls) {
    return Sat.with(
        Sat.nell(),
        s -> Sat.pose(s, new PoseResult.Short(s.pose().posture(), List.of(shortfalls))));
  }

  @ParameterizedTest
  @CsvSource({
    "LEG, TOO_FAR, feet, the foot rests: they are 42 mm too far away; bring the foot rests nearer to the seat or farther in.",
    "LEG, TOO_NEAR, feet, the foot rests: they are 42 mm too near; move the foot rests farther from the seat.",
    "ARM, TOO_FAR, hands, the grips: they are 42 mm too far away; bring the grips nearer to the seat or farther in.",
    "ARM, TOO_NEAR, hands, the grips: they are 42 mm too near; move the grips farther from the seat."
  })
  void whatIsOutOfReachFailsAndSaysWhichWay(
      PoseResult.Limb limb, PoseResult.Side side, String limbs, String words) {
    Sitting sitting = outOfReach(new PoseResult.Shortfall(limb, side, 42));
    Finding f = of(sitting, "reach.Nell." + limbs);
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isEqualTo(42);
    assertThat(f.limit()).isZero();
    assertThat(f.margin()).isEqualTo(-42);
    assertThat(f.text()).isEqualTo("Nell cannot reach " + words);
    assertThat(f.where()).contains(place(limbs, sitting));
    Finding other = of(sitting, "reach.Nell." + (limbs.equals("feet") ? "hands" : "feet"));
    assertThat(other.verdict()).isEqualTo(Verdict.PASS);
    assertThat(other.where()).contains(place(limbs.equals("feet") ? "hands" : "feet", sitting));
  }

  private static PointMm place(String limbs, Sitting sitting) {
    Function<Posture, PointMm> at = limbs.equals("hands") ? Posture::grip : Posture::ball;
    return at.apply(sitting.posture().orElseThrow());
  }

  @Test
  void whatIsReachedIsSaid() {
    assertThat(of(outOfReach(), "reach.Nell.feet").text())
        .isEqualTo("Nell reaches the foot rests.");
    assertThat(of(outOfReach(), "reach.Nell.hands").text()).isEqualTo("Nell reaches the grips.");
  }

  private static Sitting without(Sitting s, boolean feet, boolean hands) {
    SeatParts p = s.parts();
    SeatParts less =
        new SeatParts(
            p.seat(),
            p.pan(),
            p.back(),
            p.head(),
            feet ? Optional.empty() : p.feet(),
            hands ? Optional.empty() : p.hands());
    return new Sitting(s.person(), s.seat(), less, s.body(), s.outcome());
  }

  /** Whoever steers needs grips to pass; a passenger is told to look what there is to hold. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void gripsAreMissedByWhoeverSteers(boolean steers) {
    Sitting sitting = without(Sat.nell(), false, true);
    Finding f =
        steers
            ? of(sitting, "reach.Nell.hands")
            : of(Sat.as(sitting, "Nell", "passenger"), "reach.Nell.passenger.hands");
    assertThat(f.verdict()).isEqualTo(steers ? Verdict.FAIL : Verdict.CAUTION);
    assertThat(f.text())
        .contains(
            steers ? "Nell has no grips to steer by" : "Nell as passenger has no grips to hold");
  }

  @Test
  void whoCannotSitReachesNothingThatIsKnown() {
    Sitting sitting = Sat.unseatable(Sat.nell(), "The pan is gone.");
    List<Finding> all = PoseFindings.of(sitting, Sat.STANCE);
    assertThat(all).hasSize(3).allMatch(f -> f.verdict() == Verdict.CAUTION);
    assertThat(all).allMatch(f -> f.text().endsWith("not known: The pan is gone."));
    assertThat(all).allMatch(f -> f.stance().equals(Optional.of(Sat.STANCE)));
    List<Finding> bare = PoseFindings.of(without(sitting, true, true), Sat.STANCE);
    assertThat(bare.get(0).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(bare.get(0).text()).contains("no foot rests; add a peg or a footboard");
    assertThat(bare.get(1).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(bare.get(1).text()).contains("no grips to steer by");
  }

  /** To lean the back takes the shoulder where moving the grips does: it is no way out of that. */
  @ParameterizedTest
  @CsvSource({"10, NEARER", "65, FARTHER"})
  void leaningTheBackIsNoAnswerToGripsPulledOppositeWays(double deg, Tug.Way other) {
    Finding arm = of(bent("arm", deg), "posture.Nell.arm");
    Finding lock =
        of(bent("", 0), "posture.Nell.elbow")
            .pulling(Optional.of(Tug.of(Tug.Thing.GRIPS, other, "ask for less lock")));
    assertThat(Contradicting.told(List.of(arm, lock)))
        .extracting(Finding::text)
        .allMatch(
            t ->
                t.contains("But Nell, ")
                    && t.contains("(posture.Nell.")
                    && t.contains("ask for less lock"))
        .noneMatch(t -> t.contains("back rest"));
  }
}
