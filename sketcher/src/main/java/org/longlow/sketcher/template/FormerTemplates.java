package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.shop.SheetFold;
import org.longlow.constraints.shape.FormerCut;
import org.longlow.constraints.shape.FormerCuts;
import org.longlow.constraints.shape.FormerFaults;
import org.longlow.constraints.shape.Local;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Planar;

/**
 * Formers as templates: what is seen on the face that the line is of, with a height over the ground
 * as datum, the middle of the machine, notches and how the edge leans.
 */
final class FormerTemplates {

  /** Judgement: edges that lean less are left square without a word. */
  private static final double BEVEL_RAD = Math.toRadians(5);

  /** Lines of the two faces nearer to each other than this are one, mm. */
  private static final double ONE_LINE_MM = 0.2;

  /** From the bottom of a notch to its name. */
  private static final double NOTE_MM = 6;

  /** Axes nearer to level than this are level. */
  private static final double LEVEL_RAD = Math.toRadians(0.05);

  private final PartShape shape;
  private final Places places;
  private final Local local;
  private final TemplateFigures figures;

  private FormerTemplates(PartShape shape, Part.Outlined part, Places places, TemplateFigures f) {
    this.shape = shape;
    this.places = places;
    this.local = Local.of(part.frame(), places);
    this.figures = f;
  }

  /** Returns the templates of the formers that a part asks for. */
  static List<NamedDrawing> of(PartShape shape, Places places, TemplateFigures figures) {
    List<FormerCut> cuts = FormerCuts.of(shape.part(), places);
    if (cuts.isEmpty()) {
      return List.of();
    }
    Part.Outlined part = (Part.Outlined) shape.part();
    FormerTemplates t = new FormerTemplates(shape, part, places, figures);
    return cuts.stream().map(t::drawn).toList();
  }

  /** Returns what the template of a part itself says of its formers. */
  static List<String> lines(Part part, Places places, TemplateFigures figures) {
    List<String> lines = new ArrayList<>();
    int n = FormerCuts.of(part, places).size();
    if (n > 0) {
      lines.add(
          n == 1
              ? "its former has a template of its own"
              : "its " + n + " formers have templates of their own");
    }
    for (FormerFaults.Fault f : FormerFaults.of(part, places)) {
      lines.addAll(TemplateWords.wrapped("TAKE CARE, " + f.line().in(figures.units())));
    }
    return lines;
  }

  private NamedDrawing drawn(FormerCut cut) {
    AffineTransformation seen = seen(cut);
    Geometry board = seen.transform(cut.board());
    String part = shape.part().name();
    TemplateSheet sheet =
        new TemplateSheet(
            part,
            part + ", " + cut.name(),
            board,
            "up",
            !cut.across() ? "forward" : cut.ahead() ? "right side" : "left side");
    Geometry run = cut.flange().map(FormerCut.Flange::fold).orElse(cut.other().getBoundary());
    TemplateLine line = cut.flange().isPresent() ? TemplateLine.FOLD : TemplateLine.BESIDE;
    within(sheet, seen.transform(run), line, board);
    datum(sheet, cut, board.getEnvelopeInternal());
    middle(sheet, cut, board.getEnvelopeInternal());
    for (FormerCut.Notch n : cut.notches()) {
      Coordinate at = new Coordinate();
      seen.transform(new Coordinate(n.at().x(), n.at().z()), at);
      Coordinate inward = board.getCentroid().getCoordinate();
      double share = Math.min(1, (n.depthMm() + NOTE_MM) / Math.max(1, at.distance(inward)));
      sheet.note(n.name(), at.x + share * (inward.x - at.x), at.y + share * (inward.y - at.y));
    }
    return sheet.with(
        TemplateWords.fileName(part) + "-" + TemplateWords.fileName(cut.name()),
        part,
        words(cut),
        List.of());
  }

  /** Across, the face with the line as it is seen; along, in the axes of the machine. */
  private AffineTransformation seen(FormerCut cut) {
    if (cut.across()) {
      return cut.ahead() ? AffineTransformation.scaleInstance(-1, 1) : new AffineTransformation();
    }
    return AffineTransformation.rotationInstance(local.turnRad())
        .translate(local.origin().x(), local.origin().z());
  }

  /** The fold or the other face's line, where it lies on the board. */
  private static void within(TemplateSheet sheet, Geometry run, TemplateLine line, Geometry board) {
    Geometry within = run.intersection(board.buffer(-ONE_LINE_MM));
    sheet.mark(within, line);
  }

  private void datum(TemplateSheet sheet, FormerCut cut, Envelope box) {
    double middle = (box.getMinY() + box.getMaxY()) / 2;
    double step = figures.stationMm();
    String axis = !cut.across() ? "x" : cut.ahead() ? "y to the right" : "y to the left";
    double up = cut.across() ? Math.cos(local.turnRad()) : 1;
    double lifted =
        cut.across() ? local.origin().z() + cut.placeMm() * Math.sin(local.turnRad()) : 0;
    if (Math.abs(up) < 0.1) {
      double z = Math.rint(middle / step) * step;
      sheet.datum(z, "z " + figures.bare(z) + " of its own axes", axis, figures);
      return;
    }
    double height = Math.rint((lifted + middle * up) / step) * step;
    double at = (height - lifted) / up;
    if (at <= box.getMinY() || at >= box.getMaxY()) {
      at = middle;
      height = lifted + middle * up;
    }
    sheet.datum(at, figures.bare(height) + " over the ground as drawn", axis, figures);
  }

  private void middle(TemplateSheet sheet, FormerCut cut, Envelope box) {
    if (cut.across() && box.getMinX() < 0 && box.getMaxX() > 0) {
      sheet.mark(Planar.line(0, box.getMinY() - 5, 0, box.getMaxY() + 5), TemplateLine.CENTRE);
      sheet.note("middle of the machine", 0, box.getMinY() + 0.8 * box.getHeight());
    }
  }

  private List<String> words(FormerCut cut) {
    List<String> lines = new ArrayList<>();
    lines.add(
        shape.part().paired() ? "make 2, one for each side, the second turned over" : "make 1");
    lines.add(place(cut));
    lines.add(face(cut));
    lines.add(
        "its own sheet "
            + figures.mm(cut.thicknessMm())
            + (cut.skinMm() > 0
                ? "; " + figures.mm(cut.skinMm()) + " of skin taken off, square to the surface"
                : "; nothing taken off for a skin"));
    for (FormerFaults.Fault f : FormerFaults.of(shape.part(), places)) {
      if (f.of().equals(cut.name())) {
        lines.addAll(TemplateWords.wrapped("TAKE CARE, " + f.says().in(figures.units())));
      }
    }
    lines.addAll(bevels(cut));
    lines.addAll(notches(cut));
    cut.flange()
        .ifPresent(
            f -> {
              lines.addAll(rim(f));
              lines.add(
                  "(neutral at "
                      + SheetFold.NEUTRAL_FACTOR
                      + " of the sheet: common practice, from memory; fold a scrap first)");
              lines.add("slit the rim to the fold where it is bent round a curve");
            });
    lines.addAll(TemplateWords.cutLines(figures));
    return lines;
  }

  /** How its rim is turned over: square, or by less where the skin leans outward. */
  private List<String> rim(FormerCut.Flange f) {
    boolean square =
        Math.max(Math.abs(f.leastRad() - Math.PI / 2), Math.abs(f.mostRad() - Math.PI / 2))
            < LEVEL_RAD;
    boolean one = f.mostRad() - f.leastRad() < LEVEL_RAD;
    String turned =
        square
            ? "square"
            : one
                ? degrees(f.leastRad())
                : "as the skin leans, from "
                    + degrees(f.leastRad())
                    + " to "
                    + degrees(f.mostRad());
    String off =
        one
            ? figures.mm(f.leastDeductionMm())
            : figures.bare(f.leastDeductionMm()) + " to " + figures.mm(f.mostDeductionMm());
    if (f.tooNarrow()) {
      off = "nothing";
    }
    return List.of(
        "FLAT SHEET: rim " + figures.mm(f.breadthMm()) + " turned over " + turned,
        "away from this face, on the dashed line; inside radius "
            + figures.mm(f.radiusMm())
            + ", "
            + off
            + " off for the fold"
            + (one && !f.tooNarrow()
                ? ", its middle "
                    + figures.mm(f.breadthMm() - f.leastDeductionMm() / 2)
                    + " inside the edge"
                : ""));
  }

  private static String degrees(double rad) {
    return Dimensions.figure(Math.toDegrees(rad)) + "°";
  }

  private String place(FormerCut cut) {
    if (!cut.across()) {
      return cut.placeMm() == 0
          ? "in the middle plane"
          : figures.mm(Math.abs(cut.placeMm()))
              + (cut.placeMm() > 0 ? " left" : " right")
              + " of the middle";
    }
    String own = "at x " + figures.mm(cut.placeMm()) + " of the part's own axes";
    double turn = local.turnRad();
    return Math.abs(Math.sin(turn)) < LEVEL_RAD
        ? own
            + ", x "
            + figures.mm(local.origin().x() + cut.placeMm() * Math.cos(turn))
            + " of the machine"
        : own
            + "; it leans "
            + Dimensions.figure(Math.abs(Math.toDegrees(turn)))
            + "° "
            + (Math.sin(turn) > 0 ? "back" : "forward");
  }

  private static String face(FormerCut cut) {
    if (cut.across()) {
      return cut.ahead()
          ? "the line is of the face seen here, which looks BACK; its sheet lies ahead of it"
          : "the line is of the face seen here, which looks FORWARD; its sheet lies behind it";
    }
    return cut.ahead()
        ? "seen from the right; the line is of this face, its sheet lies to the left of it"
        : "seen from the right; the line is of the FAR face, its sheet lies to the right of it";
  }

  private List<String> bevels(FormerCut cut) {
    List<String> lines = new ArrayList<>();
    for (FormerCut.Lean lean : cut.leans()) {
      // a rim is turned over by as much as its edge leans
      if (Math.abs(lean.rad()) < BEVEL_RAD || cut.flange().isPresent()) {
        continue;
      }
      lines.add(
          edge(cut, lean.edge())
              + " leans up to "
              + Dimensions.figure(Math.abs(Math.toDegrees(lean.rad())))
              + "°: "
              + (lean.offMm() > 0
                  ? "left square, the skin stands "
                      + figures.mm(lean.offMm())
                      + " off the other face"
                  : "plane the other face down to the line with two dots, "
                      + figures.mm(-lean.offMm())));
    }
    return lines;
  }

  private static String edge(FormerCut cut, FormerCut.Edge edge) {
    return switch (edge) {
      case TOP -> "top";
      case BOTTOM -> "bottom";
      case LEFT -> cut.across() ? "left side" : "front";
      case RIGHT -> cut.across() ? "right side" : "rear";
    };
  }

  private List<String> notches(FormerCut cut) {
    Map<String, List<FormerCut.Notch>> named =
        cut.notches().stream()
            .collect(
                Collectors.groupingBy(
                    FormerCut.Notch::name, LinkedHashMap::new, Collectors.toList()));
    List<String> lines = new ArrayList<>();
    named.forEach(
        (name, all) ->
            lines.add(
                String.format(
                    Locale.ROOT,
                    "%d %s for %s: %s along the edge, %s deep; file %s to how it runs",
                    all.size(),
                    all.size() == 1 ? "notch" : "notches",
                    name,
                    figures.bare(all.get(0).widthMm()),
                    figures.mm(all.get(0).depthMm()),
                    all.size() == 1 ? "it" : "them")));
    return lines;
  }
}
