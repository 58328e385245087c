package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** A parked machine on three points, by levers, and stands that hold nothing. */
class StandFindingsTest {

  private static Finding stand(Study study) {
    return study.findings().stream()
        .filter(f -> f.id().equals("stand.sideStand"))
        .findFirst()
        .orElseThrow();
  }

  private static Finding stand(TestMachine m) {
    return stand(m.study());
  }

  /** Where a point of the upright machine is seen along it when it leans on its tyres' crowns. */
  private static double aside(double crown, double y, double z, double lean) {
    return y * Math.cos(lean) + (z - crown) * Math.sin(lean);
  }

  private static double up(double crown, double y, double z, double lean) {
    return crown + (z - crown) * Math.cos(lean) - y * Math.sin(lean);
  }

  /** The lean at which a foot so far out and up comes to the road, by halving. */
  private static double lean(double crown, double y, double z) {
    double low = 0;
    double high = Math.PI / 4;
    for (int i = 0; i < 100; i++) {
      double middle = (low + high) / 2;
      if (up(crown, y, z, middle) > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  @ParameterizedTest
  @CsvSource({"tourer, 285", "runabout, 235"})
  void tipAndFootLoadAreLevers(String name, double footY) {
    Study study = TestMachine.asFiled(name);
    Standing s = study.standing(Condition.empty(Stance.Kind.PARKED)).orElseThrow();
    OnRoad road = OnRoad.of(study, s);
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    double crown = (wheels.frontTyre().sectionRadiusMm() + wheels.rearTyre().sectionRadiusMm()) / 2;
    double kg = 0;
    double x = 0;
    double y = 0;
    double z = 0;
    for (PartShape p : s.shapes().values()) {
      kg += p.massKg();
      x += p.massKg() * road.x(p.centre());
      y += p.massKg() * p.centreYMm();
      z += p.massKg() * road.z(p.centre());
    }
    PointMm pin = s.places().pin("standFoot");
    double lean = lean(crown, footY, road.z(pin));
    double massY = aside(crown, y / kg, z / kg, lean);
    double massZ = up(crown, y / kg, z / kg, lean);
    double footX = road.x(pin);
    double footAside = aside(crown, footY, road.z(pin), lean);
    // over the wheels' line, and over the lines from the foot to either contact
    double least = massY;
    for (double end : new double[] {0, road.wheelbaseMm()}) {
      double across = (footX - end) * massY - (x / kg - end) * footAside;
      least = Math.min(least, Math.abs(across) / Math.hypot(footX - end, footAside));
    }
    Finding f = stand(study);
    // the two tyres differ a little, so that the machine pitches as it leans
    assertThat(f.value()).isCloseTo(Math.toDegrees(Math.atan(least / massZ)), within(0.05));
    assertThat(f.limit()).isEqualTo(8);
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.stance()).contains(Condition.empty(Stance.Kind.PARKED));
    assertThat(f.where()).contains(pin);
    String said = f.text().replaceAll(".*the foot carries ([0-9]+) N.*", "$1");
    assertThat(Double.parseDouble(said)).isCloseTo(kg * 9.80665 * massY / footAside, within(2.0));
    assertThat(f.text()).doesNotContain("farther out").doesNotContain("Its foot is");
  }

  @Test
  void tipIsHeldToWhatIsAsked() {
    double tip = stand(Sat.runabout()).value();
    for (double off : new double[] {-0.01, 0.01}) {
      Finding f = stand(TestMachine.runabout().with("demands", "tip", "'" + (tip + off) + " deg'"));
      assertThat(f.verdict()).isEqualTo(off > 0 ? Verdict.FAIL : Verdict.PASS);
      assertThat(f.text().contains(", so set its foot farther out or let the machine lean more;"))
          .isEqualTo(off > 0);
      assertThat(f.source()).contains("this layout's demand");
    }
  }

  /** On the right it stands as on the left, but for what the stand itself weighs. */
  @Test
  void aStandOnTheRightHoldsAsOneOnTheLeft() {
    double left = stand(Sat.runabout()).value();
    Finding right = stand(TestMachine.runabout().part("sideStand", "y", "'-235 mm'"));
    assertThat(right.value()).isCloseTo(left, within(1e-9));
  }

  // drawn to stand at about 10 degrees
  @ParameterizedTest
  @CsvSource({"20, under", "3, over"})
  void aLeanThatIsWrittenOtherwiseIsSaid(int lean, String where) {
    Finding f = stand(TestMachine.runabout().part("sideStand", "lean", "'" + lean + " deg'"));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text())
        .contains(
            "mm "
                + where
                + " the road at the lean of "
                + lean
                + "° that is written; as drawn it"
                + " stands at ");
    // what is drawn is what counts
    assertThat(f.value()).isCloseTo(stand(Sat.runabout()).value(), within(1e-9));
  }

  @Test
  void aFootUnderTheMiddleHoldsNothing() {
    Finding f = stand(TestMachine.runabout().part("sideStand", "y", "'0.9 mm'"));
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text()).startsWith("sideStand stands under the middle of the machine");
    assertThat(f.stance()).contains(Condition.empty(Stance.Kind.PARKED));
    Finding right = stand(TestMachine.runabout().part("sideStand", "y", "'-0.9 mm'"));
    assertThat(right.text()).startsWith("sideStand stands under the middle of the machine");
  }

  @Test
  void aFootThatNeverReachesTheRoadHoldsNothing() {
    Finding f =
        stand(TestMachine.runabout().part("sideStand", "y", "'-2 mm'").pin("standFoot", 560, 190));
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text())
        .startsWith("The foot of sideStand is drawn ")
        .contains(" over the road with the machine upright, so it never reaches the road");
    Finding under = stand(TestMachine.runabout().pin("standFoot", 560, -60));
    assertThat(under.text())
        .contains(" under the road with the machine upright, so the machine would lean away");
  }

  @Test
  void aCentreInTheRoadIsNotStoodOn() {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "anchor", Boxes.at(600, -900, 660, -840), 20, 20, "");
    Finding f = stand(m.part("anchor", "mass", "'4000 kg'"));
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text())
        .isEqualTo("The centre of mass lies in the road; nothing can be said about sideStand.");
  }

  // parked 205.7 mm in side view; with 235 mm to the side at most 312.3 mm long
  @ParameterizedTest
  @CsvSource({"200.8, 0", "200.6, 5.1", "317.2, 0", "317.4, 5.1"})
  void aLegIsAsLongStowedAsParked(double longMm, double off) {
    double parked = Math.hypot(30, 203.5);
    double most = Math.hypot(parked, 235);
    Optional<Finding> f =
        TestMachine.runabout().pin("standStowed", 590 - longMm, 210).finding("stand.sideStand.leg");
    double over = Math.max(parked - longMm, longMm - most);
    assertThat(f.isPresent()).isEqualTo(over > 5).isEqualTo(off > 0);
    f.ifPresent(
        x -> {
          assertThat(x.value()).isCloseTo(over, within(1e-6));
          assertThat(x.limit()).isEqualTo(5);
          assertThat(x.text())
              .contains("is " + Say.mm(parked) + " long parked and " + Say.mm(longMm) + " stowed")
              .endsWith((longMm < parked ? "farther from" : "nearer to") + " its pivot.");
        });
  }

  /** A third of the machine swings up and over: by levers it tips at 8.1 and at 7.8 degrees. */
  @Test
  void aStandHoldsWhileASectionIsOpenToo() {
    assertThat(TestMachine.named("lidded").study().findings())
        .filteredOn(f -> f.id().equals("stand.st"))
        .singleElement()
        .satisfies(f -> assertThat(f.verdict()).isEqualTo(Verdict.PASS));
    List<Finding> over =
        TestMachine.replacing("lidded", "-80 deg", "-150 deg").study().findings().stream()
            .filter(f -> f.id().equals("stand.st"))
            .toList();
    assertThat(over).extracting(Finding::verdict).containsExactly(Verdict.PASS, Verdict.FAIL);
    assertThat(over.get(1).stance()).contains(Condition.open("s"));
    assertThat(over.get(1).value()).isCloseTo(7.81, within(0.06));
  }

  /** It passes shut, springs let out or not; open it would tip too soon with them let out. */
  @Test
  void aStandThatNeedsCareOnlyWhileASectionIsOpenSaysSo() {
    List<Finding> found =
        TestMachine.named("sprung").study().findings().stream()
            .filter(f -> f.id().equals("stand.st"))
            .toList();
    assertThat(found).extracting(Finding::verdict).containsExactly(Verdict.PASS, Verdict.CAUTION);
    assertThat(found.get(1).stance()).contains(Condition.open("s"));
    assertThat(found.get(1).text()).contains("with them all let out it tips at");
  }

  /**
   * The foot takes more than half the weight, so the springs are let out and the frame rises: by a
   * computation in space, with tori for tyres, it leans 19.3 degrees and tips at 2.3.
   */
  @Test
  void whatTipsOnceTheFootHasUnloadedTheSpringsNeedsCare() {
    Finding soft = onTrolley(TestMachine.named("trolley").study());
    assertThat(soft.value()).isGreaterThan(8);
    assertThat(soft.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(soft.text()).contains("with them all let out it tips at 2.");
    Finding stiff =
        onTrolley(
            TestMachine.replacing(
                    "trolley",
                    "\"rate\": \"12 N/mm\"",
                    "\"rate\": \"12000 N/mm\"",
                    "\"rate\": \"19 N/mm\"",
                    "\"rate\": \"19000 N/mm\"",
                    "\"preload\": \"170 N\"",
                    "\"preload\": \"0 N\"",
                    "\"preload\": \"300 N\"",
                    "\"preload\": \"0 N\"")
                .study());
    assertThat(stiff.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(stiff.value()).isCloseTo(2.3, within(0.3));
  }

  private static Finding onTrolley(Study study) {
    return study.findings().stream()
        .filter(f -> f.id().equals("stand.st"))
        .findFirst()
        .orElseThrow();
  }
}
