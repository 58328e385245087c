package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.FormerCut;
import org.longlow.constraints.shape.FormerCuts;
import org.longlow.constraints.shape.FormerFaults;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Skin;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Words;
import org.longlow.sketcher.template.TubeBends;

/** What to cut: tubes with their bends, boards, layers of foam, sheet. */
final class CutList {

  private static final List<String> TUBES =
      List.of("Tube", "Pieces", "Section", "Cut length", "Bends, from the first end", "Material");

  private static final List<String> BOARDS = List.of("Board", "Pieces", "Thick", "Long", "Wide");

  private static final List<String> FOAM =
      List.of("Foam", "Pieces", "What", "Thick", "Long", "Wide");

  private static final List<String> FORMERS =
      List.of("Part", "Former", "Pieces", "Where", "Thick", "Wide", "High", "Skin taken off");

  private CutList() {}

  static void write(Html h, Study study) {
    List<List<String>> plain = PlainPieces.rows(study);
    Places places = study.placed().places();
    if (plain.isEmpty()
        && study.layout().parts().values().stream()
            .noneMatch(
                p -> p.traits().make().listed() || isFormed(p) || Skin.of(p, places).isPresent())) {
      return;
    }
    h.element("h2", "Cut list");
    h.element(
        "p class=\"note\"",
        "Net sizes. Add the saw's kerf, and copes at tube ends; springback and stretch by trial.");
    tubes(h, study);
    boards(h, study);
    foam(h, study);
    sheet(h, study);
    formers(h, study);
    PlainPieces.write(h, plain);
  }

  private static boolean isFormed(Part part) {
    return part instanceof Part.Outlined outlined && !outlined.formers().isEmpty();
  }

  private static void formers(Html h, Study study) {
    Places places = study.placed().places();
    FigureWords figures = FigureWords.of(study);
    List<List<String>> rows = new ArrayList<>();
    for (Part part : study.layout().parts().values()) {
      for (FormerCut cut : FormerCuts.of(part, places)) {
        Envelope box = cut.board().getEnvelopeInternal();
        rows.add(
            List.of(
                part.name(),
                cut.name(),
                part.paired() ? "2" : "1",
                (cut.across() ? "x " : "y ") + figures.mm(cut.placeMm()),
                figures.mm(cut.thicknessMm()),
                figures.mm(box.getWidth()),
                figures.mm(box.getHeight()),
                figures.mm(cut.skinMm())));
      }
    }
    table(
        h,
        "Formers",
        FORMERS,
        rows,
        "Their templates have notches, rims and how their edges lean.");
    for (Part part : study.layout().parts().values()) {
      for (FormerFaults.Fault f : FormerFaults.of(part, places)) {
        h.element(
            "p",
            "Take care, formers of " + part.name() + ": " + f.line().in(figures.units()) + ".");
      }
    }
  }

  private static void tubes(Html h, Study study) {
    Places places = study.placed().places();
    FigureWords figures = FigureWords.of(study);
    List<List<String>> rows = new ArrayList<>();
    double total = 0;
    for (TubePart tube : study.layout().parts(TubePart.class).toList()) {
      TubeBends bends = TubeBends.of(tube, places);
      int pieces = tube.both() ? 2 : 1;
      total += pieces * bends.cutMm();
      rows.add(
          List.of(
              tube.name(),
              Integer.toString(pieces),
              "Ø" + figures.tube(places.value(tube.diameter()), places.value(tube.wall())),
              figures.mm(bends.cutMm()),
              bends.bends().isEmpty() ? "straight" : bends(bends, figures),
              tube.base().material()));
    }
    table(h, "Tubes", TUBES, rows, total > 0 ? "Together " + figures.mm(total) + "." : "");
  }

  private static String bends(TubeBends bends, FigureWords figures) {
    List<String> out = new ArrayList<>();
    for (TubeBends.Bend b : bends.bends()) {
      out.add(
          FigureWords.deg(Math.abs(b.angleRad()))
              + (b.angleRad() > 0 ? " left" : " right")
              + " R"
              + figures.bareMm(b.radiusMm())
              + (b.reduced() ? " (the radius asked for does not fit)" : "")
              + " from "
              + figures.bareMm(b.startMm())
              + " to "
              + figures.bareMm(b.endMm()));
    }
    return String.join("; ", out);
  }

  private static void boards(Html h, Study study) {
    Places places = study.placed().places();
    FigureWords figures = FigureWords.of(study);
    List<List<String>> rows = new ArrayList<>();
    for (CushionPart c : study.layout().parts(CushionPart.class).toList()) {
      rows.add(
          List.of(
              c.name(),
              Integer.toString(pieces(study, c)),
              figures.mm(places.value(c.board())),
              figures.mm(length(c, places)),
              figures.mm(width(study, c))));
    }
    table(h, "Boards, plywood", BOARDS, rows, "");
  }

  private static void foam(Html h, Study study) {
    Places places = study.placed().places();
    FigureWords figures = FigureWords.of(study);
    List<List<String>> rows = new ArrayList<>();
    for (CushionPart c : study.layout().parts(CushionPart.class).toList()) {
      int number = 0;
      for (FoamSpec layer : c.layers()) {
        number++;
        rows.add(
            List.of(
                c.name(),
                Integer.toString(pieces(study, c)),
                "layer "
                    + number
                    + (number == 1 ? " (top), " : ", ")
                    + layer.name()
                    + (layer.closedCell() ? ", closed cell" : ""),
                figures.mm(places.value(layer.thickness())),
                figures.mm(length(c, places)),
                figures.mm(width(study, c))));
      }
    }
    table(
        h,
        "Foam, layer 1 is the top one",
        FOAM,
        rows,
        Words.read("Cut foam 5 to 10 mm larger all round so that the cover pulls it in.")
            .in(figures.units()));
  }

  private static void sheet(Html h, Study study) {
    SheetRows rows = new SheetRows(study);
    table(
        h,
        "Cowls, screens and what else is of sheet",
        SheetRows.HEADINGS,
        rows.all(),
        "An edge strip is as long as the middle of its sheet and fits between the sides; add what"
            + " overlaps at its ends and flanges.");
  }

  private static void table(
      Html h, String caption, List<String> headings, List<List<String>> rows, String after) {
    if (rows.isEmpty()) {
      return;
    }
    h.table("cut", caption, headings);
    rows.forEach(r -> h.row("", headings, r));
    h.closeTable();
    if (!after.isEmpty()) {
      h.element("p", after);
    }
  }

  private static List<Interval> across(Study study, CushionPart c) {
    return study.shapes().get(c.name()).prisms().stream().map(Prism::across).distinct().toList();
  }

  private static int pieces(Study study, CushionPart c) {
    return Math.max(1, across(study, c).size());
  }

  private static double width(Study study, CushionPart c) {
    return across(study, c).stream().mapToDouble(Interval::length).max().orElse(0);
  }

  private static double length(CushionPart c, Places places) {
    return places.pin(c.from()).distance(places.pin(c.to()));
  }
}
