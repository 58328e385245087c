package org.longlow.sketcher.template;

import java.util.List;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.shape.Places;
import org.longlow.svg.drawing.Planar;

/**
 * The cover of a cushion, laid flat: its top, four sides as high as foam and board, and what is
 * turned under the board and stapled there. Its blank is a rectangle with a square cut out of each
 * corner, less the seam.
 */
final class CushionCover {

  /** What is turned under a board; 40 to 50 mm is common practice, from memory. */
  static final double UNDER_MM = 45;

  /** Staples from the edge of a board; 12 to 15 mm is common practice, from memory. */
  static final double STAPLES_MM = 13;

  /** Beside a seam; judgement. */
  static final double SEAM_MM = 10;

  private final CushionPart cushion;
  private final Places places;
  private final TemplateFigures figures;

  CushionCover(CushionPart cushion, Places places, TemplateFigures figures) {
    this.cushion = cushion;
    this.places = places;
    this.figures = figures;
  }

  /** Returns how high its sides are: foam and board. */
  private double sideMm() {
    return places.value(cushion.board())
        + cushion.layers().stream().mapToDouble(l -> places.value(l.thickness())).sum();
  }

  /** Returns how far it reaches beyond the top on each side. */
  double flapMm() {
    return sideMm() + UNDER_MM;
  }

  /** Returns the cover of one board so wide; its figures say all, so it has paper if asked for. */
  NamedDrawing of(double wideMm, String suffix, int count) {
    double longMm = places.pin(cushion.from()).distance(places.pin(cushion.to()));
    double side = sideMm();
    double flap = flapMm();
    double right = longMm + flap;
    double up = wideMm / 2 + flap;
    boolean pan = cushion.role() == CushionPart.Role.PAN;
    TemplateSheet sheet =
        new TemplateSheet(
            cushion.name(),
            cushion.name() + ", cover",
            Planar.rectangle(-flap, -up, right, up),
            "left side",
            pan ? "forward" : "up");
    sheet.mark(Planar.rectangle(0, -wideMm / 2, longMm, wideMm / 2), TemplateLine.FOLD);
    for (int x : new int[] {0, 1}) {
      for (int y : new int[] {-1, 1}) {
        corner(sheet, x * longMm, x == 0 ? -1 : 1, y * wideMm / 2, y, side, flap);
      }
    }
    double staples = side + STAPLES_MM;
    sheet.mark(
        Planar.rectangle(-staples, -wideMm / 2 - staples, longMm + staples, wideMm / 2 + staples)
            .getBoundary(),
        TemplateLine.STAPLES);
    double out = flap - SEAM_MM;
    return sheet.with(
        TemplateWords.fileName(cushion.name()) + "-cover" + suffix,
        cushion.name(),
        List.of(
            "cover, make " + count + ": top " + figures.bare(longMm) + " x " + figures.mm(wideMm),
            "sides "
                + figures.mm(side)
                + " high, as foam and board are; "
                + figures.mm(UNDER_MM)
                + " turned under the board (common practice, from memory)",
            "cut a square of "
                + figures.mm(out)
                + " out of each corner; seams "
                + figures.mm(SEAM_MM)
                + " beside its edges, "
                + figures.mm(side)
                + " long from the top",
            "staple " + figures.mm(STAPLES_MM) + " inside the edge of the board",
            "try it in paper or cheap cloth first: what stretches is cut smaller",
            "LINE STAYS: it is the edge of the cloth"),
        List.of());
  }

  /** The square that is cut out, and the seams beside it. */
  private static void corner(
      TemplateSheet sheet, double x, int toX, double y, int toY, double side, double flap) {
    double fromX = x + toX * SEAM_MM;
    double fromY = y + toY * SEAM_MM;
    double endX = x + toX * flap;
    double endY = y + toY * flap;
    sheet.mark(Planar.line(fromX, fromY, endX, fromY), TemplateLine.CORNER);
    sheet.mark(Planar.line(fromX, fromY, fromX, endY), TemplateLine.CORNER);
    sheet.mark(Planar.line(x, y, x + toX * side, y), TemplateLine.SEAM);
    sheet.mark(Planar.line(x, y, x, y + toY * side), TemplateLine.SEAM);
  }
}
