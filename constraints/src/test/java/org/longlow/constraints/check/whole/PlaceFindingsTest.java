package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.check.road.StandFindings;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Pins that are out of place, chains, and what a machine lacks, on both sides of each limit. */
class PlaceFindingsTest {

  // axles at 0 and 1640 mm: one wheelbase beyond either, 500 mm below the road, 2500 above
  @ParameterizedTest
  @CsvSource({
    "-1639, 500, 0",
    "-1641, 500, 1",
    "3279, 500, 0",
    "3282, 500, 2",
    "0, 2499, 0",
    "0, 2503, 3",
    "0, -499, 0",
    "0, -504, 4",
    "-1650, 2600, 100"
  })
  void aPinBeyondTheMachineIsFound(double x, double z, double beyond) {
    Optional<Finding> f = TestMachine.runabout().pin("q", x, z).finding("place.q");
    assertThat(f.isPresent()).isEqualTo(beyond > 0);
    if (beyond > 0) {
      assertThat(f.get().verdict()).isEqualTo(Verdict.FAIL);
      assertThat(f.get().value()).isCloseTo(beyond, within(1e-6));
      assertThat(f.get().limit()).isZero();
      assertThat(f.get().where().orElseThrow().x()).isEqualTo(x);
      assertThat(f.get().text())
          .startsWith(
              String.format(
                  "Pin q lies at %.0f, %.0f mm, %.0f mm beyond where parts", x, z, beyond));
    }
  }

  // --- chains

  private static Optional<Finding> chain(String links, String length) {
    return TestMachine.tourer()
        .with("measures", "chainLinks", "{'is': '" + links + "'}")
        .field("ties", "chain", "is", "'" + length + "'")
        .finding("chain.chain");
  }

  @Test
  void aChainIsSaidWithItsLinks() {
    Finding even = chain("84", "chainLinks * chainPitch").orElseThrow();
    assertThat(even.verdict()).isEqualTo(Verdict.PASS);
    assertThat(even.value()).isEqualTo(84);
    assertThat(even.text()).isEqualTo("Chain chain has 84 links, an even number.");
    Finding odd = chain("85", "chainLength").orElseThrow();
    assertThat(odd.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(odd.text())
        .startsWith("Chain chain has 85 links, an odd number, which needs a cranked");
    Finding half = chain("84.5", "chainLength").orElseThrow();
    assertThat(half.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(half.text())
        .isEqualTo("Chain chain would have 84.50 links; choose an even whole number.");
    // a belt is no chain
    assertThat(chain("84", "84 * 15.875 mm")).isEmpty();
    assertThat(chain("84", "chainLinks * chainPitch + 0.01 mm")).isEmpty();
  }

  /** A hull about both sprockets as they touch is as long as the shortest chain. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 16})
  void aChainThatDoesNotGoRoundItsSprocketsSaysHowManyLinksDo(int links) {
    TestMachine tourer = TestMachine.tourer();
    var places = tourer.study().placed().places();
    double[] radii =
        tourer.study().layout().ties().get("chain").radii().stream()
            .mapToDouble(places::value)
            .toArray();
    var factory = new GeometryFactory();
    double hull =
        factory
            .createPoint(new Coordinate(0, 0))
            .buffer(radii[0], 100)
            .union(
                factory.createPoint(new Coordinate(radii[0] + radii[1], 0)).buffer(radii[1], 100))
            .convexHull()
            .getLength();
    int least = 2 * (int) Math.ceil(hull / places.measures().get("chainPitch") / 2);
    Finding few = chain(Integer.toString(links), "chainLength").orElseThrow();
    assertThat(few.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(few.text()).startsWith("Chain chain of " + links + " is shorter");
    assertThat(few.text()).contains("at least " + least + " links");
    assertThat(chain(Integer.toString(least - 2), "chainLength").orElseThrow().text())
        .contains("shorter");
    assertThat(chain(Integer.toString(least), "chainLength").orElseThrow().text())
        .doesNotContain("shorter");
  }

  // --- what is lacking

  private static String lacks(TestMachine m) {
    return m.finding("completeness.machine").orElseThrow().text();
  }

  @Test
  void aWholeMachineIsSaidToBeSo() {
    Finding f =
        Sat.runabout().findings().stream()
            .filter(x -> x.id().equals("completeness.machine"))
            .findFirst()
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.text()).startsWith("Both wheels are held and braked, there are a frame, a drive");
    assertThat(f.value()).isZero();
  }

  private static Study without(String wheel) {
    Layout bare = Changed.without(Sat.runabout().layout(), wheel);
    return Study.of(Changed.with(bare, Map.of("wishes", Map.of())));
  }

  @ParameterizedTest
  @CsvSource({"frontWheel, there is no front wheel", "rearWheel, there is no rear wheel"})
  void aMissingWheelIsSaidAndWhatRestsOnBothIsNotJudged(String wheel, String words) {
    List<Finding> all = without(wheel).findings();
    Finding lacks =
        all.stream().filter(f -> f.id().equals("completeness.machine")).findFirst().orElseThrow();
    assertThat(lacks.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(lacks.text()).contains(words);
    assertThat(lacks.value()).isEqualTo(1);
    assertThat(all)
        .noneMatch(f -> f.kind() == LeanFindings.LEAN || f.kind() == LeanFindings.TOUCH)
        .noneMatch(f -> f.kind() == StandFindings.STAND || f.kind() == PlaceFindings.PLACE);
  }

  /** A disc or a drum brakes its own wheel; a calliper or a sprocket alone brakes none. */
  @ParameterizedTest
  @CsvSource({"frontWheel, rearWheel", "rearWheel, frontWheel"})
  void aWheelThatNothingBrakesIsSaid(String wheel, String other) {
    String body = "', 'radius': '60 mm', 'width': '5 mm', 'y': '68 mm'}]";
    for (String none : new String[] {"calliper", "sprocket", "motor"}) {
      assertThat(lacks(TestMachine.runabout().part(wheel, "inside", "[{'what': '" + none + body)))
          .contains("nothing brakes " + wheel)
          .doesNotContain("nothing brakes " + other);
    }
    for (String brake : new String[] {"disc", "drum"}) {
      assertThat(lacks(TestMachine.runabout().part(wheel, "inside", "[{'what': '" + brake + body)))
          .doesNotContain("nothing brakes");
    }
  }

  /** What stands farther from all else than brackets reach is carried by nothing. */
  @ParameterizedTest
  @CsvSource({"1500, true", "640, false"})
  void whatHangsOnNothingIsSaid(double z, boolean hangs) {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "block", Boxes.at(-150, z, -100, z + 50), 25, 25, "");
    assertThat(lacks(m).contains("block hangs on nothing")).as(lacks(m)).isEqualTo(hangs);
  }

  @Test
  void aCarrierNeedsSomethingThatHoldsIt() {
    TestMachine m = TestMachine.runabout().pin("away", 300, 1500);
    assertThat(lacks(m.part("swingarm", "pivot", "'away'"))).contains("nothing holds away");
    TestMachine head = TestMachine.runabout().pin("top", 1500, 1700).pin("bottom", 1560, 1500);
    head.part("front", "top", "'top'").part("front", "bottom", "'bottom'");
    assertThat(lacks(head)).contains("nothing of the frame holds front at top and bottom");
  }

  @Test
  void aDriveNeedsWhatItRunsOnAndAWayToAWheel() {
    assertThat(lacks(TestMachine.runabout().lacking("battery"))).contains("draw a battery");
    String[] tanks =
        TestMachine.tourer()
            .layout()
            .parts(SolidPart.class)
            .filter(p -> p.type() == SolidPart.Kind.TANK)
            .map(SolidPart::name)
            .toArray(String[]::new);
    assertThat(lacks(TestMachine.tourer().lacking(tanks))).contains("draw a tank");
    TestMachine off = TestMachine.runabout().pin("mid", 700, 400);
    assertThat(lacks(off.part("motor", "frame", "'mid'"))).contains("no chain or belt leads");
    assertThat(lacks(TestMachine.tourer())).doesNotContain("no chain or belt");
  }

  @ParameterizedTest
  @CsvSource({"39, true", "41, false"})
  void aDiscOfNoSizeBrakesNothing(double radius, boolean lacks) {
    String disc =
        "[{'what': 'disc', 'radius': '" + radius + " mm', 'width': '5 mm', 'y': '68 mm'}]";
    assertThat(lacks(TestMachine.runabout().part("frontWheel", "inside", disc)))
        .satisfies(t -> assertThat(t.contains("nothing brakes frontWheel")).isEqualTo(lacks));
  }

  /** A strut from the frame to the axle: by the arc of the arm, how much longer it would be. */
  @ParameterizedTest
  @CsvSource({"false, true", "true, false"})
  void aStrutToTheAxleLocksTheSuspension(boolean bought, boolean told) {
    TestMachine m = TestMachine.runabout().pin("high", 0, 900);
    m.with(
        "parts",
        "strut",
        Boxes.rail("high", "rearAxle", 20, 150, ", 'both': true, 'bought': " + bought));
    Optional<Finding> f = m.finding("tied.strut");
    assertThat(f.isPresent()).isEqualTo(told);
    f.ifPresent(
        t -> {
          assertThat(t.verdict()).isEqualTo(Verdict.FAIL);
          assertThat(t.value()).isBetween(40.0, 55.0); // bump 50, droop 40, nearly along it
        });
    assertThat(TestMachine.runabout().finding("tied.swingarm.with")).isEmpty();
  }

  @Test
  void aSeatThatGoesWithAWheelFails() {
    TestMachine m = TestMachine.runabout();
    var at = m.study().placed().places().pin("panRear");
    m.with(
        "pins",
        "panRear",
        "{'at': [" + Boxes.mm(at.x()) + ", " + Boxes.mm(at.z()) + "], 'with': 'front-wheel'}");
    assertThat(m.finding("tied.pan.with").orElseThrow().text()).contains("panRear");
  }

  @Test
  void aForkOnAnotherPinHoldsNoWheel() {
    assertThat(lacks(TestMachine.runabout().part("front", "axle", "'linkPivot'")))
        .contains("nothing holds the front wheel and steers it");
  }

  /** A rail or bracket on its axle holds a rear wheel as well as a swingarm. */
  @Test
  void aRigidMachineHoldsItsRearWheelByARail() {
    TestMachine rigid = TestMachine.runabout().lacking("swingarm");
    assertThat(lacks(rigid)).contains("nothing holds the rear wheel");
    rigid.with("parts", "stay", Boxes.rail("swingPivot", "rearAxle", 25, 90, ", 'both': true"));
    assertThat(rigid.finding("completeness.machine").orElseThrow().verdict())
        .isEqualTo(Verdict.PASS);
  }

  /** A rail is held by what it shares a pin with or is no farther from than 25 mm. */
  @ParameterizedTest
  @CsvSource({"24.9, false", "25.1, true"})
  void aRailNearNothingHangs(double gap, boolean hangs) {
    TestMachine m =
        TestMachine.runabout()
            .pin("a", 1900, 1900)
            .pin("b", 2100, 1900)
            .with("parts", "loose", Boxes.rail("a", "b", 20, 0, ""));
    Boxes.add(m, "near", Boxes.at(1950, 1910 + gap, 2050, 1990), 50, 50, "");
    assertThat(lacks(m).contains("loose hangs on nothing: bring it to another part"))
        .isEqualTo(hangs);
    m.with("parts", "loose", Boxes.rail("a", "headTop", 20, 0, ""));
    assertThat(lacks(m)).doesNotContain("loose hangs");
  }

  @Test
  void gripsMustBeHeldByWhatSteers() {
    assertThat(lacks(TestMachine.runabout().part("bars", "steered", "false")))
        .contains("grips are on nothing that steers");
    // a passenger's grips steer nothing
    assertThat(lacks(TestMachine.runabout().part("grips", "seat", "'passenger'")))
        .contains("there are no grips to steer with");
    TestMachine rails = TestMachine.runabout();
    for (String rail : new String[] {"floorRail", "backRail", "seatRail", "tailRail"}) {
      rails.part(rail, "steered", "true");
    }
    assertThat(lacks(rails)).contains("there is no frame: draw its rails");
  }
}
