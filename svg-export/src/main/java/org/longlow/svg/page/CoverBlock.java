package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Map of the sheets and how to put them together, in free room of one of them.
 *
 * @param plan which sheets there are
 * @param box where it stands, sheet mm
 * @param beside whether the map stands beside the words, else below them
 * @param notes the words
 * @param room that it was taken from
 */
record CoverBlock(
    TemplatePlan plan, Envelope box, boolean beside, List<String> notes, FreeRoom room) {

  private static final double NOTE_MM = 2.2;
  private static final double NOTE_STEP_MM = 3.7;
  private static final double NOTE_GAP_MM = 1;
  private static final double HEAD_MM = 8;
  private static final double AIR_MM = 2.5;
  private static final double MAP_WIDE_MM = 48;
  private static final double MAP_HIGH_MM = 42;

  /** Words may come out a fifth wider in a font other than the intended one. */
  private static final double FONT_RESERVE = 1.2;

  /** Widths that are tried, mm. */
  private static final double[] WIDE_MM = {150, 180, 120, 100, 84};

  /** Takes room that covers nothing; empty if a sheet has none for these words. */
  static Optional<CoverBlock> in(FreeRoom room, TemplatePlan plan, List<String> notes) {
    for (boolean beside : new boolean[] {true, false}) {
      for (double wide : WIDE_MM) {
        if (beside && wide < 2.4 * MAP_WIDE_MM) {
          continue;
        }
        double words = height(lines(notes, wordsWide(wide, beside)));
        double high =
            HEAD_MM
                + AIR_MM
                + (beside ? Math.max(words, MAP_HIGH_MM) : words + AIR_MM + MAP_HIGH_MM);
        Envelope box = room.take(wide, high, 0, 1, FreeRoom.STEP_MM, true);
        if (box != null) {
          return Optional.of(new CoverBlock(plan, box, beside, notes, room));
        }
      }
    }
    return Optional.empty();
  }

  /** Returns whether it stands on the sheet that has this room. */
  boolean in(FreeRoom other) {
    return room == other;
  }

  private static double wordsWide(double wide, boolean beside) {
    return wide - 2 * AIR_MM - (beside ? MAP_WIDE_MM + AIR_MM : 0);
  }

  private static List<List<String>> lines(List<String> notes, double wide) {
    return notes.stream()
        .map(note -> Lettering.wrapped(note, NOTE_MM, wide / FONT_RESERVE))
        .toList();
  }

  private static double height(List<List<String>> notes) {
    return NOTE_GAP_MM * (notes.size() - 1)
        + NOTE_STEP_MM * notes.stream().mapToInt(List::size).sum();
  }

  private Envelope mapBox() {
    return beside
        ? new Envelope(
            box.getMaxX() - AIR_MM - MAP_WIDE_MM,
            box.getMaxX() - AIR_MM,
            box.getMinY() + AIR_MM,
            box.getMaxY() - AIR_MM)
        : new Envelope(
            box.getMinX() + AIR_MM,
            box.getMaxX() - AIR_MM,
            box.getMinY() + AIR_MM,
            box.getMinY() + AIR_MM + MAP_HIGH_MM);
  }

  /** Returns what lies on the page, its coordinates brought there from sheet millimetres. */
  List<Page.Piece> pieces(Affine toPage) {
    SheetMap map = new SheetMap(plan, mapBox());
    List<Mark> words = new ArrayList<>();
    words.add(new Mark.Shape("sheet-map", Planar.rectangle(box), Style.line(Tone.PENCIL, 0.18)));
    double x = box.getMinX() + AIR_MM;
    double y = box.getMaxY() - 5.5;
    words.add(Mark.Words.level("How the sheets go together", x, y, 2.8, Anchor.START, Tone.INK));
    y = box.getMaxY() - HEAD_MM - NOTE_MM;
    for (List<String> note : lines(notes, wordsWide(box.getWidth(), beside))) {
      for (String text : note) {
        words.add(Mark.Words.level(text, x, y, NOTE_MM, Anchor.START, Tone.INK));
        y -= NOTE_STEP_MM;
      }
      y -= NOTE_GAP_MM;
    }
    return List.of(
        new Page.Piece(
            Drawing.of("", new Layer("sheet-map", "Sheet map", map.fields(null))), toPage, null),
        new Page.Piece(CoverSheet.outline(plan.drawing()), map.placement().then(toPage), null),
        new Page.Piece(
            Drawing.of(
                "",
                new Layer("sheet-names", "Sheet names", map.names(3.5)),
                new Layer("sheet-guide", "How to put it together", words)),
            toPage,
            null));
  }
}
