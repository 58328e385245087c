package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.HoleRoom;
import org.longlow.constraints.shape.Holes;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** Holes on a template: a cross at each centre and the size beside it. */
final class HoleMarks {

  /** Pins farther than this from a part's box are not shown on its template, mm. */
  private static final double PIN_REACH_MM = 40;

  private HoleMarks() {}

  static void add(TemplateSheet sheet, Part part, Places places, TemplateFigures figures) {
    if (part instanceof Part.Outlined outlined) {
      add(sheet, Holes.of(outlined.frame(), outlined.outline(), places), figures);
    }
  }

  static void add(TemplateSheet sheet, List<Holes.Placed> holes, TemplateFigures figures) {
    for (Holes.Placed placed : holes) {
      String size = size(placed, figures);
      if (!size.isEmpty()) {
        String pin = placed.hole().vertices().get(0).pin();
        boolean named = pin != null && placed.hole() instanceof Hole.Round;
        sheet.hole(Holes.area(placed.opening()), placed.centres(), named ? pin + " " + size : size);
      }
    }
  }

  private static String size(Holes.Placed placed, TemplateFigures figures) {
    double d = 2 * placed.opening().radiusMm();
    if (placed.hole() instanceof Hole.Slot) {
      double over = placed.centres().get(0).distance(placed.centres().get(1)) + d;
      return "slot " + figures.bare(over) + " x " + figures.bare(d) + drill(d, figures);
    }
    return placed.hole() instanceof Hole.Round ? "Ø " + figures.bare(d) + drill(d, figures) : "";
  }

  /** The drill that comes nearest, where the size does not say it already. */
  private static String drill(double d, TemplateFigures figures) {
    String drill = d > 0 ? figures.drill(d) : "";
    return drill.isEmpty() || drill.equals(figures.bare(d)) ? "" : ", drill " + drill;
  }

  /** Returns what a template says of its holes: how they are cut, and which stand too near. */
  static List<String> lines(Part part, Places places, TemplateFigures figures) {
    if (!(part instanceof Part.Outlined outlined)
        || outlined.outline().holes().isEmpty()
        || !outlined.outline().closed()) {
      return List.of();
    }
    Geometry within = Outlines.within(outlined.frame(), outlined.outline(), places);
    List<Holes.Placed> holes = Holes.of(outlined.frame(), outlined.outline(), places);
    return lines(HoleRoom.of(within, holes, part.base().material()), figures);
  }

  /** As the other, of what stands round holes. */
  static List<String> lines(List<HoleRoom> rooms, TemplateFigures figures) {
    if (rooms.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    lines.add("holes: cut inside their lines; Ø and slots are drilled at the crosses");
    for (HoleRoom room : rooms) {
      if (room.isTight()) {
        lines.addAll(
            TemplateWords.wrapped(
                "TAKE CARE, "
                    + figures.mm(Math.max(0, room.webMm()))
                    + " between "
                    + room.between()
                    + ": "
                    + figures.mm(room.needMm())
                    + " is common practice, from memory"));
      }
    }
    return lines;
  }

  /** Returns the pins of a part that get a drill cross: those that are no centre of a hole. */
  static List<String> without(Part part) {
    Set<String> centres =
        part.edge().map(Outline::holes).orElse(List.of()).stream()
            .filter(Hole.Round.class::isInstance)
            .map(h -> h.vertices().get(0).pin())
            .filter(p -> p != null)
            .collect(Collectors.toSet());
    return part.pins().stream().filter(p -> !centres.contains(p)).toList();
  }

  /** Marks the pins of a part that lie on it or near. */
  static void pins(TemplateSheet sheet, PartShape shape, Places places) {
    Envelope near = new Envelope(shape.outline().getEnvelopeInternal());
    near.expandBy(PIN_REACH_MM);
    for (String pin : without(shape.part())) {
      PointMm p = places.pin(pin);
      if (near.contains(p.x(), p.z())) {
        sheet.drill(pin, p);
      }
    }
  }
}
