package org.longlow.sketcher.template;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Allowance;

/** What a template shows and says of its line to cut where that is not the net outline. */
final class CutWords {

  private CutWords() {}

  /** Marks the net outline where the line to cut is another. */
  static void mark(Allowance allowance, TemplateSheet sheet, Geometry net) {
    if (allowance.mm() != 0) {
      sheet.mark(net.getBoundary(), TemplateLine.NET);
    }
  }

  /** Returns what a template says of where its line lies. */
  static String line(Allowance allowance, TemplateFigures figures) {
    double mm = allowance.mm();
    return mm == 0
        ? "line is the net outline, nothing added"
        : "line to cut lies "
            + figures.mm(Math.abs(mm))
            + (mm > 0
                ? " outside the net outline, holes are as much smaller"
                : " inside the net outline, holes are as much larger");
  }

  /** Returns on which side of its line it is cut. */
  static List<String> side(Allowance allowance, TemplateFigures figures) {
    return allowance.mm() == 0
        ? TemplateWords.cutLines(figures)
        : List.of(
            "cut ON the "
                + (allowance.mm() > 0 ? "outer" : "inner")
                + " line; the net line beside it is the finished size");
  }
}
