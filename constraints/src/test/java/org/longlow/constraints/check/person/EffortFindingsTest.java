package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.Effort.Held;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.effort.Shade;
import org.longlow.rider.effort.Strength;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.Push;

/** What muscles hold, on both sides of each limit, and what presses and shakes. */
class EffortFindingsTest {

  private static Held held(Joint joint, Strength muscles, double weak, boolean brief) {
    return new Held(joint, -10, muscles, weak, Strength.WEAK * weak, brief);
  }

  /** 5 % of a weak one's strength all day, 15 % of the mean at most; 50 and 70 % for a stop. */
  @ParameterizedTest
  @CsvSource({
    "0.0499, false, PASS",
    "0.0501, false, CAUTION",
    "0.2499, false, CAUTION",
    "0.2501, false, FAIL",
    "0.499, true, PASS",
    "0.501, true, CAUTION",
    "1.166, true, CAUTION",
    "1.167, true, FAIL"
  })
  void sharesOfStrengthAreJudged(double weak, boolean brief, Verdict verdict) {
    assertThat(held(Joint.NECK, Strength.NECK_EXTENSION, weak, brief).verdict()).isEqualTo(verdict);
  }

  @Test
  void strengthFromMemoryNeverPassesAndHipsNeverFail() {
    assertThat(held(Joint.ELBOW, Strength.ELBOW_FLEXION, 0.001, false).verdict())
        .isEqualTo(Verdict.CAUTION);
    assertThat(held(Joint.ELBOW, Strength.ELBOW_FLEXION, 0.3, false).verdict())
        .isEqualTo(Verdict.FAIL);
    assertThat(held(Joint.HIP, Strength.HIP_FLEXION, 0.3, false).verdict())
        .isEqualTo(Verdict.CAUTION);
    Held nothing = new Held(Joint.ELBOW, 0.049, Strength.ELBOW_EXTENSION, 0.002, 0.001, false);
    assertThat(nothing.verdict()).isEqualTo(Verdict.PASS);
    assertThat(nothing.heldS()).isInfinite();
  }

  private static Study at(double kmh, double g) {
    return TestMachine.runabout()
        .with("demands", "speed", "'" + kmh + " km/h'")
        .with("demands", "braking", "'" + g + "'")
        .with("demands", "grip", "2")
        .study();
  }

  private static Finding found(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private static Effort effort(Study study, String person) {
    Sitting s =
        study.sittings().stream().filter(x -> x.person().equals(person)).findFirst().orElseThrow();
    return Effort.of(study.layout(), s, study.standings(), study.placed().places()).orElseThrow();
  }

  /** Pressure of air goes with the square of speed, so what wind adds to a joint does too. */
  @Test
  void windAddsByTheSquareOfSpeed() {
    Study slow = at(60, 0);
    Study fast = at(120, 0);
    for (Joint joint : List.of(Joint.NECK, Joint.SHOULDER)) {
      double still = effort(slow, "Nell").still().get(joint).loadNm();
      double more = effort(slow, "Nell").riding().get(joint).loadNm() - still;
      assertThat(effort(fast, "Nell").riding().get(joint).loadNm() - still)
          .isCloseTo(4 * more, within(1e-9));
      assertThat(Math.abs(more)).isGreaterThan(0.3);
    }
    Finding f = found(fast, "effort.Nell.neck");
    assertThat(f.text())
        .startsWith("At 120 km/h the neck of Nell holds")
        .contains("of a weak woman's strength")
        .contains("without wind")
        .contains("put a screen ahead of it");
    assertThat(f.value())
        .isCloseTo(effort(fast, "Nell").riding().get(Joint.NECK).weak(), within(1e-12));
    assertThat(f.limit()).isEqualTo(0.05);
    assertThat(found(at(0, 0), "effort.Nell.neck").verdict()).isEqualTo(Verdict.PASS);
  }

  /**
   * A wedge from 300 mm high at its rear end down to its front end 400 mm ahead: of a place so far
   * from that end it covers what is ahead of it, by similar triangles.
   */
  @ParameterizedTest
  @CsvSource({"-50, 300", "0, 300", "100, 225", "300, 75", "450, 0"})
  void whatIsAheadOfAPlaceCoversIt(double fromRearMm, double highMm) {
    Study study =
        TestMachine.runabout()
            .pin("wedgePin", 900, 600)
            .with(
                "parts",
                "wedge",
                "{'kind': 'box', 'frame': 'wedgePin', 'left': '137 mm', 'right': '131 mm', 'mass':"
                    + " '0.1 kg', 'outline': {'points': [['0 mm', '0 mm'], ['400 mm', '0 mm'],"
                    + " ['0 mm', '300 mm']]}}")
            .study();
    Sitting nell = study.sitting("Nell", "rider").orElseThrow();
    List<Shade.Span> spans =
        Shelter.of(nell.occupant(), study.standings()).ahead(900 + fromRearMm).stream()
            .filter(span -> span.leftMm() == 137 && span.rightMm() == -131)
            .toList();
    if (highMm == 0) {
      assertThat(spans).isEmpty();
    } else {
      assertThat(spans).hasSize(1);
      assertThat(spans.get(0).lowMm()).isCloseTo(600, within(1e-9));
      assertThat(spans.get(0).highMm()).isCloseTo(600 + highMm, within(1e-9));
    }
  }

  /** A screen as high as the helmet, ahead of the rider, takes the wind off the head. */
  @Test
  void aScreenAheadShelters() {
    double open = effort(at(90, 0), "Nell").riding().get(Joint.NECK).loadNm();
    TestMachine screened =
        TestMachine.runabout()
            .pin("screenFoot", 1000, 900)
            .with(
                "parts",
                "tallScreen",
                "{'kind': 'screen', 'frame': 'screenFoot', 'outline': {'points': [['0 mm', '0 mm'],"
                    + " ['-5 mm', '400 mm'], ['-10 mm', '800 mm']], 'closed': false}, 'thickness':"
                    + " '4 mm', 'open': true, 'left': '250 mm', 'right': '250 mm', 'material':"
                    + " 'polycarbonate'}");
    Study behind = screened.with("demands", "speed", "'90 km/h'").study();
    Effort sheltered = effort(behind, "Nell");
    assertThat(open).isGreaterThan(0.8);
    assertThat(sheltered.riding().get(Joint.NECK).loadNm())
        .isCloseTo(sheltered.still().get(Joint.NECK).loadNm(), within(1e-9));
  }

  /** A roof over the head with air under it takes no wind off it, and raising it helps nobody. */
  @Test
  void windComesInUnderARoof() {
    TestMachine roofed =
        TestMachine.runabout()
            .pin("roofFoot", 400, 1900)
            .with(
                "parts",
                "roof",
                "{'kind': 'screen', 'frame': 'roofFoot', 'outline': {'points': [['0 mm', '0 mm'],"
                    + " ['600 mm', '5 mm'], ['1200 mm', '0 mm']], 'closed': false}, 'thickness':"
                    + " '4 mm', 'open': true, 'left': '250 mm', 'right': '250 mm', 'material':"
                    + " 'polycarbonate'}");
    Study study = roofed.with("demands", "speed", "'120 km/h'").study();
    assertThat(effort(study, "Nell").riding().get(Joint.NECK).loadNm())
        .isCloseTo(effort(at(120, 0), "Nell").riding().get(Joint.NECK).loadNm(), within(1e-6));
    assertThat(found(study, "effort.Nell.neck").text()).contains("put a screen ahead of it");
  }

  /** What is no cowl shelters where it is broad enough, across as far as it reaches. */
  @ParameterizedTest
  @CsvSource({"150, 150, 0", "100, 99, 1", "0, 200, 0.5", "200, 0, 0.5"})
  void aBroadBodyAheadSheltersToo(double left, double right, double open) {
    TestMachine loaded =
        TestMachine.runabout()
            .pin("chestFoot", 1000, 900)
            .with(
                "parts",
                "chest",
                "{'kind': 'tank', 'frame': 'chestFoot', 'outline': {'points': [['0 mm', '0 mm'],"
                    + " ['300 mm', '0 mm'], ['300 mm', '900 mm'], ['0 mm', '900 mm']], 'closed':"
                    + " true}, 'mass': '1 kg', 'left': '"
                    + left
                    + " mm', 'right': '"
                    + right
                    + " mm'}");
    assertThat(windOn(loaded, Joint.NECK) / windOn(TestMachine.runabout(), Joint.NECK))
        .isCloseTo(open, within(1e-6));
  }

  private static double windOn(TestMachine machine, Joint joint) {
    Effort effort = effort(machine.with("demands", "speed", "'90 km/h'").study(), "Nell");
    return effort.riding().get(joint).loadNm() - effort.still().get(joint).loadNm();
  }

  /** A screen so narrow shelters no arms, and one so far ahead nothing: its wake has closed. */
  @ParameterizedTest
  @CsvSource({
    "1000, 3, 3, 1",
    "1000, 300, 3, 1",
    "1000, 3, 300, 1",
    "1000, 400, 400, 0",
    "4000, 400, 400, 1"
  })
  void aScreenSheltersItsOwnBreadthAndNotFarBehind(
      double x, double left, double right, double open) {
    TestMachine screened =
        TestMachine.runabout()
            .pin("screenFoot", x, 300)
            .with(
                "parts",
                "tallScreen",
                "{'kind': 'screen', 'frame': 'screenFoot', 'outline': {'points': [['0 mm', '0 mm'],"
                    + " ['-60 mm', '1400 mm']], 'closed': false}, 'thickness': '4 mm', 'open':"
                    + " true, 'left': '"
                    + left
                    + " mm', 'right': '"
                    + right
                    + " mm', 'material': 'polycarbonate'}");
    assertThat(windOn(screened, Joint.SHOULDER) / windOn(TestMachine.runabout(), Joint.SHOULDER))
        .isCloseTo(open, within(1e-6));
  }

  @Test
  void brakingIsJudgedWhereItIsWorst() {
    Finding f = found(at(0, 1.5), "effort.Nell.neck");
    assertThat(f.text()).contains("braking with 1.50 g it is");
    assertThat(f.limit()).isEqualTo(0.5);
    Effort e = effort(at(0, 1.5), "Nell");
    assertThat(f.value()).isCloseTo(e.stopping().get(Joint.NECK).weak(), within(1e-12));
    assertThat(e.stopping().get(Joint.NECK).loadNm()).isNegative();
  }

  /** Everybody on the machines of the tests, and the heads that no rest holds when laid back. */
  @Test
  void everybodyIsInBalance() {
    for (String name : List.of("runabout", "tourer")) {
      Study study = TestMachine.asFiled(name);
      for (Sitting s : study.sittings()) {
        Effort e =
            Effort.of(study.layout(), s, study.standings(), study.placed().places()).orElseThrow();
        PointMm force = PointMm.ORIGIN;
        for (Push push : e.balance().all()) {
          force = force.plus(push.force());
        }
        assertThat(force.length()).as(s.person()).isCloseTo(0, within(1e-6));
        assertThat(Push.aboutNm(PointMm.ORIGIN, e.balance().all()))
            .as(s.person())
            .isCloseTo(0, within(1e-6));
      }
    }
  }

  @Test
  void aNeckBentForwardByASteepBackFails() {
    Study below = laidBack(38);
    assertThat(found(below, "effort.Nell.neck").unit().word()).isEqualTo("share");
    Finding f = found(laidBack(46), "effort.Nell.neck");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isBetween(34.0, 38.0); // recline less 10° of nose up
    assertThat(f.limit()).isCloseTo(30, within(1e-9));
    assertThat(f.text()).contains("give the head a rest");
  }

  private static Study laidBack(double deg) {
    return TestMachine.runabout().field("ties", "backSlope", "is", "'" + deg + " deg'").study();
  }

  @Test
  void whatIsRememberedSaysSo() {
    Finding legs = found(Sat.runabout(), "effort.Nell.legs");
    assertThat(legs.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(legs.text()).contains("known from memory only");
    assertThat(legs.basis()).anyMatch(b -> b.known() == Known.FROM_MEMORY);
  }

  @Test
  void pressureIsHeldToThatOfOtherSitters() {
    Finding light = found(Sat.runabout(), "contact.Nell");
    // under what others had, and yet nobody published what is comfortable
    assertThat(light.value()).isLessThan(8.1);
    assertThat(light.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(light.text()).contains("no limit of comfort is published");
    assertThat(light.limit()).isEqualTo(8.1);
    Sitting nell = Sat.nell();
    assertThat(light.value()).isEqualTo(Sat.seated(nell).pan().meanKPa());
    Study study = TestMachine.runabout().with("crew", "Ox", ox()).study();
    Finding heavy = found(study, "contact.Ox");
    assertThat(heavy.value()).isGreaterThan(8.1);
    assertThat(heavy.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(heavy.text()).contains("sitters in a study");
  }

  private static String ox() {
    return "{'sex': 'male', 'stature': '1850 mm', 'mass': '135 kg'}";
  }

  @Test
  void shakingIsAnEstimateAndNeverPasses() {
    for (Study study : Stream.of("runabout", "tourer").map(TestMachine::asFiled).toList()) {
      assertThat(study.findings().stream().filter(f -> f.kind() == ContactFindings.VIBRATION))
          .hasSameSizeAs(study.sittings())
          .allMatch(f -> f.verdict() == Verdict.CAUTION)
          .allMatch(f -> f.value() > 0.5 && f.value() < 1.5)
          .allMatch(f -> f.text().startsWith("Estimate: under "));
    }
  }

  private static Effort passenger(Study study) {
    Sitting s = study.sitting("Runa", "passenger").orElseThrow();
    return Effort.of(study.layout(), s, study.standings(), study.placed().places()).orElseThrow();
  }

  private static TestMachine screenBehindTheRider(double highMm) {
    return TestMachine.tourer()
        .pin("farScreen", 400, 900)
        .with(
            "parts",
            "wall",
            "{'kind': 'screen', 'frame': 'farScreen', 'outline': {'points': [['0 mm', '0 mm'],"
                + " ['-5 mm', '400 mm'], ['-10 mm', '"
                + highMm
                + " mm']], 'closed': false}, 'thickness': '4 mm', 'open': true, 'left': '400 mm',"
                + " 'right': '400 mm', 'material': 'polycarbonate'}");
  }

  /** Nobody sits behind alone, so their machine is the one with a rider on it too. */
  @Test
  void aScreenSheltersWhoSitsBehind() {
    Effort open = passenger(TestMachine.asFiled("tourer"));
    Effort behind = passenger(screenBehindTheRider(1000).study());
    for (Joint joint : List.of(Joint.NECK, Joint.SHOULDER, Joint.ELBOW)) {
      assertThat(behind.riding().get(joint).loadNm())
          .as(joint.word())
          .isCloseTo(behind.still().get(joint).loadNm(), within(1e-9));
    }
    assertThat(open.riding().get(Joint.NECK).weak())
        .isGreaterThan(1.5 * behind.riding().get(Joint.NECK).weak());
  }

  /** A part is named that may be raised; a guard over a wheel is none. */
  @Test
  void whatIsRaisedAheadIsNamed() {
    Finding low = found(screenBehindTheRider(420).study(), "effort.Runa.passenger.neck");
    assertThat(low.text())
        .contains("raise wall ahead of it")
        .contains("whoever sits ahead is not counted as shelter");
    Finding none = found(at(120, 0), "effort.Nell.neck");
    assertThat(none.text()).contains("put a screen ahead of it");
  }
}
