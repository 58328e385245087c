package org.longlow.sketcher.fx;

import java.util.List;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.longlow.rider.geom.PointMm;

/**
 * What pointer and keys do on the card while one thing is being done: picking, placing a part,
 * drawing an outline. One hand works at a time ({@link BoardHands#take}); looking about (wheel,
 * pinch, the other buttons) works with each.
 */
interface Hand {

  /** Returns where the pointer is on the card, px. */
  static PointMm px(MouseEvent e) {
    return new PointMm(e.getX(), e.getY());
  }

  /** The pointer moves over the card with no button held. */
  void moved(MouseEvent e);

  /** The first button goes down; unless said otherwise that is one more place of the pointer. */
  default void pressed(MouseEvent e) {
    moved(e);
  }

  /** The pointer moves with the first button held; unless said otherwise as without. */
  default void dragged(MouseEvent e) {
    moved(e);
  }

  /**
   * The first button goes up.
   *
   * @param click whether it went down at the same spot
   */
  void released(MouseEvent e, boolean click);

  /** A click of another button, which does not look about. */
  default void otherClick(MouseEvent e) {}

  /** The pointer leaves the card. */
  default void left() {}

  /** A key goes down on the card; returns whether it was meant for this hand. */
  default boolean key(KeyEvent e) {
    return false;
  }

  /** Returns whether a key is for this hand though the window has a use for it too. */
  default boolean wants(KeyEvent e) {
    return false;
  }

  /** Returns what it does besides pointing, each with its key; it is offered as buttons too. */
  default List<Deed> deeds() {
    return List.of();
  }

  /** Returns what putting it down is called, as Escape does it. */
  default String ends() {
    return "Done";
  }

  /** Draws over the card, after pins and findings. */
  default void paint(Overlay glass) {}

  /** Says what to do next, shown on the card; empty for nothing. */
  default String says() {
    return "";
  }

  /** Escape, or another hand, while the first button is down: what this drag did is undone. */
  default void cancel() {}

  /** Another hand takes over, or Escape was pressed: whatever was begun is dropped. */
  default void putDown() {}
}
