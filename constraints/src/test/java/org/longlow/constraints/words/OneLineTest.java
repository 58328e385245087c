package org.longlow.constraints.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.figure.FigureFault;

class OneLineTest {

  @ParameterizedTest
  @ValueSource(
      ints = {0, 7, 0x0a, 0x0d, 0x1b, 0x7f, 0x85, 0x9b, 0x200e, 0x2028, 0x2029, 0x202e, 0x2066})
  void noControlIsLeftRaw(int control) {
    String text = "a" + (char) control + "b";
    String escaped = String.format("a\\u%04xb", control);
    assertThat(OneLine.of(text)).isEqualTo(escaped);
    assertThat(new Fault("$." + text, text, text, text).line()).doesNotContain(text);
    assertThat(new FigureFault(text, text, text).line()).doesNotContain(text);
  }

  @Test
  void otherTextStaysAsItIs() {
    String text = "Räder 120/70 Ø14 · 90° \uD83C\uDFCD";
    assertThat(OneLine.of(text)).isSameAs(text);
    assertThat(OneLine.of("half \uD83C pair")).isEqualTo("half \\ud83c pair");
    assertThat(OneLine.lines("one\n\ttwo\r\u001b")).isEqualTo("one\n\ttwo\\u000d\\u001b");
  }
}
