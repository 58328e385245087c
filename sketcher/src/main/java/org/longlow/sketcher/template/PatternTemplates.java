package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.machine.shop.SheetFold;
import org.longlow.constraints.shape.Allowance;
import org.longlow.constraints.shape.FlatPiece;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Skin;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Planar;

/** Sheet laid flat as templates: what is cut before it is bent, with its folds. */
final class PatternTemplates {

  private PatternTemplates() {}

  /** Returns the templates of what of a part can be laid flat and is no plain outline. */
  static List<NamedDrawing> of(PartShape shape, Places places, TemplateFigures figures) {
    return Unrolled.of(shape.part(), places).stream()
        .flatMap(u -> u.patterns().stream())
        .map(p -> drawn(Skin.of(shape.part(), places).orElseThrow(), p, places, figures))
        .toList();
  }

  private static NamedDrawing drawn(
      Skin skin, FlatPiece pattern, Places places, TemplateFigures figures) {
    String name = skin.part().name();
    boolean strip = pattern.what().equals("edge strip");
    boolean wrap = pattern.what().startsWith("wrap");
    boolean wall = pattern.what().endsWith("end");
    Allowance allowance = Allowance.of(skin.part(), places);
    TemplateSheet sheet =
        new TemplateSheet(
            name,
            name + ", " + pattern.what() + " flat",
            allowance.cut(pattern.outline()),
            strip ? "left side" : wrap ? "forward" : "up",
            strip ? "along" : wrap ? "round" : wall ? "left side" : "forward");
    CutWords.mark(allowance, sheet, pattern.outline());
    for (FlatPiece.Fold f : pattern.folds()) {
      sheet.mark(f.line(), TemplateLine.FOLD);
      Coordinate at = f.line().getCoordinate();
      sheet.note("fold " + degrees(f), at.x, at.y);
    }
    Envelope box = pattern.outline().getEnvelopeInternal();
    if (strip && box.getMinY() < 0 && box.getMaxY() > 0) {
      sheet.mark(Planar.line(box.getMinX(), 0, box.getMaxX(), 0), TemplateLine.CENTRE);
    }
    List<String> lines = new ArrayList<>();
    String material = skin.part().base().material();
    lines.add(
        (material.isEmpty() ? "" : material + " ")
            + (skin.thicknessMm() > 0 ? figures.mm(skin.thicknessMm()) : "sheet")
            + "; make "
            + pattern.count()
            + (pattern.count() > 1 ? ", half of them turned over" : ""));
    if (wall) {
      lines.add("FLAT, fits into the wrap; seen from ahead");
    } else {
      lines.add(
          "FLAT PATTERN, "
              + figures.mm(pattern.longMm())
              + (pattern.isFoldable()
                  ? " long on the middle of the sheet; this is its outer face"
                  : " long as drawn, WITHOUT what folds take; this is its outer face"));
    }
    pattern
        .faults()
        .forEach(f -> lines.addAll(TemplateWords.wrapped("TAKE CARE, " + f.in(figures.units()))));
    if (allowance.mm() != 0) {
      lines.add(CutWords.line(allowance, figures));
    }
    if (strip) {
      lines.add("from left to right it follows the outline from its first point on");
    }
    if (wrap) {
      lines.add(
          "goes all round, up the left side first, its seam in the lowest middle; add what it overlaps");
    }
    if (skin.thicknessMm() == 0) {
      lines.addAll(TemplateWords.wrapped(BreadthWords.NO_THICKNESS));
    }
    for (FlatPiece.Fold f : pattern.folds()) {
      lines.add(
          "fold at "
              + figures.mm(f.alongMm())
              + ": "
              + degrees(f)
              + (f.rad() > 0 ? " away from this face" : " towards this face"));
    }
    if (pattern.isFoldable() && !pattern.folds().isEmpty() && skin.thicknessMm() > 0) {
      lines.add(
          "inside radius "
              + figures.mm(SheetFold.insideRadiusMm(skin.thicknessMm()))
              + ", neutral at "
              + SheetFold.NEUTRAL_FACTOR
              + " of the sheet: common practice, from memory; fold a scrap first");
    }
    lines.addAll(CutWords.side(allowance, figures));
    return sheet.with(
        TemplateWords.fileName(name) + "-" + TemplateWords.fileName(pattern.what()),
        name,
        lines,
        List.of());
  }

  private static String degrees(FlatPiece.Fold f) {
    return Dimensions.figure(Math.abs(Math.toDegrees(f.rad()))) + "°";
  }
}
