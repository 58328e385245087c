package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Where both bars and the block of notes stand on a sheet, sheet mm.
 *
 * @param across of the bar across the sheet
 * @param along of the bar along it
 * @param notes of the block of notes
 * @param room what is left; null where nobody asks for it
 */
record SheetBlocks(Envelope across, Envelope along, Envelope notes, FreeRoom room) {

  /** Finds places that cover least of a drawing. */
  static SheetBlocks in(Drawing local, Envelope region) {
    FreeRoom room = new FreeRoom(local, region);
    Envelope across = across(room);
    Envelope along = along(room);
    Envelope notes = notes(room);
    if (notes != null && room.covered(notes) > 0) {
      // The largest block first may find room that the bars, which fit in many places, took.
      FreeRoom again = new FreeRoom(local, region);
      Envelope notes2 = notes(again);
      Envelope along2 = along(again);
      Envelope across2 = across(again);
      if (notes2 != null && along2 != null && across2 != null) {
        SheetBlocks other = new SheetBlocks(across2, along2, notes2, again);
        if (across == null
            || along == null
            || other.coveredMm() < new SheetBlocks(across, along, notes, room).coveredMm()) {
          return other;
        }
      }
    }
    if (across == null || along == null || notes == null) {
      // One block stands in the way of the next: fall back on the corners, where all three always
      // fit.
      return new SheetBlocks(
          corner(region, ScaleBar.BLOCK_LONG_MM, ScaleBar.BLOCK_SHORT_MM, 0, 0),
          corner(region, ScaleBar.BLOCK_SHORT_MM, ScaleBar.BLOCK_LONG_MM, 1, 0),
          corner(region, SheetNotes.WIDTH_MM, TemplateSettings.NOTES_HEIGHT_MM, 0, 1),
          room);
    }
    return new SheetBlocks(across, along, notes, room);
  }

  private static Envelope across(FreeRoom room) {
    return room.take(ScaleBar.BLOCK_LONG_MM, ScaleBar.BLOCK_SHORT_MM, 0, 0, false);
  }

  private static Envelope along(FreeRoom room) {
    return room.take(ScaleBar.BLOCK_SHORT_MM, ScaleBar.BLOCK_LONG_MM, 1, 0, false);
  }

  private static Envelope notes(FreeRoom room) {
    return room.take(SheetNotes.WIDTH_MM, TemplateSettings.NOTES_HEIGHT_MM, 0, 1, false);
  }

  private static Envelope corner(Envelope region, double width, double height, int right, int top) {
    double x = right == 1 ? region.getMaxX() - width : region.getMinX();
    double y = top == 1 ? region.getMaxY() - height : region.getMinY();
    return new Envelope(x, x + width, y, y + height);
  }

  /** Returns how much of the drawing lies under all three, mm of line. */
  double coveredMm() {
    return room.covered(across) + room.covered(along) + room.covered(notes);
  }

  /** Returns both bars, and the square where it is wanted and finds room. */
  List<Mark> bars(TemplateSettings settings, boolean square) {
    boolean inches = settings.lengths().inchBar();
    String measure = ScaleBar.measure(settings.correction());
    List<Mark> bars =
        new ArrayList<>(ScaleBar.across(across.getMinX(), across.getMinY(), measure, inches));
    bars.addAll(ScaleBar.along(along.getMinX(), along.getMinY(), measure, inches));
    double side = ScaleBar.SQUARE_MM + 4;
    Envelope at = square ? room.take(side, side, 1, 1, true) : null;
    if (at != null) {
      bars.addAll(ScaleBar.square(at.getMinX() + 2, at.getMinY() + 2));
    }
    return bars;
  }

  /** Returns patches of paper under all three. */
  List<Mark> backing() {
    List<Mark> out = new ArrayList<>();
    for (Envelope block : List.of(across, along, notes)) {
      out.add(new Mark.Shape("", Planar.rectangle(block), Style.area(Tone.PAPER, 1)));
    }
    return out;
  }
}
