package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.text.Text;

/** Looks for words that the window cuts short, and controls that a screen reader cannot name. */
final class Shortened {

  private Shortened() {}

  /** Returns what is visible and shows less than it says. */
  static List<String> in(Parent root) {
    List<String> found = new ArrayList<>();
    walk(root, found, false);
    return found;
  }

  /** Returns controls that take the keyboard and have neither words nor a spoken name. */
  static List<String> nameless(Parent root) {
    List<String> found = new ArrayList<>();
    walk(root, found, true);
    return found;
  }

  /** What may be of any length, such as the title of a machine, is told in full by its tip. */
  private static boolean isTold(Labeled labeled) {
    String begins = labeled.getText().replace("\u2026", "");
    return Tip.of(labeled).contains(begins);
  }

  private static void walk(Node node, List<String> found, boolean names) {
    if (!node.isVisible()) {
      return;
    }
    if (names && node instanceof Control control && control.isFocusTraversable()) {
      boolean words = control instanceof Labeled l && l.getText() != null && !l.getText().isBlank();
      if (!words && control.getAccessibleText() == null && !(control instanceof ScrollBar)) {
        found.add(control.toString());
      }
    }
    if (!names && node instanceof Labeled labeled && labeled.getText() != null) {
      for (Node inner : labeled.getChildrenUnmodifiable()) {
        if (inner instanceof Text text
            && text.isVisible()
            && !labeled.getText().isEmpty()
            && !text.getText().equals(labeled.getText())
            && !isTold(labeled)) {
          found.add("'" + labeled.getText() + "' is shown as '" + text.getText() + "'");
        }
      }
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(n -> walk(n, found, names));
    }
  }
}
