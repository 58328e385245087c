package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.TravelWay;
import org.longlow.constraints.stand.TravelWay.Ends;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * What first touches on the travel, from geometry done by hand and by looking all along the way.
 */
class TravelTouchesTest {

  private static final Condition UNLADEN = Condition.empty(Stance.Kind.UNLADEN);

  private static Wheels wheels(Study study) {
    return Wheels.of(study.layout(), study.placed().places());
  }

  private static TravelWay way(Study study, Ends ends) {
    return TravelWay.of(
        wheels(study), List.of(study.standing(UNLADEN).orElseThrow()), ends, new Travel(0, 0));
  }

  private static Optional<TravelTouches.Touch> first(
      Study study, Condition condition, TravelWay way, double from, double to) {
    return new TravelTouches(
            study.layout(), wheels(study), study.shapes(), condition, study.sittings())
        .first(way, from, to);
  }

  private static TestMachine boxOverRearWheel(double overMm) {
    double z = 2 * 265.8 + overMm;
    return Boxes.add(TestMachine.runabout(), "crate", Boxes.at(-60, z, 60, z + 6), 20, 20, "");
  }

  /** The axle goes round the pivot; its tyre is up at the box when it has risen as far as that. */
  @ParameterizedTest
  @ValueSource(doubles = {5, 20, 49})
  void aTyreTouchesWhereItsAxleHasRisenFarEnough(double over) {
    Study study = boxOverRearWheel(over).study();
    PointMm pivot = study.placed().places().pin(wheels(study).arm().pivot());
    PointMm axle = study.placed().places().pin(wheels(study).rear().axle());
    double arm = pivot.distance(axle);
    double before = Math.asin((axle.z() - pivot.z()) / arm);
    double after = Math.asin((axle.z() + over - pivot.z()) / arm);
    for (Ends ends : new Ends[] {Ends.REAR, Ends.BOTH}) {
      TravelWay way = way(study, ends);
      TravelTouches.Touch touch = first(study, UNLADEN, way, 0, 1).orElseThrow();
      assertThat(touch.words()).isEqualTo("crate and rearWheel");
      // the tyre is drawn with corners, so it is up to 0.1 mm late
      assertThat(way.at(touch.share()).rearMm()).isCloseTo(arm * (after - before), within(0.15));
      assertThat(touch.where().z()).isCloseTo(2 * 265.8 + over, within(0.5));
    }
    assertThat(first(study, UNLADEN, way(study, Ends.FRONT), 0, 1)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"49.7, true", "50.3, false"})
  void whatTheTyreDoesNotReachIsNotTouched(double over, boolean touched) {
    Study study = boxOverRearWheel(over).study();
    assertThat(first(study, UNLADEN, way(study, Ends.BOTH), 0, 1).isPresent()).isEqualTo(touched);
  }

  /** From above, it is touched from the end of the way on; the last touch is where it lets go. */
  @Test
  void theWayDownIsLookedAlongFromItsOwnBegin() {
    Study study = boxOverRearWheel(20).study();
    TravelWay way = way(study, Ends.REAR);
    assertThat(first(study, UNLADEN, way, 1, 0).orElseThrow().share()).isEqualTo(1);
    double up = first(study, UNLADEN, way, 0, 1).orElseThrow().share();
    assertThat(first(study, UNLADEN, way, up - 0.02, 0)).isEmpty();
  }

  /** A keel under the machine is on the road where its lower corner comes down to it. */
  @ParameterizedTest
  @ValueSource(doubles = {12, 35})
  void theRoadComesUpToTheBelly(double high) {
    TestMachine machine =
        Boxes.add(TestMachine.runabout(), "keel", Boxes.at(600, high, 640, high + 20), 20, 20, "");
    Study study = machine.study();
    TravelWay way = way(study, Ends.BOTH);
    TravelTouches.Touch touch = first(study, UNLADEN, way, 0, 1).orElseThrow();
    assertThat(touch.words()).isEqualTo("keel and the road");
    assertThat(keelMm(study, way, touch.share(), high)).isCloseTo(0, within(0.02));
    assertThat(keelMm(study, way, touch.share() - 0.01, high)).isPositive();
  }

  /** Height of the lower edge over the road, by the tangent to two circles. */
  private static double keelMm(Study study, TravelWay way, double share, double high) {
    Wheels wheels = wheels(study);
    Travel travel = way.at(share);
    PointMm rear = wheels.rearSuspension().path().axle(travel.rearMm());
    PointMm front = wheels.frontSuspension().path().axle(travel.frontMm());
    double r = wheels.rearTyre().freeRadiusMm();
    double f = wheels.frontTyre().freeRadiusMm();
    PointMm between = front.minus(rear);
    // the normal of the road makes both axles as high as their radii
    double up = Math.atan2(between.z(), between.x());
    double pitch = up - Math.asin((f - r) / between.length());
    double least = Double.POSITIVE_INFINITY;
    for (double x : new double[] {600, 640}) {
      double height = r + Math.cos(pitch) * (high - rear.z()) - Math.sin(pitch) * (x - rear.x());
      least = Math.min(least, height);
    }
    return least;
  }

  /**
   * A finding at full bump that two run into each other has a touch before it, and no other has.
   */
  @ParameterizedTest
  @ValueSource(strings = {"runabout", "tourer"})
  void touchesAreThoseOfTheFindings(String name) {
    TestMachine machine = name.equals("runabout") ? boxOverRearWheel(30) : TestMachine.tourer();
    Study study = machine.study();
    TravelWay way = way(study, Ends.BOTH);
    double begin = way.share(Travel.of(study.standing(UNLADEN).orElseThrow()));
    Optional<TravelTouches.Touch> touch = first(study, UNLADEN, way, begin, 1);
    List<Finding> met =
        study.findings().stream()
            .filter(f -> f.kind().equals(GapFindings.GAP) && f.value() < 0)
            .filter(
                f ->
                    f.stance().equals(Optional.of(Condition.empty(Stance.Kind.FULL_BUMP)))
                        && f.who().isEmpty())
            .toList();
    assertThat(touch.map(TravelTouches.Touch::words))
        .isEqualTo(
            met.stream()
                .findFirst()
                .map(f -> f.about().path().get(0) + " and " + f.about().path().get(1)));
    if (touch.isPresent()) {
      assertThat(meets(study, way, touch.get().share() - 0.002)).isFalse();
      assertThat(meets(study, way, touch.get().share() + 0.002)).isTrue();
    }
    for (int i = 0; i <= 200; i++) {
      double share = begin + (1 - begin) * i / 200;
      boolean before = touch.isEmpty() || share < touch.get().share() - 0.002;
      if (before) {
        assertThat(meets(study, way, share)).as("at " + share).isFalse();
      }
    }
  }

  /** Whether any two that may not touch share some of the elevation and some of the breadth. */
  private static boolean meets(Study study, TravelWay way, double share) {
    GapRules rules = new GapRules(study.layout(), study.placed().places());
    Standing there =
        new Stances(wheels(study), study.shapes()).moved(UNLADEN, Rider.NOBODY, way.at(share));
    List<PartShape> all = List.copyOf(there.shapes().values());
    for (PartShape a : there.moved().values()) {
      for (PartShape b : all) {
        if (a != b && rules.mayNotTouch(a.part().name(), b.part().name()) && overlap(a, b)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean overlap(PartShape a, PartShape b) {
    for (Prism p : a.prisms()) {
      for (Prism q : b.prisms()) {
        double across =
            Math.min(p.across().to(), q.across().to())
                - Math.max(p.across().from(), q.across().from());
        if (across > 0
            && p.outline().getEnvelopeInternal().intersects(q.outline().getEnvelopeInternal())
            && p.outline().intersection(q.outline()).getArea() > 1e-3) {
          return true;
        }
      }
    }
    return false;
  }
}
