package org.longlow.sketcher.fx;

import javafx.scene.Node;

/**
 * What nodes are called by who looks for one of them. It is not the id of a style sheet: styles
 * that were matched are kept for nodes alike in type, id and classes, so that with ids of their own
 * a hundred fields are matched a hundred times.
 */
final class Called {

  private Called() {}

  /** Calls a node by a name. */
  static void by(Node node, String name) {
    node.getProperties().put(Called.class, name);
  }

  /** Returns what a node is called, empty if by nothing. */
  static String of(Node node) {
    return node.hasProperties() && node.getProperties().get(Called.class) instanceof String name
        ? name
        : "";
  }
}
