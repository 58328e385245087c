package org.longlow.svg.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PaperTest {

  // ISO 216 trimmed sizes; Letter, Legal, Tabloid: ASME Y14.1 inches times 25.4.
  @ParameterizedTest
  @CsvSource({
    "a4, 210, 297",
    "A3, 297, 420",
    "a2, 420, 594",
    "a1, 594, 841",
    "a0, 841, 1189",
    "letter, 215.9, 279.4",
    "Legal, 215.9, 355.6",
    "tabloid, 279.4, 431.8",
    "a4 landscape, 297, 210",
    "a4-landscape, 297, 210",
    "  Letter Portrait , 215.9, 279.4",
    "420x297, 420, 297",
    "420 x 297 mm, 420, 297",
    "420×297, 420, 297",
    "210.5x297.25, 210.5, 297.25",
    "420x297 portrait, 297, 420"
  })
  void sizesAreReadInMillimetres(String text, double width, double height) {
    Paper p = Paper.parse(text);
    assertThat(p.widthMm()).isEqualTo(width);
    assertThat(p.heightMm()).isEqualTo(height);
  }

  @Test
  void inchesAreRead() {
    Paper p = Paper.parse("11x17 in");
    // 11 and 17 times 25.4 are exact to a rounding of the last digit.
    assertThat(p.widthMm()).isCloseTo(279.4, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(p.heightMm()).isCloseTo(431.8, org.assertj.core.data.Offset.offset(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "a9", "a4x", "420", "x", "-420x297", "1e9x2", "NaNxNaN", "a4 sideways"})
  void unknownSizesAreRefusedAndTheMessageSaysWhatIsAllowed(String text) {
    assertThatThrownBy(() -> Paper.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("'" + text + "'")
        .hasMessageContaining("letter")
        .hasMessageContaining("420x297");
  }

  @ParameterizedTest
  @ValueSource(strings = {"10x300", "300x6000", "0x0"})
  void impossibleSidesAreRefused(String text) {
    assertThatThrownBy(() -> Paper.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("50.0 to 5080.0 mm");
    assertThatThrownBy(() -> Paper.parse(null)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void turningTwiceGivesTheSameSheet() {
    for (Paper p : Paper.NAMED) {
      assertThat(p.turned().turned()).isEqualTo(p);
      assertThat(p.landscape().isLandscape()).isTrue();
      assertThat(p.portrait()).isEqualTo(p);
    }
  }
}
