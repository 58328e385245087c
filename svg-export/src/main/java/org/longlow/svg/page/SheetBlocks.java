package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Where both bars and the block of notes stand on a sheet, sheet mm.
 *
 * @param room what is left; null where nobody asks for it
 */
record SheetBlocks(Bar across, Bar along, Envelope notes, FreeRoom room) {

  /** From one place that is tried to the next for bars that are small for want of room, mm. */
  private static final double CLOSE_MM = 1.5;

  /**
   * A bar to measure by.
   *
   * @param at where; null for nowhere
   */
  record Bar(ScaleBar.Block block, Envelope at) {

    boolean isOn(FreeRoom room) {
      return room.covered(at) > 0;
    }
  }

  /** Bars that stand on glue strips, each null if it does not. */
  record Bars(Bar across, Bar along) {

    static final Bars NONE = new Bars(null, null);

    List<Envelope> all() {
      return Stream.of(across, along).filter(Objects::nonNull).map(Bar::at).toList();
    }
  }

  /**
   * Finds places that cover least of a drawing: bars first, which fit in many places, or the notes,
   * and with small bars where nothing else is free.
   *
   * @param strips bars that have a place already; each may be null
   * @param corners the region whose corners hold all three where one stands in the way of the next
   */
  static SheetBlocks in(FreeRoom room, Bars strips, Envelope corners, boolean inches) {
    SheetBlocks best = null;
    ScaleBar.Block full = ScaleBar.Block.full(inches);
    for (ScaleBar.Block bar : List.of(full, ScaleBar.Block.slim(inches))) {
      for (boolean notesFirst : new boolean[] {false, true}) {
        SheetBlocks laid = laid(room.again(), strips, bar, notesFirst);
        if (laid.isWhole() && (best == null || laid.coveredMm() < best.coveredMm())) {
          best = laid;
        }
        if (best != null && best.coveredMm() == 0) {
          return best;
        }
      }
    }
    return best != null
        ? best
        : new SheetBlocks(
            new Bar(full, corner(corners, full.longMm(), full.shortMm(), 0, 0)),
            new Bar(full, corner(corners, full.shortMm(), full.longMm(), 1, 0)),
            corner(corners, SheetNotes.WIDTH_MM, TemplateSettings.NOTES_HEIGHT_MM, 0, 1),
            room);
  }

  private static SheetBlocks laid(
      FreeRoom room, Bars strips, ScaleBar.Block bar, boolean notesFirst) {
    double step = bar.figures() ? FreeRoom.STEP_MM : CLOSE_MM;
    Envelope before = notesFirst ? notes(room, step) : null;
    Bar across =
        strips.across() != null
            ? strips.across()
            : new Bar(bar, room.take(bar.longMm(), bar.shortMm(), 0, 0, step, false));
    Bar along =
        strips.along() != null
            ? strips.along()
            : new Bar(bar, room.take(bar.shortMm(), bar.longMm(), 1, 0, step, false));
    return new SheetBlocks(across, along, notesFirst ? before : notes(room, step), room);
  }

  private static Envelope notes(FreeRoom room, double step) {
    return room.take(SheetNotes.WIDTH_MM, TemplateSettings.NOTES_HEIGHT_MM, 0, 1, step, false);
  }

  private static Envelope corner(Envelope region, double width, double height, int right, int top) {
    double x = right == 1 ? region.getMaxX() - width : region.getMinX();
    double y = top == 1 ? region.getMaxY() - height : region.getMinY();
    return new Envelope(x, x + width, y, y + height);
  }

  private boolean isWhole() {
    return across.at() != null && along.at() != null && notes != null;
  }

  /** Returns the places of all three. */
  List<Envelope> all() {
    return List.of(across.at(), along.at(), notes);
  }

  /** Returns how much of the drawing lies under all three, as {@link FreeRoom} counts it. */
  double coveredMm() {
    return all().stream().mapToDouble(room::covered).sum();
  }

  /** Returns both bars, and the square where it is wanted and finds room. */
  List<Mark> bars(TemplateSettings settings, boolean square) {
    String measure = ScaleBar.measure(settings.correction());
    Envelope a = across.at();
    Envelope b = along.at();
    List<Mark> bars =
        new ArrayList<>(ScaleBar.across(across.block(), a.getMinX(), a.getMinY(), measure));
    bars.addAll(ScaleBar.along(along.block(), b.getMinX(), b.getMinY(), measure));
    double side = ScaleBar.SQUARE_MM + 4;
    Envelope at = square ? room.take(side, side, 1, 1, FreeRoom.STEP_MM, true) : null;
    if (at != null) {
      bars.addAll(ScaleBar.square(at.getMinX() + 2, at.getMinY() + 2));
    }
    return bars;
  }

  /** Returns patches of paper under all three. */
  List<Mark> backing() {
    List<Mark> out = new ArrayList<>();
    for (Envelope block : all()) {
      out.add(new Mark.Shape("", Planar.rectangle(block), Style.area(Tone.PAPER, 1)));
    }
    return out;
  }
}
