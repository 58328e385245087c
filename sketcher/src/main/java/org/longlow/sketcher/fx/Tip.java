package org.longlow.sketcher.fx;

import javafx.event.EventHandler;
import javafx.scene.control.Control;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;

/**
 * What a control tells when the pointer rests on it, and a screen reader at any time. Each slip to
 * show it on is a window with styles of its own, so it is made when a pointer first comes.
 */
final class Tip {

  private static final EventHandler<MouseEvent> COMES =
      e -> show((Control) e.getSource(), of((Control) e.getSource()));

  private Tip() {}

  /** Gives a control its tip, in place of one it had. */
  static void tell(Control control, String words) {
    if (control.getProperties().put(Tip.class, words) == null) {
      control.addEventHandler(MouseEvent.MOUSE_ENTERED, COMES);
    }
    control.setAccessibleHelp(words);
    if (control.getTooltip() != null) {
      show(control, words);
    }
  }

  /** Returns the tip of a control, empty if it has none. */
  static String of(Control control) {
    return control.hasProperties() && control.getProperties().get(Tip.class) instanceof String words
        ? words
        : "";
  }

  private static void show(Control control, String words) {
    if (control.getTooltip() == null) {
      control.setTooltip(new Tooltip());
    }
    control.getTooltip().setText(words);
  }
}
