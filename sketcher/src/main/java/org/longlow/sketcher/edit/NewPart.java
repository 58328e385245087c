package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.LocalAxes;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Names;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** New parts whose outline was drawn point by point on the card. */
public final class NewPart {

  /** Breadth of a new plate, and of a new body, to each side of the middle plane, mm. */
  private static final double PLATE_MM = 2.5;

  private static final double BODY_MM = 100;

  private static final double SHEET_MM = 3;

  /** An outline has at least so many points. */
  public static final int FEWEST = 3;

  private NewPart() {}

  /** Returns the words of the kinds that can be drawn so. */
  public static List<String> kinds() {
    List<String> kinds = new ArrayList<>();
    for (SolidPart.Kind kind : SolidPart.Kind.values()) {
      kinds.add(Names.word(kind));
    }
    for (ShellPart.Kind kind : ShellPart.Kind.values()) {
      kinds.add(Names.word(kind));
    }
    return kinds;
  }

  /** Returns the name that a new part of a kind gets. */
  public static String name(Layout layout, String kind) {
    return Fresh.name(layout, "parts", kind);
  }

  /**
   * Returns the edit that adds a part with an outline through points. Its axes hang on a pin of its
   * own at the first of them; breadth and sheet are a beginning, to be typed over on its ticket.
   *
   * @param kind one of {@link #kinds()}
   * @param name of the new part
   * @param points in the axes of the machine, three or more
   */
  public static Edit of(String kind, String name, List<PointMm> points) {
    return new Edit(
        "draw " + name,
        layout -> {
          if (points.size() < FEWEST) {
            throw new OutOfRange(
                "an outline needs at least " + FEWEST + " points, not " + points.size());
          }
          String pin = Fresh.name(layout, "pins", name + "At");
          PointMm origin = points.get(0);
          Pin at =
              new Pin(PointEdits.mm(origin.x()), PointEdits.mm(origin.z()), false, Pin.FRAME, "");
          List<Vertex> vertices =
              points.stream().map(p -> PointEdits.written(p.minus(origin), false)).toList();
          LocalAxes axes = new LocalAxes(pin, Optional.empty(), Optional.empty());
          return layout
              .withPins(Map.of(pin, at))
              .withPart(part(kind, name, axes, new Outline.Drawn(vertices, true)));
        });
  }

  private static Part part(String kind, String name, LocalAxes axes, Outline outline) {
    for (ShellPart.Kind shell : ShellPart.Kind.values()) {
      if (Names.word(shell).equals(kind)) {
        return new ShellPart(
            base(name, BODY_MM, false),
            shell,
            axes,
            outline,
            Breadth.EVEN,
            PointEdits.mm(SHEET_MM),
            false);
      }
    }
    for (SolidPart.Kind solid : SolidPart.Kind.values()) {
      if (Names.word(solid).equals(kind)) {
        boolean plate =
            solid == SolidPart.Kind.BRACKET
                || solid == SolidPart.Kind.LEVER
                || solid == SolidPart.Kind.LATCH;
        double half = plate ? PLATE_MM : BODY_MM;
        return new SolidPart(base(name, half, solid.usuallyHot()), solid, axes, outline);
      }
    }
    throw new OutOfRange(kind + " is not drawn by an outline");
  }

  private static PartBase base(String name, double halfMm, boolean hot) {
    Spread spread = new Spread(PointEdits.mm(halfMm), PointEdits.mm(halfMm), false);
    return new PartBase(name, Optional.of(spread), Optional.empty(), "", false, hot, List.of(), "");
  }
}
