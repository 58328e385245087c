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
  static final String LINE_STAYS = "The line stays: cut just outside it";

  /** Letters of the line that names a printer, under everything else in the block. */
  private static final double NAMED_MM = 1.8;

  /** Width left of the side arrows for words. */
  private static final double WORDS_MM = 58;

  private SheetNotes() {}

  /** Returns the block with its lower left corner at (x, y). */
  static List<Mark> block(TemplatePlan plan, TemplatePlan.Sheet sheet, double x, double y) {
    List<Mark> out = new ArrayList<>();
    int all = plan.sheets().size();
    double left = x + 2;
    String name = plan.part().isBlank() ? "part without a name" : Lettering.printable(plan.part());
    out.add(
        words(
            Lettering.fitted(name, 4.5, (WIDTH_MM - 4) / 1.2),
            left,
            y + TemplateSettings.NOTES_HEIGHT_MM - 7,
            4.5,
            Tone.INK));
    out.add(
        words(
            "Sheet " + sheet.label() + ", " + sheet.number() + " of " + all,
            left,
            y + 22.5,
            3.2,
            Tone.INK));
    out.add(
        words(
            "row " + rowLetter(sheet) + ", column " + (sheet.column() + 1),
            left,
            y + 17.5,
            2.3,
            Tone.PENCIL));
    out.add(words(ACTUAL_SIZE, left, y + 12, 2.3, Tone.INK));
    out.add(words(LINE_STAYS, left, y + 7.5, 2.3, Tone.INK));
    PrintCorrection c = plan.settings().correction();
    boolean named = !c.printer().isEmpty();
    out.add(
        named
            ? words(named(c, (WIDTH_MM - 4) / 1.2), left, y + 0.9, NAMED_MM, Tone.PENCIL)
            : words(c.words(), left, y + 3, 2, Tone.PENCIL));
    out.addAll(sides(plan.settings(), x + WORDS_MM + 4, y + 4));
    if (all > 1) {
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
    out.add(
        new Mark.Shape(
            "",
            Planar.rectangle(x, y, x + WIDTH_MM, y + TemplateSettings.NOTES_HEIGHT_MM),
            Style.line(Tone.PENCIL, 0.18)));
    return out;
  }

  /** Returns the two arrows that tell which way the part lies, from (x, y) up and to the right. */
  static List<Mark> sides(TemplateSettings settings, double x, double y) {
    List<Mark> out = new ArrayList<>();
    double length = 9;
    out.add(
        new Mark.Shape(
            "", Planar.line(x, y + length, x, y, x + length, y), Style.line(Tone.INK, 0.35)));
    out.add(
        new Mark.Shape(
            "",
            Planar.polygon(x, y + length + 2.5, x - 1, y + length - 0.5, x + 1, y + length - 0.5),
            Style.area(Tone.INK, 1)));
    out.add(
        new Mark.Shape(
            "",
            Planar.polygon(x + length + 2.5, y, x + length - 0.5, y + 1, x + length - 0.5, y - 1),
            Style.area(Tone.INK, 1)));
    out.add(
        Mark.Words.level(
            Lettering.fitted(settings.upWord(), 2.3, 12),
            x + 1.6,
            y + length,
            2.3,
            Anchor.CENTRE_START,
            Tone.INK));
    out.add(
        Mark.Words.level(
            Lettering.fitted(settings.rightWord(), 2.3, 14),
            x + 1.6,
            y + 1.8,
            2.3,
            Anchor.START,
            Tone.INK));
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
