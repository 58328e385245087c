package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.geom.PointMm;

class WheelPathTest {

  private static final PointMm FRONT = new PointMm(1500, 300);
  private static final PointMm REAR = new PointMm(0, 315);

  private static List<WheelPath> paths() {
    return List.of(
        WheelPath.telescopic(FRONT, Math.toRadians(27)),
        WheelPath.leadingLink(new PointMm(1370, 310), FRONT),
        WheelPath.trailingLink(new PointMm(1620, 360), FRONT),
        WheelPath.swingarm(new PointMm(560, 390), REAR),
        WheelPath.rigid(REAR),
        UNLIKE,
        new LinkedPath(
            new PointMm(1230, 640),
            new PointMm(1310, 625),
            new PointMm(1190, 760),
            new PointMm(1265, 765),
            FRONT));
  }

  /** An arm and a rod that are neither level with each other nor as long. */
  private static final LinkedPath UNLIKE =
      new LinkedPath(
          new PointMm(1010, 330),
          new PointMm(1480, 290),
          new PointMm(1100, 450),
          new PointMm(1470, 395),
          FRONT);

  /** A link that ends in the axle carries it about its own pivot, whatever the rod does. */
  @Test
  void anArmToTheAxleIsAnArcAndTheRodTurnsTheUpright() {
    PointMm pivot = new PointMm(1010, 330);
    PointMm rodPivot = new PointMm(1100, 450);
    PointMm rodJoint = new PointMm(1470, 395);
    WheelPath linked = new LinkedPath(pivot, FRONT, rodPivot, rodJoint, FRONT);
    WheelPath arc = WheelPath.leadingLink(pivot, FRONT);
    for (double travel : new double[] {-55, -1e-3, 0, 0.4, 17, 70}) {
      PointMm axle = arc.axle(travel);
      assertThat(linked.axle(travel).distance(axle)).isLessThan(1e-8);
      assertThat(linked.directionAt(axle).distance(arc.directionAt(axle))).isLessThan(1e-9);
      // both bars stay as long as they are
      PointMm there = linked.carried(rodJoint, travel);
      assertThat(there.distance(rodPivot)).isCloseTo(rodJoint.distance(rodPivot), within(1e-8));
      assertThat(there.distance(axle)).isCloseTo(rodJoint.distance(FRONT), within(1e-8));
    }
  }

  /** Links that are level with each other and as long shift what they hold and never turn it. */
  @Test
  void aParallelogramOnlyShifts() {
    PointMm link = new PointMm(80, -12);
    PointMm pivot = new PointMm(1230, 640);
    PointMm rodPivot = new PointMm(1190, 760);
    WheelPath linked =
        new LinkedPath(pivot, pivot.plus(link), rodPivot, rodPivot.plus(link), FRONT);
    WheelPath arc = WheelPath.leadingLink(FRONT.minus(link), FRONT);
    for (double travel : new double[] {-30, 12, 55}) {
      PointMm axle = arc.axle(travel);
      assertThat(linked.axle(travel).distance(axle)).isLessThan(1e-8);
      assertThat(linked.turnPerMm(axle)).isCloseTo(0, within(1e-12));
      PointMm shifted = linked.carried(pivot, travel).minus(pivot);
      assertThat(shifted.distance(axle.minus(FRONT))).isLessThan(1e-8);
    }
  }

  /** At each moment an upright turns about where the lines of both links meet. */
  @Test
  void anUprightTurnsAboutItsInstantCentre() {
    for (double travel : new double[] {-40, 0, 60}) {
      PointMm joint = UNLIKE.carried(new PointMm(1480, 290), travel);
      PointMm rodJoint = UNLIKE.carried(new PointMm(1470, 395), travel);
      PointMm link = joint.minus(new PointMm(1010, 330));
      PointMm rod = rodJoint.minus(new PointMm(1100, 450));
      PointMm centre = joint.plus(link.times(rodJoint.minus(joint).cross(rod) / link.cross(rod)));
      PointMm axle = UNLIKE.axle(travel);
      WheelPath arc =
          axle.x() > centre.x()
              ? WheelPath.leadingLink(centre, axle)
              : WheelPath.trailingLink(centre, axle);
      assertThat(UNLIKE.directionAt(axle).distance(arc.direction(0))).isLessThan(1e-9);
      assertThat(UNLIKE.turnPerMm(axle)).isCloseTo(arc.turnPerMm(axle), within(1e-11));
      assertThat(Math.abs(UNLIKE.turnPerMm(axle))).isGreaterThan(1e-4);
    }
  }

  @Test
  void linksReachNoFartherThanTheirDeadPoints() {
    assertThatThrownBy(() -> UNLIKE.axle(UNLIKE.mostTravelMm() + 1))
        .hasMessageContaining("within the reach of the links");
    assertThatThrownBy(() -> UNLIKE.travelForRiseMm(-900))
        .hasMessageContaining("within the reach of the links");
    PointMm pivot = new PointMm(1500, 500);
    assertThatThrownBy(
            () ->
                new LinkedPath(
                    pivot,
                    FRONT,
                    pivot.plus(new PointMm(-60, 0)),
                    FRONT.plus(new PointMm(-60, 0)),
                    FRONT))
        .hasMessageContaining("rise of the axle");
  }

  @Test
  void bumpRaisesTheAxleAndTravelIsMeasuredAlongThePath() {
    for (WheelPath path : paths()) {
      double length = 0;
      PointMm last = path.axle(-40);
      for (int i = 1; i <= 4000; i++) {
        PointMm here = path.axle(-40 + i * 0.02);
        assertThat(here.z()).isGreaterThan(last.z());
        length += here.distance(last);
        last = here;
      }
      // Chords of 0.02 mm on a link of 130 mm or more: short by less than 1e-6 mm in all.
      assertThat(length).isCloseTo(80, within(1e-6));
    }
  }

  @Test
  void inversesGiveBackTheTravel() {
    SplittableRandom random = new SplittableRandom(21);
    for (WheelPath path : paths()) {
      for (int i = 0; i < 100; i++) {
        double s = random.nextDouble(-60, 60);
        PointMm axle = path.axle(s);
        assertThat(path.travelForRiseMm(axle.z() - path.axle(0).z())).isCloseTo(s, within(1e-8));
        PointMm slope = path.axle(s + 1e-4).minus(path.axle(s - 1e-4)).times(1 / 2e-4);
        assertThat(path.direction(s).distance(slope)).isLessThan(1e-8);
        assertThat(path.direction(s).length()).isCloseTo(1, within(1e-12));
      }
    }
  }

  @Test
  void aForkSlidesBackAlongTheSteeringAxis() {
    // Dive 40 along a rake of 27 deg moves the axle 40 sin 27 back in the body.
    PointMm moved = WheelPath.telescopic(FRONT, Math.toRadians(27)).axle(40);
    assertThat(moved.x()).isCloseTo(1500 - 40 * 0.45399049973954675, within(1e-9));
    assertThat(moved.z()).isCloseTo(300 + 40 * 0.8910065241883679, within(1e-9));
  }

  @Test
  void linksStayOnTheirCircle() {
    WheelPath link = WheelPath.leadingLink(new PointMm(1370, 310), new PointMm(1500, 310));
    // Link angle 10 deg of the worked table: arc of 130 mm × 10 deg.
    PointMm axle = link.axle(130 * Math.toRadians(10));
    assertThat(axle.x()).isCloseTo(1498.025007892, within(1e-8));
    assertThat(axle.z()).isCloseTo(332.574263097, within(1e-8));
    assertThat(link.mostTravelMm()).isCloseTo(130 * Math.PI / 2, within(1e-9));
    assertThat(link.leastTravelMm()).isCloseTo(-130 * Math.PI / 2, within(1e-9));
    assertThatThrownBy(() -> link.travelForRiseMm(131)).hasMessageContaining("rise mm");
  }

  /** A link that points 30 degrees up, ahead or behind: 120 degrees down, 60 up. */
  @ParameterizedTest
  @ValueSource(ints = {1, -1})
  void aSlopingLinkGoesFurtherDownThanUp(int way) {
    PointMm pivot = new PointMm(700, 300);
    PointMm axle = pivot.plus(new PointMm(way * 200 * Math.cos(Math.PI / 6), 100));
    WheelPath link =
        way > 0 ? WheelPath.leadingLink(pivot, axle) : WheelPath.trailingLink(pivot, axle);
    assertThat(link.leastTravelMm()).isCloseTo(-200 * Math.toRadians(120), within(1e-9));
    assertThat(link.mostTravelMm()).isCloseTo(200 * Math.toRadians(60), within(1e-9));
    assertThat(link.axle(link.mostTravelMm()).distance(pivot.plus(new PointMm(0, 200))))
        .isLessThan(1e-9);
    assertThat(link.axle(link.leastTravelMm()).distance(pivot.plus(new PointMm(0, -200))))
        .isLessThan(1e-9);
    // up to the reach of the link and no further
    assertThat(link.travelForRiseMm(99.999)).isPositive();
    assertThatThrownBy(() -> link.travelForRiseMm(100.001)).hasMessageContaining("rise mm");
    assertThatThrownBy(() -> link.travelForRiseMm(-300.001)).hasMessageContaining("rise mm");
    assertThat(link.travelForRiseMm(0)).isZero();
  }

  @Test
  void linksOnTheWrongSideAreRefused() {
    PointMm ahead = new PointMm(1600, 300);
    assertThatThrownBy(() -> WheelPath.leadingLink(ahead, FRONT)).hasMessageContaining("ahead");
    assertThatThrownBy(() -> WheelPath.trailingLink(REAR, FRONT)).hasMessageContaining("behind");
    assertThatThrownBy(() -> WheelPath.swingarm(REAR, REAR)).hasMessageContaining("behind");
    assertThatThrownBy(() -> WheelPath.telescopic(FRONT, 1.6)).hasMessageContaining("leg rake");
    assertThatThrownBy(() -> WheelPath.telescopic(FRONT, Double.NaN))
        .hasMessageContaining("leg rake");
  }
}
