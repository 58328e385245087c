package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** The block of a template that says what it is: name, lines of text, a table, a compass. */
record TemplateBlock(String subject, String upWord, String rightWord) {

  private static final double NAME_MM = 5;

  private static final double TEXT_MM = 3;

  private static final double LINE_MM = 5.2;

  /** Longer lines are broken: half a sheet, so that the block finds room on one. */
  private static final double WIDEST_MM = 84;

  /** The same of the larger letters of the name. */
  private static final double WIDEST_TITLE_MM = 120;

  /** Longer words in a table are shortened. */
  private static final double CELL_MM = 30;

  private static final double COMPASS_MM = 22;

  /**
   * Returns name, lines and table below each other, the compass at their left, from (0, 0) down.
   */
  List<Mark> of(String title, List<String> lines, List<List<String>> rows) {
    List<Mark> out = new ArrayList<>(compass(4, 4 - COMPASS_MM));
    double y = 0;
    for (String line : Lettering.wrapped(title, NAME_MM, WIDEST_TITLE_MM)) {
      y -= y == 0 ? NAME_MM : NAME_MM + 3;
      out.add(words(line, COMPASS_MM, y, NAME_MM));
    }
    y -= 3;
    for (String text : lines) {
      for (String line : Lettering.wrapped(text, TEXT_MM, WIDEST_MM)) {
        y -= LINE_MM;
        out.add(words(line, COMPASS_MM, y, TEXT_MM));
      }
    }
    List<List<String>> fitted =
        rows.stream()
            .map(r -> r.stream().map(c -> Lettering.fitted(c, TEXT_MM, CELL_MM)).toList())
            .toList();
    double[] columns = columns(fitted);
    for (List<String> row : fitted) {
      y -= LINE_MM;
      double x = COMPASS_MM;
      for (int i = 0; i < row.size(); i++) {
        out.add(words(row.get(i), x, y, TEXT_MM));
        x += columns[i];
      }
    }
    return out;
  }

  private Mark words(String text, double x, double y, double heightMm) {
    return new Mark.Words(subject, text, x, y, heightMm, 0, Anchor.START, Tone.INK);
  }

  private static double[] columns(List<List<String>> rows) {
    int n = rows.stream().mapToInt(List::size).max().orElse(0);
    double[] out = new double[n];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        out[i] = Math.max(out[i], Lettering.widthMm(row.get(i), TEXT_MM) + 4);
      }
    }
    return out;
  }

  /** Two arrows: which way the sheet lies on the machine. */
  private List<Mark> compass(double x, double y) {
    List<Mark> out = new ArrayList<>();
    arrow(x, y, x, y + 13, out);
    arrow(x, y, x + 13, y, out);
    out.add(words(upWord, x + 1.6, y + 9, 2));
    out.add(words(rightWord, x + 1.6, y + 1.6, 2));
    return out;
  }

  private void arrow(double x1, double y1, double x2, double y2, List<Mark> out) {
    PointMm tip = new PointMm(x2, y2);
    PointMm d = tip.minus(new PointMm(x1, y1));
    PointMm u = d.times(1 / d.length());
    PointMm back = tip.minus(u.times(3));
    out.add(new Mark.Shape(subject, Planar.line(x1, y1, x2, y2), Style.narrow(Tone.INK)));
    out.add(
        new Mark.Shape(
            subject,
            Curves.polygon(List.of(tip, back.plus(u.left()), back.minus(u.left()))),
            Style.area(Tone.INK, 1)));
  }
}
