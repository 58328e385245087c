package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/**
 * Where on a picture words are read best: on no other words, and over as few of its lines as can
 * be. What was put there is taken.
 */
final class WordSpots {

  /** What it costs to lie on other words; no line costs as much. */
  private static final double ON_WORDS_COST = 1000;

  /** What it costs that a hairline that is no hatching runs through, such as an extension line. */
  private static final double STRUCK_COST = 12;

  /** A place liked less is worth so many squares with a line. */
  private static final double LIKING = 0.75;

  /** Left free between two words, paper mm. */
  private static final double AIR_MM = 0.5;

  private final double n;
  private final InkMap ink;
  private final List<Envelope> taken = new ArrayList<>();
  private final List<Envelope> hairlines = new ArrayList<>();

  /**
   * @param picture what is drawn already
   * @param denominator N of the scale 1:N it is shown at
   */
  WordSpots(Drawing picture, double denominator) {
    n = denominator;
    ink = new InkMap(picture, n);
    for (Layer layer : picture.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Words w) {
          taken.add(Labels.box(w, n));
        }
      }
    }
  }

  /** Returns the boxes of all words, drawing mm; what is added there is taken too. */
  List<Envelope> taken() {
    return taken;
  }

  /** From now on words keep off the level and upright lines among these marks, if they can. */
  void keepOff(List<Mark> marks) {
    for (Mark mark : marks) {
      if (mark instanceof Mark.Shape shape && shape.geometry() instanceof LineString line) {
        Envelope box = line.getEnvelopeInternal();
        if (box.getWidth() == 0 || box.getHeight() == 0) {
          hairlines.add(box);
        }
      }
    }
  }

  /**
   * Returns the one of several ways to write something whose words are read best, and takes its
   * place.
   *
   * @param ways the one liked best first; at least one
   * @param words of a way
   */
  <T> T best(List<T> ways, Function<T, Mark.Words> words) {
    T best = ways.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ways.size(); i++) {
      Envelope box = Labels.box(words.apply(ways.get(i)), n);
      Envelope airy = new Envelope(box);
      airy.expandBy(AIR_MM * n);
      double cost =
          LIKING * i
              + ink.under(box)
              + STRUCK_COST * hairlines.stream().filter(airy::intersects).count()
              + (Labels.free(airy, taken) ? 0 : ON_WORDS_COST);
      if (cost < least) {
        least = cost;
        best = ways.get(i);
      }
    }
    taken.add(Labels.box(words.apply(best), n));
    return best;
  }
}
