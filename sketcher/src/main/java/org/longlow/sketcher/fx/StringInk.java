package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Tone;

/** What joins slips to the card: strings of tags, the line from a ticket, the note on units. */
final class StringInk {

  private static final double STRING_PX = 0.9;
  private static final double PICKED_PX = 1.8;
  private static final double TICKET_PX = 1.2;

  private StringInk() {}

  /**
   * Returns what is painted.
   *
   * @param ticket where the ticket lies, or null if it is not seen, px
   * @param slips what lies over the card, px
   */
  static List<Ink> of(
      Desk desk, Board board, Tags tags, Palette palette, Spots.Box ticket, List<Spots.Box> slips) {
    DrawingPainter painter = new DrawingPainter(palette, board.letters());
    Pen gc = new Pen(painter);
    BoardState shown = desk.shown().orElse(null);
    String note = Rule.note(desk.options().dimensions(), board.inches());
    if (shown != null && !note.isEmpty()) {
      List<Spots.Box> taken = new ArrayList<>(slips);
      Fitting.written(shown.drawing(), board.frame(), board.letters())
          .forEach(box -> taken.add(box.grown(1)));
      Rule.note(gc, painter, note, board.seen(), taken);
    }
    for (Tags.Cord cord : tags.strings()) {
      Tone picked = cord.picked() ? Tone.CHOSEN : Tone.BAD;
      gc.setStroke(painter.colour(tags.isStillWorking() ? Tone.PENCIL : picked));
      gc.setLineWidth(cord.picked() ? PICKED_PX : STRING_PX);
      gc.strokePolyline(
          cord.line().stream().mapToDouble(PointMm::x).toArray(),
          cord.line().stream().mapToDouble(PointMm::z).toArray(),
          cord.line().size());
    }
    Spots.Box picked =
        shown == null || ticket == null ? null : board.boxOf(shown, desk.options().chosen());
    if (picked != null) {
      gc.setStroke(painter.colour(Tone.CHOSEN));
      gc.setLineWidth(TICKET_PX);
      double x = Spots.within(picked.centreX(), ticket.x(), ticket.right());
      double y = Spots.within(picked.centreY(), ticket.y(), ticket.bottom());
      gc.strokeLine(x, y, picked.centreX(), picked.centreY());
    }
    return gc.taken();
  }
}
