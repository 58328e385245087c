package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.SeatNote;
import org.longlow.rider.words.Words;

/** Sink, hold and head of somebody whose figures are given, on both sides of each limit. */
class SeatFindingsTest {

  private static List<Finding> all(Sitting sitting) {
    return SeatFindings.of(sitting, Sat.STANCE, Sat.runabout().placed().places());
  }

  private static Optional<Finding> maybe(Sitting sitting, String id) {
    return all(sitting).stream().filter(f -> f.id().equals(id)).findFirst();
  }

  private static Finding of(Sitting sitting, String id) {
    return maybe(sitting, id).orElseThrow();
  }

  private static final CushionLoad.Worn HOLDS =
      new CushionLoad.Worn(60, Compression.Verdict.SOUND, true);

  private static Sitting on(CushionLoad pan) {
    return Sat.with(Sat.nell(), s -> Sat.cushions(s, pan, s.back(), s.headRest()));
  }

  private static CushionLoad pan(
      double design, double left, Compression.Verdict fresh, boolean bump, CushionLoad.Worn worn) {
    return Sat.cushion(40, design, left, fresh, bump, worn, new PointMm(401, 502));
  }

  // 65 % of what lies there, and 15 mm left: of 95 mm 61.75, of 40 mm 25, whichever is less
  @ParameterizedTest
  @CsvSource({"50, 45, 61.75", "20, 20, 25", "22.85, 20, 27.85", "22.86, 20, 27.859"})
  void sinkIsHeldToWhatTheFoamHas(double design, double left, double limit) {
    Finding f = of(on(pan(design, left, Compression.Verdict.SOUND, true, HOLDS)), "sink.Nell.pan");
    assertThat(f.value()).isEqualTo(design);
    assertThat(f.limit()).isCloseTo(limit, within(1e-9));
    assertThat(f.margin()).isCloseTo(limit - design, within(1e-9));
    assertThat(f.where()).contains(new PointMm(401, 502));
    assertThat(f.about().parts()).containsExactly("pan");
    assertThat(f.stance()).contains(Sat.STANCE);
  }

  @Test
  void aCushionThatLastsPasses() {
    Finding f = of(on(pan(50, 45, Compression.Verdict.SOUND, true, HOLDS)), "sink.Nell.pan");
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.text())
        .startsWith(
            "Nell on pan, 95 mm thick: likely sink 40 mm; design sink 50 mm, leaves 45 mm, holds,"
                + " also when the foam is worn. Sink is good to about")
        .doesNotContain("Worn foam,");
  }

  @ParameterizedTest
  @CsvSource({
    "SOUND, true, TOPPER_SPENT, true, CAUTION, holds while the foam is new",
    "SOUND, true, BOTTOMS, true, CAUTION, holds while the foam is new",
    "SOUND, true, SOUND, false, CAUTION, holds while the foam is new",
    "SOUND, false, SOUND, false, CAUTION, holds at rest; bottoms over a bump of 1 g",
    "SOUND, false, BOTTOMS, false, CAUTION, holds at rest; bottoms over a bump of 1 g",
    "TOPPER_SPENT, true, TOPPER_SPENT, true, CAUTION, topper spent",
    "BOTTOMS, true, BOTTOMS, true, FAIL, bottoms: so little",
    "BOTTOMS, false, BOTTOMS, false, FAIL, bottoms: so little"
  })
  void aCushionThatDoesNotLastNeedsCareAndOneThatBottomsFails(
      Compression.Verdict fresh,
      boolean bump,
      Compression.Verdict worn,
      boolean wornBump,
      Verdict verdict,
      String words) {
    CushionLoad.Worn later = new CushionLoad.Worn(63.5, worn, wornBump);
    Finding f = of(on(pan(50, 45, fresh, bump, later)), "sink.Nell.pan");
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.text()).contains(words.replace(';', ','));
    // what the worn foam does is said where that is another thing
    boolean changes = verdict == Verdict.CAUTION && (fresh != worn || bump != wornBump);
    assertThat(f.text().contains(" Worn foam, 15 % softer, has a design sink of 63.5 mm and "))
        .isEqualTo(changes);
  }

  @Test
  void eachCushionHasItsOwnSink() {
    Study study = TestMachine.asFiled("tourer");
    Sitting bram = study.sitting("Bram", Occupant.RIDER).orElseThrow();
    CushionLoad pan = pan(50, 45, Compression.Verdict.SOUND, true, HOLDS);
    CushionLoad back =
        Sat.cushion(10, 12, 48, Compression.Verdict.SOUND, true, HOLDS, new PointMm(1, 2));
    CushionLoad head =
        Sat.cushion(5, 6, 34, Compression.Verdict.SOUND, true, HOLDS, new PointMm(3, 4));
    Sitting changed = Sat.with(bram, s -> Sat.cushions(s, pan, back, Optional.of(head)));
    assertThat(of(changed, "sink.Bram.pan").text()).contains("Bram on pan, 95 mm thick");
    assertThat(of(changed, "sink.Bram.back").text()).contains("Bram on back, 60 mm thick");
    assertThat(of(changed, "sink.Bram.head").text()).contains("Bram on headRest, 40 mm thick");
    // a head that leans on nothing sinks into nothing
    Sitting free = Sat.with(bram, s -> Sat.cushions(s, pan, back, Optional.empty()));
    assertThat(maybe(free, "sink.Bram.head")).isEmpty();
    // nor into a rest that is not there
    Sitting bare = parts(changed, changed.parts().back(), Optional.empty());
    assertThat(maybe(bare, "sink.Bram.head")).isEmpty();
    assertThat(maybe(bare, "sink.Bram.back")).isPresent();
  }

  private static Sitting parts(Sitting s, Optional<CushionPart> back, Optional<CushionPart> head) {
    SeatParts p = s.parts();
    return new Sitting(
        s.person(),
        s.seat(),
        new SeatParts(p.seat(), p.pan(), back, head, p.feet(), p.hands()),
        s.body(),
        s.outcome());
  }

  @ParameterizedTest
  @CsvSource({
    "0.29, PASS, 'to slide forward on the pan; 0.30 can be counted on.'",
    "0.31, CAUTION, 'to slide forward on the pan; 0.30 can be counted on: raise the front of the"
        + " pan.'",
    "-0.29, PASS, 'to slide back on the pan; 0.30 can be counted on.'",
    "-0.31, CAUTION, 'to slide back on the pan; 0.30 can be counted on: lower the front of the"
        + " pan.'",
    "0, PASS, 'to slide forward on the pan; 0.30 can be counted on.'"
  })
  void frictionHoldsBothWays(double friction, Verdict verdict, String words) {
    Sitting sitting = Sat.with(Sat.nell(), s -> Sat.friction(s, friction));
    Finding f = of(sitting, "hold.Nell");
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isEqualTo(Math.abs(friction));
    assertThat(f.limit()).isEqualTo(0.3);
    assertThat(f.text()).endsWith(words);
    assertThat(f.where()).contains(Sat.seated(sitting).hip());
  }

  /** On a level pan a reclined rider slides forward, on a steep one back. */
  @Test
  void aPanThatRisesMoreHoldsBackMore() {
    double before = Double.POSITIVE_INFINITY;
    for (int deg : new int[] {0, 10, 20}) {
      Study study = TestMachine.runabout().with("measures", "panRise", "'" + deg + " deg'").study();
      double friction =
          Sat.seated(study.sitting("Nell", Occupant.RIDER).orElseThrow()).load().frictionNeeded();
      assertThat(friction).isLessThan(before);
      before = friction;
    }
    assertThat(before).isNegative();
  }

  @ParameterizedTest
  @CsvSource({
    "29, true, 0, PASS, ': the head leans on the rest.'",
    "31, true, 0, PASS, ': the head leans on the rest.'",
    "29, false, 60, PASS, ': the head is 60 mm off its rest.'",
    "31, false, 60, CAUTION, ': the head is 60 mm off its rest.'",
    "31, false, NaN, CAUTION, ': the head does not come to its rest.'"
  })
  void aHeadRestIsForHeadsThatLeanFar(
      double recline, boolean onRest, double gap, Verdict verdict, String words) {
    Sitting bram = TestMachine.asFiled("tourer").sitting("Bram", Occupant.RIDER).orElseThrow();
    Finding f =
        SeatFindings.of(
                Sat.with(bram, s -> Sat.head(s, recline, onRest, gap)),
                Sat.STANCE,
                TestMachine.asFiled("tourer").placed().places())
            .stream()
            .filter(x -> x.id().equals("head.Bram"))
            .findFirst()
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(verdict);
    assertThat(f.value()).isCloseTo(recline, within(1e-9));
    if (Double.isNaN(gap)) { // then it says how the rest comes to the head
      assertThat(f.text())
          .matches("Bram" + words.replace(".", "") + "; for it to lean on that, .* mm .*[.]");
    } else {
      assertThat(f.text()).isEqualTo("Bram" + words);
    }
    // without a rest it is told of only where one is wanted
    Sitting bare = Sat.with(Sat.nell(), s -> Sat.head(s, recline, false, Double.NaN));
    assertThat(maybe(bare, "head.Nell").map(Finding::verdict))
        .isEqualTo(recline > 30 ? Optional.of(Verdict.CAUTION) : Optional.empty());
  }

  @Test
  void whoCannotSitFailsInTheStanceAsked() {
    Finding f = of(Sat.unseatable(Sat.nell(), "No pan."), "seat.Nell");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).isEqualTo("Nell cannot sit on the rider seat: No pan.");
    assertThat(f.stance()).contains(Sat.STANCE);
    assertThat(all(Sat.unseatable(Sat.nell(), "No pan."))).hasSize(1);
  }

  @Test
  void figuresThatDidNotAgreeAreSaidToBeRough() {
    Sitting rough = Sat.with(Sat.nell(), Sat::disagreed);
    Finding f = of(rough, "body.Nell");
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text())
        .isEqualTo(
            "Nell: Posture and sink did not agree, so every figure about this seat is rough.");
    assertThat(maybe(Sat.nell(), "body.Nell")).isEmpty();
    Finding hold = of(rough, "hold.Nell");
    assertThat(hold.verdict()).isEqualTo(Verdict.PASS);
    Finding held = BodyCare.held(hold, List.of(rough));
    assertThat(held.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(held.text()).endsWith("This is rough: posture and sink did not agree.");
    // said once, and of nobody else
    assertThat(BodyCare.held(f, List.of(rough))).isEqualTo(f);
    assertThat(BodyCare.held(hold, List.of(Sat.nell()))).isEqualTo(hold);
    assertThat(BodyCare.held(hold, List.of(Sat.as(rough, "Joss", "rider")))).isEqualTo(hold);
    Finding fails = hold.withVerdict(Verdict.FAIL);
    assertThat(BodyCare.held(fails, List.of(rough)).verdict()).isEqualTo(Verdict.FAIL);
  }

  /** What the model knows of a seat and no figure says is said, one finding for each. */
  @Test
  void whatIsToTakeCareOfIsAFinding() {
    Sitting noted =
        Sat.with(
            Sat.nell(),
            s ->
                Sat.noted(
                    s,
                    new SeatNote(SeatNote.About.HEAD_REST, Words.of("It is far behind.")),
                    new SeatNote(SeatNote.About.PAN_FOAM, Words.of("In the pan: soft."))));
    Finding rest = of(noted, "seat.Nell.head-rest");
    assertThat(rest.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(rest.text()).isEqualTo("Nell: It is far behind.");
    assertThat(rest.subject()).isEqualTo("Nell, head rest");
    assertThat(rest.stance()).contains(Sat.STANCE);
    assertThat(of(noted, "seat.Nell.pan-foam").text()).isEqualTo("Nell: In the pan: soft.");
    assertThat(all(noted)).hasSize(all(Sat.with(Sat.nell(), Sat::noted)).size() + 2);
  }

  /** The check says what was in the report alone: a pan that presses the thighs of the shorter. */
  @Test
  void aPanThatPressesTheThighsIsSaidByTheCheck() {
    assertThat(TestMachine.asFiled("tourer").findings())
        .filteredOn(f -> f.id().endsWith(".thighs"))
        .isNotEmpty()
        .allSatisfy(
            f -> {
              assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
              assertThat(f.text()).contains("The front edge of the pan presses ");
            });
  }

  // --- across the machine

  private static Optional<Finding> across(String part, int leftMm, int rightMm) {
    return TestMachine.runabout()
        .part(part, "left", "'" + leftMm + " mm'")
        .part(part, "right", "'" + rightMm + " mm'")
        .finding("seat.Nell." + part + ".across");
  }

  @ParameterizedTest
  @ValueSource(strings = {"pan", "back"})
  void aCushionCarriesOnBothSides(String part) {
    assertThat(across(part, 50, 50)).isEmpty();
    Finding left = across(part, 49, 180).orElseThrow();
    assertThat(left.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(left.value()).isEqualTo(49);
    assertThat(left.limit()).isEqualTo(50);
    assertThat(left.text())
        .contains("carries Nell on 49 mm to the left of the middle")
        .contains("set it 1 mm farther to the left");
    Finding right = across(part, 180, 49).orElseThrow();
    assertThat(right.value()).isEqualTo(49);
    assertThat(right.text())
        .contains("and 49 mm to the right;")
        .contains("set it 1 mm farther to the right");
    assertThat(across(part, 1, 180).orElseThrow().verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(across(part, 0, 180).orElseThrow().verdict()).isEqualTo(Verdict.FAIL);
    assertThat(across(part, -10, 180).orElseThrow().value()).isZero();
  }

  /** A pan as wide as a door carries a body on half the body's breadth and no more. */
  @Test
  void noMoreIsCarriedThanThereIsOfSomebody() {
    double half =
        Sat.nell().flesh().stream()
            .filter(f -> f.name().equals("pelvis"))
            .findFirst()
            .orElseThrow()
            .outerMm();
    assertThat(half).isBetween(150.0, 250.0);
    Finding f = across("pan", 900, 40).orElseThrow();
    assertThat(f.text()).contains("on " + Say.mm(half) + " to the left of the middle and 40 mm");
  }

  @ParameterizedTest
  @CsvSource({"30, PASS", "29, CAUTION", "0, FAIL"})
  void aHeadNeedsLess(int mm, Verdict verdict) {
    Optional<Finding> f =
        TestMachine.tourer()
            .part("headRest", "right", "'" + mm + " mm'")
            .finding("seat.Bram.head.across");
    assertThat(f.map(Finding::verdict).orElse(Verdict.PASS)).isEqualTo(verdict);
  }
}
