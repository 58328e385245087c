package org.longlow.sketcher.fx;

import java.util.List;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.PhotoEdits;
import org.longlow.sketcher.edit.Target;

/** Moves a photo by pointer or arrows. What the pointer does is one step. */
final class PhotoShift implements Hand {

  private final Board board;
  private final Desk desk;
  private final String photo;
  private final Target target;
  private PointMm from;
  private Places places;
  private PointMm pointer;

  PhotoShift(Board board, Desk desk, String photo) {
    this.board = board;
    this.desk = desk;
    this.photo = photo;
    target = new Target.OfEntry(PhotoEdits.entry(photo));
    pointer = new PointMm(board.getWidth() / 2, board.getHeight() / 2);
  }

  @Override
  public void moved(MouseEvent e) {
    pointer = Hand.px(e);
    board.paintGlass();
  }

  @Override
  public void pressed(MouseEvent e) {
    from = board.inMachine(e.getX(), e.getY());
    places = desk.shown().map(BoardState::places).orElse(null);
  }

  private Edit edit(MouseEvent e) {
    return PhotoEdits.moved(photo, places, board.inMachine(e.getX(), e.getY()).minus(from));
  }

  @Override
  public void dragged(MouseEvent e) {
    pointer = Hand.px(e);
    if (from != null && places != null) {
      desk.preview(edit(e));
    }
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    if (from != null && places != null && !click) {
      desk.settle(edit(e), target);
    }
    from = null;
  }

  @Override
  public boolean key(KeyEvent e) {
    double mm = ShownUnits.stepMm(e, ShownUnits.of(desk));
    switch (e.getCode()) {
      case LEFT -> nudge(new PointMm(-mm, 0));
      case RIGHT -> nudge(new PointMm(mm, 0));
      case UP -> nudge(new PointMm(0, mm));
      case DOWN -> nudge(new PointMm(0, -mm));
      default -> {
        return false;
      }
    }
    return true;
  }

  private void nudge(PointMm by) {
    desk.shown().ifPresent(s -> desk.edit(PhotoEdits.moved(photo, s.places(), by), target, ""));
  }

  @Override
  public String says() {
    return "drag photo " + photo + " to its place, or push it with the arrows";
  }

  @Override
  public void paint(Overlay glass) {
    glass.label(List.of(says()), pointer, from != null);
  }

  @Override
  public void cancel() {
    if (from != null) {
      from = null;
      desk.dropPreview();
    }
  }
}
