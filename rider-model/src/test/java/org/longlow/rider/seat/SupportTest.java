package org.longlow.rider.seat;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

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

  private static Support support(Support.Hold fresh, Support.Hold worn) {
    return new Support(fresh, worn);
  }

  @Test
  void whatHoldsIsSaidWithForHowLong() {
    Support lasts = support(Support.Hold.HOLDS, Support.Hold.HOLDS);
    assertThat(lasts.lasts()).isTrue();
    assertThat(lasts.bottoms()).isFalse();
    assertThat(lasts.words()).isEqualTo("holds, also when the foam is worn");
    assertThat(lasts.advice()).isEqualTo(lasts.words());
    Support fresh = support(Support.Hold.HOLDS, Support.Hold.BUMP);
    assertThat(fresh.lasts()).isFalse();
    assertThat(fresh.words()).isEqualTo("holds while the foam is new");
    assertThat(fresh.advice()).isEqualTo(fresh.words());
    Support bump = support(Support.Hold.BUMP, Support.Hold.BOTTOMS);
    assertThat(bump.words()).isEqualTo("holds at rest, bottoms over a bump of 1 g");
    assertThat(bump.advice()).isEqualTo(bump.words() + "; use firmer or thicker foam");
    assertThat(bump.bottoms()).isFalse();
    Support topper = support(Support.Hold.TOPPER, Support.Hold.TOPPER);
    assertThat(topper.advice()).endsWith("; a firmer or thicker top layer would help");
    Support bottoms = support(Support.Hold.BOTTOMS, Support.Hold.BOTTOMS);
    assertThat(bottoms.bottoms()).isTrue();
    assertThat(bottoms.advice()).startsWith("bottoms: so little").endsWith("thicker foam");
  }

  @Test
  void aCushionIsJudgedByItsLayersFreshAndWorn() {
    CushionLoad load =
        new CushionLoad(
            500,
            0,
            40,
            50,
            45,
            8,
            5,
            1000,
            new PointMm(0, 0),
            new Compression(8, List.of(), 50, 45, 0.1, Compression.Verdict.SOUND),
            true,
            new CushionLoad.Worn(60, Compression.Verdict.TOPPER_SPENT, false));
    assertThat(load.verdict()).isEqualTo(Compression.Verdict.SOUND);
    assertThat(Support.of(load))
        .isEqualTo(new Support(Support.Hold.HOLDS, Support.Hold.TOPPER_BUMP));
  }
}
