package org.longlow.rider.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

class ComfortTest {

  private static JointAngles angles(double trunkThigh, double knee) {
    return new JointAngles(
        rad(30), rad(trunkThigh), rad(knee), rad(100), rad(40), rad(130), rad(20), rad(10));
  }

  private static double rad(double deg) {
    return Math.toRadians(deg);
  }

  @Test
  void theHamstringLineGivesItsWorkedAngles() {
    // With straight knees at least 111 (men) / 104 (women), printed to whole degrees.
    assertThat(Math.toDegrees(JointLimits.hamstringTrunkThigh(Sex.MALE, Math.PI)))
        .isCloseTo(111.5, within(0.51));
    assertThat(Math.toDegrees(JointLimits.hamstringTrunkThigh(Sex.FEMALE, Math.PI)))
        .isCloseTo(103.7, within(0.51));
    // Knee interior 141.4 with the hip at 90 (men), 152.0 (women): the line's other anchor.
    assertThat(Math.toDegrees(JointLimits.hamstringTrunkThigh(Sex.MALE, rad(141.4))))
        .isCloseTo(90, within(0.5));
    assertThat(Math.toDegrees(JointLimits.hamstringTrunkThigh(Sex.FEMALE, rad(152.0))))
        .isCloseTo(90, within(0.5));
    assertThat(JointLimits.hamstringTrunkThigh(Sex.MALE, rad(50)))
        .isCloseTo(JointLimits.HIP_LOW, within(1e-12));
  }

  @Test
  void costIsZeroInsideAndQuadraticOutside() {
    assertThat(Comfort.cost(angles(115, 130), Sex.MALE)).isZero();
    double one = Comfort.cost(angles(131, 130), Sex.MALE);
    double two = Comfort.cost(angles(132, 130), Sex.MALE);
    assertThat(one).isCloseTo(1 / 169.0, within(1e-12));
    assertThat(two).isCloseTo(4 / 169.0, within(1e-12));
  }

  @Test
  void readingsSayWhereAnAngleLies() {
    List<JointReading> readings = Comfort.read(angles(95, 170), Sex.MALE);
    assertThat(verdict(readings, "recline")).isEqualTo(JointReading.Verdict.COMFORTABLE);
    assertThat(verdict(readings, "knee")).isEqualTo(JointReading.Verdict.OUTSIDE_COMFORT);
    assertThat(verdict(readings, "trunkThigh")).isEqualTo(JointReading.Verdict.OUTSIDE_COMFORT);
    // Hamstrings allow 180 - (68.5 + 0.56 * 10) = 105.9 at that knee.
    assertThat(verdict(readings, "hamstring")).isEqualTo(JointReading.Verdict.BEYOND_LIMIT);
    JointReading knee =
        readings.stream().filter(r -> r.name().equals("knee")).findFirst().orElseThrow();
    assertThat(Math.toDegrees(knee.marginRad())).isCloseTo(-15, within(1e-9));
  }

  private static JointReading.Verdict verdict(List<JointReading> readings, String name) {
    return readings.stream().filter(r -> r.name().equals(name)).findFirst().orElseThrow().verdict();
  }

  @Test
  void sightGrazesTheHighestEdge() {
    // Eye 1000 up, an edge 500 ahead and 100 below: the road appears 1000/100*500 = 5000 ahead.
    PointMm eye = new PointMm(0, 1000);
    Sight sight =
        Sight.over(
            eye, List.of(new PointMm(-50, 3000), new PointMm(300, 700), new PointMm(500, 900)));
    assertThat(sight.roadMm()).isCloseTo(5000, within(1e-9));
    assertThat(sight.over()).isEqualTo(new PointMm(500, 900));
    assertThat(sight.blockedRad()).isCloseTo(Math.PI / 4 - Math.atan(0.2), within(1e-12));
    assertThat(Sight.over(eye, List.of(new PointMm(500, 1000))).roadMm()).isInfinite();
    assertThat(Sight.over(eye, List.of()).over()).isNull();
  }

  @Test
  void aLowSeatLetsTheFootStandFlat() {
    Body body = Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
    double leg = body.thighMm() + body.shankMm() + body.foot().ankle().z();
    assertThat(Reach.ground(body, leg, 0).flatMarginMm()).isCloseTo(0, within(1e-9));
    assertThat(Reach.ground(body, leg - 1, 0).footing()).isEqualTo(Reach.Footing.FLAT);
    assertThat(Reach.ground(body, leg + 40, 0).footing()).isEqualTo(Reach.Footing.BALL);
    assertThat(Reach.ground(body, leg + 400, 0).footing()).isEqualTo(Reach.Footing.NONE);
    assertThat(Reach.ground(body, leg - 1, 300).footing()).isNotEqualTo(Reach.Footing.FLAT);
  }
}
