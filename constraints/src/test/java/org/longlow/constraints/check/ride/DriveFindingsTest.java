package org.longlow.constraints.check.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.OnRoad;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** The pull of a chain against forces and moments, its slack against lengths laid by hand. */
class DriveFindingsTest {

  private static PointMm onRoad(OnRoad road, PointMm p) {
    return new PointMm(road.x(p), road.z(p));
  }

  @Test
  void theChainBearsWhatTheArmCutFreeSaysOfTheCrewFarthestFromAll() {
    Study study = TestMachine.asFiled("tourer");
    Finding squat =
        study.findings().stream()
            .filter(f -> f.id().equals("squat.chain"))
            .findFirst()
            .orElseThrow();
    double farthest = 0;
    for (Standing s : study.standings()) {
      if (s.kind() == Stance.Kind.LADEN) {
        farthest = Math.max(farthest, Math.abs(share(study, s) - 1));
      }
    }
    assertThat(Math.abs(squat.value() - 1)).isCloseTo(farthest, within(1e-6));
    Standing worst =
        study.standings().stream()
            .filter(s -> squat.stance().orElseThrow().equals(s.condition()))
            .findFirst()
            .orElseThrow();
    assertThat(squat.value()).isCloseTo(share(study, worst), within(1e-6));
  }

  /**
   * What arm and chain lift over what moves, by moments of arm and wheel about the pivot, which the
   * smaller sprocket turns about: for one newton of drive the road pushes forward that far below
   * it, the chain pulls as far above it as its sprocket is large.
   */
  private static double share(Study study, Standing s) {
    OnRoad road = OnRoad.of(study, s);
    PointMm pivot = onRoad(road, s.places().pin("swingPivot"));
    double wheel = s.places().measures().get("wheelSprocket");
    double shaft = s.places().measures().get("jackSprocket");
    double lift = (pivot.z() - road.rearRadiusMm() / wheel * shaft) / pivot.x();
    return lift * road.wheelbaseMm() / onRoad(road, s.load().total().at()).z();
  }

  /**
   * The advice, done, brings the share nearer to its range. The chain turns the arm up the less the
   * larger the wheel's sprocket is, unless the pivot is far above the line from shaft to axle.
   */
  @ParameterizedTest
  @CsvSource({
    "500, 480, 36, 90, farther up, larger",
    "500, 345, 36, 130, farther down, smaller",
    "700, 120, 20, 40, farther down, larger"
  })
  void whatIsAdvisedOfTheSprocketHelps(
      double x, double z, double small, double large, String pivot, String other) {
    Finding before = squat(x, z, small, large);
    assertThat(before.verdict()).as(before.text()).isEqualTo(Verdict.CAUTION);
    assertThat(before.text()).contains("a pivot " + pivot + ", or a " + other + " sprocket");
    double done = large + (other.equals("larger") ? 3 : -3);
    double after = squat(x, z, small, done).value();
    assertThat(Math.abs(after - 1)).isLessThan(Math.abs(before.value() - 1));
  }

  private static Finding squat(double x, double z, double small, double large) {
    String tie =
        "{'tie': 'belt-length', 'pins': ['shaft', 'rearAxle'], 'radii': ['%s mm', '%s mm'], 'is':"
            + " 'chainLength + 5000 mm'}";
    return TestMachine.tourer()
        .pin("shaft", x, z)
        .with("ties", "second", tie.formatted(small, large))
        .finding("squat.second")
        .orElseThrow();
  }

  /**
   * A motor on the axle turns the arm about its pivot alone: what the arm lifts for one newton of
   * drive is the pivot's height over its distance ahead, of which h / p moves to the rear. At the
   * bounds of half and twice, with the pivot put where its height says so.
   */
  @Test
  void anArmWithItsMotorInTheWheelBearsWhatMomentsAboutThePivotSay() {
    TestMachine machine = TestMachine.runabout();
    Study study = machine.study();
    Finding squat = machine.finding("squat.rearWheel").orElseThrow();
    double farthest = 0;
    for (Standing s : study.standings()) {
      if (s.kind() == Stance.Kind.LADEN) {
        OnRoad road = OnRoad.of(study, s);
        PointMm pivot = onRoad(road, s.places().pin("swingPivot"));
        double h = onRoad(road, s.load().total().at()).z();
        double share = pivot.z() / pivot.x() * road.wheelbaseMm() / h;
        farthest = Math.abs(share - 1) > Math.abs(farthest - 1) ? share : farthest;
      }
    }
    assertThat(squat.value()).isCloseTo(farthest, within(1e-6));
    assertThat(squat.verdict()).isEqualTo(farthest > 2 ? Verdict.CAUTION : Verdict.PASS);
    assertThat(squat.text().contains("a pivot farther down")).isEqualTo(farthest > 2);
  }

  @Test
  void aShaftAwayFromThePivotPullsTightWhereItIsFarthest() {
    for (double z : new double[] {250, 520}) {
      TestMachine machine =
          TestMachine.tourer()
              .pin("shaft", 700, z)
              .with(
                  "ties",
                  "second",
                  "{'tie': 'belt-length', 'pins': ['shaft', 'rearAxle'], 'radii': ['jackSprocket',"
                      + " 'wheelSprocket'], 'is': 'chainLength + 5000 mm'}");
      Study study = machine.study();
      Finding slack = machine.finding("slack.second").orElseThrow();
      PointMm shaft = study.placed().places().pin("shaft");
      PointMm pivot = study.placed().places().pin("swingPivot");
      PointMm axle = study.placed().places().pin("rearAxle");
      // farthest where shaft, pivot and axle come nearest to one line
      double most = 0;
      double rise = 0;
      for (double at = -50; at <= 55; at += 0.25) {
        double sine = (axle.z() + at - pivot.z()) / axle.distance(pivot);
        PointMm there =
            new PointMm(
                pivot.x() - axle.distance(pivot) * Math.sqrt(1 - sine * sine), axle.z() + at);
        if (shaft.distance(there) > most) {
          most = shaft.distance(there);
          rise = at;
        }
      }
      assertThat(slack.text()).contains(rise > 0 ? "up from there" : "down from there");
    }
  }

  @Test
  void aSprocketOnThePivotAsksForNoSlack() {
    Finding slack = TestMachine.tourer().finding("slack.chain").orElseThrow();
    assertThat(slack.verdict()).isEqualTo(Verdict.PASS);
    assertThat(slack.value()).isCloseTo(0, within(0.01));
  }

  private static double long2(double one, double other, double apart) {
    return BeltRun.round(new PointMm(10, 20), one, new PointMm(10, 20 + apart), other).lengthMm();
  }

  @Test
  void aBeltIsAsLongAsItsArcsAndTangents() {
    assertThat(long2(50, 50, 400)).isCloseTo(800 + 2 * Math.PI * 50, within(1e-9));
    // published: 15 and 42 teeth of 15.875 mm, 600 mm apart, are 104.5796500542 links by polygon
    double small = 15 * 15.875 / (2 * Math.PI);
    double large = 42 * 15.875 / (2 * Math.PI);
    double p = long2(small, large, 600) / 15.875;
    // arcs of circles as long as the chain itself, not of pitch circles: within 0.01 links
    assertThat(p).isCloseTo(104.579650054207, within(0.01));
    assertThat(long2(large, small, 600)).isCloseTo(long2(small, large, 600), within(1e-9));
  }

  @Test
  void theMiddleOfTheLowerRunGoesAsFarAsItsLengthLets() {
    // 300 mm of run with 2 mm more: legs of 151 mm, so 17.349 mm either way
    assertThat(BeltRun.freePlayMm(300, 2))
        .isCloseTo(2 * Math.sqrt(151 * 151 - 150 * 150.0), within(1e-9));
    assertThat(BeltRun.freePlayMm(300, 0)).isZero();
  }

  /** The road pushes a hub's wheel from below: pivot's height by its way ahead, over h by p. */
  @Test
  void aMotorInTheHubTurnsTheArmAsTheRoadDoes() {
    String motor = "[{'what': 'motor', 'radius': '90 mm', 'width': '60 mm', 'y': '0 mm'}]";
    TestMachine machine = TestMachine.runabout().part("rearWheel", "inside", motor);
    Finding f = machine.finding("squat.rearWheel").orElseThrow();
    Study study = machine.study();
    Standing s = study.standing(f.stance().orElseThrow()).orElseThrow();
    OnRoad road = OnRoad.of(study, s);
    var arm = study.layout().parts(SwingarmPart.class).findFirst().orElseThrow();
    PointMm pivot = onRoad(road, s.places().pin(arm.pivot()));
    double h = onRoad(road, s.load().total().at()).z();
    assertThat(f.value()).isCloseTo(pivot.z() / pivot.x() * road.wheelbaseMm() / h, within(1e-6));
    assertThat(f.verdict()).isEqualTo(f.value() > 2 ? Verdict.CAUTION : Verdict.PASS);
  }
}
