package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * The block on every template sheet that tells which part and which sheet it is and which way it
 * lies.
 */
final class SheetNotes {

  static final double WIDTH_MM = 104;

  static final String ACTUAL_SIZE = "Print at actual size (100 %)";
  static final String LINE_STAYS = "The line stays";
  static final String UNLESS = "unless it says cut ON it";

  /** Letters of the line that names a printer, under everything else in the block. */
  private static final double NAMED_MM = 1.8;

  /** From the left to the middle of the arrows. */
  private static final double WORDS_MM = 58;

  private SheetNotes() {}

  /** Returns the block with its lower left corner at (x, y). */
  static List<Mark> block(TemplatePlan plan, TemplatePlan.Sheet sheet, double x, double y) {
    int all = plan.sheets().size();
    TemplateSettings s = plan.settings();
    List<Mark> out =
        head(
            plan.part().isBlank() ? "part without a name" : plan.part(),
            "Sheet " + sheet.label() + ", " + sheet.number() + " of " + all,
            "row " + rowLetter(sheet) + ", column " + (sheet.column() + 1) + Compass.turned(plan),
            s,
            x,
            y);
    out.addAll(Compass.marks(s.upWord(), s.rightWord(), plan.turnRad(), x + WORDS_MM, y + 12));
    if (all > 1) {
      boolean named = !s.correction().printer().isEmpty();
      SheetMap map =
          new SheetMap(
              plan,
              new Envelope(
                  x + WIDTH_MM - 25,
                  x + WIDTH_MM - 2,
                  y + (named ? 4 : 2),
                  y + TemplateSettings.NOTES_HEIGHT_MM - 8));
      out.addAll(map.fields(sheet));
    }
    return out;
  }

  /** Returns the block of a sheet that several templates share. */
  static List<Mark> shared(
      String title, int number, int of, int pieces, TemplateSettings s, double x, double y) {
    return head(
        title,
        "Sheet " + number + " of " + of,
        pieces + " pieces, each with its own name and arrows",
        s,
        x,
        y);
  }

  private static List<Mark> head(
      String name, String sheet, String place, TemplateSettings s, double x, double y) {
    List<Mark> out = new ArrayList<>();
    double left = x + 2;
    double high = TemplateSettings.NOTES_HEIGHT_MM;
    String fitted = Lettering.fitted(Lettering.printable(name), 4.5, (WIDTH_MM - 4) / 1.2);
    out.add(words(fitted, left, y + high - 7, 4.5, Tone.INK));
    out.add(words(sheet, left, y + 24, 3.2, Tone.INK));
    out.add(words(place, left, y + 20, 2.3, Tone.PENCIL));
    out.add(words(ACTUAL_SIZE, left, y + 15.4, 2.3, Tone.INK));
    if (s.cut()) {
      out.add(words(LINE_STAYS + ",", left, y + 11.4, 2.3, Tone.INK));
      out.add(words(UNLESS, left, y + 7.6, 2.3, Tone.INK));
    }
    PrintCorrection c = s.correction();
    out.add(
        c.printer().isEmpty()
            ? words(c.words(), left, y + 3, 2, Tone.PENCIL)
            : words(named(c, (WIDTH_MM - 4) / 1.2), left, y + 0.9, NAMED_MM, Tone.PENCIL));
    out.add(
        new Mark.Shape(
            "", Planar.rectangle(x, y, x + WIDTH_MM, y + high), Style.line(Tone.PENCIL, 0.18)));
    return out;
  }

  /** Returns what is corrected for a printer, its name as far as there is room. */
  private static String named(PrintCorrection c, double roomMm) {
    double rest = Lettering.widthMm(c.of("x").words(), NAMED_MM);
    String name = Lettering.fitted(Lettering.printable(c.printer()), NAMED_MM, roomMm - rest);
    return c.of(name).words();
  }

  private static String rowLetter(TemplatePlan.Sheet sheet) {
    return sheet.label().replaceAll("\\d", "");
  }

  private static Mark words(String text, double x, double y, double size, Tone tone) {
    return Mark.Words.level(text, x, y, size, Anchor.START, tone);
  }
}
