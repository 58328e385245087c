package org.longlow.sketcher.fx;

import javafx.geometry.Bounds;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/**
 * What lies on a slip: as high as it is at the width it gets, with its words wrapped, and scrolled
 * where a low card or large letters leave less.
 */
final class Scrolled extends ScrollPane {

  private final Region held;

  Scrolled(Region held) {
    super(held);
    this.held = held;
    setFitToWidth(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    getStyleClass().add("slip-scroll");
    setFocusTraversable(false);
    setMinHeight(0);
  }

  /** Scrolls no further than to where all of something held is seen. */
  void bringIntoView(Node held) {
    double seen = getViewportBounds().getHeight();
    double over = this.held.getHeight() - seen;
    if (over > 0) {
      Bounds at = this.held.sceneToLocal(held.localToScene(held.getBoundsInLocal()));
      double from = getVvalue() * over;
      double to = Math.min(at.getMinY(), Math.max(from, at.getMaxY() - seen));
      setVvalue(Math.max(0, Math.min(1, to / over)));
    }
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computePrefHeight(double width) {
    double across = snappedLeftInset() + snappedRightInset();
    double down = snappedTopInset() + snappedBottomInset();
    return Math.ceil(down + held.prefHeight(width < 0 ? width : width - across));
  }
}
