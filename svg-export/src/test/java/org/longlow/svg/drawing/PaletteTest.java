package org.longlow.svg.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PaletteTest {

  static Stream<Palette> palettes() {
    return Stream.of(Palette.CARD, Palette.NIGHT);
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void everyToneHasTheContrastItsUseAsksFor(Palette palette) {
    Colour paper = palette.of(Tone.PAPER);
    for (Tone tone : Tone.values()) {
      assertThat(Contrast.of(palette.of(tone), paper))
          .as(palette.name() + " " + tone)
          .isGreaterThanOrEqualTo(tone.use().leastContrast());
    }
  }

  @ParameterizedTest
  @MethodSource("palettes")
  void noTwoTonesLookTheSame(Palette palette) {
    assertThat(Stream.of(Tone.values()).map(palette::of).distinct().count())
        .isEqualTo(Tone.values().length);
  }

  // WCAG 2 worked values: black on white is 21:1, and #767676 on white is the well-known 4.54:1.
  @Test
  void contrastIsThatOfTheAccessibilityGuideline() {
    Colour white = Colour.hex("#ffffff");
    assertThat(Contrast.of(white, Colour.hex("#000000"))).isEqualTo(21.0);
    assertThat(Contrast.of(Colour.hex("#767676"), white)).isBetween(4.54, 4.55);
    assertThat(Contrast.of(white, white)).isEqualTo(1.0);
  }

  @Test
  void aPaletteWithAGapIsRefused() {
    Map<Tone, Colour> some = new EnumMap<>(Palette.CARD.colours());
    some.remove(Tone.TANK);
    assertThatThrownBy(() -> new Palette("gap", some))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("TANK");
  }

  @Test
  void coloursAreWrittenAsTheyAreRead() {
    assertThat(Colour.hex("#0aF09b").toHex()).isEqualTo("#0af09b");
    assertThatThrownBy(() -> Colour.hex("red")).hasMessageContaining("#rrggbb");
    assertThatThrownBy(() -> new Colour(0, 256, 0)).hasMessageContaining("256");
  }
}
