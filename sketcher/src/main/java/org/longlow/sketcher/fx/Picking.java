package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import javafx.scene.Cursor;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Shown;
import org.longlow.sketcher.edit.SectionPull;

/** The empty hand: picks what lies on the card, drags pins, pans the card itself. */
final class Picking implements Hand {

  private final Board board;
  private final Desk desk;
  private PointMm lastPx;
  private boolean panning;
  private boolean down;
  private Ground ground;
  private PointMm offset;
  private SectionPull pull;

  Picking(Board board, Desk desk) {
    this.board = board;
    this.desk = desk;
  }

  @Override
  public void moved(MouseEvent e) {
    Optional<String> pin = board.pinAt(e.getX(), e.getY());
    desk.hover(pin.orElse(""));
    board.setHint(pin.isPresent() ? "" : board.subjectAt(e.getX(), e.getY()).orElse(""));
    board.setPointer(BoardHands.px(e));
    boolean moves =
        pin.isPresent() && desk.shown().map(s -> s.movable().contains(pin.get())).orElse(false);
    board.setCursor(moves ? Cursor.OPEN_HAND : pin.isPresent() ? Cursor.HAND : Cursor.DEFAULT);
  }

  @Override
  public void left() {
    if (!down) {
      desk.hover("");
      board.setHint("");
      board.setPointer(null);
    }
  }

  @Override
  public void pressed(MouseEvent e) {
    board.setHint("");
    down = true;
    lastPx = BoardHands.px(e);
    Optional<String> pin = board.pinAt(e.getX(), e.getY());
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
    } else {
      Optional<String> subject = board.subjectAt(e.getX(), e.getY());
      panning = subject.isEmpty();
      pull = subject.flatMap(s -> hold(s, board.inMachine(e.getX(), e.getY()))).orElse(null);
    }
    board.setPointer(lastPx);
  }

  /** Takes hold of a section that is open, at a part of it. */
  private Optional<SectionPull> hold(String subject, PointMm at) {
    return desk.shown()
        .filter(s -> subject.startsWith("part:"))
        .flatMap(
            s ->
                SectionPull.sectionOf(s.layout(), subject.substring("part:".length()))
                    .filter(name -> s.options().stance().equals(Optional.of(Condition.open(name))))
                    .flatMap(
                        name ->
                            SectionPull.of(
                                s.layout(),
                                s.study().placed().places(),
                                name,
                                s.options().opening(),
                                at)));
  }

  @Override
  public void dragged(MouseEvent e) {
    PointMm now = BoardHands.px(e);
    board.setPointer(now);
    if (desk.drag().isPresent()) {
      desk.moveTo(ground.toFrame(board.frame().point(e.getX(), e.getY())).plus(offset));
    } else if (pull != null) {
      double opening = pull.towards(board.inMachine(e.getX(), e.getY()));
      board.setCursor(Cursor.CLOSED_HAND);
      desk.look(o -> o.withOpening(opening));
    } else if (panning) {
      board.setCursor(Cursor.MOVE);
      board.setFrame(board.frame().panned(now.x() - lastPx.x(), now.z() - lastPx.z()));
    }
    lastPx = now;
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    if (desk.drag().isPresent()) {
      desk.letGo();
    } else if (click && board.pinAt(e.getX(), e.getY()).isEmpty()) {
      desk.choose(
          board
              .subjectAt(e.getX(), e.getY())
              .or(() -> board.photoAt(e.getX(), e.getY()))
              .orElse(""));
    }
    down = false;
    panning = false;
    pull = null;
    board.setCursor(Cursor.DEFAULT);
  }

  @Override
  public void putDown() {
    if (desk.drag().isPresent()) {
      desk.dropDrag();
    }
    desk.hover("");
  }

  @Override
  public boolean key(KeyEvent e) {
    switch (e.getCode()) {
      case N -> step(e.isShiftDown() ? -1 : 1, true);
      case B -> step(e.isShiftDown() ? -1 : 1, false);
      case LEFT -> push(e, -1, 0);
      case RIGHT -> push(e, 1, 0);
      case UP -> push(e, 0, 1);
      case DOWN -> push(e, 0, -1);
      default -> {
        return false;
      }
    }
    return true;
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
      board.setFrame(board.frame().panned(-right * BoardHands.PAN_PX, up * BoardHands.PAN_PX));
      return;
    }
    String pin = chosen.substring("pin:".length());
    double step = e.isShiftDown() ? 10 : e.isAltDown() ? 0.1 : 1;
    desk.nudge(pin, new PointMm(right * step, up * step));
  }
}
