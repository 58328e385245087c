package org.longlow.constraints.suit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.check.PartialChecks;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/** The search's quick measurements against the full study of the same place. */
class GaugeTest {

  private static Layout trestle;

  @BeforeAll
  static void read() throws Exception {
    Path file = Path.of(GaugeTest.class.getResource("trestle.json").toURI());
    trestle = ((ReadResult.Read) LayoutReader.read(file)).layout();
  }

  private static Layout with(String pin, double x, double z) {
    Pin there = trestle.pins().get(pin).at(Formula.of(x, Unit.MM), Formula.of(z, Unit.MM));
    return trestle.withPins(Map.of(pin, there));
  }

  private static Gauge gauge(Study base) {
    Layout layout = base.layout();
    Places places = base.placed().places();
    PartialChecks checks = new PartialChecks(layout, Wheels.of(layout, places), places);
    return new Gauge(layout, places, Set.of("peg", "grip"), name -> true, checks);
  }

  private static void agree(List<Reading> readings, Study study) {
    Map<String, Finding> findings =
        study.findings().stream().collect(Collectors.toMap(Finding::id, f -> f, (a, b) -> a));
    Set<String> compared = new HashSet<>();
    for (Reading r : readings) {
      Finding f = findings.get(r.id());
      if (f == null || Double.isNaN(f.margin()) || r.kind() == Reading.Kind.SIGHT) {
        continue;
      }
      if (r.kind() == Reading.Kind.LEAN || r.kind() == Reading.Kind.CLEARANCE) {
        // of the parts that may move only, so never less than that of all parts
        assertThat(r.margin()).as(r.id()).isGreaterThanOrEqualTo(f.margin() - 1e-6);
      } else if (r.kind() == Reading.Kind.GAP && f.value() < 0) {
        assertThat(r.margin()).as(r.id()).isLessThanOrEqualTo(f.margin() + 1e-6);
      } else {
        assertThat(r.margin()).as(r.id()).isCloseTo(f.margin(), within(1e-6));
      }
      compared.add(r.id());
    }
    assertThat(compared).hasSizeGreaterThan(20);
    // whatever fails about a person is felt by the search
    for (Finding f : study.findings()) {
      if (f.verdict() == Verdict.FAIL && (f.id().contains(".Mara") || f.id().contains(".Tor"))) {
        assertThat(readings)
            .as(f.text())
            .anyMatch(r -> r.id().equals(f.id()) && (r.fails() || r.stray(1) > 0));
      }
    }
  }

  @Test
  void atItsBaseItAgreesWithTheStudy() {
    Study study = Study.of(with("hood", 1080, 840));
    agree(gauge(study).at(study.placed().places()), study);
  }

  @Test
  void awayFromItsBaseItAgreesWithTheStudyOfThatPlace() {
    // nothing of this machine sags, so what is kept from the base is still true
    Gauge gauge = gauge(Study.of(trestle));
    for (double[] peg : new double[][] {{1425, 421}, {1510, 400}, {1700, 430}}) {
      Study there = Study.of(with("peg", peg[0], peg[1]));
      agree(gauge.at(there.placed().places()), there);
    }
  }

  /** An edge that hangs 30 mm below the eye and 300 mm ahead has to come up to its level. */
  @Test
  void anEdgeThatHangsBeforeTheRoadIsMeasuredToTheLevelOfTheEye() throws Exception {
    Study open = Study.of(trestle);
    Sitting sitting = open.sittings().get(0);
    PointMm eye = sitting.posture().orElseThrow().eye();
    String plate =
        "\"visor\": {\"kind\": \"box\", \"frame\": \"visorLow\", \"outline\": {\"points\": [[0, 0],"
            + " [20, 0], [20, 600], [0, 600]], \"closed\": true}, \"left\": 200, \"right\": 200,"
            + " \"mass\": 0.1},";
    String text =
        Files.readString(Path.of(GaugeTest.class.getResource("trestle.json").toURI()))
            .replaceFirst(
                "\"pins\": *\\{",
                "\"pins\": {\"visorLow\": {\"at\": ["
                    + (eye.x() + 300)
                    + ", "
                    + (eye.z() - 30)
                    + "], \"nailed\": true},")
            .replaceFirst("\"parts\": *\\{", "\"parts\": {" + plate);
    Study hung = Study.of(((ReadResult.Read) LayoutReader.read(text, null)).layout());
    String id = "sight." + sitting.person();
    Finding f = hung.findings().stream().filter(g -> g.id().equals(id)).findFirst().orElseThrow();
    assertThat(f.text()).contains("The edge of visor hangs before the road beyond, 30 mm below");
    Reading reading =
        gauge(hung).at(hung.placed().places()).stream()
            .filter(r -> r.id().equals(id) && r.kind() == Reading.Kind.SIGHT)
            .findFirst()
            .orElseThrow();
    assertThat(reading.margin()).isCloseTo(-Math.toDegrees(Math.atan2(30, 300)), within(1e-6));
  }

  /** Two stays on the pin of the pegs, in each other the farther the nearer they come in line. */
  @Test
  void jointsOfWhatMovesAreFelt() throws Exception {
    String stay =
        "{\"kind\": \"rail\", \"diameter\": 20, \"wall\": 2, \"bendRadius\": 60, \"y\": 400,"
            + " \"material\": \"steel\", \"path\": [\"peg\", \"%s\"]}";
    String text =
        Files.readString(Path.of(GaugeTest.class.getResource("trestle.json").toURI()))
            .replaceFirst(
                "\"pins\": *\\{",
                "\"pins\": {\"low\": {\"at\": [1425, 0], \"nailed\": true}, \"lower\": {\"at\":"
                    + " [1575, 0], \"nailed\": true},")
            .replaceFirst(
                "\"parts\": *\\{",
                "\"parts\": {\"stayA\": "
                    + stay.formatted("low")
                    + ", \"stayB\": "
                    + stay.formatted("lower")
                    + ",");
    Layout stays = ((ReadResult.Read) LayoutReader.read(text, null)).layout();
    Gauge gauge = gauge(Study.of(stays));
    Set<Verdict> met = new HashSet<>();
    for (double x : new double[] {1440, 1700}) {
      Pin there = stays.pins().get("peg").at(Formula.of(x, Unit.MM), Formula.of(400, Unit.MM));
      Study study = Study.of(stays.withPins(Map.of("peg", there)));
      Optional<Reading> felt =
          gauge.at(study.placed().places()).stream()
              .filter(r -> r.id().equals("joint.stayA.stayB"))
              .findFirst();
      Optional<Finding> found =
          study.findings().stream().filter(f -> f.id().equals("joint.stayA.stayB")).findFirst();
      met.add(found.map(Finding::verdict).orElse(Verdict.PASS));
      assertThat(felt.map(Reading::fails).orElse(false)).isEqualTo(found.isPresent());
      found.ifPresent(f -> assertThat(felt.get().margin()).isCloseTo(f.margin(), within(1e-6)));
    }
    assertThat(met).containsExactlyInAnyOrder(Verdict.PASS, Verdict.FAIL);
  }

  @Test
  void sightFailsForTheSearchWhereItFailsForTheStudy() {
    Set<Verdict> met = new HashSet<>();
    for (double z : new double[] {900, 1020, 1100, 1180, 1300}) {
      Layout layout = with("grip", 950, 830);
      Pin hood = layout.pins().get("hood").at(Formula.parse("1150 mm"), Formula.of(z, Unit.MM));
      // a plate across the middle, so that it stands in the line of sight
      Layout blocked = layout.withPins(Map.of("hood", hood)).withPart(middlePlate(layout));
      Study study = Study.of(blocked);
      List<Reading> readings = gauge(study).at(study.placed().places());
      for (Finding f : study.findings()) {
        if (f.id().startsWith("sight.")) {
          Reading r =
              readings.stream().filter(q -> q.id().equals(f.id())).findFirst().orElseThrow();
          assertThat(r.fails()).as("%s at %s", f.id(), z).isEqualTo(f.verdict() == Verdict.FAIL);
          met.add(f.verdict());
        }
      }
    }
    assertThat(met).containsExactlyInAnyOrder(Verdict.PASS, Verdict.FAIL);
  }

  /** The hood's plate, closed in the middle. */
  private static Part middlePlate(Layout layout) {
    var plate = (SolidPart) layout.parts().get("hoodPlate");
    var base = plate.base();
    var across = new Spread(Formula.parse("300 mm"), Formula.parse("300 mm"), false);
    return new SolidPart(
        new PartBase(
            base.name(),
            Optional.of(across),
            base.mass(),
            base.material(),
            base.steered(),
            base.hot(),
            base.touches(),
            base.note()),
        plate.type(),
        plate.frame(),
        plate.outline());
  }

  private static Prism box(double x, double z, double width, double height, double y) {
    Envelope e = new Envelope(new Coordinate(x, z), new Coordinate(x + width, z + height));
    return new Prism(new GeometryFactory().toGeometry(e), new Interval(-y, y));
  }

  @Test
  void depthGrowsWhileAThinPlateSinksIntoALeg() {
    Prism leg = box(0, 0, 400, 160, 80);
    double before = 0;
    for (double sunk = 5; sunk <= 75; sunk += 10) {
      double depth = Depth.of(List.of(box(100, 160 - sunk, 100, 10, 60)), List.of(leg));
      assertThat(depth).isCloseTo(sunk, within(1e-9)).isGreaterThan(before);
      before = depth;
    }
    assertThat(Depth.of(List.of(box(100, 161, 100, 10, 60)), List.of(leg))).isZero();
    Prism beside = new Prism(leg.outline(), new Interval(90, 120));
    assertThat(Depth.of(List.of(box(100, 60, 100, 10, 60)), List.of(beside))).isZero();
  }
}
