package org.longlow.sketcher.fx;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** The slips that come over the card when asked for, one at a time. */
final class Slips {

  private final StackPane middle;
  private final List<Node> all;

  /**
   * @param middle where the card is; a slip is laid over it when it is first asked for, for until
   *     then its styles and its layout would be work for nothing
   */
  Slips(StackPane middle, Node... all) {
    this.middle = middle;
    this.all = List.of(all);
    show(null);
  }

  /** Shows one, or none if null, in place of what was shown. */
  void show(Node slip) {
    for (Node node : all) {
      node.setVisible(node == slip);
      node.setManaged(node == slip);
    }
    if (slip != null && slip.getParent() == null) {
      middle.getChildren().add(slip);
      slip.applyCss(); // what lies in a scrolled part of it can have the keyboard only then
    }
  }

  /**
   * Gives what is shown its place at once: a click that follows a key is not to meet it without.
   */
  void layOut() {
    middle.applyCss();
    middle.layout();
  }

  /** Whether one is shown. */
  boolean areShown() {
    return all.stream().anyMatch(Node::isVisible);
  }
}
