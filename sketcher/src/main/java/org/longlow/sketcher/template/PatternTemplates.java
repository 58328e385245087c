package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.machine.shop.SheetFold;
import org.longlow.constraints.shape.FlatPiece;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Sheet laid flat as templates: what is cut before it is bent, with its folds. */
final class PatternTemplates {

  private PatternTemplates() {}

  /** Returns the templates of what of a part can be laid flat and is no plain outline. */
  static List<NamedDrawing> of(PartShape shape, Places places, TemplateFigures figures) {
    if (!(shape.part() instanceof ShellPart shell)) {
      return List.of();
    }
    return Unrolled.of(shell, places).stream()
        .flatMap(u -> u.patterns().stream())
        .map(p -> drawn(shell, p, places, figures))
        .toList();
  }

  private static NamedDrawing drawn(
      ShellPart shell, FlatPiece pattern, Places places, TemplateFigures figures) {
    boolean strip = pattern.what().equals("edge strip");
    TemplateSheet sheet =
        new TemplateSheet(
            shell.name(),
            shell.name() + ", " + pattern.what() + " flat",
            pattern.outline(),
            strip ? "left side" : "up",
            strip ? "along" : "forward");
    for (FlatPiece.Fold f : pattern.folds()) {
      sheet.mark(f.line(), Style.narrow(Tone.INK).withLine(LineType.DASHED));
      Coordinate at = f.line().getCoordinate();
      sheet.note("fold " + degrees(f), at.x, at.y);
    }
    Envelope box = pattern.outline().getEnvelopeInternal();
    if (strip && box.getMinY() < 0 && box.getMaxY() > 0) {
      sheet.mark(
          Planar.line(box.getMinX(), 0, box.getMaxX(), 0),
          Style.narrow(Tone.INK).withLine(LineType.CHAIN));
    }
    List<String> lines = new ArrayList<>();
    String material = shell.base().material();
    lines.add(
        (material.isEmpty() ? "" : material + " ")
            + figures.mm(places.value(shell.thickness()))
            + "; make "
            + pattern.count()
            + (pattern.count() > 1 ? ", half of them turned over" : ""));
    lines.add(
        "FLAT PATTERN, "
            + figures.mm(pattern.longMm())
            + " long on the middle of the sheet; this is its outer face");
    if (strip) {
      lines.add("from left to right it follows the outline from its first point on");
    }
    for (FlatPiece.Fold f : pattern.folds()) {
      lines.add(
          "fold at "
              + figures.mm(f.alongMm())
              + ": "
              + degrees(f)
              + (f.rad() > 0 ? " away from this face" : " towards this face"));
    }
    if (!pattern.folds().isEmpty()) {
      lines.add(
          "inside radius "
              + figures.mm(SheetFold.insideRadiusMm(places.value(shell.thickness())))
              + ", neutral at "
              + SheetFold.NEUTRAL_FACTOR
              + " of the sheet: common practice, from memory; fold a scrap first");
    }
    lines.addAll(TemplateWords.cutLines(figures));
    return sheet.with(
        TemplateWords.fileName(shell.name()) + "-" + TemplateWords.fileName(pattern.what()),
        shell.name(),
        lines,
        List.of());
  }

  private static String degrees(FlatPiece.Fold f) {
    return Dimensions.figure(Math.abs(Math.toDegrees(f.rad()))) + "°";
  }
}
