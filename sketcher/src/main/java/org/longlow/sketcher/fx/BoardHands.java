package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.picture.Aspect;

/**
 * Pointer and keys on the card: looking about works always, the rest is for the hand that works.
 */
final class BoardHands {

  private static final double ZOOM_STEP = 1.15;
  private static final double CLICK_PX = 3;

  private final Board board;
  private final Desk desk;
  private final Hand empty;
  private Hand hand;
  private PointMm pressed;
  private PointMm lastPx;
  private boolean panning;
  private ViewFrame frame;
  private final List<Runnable> onTake = new ArrayList<>();

  BoardHands(Board board, Desk desk) {
    this.board = board;
    this.desk = desk;
    empty = new Picking(board, desk);
    hand = empty;
    board.setHand(hand, false);
    board.setOnMouseMoved(e -> hand.moved(e));
    board.setOnMouseExited(e -> hand.left());
    board.setOnMousePressed(this::pressed);
    board.setOnMouseDragged(this::dragged);
    board.setOnMouseReleased(this::released);
    board.setOnScroll(this::scrolled);
    board.setOnZoom(this::pinched);
    board.setOnKeyPressed(this::key);
    Held.putsBack(board, this::cancel);
  }

  /** Returns the hand that works. */
  Hand hand() {
    return hand;
  }

  /** Returns whether a hand has something to do. */
  boolean works() {
    return hand != empty;
  }

  /** Called when another hand takes over. */
  void onTake(Runnable action) {
    onTake.add(action);
  }

  /** Gives pointer and keys to another hand; the one before drops what it had begun. */
  void take(Hand next) {
    if (hand != next) {
      cancel();
      hand.putDown();
      hand = next;
      board.setHand(next, next != empty);
      if (next != empty) {
        // what a hand does, it does in the elevation
        desk.look(o -> o.withAspect(Aspect.SIDE));
      }
      board.setCursor(Cursor.DEFAULT);
      board.requestFocus();
      onTake.forEach(Runnable::run);
    }
  }

  /** Back to the empty hand; what was begun is dropped. */
  void takeNothing() {
    take(empty);
  }

  /** Puts down what is being done, if something is; returns whether something was. */
  boolean putDown() {
    boolean working = works();
    takeNothing();
    return working;
  }

  /** Undoes what the drag that goes on did; the rest of it is for nobody. */
  private void cancel() {
    if (pressed == null) {
      return;
    }
    if (!panning) {
      hand.cancel();
    }
    if (board.frame() != frame) {
      board.setFrame(frame);
    }
    pressed = null;
    panning = false;
    board.setCursor(Cursor.DEFAULT);
  }

  private void pressed(MouseEvent e) {
    board.requestFocus();
    cancel();
    pressed = Hand.px(e);
    lastPx = pressed;
    frame = board.frame();
    if (desk.isBeginning()) {
      // nothing is there yet to pan or to hold; the desk says so
      desk.drags().grab("");
      return;
    }
    panning = e.getButton() != MouseButton.PRIMARY;
    if (!panning) {
      hand.pressed(e);
    }
  }

  private void dragged(MouseEvent e) {
    PointMm now = Hand.px(e);
    if (panning) {
      board.setPointer(now);
      board.setCursor(Cursor.MOVE);
      board.setFrame(board.frame().panned(now.x() - lastPx.x(), now.z() - lastPx.z()));
    } else if (pressed != null) {
      hand.dragged(e);
    }
    lastPx = now;
  }

  private void released(MouseEvent e) {
    if (pressed != null && !desk.isBeginning()) {
      boolean click = Hand.px(e).distance(pressed) <= CLICK_PX;
      if (!panning) {
        hand.released(e, click);
      } else if (click) {
        hand.otherClick(e);
      }
    }
    pressed = null;
    panning = false;
    board.setCursor(Cursor.DEFAULT);
  }

  private void scrolled(ScrollEvent e) {
    if (e.getDeltaY() != 0) {
      double factor =
          Math.pow(
              ZOOM_STEP,
              Math.signum(e.getDeltaY())
                  * Math.min(3, Math.max(0.25, Math.abs(e.getDeltaY()) / 40)));
      board.setFrame(board.frame().zoomedAt(e.getX(), e.getY(), factor));
    }
    e.consume();
  }

  private void pinched(ZoomEvent e) {
    board.setFrame(board.frame().zoomedAt(e.getX(), e.getY(), e.getZoomFactor()));
    e.consume();
  }

  private void key(KeyEvent e) {
    if (e.isShortcutDown()) {
      return;
    }
    if (!hand.key(e) && !looked(e)) {
      return;
    }
    e.consume();
  }

  private boolean looked(KeyEvent e) {
    switch (e.getCode()) {
      case PLUS, EQUALS, ADD -> zoom(ZOOM_STEP);
      case MINUS, SUBTRACT -> zoom(1 / ZOOM_STEP);
      case DIGIT0, NUMPAD0, F -> board.fit();
      case ESCAPE -> escape();
      default -> {
        return false;
      }
    }
    return true;
  }

  private void zoom(double factor) {
    board.setFrame(board.frame().zoomedAt(board.getWidth() / 2, board.getHeight() / 2, factor));
  }

  private void escape() {
    if (works()) {
      takeNothing();
    } else {
      desk.drags().hover("");
      desk.choose("");
    }
  }

  /** Keys that the board uses, for the list of keys. */
  static List<String[]> keys() {
    return List.of(
        new String[] {"N, Shift N", "next, last pin"},
        new String[] {"Q, Shift Q", "next, last part"},
        new String[] {
          "arrows",
          "move what is picked by 1 mm or 1/16 in; Shift 10 mm or 1/2 in, Alt 0.1 mm or 0.01 in"
        },
        new String[] {"Shift click", "pick one thing more; Shift drag: all in a rectangle"},
        new String[] {"+, \u2212", "nearer, further"},
        new String[] {KeyCode.ESCAPE.getName(), "let go, pick nothing"});
  }
}
