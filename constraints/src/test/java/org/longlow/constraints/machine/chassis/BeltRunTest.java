package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Runs round several wheels, by triangles and turns by hand; 1e-9 is arithmetic. */
class BeltRunTest {

  private static BeltRun.Wheel wheel(double x, double z, double radius, boolean back) {
    return new BeltRun.Wheel(new PointMm(x, z), radius, back);
  }

  /** Two wheels of 50 mm, 600 mm apart, and one of 20 mm that presses on the lower stretch. */
  private static BeltRun pressed(double z, int flip) {
    return new BeltRun(
        List.of(
            wheel(flip * 300, 0, 50, false),
            wheel(-flip * 300, 0, 50, false),
            wheel(0, z, 20, true)));
  }

  @Test
  void roundThreeWheelsItTurnsByTheOuterAngles() {
    BeltRun run =
        new BeltRun(
            List.of(wheel(0, 0, 10, false), wheel(300, 0, 10, false), wheel(0, 400, 10, false)));
    // Euclid I.48: a right angle at the first; 53.13 and 36.87 degrees at the others
    assertThat(run.wrapsRad().get(0)).isCloseTo(Math.PI / 2, within(1e-9));
    assertThat(run.wrapsRad().get(1)).isCloseTo(Math.PI - Math.atan2(4, 3), within(1e-9));
    assertThat(run.wrapsRad().get(2)).isCloseTo(Math.PI - Math.atan2(3, 4), within(1e-9));
    assertThat(run.lengthMm()).isCloseTo(1200 + 20 * Math.PI, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, -1})
  void anIdlerOnItsBackBendsItInward(int flip) {
    BeltRun run = pressed(-60, flip);
    // internal tangents: the stretch is inclined by what the radii ask less what the centres drop
    double apart = Math.hypot(300, 60);
    double slope = Math.asin(70 / apart) - Math.atan2(60, 300);
    assertThat(run.wrapsRad().get(0)).isCloseTo(Math.PI + slope, within(1e-9));
    assertThat(run.wrapsRad().get(1)).isCloseTo(Math.PI + slope, within(1e-9));
    assertThat(run.wrapsRad().get(2)).isCloseTo(2 * slope, within(1e-9));
    double straight = Math.sqrt(apart * apart - 70 * 70);
    double length = 600 + 2 * straight + 100 * (Math.PI + slope) + 40 * slope;
    assertThat(run.lengthMm()).isCloseTo(length, within(1e-9));
    // its way is as long, but for chords that lie inside their arcs
    List<PointMm> way = run.way(0.001);
    double along = way.get(way.size() - 1).distance(way.get(0));
    for (int i = 1; i < way.size(); i++) {
      along += way.get(i).distance(way.get(i - 1));
    }
    assertThat(along).isCloseTo(length, within(1e-3)).isLessThan(length);
    assertThat(way).anyMatch(p -> p.distance(new PointMm(0, -40)) < 0.1);
  }

  /**
   * Its length with the idler at that height, by the angles of {@link
   * #anIdlerOnItsBackBendsItInward}.
   */
  private static double lengthMm(double z) {
    double apart = Math.hypot(300, z);
    double slope = Math.asin(70 / apart) - Math.atan2(-z, 300);
    return 600 + 2 * Math.sqrt(apart * apart - 70 * 70) + 100 * (Math.PI + slope) + 40 * slope;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, -1})
  void aSprungIdlerGoesWhereTheRunIsAsLongAsAsked(int flip) {
    BeltRun run = pressed(-60, flip);
    assertThat(run.pressing(2).distance(new PointMm(0, 1))).isLessThan(1e-9);
    SprungIdler idler = new SprungIdler(run, 2, run.pressing(2));
    assertThat(idler.rest(lengthMm(-20), 0).atMm()).isCloseTo(40, within(1e-5));
    assertThat(idler.rest(lengthMm(-66), 0).atMm()).isCloseTo(-6, within(1e-5));
    assertThat(idler.rest(lengthMm(-66), 40).atMm()).isCloseTo(-6, within(1e-5));
    // off the idler it is 1200 + 100 pi long, and no shorter
    double least = 1200 + 100 * Math.PI;
    assertThat(idler.rest(least - 3, 0).looseMm()).isCloseTo(-3, within(1e-9));
    assertThat(idler.rest(least + 0.5, 0).looseMm()).isZero();
    // the other stretch, at 50 mm, stops it at 30 mm at the latest; steps of 2 mm
    double most = lengthMm(30);
    assertThat(idler.rest(most + 10, 0).looseMm()).isBetween(10.0, 10 + most - lengthMm(26));
  }

  @Test
  void anIdlerThatTheRunPassesByIsNotTouched() {
    // its upper edge at -51 mm, a millimetre below the run, and at -49 mm
    assertThat(BeltRun.touches(pressed(-71, 1).wrapsRad().get(2))).isFalse();
    assertThat(BeltRun.touches(pressed(-69, 1).wrapsRad().get(2))).isTrue();
  }

  @Test
  void wheelsWithinEachOtherHaveNoRun() {
    PointMm at = new PointMm(0, 0);
    assertThatThrownBy(() -> BeltRun.round(at, 50, new PointMm(39, 0), 90).lengthMm())
        .isInstanceOf(OutOfRange.class);
    assertThat(BeltRun.round(at, 50, new PointMm(41, 0), 90).lengthMm()).isGreaterThan(180 * 3.14);
  }
}
