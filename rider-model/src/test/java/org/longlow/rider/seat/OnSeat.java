package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;

import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;

/** Somebody seated for a test, and places measured from a cushion's face. */
final class OnSeat {

  private OnSeat() {}

  static final double BACK_MM = 560;

  static Body man() {
    return Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
  }

  static SeatOutcome.Seated seated(Body body, SeatGeometry seat) {
    SeatOutcome outcome = Settle.settle(body, seat);
    assertThat(outcome).as(outcome.toString()).isInstanceOf(SeatOutcome.Seated.class);
    return (SeatOutcome.Seated) outcome;
  }

  static SeatGeometry with(SeatGeometry s, Cushion pan, Cushion back, Cushion rest) {
    return new SeatGeometry(pan, back, rest, s.foot(), s.hand(), s.width());
  }

  static double along(Cushion c, PointMm p) {
    return p.minus(c.from()).dot(c.to().minus(c.from()).times(1 / c.lengthMm()));
  }

  static double above(Cushion c, PointMm p) {
    PointMm d = c.to().minus(c.from()).times(1 / c.lengthMm());
    return d.x() * (p.z() - c.from().z()) - d.z() * (p.x() - c.from().x());
  }

  /** Whether something is said of them in such words. */
  static boolean notes(SeatOutcome.Seated s, String words) {
    return s.notes().stream().anyMatch(n -> n.text().in(Units.MM).contains(words));
  }
}
