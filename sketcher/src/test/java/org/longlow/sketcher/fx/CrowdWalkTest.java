package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.desk.Wren;

/** How a population fits, asked and read in the window. */
@Windowed
class CrowdWalkTest extends Walk {

  private CrowdPane pane() {
    return (CrowdPane) Hands.called(hands.window(), "crowd-slip").orElseThrow();
  }

  private boolean isShown(String name) {
    return Hands.onFx(() -> Hands.called(pane(), name).orElseThrow().isVisible());
  }

  private String words(String name) {
    return Hands.onFx(() -> ((Label) Hands.called(pane(), name).orElseThrow()).getText());
  }

  private String all() {
    return Hands.onFx(
        () ->
            pane().lookupAll(".label").stream()
                .map(n -> ((Label) n).getText())
                .reduce("", (a, b) -> a + "\n" + b));
  }

  @Test
  void peopleAreSeatedJudgedAndToldWithoutAMouse() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.Z);
    assertThat(Hands.onFx(() -> pane().isVisible())).isTrue();
    assertThat(isShown("crowd-sheet")).isFalse();
    hands.typeInto("crowd-people", "none");
    assertThat(words("crowd-trouble")).isEqualTo("People is 'none'; write 1 to 100000.");
    hands.typeInto("crowd-people", "4");
    hands.until("how they fit", () -> all().contains("nothing fails: "));
    assertThat(isShown("crowd-sheet")).isTrue();
    assertThat(all())
        .contains("4 people sampled as soldiers of the survey, 50 % women, seed 1.")
        .contains("nothing fails: ");
    hands.press(KeyCode.ESCAPE);
    assertThat(Hands.onFx(() -> pane().isVisible())).isFalse();
    hands.press(KeyCode.SLASH).write("population").press(KeyCode.ENTER);
    assertThat(Hands.onFx(() -> pane().isVisible())).isTrue();
    Hands.onFx( // what adjustment would take in is not waited for
        () -> {
          ((Button) Hands.called(pane(), "crowd-give-up").orElseThrow()).fire();
          return null;
        });
    assertThat(all()).contains("nothing fails: ");
  }

  @Test
  void whatRunsIsGivenUp() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.Z);
    hands.typeInto("crowd-people", "100000");
    assertThat(isShown("crowd-bar")).isTrue();
    hands.click("crowd-give-up");
    assertThat(words("crowd-trouble")).isEqualTo("Given up.");
    assertThat(isShown("crowd-bar")).isFalse();
    assertThat(isShown("crowd-sheet")).isFalse();
  }
}
