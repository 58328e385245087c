package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.machine.shop.TubeCope;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Canvas;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Wrap-round templates for the ends of rails that meet the side of another rail.
 *
 * <p>Both tubes lie in planes parallel to the elevation, so the distance between their axes is the
 * difference of their places across the machine. An end counts as a joint when it lies within the
 * main tube's radius of its centre line, away from that tube's own ends; corner joints of two ends
 * are a matter for the saw.
 */
final class CopeTemplates {

  /** Thickness of the paper that is wrapped, mm: copy paper. */
  private static final double PAPER_MM = 0.1;

  /** How far the template runs up the branch from the deepest cut, mm. */
  private static final double COLLAR_MM = 40;

  private static final int STEPS = 180;

  private CopeTemplates() {}

  /** Returns the templates of both ends of {@code tube}, those that meet another tube's side. */
  static List<NamedDrawing> of(
      TubePart tube, Map<String, PartShape> shapes, Places places, TemplateFigures figures) {
    List<NamedDrawing> out = new ArrayList<>();
    if (tube.traits().duty() != Duty.FRAME) {
      return out;
    }
    List<PointMm> line = Shapes.centreLine(tube, places);
    int n = line.size();
    end(tube, tube.path().get(0), line.get(0), line.get(1), shapes, places, figures, out);
    end(
        tube,
        tube.path().get(tube.path().size() - 1),
        line.get(n - 1),
        line.get(n - 2),
        shapes,
        places,
        figures,
        out);
    return out;
  }

  private static void end(
      TubePart tube,
      String pin,
      PointMm end,
      PointMm inner,
      Map<String, PartShape> shapes,
      Places places,
      TemplateFigures figures,
      List<NamedDrawing> out) {
    for (PartShape other : shapes.values()) {
      if (other.part() instanceof TubePart main
          && main.traits().duty() == Duty.FRAME
          && !main.name().equals(tube.name())) {
        PointMm along = direction(main, end, places);
        TubeCope cope = along == null ? null : cope(tube, main, inner.minus(end), along, places);
        if (cope != null) {
          out.add(template(tube, main, pin, cope, figures));
          return;
        }
      }
    }
  }

  /** Returns the direction of the main tube where an end meets its side, or null. */
  private static PointMm direction(TubePart main, PointMm end, Places places) {
    double radius = places.value(main.diameter()) / 2;
    List<PointMm> line = Shapes.centreLine(main, places);
    if (end.distance(line.get(0)) < 2 * radius
        || end.distance(line.get(line.size() - 1)) < 2 * radius) {
      return null;
    }
    for (int i = 1; i < line.size(); i++) {
      PointMm a = line.get(i - 1);
      PointMm d = line.get(i).minus(a);
      if (!(d.dot(d) > 0)) {
        continue; // two pins in one place have no direction
      }
      double share = Math.max(0, Math.min(1, end.minus(a).dot(d) / d.dot(d)));
      if (end.distance(a.plus(d.times(share))) < radius) {
        return d;
      }
    }
    return null;
  }

  /** Returns the cope, or null where the branch is too large or runs past the main tube. */
  private static TubeCope cope(
      TubePart branch, TubePart main, PointMm away, PointMm along, Places places) {
    double r = places.value(branch.diameter()) / 2;
    double inside = Math.max(0, r - places.value(branch.wall()));
    double big = places.value(main.diameter()) / 2;
    double offset = Math.abs(places.value(branch.y())) - Math.abs(places.value(main.y()));
    double turn = Math.abs(Math.atan2(along.cross(away), along.dot(away)));
    double acute = Math.min(turn, Math.PI - turn);
    // asked so that what is no number, as of a tube bent back on itself, gets no cope either
    if (!(acute >= Math.toRadians(15) && r + Math.abs(offset) <= big && r > 0)) {
      return null;
    }
    return new TubeCope(r, inside, big, acute, offset);
  }

  private static NamedDrawing template(
      TubePart branch, TubePart main, String pin, TubeCope cope, TemplateFigures figures) {
    double length = cope.templateLengthMm(PAPER_MM);
    double top = Double.NEGATIVE_INFINITY;
    List<PointMm> edge = new ArrayList<>();
    for (int i = 0; i <= STEPS; i++) {
      double phi = 2 * Math.PI * i / STEPS;
      double y = cope.cutMm(phi);
      top = Math.max(top, y);
      edge.add(new PointMm(length * i / STEPS, y));
    }
    top += COLLAR_MM;
    List<PointMm> ring = new ArrayList<>(edge);
    ring.add(new PointMm(length, top));
    ring.add(new PointMm(0, top));
    Geometry outline = Curves.polygon(ring);
    String title = branch.name() + ", cope at " + pin;
    TemplateSheet sheet = new TemplateSheet(branch.name(), title, outline, "up tube", "round");
    for (int quarter = 1; quarter < 4; quarter++) {
      double x = length * quarter / 4;
      sheet.mark(
          Planar.line(x, cope.cutMm(Math.PI / 2 * quarter), x, top),
          Style.line(Tone.PENCIL, Canvas.FINE_MM));
    }
    List<String> lines = new ArrayList<>();
    lines.add("wrap round the end of " + branch.name() + " that meets " + main.name());
    lines.add("both side edges meet on the acute side, the side that leans towards " + main.name());
    lines.add(
        "angle "
            + Dimensions.figure(Math.toDegrees(cope.angleRad()))
            + "°, tube Ø"
            + figures.bare(2 * cope.branchRadiusMm())
            + " onto Ø"
            + figures.bare(2 * cope.mainRadiusMm())
            + (Math.abs(cope.offsetMm()) > 0.05
                ? ", axes " + figures.mm(Math.abs(cope.offsetMm())) + " apart"
                : ""));
    if (Math.abs(cope.offsetMm()) > 0.05) {
      sheet.note("outboard", length / 4, top - COLLAR_MM / 2);
      lines.add("wrap it so that the line marked outboard lies outboard, print out or in");
    }
    lines.add(
        "upper edge is "
            + figures.mm(top)
            + " from the axis of "
            + main.name()
            + ", measured along the tube");
    lines.addAll(TemplateWords.cutLines(figures));
    return sheet.with(
        TemplateWords.fileName(branch.name()) + "-cope-" + TemplateWords.fileName(pin),
        branch.name(),
        lines,
        List.of());
  }
}
