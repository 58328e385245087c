package org.longlow.sketcher.fx;

import java.util.List;
import javafx.scene.Node;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;

/** The card itself: photos, the drawing over them, and the rules along its edges. */
final class CardSheet {

  /** How opaque parts are over a photo, so that it is seen through them. */
  private static final double OVER_PHOTOS = 0.35;

  private final Desk desk;
  private final PhotoLayer photos;
  private final Tiles tiles = new Tiles(true);
  private final Steady steady = new Steady();

  /**
   * @param repaint is run when a photo has become ready
   */
  CardSheet(Desk desk, Runnable repaint) {
    this.desk = desk;
    photos = new PhotoLayer(desk, repaint);
  }

  Node node() {
    return tiles;
  }

  PhotoLayer photos() {
    return photos;
  }

  /** Returns how many tiles have been painted so far. */
  int painted() {
    return tiles.painted();
  }

  double wide() {
    return tiles.wide();
  }

  double high() {
    return tiles.high();
  }

  /** Takes another size, whole px. */
  void take(double wide, double high) {
    tiles.take(wide, high);
  }

  /**
   * Paints what the desk shows.
   *
   * @param seen the card without rules and what lies along its edges, px
   */
  void paint(DrawingPainter painter, ViewFrame frame, boolean inches, Spots.Box seen) {
    Pen pen = new Pen(painter);
    pen.setFill(painter.colour(Tone.PAPER));
    pen.fillRect(0, 0, wide(), high());
    desk.shown().ifPresent(s -> draw(pen, s, painter, frame, seen));
    Rule.paint(pen, painter, frame, inches, wide(), high());
    tiles.paint(pen.taken());
  }

  private void draw(
      Pen pen, BoardState shown, DrawingPainter painter, ViewFrame frame, Spots.Box seen) {
    photos.inks(shown, frame).forEach(pen::add);
    double letters = painter.letters();
    double fills = photos.shows(shown) ? OVER_PHOTOS : 1;
    Drawing drawing = shown.drawing();
    List<Mark> marks =
        shown.live() ? steady.moving(drawing, frame.pxPerMm()) : steady.exact(drawing);
    for (Mark mark : marks) {
      Mark inSight = mark instanceof Mark.Words w ? Fitting.inSight(w, frame, letters, seen) : mark;
      pen.add(MarkInk.of(painter, inSight, frame, fills, 1));
    }
  }
}
