package org.longlow.sketcher.edit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.OutOfRange;

/**
 * Parts as in a mirror: in one that stands across the machine what is ahead comes to lie behind,
 * and left becomes right as if the part were turned round; in the middle plane left becomes right
 * alone.
 */
public final class Mirror {

  private static final double ON_LINE_MM = 1e-6;

  private Mirror() {}

  /** Returns the edit that brings parts to the other side of the machine. */
  public static Edit otherSide(Collection<String> parts) {
    return new Edit(
        "bring " + Several.called(parts) + " to the other side",
        layout -> {
          Layout turned = layout;
          for (String part : parts) {
            turned = swapped(reaching(turned, part), part);
          }
          return turned;
        });
  }

  /**
   * Returns the edit that turns parts round about an upright line of the elevation.
   *
   * @param xMm where the line is
   */
  public static Edit turnedRound(Collection<String> parts, double xMm) {
    return new Edit(
        "turn " + Several.called(parts) + " round", layout -> turnedRound(layout, parts, xMm));
  }

  /**
   * Returns where parts are best turned round: at the pin that they hang on, where that is one, or
   * half way between those that lie furthest apart.
   */
  public static double line(Layout layout, Collection<String> parts) {
    Places now = Drawn.places(layout);
    double[] x =
        Several.pins(layout, parts).stream().mapToDouble(p -> now.pin(p).x()).sorted().toArray();
    return (x[0] + x[x.length - 1]) / 2;
  }

  private static Layout turnedRound(Layout layout, Collection<String> parts, double xMm) {
    Set<String> pins = Several.pins(layout, parts);
    Places now = Drawn.places(layout);
    Map<String, Pin> mirrored = new LinkedHashMap<>();
    for (String name : pins) {
      if (Math.abs(now.pin(name).x() - xMm) > ON_LINE_MM) {
        alone(layout, name, parts);
        Pin pin = layout.pins().get(name);
        mirrored.put(name, pin.at(Shifted.mirrored(pin.x(), xMm), pin.z()));
      }
    }
    Layout turned = layout.withPins(mirrored);
    for (String part : parts) {
      turned = swapped(reversed(turned, part), part);
    }
    return turned;
  }

  private static void alone(Layout layout, String pin, Collection<String> parts) {
    for (Part other : layout.parts().values()) {
      if (!parts.contains(other.name()) && other.ownPins().contains(pin)) {
        throw new OutOfRange(
            String.format(
                "cannot be turned round alone: %s hangs on pin %s too; pick both",
                other.name(), pin));
      }
    }
  }

  /** Its shape as seen from the other side. */
  private static Layout reversed(Layout layout, String name) {
    Part part = layout.parts().get(name);
    if (part instanceof Part.AtEnd
        || part instanceof CushionPart cushion && cushion.role() != CushionPart.Role.PAN) {
      throw new OutOfRange(name + " faces one way by what it is; there is no other way round");
    }
    if (part instanceof CushionPart cushion) {
      return ends(layout, name, "from", cushion.from(), "to", cushion.to());
    }
    if (part instanceof RestPart rest && rest.to().isPresent()) {
      return ends(layout, name, "at", rest.at(), "to", rest.to().get());
    }
    if (part instanceof Part.Outlined outlined) {
      return outline(layout, outlined);
    }
    return layout;
  }

  private static Layout ends(
      Layout layout, String part, String a, String pinA, String b, String pinB) {
    return Change.set(Change.set(layout, pinB, "parts", part, a), pinA, "parts", part, b);
  }

  private static Layout outline(Layout layout, Part.Outlined part) {
    LocalAxes axes = part.frame();
    RoundAbout round = new RoundAbout(axes.along().isPresent());
    String name = part.name();
    Layout turned = Change.set(layout, round.outline(part.outline()), "parts", name, "outline");
    if (!part.breadth().stations().isEmpty()) {
      turned = Change.set(turned, round.stations(part.breadth()), "parts", name, "stations");
    }
    if (!part.bodies().isEmpty()) {
      turned =
          Change.set(
              turned, part.bodies().stream().map(round::body).toList(), "parts", name, "bodies");
    }
    if (!part.formers().isEmpty()) {
      turned = Change.set(turned, round.formers(part.formers()), "parts", name, "formers");
    }
    return axes.angle().isEmpty()
        ? turned
        : Change.set(
            turned, Shifted.negative(axes.angle().get()), "parts", part.name(), "frame", "angle");
  }

  /** What its outline, its stations and its further bodies say of left and right. */
  private static Layout reaching(Layout layout, String name) {
    if (!(layout.parts().get(name) instanceof Part.Outlined part)) {
      return layout;
    }
    Layout turned = layout;
    Outline outline = RoundAbout.otherSide(part.outline());
    if (!outline.equals(part.outline())) {
      turned = Change.set(turned, outline, "parts", name, "outline");
    }
    if (!part.breadth().stations().isEmpty()) {
      turned = Change.set(turned, RoundAbout.otherSide(part.breadth()), "parts", name, "stations");
    }
    if (!part.bodies().isEmpty()) {
      turned =
          Change.set(
              turned,
              part.bodies().stream().map(RoundAbout::otherSide).toList(),
              "parts",
              name,
              "bodies");
    }
    return turned;
  }

  /** Left becomes right. */
  private static Layout swapped(Layout layout, String name) {
    Part part = layout.parts().get(name);
    if (part == null) {
      throw new OutOfRange("there is no " + name + " among the parts");
    }
    Layout turned = layout;
    Optional<Spread> spread = part.base().spread().filter(Spread::said);
    if (spread.isPresent()) {
      turned = Change.set(turned, spread.get().right(), "parts", name, "left");
      turned = Change.set(turned, spread.get().left(), "parts", name, "right");
    }
    if (part instanceof Part.Outlined outlined && !outlined.formers().along().isEmpty()) {
      turned =
          Change.set(turned, RoundAbout.otherSide(outlined.formers()), "parts", name, "formers");
    }
    if (part instanceof WheelPart wheel && !wheel.inside().isEmpty()) {
      turned =
          Change.set(
              turned,
              wheel.inside().stream()
                  .map(b -> new HubBody(b.what(), b.radius(), b.width(), Shifted.negative(b.y())))
                  .toList(),
              "parts",
              name,
              "inside");
    }
    if (part instanceof TubePart tube && !tube.paired()) {
      turned =
          Change.set(
              turned,
              tube.corners().stream()
                  .map(c -> new TubePart.Corner(c.pin(), c.y().map(Shifted::negative)))
                  .toList(),
              "parts",
              name,
              "path");
    }
    Optional<Formula> y = sideways(part);
    return y.isEmpty() || part.paired()
        ? turned
        : Change.set(turned, Shifted.negative(y.get()), "parts", name, "y");
  }

  /** How far it is from the middle plane, where its kind says so with a sign for the side. */
  private static Optional<Formula> sideways(Part part) {
    return Document.PART.kind(part).fields().stream()
        .filter(f -> f.key().equals("y"))
        .filter(f -> f.type() instanceof Type.Quantity q && q.range().allows(-1))
        .map(f -> (Formula) f.of(part))
        .findFirst();
  }
}
