package org.longlow.sketcher.fx;

import javafx.geometry.Pos;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A slip of paper that lies on the card: it can be taken by its head and laid elsewhere. */
final class Ticket extends VBox {

  private final Runnable moved;
  private double grabX;
  private double grabY;
  private boolean laid;
  private double fromX;
  private double fromY;
  private boolean wasLaid;

  /**
   * @param head what is written at its head
   * @param moved is run after somebody laid it elsewhere
   * @param away puts it away
   */
  Ticket(String id, Label head, Node content, Runnable moved, Runnable away) {
    this.moved = moved;
    Called.by(this, id + "-ticket");
    getStyleClass().add("ticket");
    head.getStyleClass().add("ticket-head");
    head.setMinWidth(0);
    Button close = Bits.words(id + "-away", "\u00d7", "put this slip away", away);
    close.getStyleClass().setAll("away");
    close.setFocusTraversable(false);
    HBox line = new HBox(head, Bits.gap(), close);
    line.setAlignment(Pos.CENTER_LEFT);
    line.getStyleClass().add("ticket-line");
    line.setCursor(Cursor.MOVE);
    line.setOnMousePressed(this::grab);
    line.setOnMouseDragged(this::drag);
    Held.putsBack(line, this::putBack);
    line.setOnMouseClicked(
        e -> {
          if (e.getClickCount() == 2) {
            lift();
            moved.run();
          }
        });
    VBox.setVgrow(content, Priority.ALWAYS);
    getChildren().addAll(line, content);
  }

  /** Returns whether somebody laid it where it is; it stays there then. */
  boolean isLaid() {
    return laid;
  }

  /** From now on it lies where it hides least. */
  void lift() {
    laid = false;
  }

  private void grab(MouseEvent e) {
    fromX = getLayoutX();
    fromY = getLayoutY();
    wasLaid = laid;
    grabX = e.getSceneX() - getLayoutX();
    grabY = e.getSceneY() - getLayoutY();
    e.consume();
  }

  private void putBack() {
    laid = wasLaid;
    relocate(fromX, fromY);
    moved.run();
  }

  private void drag(MouseEvent e) {
    laid = true;
    relocate(e.getSceneX() - grabX, e.getSceneY() - grabY);
    moved.run();
    e.consume();
  }
}
