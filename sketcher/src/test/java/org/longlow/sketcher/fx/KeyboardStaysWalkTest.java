package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIf;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.sketcher.desk.Wren;
import org.testfx.api.FxToolkit;

/** The keyboard stays where somebody works, whatever is built anew there or goes. */
@EnabledIf(
    value = "org.longlow.sketcher.fx.WindowTest#textCanBeLaidOut",
    disabledReason = "the window toolkit lacks the system's text libraries (libpango) here")
class KeyboardStaysWalkTest {

  @TempDir Path folder;
  private Hands hands;

  @BeforeEach
  void open() throws Exception {
    hands = Hands.at(folder.resolve("home"), List.of(Wren.layout()));
    hands.click("machine-wren");
  }

  @AfterEach
  void leave() throws Exception {
    FxToolkit.cleanupStages();
  }

  private String focused() {
    return Hands.onFx(() -> hands.window().getScene().getFocusOwner().getId());
  }

  private boolean isWithin(String id) {
    return Hands.onFx(
        () -> {
          Node at = hands.window().getScene().getFocusOwner();
          while (at != null && !id.equals(at.getId())) {
            at = at.getParent();
          }
          return at != null;
        });
  }

  private void pick(String subject) {
    Hands.onFx(
        () -> {
          hands.desk().choose(subject);
          return null;
        });
    hands.settle();
  }

  @Test
  void aTicketBuiltAnewKeepsTheKeyboardInItsField() {
    pick("part:headlamp");
    hands.choose("field-headlamp-at", "gripPin");
    assertThat(hands.layout().parts().get("headlamp").pins()).containsExactly("gripPin");
    assertThat(focused()).isEqualTo("field-headlamp-at");
    pick("part:engine");
    hands.choose("more-engine-another-touche", "tank");
    assertThat(hands.layout().parts().get("engine").base().touches())
        .containsExactly("lowRail", "tank");
    assertThat(focused()).isEqualTo("more-engine-another-touche");
    hands.click("drop-engine-touche-2");
    assertThat(isWithin("bench")).as("in the same ticket").isTrue();
    assertThat(focused()).as("what stands there now").isEqualTo("more-engine-another-touche");
  }

  @Test
  void whatGoesLeavesTheKeyboardToTheRestOfItsSlipOrToTheCard() {
    pick("part:headlamp");
    hands.click("take-out");
    assertThat(hands.layout().parts()).doesNotContainKey("headlamp");
    assertThat(focused()).isNotEqualTo("open").isNotNull();
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding("gap.engine.Mara");
          return null;
        });
    hands.settle().press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.M);
    hands.until(
        "all offers", () -> hands.desk().mending().mends().filter(m -> !m.looking()).isPresent());
    hands.settle();
    assertThat(focused()).isEqualTo("offer-0");
    hands.press(KeyCode.ENTER);
    assertThat(hands.find("offer-0")).isEmpty();
    assertThat(isWithin("findings")).as("the mend was taken there").isTrue();
  }
}
