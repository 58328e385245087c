package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import javafx.event.EventType;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.desk.Wren;

/** Keys held while the keyboard goes elsewhere. */
@Windowed
class HeldKeysWalkTest extends Walk {

  /** As the toolkit gives it to whatever has the keyboard. */
  private void fire(EventType<KeyEvent> type, KeyCode code, boolean ctrl) {
    Hands.onFx(
        () -> {
          comes(type, code, ctrl);
          return null;
        });
  }

  private void comes(EventType<KeyEvent> type, KeyCode code, boolean ctrl) {
    String sign = type == KeyEvent.KEY_TYPED ? code.getName().toLowerCase(Locale.ROOT) : "";
    javafx.scene.Node at = hands.window().getScene().getFocusOwner();
    KeyCode said = type == KeyEvent.KEY_TYPED ? KeyCode.UNDEFINED : code;
    javafx.event.Event.fireEvent(
        at, new KeyEvent(type, sign, sign, said, false, ctrl, false, false));
  }

  private void typed(KeyCode... codes) {
    for (KeyCode code : codes) {
      comes(KeyEvent.KEY_PRESSED, code, false);
      comes(KeyEvent.KEY_TYPED, code, false);
      comes(KeyEvent.KEY_RELEASED, code, false);
    }
  }

  /** Nothing else runs between the key that opens it and the next. */
  @Test
  void whatIsTypedAtOnceGoesIntoTheFieldThatWasAskedFor() throws Exception {
    begin(Wren.layout());
    org.longlow.constraints.layout.Layout before =
        Hands.onFx(() -> hands.window().desk().shown().orElseThrow().layout());
    String typed =
        Hands.onFx(
            () -> {
              comes(KeyEvent.KEY_PRESSED, KeyCode.F, true);
              typed(KeyCode.G, KeyCode.U, KeyCode.T, KeyCode.D);
              return hands.node("find-words", TextField.class).getText();
            });
    assertThat(typed).isEqualTo("gutd");
    String looked =
        Hands.onFx(
            () -> {
              hands.window().board().requestFocus();
              typed(KeyCode.A, KeyCode.G, KeyCode.U);
              return ((TextField) hands.window().getScene().getFocusOwner()).getText();
            });
    assertThat(looked).as("the gallery's").isEqualTo("gu");
    assertThat(Hands.onFx(() -> hands.window().desk().shown().orElseThrow().layout()))
        .isSameAs(before);
  }

  private void repeat(KeyCode code, boolean ctrl) {
    fire(KeyEvent.KEY_PRESSED, code, ctrl);
    if (!ctrl) {
      fire(KeyEvent.KEY_TYPED, code, false);
    }
  }

  private String path() {
    return Hands.onFx(
        () -> ((TextField) Hands.called(hands.window(), "save-path").orElseThrow()).getText());
  }

  private void ask() {
    hands.press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.S);
    assertThat(Called.of(focused())).isEqualTo("save-path");
    Hands.onFx(
        () -> {
          ((TextField) Hands.called(hands.window(), "save-path").orElseThrow()).end();
          return null;
        });
  }

  @Test
  void aKeyHeldSinceBeforeWritesNothingIntoAFieldThatCame() throws Exception {
    begin(Wren.layout());
    fire(KeyEvent.KEY_PRESSED, KeyCode.Z, true);
    ask();
    String before = path();
    repeat(KeyCode.Z, true);
    repeat(KeyCode.Z, false);
    assertThat(path()).as("Ctrl is let go of first").isEqualTo(before);
    repeat(KeyCode.X, false);
    assertThat(path()).as("another key").isEqualTo(before + "x");
    fire(KeyEvent.KEY_RELEASED, KeyCode.X, false);
    repeat(KeyCode.Z, false);
    assertThat(path()).isEqualTo(before + "x");
    fire(KeyEvent.KEY_RELEASED, KeyCode.Z, false);
    repeat(KeyCode.Z, false);
    repeat(KeyCode.Z, false);
    assertThat(path()).as("pressed anew, and held").isEqualTo(before + "xzz");
    fire(KeyEvent.KEY_RELEASED, KeyCode.Z, false);
    // in the field itself: the rest of a chord is no letter either
    fire(KeyEvent.KEY_PRESSED, KeyCode.A, true);
    repeat(KeyCode.A, false);
    assertThat(path()).isEqualTo(before + "xzz");
    fire(KeyEvent.KEY_RELEASED, KeyCode.A, false);
    hands.press(KeyCode.ESCAPE);
    Hands.onFx(
        () -> {
          hands.window().board().requestFocus();
          return null;
        });
    fire(KeyEvent.KEY_PRESSED, KeyCode.BACK_SPACE, false);
    ask();
    String whole = path();
    fire(KeyEvent.KEY_PRESSED, KeyCode.BACK_SPACE, false);
    assertThat(path()).as("held on the card").isEqualTo(whole);
    fire(KeyEvent.KEY_RELEASED, KeyCode.BACK_SPACE, false);
    fire(KeyEvent.KEY_PRESSED, KeyCode.BACK_SPACE, false);
    assertThat(path()).isEqualTo(whole.substring(0, whole.length() - 1));
  }
}
