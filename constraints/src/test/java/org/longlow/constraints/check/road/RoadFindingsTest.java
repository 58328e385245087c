package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.ride.LeanClearance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Turning;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * Loads, sag, lean, stand, trail and chain of a whole machine, changed one thing at a time: both
 * sides of each limit, left and right, and figures worked out another way.
 */
class RoadFindingsTest {

  private static final double G = 9.80665;

  private static Study study(String... replaced) {
    return TestMachine.replacing("tourer", replaced).study();
  }

  private static Finding finding(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private static Optional<Finding> maybe(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst();
  }

  private static final String STAND_PART = "\"sideStand\": {\"kind\": \"stand\"";

  private static String crate(String left, String right) {
    return "\"crate\": {\"kind\": \"box\", \"frame\": \"silencerIn\", \"outline\": {\"points\":"
        + " [[\"0 mm\", \"0 mm\"], [\"60 mm\", \"0 mm\"], [\"60 mm\", \"60 mm\"], [\"0 mm\","
        + " \"60 mm\"]]}, \"left\": \""
        + left
        + "\", \"right\": \""
        + right
        + "\", \"mass\": \"16 kg\", \"touches\": [\"header\", \"silencer\", \"cradle\","
        + " \"backRail\"]},\n"
        + "    ";
  }

  private static Study withCrate(String left, String right) {
    return study(STAND_PART, crate(left, right) + STAND_PART);
  }

  @Test
  void aHeavyThingAtOneSideTipsTheMachineThatWay() {
    Study left = withCrate("300 mm", "-240 mm");
    Study right = withCrate("-240 mm", "300 mm");
    double tipLeft = finding(left, "stand.sideStand").value();
    double tipRight = finding(right, "stand.sideStand").value();
    // the stand is on the left and the machine leans on it: a mass on the right wants to tip back
    assertThat(Math.abs(tipLeft - tipRight)).isGreaterThan(1);
    assertThat(tipLeft).isCloseTo(Propped.in(left, m -> m).tipDeg, within(0.001));
    assertThat(tipRight).isCloseTo(Propped.in(right, m -> m).tipDeg, within(0.001));
  }

  @Test
  void theCentreOfMassIsSaidAcrossTheMachine() {
    Study left = withCrate("300 mm", "-240 mm");
    Study right = withCrate("-240 mm", "300 mm");
    assertThat(finding(left, "load.unladen").text()).contains("to the left of the middle");
    assertThat(finding(right, "load.unladen").text()).contains("to the right of the middle");
    double y =
        left.standing(Condition.empty(Stance.Kind.UNLADEN)).orElseThrow().load().total().yMm();
    double mass =
        left.standing(Condition.empty(Stance.Kind.UNLADEN)).orElseThrow().load().total().massKg();
    double stand =
        TestMachine.asFiled("tourer")
            .standing(Condition.empty(Stance.Kind.UNLADEN))
            .orElseThrow()
            .load()
            .total()
            .yMm();
    assertThat(y).isCloseTo((16 * 270 + stand * (mass - 16)) / mass, within(1e-9));
  }

  /**
   * The roll at which a part first touches in stance {@code name}, by scanning in hundredths of a
   * degree: at each roll the springs are put in balance by halving the error of each travel, the
   * machine is set on the road and every corner is looked at.
   */
  private static double touchByScanning(Study study, Condition stance, boolean left, String only) {
    Standing standing = study.standing(stance).orElseThrow();
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    double[] travel = {standing.frontTravelMm(), standing.rearTravelMm()};
    double crown = (wheels.frontTyre().sectionRadiusMm() + wheels.rearTyre().sectionRadiusMm()) / 2;
    for (double deg = 20; deg < 60; deg += 0.02) {
      double roll = Math.toRadians(deg);
      Ground ground = standing.ground();
      for (int round = 0; round < 40; round++) {
        Places places = wheels.moved(travel[0], travel[1]);
        ground = wheels.ground(places);
        PointMm c = ground.toRoad(standing.load().total().at());
        double y = (left ? 1 : -1) * standing.load().total().yMm();
        double up = crown + (c.z() - crown) * Math.cos(roll) - y * Math.sin(roll);
        double out = (c.z() - crown) * Math.sin(roll) + y * Math.cos(roll);
        double ideal = Math.atan2(out, up);
        double factor = Math.cos(roll - ideal) / Math.cos(ideal);
        double weight = standing.load().total().massKg() * G;
        double frontN = weight * c.x() / ground.wheelbaseMm();
        double[] load = {frontN, weight - frontN};
        for (int end = 0; end < 2; end++) {
          var suspension = end == 0 ? wheels.frontSuspension() : wheels.rearSuspension();
          double unsprung = unsprungKg(study, end == 0) * G;
          PointMm way =
              suspension
                  .path()
                  .axle(travel[end] + 1e-4)
                  .minus(suspension.path().axle(travel[end] - 1e-4))
                  .times(1 / 2e-4);
          double rise = ground.along().cross(way);
          double force = (load[end] - unsprung) * factor * rise;
          double rest =
              (force - suspension.preloadN()) / suspension.rateNPerMm() - suspension.droopMm();
          rest = Math.max(-suspension.droopMm(), Math.min(suspension.bumpMm(), rest));
          travel[end] += (rest - travel[end]) / 2;
        }
      }
      LeanClearance clearance =
          new LeanClearance(
              ground.wheelbaseMm(),
              new LeanClearance.Wheel(
                  wheels.frontTyre().freeRadiusMm(), wheels.frontTyre().sectionRadiusMm()),
              new LeanClearance.Wheel(
                  wheels.rearTyre().freeRadiusMm(), wheels.rearTyre().sectionRadiusMm()));
      List<Prism> body =
          standing.shapes().containsKey(only)
              ? standing.shapes().get(only).prisms()
              : standing.rider().seated().stream()
                  .filter(r -> r.who().person().equals(only))
                  .findFirst()
                  .orElseThrow()
                  .body();
      for (Prism prism : body) {
        double y = left ? prism.across().to() : -prism.across().from();
        for (Coordinate corner : prism.outline().getCoordinates()) {
          PointMm p = ground.toRoad(new PointMm(corner.x, corner.y));
          if (y > 0 && clearance.clearanceMm(p.x(), y, p.z(), roll) <= 0) {
            return deg;
          }
        }
      }
    }
    return Double.NaN;
  }

  private static double unsprungKg(Study study, boolean front) {
    double kg = 0;
    for (PartShape s : study.shapes().values()) {
      if (s.part() instanceof WheelPart w && (w.end() == Part.End.FRONT) == front) {
        kg += s.massKg();
      } else if (front ? s.part() instanceof FrontPart : s.part() instanceof SwingarmPart) {
        kg += s.massKg() / 2;
      }
    }
    return kg;
  }

  @Test
  void leanIsTakenWithTheSpringsPressedByTheTurn() {
    Study tourer = TestMachine.asFiled("tourer");
    isScanned(tourer);
    // the stand hangs on the left only
    assertThat(finding(tourer, "lean.left.sideStand").value()).isLessThan(60);
    assertThat(maybe(tourer, "lean.right.sideStand")).isEmpty();
  }

  /** With weight at its left a machine that turns left leans less for the same turn. */
  @Test
  void aLoadAtOneSideHelpsInTurnsToThatSide() {
    String heavy = crate("100 mm", "-40 mm").replace("16 kg", "60 kg");
    isScanned(study(STAND_PART, heavy + STAND_PART));
  }

  /** A leg straight beside the pan goes through what stands farther out below the hip. */
  @Test
  void bodyworkBesideThePanBarsAFoot() {
    for (String half : List.of("200 mm", "900 mm")) {
      String wide =
          crate(half, half)
              .replaceFirst(
                  "\"points\": .*?\\]\\]",
                  "\"points\": [[\"-700 mm\", \"0 mm\"], [\"900 mm\", \"0 mm\"], [\"900 mm\","
                      + " \"200 mm\"], [\"-700 mm\", \"200 mm\"]]");
      Finding foot = finding(study(STAND_PART, wide + STAND_PART), "foot.Bram");
      boolean barred = half.startsWith("900");
      assertThat(foot.verdict()).isEqualTo(barred ? Verdict.FAIL : Verdict.PASS);
      assertThat(foot.text().contains("cannot reach the ground past crate")).isEqualTo(barred);
    }
  }

  /** Where no turn balances the lean none is said, and the springs are not said to be let off. */
  @Test
  void aLoadFarOutAtOneSideIsHeldByNoTurn() {
    String far = crate("2000 mm", "-1940 mm").replace("16 kg", "4000 kg");
    Study study = study(STAND_PART, far + STAND_PART);
    assertThat(study.findings())
        .filteredOn(f -> f.id().startsWith("lean.left") && f.value() > 30)
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.text()).contains("no turn holds the machine there"));
    assertThat(finding(study, "lean.right").text()).contains("takes no turn to lean so far");
    Standing standing = study.standings().get(0);
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    Turning.State state = new Turning(wheels, standing, 1).step(20);
    assertThat(state.idealRad()).isGreaterThan(Math.PI / 2);
    assertThat(state.frontTravelMm()).isGreaterThanOrEqualTo(standing.frontTravelMm());
    assertThat(state.rearTravelMm()).isGreaterThanOrEqualTo(standing.rearTravelMm());
  }

  private static void isScanned(Study study) {
    for (boolean left : new boolean[] {true, false}) {
      Finding first = finding(study, left ? "lean.left" : "lean.right");
      double scanned = touchByScanning(study, first.stance().orElseThrow(), left, first.subject());
      // 0.03: the scan goes in steps of 0.02, travels between 2 degree steps are interpolated
      assertThat(first.value()).as(first.id()).isCloseTo(scanned, within(0.03));
      assertThat(first.text()).contains("km/h", "g sideways");
    }
  }

  @Test
  void aMirroredMachineLeansTheOtherWay() {
    Study left = withCrate("320 mm", "-260 mm");
    Study right =
        study(
            STAND_PART,
            crate("-260 mm", "320 mm") + STAND_PART,
            "\"y\": \"285 mm\", \"diameter\": \"24 mm\"",
            "\"y\": \"-285 mm\", \"diameter\": \"24 mm\"",
            "\"bendRadius\": \"60 mm\", \"y\": \"45 mm\"",
            "\"bendRadius\": \"60 mm\", \"y\": \"-45 mm\"");
    assertThat(finding(left, "lean.left.crate").value())
        .isCloseTo(finding(right, "lean.right.crate").value(), within(1e-9));
    assertThat(finding(left, "lean.left").value())
        .isCloseTo(finding(right, "lean.right").value(), within(1e-9));
    assertThat(finding(left, "stand.sideStand").value())
        .isCloseTo(finding(right, "stand.sideStand").value(), within(1e-9));
    assertThat(maybe(left, "lean.right.crate")).isEmpty();
  }

  private static final String PEGS =
      "\"y\": \"380 mm\", \"length\": \"95 mm\", \"mass\": \"0.8 kg\"";

  @Test
  void whatFoldsWarnsAndWhatIsHardFails() {
    String[] ask = {"\"demands\": {", "\"demands\": {\"lean\": \"45 deg\", "};
    Study hard = study(ask);
    Study folding = study(ask[0], ask[1], PEGS, PEGS + ", \"folds\": true");
    assertThat(finding(hard, "lean.right.pillionPegs").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(finding(folding, "lean.right.pillionPegs").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(finding(folding, "lean.right").subject()).isNotEqualTo("pillionPegs");
  }

  @Test
  void peopleTouchTheRoadToo() {
    // her board is taken far out and down, so that the boot beside it comes first
    Study low =
        study(
            "\"y\": \"268 mm\", \"length\": \"110 mm\"",
            "\"y\": \"560 mm\", \"length\": \"110 mm\"");
    Finding boot = finding(low, "lean.left.Bram.body");
    assertThat(boot.who()).contains(new Occupant("Bram", "rider"));
    assertThat(boot.value()).isLessThan(45);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void bumpAndDroopAreHowFarTheWheelsRiseAndFall(String name) {
    Study study = TestMachine.asFiled(name);
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    Places drawn = study.placed().places();
    for (Stance.Kind stance : List.of(Stance.Kind.FULL_BUMP, Stance.Kind.FULL_DROOP)) {
      Places places = study.standing(Condition.empty(stance)).orElseThrow().places();
      boolean up = stance == Stance.Kind.FULL_BUMP;
      double front = drawn.value(up ? wheels.fork().bump() : wheels.fork().droop());
      double rear = drawn.value(up ? wheels.arm().bump() : wheels.arm().droop());
      for (Map.Entry<String, Double> e :
          Map.of(wheels.front().axle(), front, wheels.rear().axle(), rear).entrySet()) {
        double rise = places.pin(e.getKey()).z() - drawn.pin(e.getKey()).z();
        assertThat(up ? rise : -rise)
            .as(stance + " " + e.getKey())
            .isCloseTo(e.getValue(), within(1e-9));
      }
    }
  }

  @Test
  void anUnknownMassIsNamedAndNothingThatRestsOnMassesPasses() {
    assertThat(maybe(TestMachine.asFiled("tourer"), "mass.unknown")).isEmpty();
    Study light =
        study("\"mass\": \"6 kg\", \"note\": \"two soft bags\"", "\"note\": \"two soft bags\"");
    assertThat(finding(light, "mass.unknown").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(finding(light, "mass.unknown").text()).contains("bags");
    assertThat(light.findings())
        .filteredOn(f -> f.id().matches("(load|lift|lean|stand|trail|sag|clearance)\\..*"))
        .hasSizeGreaterThan(10)
        .noneMatch(f -> f.verdict() == Verdict.PASS)
        .allMatch(f -> f.text().contains("Incomplete: the mass of bags is not known"));
  }

  @ParameterizedTest
  @CsvSource({
    "92 mm, CAUTION, true",
    "9 mm, CAUTION, false",
    "-20 mm, FAIL, false",
    "230 mm, CAUTION, false"
  })
  void trailOutsideWhatMachinesHaveIsSaid(String trail, Verdict verdict, boolean inside) {
    Study study = study("\"trail\": {\"is\": \"92 mm\"", "\"trail\": {\"is\": \"" + trail + "\"");
    assertThat(finding(study, "trail.unladen").verdict()).isEqualTo(verdict);
    assertThat(finding(study, "trail.unladen").figures().inside()).isEqualTo(inside);
  }

  @ParameterizedTest
  @CsvSource({"84, PASS", "85, FAIL", "84.5, FAIL"})
  void aChainHasAnEvenNumberOfLinks(String links, Verdict verdict) {
    Study study =
        study("\"chainLinks\": {\"is\": \"84\"", "\"chainLinks\": {\"is\": \"" + links + "\"");
    assertThat(finding(study, "chain.chain").verdict()).isEqualTo(verdict);
  }

  @Test
  void sittingOnTheBumpStopFailsAndHangingOnTheOtherNeedsCare() {
    String rear =
        "\"bump\": \"60 mm\", \"droop\": \"50 mm\", \"rate\": \"28 N/mm\", \"preload\": \"620 N\"";
    Study soft = study(rear, rear.replace("28 N/mm", "5 N/mm"));
    assertThat(finding(soft, "sag.rear.Bram").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(finding(soft, "sag.rear.Bram").text()).contains("bump stop");
    assertThat(finding(soft, "sag.front.Bram").verdict()).isEqualTo(Verdict.PASS);
    // nearly on either stop is not passed in silence, laden
    Study low = study(rear, rear.replace("28 N/mm", "11.5 N/mm"));
    Finding nearly = finding(low, "sag.rear.Bram");
    assertThat(nearly.verdict()).as(nearly.text()).isEqualTo(Verdict.CAUTION);
    assertThat(nearly.value() / nearly.limit()).isBetween(0.6, 0.999);
    assertThat(nearly.text()).contains("little is left for a bump");
    Study stiff = study(rear, rear.replace("28 N/mm", "2800 N/mm"));
    assertThat(finding(stiff, "sag.rear.Bram").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(finding(stiff, "sag.rear.Bram").text()).contains("hardly follow a hollow");
    assertThat(finding(study(rear, rear), "sag.rear.Bram").verdict()).isEqualTo(Verdict.PASS);
    Study hard = study(rear, rear.replace("620 N", "9000 N"));
    assertThat(finding(hard, "sag.rear.Bram").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(finding(hard, "sag.rear.unladen").verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void aPinInTheSkyIsFound() {
    Study study =
        study(
            "\"tailPin\": {\"at\": [\"-566 mm\", \"735 mm\"]",
            "\"tailPin\": {\"at\": [\"-566 mm\", \"9000 mm\"]");
    assertThat(finding(study, "place.tailPin").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(TestMachine.asFiled("tourer").findings())
        .noneMatch(f -> f.id().startsWith("place."));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-5 mm", "60 mm"})
  void wheelsThatStandInEachOtherFail(String wheelbase) {
    Study study =
        study(
            "\"wheelbase\": {\"is\": \"1850 mm\"", "\"wheelbase\": {\"is\": \"" + wheelbase + "\"");
    assertThat(finding(study, "suspension.wheels").verdict()).isEqualTo(Verdict.FAIL);
  }

  @Test
  void noFigureOfALiftIsInfinite() {
    Study sunk =
        study(
            STAND_PART,
            crate("300 mm", "-240 mm")
                    .replace("16 kg", "4000 kg")
                    .replace(
                        "\"0 mm\"], [\"60 mm\", \"0 mm\"]",
                        "\"-900 mm\"], [\"60 mm\", \"-900 mm\"]")
                + STAND_PART);
    Finding lift = finding(sunk, "lift.Bram");
    assertThat(lift.verdict()).isEqualTo(Verdict.FAIL);
    List<Finding> infinite = new ArrayList<>(sunk.findings());
    infinite.removeIf(f -> !Double.isInfinite(f.value()) && !f.text().contains("Infinity"));
    assertThat(infinite).isEmpty();
  }

  @Test
  void aTieThatTiesNothingIsSaid() {
    Study study =
        study(
            "\"pins\": [\"trailPoint\", \"headBottom\", \"headTop\"]",
            "\"pins\": [\"headBottom\", \"headBottom\", \"headBottom\"]");
    Finding tie = finding(study, "redundant.axisTrail");
    assertThat(tie.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(tie.text()).contains("ties nothing");
  }
}
