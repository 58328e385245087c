package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.desk.Habits;

/** Letters larger and smaller, and what lies round them. */
class TextSizeTest {

  @Test
  void whatHoldsWordsGrowsAndLinesDoNot() {
    assertThat(
            TextSize.sized(
                ".a { -fx-font-size: 13px; -fx-padding: 6 10 6 10; -fx-border-width: 1; }", 1.5))
        .isEqualTo(
            ".a { -fx-font-size: 19.50px; -fx-padding: 9.00 15.00 9.00 15.00; -fx-border-width: 1;"
                + " }");
    assertThat(TextSize.sized(".a { -fx-background-insets: 0, 2; -fx-min-width: 64; }", 2))
        .isEqualTo(".a { -fx-background-insets: 0, 2; -fx-min-width: 128.00; }");
  }

  @Test
  void stepsEndAtTheSmallestAndTheLargest() {
    assertThat(TextSize.stepped(100, 1)).isEqualTo(110);
    assertThat(TextSize.stepped(100, -1)).isEqualTo(90);
    assertThat(TextSize.stepped(Habits.MOST_TEXT, 1)).isEqualTo(Habits.MOST_TEXT);
    assertThat(TextSize.stepped(Habits.LEAST_TEXT, -1)).isEqualTo(Habits.LEAST_TEXT);
    assertThat(TextSize.stepped(134, 1)).as("from whatever was kept").isEqualTo(150);
  }

  @Test
  void theSheetOfASizeIsTheOneThereIsWithLargerLetters() {
    assertThat(TextSize.sheet(100)).endsWith("bench.css");
    String address = TextSize.sheet(200);
    String css =
        new String(
            Base64.getDecoder().decode(address.substring(address.indexOf(',') + 1)),
            StandardCharsets.UTF_8);
    assertThat(css).contains(".window { -fx-background-color: -bench; -fx-font-size: 26.00px;");
  }
}
