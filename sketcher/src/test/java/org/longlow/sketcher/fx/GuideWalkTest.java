package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.desk.Wren;

/** The guide is read in the window by keys and pointer. */
@Windowed
class GuideWalkTest extends Walk {

  private GuidePane pane() {
    return (GuidePane) Hands.called(hands.window(), "guide-slip").orElseThrow();
  }

  private double scrolled() {
    return Hands.onFx(
        () ->
            ((ScrollPane) Hands.called(hands.window(), "guide-scroll").orElseThrow()).getVvalue());
  }

  @Test
  @Tag("long")
  void chaptersAreFoundReadScrolledAndPutAway() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.SLASH).write("manual").press(KeyCode.ENTER);
    assertThat(Hands.onFx(() -> pane().isVisible())).isTrue();
    assertThat(Hands.onFx(() -> pane().file())).isEqualTo("README.md");
    hands.click("guide-to-seat.md");
    assertThat(Hands.onFx(() -> pane().file())).isEqualTo("seat.md");
    assertThat(scrolled()).isZero();
    hands.press(KeyCode.PAGE_DOWN);
    assertThat(scrolled()).isPositive();
    hands.press(KeyCode.ESCAPE);
    assertThat(Hands.onFx(() -> pane().isVisible())).isFalse();

    hands.press(KeyCode.F1).click("keys-guide");
    assertThat(Hands.onFx(() -> pane().isVisible())).isTrue();
    assertThat(Hands.onFx(() -> pane().file())).as("where somebody read last").isEqualTo("seat.md");
    hands.click("guide-contents").click("guide-to-findings.md");
    assertThat(Hands.onFx(() -> pane().file())).isEqualTo("findings.md");
    hands.click("guide-away");
    assertThat(Hands.onFx(() -> pane().isVisible())).isFalse();
    assertThat(focused()).isSameAs(Hands.onFx(() -> hands.window().board()));
  }

  @Test
  void aPictureIsMadeLargerAndSmaller() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.F1).click("keys-guide").click("guide-to-steering.md");
    String plan = "guide-pictures/plan.svg";
    double narrow = wide(plan);
    assertThat(wide(plan)).isBetween(500.0, 620.0);
    hands.click(plan);
    assertThat(wide(plan)).isGreaterThan(1.5 * narrow);
    assertThat(focused()).isInstanceOf(GuidePicture.class);
    hands.press(KeyCode.ENTER);
    assertThat(wide(plan)).isEqualTo(narrow);
    hands.press(KeyCode.ENTER).click("guide-contents").click("guide-to-steering.md");
    assertThat(wide(plan)).as("of another page").isEqualTo(narrow);
  }

  private double wide(String name) {
    return Hands.onFx(
        () -> Hands.called(hands.window(), name).orElseThrow().getBoundsInParent().getWidth());
  }
}
