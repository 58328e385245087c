package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.SteeringOnRoad;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/**
 * Fronts with two links on the machine that has a trailing link: where the lower link is that link,
 * the wheel goes the same way, and the rod says how the upright turns.
 */
class FrontKindsTest {

  private static final PointMm AXLE = new PointMm(1850, 291.2);
  private static final PointMm TOP = new PointMm(1832, 336);
  private static final PointMm BOTTOM = new PointMm(1868, 246);

  private static TestMachine linked(String type, PointMm rodPivot, PointMm rodJoint, String y) {
    return TestMachine.tourer()
        .pin("rodPivot", rodPivot.x(), rodPivot.z())
        .with("pins", "rodJoint", carried(rodJoint))
        .field("parts", "front", "type", "'" + type + "'")
        .field("parts", "front", "y", "'" + y + "'")
        .field(
            "parts",
            "front",
            "links",
            "{'joint': 'frontAxle', 'rodPivot': 'rodPivot', 'rodJoint': 'rodJoint'}");
  }

  private static String carried(PointMm at) {
    return "{'at': ['%s mm', '%s mm'], 'nailed': true, 'with': 'front-wheel'}"
        .formatted(at.x(), at.z());
  }

  private static TestMachine hub(PointMm rodPivot, PointMm rodJoint, String y) {
    return linked("hub-centre", rodPivot, rodJoint, y)
        .with("pins", "kingTop", carried(TOP))
        .with("pins", "kingBottom", carried(BOTTOM))
        .field("parts", "front", "top", "'kingTop'")
        .field("parts", "front", "bottom", "'kingBottom'")
        .field("parts", "front", "postTop", "'headTop'")
        .field("parts", "front", "postBottom", "'headBottom'");
  }

  private static Finding in(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  private static Wheels wheels(Study study) {
    return Wheels.of(study.layout(), study.placed().places());
  }

  private static PointMm linkPivot() {
    return TestMachine.asFiled("tourer").placed().places().pin("linkPivot");
  }

  /** A rod level with the link and as long holds the brake, so that it neither lifts nor dives. */
  @Test
  void aParallelogramIsALinkWithABrakeRodBesideIt() {
    PointMm up = new PointMm(-20, 150);
    // of no mass, for masses rise with a link otherwise than with an upright
    Study twoLinks =
        linked("parallelogram", linkPivot().plus(up), AXLE.plus(up), "98 mm")
            .field("parts", "front", "mass", "'1e-6 kg'")
            .study();
    Study rod =
        TestMachine.tourer()
            .field("parts", "front", "brakeRod", "true")
            .field("parts", "front", "mass", "'1e-6 kg'")
            .study();
    Study swings = TestMachine.asFiled("tourer");
    for (String id : List.of("dive.front", "trail.unladen", "rake.unladen", "sag.front.unladen")) {
      Finding one = in(twoLinks, id);
      Finding other = in(rod, id);
      assertThat(one.value()).as(id).isCloseTo(other.value(), within(1e-6));
      assertThat(one.verdict()).as(id).isEqualTo(other.verdict());
    }
    assertThat(in(twoLinks, "dive.front").value())
        .isNotCloseTo(in(swings, "dive.front").value(), within(1e-3));
    // what says to hold the brake by a rod would be no help here
    assertThat(in(twoLinks, "dive.front").text()).doesNotContain("brakeRod");
  }

  /** Legs in the tyre straight ahead say nothing of how far it turns; legs beside it do. */
  @ParameterizedTest
  @CsvSource({"40 mm, true", "98 mm, false"})
  void legsInTheTyreLeaveNoLockToTell(String y, boolean unknown) {
    Study study = hub(new PointMm(2010, 420), new PointMm(1846, 431), y).study();
    for (String id : List.of("lock.left", "lock.right")) {
      Finding f =
          study.findings().stream().filter(g -> g.id().startsWith(id)).findFirst().orElseThrow();
      assertThat(f.text().contains("But that says nothing of frontWheel and front"))
          .as(f.text())
          .isEqualTo(unknown);
      if (unknown) {
        assertThat(f.verdict()).isNotEqualTo(Verdict.PASS);
      }
    }
  }

  /**
   * A drum in the middle fills the place of the axis, one set aside by its half breadth and gap
   * not.
   */
  @ParameterizedTest
  @CsvSource({"0, 20, FAIL", "22.9, 2.9, FAIL", "23.1, 3.1, PASS", "-23.1, 3.1, PASS"})
  void whatIsInTheHubKeepsOffItsAxis(double y, double mm, Verdict verdict) {
    Study study =
        hub(new PointMm(2010, 420), new PointMm(1846, 431), "98 mm")
            .part("frontWheel", "rimInside", "'180 mm'")
            .part(
                "frontWheel",
                "inside",
                "[{'what': 'drum', 'radius': '90 mm', 'width': '40 mm', 'y': '" + y + " mm'}]")
            .study();
    Finding f = in(study, "hub.frontWheel.drum1");
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text()).contains("the steering axis of front");
    assertThat(Math.abs(f.value())).isCloseTo(mm == 20 ? Math.abs(f.value()) : mm, within(1e-6));
  }

  /** By two circles: the rod stays as long and the upright as high, whatever the stance. */
  @Test
  void theSteeringAxisOfAHubTurnsWithItsUpright() {
    PointMm rodPivot = new PointMm(2010, 420);
    PointMm rodJoint = new PointMm(1846, 431);
    Study study = hub(rodPivot, rodJoint, "98 mm").study();
    Wheels wheels = wheels(study);
    assertThat(wheels.faults()).isEmpty();
    int turned = 0;
    for (Standing s : study.standings()) {
      PointMm axle = s.places().pin("frontAxle");
      PointMm joint = met(axle, rodJoint.distance(AXLE), rodPivot, rodJoint.distance(rodPivot));
      double turn = joint.minus(axle).angleRad() - rodJoint.minus(AXLE).angleRad();
      PointMm shift = axle.minus(AXLE);
      PointMm top = s.ground().toRoad(TOP.plus(shift).turnedAbout(axle, turn));
      PointMm bottom = s.ground().toRoad(BOTTOM.plus(shift).turnedAbout(axle, turn));
      PointMm up = top.minus(bottom);
      double foot = bottom.x() - bottom.z() * up.x() / up.z();
      SteeringOnRoad on = SteeringOnRoad.of(wheels, s.places(), s.ground()).orElseThrow();
      assertThat(on.rakeRad()).isCloseTo(Math.atan2(-up.x(), up.z()), within(1e-9));
      assertThat(on.steering().groundTrailMm())
          .isCloseTo(foot - s.ground().toRoad(axle).x(), within(1e-6));
      turned += Math.abs(turn) > Math.toRadians(1) ? 1 : 0;
    }
    assertThat(turned).isPositive();
  }

  /** The upper of the two places that are so far from both. */
  private static PointMm met(PointMm one, double oneMm, PointMm other, double otherMm) {
    double apart = one.distance(other);
    double along = (oneMm * oneMm - otherMm * otherMm + apart * apart) / (2 * apart);
    PointMm way = other.minus(one).times(1 / apart);
    PointMm off = way.left().times(Math.sqrt(oneMm * oneMm - along * along));
    PointMm middle = one.plus(way.times(along));
    return middle.plus(off.z() > 0 ? off : off.times(-1));
  }

  /** The arms of a hub stay; a wheel that turns between them needs room there. */
  @ParameterizedTest
  @CsvSource({"98 mm, false", "330 mm, true"})
  void aWheelTurnsBetweenArmsThatStay(String y, boolean free) {
    Study study =
        hub(new PointMm(1310, 480), AXLE.plus(new PointMm(-20, 150)), y)
            .pin("armPivot", 1330, 330)
            .field("parts", "front", "pivot", "'armPivot'")
            .study();
    FrontPart front = wheels(study).fork();
    Steered steered = Steered.of(study.layout(), front, study.placed().places()).orElseThrow();
    assertThat(steered.turns("front")).isFalse();
    assertThat(steered.turns("frontWheel")).isTrue();
    boolean met =
        study.findings().stream()
            .filter(f -> f.id().startsWith("lock.") && f.verdict() == Verdict.FAIL)
            .anyMatch(f -> f.id().contains("frontWheel.front"));
    assertThat(met).isEqualTo(!free);
  }

  /** A pin that does not go with what holds it would tear the front apart. */
  @ParameterizedTest
  @CsvSource({"rodJoint, frame", "rodPivot, front-wheel"})
  void pinsGoWithWhatHoldsThem(String pin, String with) {
    PointMm up = new PointMm(-20, 150);
    Study study =
        linked("parallelogram", linkPivot().plus(up), AXLE.plus(up), "98 mm")
            .field("pins", pin, "with", "'" + with + "'")
            .study();
    assertThat(wheels(study).faults())
        .singleElement()
        .satisfies(f -> assertThat(f.text()).contains(pin, "counts as rigid"));
    assertThat(
            study.standings().stream()
                .filter(s -> s.kind() == Stance.Kind.FULL_BUMP)
                .mapToDouble(Standing::frontTravelMm))
        .containsOnly(0.0);
  }
}
