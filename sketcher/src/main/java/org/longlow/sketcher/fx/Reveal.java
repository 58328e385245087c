package org.longlow.sketcher.fx;

import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Brings what stands on a long slip into view. */
final class Reveal {

  private Reveal() {}

  /** Turns the slip round a node so far that it is seen, once it was laid out. */
  static void later(Node node) {
    Platform.runLater(
        () -> {
          ScrollPane scroll = round(node);
          if (scroll == null || node.getScene() == null) {
            return;
          }
          // what is said takes room, which it gets only with the next layout
          node.getScene().getRoot().applyCss();
          node.getScene().getRoot().layout();
          double all = scroll.getContent().getBoundsInLocal().getHeight();
          double seen = scroll.getViewportBounds().getHeight();
          Bounds at = scroll.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal()));
          if (all > seen) {
            double top = scroll.getVvalue() * (all - seen);
            double wanted = Math.min(at.getMinY(), Math.max(top, at.getMaxY() - seen));
            scroll.setVvalue(Math.max(0, Math.min(1, wanted / (all - seen))));
          }
        });
  }

  private static ScrollPane round(Node node) {
    Node at = node;
    while (at != null && !(at instanceof ScrollPane)) {
      at = at.getParent();
    }
    return (ScrollPane) at;
  }
}
