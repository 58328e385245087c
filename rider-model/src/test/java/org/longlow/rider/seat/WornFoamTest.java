package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;

class WornFoamTest {

  @Test
  void wornFoamIsFoamUnderMorePressure() {
    FoamStack stack = FoamStackTest.TWO;
    for (double kPa = 0.5; kPa < 40; kPa *= 1.4) {
      // A and B both scale, so worn foam at p is fresh foam at p / 0.85.
      assertThat(stack.worn().compress(kPa).sinkMm())
          .isCloseTo(stack.compress(kPa / 0.85).sinkMm(), within(1e-9));
    }
  }

  @Test
  void wornCushionsSinkDeeperUnderTheSameForce() {
    for (double kg = 45; kg < 125; kg += 8) {
      Body body = Body.of(Sex.MALE, 1756, kg, Gear.RIDING);
      SeatGeometry seat = SettleTest.seat(15, 35, 25);
      SeatOutcome.Seated s = (SeatOutcome.Seated) Settle.settle(body, seat);
      for (CushionLoad load : new CushionLoad[] {s.pan(), s.back(), s.headRest().orElseThrow()}) {
        assertThat(load.worn().safeSinkMm()).isGreaterThan(load.safeSinkMm());
        assertThat(load.worn().verdict()).isGreaterThanOrEqualTo(load.verdict());
      }
    }
  }
}
