package org.longlow.constraints.check.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.SeenFrom;
import org.longlow.constraints.stand.Silhouettes;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** The machine in motion: both sides of each limit, and figures worked out another way. */
class RideFindingsTest {

  private static Finding finding(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private static boolean upright(Standing s) {
    return s.kind() == Stance.Kind.UNLADEN || s.kind() == Stance.Kind.LADEN;
  }

  /** Asks something of points 2 mm apart on all outlines but those of wheels, on the road. */
  private interface Asked {
    double of(OnRoad road, double x, double z);
  }

  private static double least(Study study, Asked asked) {
    double least = Double.POSITIVE_INFINITY;
    for (Standing s : study.standings()) {
      if (!upright(s)) {
        continue;
      }
      OnRoad road = OnRoad.of(study, s);
      for (PartShape shape : s.shapes().values()) {
        if (shape.part() instanceof WheelPart) {
          continue;
        }
        LengthIndexedLine line = new LengthIndexedLine(shape.outline().getBoundary());
        for (double at = 0; at < line.getEndIndex(); at += 2) {
          Coordinate c = line.extractPoint(at);
          PointMm p = new PointMm(c.x, c.y);
          least = Math.min(least, asked.of(road, road.x(p), road.z(p)));
        }
      }
    }
    return least;
  }

  /**
   * How steeply the line through a point that touches a wheel from below falls towards it, rad: the
   * slope is a root of the quadratic that sets the line's distance from the axle.
   */
  private static double falls(double alongToAxle, double z, double radius) {
    double h = radius - z;
    double a = alongToAxle * alongToAxle - radius * radius;
    double b = -2 * alongToAxle * h;
    double c = h * h - radius * radius;
    if (a <= 0 || alongToAxle <= 0 || b * b < 4 * a * c) {
      return Double.POSITIVE_INFINITY;
    }
    // of both lines through the point the one under the wheel
    double slope = (-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);
    return -Math.atan(slope);
  }

  @Test
  void theCrestIsThatOfTheWorstPoint() {
    Study study = TestMachine.asFiled("tourer");
    double least =
        least(
            study,
            (road, x, z) ->
                falls(x, z, road.rearRadiusMm())
                    + falls(road.wheelbaseMm() - x, z, road.frontRadiusMm()));
    Finding crest =
        study.findings().stream()
            .filter(f -> f.kind() == RampFindings.RAMP && f.id().endsWith("crest"))
            .findFirst()
            .orElseThrow();
    // points 2 mm apart
    assertThat(crest.value()).isCloseTo(Math.toDegrees(least), within(0.02));
    assertThat(crest.where()).isPresent();
  }

  @Test
  void aRampIsHeldToWhatIsAsked() {
    double crest = one("ramp", "crest").value();
    assertThat(asked("ramp", crest - 0.01 + " deg", "crest").verdict()).isEqualTo(Verdict.PASS);
    assertThat(asked("ramp", crest + 0.01 + " deg", "crest").verdict()).isEqualTo(Verdict.FAIL);
    double kerb = one("ramp", "kerb").value();
    assertThat(asked("kerb", kerb - 0.01 + " mm", "kerb").verdict()).isEqualTo(Verdict.PASS);
    assertThat(asked("kerb", kerb + 0.01 + " mm", "kerb").verdict()).isEqualTo(Verdict.FAIL);
  }

  private static Finding one(String kind, String named) {
    return TestMachine.asFiled("tourer").findings().stream()
        .filter(f -> f.kind().word().equals(kind) && f.id().endsWith(named))
        .findFirst()
        .orElseThrow();
  }

  private static Finding asked(String demand, String value, String named) {
    return TestMachine.tourer().with("demands", demand, "'" + value + "'").findings().stream()
        .filter(f -> f.kind() == RampFindings.RAMP && f.id().endsWith(named))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void stifferSpringsInFrontDiveLess() {
    Finding soft =
        TestMachine.tourer().part("front", "rate", "'17 N/mm'").finding("dive.front").orElseThrow();
    Finding stiff =
        TestMachine.tourer().part("front", "rate", "'60 N/mm'").finding("dive.front").orElseThrow();
    assertThat(stiff.value()).isGreaterThan(soft.value());
    double reaches = soft.value();
    assertThat(soft.verdict()).isEqualTo(reaches < 0.5 ? Verdict.CAUTION : Verdict.PASS);
    assertThat(braking(reaches - 0.001).verdict()).isEqualTo(Verdict.PASS);
    assertThat(braking(reaches + 0.001).verdict()).isEqualTo(Verdict.CAUTION);
  }

  /** On a road that holds less than the springs, no stiffer ones are asked for. */
  @Test
  void whereTheTyresSlideFirstNoStifferSpringsAreAskedFor() {
    TestMachine soft = TestMachine.tourer().part("front", "rate", "'17 N/mm'");
    double reaches = soft.finding("dive.front").orElseThrow().value();
    Finding hard = soft.with("demands", "braking", "0.9").finding("dive.front").orElseThrow();
    assertThat(hard.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(hard.text()).contains("stiffer springs in front");
    String slippery = String.format(Locale.ROOT, "%.4f", reaches - 0.05);
    Finding slides = soft.with("demands", "grip", slippery).finding("dive.front").orElseThrow();
    assertThat(slides.verdict()).isEqualTo(Verdict.PASS);
    assertThat(slides.text()).contains("where both tyres slide").doesNotContain("stiffer");
    assertThat(slides.limit()).isCloseTo(reaches - 0.05, within(1e-4));
  }

  /** Where springs do it without braking, no rod of the brake helps. */
  @Test
  void aWheelOnItsLowerStopWithoutBrakingIsHeldThereByItsSprings() {
    for (TestMachine machine :
        List.of(
            TestMachine.tourer().part("front", "preload", "'9000 N'"),
            TestMachine.tourer()
                .part("front", "preload", "'9000 N'")
                .part("front", "brakeRod", "true"))) {
      assertThat(machine.finding("dive.front").orElseThrow().text())
          .contains("its springs hold the wheel on its lower stop", "less preload in front")
          .doesNotContain("brakeRod");
    }
  }

  private static Finding braking(double g) {
    return TestMachine.tourer()
        .with("demands", "braking", String.format(Locale.ROOT, "%.6f", g))
        .finding("dive.front")
        .orElseThrow();
  }

  @Test
  void whereNobodyKnowsTheSpringsNothingIsSaidOfTheDive() {
    assertThat(TestMachine.tourer().without("front", "rate").finding("dive.front")).isEmpty();
  }

  @Test
  void aWheelThatSaysItsSpreadIsNotTakenFromMemory() {
    assertThat(TestMachine.tourer().verdict("balance.balance")).isEqualTo(Verdict.CAUTION);
    TestMachine said =
        TestMachine.tourer().part("frontWheel", "spread", "0.7").part("rearWheel", "spread", "0.7");
    Finding balance = said.finding("balance.balance").orElseThrow();
    assertThat(balance.verdict()).isEqualTo(Verdict.PASS);
    assertThat(balance.value())
        .isEqualTo(TestMachine.tourer().finding("balance.balance").orElseThrow().value());
    Finding lighter =
        TestMachine.tourer()
            .part("frontWheel", "spread", "0.5")
            .part("rearWheel", "spread", "0.7")
            .finding("balance.balance")
            .orElseThrow();
    assertThat(lighter.value()).isNotEqualTo(balance.value());
  }

  private static Standing inItsStance(Study study, Finding f) {
    return study.standings().stream()
        .filter(s -> f.stance().orElseThrow().equals(s.condition()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theWindLeansTheMachineAsStaticsSay() {
    Study study = TestMachine.asFiled("tourer");
    Finding wind = finding(study, "wind.side");
    Standing s = inItsStance(study, wind);
    Silhouette side =
        Silhouettes.of(s.shapes().values(), s.rider(), s.ground(), SeenFrom.SIDE).orElseThrow();
    // 40 km/h across, 90 km/h along: half of 1.225 kg/m3, and a flat plate's 1.1 by the sine
    double across = 40 / 3.6;
    double along = 90 / 3.6;
    double newton =
        0.5
            * 1.225
            * 1.1
            * side.areaMm2()
            * 1e-6
            * across
            * Math.sqrt(across * across + along * along);
    double weight = s.load().total().massKg() * 9.80665;
    double high = s.ground().heightMm(s.load().total().at());
    double lean = Math.toDegrees(Math.atan(newton * side.centroid().z() / (weight * high)));
    assertThat(wind.value()).isCloseTo(lean, within(0.02));
    assertThat(wind.verdict()).isEqualTo(Verdict.CAUTION);
  }

  @Test
  void theWindPressesFromTheMiddleToAQuarterBehindTheNose() {
    Study study = TestMachine.asFiled("tourer");
    Finding wind = finding(study, "wind.side");
    Standing s = inItsStance(study, wind);
    Silhouette side =
        Silhouettes.of(s.shapes().values(), s.rider(), s.ground(), SeenFrom.SIDE).orElseThrow();
    Envelope box = new Envelope();
    for (PartShape shape : s.shapes().values()) {
      for (Coordinate c : shape.outline().getCoordinates()) {
        PointMm p = s.ground().toRoad(new PointMm(c.x, c.y));
        box.expandToInclude(p.x(), p.z());
      }
    }
    Matcher said =
        Pattern.compile("up and (\\d+) to (\\d+) mm ahead of where").matcher(wind.text());
    assertThat(said.find()).isTrue();
    assertThat(Double.parseDouble(said.group(1))).isCloseTo(side.centroid().x(), within(3.0));
    assertThat(Double.parseDouble(said.group(2)))
        .isCloseTo(box.getMaxX() - box.getWidth() / 4, within(3.0));
  }

  @Test
  void whatIsAdvisedGoesByTheArms() {
    for (String spread : new String[] {"'24 deg'", "'33 deg'"}) {
      for (String name : new String[] {"tourer", "runabout"}) {
        Finding wind =
            TestMachine.named(name)
                .with("measures", "rake", spread)
                .finding("wind.side")
                .orElseThrow();
        Matcher said =
            Pattern.compile("by an arm of ([-0-9.]+) to ([-0-9.]+) mm; ([-0-9.]+) mm keep")
                .matcher(wind.text());
        assertThat(said.find()).as(wind.text()).isTrue();
        double least = Double.parseDouble(said.group(1));
        double most = Double.parseDouble(said.group(2));
        double straight = Double.parseDouble(said.group(3));
        assertThat(wind.text())
            .contains(
                most < straight
                    ? "carried downwind"
                    : least > straight ? "turns up into the wind" : "Gusts turn it little");
      }
    }
  }

  @Test
  void aBigAreaBehindTheAxisThatTurnsFails() {
    String flag =
        "{'kind': 'box', 'frame': 'flagPin', 'outline': {'points': [['0 mm', '0 mm'], ['700 mm',"
            + " '0 mm'], ['700 mm', '900 mm'], ['0 mm', '900 mm']]}, 'left': '5 mm', 'right':"
            + " '5 mm', 'mass': '1 kg', 'steered': %s}";
    Finding turning =
        TestMachine.tourer()
            .pin("flagPin", -900, 150)
            .with("parts", "flag", String.format(flag, "true"))
            .finding("wind.side")
            .orElseThrow();
    assertThat(turning.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(turning.text()).contains("turns into the wind");
    Finding fixed =
        TestMachine.tourer()
            .pin("flagPin", -900, 150)
            .with("parts", "flag", String.format(flag, "false"))
            .finding("wind.side")
            .orElseThrow();
    assertThat(fixed.verdict()).isEqualTo(Verdict.CAUTION);
  }

  @Test
  void twoWheelsAloneSayNothingOfMotion() {
    assertThat(TestMachine.named("trolley").findings())
        .noneMatch(f -> Double.isInfinite(f.value()))
        .filteredOn(f -> f.kind() == WindFindings.WIND || f.kind() == BalanceFindings.BALANCE)
        .isEmpty();
  }

  /** Arms as a wind finding tells them: the lesser, the greater, and what keeps it straight. */
  private static double[] arms(Finding wind) {
    Matcher m =
        Pattern.compile("by an arm of (-?[0-9.]+) to (-?[0-9.]+).mm; (-?[0-9.]+).mm keep")
            .matcher(wind.text());
    assertThat(m.find()).as(wind.text()).isTrue();
    return new double[] {
      Double.parseDouble(m.group(1)), Double.parseDouble(m.group(2)), Double.parseDouble(m.group(3))
    };
  }

  private static double off(double[] arms) {
    return Math.max(0, Math.max(arms[2] - arms[1], arms[0] - arms[2]));
  }

  /** What is foretold of a cowl comes true once it is hung so, and is as much better as is said. */
  @ParameterizedTest
  @CsvSource({"false, 40 mm", "true, 40 mm", "false, 190 mm", "true, 190 mm"})
  void aCowlTurningWithTheSteeringIsComparedWithOneFixed(boolean turns, String trail) {
    TestMachine machine = TestMachine.runabout().with("measures", "trail", "'" + trail + "'");
    machine
        .pin("nosePin", 1500, 900)
        .with(
            "parts",
            "nose",
            "{'kind': 'cowl', 'frame': 'nosePin', 'outline': {'points': [['0 mm', '0 mm'], ['350 mm',"
                + " '0 mm'], ['350 mm', '250 mm'], ['0 mm', '250 mm']]}, 'thickness': '3 mm',"
                + " 'left': '100 mm', 'right': '100 mm', 'mass': '0.01 kg'}");
    machine.part("nose", "steered", Boolean.toString(turns));
    Finding now = machine.finding("wind.side").orElseThrow();
    machine.part("nose", "steered", Boolean.toString(!turns));
    Finding other = machine.finding("wind.side").orElseThrow();
    Matcher told =
        Pattern.compile(
                "nose "
                    + (turns ? "fixed to the frame" : "turning with it")
                    + " (-?[0-9.]+).mm, (which is better|which is worse|no better and no worse)")
            .matcher(now.text());
    assertThat(told.find()).as(now.text()).isTrue();
    assertThat(Double.parseDouble(told.group(1)))
        .isCloseTo(arms(other)[0], within(2.5)); // another of the crew may be worst
    double gains = off(arms(now)) - off(arms(other));
    if (Math.abs(gains) > 3) {
      assertThat(told.group(2)).isEqualTo(gains > 0 ? "which is better" : "which is worse");
    }
  }
}
