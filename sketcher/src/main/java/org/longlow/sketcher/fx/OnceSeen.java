package org.longlow.sketcher.fx;

import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/**
 * Holds the place of what is not seen yet: until it is, its styles and its layout would be work for
 * nothing.
 */
final class OnceSeen extends Region implements InvalidationListener {

  private final Node node;

  private OnceSeen(Node node) {
    this.node = node;
    setVisible(false);
    setManaged(false);
    node.visibleProperty().addListener(this);
  }

  /**
   * Hides a node until somebody makes it visible, and returns what to put into a pane instead of it
   * until then.
   */
  static Node of(Node node) {
    node.setVisible(false);
    return new OnceSeen(node);
  }

  /** Returns what it holds the place of. */
  Node node() {
    return node;
  }

  @Override
  public void invalidated(Observable visible) {
    if (node.isVisible() && getParent() instanceof Pane pane) {
      node.visibleProperty().removeListener(this);
      pane.getChildren().set(pane.getChildren().indexOf(this), node);
      node.applyCss(); // what lies in a scrolled part of it can have the keyboard only then
    }
  }
}
