package org.longlow.sketcher.fx;

import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** Signs of numbers as they are typed on the card, where no field takes them. */
final class Keys {

  private Keys() {}

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
