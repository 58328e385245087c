package org.longlow.constraints.check.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** Lines through steering, travel and opening, by places worked out with other formulas. */
class LineFindingsTest {

  private static TestMachine line(String points, String more) {
    return TestMachine.tourer()
        .pin("stay", 1500, 500)
        .with(
            "lines",
            "cable",
            "{'kind': 'cable', 'diameter': 5, 'points': [" + points + "]" + more + "}");
  }

  private static TestMachine toTheGrip(double y, String more) {
    return line("{'pin': 'grip', 'y': " + y + "}, {'pin': 'stay', 'y': " + y / 10 + "}", more);
  }

  private static Finding of(TestMachine machine, String id) {
    return machine.finding(id).orElseThrow();
  }

  /** Rodrigues' formula for a grip turned about the steering axis. */
  @Test
  void aCableToTheBarsIsLongestAtOneLock() {
    TestMachine machine = toTheGrip(300, "");
    var places = machine.study().placed().places();
    double most = 0;
    for (var standing : machine.study().standings()) {
      var pins = standing.places();
      PointMm bottom = pins.pin("headBottom");
      PointMm up = pins.pin("headTop").minus(bottom);
      PointMm k = up.times(1 / up.length());
      for (int deg : new int[] {-30, 30}) {
        double a = Math.toRadians(deg);
        PointMm r = pins.pin("grip").minus(bottom);
        double[] v = {r.x(), 300, r.z()};
        double[] kv = {k.x(), 0, k.z()};
        double dot = v[0] * kv[0] + v[2] * kv[2];
        double[] cross = {-kv[2] * v[1], kv[2] * v[0] - kv[0] * v[2], kv[0] * v[1]};
        double[] at = new double[3];
        for (int i = 0; i < 3; i++) {
          at[i] = v[i] * Math.cos(a) + cross[i] * Math.sin(a) + kv[i] * dot * (1 - Math.cos(a));
        }
        PointMm stay = pins.pin("stay").minus(bottom);
        double dx = at[0] - stay.x();
        double dy = at[1] - 30;
        double dz = at[2] - stay.z();
        most = Math.max(most, Math.sqrt(dx * dx + dy * dy + dz * dz));
      }
    }
    assertThat(places.pin("stay")).isEqualTo(new PointMm(1500, 500));
    Finding f = of(machine, "line.cable");
    assertThat(f.value()).isCloseTo(most, within(1e-6));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("steering 30° to the").contains("cut it to at least");
    assertThat(of(machine, "bend.cable").text()).contains("is straight");
  }

  @Test
  void onTheOtherSideItIsLongestAtTheOtherLock() {
    Finding left = of(toTheGrip(300, ""), "line.cable");
    Finding right = of(toTheGrip(-300, ""), "line.cable");
    assertThat(right.value()).isCloseTo(left.value(), within(1e-6));
    assertThat(right.across().orElseThrow()).isCloseTo(-left.across().orElseThrow(), within(1e-6));
    assertThat(left.text()).contains("to the right");
    assertThat(right.text()).isEqualTo(left.text().replace("to the right", "to the left"));
  }

  @Test
  void whatIsCutTooShortFails() {
    double way = of(toTheGrip(300, ""), "line.cable").value();
    assertThat(toTheGrip(300, ", 'length': " + (way + 10.01)).verdict("line.cable"))
        .isEqualTo(Verdict.PASS);
    Finding tight = of(toTheGrip(300, ", 'length': " + (way + 9.99)), "line.cable");
    assertThat(tight.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(tight.text()).contains("it is tight");
    assertThat(of(toTheGrip(300, ", 'length': " + (way - 1)), "line.cable").text())
        .contains("it is torn");
  }

  /** A hose from the frame to the rear wheel: by how far that moves in each stance. */
  @Test
  void aHoseToAWheelFollowsItsTravel() {
    TestMachine machine = line("'swingPivot', 'rearAxle'", "");
    double fixed = of(machine, "line.cable").value();
    assertThat(of(machine, "line.cable").text()).contains("mm to");
    // a wheel goes round the pivot of its arm: as long everywhere
    var places = machine.study().placed().places();
    assertThat(fixed)
        .isCloseTo(places.pin("rearAxle").distance(places.pin("swingPivot")), within(1e-6));
    TestMachine off = line("'stay', 'rearAxle'", "");
    double most = 0;
    for (var standing : off.study().standings()) {
      most =
          Math.max(most, standing.places().pin("rearAxle").distance(standing.places().pin("stay")));
    }
    assertThat(of(off, "line.cable").value()).isCloseTo(most, within(1e-6));
  }

  /** A loom to an open lid: a pin of it goes round the hinge. */
  @Test
  void aLoomToALidIsLongestWhereThatIsOpen() {
    TestMachine machine =
        line("'bootLow', 'onLid'", "")
            .with("pins", "onLid", "{'at': [-300, 900], 'nailed': true, 'with': 'lid'}");
    PointMm boot = new PointMm(-560, 772);
    double most = 0;
    for (int k = 0; k <= 12; k++) {
      PointMm lid =
          new PointMm(-300, 900).turnedAbout(new PointMm(-560, 950), Math.toRadians(80 * k / 12.0));
      most = Math.max(most, lid.distance(boot));
    }
    Finding f = of(machine, "line.cable");
    assertThat(f.value()).isCloseTo(most, within(1e-6));
    assertThat(f.text()).contains("section lid").contains("open");
  }

  @Test
  void aSharpBendFails() {
    String points = "'swingPivot', 'stay', 'crank'";
    Finding f = of(line(points, ""), "bend.cable");
    assertThat(f.limit()).as("12 diameters").isEqualTo(60);
    String least = ", 'bend': " + (f.value() - 0.01);
    assertThat(line(points, least).verdict("bend.cable")).isEqualTo(Verdict.PASS);
    assertThat(line(points, ", 'bend': " + (f.value() + 0.01)).verdict("bend.cable"))
        .isEqualTo(Verdict.FAIL);
  }

  @Test
  void aLineBesideAHotPipeNeedsCare() {
    TestMachine machine = line("{'pin': 'exTail', 'y': 180}, {'pin': 'exLow', 'y': 180}", "");
    Finding f = of(machine, "heat.header.cable");
    // pipe of 42 mm at 108 mm, cable of 5 mm at 180 mm
    assertThat(f.value()).isCloseTo(180 - 108 - 21 - 2.5, within(0.6));
    assertThat(f.limit()).isEqualTo(50);
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(machine.with("demands", "openHeatWiring", "'45 mm'").finding("heat.header.cable"))
        .isEmpty();
    assertThat(machine.with("demands", "openHeatWiring", "'50 mm'").verdict("heat.header.cable"))
        .isEqualTo(Verdict.FAIL);
  }

  /**
   * A hose beside the flank of the rear tyre: that is 150 mm wide, the hose 10 mm. One 330 mm over
   * the axle is off it as drawn, but the wheel comes up to it at full bump.
   */
  @ParameterizedTest
  @CsvSource({"95.1, false", "94.9, true", "-94.9, true", "-95.1, false", "0, true"})
  void aLineKeepsOffATyre(double y, boolean told) {
    for (double over : y == 0 ? new double[] {-80, 30} : new double[] {-80}) {
      TestMachine machine = TestMachine.tourer();
      var axle = machine.study().placed().places().pin("rearAxle");
      double z = axle.z() + 300 + over;
      machine
          .pin("hoseA", axle.x() - 60, z)
          .pin("hoseB", axle.x() + 60, z)
          .with(
              "lines",
              "hose",
              ("{'kind': 'hose', 'diameter': 10, 'points': [{'pin': 'hoseA', 'y': %s}, {'pin':"
                      + " 'hoseB', 'y': %s}]}")
                  .formatted(y, y));
      var found = machine.finding("line.hose.rearWheel");
      assertThat(found.isPresent()).as("%s over, at %s", over, y).isEqualTo(told);
      found.ifPresent(f -> assertThat(f.verdict()).isEqualTo(Verdict.FAIL));
      found.ifPresent(f -> assertThat(f.value() < 0).isEqualTo(y == 0));
      found
          .filter(f -> over > 0)
          .ifPresent(f -> assertThat(f.stance().orElseThrow().kind()).isEqualTo(BUMP));
    }
  }

  private static final Stance.Kind BUMP = Stance.Kind.FULL_BUMP;

  /** Straight ahead the hose is clear beside the front tyre; at one lock the tyre is in it. */
  @Test
  void aTyreIsTurnedIntoALineOfTheFrame() {
    TestMachine machine = TestMachine.tourer();
    var axle = machine.study().placed().places().pin("frontAxle");
    for (int side : new int[] {1, -1}) {
      machine
          .pin("hoseA", axle.x() - 270, axle.z() + 20)
          .pin("hoseB", axle.x() - 260, axle.z() + 80)
          .with(
              "lines",
              "hose",
              ("{'kind': 'hose', 'diameter': 10, 'points': [{'pin': 'hoseA', 'y': %d}, {'pin':"
                      + " 'hoseB', 'y': %d}]}")
                  .formatted(110 * side, 110 * side));
      assertThat(machine.verdict("line.hose.frontWheel")).isEqualTo(Verdict.FAIL);
      TestMachine straight = machine.with("demands", "lock", "'1 deg'");
      assertThat(straight.finding("line.hose.frontWheel")).isEmpty();
      machine.with("demands", "lock", "'30 deg'");
    }
  }

  /**
   * Fuel keeps 76 mm where other hoses keep 50; inside what burns, and behind a shield, it fails.
   */
  @ParameterizedTest
  @CsvSource({
    "fuel-hose, 75, CAUTION",
    "fuel-hose, 77, ",
    "hose, 75, ",
    "hose, 26, CAUTION",
    "hose, 24, FAIL",
    "fuel-hose, -15, FAIL"
  })
  void aHoseIsKeptFromHeatByWhatItCarries(String kind, double mm, Verdict verdict) {
    TestMachine machine = TestMachine.runabout();
    Boxes.add(machine, "stove", Boxes.at(400, 1900, 500, 2000), 50, 50, ", 'hot': true");
    machine
        .pin("hoseA", 505 + mm, 1940)
        .pin("hoseB", 505 + mm, 1960)
        .with(
            "lines",
            "hose",
            "{'kind': '"
                + kind
                + "', 'diameter': 10, 'points': [{'pin': 'hoseA', 'y': 0}, {'pin': 'hoseB', 'y':"
                + " 0}]}");
    var found = machine.finding("heat.stove.hose");
    assertThat(found.map(Finding::verdict).orElse(null)).isEqualTo(verdict);
    found.ifPresent(f -> assertThat(f.text().contains("into each other by")).isEqualTo(mm < 0));
  }

  /** More than 150 mm and a quarter of the way to spare hangs in the way of something. */
  @Test
  void whatIsCutMuchTooLongAsksForCare() {
    double way = of(toTheGrip(300, ""), "line.cable").value();
    double most = Math.max(150, way / 4);
    assertThat(toTheGrip(300, ", 'length': " + (way + most - 1)).verdict("line.cable"))
        .isEqualTo(Verdict.PASS);
    Finding loose = of(toTheGrip(300, ", 'length': " + (way + most + 1)), "line.cable");
    assertThat(loose.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(loose.text()).contains("or cut it shorter");
  }

  /** A level hose of 5 mm in the frame: over the road it is its height less its radius. */
  @ParameterizedTest
  @CsvSource({"-2, FAIL", "2, PASS"})
  void aHoseKeepsOffTheRoad(double over, Verdict verdict) {
    TestMachine at = low(200);
    double least = Double.POSITIVE_INFINITY;
    for (var standing : at.study().standings()) {
      for (String end : new String[] {"stay", "lowEnd"}) {
        PointMm there = standing.places().pin(end);
        least = Math.min(least, standing.ground().heightMm(there) - 2.5 - 200);
      }
    }
    Optional<Finding> f = low(60 - least + over).finding("line.cable.road");
    assertThat(f.map(Finding::verdict).orElse(Verdict.PASS)).isEqualTo(verdict);
    f.ifPresent(
        told -> {
          assertThat(told.value()).isCloseTo(60 + over, within(0.05));
          assertThat(told.text()).contains("lead it 2 mm higher");
        });
  }

  private static TestMachine low(double z) {
    return TestMachine.tourer()
        .with("demands", "groundClearance", "'60 mm'")
        .pin("stay", 700, z)
        .pin("lowEnd", 900, z)
        .with(
            "lines",
            "cable",
            "{'kind': 'hose', 'diameter': 5, 'points': [{'pin': 'stay', 'y': 400}, {'pin':"
                + " 'lowEnd', 'y': 400}]}");
  }

  /** Through the chest it fails, beyond its breadth it does not; past a forearm nothing is told. */
  @ParameterizedTest
  @CsvSource({"chest, 0, true", "chest, 400, false", "forearm, 0, false"})
  void aHoseKeepsOffPeople(String limb, double aside, boolean fails) {
    Prism flesh = TestMachine.asFiled("tourer").sittings().get(0).limbs().get(limb).get(0);
    var at = flesh.outline().getCentroid();
    double y = flesh.across().middle() + aside;
    TestMachine machine =
        TestMachine.tourer()
            .pin("stay", at.getX() - 4, at.getY())
            .pin("lowEnd", at.getX() + 4, at.getY())
            .with(
                "lines",
                "cable",
                "{'kind': 'hose', 'diameter': 5, 'points': [{'pin': 'stay', 'y': "
                    + y
                    + "}, {'pin': 'lowEnd', 'y': "
                    + y
                    + "}]}");
    Optional<Finding> f =
        machine.findings().stream()
            .filter(g -> g.kind() == LineSaid.LINE && g.who().isPresent())
            .findFirst();
    assertThat(f.map(Finding::verdict))
        .isEqualTo(fails ? Optional.of(Verdict.FAIL) : Optional.empty());
    f.ifPresent(told -> assertThat(told.text()).startsWith("cable runs into Runa by "));
  }
}
