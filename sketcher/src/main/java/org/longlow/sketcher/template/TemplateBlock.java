package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Compass;

/** The block of a template that says what it is: name, lines of text, a table, a compass. */
record TemplateBlock(
    String subject, String upWord, String rightWord, double turnRad, boolean brief) {

  private static final double NAME_MM = 5;
  private static final double TEXT_MM = 3;
  private static final double LINE_MM = 5.2;

  /** Longer lines are broken: half a sheet, so that the block finds room on one. */
  private static final double WIDEST_MM = 84;

  /** The same of the larger letters of the name. */
  private static final double WIDEST_TITLE_MM = 120;

  /** Sizes on a sheet that is shared, as parts of these. */
  private static final double BRIEF = 0.75;

  /** Longer words in a table are shortened. */
  private static final double CELL_MM = 30;

  private static final double COMPASS_MM = 22;

  /** Words of turned arrows stand outside of them. */
  private static final double TURNED_COMPASS_MM = 40;

  /**
   * Returns name, lines and table below each other, the compass at their left, from (0, 0) down.
   */
  List<Mark> of(String title, List<String> lines, List<List<String>> rows) {
    double wide = turnRad == 0 ? COMPASS_MM : TURNED_COMPASS_MM;
    List<Mark> out = new ArrayList<>(Compass.marks(upWord, rightWord, turnRad, wide / 2 - 1, -9));
    double size = brief ? BRIEF : 1;
    double nameMm = NAME_MM * size;
    double textMm = TEXT_MM * size;
    double lineMm = LINE_MM * size;
    double y = 0;
    for (String line : Lettering.wrapped(title, nameMm, WIDEST_TITLE_MM * size)) {
      y -= y == 0 ? nameMm : nameMm + 3;
      out.add(words(line, wide, y, nameMm));
    }
    y -= 3;
    for (String text : lines) {
      for (String line : Lettering.wrapped(text, textMm, WIDEST_MM * size)) {
        y -= lineMm;
        out.add(words(line, wide, y, textMm));
      }
    }
    List<List<String>> fitted =
        rows.stream()
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
    return out;
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
