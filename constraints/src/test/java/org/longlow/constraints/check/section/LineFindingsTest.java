package org.longlow.constraints.check.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
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
}
