package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.PlainPiece;
import org.longlow.sketcher.template.Templates;

/** What has no template sheet because figures say all that a saw needs: these figures. */
final class PlainPieces {

  private static final List<String> HEADINGS =
      List.of("Piece", "Line to cut", "Pins on it", "What its template would say");

  private PlainPieces() {}

  /** Returns a row for each. */
  static List<List<String>> rows(Study study) {
    FigureWords figures = FigureWords.of(study);
    List<List<String>> rows = new ArrayList<>();
    for (NamedDrawing d : Templates.of(study, Set.of())) {
      d.plain().ifPresent(p -> rows.add(row(p, figures)));
    }
    return rows;
  }

  static void write(Html h, List<List<String>> rows) {
    if (rows.isEmpty()) {
      return;
    }
    h.table("plain", "Plain pieces, without a template sheet", HEADINGS);
    rows.forEach(r -> h.row("", HEADINGS, r));
    h.closeTable();
    h.element(
        "p class=\"note\"",
        "Pins of a tube are told along its middle from its first end, to its left; those of a"
            + " rectangle along its sides, from the two sides that lie farthest from where the words"
            + " lead. Name a part alone to have its sheet all the same.");
  }

  private static List<String> row(PlainPiece p, FigureWords figures) {
    String size =
        p.round()
            ? "disc Ø" + figures.mm(p.longMm())
            : figures.bareMm(p.longMm()) + " x " + figures.mm(p.wideMm());
    List<String> pins = new ArrayList<>();
    for (PlainPiece.Station s : p.pins()) {
      pins.add(
          s.pin()
              + " "
              + figures.mm(s.alongMm())
              + " "
              + s.alongWord()
              + ", "
              + figures.mm(s.acrossMm())
              + " "
              + s.acrossWord());
    }
    return List.of(p.title(), size, String.join("; ", pins), String.join("; ", p.ownLines()));
  }
}
