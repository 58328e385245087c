package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.check.road.OfStudy.asking;
import static org.longlow.constraints.check.road.OfStudy.finding;
import static org.longlow.constraints.check.road.OfStudy.only;
import static org.longlow.constraints.check.road.OfStudy.standings;
import static org.longlow.constraints.check.road.OfStudy.tenths;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.Sat;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.rule.Rulings;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;

/** What riders see and reach, worked out again from outlines, eye and hip. */
class SightAndFootTest {

  private static double roadSeen(Study study, Standing s, PointMm eye, boolean throughScreens) {
    OnRoad road = OnRoad.of(study, s);
    double ex = road.x(eye);
    double ez = road.z(eye);
    double steepest = Double.NEGATIVE_INFINITY;
    for (PartShape shape : s.shapes().values()) {
      if (throughScreens && shape.part().name().equals("screen")) {
        continue;
      }
      for (Prism prism : shape.prisms()) {
        if (prism.across().to() < -40 || prism.across().from() > 40) {
          continue;
        }
        for (Coordinate c : prism.outline().getCoordinates()) {
          PointMm p = new PointMm(c.x, c.y);
          if (road.x(p) > ex) {
            steepest = Math.max(steepest, (road.z(p) - ez) / (road.x(p) - ex));
          }
        }
      }
    }
    return ez / -steepest;
  }

  @ParameterizedTest
  @CsvSource({"tourer, Bram", "tourer, Runa", "runabout, Nell", "runabout, Joss"})
  void theRoadIsSeenOverWhatStandsHighest(String name, String person) {
    Study study = TestMachine.asFiled(name);
    Sitting sitting = study.sitting(person, Occupant.RIDER).orElseThrow();
    PointMm eye = sitting.posture().orElseThrow().eye();
    // somebody behind lets the rear sink, and the nose comes up
    Standing s =
        standings(study, Stance.Kind.LADEN).stream()
            .filter(l -> l.condition().people().startsWith(person))
            .max(Comparator.comparingDouble(l -> roadSeen(study, l, eye, false)))
            .orElseThrow();
    double seen = roadSeen(study, s, eye, false);
    double through = roadSeen(study, s, eye, true);
    Finding f = finding(study, "sight." + person, s);
    assertThat(f.value()).isCloseTo(seen, within(1e-6));
    assertThat(f.limit()).isEqualTo(9000);
    assertThat(f.text())
        .startsWith(person + " sees the road from " + tenths(seen / 1000) + " m ahead over");
    assertThat(f.text().contains(" Through the screen it is " + tenths(through / 1000) + " m."))
        .isEqualTo(Math.abs(seen - through) >= 1);
    Finding near = only(asking(name, "sight", seen + 1, "mm"), "sight." + person);
    assertThat(near.verdict()).isEqualTo(Verdict.PASS);
    assertThat(near.text()).doesNotContain("raise the eye");
    Finding far = only(asking(name, "sight", seen - 1, "mm"), "sight." + person);
    assertThat(far.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(far.text()).contains("raise the eye or lower what stands in front");
    // the corner that is shown is on the line of sight
    OnRoad road = OnRoad.of(study, s);
    PointMm over = f.where().orElseThrow();
    assertThat((road.z(over) - road.z(eye)) / (road.x(over) - road.x(eye)))
        .isCloseTo(-road.z(eye) / seen, within(1e-9));
  }

  private static TestMachine wall(int leftMm, int rightMm) {
    String box =
        "{'kind': 'box', 'frame': 'bx', 'outline': {'points': [['0 mm', '0 mm'], ['20 mm', '0"
            + " mm'], ['20 mm', '1500 mm'], ['0 mm', '1500 mm']]}, 'left': '"
            + leftMm
            + " mm', 'right': '"
            + rightMm
            + " mm', 'mass': '0.1 kg'}";
    return TestMachine.runabout().with("parts", "box", box).pin("bx", 1900, 300);
  }

  @ParameterizedTest
  @CsvSource({"80, 39, true", "80, -39, true", "80, -41, false", "-39, 80, true", "-41, 80, false"})
  void aWallStraightAheadHidesAllRoadAndOneBesideDoesNot(int left, int right, boolean hides) {
    Finding f = wall(left, right).finding("sight.Nell").orElseThrow();
    assertThat(f.text().startsWith("Nell sees no road over everything")).isEqualTo(hides);
    assertThat(Double.isNaN(f.value())).isEqualTo(hides);
    assertThat(f.verdict()).isEqualTo(hides ? Verdict.FAIL : Verdict.PASS);
  }

  @Test
  void onlyWhoeverSteersIsAskedWhatTheySee() {
    assertThat(TestMachine.asFiled("tourer").findings())
        .filteredOn(f -> f.kind() == SightFindings.SIGHT || f.kind() == SightFindings.FOOT)
        .extracting(Finding::id)
        .containsExactlyInAnyOrder("sight.Runa", "foot.Runa", "sight.Bram", "foot.Bram");
  }

  /** Eye and hip are as high as the springs let them, and those carry the masses. */
  @Test
  void whatIsSeenAndReachedOnSpringsRestsOnMassesAndRates() {
    Study heavy = TestMachine.runabout().without("controller", "mass").study();
    Study soft = TestMachine.runabout().without("swingarm", "rate", "preload").study();
    for (String id : List.of("sight.Nell", "foot.Nell", "sight.Joss", "foot.Joss")) {
      assertThat(only(Sat.runabout(), id).verdict()).as(id).isEqualTo(Verdict.PASS);
      assertThat(only(heavy, id).verdict()).as(id).isEqualTo(Verdict.CAUTION);
      assertThat(only(heavy, id).text()).contains("the mass of controller is not known");
      assertThat(only(soft, id).verdict()).as(id).isEqualTo(Verdict.CAUTION);
      assertThat(only(soft, id).text()).contains("the rate of swingarm is not known");
    }
  }

  /** Lamps are as high as the springs let them; what they are made of is not a matter of mass. */
  @Test
  void lampsPassAtNoHeightThatRestsOnAnUnknownMass() {
    Study heavy = TestMachine.runabout().without("controller", "mass").study();
    List<Finding> met =
        Sat.runabout().findings().stream()
            .filter(f -> f.id().startsWith("law") && f.verdict() == Verdict.PASS)
            .toList();
    assertThat(met).anyMatch(f -> f.kind() == Rulings.LAW_HEIGHT);
    assertThat(met).anyMatch(f -> f.kind() == Rulings.LAW);
    for (Finding f : met) {
      boolean ofHeight = f.kind() == Rulings.LAW_HEIGHT;
      assertThat(ofHeight)
          .as(f.text())
          .isEqualTo(f.text().matches(".*(above the road|to the centre).*"));
      assertThat(only(heavy, f.id()).verdict())
          .as(f.id())
          .isEqualTo(ofHeight ? Verdict.CAUTION : Verdict.PASS);
    }
  }

  // --- a foot on the ground

  /** By how much a straight leg beside the pan is short of the ground, heel down, mm. */
  private static double shortMm(Study study, String person, double sideMm) {
    Sitting sitting = study.sitting(person, Occupant.RIDER).orElseThrow();
    Standing s =
        standings(study, Stance.Kind.LADEN).stream()
            .filter(l -> l.condition().people().equals(person))
            .findFirst()
            .orElseThrow();
    Body body = sitting.body();
    double hip = OnRoad.of(study, s).z(sitting.posture().orElseThrow().hip());
    double up = hip - body.foot().ankle().z();
    return Math.hypot(up, sideMm) - body.thighMm() - body.shankMm();
  }

  @Test
  void aFootReachesTheGroundBesideThePan() {
    int flat = 0;
    int ball = 0;
    int none = 0;
    Map<String, double[]> shorter = new HashMap<>();
    for (int height : new int[] {380, 500, 560, 600, 640, 680, 720, 760}) {
      Study study =
          TestMachine.runabout().with("measures", "seatHeight", "'" + height + " mm'").study();
      for (String person : List.of("Nell", "Joss")) {
        Optional<Finding> found =
            study.findings().stream().filter(f -> f.id().equals("foot." + person)).findFirst();
        if (found.isEmpty()) {
          continue;
        }
        Finding f = found.get();
        double off = shortMm(study, person, 180);
        Finding down = only(study, "feet-down." + person + ".feet");
        // straight beside the pan or over its edge, as both feet are, which may not contradict it
        double lacks = Math.max(off, down.value());
        assertThat(f.value()).isCloseTo(Math.max(0, lacks), within(1.0));
        assertThat(f.value()).isGreaterThanOrEqualTo(off - 1e-6);
        assertThat(f.limit()).isEqualTo(40);
        boolean onBall = f.text().contains("stands on the ball of the foot");
        assertThat(f.verdict())
            .isEqualTo(f.value() <= 40 ? Verdict.PASS : onBall ? Verdict.CAUTION : Verdict.FAIL);
        if (f.text().startsWith(person + " puts a whole foot on the ground at a stop")) {
          flat++;
          assertThat(f.value()).isZero();
        } else {
          assertThat(f.value()).isPositive();
          assertThat(f.text())
              .contains("the leg ")
              .contains(tenths(f.value()) + " mm short at a stop");
          ball += onBall ? 1 : 0;
          none += f.text().contains("cannot reach the ground") ? 1 : 0;
        }
        assertThat(
                f.text()
                    .endsWith(" at a stop: lower the seat, or make narrower what is beside it."))
            .isEqualTo(f.value() > 40);
        if (shorter.containsKey(person)) {
          // a seat that is higher by so much takes about as much of the leg, or a little more
          double higher = height - shorter.get(person)[0];
          assertThat(f.value() - shorter.get(person)[1]).isBetween(0.0, 1.2 * higher);
        }
        shorter.put(person, new double[] {height, f.value()});
        Standing s = study.standing(f.stance().orElseThrow()).orElseThrow();
        OnRoad road = OnRoad.of(study, s);
        PointMm hip = study.sitting(person, "rider").orElseThrow().posture().orElseThrow().hip();
        assertThat(road.z(f.where().orElseThrow())).isCloseTo(0, within(1e-6));
        assertThat(road.x(f.where().orElseThrow())).isCloseTo(road.x(hip), within(1e-6));
      }
    }
    assertThat(flat).as("flat").isPositive();
    assertThat(ball).as("ball").isPositive();
    assertThat(none).as("none").isPositive();
  }

  /** A road falls to either side, so the wider side of a pan counts. */
  @Test
  void theWiderSideOfThePanCounts() {
    TestMachine high = TestMachine.runabout().with("measures", "seatHeight", "'640 mm'");
    Study left = high.part("pan", "left", "'260 mm'").study();
    Study right = high.part("pan", "left", "'180 mm'").part("pan", "right", "'260 mm'").study();
    double off = shortMm(left, "Nell", 260);
    assertThat(off).isPositive();
    assertThat(only(left, "foot.Nell").value()).isGreaterThanOrEqualTo(off - 1e-6);
    // the stand alone is not alike on both sides
    assertThat(only(right, "foot.Nell").value())
        .isCloseTo(only(left, "foot.Nell").value(), within(1.0));
  }
}
