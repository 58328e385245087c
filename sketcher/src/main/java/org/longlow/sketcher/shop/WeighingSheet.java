package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * The page that is filled in at two scales: planned loads of both axles beside room for what the
 * scales say, with nobody and with each who may ride; then the masses of parts.
 */
final class WeighingSheet {

  private static final double ROW_MM = 8.5;

  private static final double MAY_BE_WIDE = 0.3;

  private WeighingSheet() {}

  /**
   * What the scales should say.
   *
   * @param condition who is on it
   * @param frontKg under the front wheel, kg
   * @param rearKg under the rear wheel, kg
   */
  record Planned(Condition condition, double frontKg, double rearKg) {}

  /** Returns what can be put on two scales: the machine at rest, with nobody or somebody aboard. */
  static List<Planned> planned(Study study) {
    List<Planned> out = new ArrayList<>();
    for (Standing s : study.standings()) {
      boolean rests = s.kind() == Stance.Kind.UNLADEN || s.kind() == Stance.Kind.LADEN;
      if (s.load() != null && rests) {
        double g = Values.STANDARD_GRAVITY_MS2;
        out.add(
            new Planned(
                s.condition(), s.load().axles().frontN() / g, s.load().axles().rearN() / g));
      }
    }
    return out;
  }

  static List<PageBlock> blocks(Study study, double widthMm) {
    Units units = study.layout().units();
    List<PageBlock> out = new ArrayList<>();
    out.add(how(study, widthMm));
    List<List<String>> loads = new ArrayList<>();
    for (Planned p : planned(study)) {
      loads.add(
          List.of(
              p.condition().says(),
              kg(p.frontKg(), units),
              "",
              kg(p.rearKg(), units),
              "",
              kg(p.frontKg() + p.rearKg(), units),
              ""));
    }
    out.addAll(
        table(
            List.of(
                "Machine at rest", "Front", "weighed", "Rear", "weighed", "Together", "weighed"),
            loads,
            widthMm,
            "Axle loads, planned and weighed"));
    List<List<String>> parts = new ArrayList<>();
    for (PartShape shape : study.shapes().values()) {
      parts.add(
          List.of(
              shape.part().name(),
              shape.massKg() > 0 ? kg(shape.massKg(), units) : "not known",
              "",
              ""));
    }
    out.addAll(
        table(
            List.of("Part, both sides together", "Planned", "weighed", "Remark"),
            parts,
            widthMm,
            "Masses of parts, before they are fitted"));
    return out;
  }

  private static String kg(double kg, Units units) {
    return units.says(kg, FigureSort.MASS);
  }

  private static PageBlock how(Study study, double widthMm) {
    PageBlock.Pen pen = new PageBlock.Pen("How to weigh", widthMm);
    pen.lines(
        "A scale under each wheel, or one scale and a board as thick under the other wheel: both"
            + " wheels at one height, the machine upright, held by a finger, brakes off. Whoever"
            + " rides sits as in the drawing, feet and hands where they belong, in riding gear."
            + " Write down what is in the tank.",
        PageBlock.TEXT_MM,
        Tone.INK);
    pen.lines(
        "Where weighed and planned differ by more than the scale may err, a mass or its place is"
            + " not as drawn: weigh the parts, type in what they weigh, and look at the findings"
            + " again.",
        PageBlock.TEXT_MM,
        Tone.PENCIL);
    if (study.shapes().values().stream().anyMatch(s -> !(s.massKg() > 0))) {
      pen.lines(
          "Some masses are not known yet, so that planned loads are too small.",
          PageBlock.TEXT_MM,
          Tone.INK);
    }
    pen.down(3);
    pen.down(PageBlock.TEXT_MM);
    double step = widthMm / 4;
    int i = 0;
    for (String field : List.of("Date", "By", "Fuel", "Scales")) {
      double x = i++ * step;
      pen.mark(Mark.Words.level(field, x, pen.y(), PageBlock.TEXT_MM, Anchor.START, Tone.INK));
      double from = x + Lettering.widthMm(field, PageBlock.TEXT_MM) + 2;
      pen.mark(
          new Mark.Shape(
              "",
              Planar.line(from, pen.y() - 0.8, x + step - 4, pen.y() - 0.8),
              Style.narrow(Tone.INK)));
    }
    pen.down(3);
    return pen.done();
  }

  /** A table with room to write in; empty cells are boxes. */
  private static List<PageBlock> table(
      List<String> headings, List<List<String>> rows, double widthMm, String title) {
    List<PageBlock> out = new ArrayList<>();
    double first = widthMm * MAY_BE_WIDE;
    double other = (widthMm - first) / (headings.size() - 1);
    PageBlock head = headed(title + ", continued", headings, first, other, widthMm).done();
    for (List<String> row : rows) {
      PageBlock.Pen pen =
          out.isEmpty()
              ? headed(title, headings, first, other, widthMm)
              : new PageBlock.Pen(title, widthMm);
      row(pen, row, first, other, Tone.INK, true);
      out.add(out.isEmpty() ? pen.done() : pen.done().under(head));
    }
    return out;
  }

  private static PageBlock.Pen headed(
      String title, List<String> headings, double first, double other, double widthMm) {
    PageBlock.Pen pen = new PageBlock.Pen(title, widthMm);
    pen.lines(title, PageBlock.HEAD_MM, Tone.INK);
    row(pen, headings, first, other, Tone.PENCIL, false);
    return pen;
  }

  private static void row(
      PageBlock.Pen pen, List<String> cells, double first, double other, Tone tone, boolean boxed) {
    pen.down(ROW_MM);
    for (int i = 0; i < cells.size(); i++) {
      double x = i == 0 ? 0 : first + (i - 1) * other;
      double w = i == 0 ? first : other;
      if (boxed && cells.get(i).isEmpty()) {
        pen.box("blank", x + 0.5, pen.y() + 0.6, w - 1, ROW_MM - 1.2, Style.wide(Tone.INK));
      } else {
        String text = Lettering.fitted(Lettering.printable(cells.get(i)), PageBlock.TEXT_MM, w - 2);
        pen.mark(
            Mark.Words.level(
                text,
                i == 0 ? x : x + w - 2,
                pen.y() + ROW_MM / 2,
                PageBlock.TEXT_MM,
                i == 0 ? Anchor.CENTRE_START : Anchor.CENTRE_END,
                tone));
      }
    }
    pen.mark(
        new Mark.Shape(
            "", Planar.line(0, pen.y(), pen.widthMm(), pen.y()), Style.narrow(Tone.FAINT)));
  }
}
