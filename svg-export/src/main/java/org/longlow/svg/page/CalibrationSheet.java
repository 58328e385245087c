package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;

/**
 * The page by which a printer is measured: bars of 100 and 200 mm across and along the paper, and
 * how to measure them. The paper lies as it is fed.
 */
public final class CalibrationSheet {

  /** Printers leave an edge of 3 to 5 mm free (from memory); the long bar comes as near to it. */
  private static final double EDGE_MM = 4;

  /** How far the bars along start above the lower edge: over those across. */
  private static final double BASE_MM = 62;

  private static final double TITLE_MM = 5;
  private static final double NOTE_MM = 2.6;
  private static final double NOTE_STEP_MM = 4.6;
  private static final double NOTE_GAP_MM = 2;
  private static final double NOTES_DOWN_MM = 40;

  /** Length of a piece of roll that has room for the long bar along, mm. */
  private static final double ROLL_PIECE_MM = 297;

  private CalibrationSheet() {}

  /**
   * Returns the page. A bar for which the paper has no room is left off.
   *
   * @param correction {@link PrintCorrection#NONE} to measure the printer, or its correction to see
   *     that it serves
   * @throws IllegalArgumentException if the paper is too small for templates too
   */
  public static Page of(Paper paper, PrintCorrection correction) {
    TemplateSettings.refusal(paper)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException(why);
            });
    Paper fed = paper.roll() ? paper.piece(ROLL_PIECE_MM) : paper.portrait();
    double w = fed.widthMm();
    double h = fed.heightMm();
    double cx = w / 2;
    List<Mark> bars = new ArrayList<>();
    for (double length : new double[] {PrintCorrection.BAR_MM, PrintCorrection.LONG_BAR_MM}) {
      boolean isLong = length == PrintCorrection.LONG_BAR_MM;
      String words = String.format(Locale.ROOT, "should be %.1f mm", length);
      if (length * correction.sx() <= w - 2 * EDGE_MM) {
        bars.addAll(
            ScaleBar.bar(
                cx - length / 2,
                isLong ? 22 : 42,
                false,
                length,
                "calibration:across-" + Math.round(length),
                words,
                false));
      }
      if (BASE_MM + length * correction.sy() <= h - EDGE_MM) {
        bars.addAll(
            ScaleBar.bar(
                w - (isLong ? 18 : 38),
                BASE_MM,
                true,
                length,
                "calibration:along-" + Math.round(length),
                words,
                false));
      }
    }
    // about the middle across, so that no end of the long bar leaves the paper
    Affine place =
        Affine.move(-cx, 0)
            .then(Affine.scale(correction.sx(), correction.sy()))
            .then(Affine.move(cx, 0));
    String title = correction.isNone() ? "Calibration page" : "Calibration page, corrected";
    return new Page(
        title,
        fed,
        List.of(
            new Page.Piece(Drawing.of("", new Layer("calibration", "Bars", bars)), place, null),
            new Page.Piece(
                Drawing.of("", new Layer("notes", "Notes", notes(title, fed, correction))),
                Affine.IDENTITY,
                new Envelope(0, w, 0, h))));
  }

  private static List<Mark> notes(String title, Paper fed, PrintCorrection correction) {
    double left = 14;
    double room = (fed.widthMm() - left - 62) / 1.2;
    double y = fed.heightMm() - 22;
    List<Mark> out = new ArrayList<>();
    out.add(Mark.Words.level(title, left, y, TITLE_MM, Anchor.START, Tone.INK));
    y = fed.heightMm() - NOTES_DOWN_MM;
    for (String note : sentences(fed, correction)) {
      for (String line : Lettering.wrapped(Lettering.printable(note), NOTE_MM, room)) {
        out.add(Mark.Words.level(line, left, y, NOTE_MM, Anchor.START, Tone.INK));
        y -= NOTE_STEP_MM;
      }
      y -= NOTE_GAP_MM;
    }
    return out;
  }

  private static List<String> sentences(Paper fed, PrintCorrection correction) {
    return List.of(
        "On " + fed.label() + (correction.isNone() ? ", " : ". ") + correction.words() + ".",
        SheetNotes.ACTUAL_SIZE
            + ", nothing fitted to the page, on the paper that the templates are"
            + " to be printed on.",
        "Measure with a steel rule, from the middle of one end tick to the middle of the other: the"
            + " bar of 200 mm across and the one along. Where an end of it is missing, take the"
            + " bar of 100 mm.",
        correction.isNone()
            ? "Type both lengths under a name for this printer. Longlow then draws every template"
                + " so that it comes out true."
            : "Both should be true now. If they are not, measure a page without correction again.",
        "Paper grows and shrinks with the weather: measure again with a new packet.");
  }
}
