package org.longlow.sketcher.template;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Lamps;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Planar;

/** The opening that a lamp or reflector shines through, as it is seen from where it shines to. */
final class LampAperture {

  private final LampPart lamp;
  private final Places places;
  private final TemplateFigures figures;

  private LampAperture(LampPart lamp, Places places, TemplateFigures figures) {
    this.lamp = lamp;
    this.places = places;
    this.figures = figures;
  }

  /** Returns the opening for a lamp; empty for what is none, or has no lit area. */
  static Optional<NamedDrawing> of(Part part, String in, Places places, TemplateFigures figures) {
    if (!(part instanceof LampPart lamp)) {
      return Optional.empty();
    }
    LampAperture a = new LampAperture(lamp, places, figures);
    return a.lit().getArea() > 0 ? Optional.of(a.drawn(in)) : Optional.empty();
  }

  /** Returns the name of a cowl that a part may touch, so that it sits in it; empty if none. */
  static Optional<String> cowl(Part part, Map<String, PartShape> shapes) {
    return shapes.values().stream()
        .map(PartShape::part)
        .filter(ShellPart.class::isInstance)
        .filter(
            c ->
                part.base().touches().contains(c.name())
                    || c.base().touches().contains(part.name()))
        .map(Part::name)
        .findFirst();
  }

  private boolean sideways() {
    return lamp.type() == LampPart.Kind.SIDE_REFLECTOR;
  }

  /** Where its middle lies on the sheet. */
  private PointMm middle() {
    PointMm at = places.pin(lamp.at());
    double y = places.value(lamp.y());
    return new PointMm(sideways() ? at.x() : Lamps.facesForward(lamp.type()) ? y : -y, at.z());
  }

  private Geometry lit() {
    PointMm m = middle();
    double wide = sideways() ? places.value(lamp.depth()) / 2 : places.value(lamp.halfWidth());
    double high = places.value(lamp.halfHeight());
    return Planar.rectangle(m.x() - wide, m.z() - high, m.x() + wide, m.z() + high);
  }

  private NamedDrawing drawn(String in) {
    boolean ahead = Lamps.facesForward(lamp.type());
    String from = sideways() ? "from its side" : ahead ? "from ahead" : "from behind";
    TemplateSheet sheet =
        new TemplateSheet(
            lamp.name(),
            lamp.name() + ", aperture",
            lit(),
            "up",
            sideways() ? "forward" : ahead ? "left side" : "right side");
    sheet.drill(lamp.at(), middle());
    return sheet.with(
        TemplateWords.fileName(lamp.name()) + "-aperture",
        lamp.name(),
        List.of(
            (in.isEmpty() ? "aperture" : "aperture in " + in)
                + ", make "
                + (lamp.paired() ? "2" : "1")
                + ": its lit area as seen "
                + from,
            "its middle "
                + figures.mm(places.pin(lamp.at()).z())
                + " over the ground as drawn, "
                + figures.mm(Math.abs(places.value(lamp.y())))
                + " beside the middle of the machine",
            "add what its rim takes; on a sheet that leans mark it straight " + from,
            TemplateWords.INSIDE),
        List.of());
  }
}
