package org.longlow.sketcher.fx;

import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;

/**
 * A slip that has moved from under a pointer at rest: a turn of the wheel was meant for it, so it
 * does nothing to what came to light there until the pointer moves.
 */
final class SlippedAway {

  private final Region slip;
  private double x = Double.NaN;
  private double y = Double.NaN;
  private boolean away;

  SlippedAway(Region slip) {
    this.slip = slip;
  }

  private boolean isOver() {
    return slip.isVisible() && slip.getBoundsInParent().contains(x, y);
  }

  /** Does what may lay the slip elsewhere. */
  void around(Runnable lays) {
    boolean was = isOver();
    lays.run();
    away = !isOver() && (away || was);
  }

  void pointed(MouseEvent e) {
    away &= e.getX() == x && e.getY() == y;
    x = e.getX();
    y = e.getY();
  }

  void scrolled(ScrollEvent e) {
    if (away) {
      e.consume();
    }
  }
}
