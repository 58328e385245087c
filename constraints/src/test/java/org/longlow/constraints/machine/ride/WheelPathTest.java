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
        WheelPath.rigid(REAR));
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
