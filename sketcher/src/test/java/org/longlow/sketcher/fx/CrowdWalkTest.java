package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
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
  @Tag("long")
  void peopleAreSeatedJudgedAndToldWithoutAMouse() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.Z);
    assertThat(Hands.onFx(() -> pane().isVisible())).isTrue();
    assertThat(isShown("crowd-sheet")).isFalse();
    hands.typeInto("crowd-people", "none");
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.D); // another picture
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

  private Bounds at(String name) {
    Node node = Hands.called(hands.window(), name).orElseThrow();
    return Hands.onFx(() -> node.localToScene(node.getLayoutBounds()));
  }

  private boolean isScrolled() {
    return Hands.onFx(
        () ->
            pane().lookupAll(".scroll-bar").stream()
                .anyMatch(bar -> bar.isVisible() && bar.getParent().isVisible()));
  }

  /** Where letters are twice as large too, all is read, nothing looks out, and no room is taken. */
  @Test
  @Tag("long")
  void theSlipIsAsHighAsItsWordsAndHidesWholeTags() throws Exception {
    begin(Wren.layout());
    for (int percent : new int[] {100, 200}) {
      Hands.onFx(
          () -> {
            hands.window().textSize().use(percent);
            return null;
          });
      hands.settle().press(KeyCode.Z);
      Bounds slip = at("crowd-slip");
      Bounds last = at("crowd-scroll");
      Bounds bundle = at("bundle-pass");
      assertThat(isScrolled()).as("%d %%", percent).isFalse();
      assertThat(last.getHeight()).isBetween(16.0, 60.0 * percent / 100);
      assertThat(slip.getMaxY() - last.getMaxY()).isBetween(0.0, 0.14 * percent);
      assertThat(slip.getMinY()).isLessThan(bundle.getMinY());
      assertThat(slip.getMaxX()).isGreaterThan(bundle.getMaxX());
      hands.press(KeyCode.ESCAPE);
    }
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
