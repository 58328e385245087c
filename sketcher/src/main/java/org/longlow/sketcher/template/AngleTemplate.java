package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.AngleLeg;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.machine.shop.SheetFold;
import org.longlow.constraints.shape.Allowance;
import org.longlow.constraints.shape.AngleFlat;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** A bracket of angle section as one flat piece: plate, fold and leg with the holes of both. */
final class AngleTemplate {

  private AngleTemplate() {}

  static NamedDrawing of(AngleFlat flat, PartShape shape, Places places, TemplateFigures figures) {
    SolidPart part = flat.part();
    Allowance allowance = Allowance.of(part, places);
    TemplateSheet sheet =
        new TemplateSheet(
            part.name(),
            part.name() + ", angle flat",
            allowance.cut(flat.outline()),
            "up",
            "forward");
    CutWords.mark(allowance, sheet, flat.outline());
    double from = flat.bendsFromMm();
    double to = flat.bendsToMm();
    sheet.mark(flat.line((from + to) / 2), TemplateLine.FOLD);
    sheet.mark(flat.line(from), TemplateLine.BEND);
    sheet.mark(flat.line(to), TemplateLine.BEND);
    PointMm beside = flat.to().plus(flat.out().times((from + to) / 2));
    sheet.note("fold 90°", beside.x(), beside.z());
    sheet.datum(DatumLine.of(shape, figures));
    HoleMarks.add(sheet, flat.holes(), figures);
    HoleMarks.pins(sheet, shape, places);
    boolean away = part.angle().turned() == AngleLeg.Side.LEFT;
    List<String> lines = new ArrayList<>();
    String material = part.base().material();
    lines.add(
        (material.isEmpty() ? "" : material + " ")
            + figures.mm(flat.sheetMm())
            + "; make "
            + (part.paired() ? "2, the second one folded the other way" : "1"));
    lines.add(
        "FLAT PATTERN: its leg is "
            + figures.mm(flat.legMm())
            + " long outside, "
            + figures.mm(flat.flatMm())
            + " past the edge here, for the fold gives "
            + figures.mm(SheetFold.deductionMm(flat.sheetMm(), AngleFlat.FOLD_RAD)));
    lines.add(
        "fold 90° "
            + (away ? "away from" : "towards")
            + " this face, which is the right one; inside radius "
            + figures.mm(SheetFold.insideRadiusMm(flat.sheetMm()))
            + ", neutral at "
            + SheetFold.NEUTRAL_FACTOR
            + " of the sheet: common practice, from memory; fold a scrap first");
    flat.faults()
        .forEach(f -> lines.addAll(TemplateWords.wrapped("TAKE CARE, " + f.in(figures.units()))));
    lines.add(CutWords.line(allowance, figures));
    lines.addAll(HoleMarks.lines(flat.rooms(), figures));
    lines.add(TemplateWords.massLine(shape, figures));
    lines.addAll(CutWords.side(allowance, figures));
    return sheet.with(TemplateWords.fileName(part.name()) + "-flat", part.name(), lines, List.of());
  }
}
