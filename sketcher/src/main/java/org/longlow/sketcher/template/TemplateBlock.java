package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Compass;

/** The block of a template that says what it is: name, lines of text, a table, a compass. */
record TemplateBlock(
    String subject, String upWord, String rightWord, double turnRad, boolean brief) {

  private static final double NAME_MM = 5;
  private static final double TEXT_MM = 3;
  private static final double LINE_MM = 5.2;

  /**
   * How a block may be set.
   *
   * @param widestMm longer lines of letters in full size are broken
   * @param size of letters, a share of the full one
   * @param columns of lines beside each other
   */
  record Setting(double widestMm, double size, int columns) {}

  /** Size of letters on a sheet that is shared, and where full ones would take one more sheet. */
  private static final double BRIEF = 0.75;

  /**
   * Broken at half a sheet, so that the block finds room on one; where it finds none, lower and
   * broader, then higher and narrower, and so again in smaller letters and in columns.
   */
  private static final List<Setting> SETTINGS =
      List.of(
          new Setting(84, 1, 1),
          new Setting(130, 1, 1),
          new Setting(64, 1, 1),
          new Setting(84, BRIEF, 1),
          new Setting(170, BRIEF, 1),
          new Setting(64, BRIEF, 1),
          new Setting(84, BRIEF, 2));

  /** The same of the larger letters of the name. */
  private static final double WIDEST_TITLE_MM = 120;

  /** Between columns. */
  private static final double GUTTER_MM = 6;

  /** Longer words in a table are shortened. */
  private static final double CELL_MM = 30;

  /** A piece of a line in the key: two periods of the longest pattern. */
  private static final double KEY_LINE_MM = 16;

  private static final double KEY_LETTERS_MM = 2.5;

  private static final double COMPASS_MM = 22;

  /** Words of turned arrows stand outside of them. */
  private static final double TURNED_COMPASS_MM = 40;

  /** Returns the ways in which it may be set, the best first. */
  List<Setting> settings() {
    return brief ? List.of(new Setting(84, BRIEF, 1)) : SETTINGS;
  }

  /**
   * Returns name, lines, table and key below each other, the compass at their left, from (0, 0)
   * down.
   */
  List<Mark> of(TemplateText text, Setting setting) {
    double widestMm = setting.widestMm();
    double size = setting.size();
    double wide = turnRad == 0 ? COMPASS_MM : TURNED_COMPASS_MM;
    List<Mark> out = new ArrayList<>(Compass.marks(upWord, rightWord, turnRad, wide / 2 - 1, -9));
    double nameMm = NAME_MM * size;
    double textMm = TEXT_MM * size;
    double lineMm = LINE_MM * size;
    double y = 0;
    for (String line : Lettering.wrapped(text.title(), nameMm, WIDEST_TITLE_MM * size)) {
      y -= y == 0 ? nameMm : nameMm + 3;
      out.add(words(line, wide, y, nameMm));
    }
    y -= 3;
    List<String> lines =
        text.lines().stream()
            .flatMap(l -> Lettering.wrapped(l, textMm, widestMm * size).stream())
            .toList();
    int high = (lines.size() + setting.columns() - 1) / setting.columns();
    for (int i = 0; i < lines.size(); i++) {
      double x = wide + i / high * (widestMm + GUTTER_MM) * size;
      out.add(words(lines.get(i), x, y - (i % high + 1) * lineMm, textMm));
    }
    y -= high * lineMm;
    List<List<String>> fitted =
        text.rows().stream()
            .map(r -> r.stream().map(c -> Lettering.fitted(c, textMm, CELL_MM * size)).toList())
            .toList();
    double[] columns = columns(fitted, textMm);
    for (List<String> row : fitted) {
      y -= lineMm;
      double x = wide;
      for (int i = 0; i < row.size(); i++) {
        out.add(words(row.get(i), x, y, textMm));
        x += columns[i];
      }
    }
    key(text.key(), wide, y, size, widestMm, out);
    return out;
  }

  /** A piece of each kind of line with its meaning, beside each other as far as there is room. */
  private void key(
      List<TemplateLine> lines,
      double left,
      double below,
      double size,
      double widestMm,
      List<Mark> out) {
    double x = left;
    double y = below - LINE_MM * size;
    for (TemplateLine line : lines) {
      double letters = KEY_LETTERS_MM * size;
      double wide = KEY_LINE_MM + 1.5 + Lettering.widthMm(line.word(), letters) + 5;
      if (x > left && x + wide > left + widestMm) {
        x = left;
        y -= LINE_MM * size;
      }
      double middle = y + letters / 2;
      out.add(
          new Mark.Shape(subject, Planar.line(x, middle, x + KEY_LINE_MM, middle), line.style()));
      out.add(words(line.word(), x + KEY_LINE_MM + 1.5, y, letters));
      x += wide;
    }
  }

  private Mark words(String text, double x, double y, double heightMm) {
    return new Mark.Words(subject, text, x, y, heightMm, 0, Anchor.START, Tone.INK);
  }

  private static double[] columns(List<List<String>> rows, double textMm) {
    int n = rows.stream().mapToInt(List::size).max().orElse(0);
    double[] out = new double[n];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        out[i] = Math.max(out[i], Lettering.widthMm(row.get(i), textMm) + 4);
      }
    }
    return out;
  }
}
