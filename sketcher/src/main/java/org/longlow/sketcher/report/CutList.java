package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.FormerCut;
import org.longlow.constraints.shape.FormerFaults;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Words;
import org.longlow.sketcher.shop.Cuts;
import org.longlow.sketcher.shop.FlatCut;
import org.longlow.sketcher.shop.TubeCut;
import org.longlow.sketcher.template.TubeBends;

/** What to cut: tubes with their bends, boards, layers of foam, sheet. */
final class CutList {

  private static final List<String> TUBES =
      List.of("Tube", "Pieces", "Section", "Cut length", "Bends, from the first end", "Material");

  private static final List<String> BOARDS = List.of("Board", "Pieces", "Thick", "Long", "Wide");

  private static final List<String> FOAM =
      List.of("Foam", "Pieces", "What", "Thick", "Long", "Wide");

  private static final List<String> SHEET =
      List.of("Sheet", "Pieces", "What", "Thick", "Long", "Wide", "Area of one", "Material");

  private static final List<String> FORMERS =
      List.of("Part", "Former", "Pieces", "Where", "Thick", "Wide", "High", "Skin taken off");

  private CutList() {}

  static void write(Html h, Study study, Cuts cuts) {
    List<List<String>> plain = PlainPieces.rows(study);
    if (plain.isEmpty() && cuts.isEmpty()) {
      return;
    }
    FigureWords figures = FigureWords.of(study);
    h.element("h2", "Cut list");
    h.element(
        "p class=\"note\"",
        "Net sizes. Add the saw's kerf, and copes at tube ends; springback and stretch by trial.");
    tubes(h, figures, cuts);
    boards(h, figures, cuts);
    foam(h, figures, cuts);
    sheet(h, figures, cuts);
    formers(h, study, cuts);
    PlainPieces.write(h, plain);
  }

  private static void formers(Html h, Study study, Cuts cuts) {
    FigureWords figures = FigureWords.of(study);
    List<List<String>> rows = new ArrayList<>();
    for (Cuts.Former former : cuts.formers()) {
      FormerCut cut = former.cut();
      Envelope box = cut.board().getEnvelopeInternal();
      rows.add(
          List.of(
              former.part().name(),
              cut.name(),
              Integer.toString(former.pieces()),
              (cut.across() ? "x " : "y ") + figures.mm(cut.placeMm()),
              figures.mm(cut.thicknessMm()),
              figures.mm(box.getWidth()),
              figures.mm(box.getHeight()),
              figures.mm(cut.skinMm())));
    }
    table(
        h,
        "Formers",
        FORMERS,
        rows,
        "Their templates have notches, rims and how their edges lean.");
    for (Part part : study.layout().parts().values()) {
      for (FormerFaults.Fault f : FormerFaults.of(part, study.placed().places())) {
        h.element(
            "p",
            "Take care, formers of " + part.name() + ": " + f.line().in(figures.units()) + ".");
      }
    }
  }

  private static void tubes(Html h, FigureWords figures, Cuts cuts) {
    List<List<String>> rows = new ArrayList<>();
    for (TubeCut cut : cuts.tubes()) {
      TubeBends bends = cut.bends();
      rows.add(
          List.of(
              cut.part().name(),
              Integer.toString(cut.pieces()),
              "Ø" + figures.tube(cut.diameterMm(), cut.wallMm()),
              figures.mm(cut.lengthMm()),
              bends.bends().isEmpty() ? "straight" : bends(bends, figures),
              cut.material()));
    }
    double total = cuts.tubeMm();
    table(h, "Tubes", TUBES, rows, total > 0 ? "Together " + figures.mm(total) + "." : "");
  }

  private static String bends(TubeBends bends, FigureWords figures) {
    List<String> out = new ArrayList<>();
    for (TubeBends.Bend b : bends.bends()) {
      out.add(
          FigureWords.deg(Math.abs(b.angleRad()))
              + (bends.leans()
                  ? ", turned " + FigureWords.deg(b.turnRad()) + ","
                  : b.angleRad() > 0 ? " left" : " right")
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

  private static void boards(Html h, FigureWords figures, Cuts cuts) {
    List<List<String>> rows = new ArrayList<>();
    for (FlatCut c : cuts.boards()) {
      rows.add(
          List.of(
              c.part(),
              Integer.toString(c.pieces()),
              figures.mm(c.thicknessMm()),
              figures.mm(c.longMm()),
              figures.mm(c.wideMm())));
    }
    table(h, "Boards, plywood", BOARDS, rows, "");
  }

  private static void foam(Html h, FigureWords figures, Cuts cuts) {
    List<List<String>> rows = new ArrayList<>();
    for (FlatCut c : cuts.foam()) {
      rows.add(
          List.of(
              c.part(),
              Integer.toString(c.pieces()),
              c.what() + (c.grade().isEmpty() ? "" : ", " + c.grade()),
              figures.mm(c.thicknessMm()),
              figures.mm(c.longMm()),
              figures.mm(c.wideMm())));
    }
    table(
        h,
        "Foam, layer 1 is the top one",
        FOAM,
        rows,
        Words.read("Cut foam 5 to 10 mm larger all round so that the cover pulls it in.")
            .in(figures.units()));
  }

  private static void sheet(Html h, FigureWords figures, Cuts cuts) {
    List<List<String>> rows = new ArrayList<>();
    for (FlatCut c : cuts.sheet()) {
      rows.add(
          List.of(
              c.part(),
              Integer.toString(c.pieces()),
              c.what() + widths(figures, c) + folds(figures, c),
              c.thicknessMm() > 0 ? figures.mm(c.thicknessMm()) : "not said",
              figures.mm(c.longMm()),
              figures.mm(c.wideMm()),
              figures.sheet(c.areaMm2()),
              c.material()));
    }
    table(
        h,
        "Cowls, screens and what else is of sheet",
        SHEET,
        rows,
        "An edge strip is as long as the middle of its sheet and fits between the sides; add what"
            + " overlaps at its ends and flanges.");
  }

  private static String widths(FigureWords figures, FlatCut cut) {
    return cut.widths().isEmpty()
        ? ""
        : cut.widths().stream()
            .map(
                w ->
                    figures.bareMm(w.wideMm())
                        + " at "
                        + figures.bareMm(w.alongMm())
                        + " ("
                        + w.where()
                        + ")")
            .collect(Collectors.joining(", ", ", wide ", ""));
  }

  private static String folds(FigureWords figures, FlatCut cut) {
    return cut.folds().isEmpty()
        ? ""
        : cut.folds().stream()
            .map(
                f ->
                    FigureWords.deg(Math.abs(f.rad()))
                        + (f.rad() > 0 ? " inward at " : " outward at ")
                        + figures.bareMm(f.alongMm()))
            .collect(Collectors.joining(", ", ", folded ", ""));
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
}
