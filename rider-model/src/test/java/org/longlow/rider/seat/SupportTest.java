package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;

/** Words for how a cushion holds follow from its layers, and there is only one set of them. */
class SupportTest {

  @Test
  void everyPairOfLayersAndBumpHasItsWord() {
    Set<Support.Hold> seen = new HashSet<>();
    for (Compression.Verdict verdict : Compression.Verdict.values()) {
      for (boolean bump : new boolean[] {true, false}) {
        Support.Hold hold = Support.Hold.of(verdict, bump);
        seen.add(hold);
        assertThat(hold == Support.Hold.HOLDS)
            .isEqualTo(verdict == Compression.Verdict.SOUND && bump);
        assertThat(hold == Support.Hold.BOTTOMS).isEqualTo(verdict == Compression.Verdict.BOTTOMS);
        assertThat(hold.words()).doesNotContain("at most");
        if (!bump && verdict != Compression.Verdict.BOTTOMS) {
          assertThat(hold.words()).contains("over a bump of 1 g");
        }
        if (verdict != Compression.Verdict.SOUND) {
          // the words of the calculation of foam alone
          assertThat(hold.words()).startsWith(verdict.words());
        }
      }
    }
    assertThat(seen).containsExactlyInAnyOrder(Support.Hold.values());
  }

  /** The likely sink reaches beyond the design sink within its band, so neither is the most. */
  @Test
  void likelySinkWithItsBandReachesBeyondTheDesignSink() {
    Body body = Body.of(Sex.MALE, 1756, 82, Gear.RIDING);
    SeatOutcome.Seated s = (SeatOutcome.Seated) Settle.settle(body, SettleTest.seat(15, 35, 25));
    assertThat(s.pan().sinkMm()).isLessThanOrEqualTo(s.pan().safeSinkMm());
    assertThat(s.pan().sinkMm() * (1 + FoamStack.SINK_BAND)).isGreaterThan(s.pan().safeSinkMm());
  }
}
