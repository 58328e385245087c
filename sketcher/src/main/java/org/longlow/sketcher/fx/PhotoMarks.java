package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import org.longlow.constraints.layout.Photo;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.photo.PhotoPlace;
import org.longlow.sketcher.photo.Pixel;
import org.longlow.svg.drawing.Tone;

/**
 * Points marked on a photo, one after another, by pointer or keys; each can be drawn elsewhere as
 * long as the hand works.
 */
final class PhotoMarks implements Hand {

  private static final double REACH_PX = 9;
  private static final double ARM_PX = 9;

  private final Board board;
  private final Desk desk;
  private final String photo;
  private final List<String> steps;
  private final String afterwards;
  private final Consumer<List<Pixel>> done;
  private final Runnable dropped;
  private final List<Pixel> marks = new ArrayList<>();
  private PointMm pointer;
  private int held = -1;
  private Pixel before;

  /**
   * @param steps what to mark, one after another
   * @param afterwards what to do once all is marked
   * @param done is told the marks, then and whenever one is drawn elsewhere
   * @param dropped is run when the marks are gone
   */
  PhotoMarks(
      Board board,
      Desk desk,
      String photo,
      List<String> steps,
      String afterwards,
      Consumer<List<Pixel>> done,
      Runnable dropped) {
    this.board = board;
    this.desk = desk;
    this.photo = photo;
    this.steps = List.copyOf(steps);
    this.afterwards = afterwards;
    this.done = done;
    this.dropped = dropped;
    pointer = new PointMm(Math.rint(board.getWidth() / 2), Math.rint(board.getHeight() / 2));
  }

  /** Returns what is marked so far. */
  List<Pixel> marks() {
    return List.copyOf(marks);
  }

  private boolean all() {
    return marks.size() == steps.size();
  }

  private Optional<PhotoPlace> place() {
    BoardState shown = desk.shown().orElse(null);
    Photo now = shown == null ? null : shown.layout().photos().get(photo);
    return now == null
        ? Optional.empty()
        : Optional.of(PhotoPlace.of(now, shown.layout(), shown.places()));
  }

  private Optional<Pixel> pixel(PointMm px) {
    return place().flatMap(p -> p.onPhoto(board.inMachine(px.x(), px.z())));
  }

  private Optional<PointMm> onScreen(Pixel mark) {
    return place().flatMap(p -> p.inMachine(mark)).map(board::onScreen);
  }

  private int near(PointMm px) {
    int nearest = -1;
    double least = REACH_PX;
    for (int i = 0; i < marks.size(); i++) {
      double d = onScreen(marks.get(i)).map(px::distance).orElse(Double.MAX_VALUE);
      if (d < least) {
        least = d;
        nearest = i;
      }
    }
    return nearest;
  }

  @Override
  public void moved(MouseEvent e) {
    point(Hand.px(e));
  }

  private void point(PointMm px) {
    pointer = px;
    board.paintGlass();
  }

  @Override
  public void pressed(MouseEvent e) {
    held = near(Hand.px(e));
    before = held < 0 ? null : marks.get(held);
    point(Hand.px(e));
  }

  @Override
  public void dragged(MouseEvent e) {
    if (held >= 0) {
      pixel(Hand.px(e)).ifPresent(p -> marks.set(held, p));
    }
    point(Hand.px(e));
  }

  @Override
  public void released(MouseEvent e, boolean click) {
    point(Hand.px(e));
    if (held >= 0 && all()) {
      tell();
    } else if (held < 0 && click) {
      mark();
    }
    held = -1;
  }

  @Override
  public void cancel() {
    if (held >= 0) {
      marks.set(held, before);
      held = -1;
    }
    board.paintGlass();
  }

  private void mark() {
    if (all()) {
      return;
    }
    pixel(pointer).ifPresent(marks::add);
    board.paintGlass();
    if (all()) {
      tell();
    }
  }

  private void tell() {
    done.accept(marks());
  }

  @Override
  public boolean key(KeyEvent e) {
    double step = e.isShiftDown() ? 20 : e.isAltDown() ? 0.25 : 2;
    switch (e.getCode()) {
      case LEFT -> point(pointer.plus(new PointMm(-step, 0)));
      case RIGHT -> point(pointer.plus(new PointMm(step, 0)));
      case UP -> point(pointer.plus(new PointMm(0, -step)));
      case DOWN -> point(pointer.plus(new PointMm(0, step)));
      case ENTER, SPACE -> mark();
      case BACK_SPACE, DELETE -> {
        if (!marks.isEmpty()) {
          marks.remove(marks.size() - 1);
          board.paintGlass();
        }
      }
      default -> {
        return false;
      }
    }
    return true;
  }

  @Override
  public void putDown() {
    dropped.run();
  }

  @Override
  public String says() {
    return all() ? afterwards : steps.get(marks.size());
  }

  @Override
  public void paint(Overlay glass) {
    Pen gc = glass.pen();
    gc.setStroke(glass.colour(Tone.CHOSEN));
    gc.setLineWidth(1.5);
    gc.setLineDashes();
    List<PointMm> at = new ArrayList<>();
    marks.forEach(m -> onScreen(m).ifPresent(at::add));
    at.forEach(p -> cross(gc, p));
    if (!all()) {
      cross(gc, pointer);
      at.add(pointer);
    }
    for (int i = 1; i < at.size(); i++) {
      line(gc, at.get(i - 1), at.get(i));
    }
    if (all() && at.size() > 2) {
      line(gc, at.get(at.size() - 1), at.get(0));
    }
    glass.label(List.of(says()), pointer, true);
  }

  private static void line(Pen gc, PointMm a, PointMm b) {
    gc.strokeLine(a.x(), a.z(), b.x(), b.z());
  }

  /** Open in the middle, so that what is marked is seen. */
  private static void cross(Pen gc, PointMm p) {
    for (int side = -1; side <= 1; side += 2) {
      gc.strokeLine(p.x() + 2 * side, p.z(), p.x() + ARM_PX * side, p.z());
      gc.strokeLine(p.x(), p.z() + 2 * side, p.x(), p.z() + ARM_PX * side);
    }
  }
}
