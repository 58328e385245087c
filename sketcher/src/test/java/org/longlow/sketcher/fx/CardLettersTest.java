package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Letters on the drawing, where the card is high and where it is low. */
class CardLettersTest {

  @Test
  void onAHighCardTheyAreThoseOfTheWindow() {
    assertThat(CardLetters.of(2, 750)).isEqualTo(2);
    assertThat(CardLetters.of(1.25, 500)).isEqualTo(1.25);
    assertThat(CardLetters.of(2, 0)).as("not laid out yet").isEqualTo(2);
  }

  @Test
  void onALowCardTheyGrowLess() {
    assertThat(CardLetters.of(2, 450)).isEqualTo(1.2);
    assertThat(CardLetters.of(2, 749)).isBetween(1.99, 2.0);
    assertThat(CardLetters.of(1.5, 450)).isEqualTo(1.2);
  }

  @Test
  void theyAreNeverSmallerThanUsualForThat() {
    assertThat(CardLetters.of(2, 200)).isEqualTo(1);
    assertThat(CardLetters.of(1, 200)).isEqualTo(1);
    assertThat(CardLetters.of(0.8, 200)).as("asked for").isEqualTo(0.8);
  }
}
