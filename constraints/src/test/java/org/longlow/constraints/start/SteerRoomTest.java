package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.rider.geom.PointMm;

/** The turned tyre, point by point: Rodrigues' rotation of a ring about the steering axis. */
class SteerRoomTest {

  private static final double LOCK = Math.toRadians(30);

  /** The least gap from the tyre to a segment beside the machine, turned to the left, mm. */
  static double gapMm(
      Rolling rolling, FrontPart.Kind kind, double[] from, double[] to, double round) {
    PointMm low = rolling.headBottom(0);
    PointMm up = rolling.headTop(0).minus(low);
    double[] axis = {up.x() / up.length(), 0, up.z() / up.length()};
    PointMm wheel = rolling.bumped(kind);
    double crown = rolling.front.widthMm() / 2;
    double ring = rolling.front.freeRadiusMm() - crown;
    double least = Double.MAX_VALUE;
    for (int k = 0; k < 1440; k++) {
      double at = Math.PI * k / 720;
      double[] p = {
        wheel.x() + ring * Math.cos(at) - low.x(), 0, wheel.z() + ring * Math.sin(at) - low.z()
      };
      double along = p[0] * axis[0] + p[2] * axis[2];
      double[] cross = {
        axis[1] * p[2] - axis[2] * p[1],
        axis[2] * p[0] - axis[0] * p[2],
        axis[0] * p[1] - axis[1] * p[0]
      };
      double[] turned = new double[3];
      for (int i = 0; i < 3; i++) {
        turned[i] =
            p[i] * Math.cos(LOCK)
                + cross[i] * Math.sin(LOCK)
                + axis[i] * along * (1 - Math.cos(LOCK));
      }
      turned[0] += low.x();
      turned[2] += low.z();
      least = Math.min(least, toSegment(turned, from, to));
    }
    return least - crown - round;
  }

  private static double toSegment(double[] p, double[] a, double[] b) {
    double dot = 0;
    double length = 0;
    for (int i = 0; i < 3; i++) {
      dot += (p[i] - a[i]) * (b[i] - a[i]);
      length += (b[i] - a[i]) * (b[i] - a[i]);
    }
    double share = Math.max(0, Math.min(1, dot / length));
    double away = 0;
    for (int i = 0; i < 3; i++) {
      away += Math.pow(p[i] - a[i] - share * (b[i] - a[i]), 2);
    }
    return Math.sqrt(away);
  }

  /** 15 mm are asked and three more kept; a tall narrow wheel is sent ahead until they are. */
  @ParameterizedTest
  @CsvSource({
    "100/90-18, TELESCOPIC, true",
    "110/80-16, TELESCOPIC, false",
    "90/90-14, TELESCOPIC, false",
    "100/90-18, LEADING_LINK, false"
  })
  void railsBehindTheTyreLeaveItRoomToFullLock(String tyre, FrontPart.Kind kind, boolean more) {
    Rolling rolling =
        new Rolling(Brief.of(new Answers.Builder().frontTyre(tyre).front(kind).answers()));
    double room = SteerRoom.mm(rolling, kind);
    assertThat(room > 99).isEqualTo(more);
    double behind = -rolling.front.freeRadiusMm() - room;
    PointMm head = rolling.headBottom(0);
    double[] high = {head.x(), -rolling.railYMm, head.z()};
    double gap = gapMm(rolling, kind, new double[] {behind, -rolling.railYMm, 190}, high, 16);
    assertThat(gap).isGreaterThan(18 - 0.2);
    if (more) {
      double less =
          gapMm(rolling, kind, new double[] {behind + 2, -rolling.railYMm, 190}, high, 16);
      assertThat(less).isLessThan(18);
    }
  }

  @Test
  void whatStandsBesideTheWheelSendsItAheadUntilItPasses() {
    FrontPart.Kind kind = FrontPart.Kind.TELESCOPIC;
    Rolling rolling = new Rolling(Brief.of(Answers.NONE));
    double y = 150;
    double axle =
        SteerRoom.axleAheadMm(
            rolling,
            kind,
            new GeometryFactory()
                .createLineString(
                    new Coordinate[] {new Coordinate(0, 300), new Coordinate(0, 420)}),
            y,
            200);
    // as far ahead, its far side does not come so far out; 5 mm nearer it is too near
    for (double off : new double[] {0, 5}) {
      double x = off - axle;
      double least = Double.MAX_VALUE;
      for (double out = y; out < 400; out += 2) {
        double[] low = {x, -out, 300};
        least = Math.min(least, gapMm(rolling, kind, low, new double[] {x, -out, 420}, 0));
      }
      assertThat(least >= 17.8).as("%.1f mm", least).isEqualTo(off == 0);
    }
  }
}
