package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.GettingInPose.Step;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.SpaceMm;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SegmentMass;

/** Somebody who gets in, pose by pose. */
class GettingInFindingsTest {

  private static GettingIn of(Study study, String person) {
    Sitting sitting = study.sitting(person, "rider").orElseThrow();
    var places = study.placed().places();
    return new GettingInFindings(
            study.layout(), places, new AccessFindings(study.layout(), places, study.shapes()))
        .poses(sitting, study.standings())
        .orElseThrow();
  }

  /** Limbs are as long in space as the body has them, whichever way they lead. */
  @ParameterizedTest
  @ValueSource(strings = {"Nell", "Joss"})
  void limbsKeepTheirLengthInEveryPose(String person) {
    Study study = TestMachine.asFiled("runabout");
    Body body = study.sitting(person, "rider").orElseThrow().body();
    GettingIn in = of(study, person);
    assertThat(in.poses()).extracting(GettingInPose::step).containsExactly(Step.values());
    for (GettingInPose pose : in.poses()) {
      for (Posture p : List.of(pose.outer(), pose.inner())) {
        SpaceMm hip = SpaceMm.of(p.hip(), p.across().hipMm());
        SpaceMm knee = SpaceMm.of(p.knee(), p.across().kneeMm());
        SpaceMm ankle = SpaceMm.of(p.ankle(), p.across().ankleMm());
        // closed form: 1e-6 mm is rounding at 1 m
        assertThat(hip.distance(knee))
            .as(pose.step().words())
            .isCloseTo(body.thighMm(), within(1e-6));
        assertThat(knee.distance(ankle))
            .as(pose.step().words())
            .isCloseTo(body.shankMm(), within(1e-6));
      }
    }
  }

  /** Who stands beside has both soles on the road, clear of the machine, and is as tall as that. */
  @Test
  void whoStandsBesideStandsOnTheRoad() {
    Study study = TestMachine.asFiled("runabout");
    Sitting sitting = study.sitting("Joss", "rider").orElseThrow();
    Standing laden = Standing.carrying(sitting.occupant(), study.standings()).orElseThrow();
    GettingIn in = of(study, "Joss");
    Posture stands = in.pose(Step.BESIDE).outer();
    for (PointMm on : List.of(stands.heel(), stands.ball())) {
      assertThat(laden.ground().heightMm(on)).isCloseTo(0, within(1e-6));
    }
    Body body = sitting.body();
    double tall = body.measures().get("stature") + body.gear().heelMm();
    // the joints of somebody upright add up to their stature, less knees that are not pressed
    // through (9 mm); hip and seat heights of the survey agree to some 30 mm
    assertThat(laden.ground().heightMm(stands.vertex())).isCloseTo(tall, within(45.0));
    double reach =
        study.shapes().values().stream().mapToDouble(s -> s.rightMm()).max().orElseThrow();
    assertThat(in.pose(Step.BESIDE).asideMm()).isLessThan(reach + 700).isGreaterThan(250);
    // over the machine goes the inner foot, the other stays on the road
    GettingInPose over = in.pose(Step.OVER);
    assertThat(laden.ground().heightMm(over.outer().heel())).isCloseTo(0, within(1e-6));
    assertThat(laden.ground().heightMm(over.inner().heel())).isGreaterThan(300);
    assertThat(over.inner().across().ankleMm()).isCloseTo(over.asideMm(), within(1e-6));
    // the feet of whoever sits down stand outside their hips, the hips where they stay
    GettingInPose down = in.pose(Step.DOWN);
    assertThat(down.outer().hip()).isEqualTo(sitting.posture().orElseThrow().hip());
    assertThat(laden.ground().heightMm(down.outer().ball())).isCloseTo(0, within(20.0));
  }

  /** Between seat and feet the body is over these, or bent as far as people bend, hips risen. */
  @ParameterizedTest
  @ValueSource(strings = {"Nell", "Joss"})
  void whoRisesIsOverTheirFeet(String person) {
    Study study = TestMachine.asFiled("runabout");
    Sitting sitting = study.sitting(person, "rider").orElseThrow();
    Standing laden = Standing.carrying(sitting.occupant(), study.standings()).orElseThrow();
    GettingIn in = of(study, person);
    GettingInPose rising = in.pose(Step.RISING);
    GettingInPose down = in.pose(Step.DOWN);
    Posture p = rising.outer();
    double mass = 0;
    double moment = 0;
    for (SegmentMass m : SegmentMass.of(sitting.body(), p)) {
      mass += m.massKg();
      moment += m.massKg() * laden.ground().toRoad(m.centre()).x();
    }
    double centre = moment / mass;
    double heel = laden.ground().toRoad(p.heel()).x();
    double ball = laden.ground().toRoad(p.ball()).x();
    double lean = Math.toDegrees(p.angles().recline());
    if (lean > -60) {
      // over the middle of the feet within a step of 5 degrees; splayed knees move it by a little
      assertThat(centre).isBetween(0.5 * (heel + ball) - 10, ball + 30);
    } else {
      assertThat(lean).isCloseTo(-60, within(1e-9));
      assertThat(centre).isLessThan(0.5 * (heel + ball));
    }
    assertThat(lean).isNegative();
    // one trunk, the feet where they stand as they sit
    assertThat(rising.inner().hip()).isEqualTo(p.hip());
    assertThat(p.heel().distance(down.outer().heel())).isLessThan(1);
    assertThat(rising.inner().heel().distance(down.inner().heel())).isLessThan(1);
    // a third of the way up to somebody who stands beside
    double from = laden.ground().heightMm(down.outer().hip());
    double to = laden.ground().heightMm(in.pose(Step.BESIDE).outer().hip());
    assertThat(laden.ground().heightMm(p.hip())).isCloseTo(from + (to - from) / 3, within(1.0));
    assertThat(p.angles().knee()).isGreaterThan(down.outer().angles().knee());
  }

  private static Solid plate(double y) {
    return new Solid(
        "plate",
        List.of(
            new Prism(
                new GeometryFactory().toGeometry(new Envelope(-2000, 4000, -500, 3000)),
                new Interval(Math.min(y, 3 * y), Math.max(y, 3 * y)))));
  }

  /** By hand: a bar's end farthest out, and its radius, off a plate square across the machine. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void limbsAreWhereTheirPoseHasThem(boolean left) {
    Study study = TestMachine.asFiled("runabout");
    Body body = study.sitting("Joss", "rider").orElseThrow().body();
    GettingIn in = of(study, "Joss");
    // legs unlike each other: one under its hip, one out beside the seat
    GettingInPose pose =
        new GettingInPose(
            Step.DOWN, in.pose(Step.BESIDE).outer(), in.pose(Step.DOWN).inner(), left, 40);
    double calf = body.measures().get("calfcircumference") / (2 * Math.PI);
    for (boolean plateLeft : new boolean[] {true, false}) {
      Posture p = plateLeft == left ? pose.outer() : pose.inner();
      double far = Math.max(p.across().kneeMm(), p.across().ankleMm());
      double aside = plateLeft == left ? 40 : -40;
      double y = far + aside + calf + 25;
      List<Solid> shanks =
          pose.limbs(body).stream()
              .filter(limb -> limb.name().equals("shank"))
              .map(GettingInPose.Limb::body)
              .toList();
      assertThat(shanks).extracting(Solid::name).containsExactly("shank", "shank");
      List<Gap> gaps = Gaps.between(shanks, List.of(plate(plateLeft ? y : -y)), 60, (a, b) -> 60);
      assertThat(gaps).isNotEmpty();
      assertThat(gaps.get(0).gapMm()).isCloseTo(25, within(0.02)); // the search's own bound
    }
  }

  /** Of poses 20 mm apart before a plate the farther is freer, whichever is tried first. */
  @Test
  void ofTwoPosesTheFreerIsTaken() {
    Study study = TestMachine.asFiled("runabout");
    Body body = study.sitting("Joss", "rider").orElseThrow().body();
    GettingInPose down = of(study, "Joss").pose(Step.DOWN);
    GettingInPose near = new GettingInPose(Step.DOWN, down.outer(), down.inner(), true, 40);
    GettingInPose far = new GettingInPose(Step.DOWN, down.outer(), down.inner(), true, 20);
    double y = 200;
    TriedPose first;
    do { // out until the nearer one is clear of it
      y += 5;
      first = TriedPose.freer(null, near, body, List.of(plate(y)), true);
    } while (first.mm() < 1);
    List<Solid> wall = List.of(plate(y));
    TriedPose freer = TriedPose.freer(first, far, body, wall, true);
    assertThat(freer.pose()).isSameAs(far);
    assertThat(freer.mm()).isCloseTo(first.mm() + 20, within(0.04)); // twice the search's bound
    assertThat(TriedPose.freer(freer, near, body, wall, true)).isSameAs(freer);
    assertThat(TriedPose.freer(first, near, body, wall, true)).isSameAs(first);
    // a leg that gets there counts for more than air
    assertThat(TriedPose.freer(first, far, body, wall, false)).isSameAs(first);
    TriedPose lacking = TriedPose.freer(null, far, body, wall, false);
    assertThat(TriedPose.freer(lacking, near, body, wall, true).pose()).isSameAs(near);
  }

  /** Boxes beside the seat at both sides. */
  private static TestMachine boxed(double top, double out) {
    return TestMachine.runabout()
        .pin("barPin", 0, 0)
        .with(
            "parts",
            "case",
            "{'kind': 'box', 'frame': 'barPin', 'outline': {'points': [['500 mm', '300 mm'], ['800"
                + " mm', '300 mm'], ['800 mm', '"
                + top
                + " mm'], ['500 mm', '"
                + top
                + " mm']]}, 'left': '"
                + out
                + " mm', 'right': '"
                + out
                + " mm', 'mass': '0.001 kg'}");
  }

  private static Finding in(TestMachine machine) {
    return machine.finding("getting-in.Nell.in").orElseThrow();
  }

  /** What is in the way of the legs at both sides needs care and is named. */
  @Test
  void whatThePosesMeetIsNamed() {
    Finding plain = in(TestMachine.runabout());
    assertThat(plain.verdict()).isEqualTo(Verdict.PASS);
    assertThat(plain.margin()).isPositive();
    Finding boxed = in(boxed(480, 260));
    assertThat(boxed.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(boxed.margin()).isNegative();
    assertThat(boxed.text()).contains("into case").contains("try it on the real machine");
  }

  /** Walled at one side one gets in from the other, and the image is as near as the other. */
  @Test
  void aWallSendsThemToTheOtherSide() {
    String wall =
        "{'kind': 'box', 'frame': 'wallPin', 'outline': {'points': [['-400 mm', '10 mm'],"
            + " ['1800 mm', '10 mm'], ['1800 mm', '1520 mm'], ['-400 mm', '1520 mm']]}, ";
    Finding atLeft =
        in(
            TestMachine.runabout()
                .pin("wallPin", 0, 0)
                .with(
                    "parts",
                    "wall",
                    wall + "'left': '720 mm', 'right': '-700 mm', 'mass': '0.001 kg'}"));
    Finding atRight =
        in(
            TestMachine.runabout()
                .pin("wallPin", 0, 0)
                .with(
                    "parts",
                    "wall",
                    wall + "'left': '-700 mm', 'right': '720 mm', 'mass': '0.001 kg'}"));
    assertThat(atLeft.text()).contains("gets in from the right");
    assertThat(atRight.text()).contains("gets in from the left");
    // mirrored in all but the balance of 1 g
    assertThat(atLeft.value()).isCloseTo(atRight.value(), within(0.5));
  }
}
