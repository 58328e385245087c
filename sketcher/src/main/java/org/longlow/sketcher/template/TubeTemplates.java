package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.shape.TubeLine;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Planar;

/** A tube on paper: from the side with its bends, the card for the bender, wraps for its ends. */
final class TubeTemplates {

  private TubeTemplates() {}

  static List<NamedDrawing> of(
      TubePart tube,
      PartShape shape,
      Map<String, PartShape> shapes,
      Places places,
      TemplateFigures figures) {
    TubeBends bends = TubeBends.of(tube, places);
    List<TubeEnd> ends = TubeEnds.of(tube, shapes, places, figures);
    List<NamedDrawing> out = new ArrayList<>();
    out.add(side(tube, shape, bends, ends, places, figures));
    BendCard.of(tube, bends, ends, places, figures).ifPresent(out::add);
    out.addAll(WrapTemplates.of(tube, ends, figures));
    return out;
  }

  private static NamedDrawing side(
      TubePart tube,
      PartShape shape,
      TubeBends bends,
      List<TubeEnd> ends,
      Places places,
      TemplateFigures figures) {
    double d = places.value(tube.diameter());
    TubeLine line = TubeLine.of(tube, places);
    boolean bench = !line.isLevel() && bends.bends().isEmpty();
    List<PointMm> middle = bench ? line.laidOut() : Shapes.centreLine(tube, places);
    TemplateSheet sheet =
        new TemplateSheet(
            tube.name(),
            TemplateWords.titled(tube),
            bench ? Curves.strip(middle, d) : shape.outline(),
            "up",
            bench ? "along" : "forward");
    sheet.chain(middle);
    if (bench) {
      for (int i = 0; i < middle.size(); i++) {
        sheet.drill(tube.path().get(i), middle.get(i));
      }
    } else {
      HoleMarks.pins(sheet, shape, places);
    }
    int number = 0;
    for (TubeBends.Bend b : bends.bends()) {
      number++;
      station(sheet, b.start(), b, d, "bend " + number + " start " + figures.bare(b.startMm()));
      station(sheet, b.end(), b, d, "bend " + number + " end " + figures.bare(b.endMm()));
    }
    List<String> lines = new ArrayList<>();
    lines.add(TemplateWords.makeLine(shape));
    lines.add("tube " + figures.tube(d, places.value(tube.wall())));
    lines.addAll(TubeLength.lines(bends, ends, figures));
    if (!line.isLevel()) {
      lines.add(
          bench
              ? "it leans across the machine: drawn in its true length"
              : "it leans across the machine: seen from the side it is shorter than it is");
    }
    if (!bends.bends().isEmpty()) {
      lines.add("stations from " + tube.path().get(0) + "; its bend card says how it is bent");
    }
    if (bends.bends().stream().anyMatch(TubeBends.Bend::reduced)) {
      lines.add(TubeLength.reduced(figures.mm(places.value(tube.bendRadius()))));
    }
    lines.add(TemplateWords.massLine(shape, figures));
    return sheet.with(TemplateWords.fileName(tube.name()), tube.name(), lines, List.of());
  }

  /** Marks where a bend starts or ends by a line across the tube. */
  private static void station(
      TemplateSheet sheet, PointMm p, TubeBends.Bend bend, double d, String text) {
    PointMm corner = bend.start().towards(bend.end(), 0.5);
    PointMm way = p.equals(bend.start()) ? bend.in() : bend.out();
    PointMm along = way.times(1 / Math.max(1e-9, way.length()));
    PointMm side = along.left().times(0.5 * d + 4);
    PointMm a = p.plus(side);
    PointMm b = p.minus(side);
    sheet.mark(Planar.line(a.x(), a.z(), b.x(), b.z()), TemplateLine.BEND);
    boolean outer = a.distance(corner) > b.distance(corner);
    sheet.note(text, List.of(outer ? a : b, outer ? b : a));
  }
}
