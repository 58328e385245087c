package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What mirrors show, by angles and distances from the eye. */
class MirrorFindingsTest {

  private static final PointMm EYE = Sat.nell().posture().orElseThrow().eye();

  private static Finding mirror(TestMachine machine) {
    Study study = machine.study();
    Sitting nell = study.sitting("Nell", Occupant.RIDER).orElseThrow();
    Standing laden = study.standing(Sat.STANCE).orElseThrow();
    return MirrorFindings.of(nell, nell.posture().orElseThrow(), laden, study.standings()).get(0);
  }

  /** A bulged glass about a point from the eye, 120 mm broad. */
  private static TestMachine glass(double ahead, double up, double left, double high) {
    return ViewFindingsTest.box(
            "glass",
            EYE.x() + ahead - 10,
            EYE.z() + up - high / 2,
            20,
            high,
            left + 60,
            60 - left,
            "mirror")
        .part("glass", "glassRadius", "'1200 mm'");
  }

  /** Eyes turn 35 degrees sideways, 20 up and 25 down; the neck 20 more. */
  @ParameterizedTest
  @CsvSource({
    "500, 0, 690, 54.1, false", // both sides of 55: tan is 1.428
    "500, 0, 740, 55.9, true",
    "500, 0, -740, 55.9, true",
    "-300, 0, 400, 126.9, true", // behind the head
    "0, 0, 400, 90, true",
    "500, 620, 600, 38.4, false", // both sides of 40 and 45, 781 mm away in plan
    "500, 690, 600, 41.4, true",
    "500, -740, 600, 43.5, false",
    "500, -820, 600, 46.4, true"
  })
  void eyesAndNeckTurnToAMirrorOrNot(
      double ahead, double up, double left, double deg, boolean tooFar) {
    Finding f = mirror(glass(ahead, up, left, 100));
    assertThat(f.text().contains("for a glance")).as(f.text()).isEqualTo(tooFar);
    if (tooFar) {
      assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
      assertThat(f.value()).isCloseTo(deg, within(0.7));
      assertThat(f.about().words()).endsWith(left > 0 ? "glass left" : "glass right");
    }
  }

  /** Far out a mirror shows all of its angle from the flank on; close in, arms hide it. */
  @Test
  void aMirrorShowsPastTheShouldersOnlyIfItStandsOutFarEnough() {
    Finding out = mirror(glass(510, -100, 600, 100).without("glass", "glassRadius"));
    Finding right = mirror(glass(510, -100, -600, 100).without("glass", "glassRadius"));
    Finding bulged = mirror(glass(510, -100, 600, 100));
    Finding near = mirror(glass(510, -100, 100, 100));
    assertThat(right.value()).isCloseTo(out.value(), within(1e-6));
    // a flat glass of 120 mm some 800 mm away shows 8.4 degrees: under 3 m of road at 20 m
    assertThat(out.text()).contains("shows Nell 8.").contains("broader or more bulged");
    assertThat(out.value()).isBetween(2000.0, 4000.0);
    assertThat(near.text()).contains("move the mirror out");
    assertThat(bulged.value()).isGreaterThan(4000);
    assertThat(bulged.text()).contains("from memory");
    assertThat(List.of(out, right, bulged, near)).allMatch(f -> f.verdict() == Verdict.CAUTION);
  }

  /** The road 35 ft behind the rider lies atan(h / (10668 + ahead)) under the horizon. */
  @Test
  void aStripShowsRoadAndHorizonOnlyIfItIsHighEnough() {
    Finding strip = mirror(glass(510, -100, 600, 3));
    double need = Math.toDegrees(Math.atan((EYE.z() - 100) / (10668 + 510)));
    assertThat(strip.unit()).isEqualTo(FigureUnit.DEG);
    assertThat(strip.limit()).isCloseTo(need, within(0.3));
    // 2 atan(3 / 2 / d), 1 / d = 2 / 1200 + 1 / 794
    double shows = Math.toDegrees(3 * (2 / 1200.0 + 1 / Math.sqrt(510 * 510 + 1e4 + 36e4)));
    assertThat(strip.value()).isCloseTo(shows, within(0.01));
    assertThat(strip.text()).contains("take a higher");
    double enough = 3 * need / shows;
    assertThat(mirror(glass(510, -100, 600, 0.9 * enough)).text()).contains("take a higher");
    assertThat(mirror(glass(510, -100, 600, 1.1 * enough)).text()).contains("from memory");
  }

  /** A plate at a share of the way to the glass, 40 mm about the line. */
  @ParameterizedTest
  @CsvSource({
    "0.5, box, true",
    "0.9, box, true",
    "1.3, box, false",
    "-0.8, box, false",
    "0.5, screen, false"
  })
  void whatStandsBetweenEyeAndGlassHidesIt(double share, String kind, boolean hides) {
    TestMachine m = glass(510, -100, 600, 100);
    double half = 40;
    String outline =
        kind.equals("screen")
            ? "{'points':[['0 mm','0 mm'],['0 mm','80 mm']],'closed':false},'thickness':'3 mm',"
                + "'open':true"
            : "{'points':[['0 mm','0 mm'],['10 mm','0 mm'],['10 mm','80 mm'],['0 mm','80 mm']]}";
    m.pin("plate", EYE.x() + share * 510 - 5, EYE.z() - share * 100 - half);
    Finding f =
        mirror(
            m.with(
                "parts",
                "plate",
                "{'kind':'%s','frame':'plate','outline':%s,'left':'%s mm','right':'%s mm','mass':'0.1 kg'}"
                    .formatted(kind, outline, 600 * share + half, half - 600 * share)));
    assertThat(f.verdict()).isEqualTo(hides ? Verdict.FAIL : Verdict.CAUTION);
    assertThat(f.text().contains("plate stands before the left glass")).isEqualTo(hides);
    assertThat(f.text().contains("through plate, taken as clear")).isEqualTo(kind.equals("screen"));
  }

  /** A plate behind the glass, where it shows the road: opaque it hides, clear it asks for care. */
  @ParameterizedTest
  @CsvSource({"mixed", "polycarbonate"})
  void throughAClearPartAMirrorShowsWhatIsBehind(String material) {
    TestMachine m = glass(510, -100, 600, 100);
    Finding free = mirror(m);
    m.pin("plate", EYE.x() - 500, EYE.z() - 300);
    Finding f =
        mirror(
            m.with(
                "parts",
                "plate",
                "{'kind':'cowl','frame':'plate','outline':{'points':[['0 mm','0 mm'],['10 mm','0"
                    + " mm'],['10 mm','400 mm'],['0 mm','400 mm']]},'thickness':'3 mm','left':'680"
                    + " mm','right':'-560 mm','mass':'0.1 kg','material':'"
                    + material
                    + "'}"));
    boolean clear = material.equals("polycarbonate");
    assertThat(f.text().contains("through plate, taken as clear")).isEqualTo(clear);
    // opaque it stands 80 mm out past the glass 1010 mm behind: what is shown begins outside of it
    if (clear) {
      // as broad as the machine is now, by 80 mm
      assertThat(f.value()).isCloseTo(free.value(), within(100.0));
    } else {
      assertThat(f.text()).contains("move the mirror out");
      double edge = 20510 * 80 / 1010.0;
      assertThat(f.value()).isCloseTo(edge + 600 - 680, within(0.15 * edge));
    }
  }

  /** Who sits behind is in the mirror's way as own arms are. */
  @Test
  void aPassengerHidesWhatIsBehindThem() {
    Study alone = TestMachine.asFiled("tourer");
    Sitting bram = alone.sitting("Bram", Occupant.RIDER).orElseThrow();
    PointMm eye = bram.posture().orElseThrow().eye();
    Study study =
        TestMachine.tourer()
            .pin("glassPin", eye.x() + 500, eye.z())
            .with(
                "parts",
                "glass",
                "{'kind':'mirror','frame':'glassPin','outline':{'points':[['0 mm','0 mm'],['20 mm','0"
                    + " mm'],['20 mm','100 mm'],['0 mm','100 mm']]},'left':'210 mm','right':'-90"
                    + " mm','glassRadius':'1200 mm','mass':'0.1 kg'}")
            .study();
    Sitting rider = study.sitting("Bram", Occupant.RIDER).orElseThrow();
    Sitting behind = study.sitting("Runa", Occupant.PASSENGER).orElseThrow();
    Standing laden =
        study.standings().stream()
            .filter(s -> s.condition().ladenBy(rider.occupant()))
            .findFirst()
            .orElseThrow();
    PointMm at = rider.posture().orElseThrow().eye();
    Finding two =
        MirrorFindings.of(rider, rider.posture().orElseThrow(), laden, study.standings()).get(0);
    Finding one =
        MirrorFindings.of(rider, rider.posture().orElseThrow(), laden, List.of(laden)).get(0);
    assertThat(one.text()).contains("past own arms and the machine");
    assertThat(two.text()).contains("past own arms, Runa and the machine");
    assertThat(begins(two)).isGreaterThan(begins(one) + 1.5);
    assertThat(behind.posture().orElseThrow().eye().x()).isLessThan(at.x());
  }

  private static double begins(Finding f) {
    return Double.parseDouble(f.text().replaceAll(".*beginning ([0-9.]+) m beside.*", "$1"));
  }
}
