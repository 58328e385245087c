package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.machine.shop.TubeCope;
import org.longlow.constraints.machine.shop.TubeEndCut;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Canvas;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Templates that are wrapped round the ends of a rail: copes, and ends that are sawn flat. */
final class WrapTemplates {

  /** Thickness of the paper that is wrapped, mm: copy paper. */
  private static final double PAPER_MM = 0.1;

  /** How far the template runs up the tube from its highest cut, mm. */
  private static final double COLLAR_MM = 40;

  /** Axes farther apart than this are told to be, mm. */
  private static final double APART_MM = 0.05;

  private static final int STEPS = 180;

  private WrapTemplates() {}

  /** Returns the templates of those ends that have a cut to be wrapped. */
  static List<NamedDrawing> of(TubePart tube, List<TubeEnd> ends, TemplateFigures figures) {
    return ends.stream()
        .filter(e -> e.cut().isPresent())
        .map(e -> template(tube, e, e.cut().get(), figures))
        .toList();
  }

  private static NamedDrawing template(
      TubePart tube, TubeEnd end, TubeEndCut cut, TemplateFigures figures) {
    double length = cut.templateLengthMm(PAPER_MM);
    double top = Double.NEGATIVE_INFINITY;
    List<PointMm> edge = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double y = cut.cutMm(2 * Math.PI * i / STEPS);
      top = Math.max(top, y);
      edge.add(new PointMm(length * i / STEPS, y));
    }
    top += COLLAR_MM;
    List<PointMm> ring = new ArrayList<>(edge);
    ring.add(new PointMm(length, top));
    ring.add(new PointMm(0, top));
    Geometry outline = Curves.polygon(ring);
    String what = end.isCope() ? "cope" : "mitre";
    String title = tube.name() + ", " + what + " at " + end.pin();
    TemplateSheet sheet = new TemplateSheet(tube.name(), title, outline, "up tube", "round");
    for (int quarter = 1; quarter < 4; quarter++) {
      double x = length * quarter / 4;
      sheet.mark(
          Planar.line(x, cut.cutMm(Math.PI / 2 * quarter), x, top),
          Style.line(Tone.PENCIL, Canvas.FINE_MM));
    }
    String to = String.join(" and ", end.to());
    List<String> lines = new ArrayList<>();
    lines.add("wrap round the end of " + tube.name() + " at " + end.pin() + ", that meets " + to);
    lines.add("both side edges meet on the acute side, the side that leans towards " + to);
    if (cut instanceof TubeCope cope) {
      coped(sheet, cope, end.sideWord(), length, top, lines, figures);
    } else {
      lines.add(end.how());
      lines.add(
          "tube Ø"
              + figures.bare(2 * cut.branchRadiusMm())
              + "; the line is a flat cut: saw it, file to the line");
    }
    lines.add(
        "upper edge is "
            + figures.mm(top)
            + (end.isCope() ? " from the axis of " + to : " from " + end.pin())
            + ", measured along the tube");
    lines.addAll(TemplateWords.cutLines(figures));
    return sheet.with(
        TemplateWords.fileName(tube.name()) + "-" + what + "-" + TemplateWords.fileName(end.pin()),
        tube.name(),
        lines,
        List.of());
  }

  private static void coped(
      TemplateSheet sheet,
      TubeCope cope,
      String side,
      double length,
      double top,
      List<String> lines,
      TemplateFigures figures) {
    boolean apart = Math.abs(cope.offsetMm()) > APART_MM;
    lines.add(
        "angle "
            + Dimensions.figure(Math.toDegrees(cope.angleRad()))
            + "°, tube Ø"
            + figures.bare(2 * cope.branchRadiusMm())
            + " onto Ø"
            + figures.bare(2 * cope.mainRadiusMm())
            + (apart ? ", axes " + figures.mm(Math.abs(cope.offsetMm())) + " apart" : ""));
    if (apart) {
      sheet.note(side, length / 4, top - COLLAR_MM / 2);
      lines.add(
          "wrap it so that the line marked " + side + " lies there, print out or in as that needs");
    }
  }
}
