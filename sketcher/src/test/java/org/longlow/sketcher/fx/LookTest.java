package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.svg.drawing.Tone;

class LookTest {

  /** Contrast of text and of controls: WCAG 2, criteria 1.4.3 and 1.4.11. */
  private static final double WORDS = 4.5;

  @Test
  void everyToneCanBeSeenOnTheCard() {
    for (Look look : List.of(Look.DAY, Look.NIGHT)) {
      for (Tone tone : Tone.values()) {
        if (tone.use() != Tone.Use.BACKGROUND) {
          assertThat(Contrast.of(look.palette().of(tone), look.palette().of(Tone.PAPER)))
              .as(tone + " on " + look.palette().name())
              .isGreaterThanOrEqualTo(tone.use().leastContrast());
        }
      }
    }
  }

  @Test
  void wordsOnSlipsAndBenchCanBeRead() {
    for (Look look : List.of(Look.DAY, Look.NIGHT)) {
      for (Tone tone :
          List.of(Tone.INK, Tone.PENCIL, Tone.BAD, Tone.GOOD, Tone.CARE, Tone.CHOSEN)) {
        assertThat(Contrast.of(look.palette().of(tone), look.slip()))
            .as(tone + " on the slip, " + look.palette().name())
            .isGreaterThanOrEqualTo(WORDS);
      }
      assertThat(Contrast.of(look.palette().of(Tone.INK), look.bench()))
          .isGreaterThanOrEqualTo(WORDS);
    }
  }
}
