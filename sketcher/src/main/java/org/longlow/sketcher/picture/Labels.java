package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Mark;

/** Keeps words from lying on one another. */
public final class Labels {

  private Labels() {}

  /**
   * Returns the words, each moved to the nearest free place round where it was meant to be.
   *
   * @param denominator N of the scale 1:N the words are shown at
   */
  static List<Mark.Words> spread(List<Mark.Words> words, double denominator) {
    return spread(words, denominator, new ArrayList<>());
  }

  /** As {@link #spread(List, double)}, also clear of {@code taken}, which is added to. */
  static List<Mark.Words> spread(List<Mark.Words> words, double denominator, List<Envelope> taken) {
    List<Mark.Words> out = new ArrayList<>();
    for (Mark.Words w : words) {
      Mark.Words placed = w;
      double line = 1.5 * w.heightMm() * denominator;
      double half = 0.5 * w.widthMm() * denominator;
      search:
      for (int ring = 0; ring <= 6; ring++) {
        for (double[] d :
            new double[][] {
              {0, ring}, {0, -ring}, {1, ring}, {-1, ring}, {1, -ring}, {-1, -ring}, {-2, 0}
            }) {
          Mark.Words tried = moved(w, d[0] * half, d[1] * line);
          if (free(box(tried, denominator), taken)) {
            placed = tried;
            break search;
          }
        }
      }
      taken.add(box(placed, denominator));
      out.add(placed);
    }
    return out;
  }

  public static boolean free(Envelope box, List<Envelope> taken) {
    for (Envelope t : taken) {
      if (t.intersects(box)) {
        return false;
      }
    }
    return true;
  }

  static Mark.Words moved(Mark.Words w, double dx, double dy) {
    return new Mark.Words(
        w.subject(),
        w.text(),
        w.x() + dx,
        w.y() + dy,
        w.heightMm(),
        w.rotationDeg(),
        w.anchor(),
        w.tone());
  }

  /** Returns the box of words in drawing mm of a picture shown at 1:{@code denominator}. */
  public static Envelope box(Mark.Words w, double denominator) {
    Envelope paper =
        new Mark.Words(
                w.subject(), w.text(), 0, 0, w.heightMm(), w.rotationDeg(), w.anchor(), w.tone())
            .boxMm();
    return new Envelope(
        w.x() + paper.getMinX() * denominator,
        w.x() + paper.getMaxX() * denominator,
        w.y() + paper.getMinY() * denominator,
        w.y() + paper.getMaxY() * denominator);
  }
}
