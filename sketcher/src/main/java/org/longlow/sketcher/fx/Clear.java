package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/** What on the card is better not hidden, and how much worse than a part of its size. */
final class Clear {

  private static final double PERSON_WEIGHT = 2;
  private static final double HEAD_WEIGHT = 40;

  /** A word of the usual size is small, and says nothing once half of it is hidden. */
  private static final double WORD_WEIGHT = 20;

  /** Words are read badly where an edge runs so close to them, px where letters are usual. */
  private static final double WORD_EDGE_PX = 5;

  private Clear() {}

  /**
   * Returns parts and people, each by its box, words, and above all heads; px of the card.
   *
   * @param frame how the elevation lies there
   * @param letters how much larger than usual letters are
   */
  static List<Spots.Busy> of(BoardState shown, ViewFrame frame, double letters) {
    List<Spots.Busy> busy = new ArrayList<>();
    heads(shown, frame).forEach(head -> busy.add(new Spots.Busy(head, HEAD_WEIGHT)));
    Fitting.words(shown.drawing(), frame, letters)
        .forEach(
            word ->
                busy.add(
                    new Spots.Busy(
                        word.grown(WORD_EDGE_PX * letters), WORD_WEIGHT / (letters * letters))));
    for (Layer layer : shown.drawing().layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape && shape.style().fill() != null) {
          boolean person = shape.subject().startsWith("person:");
          if (person || shape.subject().startsWith("part:")) {
            Spots.Box box = frame.onScreen(shape.geometry().getEnvelopeInternal());
            busy.add(new Spots.Busy(box, person ? PERSON_WEIGHT : 1));
          }
        }
      }
    }
    return busy;
  }

  /** Returns the squares round the heads on the card, px. */
  static List<Spots.Box> heads(BoardState shown, ViewFrame frame) {
    return shown.heads().stream()
        .map(
            head -> {
              double r = head.radiusMm() * frame.pxPerMm();
              double x = frame.screenX(head.at().x());
              double y = frame.screenY(head.at().z());
              return new Spots.Box(x - r, y - r, 2 * r, 2 * r);
            })
        .toList();
  }
}
