package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Shown;

/** Pointer and keys on the board: look, pan, zoom, pick, drag, nudge. */
final class BoardHands {

  private static final double ZOOM_STEP = 1.15;
  private static final double CLICK_PX = 3;
  private static final double PAN_PX = 40;

  private final Board board;
  private final Desk desk;
  private PointMm pressed;
  private PointMm lastPx;
  private boolean panning;
  private Ground ground;
  private PointMm offset;

  BoardHands(Board board, Desk desk) {
    this.board = board;
    this.desk = desk;
    board.setOnMouseMoved(this::moved);
    board.setOnMouseExited(e -> left());
    board.setOnMousePressed(this::pressed);
    board.setOnMouseDragged(this::dragged);
    board.setOnMouseReleased(this::released);
    board.setOnScroll(this::scrolled);
    board.setOnZoom(this::pinched);
    board.setOnKeyPressed(this::key);
  }

  private static PointMm px(MouseEvent e) {
    return new PointMm(e.getX(), e.getY());
  }

  private void moved(MouseEvent e) {
    Optional<String> pin = board.pinAt(e.getX(), e.getY());
    desk.hover(pin.orElse(""));
    board.setHint(pin.isPresent() ? "" : board.subjectAt(e.getX(), e.getY()).orElse(""));
    board.setPointer(px(e));
    boolean moves =
        pin.isPresent() && desk.shown().map(s -> s.movable().contains(pin.get())).orElse(false);
    board.setCursor(moves ? Cursor.OPEN_HAND : pin.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
  }

  private void left() {
    if (pressed == null) {
      desk.hover("");
      board.setHint("");
      board.setPointer(null);
    }
  }

  private void pressed(MouseEvent e) {
    board.requestFocus();
    board.setHint("");
    pressed = px(e);
    lastPx = pressed;
    if (desk.isBeginning()) {
      // nothing is there yet to pan or to hold; the desk says so
      desk.grab("");
      return;
    }
    panning = e.getButton() != MouseButton.PRIMARY;
    Optional<String> pin = panning ? Optional.empty() : board.pinAt(e.getX(), e.getY());
    if (pin.isPresent() && desk.shown().isPresent()) {
      Shown shown = desk.shown().get();
      desk.choose("pin:" + pin.get());
      ground = shown.ground();
      // the pin keeps its distance from the pointer, and its suspension travel
      offset =
          shown
              .study()
              .placed()
              .places()
              .pin(pin.get())
              .minus(ground.toFrame(board.frame().point(e.getX(), e.getY())));
      desk.grab(pin.get());
      board.setCursor(Cursor.CLOSED_HAND);
    } else if (!panning) {
      panning = board.subjectAt(e.getX(), e.getY()).isEmpty();
    }
    board.setPointer(pressed);
  }

  private void dragged(MouseEvent e) {
    PointMm now = px(e);
    board.setPointer(now);
    if (desk.drag().isPresent()) {
      desk.moveTo(ground.toFrame(board.frame().point(e.getX(), e.getY())).plus(offset));
    } else if (panning) {
      board.setCursor(Cursor.MOVE);
      board.setFrame(board.frame().panned(now.x() - lastPx.x(), now.z() - lastPx.z()));
    }
    lastPx = now;
  }

  private void released(MouseEvent e) {
    boolean click = pressed != null && px(e).distance(pressed) <= CLICK_PX;
    if (desk.drag().isPresent()) {
      desk.letGo();
    } else if (click
        && e.getButton() == MouseButton.PRIMARY
        && board.pinAt(e.getX(), e.getY()).isEmpty()) {
      desk.choose(board.subjectAt(e.getX(), e.getY()).orElse(""));
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
    boolean used = true;
    switch (e.getCode()) {
      case PLUS, EQUALS, ADD -> zoom(ZOOM_STEP);
      case MINUS, SUBTRACT -> zoom(1 / ZOOM_STEP);
      case DIGIT0, NUMPAD0, F -> board.fit();
      case N -> step(e.isShiftDown() ? -1 : 1, true);
      case B -> step(e.isShiftDown() ? -1 : 1, false);
      case ESCAPE -> escape();
      case LEFT -> push(e, -1, 0);
      case RIGHT -> push(e, 1, 0);
      case UP -> push(e, 0, 1);
      case DOWN -> push(e, 0, -1);
      default -> used = false;
    }
    if (used) {
      e.consume();
    }
  }

  private void zoom(double factor) {
    board.setFrame(board.frame().zoomedAt(board.getWidth() / 2, board.getHeight() / 2, factor));
  }

  private void escape() {
    if (desk.drag().isPresent()) {
      desk.dropDrag();
    } else {
      desk.hover("");
      desk.choose("");
    }
  }

  /** Picks the next pin or part, and shows how a pin can move. */
  private void step(int by, boolean pins) {
    if (desk.shown().isEmpty()) {
      return;
    }
    Shown shown = desk.shown().get();
    String kind = pins ? "pin:" : "part:";
    List<String> all =
        List.copyOf(pins ? shown.layout().pins().keySet() : shown.layout().parts().keySet());
    if (all.isEmpty()) {
      return;
    }
    String chosen = desk.options().chosen();
    int now = chosen.startsWith(kind) ? all.indexOf(chosen.substring(kind.length())) : -1;
    int next = now < 0 ? (by > 0 ? 0 : all.size() - 1) : Math.floorMod(now + by, all.size());
    desk.choose(kind + all.get(next));
    if (pins) {
      PointMm at = shown.onDrawing(all.get(next));
      board.setPointer(new PointMm(board.frame().screenX(at.x()), board.frame().screenY(at.z())));
      desk.hover(all.get(next));
    } else {
      desk.hover("");
    }
  }

  /** Moves the pin that is picked by 1 mm (with Shift 10, with Alt 0.1), or else the view. */
  private void push(KeyEvent e, int right, int up) {
    String chosen = desk.options().chosen();
    if (!chosen.startsWith("pin:") || desk.shown().isEmpty()) {
      board.setFrame(board.frame().panned(-right * PAN_PX, up * PAN_PX));
      return;
    }
    String pin = chosen.substring("pin:".length());
    double step = e.isShiftDown() ? 10 : e.isAltDown() ? 0.1 : 1;
    desk.nudge(pin, new PointMm(right * step, up * step));
  }

  /** Keys that the board uses, for the list of keys. */
  static List<String[]> keys() {
    return List.of(
        new String[] {"N, Shift N", "next, last pin"},
        new String[] {"B, Shift B", "next, last part"},
        new String[] {"arrows", "move the pin picked by 1 mm; Shift 10 mm, Alt 0.1 mm"},
        new String[] {"+, \u2212, F", "nearer, further, fit"},
        new String[] {KeyCode.ESCAPE.getName(), "let go, pick nothing"});
  }
}
