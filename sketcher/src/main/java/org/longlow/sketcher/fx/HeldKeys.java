package org.longlow.sketcher.fx;

import java.util.EnumMap;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Window;

/**
 * A key belongs to what had the keyboard when it went down, and to the chord that it was part of.
 * Held on, it writes nothing into a field that got the keyboard in between, nor once Ctrl is let go
 * of.
 */
final class HeldKeys {

  /** How a key went down. */
  private record Down(Node at, boolean chord) {}

  private final Node root;
  private final Map<KeyCode, Down> held = new EnumMap<>(KeyCode.class);
  private KeyCode last;

  /**
   * @param root of what is looked after; asked before its other filters if made before them
   */
  HeldKeys(Node root) {
    this.root = root;
    root.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    root.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    root.addEventFilter(KeyEvent.KEY_RELEASED, e -> held.remove(e.getCode()));
    // what is let go of while another window has the keyboard is not told here
    root.sceneProperty()
        .flatMap(Scene::windowProperty)
        .flatMap(Window::focusedProperty)
        .addListener((o, was, is) -> held.clear());
  }

  private Node owner() {
    return root.getScene() == null ? null : root.getScene().getFocusOwner();
  }

  private void pressed(KeyEvent e) {
    last = e.getCode();
    held.putIfAbsent(last, new Down(owner(), e.isShortcutDown()));
    if (writes(e) && isElsewhere()) {
      e.consume();
    }
  }

  private void typed(KeyEvent e) {
    if (last != null && isElsewhere()) {
      e.consume();
    }
  }

  /** What takes something out of a field or puts it in; others walk on through the window. */
  private static boolean writes(KeyEvent e) {
    KeyCode code = e.getCode();
    return !e.isShortcutDown()
        && !code.isModifierKey()
        && !code.isNavigationKey()
        && !code.isFunctionKey()
        && code != KeyCode.TAB
        && code != KeyCode.ESCAPE
        && code != KeyCode.ENTER;
  }

  /** Whether the key that came last is one held that is not meant for the field that is there. */
  private boolean isElsewhere() {
    Down down = held.get(last);
    Node now = owner();
    return down != null && now instanceof TextInputControl && (down.chord() || down.at() != now);
  }
}
