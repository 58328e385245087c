package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Keys as people read them, and signs of numbers typed on the card, where no field takes them. */
final class Keys {

  private static final Map<String, KeyCode> SIGNS =
      Map.of(
          "[", KeyCode.OPEN_BRACKET,
          "]", KeyCode.CLOSE_BRACKET,
          ".", KeyCode.PERIOD,
          ",", KeyCode.COMMA,
          "/", KeyCode.SLASH);

  private Keys() {}

  /**
   * Returns whether a key that went down is one of those of a list.
   *
   * @param keys as people read them, such as {@code Ctrl F, /}; Shift makes no other key of one
   *     that stands alone
   */
  static boolean isOne(String keys, KeyEvent e) {
    return !keys.isEmpty() && Stream.of(keys.split(", ")).anyMatch(key -> is(key, e));
  }

  private static boolean is(String key, KeyEvent e) {
    List<String> words = List.of(key.split(" "));
    String last = words.get(words.size() - 1);
    boolean shortcut = words.contains("Ctrl");
    return e.getCode() == SIGNS.getOrDefault(last, KeyCode.getKeyCode(last))
        && e.isShortcutDown() == shortcut
        && !e.isAltDown()
        && (e.isShiftDown() == words.contains("Shift") || words.size() == 1);
  }

  /** Returns whether a field would write a sign for a key. */
  static boolean writes(KeyEvent e) {
    return !e.isShortcutDown() && !e.getCode().isFunctionKey();
  }

  /** Returns the digit, point or minus that a key stands for; empty for any other. */
  static String sign(KeyEvent e) {
    KeyCode code = e.getCode();
    if (code.isDigitKey()) {
      String name = code.getName();
      return name.substring(name.length() - 1);
    }
    return switch (code) {
      case PERIOD, DECIMAL, COMMA -> ".";
      case MINUS, SUBTRACT -> "-";
      default -> "";
    };
  }
}
