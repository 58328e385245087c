package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.svg.drawing.Colour;
import org.longlow.svg.drawing.Tone;

class LookTest {

  /** Contrast of text and of controls: WCAG 2, criteria 1.4.3 and 1.4.11. */
  private static final double WORDS = 4.5;

  private static final double CONTROLS = 3;

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

  /** What marks a control, and what marks the one that has the keyboard. */
  @Test
  void edgesAndTheRingOfTheKeyboardCanBeSeenOnWhateverTheyLie() {
    for (Look look : List.of(Look.DAY, Look.NIGHT)) {
      Colour ring = look.palette().of(Tone.CHOSEN);
      for (Colour ground : List.of(look.palette().of(Tone.PAPER), look.slip(), look.bench())) {
        assertThat(Contrast.of(look.edge(), ground)).as("edge").isGreaterThanOrEqualTo(CONTROLS);
        assertThat(Contrast.of(ring, ground)).as("ring").isGreaterThanOrEqualTo(CONTROLS);
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
