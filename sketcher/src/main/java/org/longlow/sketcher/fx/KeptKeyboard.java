package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import org.longlow.sketcher.desk.Desk;

/**
 * Where the keyboard goes when what had it is taken away, put out of sight or switched off: to what
 * is left of the same slip, else to the card. The toolkit alone would send it to the first button
 * of the window.
 */
final class KeptKeyboard {

  private final Node root;
  private final Desk desk;
  private final Node card;

  /** What has the keyboard and all that it lies in, from the inside out. */
  private List<Node> at = List.of();

  /** The same of what has just lost it; null if nothing did. */
  private List<Node> lost;

  /**
   * @param root of what is looked after
   * @param card where it goes if nothing else is left, while a machine is on the desk
   */
  KeptKeyboard(Node root, Desk desk, Node card) {
    this.root = root;
    this.desk = desk;
    this.card = card;
    root.sceneProperty()
        .addListener(
            (o, was, scene) -> {
              if (scene != null) {
                scene.focusOwnerProperty().addListener((p, old, now) -> moved(scene, now));
              }
            });
  }

  /** Has a field take what is typed into it, as if it were left for {@code elsewhere}. */
  static void commit(Scene scene, Node elsewhere) {
    Node at = scene.getFocusOwner();
    if (at instanceof TextInputControl) {
      elsewhere.requestFocus();
      at.requestFocus();
    }
  }

  /** The toolkit takes the keyboard from what cannot have it, and then gives it to another. */
  private void moved(Scene scene, Node now) {
    if (now == null) {
      lost = at;
      return;
    }
    List<Node> before = lost;
    lost = null;
    at = chain(now);
    if (before == null || before.isEmpty() || desk.session().isEmpty()) {
      return;
    }
    Node to = rest(before);
    Platform.runLater(
        () -> {
          // whoever was asked for meanwhile keeps it
          if (scene.getFocusOwner() == now) {
            to.requestFocus();
          }
        });
  }

  private static List<Node> chain(Node node) {
    List<Node> chain = new ArrayList<>();
    for (Node n = node; n != null; n = n.getParent()) {
      chain.add(n);
    }
    return chain;
  }

  private Node rest(List<Node> before) {
    List<Node> shared = chain(card);
    for (Node n : before) {
      if (shared.contains(n)) {
        break; // the card lies in it too: nothing is left of the slip
      }
      Optional<Node> there = isSeen(n) ? first(n) : Optional.empty();
      if (there.isPresent()) {
        return there.get();
      }
    }
    return card;
  }

  private boolean isSeen(Node node) {
    return node.getScene() == root.getScene()
        && !node.isDisabled()
        && chain(node).stream().allMatch(Node::isVisible);
  }

  /** The first in it that can have the keyboard. */
  private static Optional<Node> first(Node node) {
    if (!node.isVisible() || node.isDisabled()) {
      return Optional.empty();
    }
    if (node.isFocusTraversable()) {
      return Optional.of(node);
    }
    return node instanceof Parent parent
        ? parent.getChildrenUnmodifiable().stream().flatMap(n -> first(n).stream()).findFirst()
        : Optional.empty();
  }
}
