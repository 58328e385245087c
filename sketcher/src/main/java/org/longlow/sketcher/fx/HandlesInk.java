package org.longlow.sketcher.fx;

import java.util.List;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Handle;
import org.longlow.svg.drawing.Tone;

/**
 * Draws points that can be taken hold of: corners square, smooth ones round, centres as crosses.
 */
final class HandlesInk {

  private static final double HALF_PX = 4;
  private static final double PICKED_PX = 6;

  /** What is written along the lower edge keeps so far from the rule there, and others from it. */
  private static final double SAYING_PX = 12;

  private final Overlay glass;
  private final Board board;

  HandlesInk(Overlay glass, Board board) {
    this.glass = glass;
    this.board = board;
  }

  void handle(Handle handle, boolean picked) {
    PointMm px = board.onScreen(handle.at());
    Pen gc = glass.pen();
    double r = picked ? PICKED_PX : HALF_PX;
    gc.setLineWidth(picked ? 2.5 : 1.5);
    gc.setStroke(glass.colour(picked ? Tone.CHOSEN : Tone.INK));
    gc.setFill(glass.colour(handle.pin().isEmpty() ? Tone.PAPER : Tone.PENCIL));
    if (handle.of() == Handle.Of.CENTRE) {
      gc.strokeLine(px.x() - r - 2, px.z(), px.x() + r + 2, px.z());
      gc.strokeLine(px.x(), px.z() - r - 2, px.x(), px.z() + r + 2);
    } else if (handle.smooth() || handle.of() == Handle.Of.TUBE) {
      gc.fillOval(px.x() - r, px.z() - r, 2 * r, 2 * r);
      gc.strokeOval(px.x() - r, px.z() - r, 2 * r, 2 * r);
    } else {
      gc.fillRect(px.x() - r, px.z() - r, 2 * r, 2 * r);
      gc.strokeRect(px.x() - r, px.z() - r, 2 * r, 2 * r);
    }
  }

  /** Draws a corner that is not there yet. */
  void point(PointMm at) {
    handle(new Handle(Handle.Of.EDGE, List.of(), at, "", false, -1, 0), false);
  }

  /** Draws a line through points of the machine, as what is picked is drawn. */
  void line(List<PointMm> points, boolean closed) {
    Pen gc = glass.pen();
    gc.setStroke(glass.colour(Tone.CHOSEN));
    gc.setLineWidth(1.5);
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      PointMm px = board.onScreen(points.get(i));
      x[i] = px.x();
      y[i] = px.z();
    }
    if (closed) {
      gc.strokePolygon(x, y, x.length);
    } else {
      gc.strokePolyline(x, y, x.length);
    }
  }

  /** Returns where so many lines that are written along the lower edge begin, px. */
  static double sayingTopPx(Board board, int lines) {
    double letters = board.letters();
    double high = Overlay.labelHighPx(lines, letters);
    return board.getHeight() - Rule.widthPx(letters) - high - 2 * SAYING_PX;
  }

  /** Writes what to do next along the lower edge of the card. */
  void says(String words) {
    if (!words.isEmpty()) {
      double rule = Rule.widthPx(board.letters());
      PointMm corner = new PointMm(rule, board.getHeight() - rule + SAYING_PX);
      // in one line, where there is room, it lies under the road and hides no wheel
      String one = words.replace('\n', ' ');
      boolean room = glass.fitsBeside(one, corner);
      glass.label(room ? List.of(one) : List.of(words.split("\n")), corner, false);
    }
  }
}
