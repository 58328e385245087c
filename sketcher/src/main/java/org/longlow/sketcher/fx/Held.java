package org.longlow.sketcher.fx;

import java.util.function.DoubleConsumer;
import javafx.scene.Node;
import javafx.scene.control.Slider;
import javafx.scene.input.MouseEvent;

/**
 * What the pointer holds, anywhere in the window: Escape puts it back where it was taken up, and
 * the rest of that drag is of no account. Whatever can be dragged says how it is put back.
 */
final class Held {

  private static final Object BACK = Held.class;

  private Node taken;
  private boolean dropped;

  /** Watches all that is dragged inside of {@code root}. */
  Held(Node root) {
    root.addEventFilter(
        MouseEvent.MOUSE_PRESSED,
        e -> {
          taken = e.getTarget() instanceof Node node ? draggable(node) : null;
          dropped = false;
        });
    root.addEventFilter(
        MouseEvent.MOUSE_DRAGGED,
        e -> {
          if (dropped) {
            e.consume();
          }
        });
    root.addEventFilter(MouseEvent.MOUSE_RELEASED, e -> taken = null);
  }

  /**
   * Says how something that is dragged is put back.
   *
   * @param back is run on Escape, with the button still down
   */
  static void putsBack(Node node, Runnable back) {
    node.getProperties().put(BACK, back);
  }

  /**
   * Says how a slider is put back. From its thumb or its groove, it changes as long as the button
   * is down.
   *
   * @param back is given the value that it had when it was taken up, and is run before it counts as
   *     let go
   */
  static void putsBack(Slider slider, DoubleConsumer back) {
    double[] before = {slider.getValue()};
    slider.addEventFilter(
        MouseEvent.MOUSE_PRESSED,
        e -> {
          before[0] = slider.getValue();
          slider.setValueChanging(true);
        });
    slider.addEventHandler(MouseEvent.MOUSE_RELEASED, e -> slider.setValueChanging(false));
    putsBack((Node) slider, () -> back.accept(before[0]));
  }

  private static Node draggable(Node node) {
    Node at = node;
    while (at != null && !at.getProperties().containsKey(BACK)) {
      at = at.getParent();
    }
    return at;
  }

  /** Puts back what is held; returns whether something was. */
  boolean putBack() {
    if (taken == null) {
      return false;
    }
    ((Runnable) taken.getProperties().get(BACK)).run();
    taken = null;
    dropped = true;
    return true;
  }
}
