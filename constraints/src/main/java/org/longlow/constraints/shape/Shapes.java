package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.machine.Tyre;
import org.longlow.rider.geom.PointMm;

/** Builds the body of each part from where its pins are. */
public final class Shapes {

  private Shapes() {}

  /** Returns the shape of every part of {@code layout}, in its order, stands stowed. */
  public static Map<String, PartShape> of(Layout layout, Places places) {
    Map<String, PartShape> shapes = new LinkedHashMap<>();
    layout.parts().forEach((name, part) -> shapes.put(name, of(part, places, false)));
    return shapes;
  }

  /**
   * Returns the shape of one part.
   *
   * @param parked true to draw a stand with its foot on the ground
   */
  public static PartShape of(Part part, Places places, boolean parked) {
    if (part instanceof Part.Wheel wheel) {
      return wheel(wheel, places);
    }
    if (part instanceof Part.Front front) {
      return front(front, places);
    }
    if (part instanceof Part.Swingarm arm) {
      Geometry bar =
          Curves.bar(places.pin(arm.pivot()), places.pin(arm.axle()), places.value(arm.depth()));
      return filled(arm, bar, Spreads.of(arm.base(), places), places);
    }
    if (part instanceof Part.Tube tube) {
      return tube(tube, places);
    }
    if (part instanceof Part.Solid solid) {
      Geometry outline = Outlines.area(solid.frame(), solid.outline(), places);
      return filled(solid, outline, Spreads.of(solid.base(), places), places);
    }
    if (part instanceof Part.Shell shell) {
      return Shells.of(shell, places);
    }
    if (part instanceof Part.Cushion cushion) {
      return Cushions.of(cushion, places);
    }
    if (part instanceof Part.Rest rest) {
      return rest(rest, places);
    }
    if (part instanceof Part.Lamp lamp) {
      return lamp(lamp, places);
    }
    Part.Stand stand = (Part.Stand) part;
    PointMm foot = places.pin(parked ? stand.foot() : stand.stowed());
    double d = places.value(stand.diameter());
    double y = places.value(stand.y());
    Geometry leg = Curves.bar(places.pin(stand.pivot()), foot, d);
    List<Interval> across =
        stand.base().spread().isPresent()
            ? Spreads.of(stand.base(), places)
            : List.of(new Interval(y - d / 2, y + d / 2));
    return filled(stand, leg, across, places);
  }

  /** Returns the body of a part alone, stands stowed: less work than all of its shape. */
  public static List<Prism> body(Part part, Places places) {
    return part instanceof Part.Front front
        ? frontBody(front, places)
        : of(part, places, false).prisms();
  }

  private static PartShape wheel(Part.Wheel wheel, Places places) {
    Tyre tyre = Tyres.of(wheel, places);
    Geometry disc = Curves.disc(places.pin(wheel.axle()), tyre.freeRadiusMm());
    double half = tyre.widthMm() / 2;
    return filled(wheel, disc, List.of(new Interval(-half, half)), places);
  }

  private static PartShape front(Part.Front front, Places places) {
    double d = places.value(front.tube());
    List<PointMm> stem = List.of(places.pin(front.top()), places.pin(front.bottom()));
    Geometry outline = Curves.rounded(List.of(stem, legs(front, places)), d);
    List<Prism> prisms = frontBody(front, places);
    return new PartShape(front, outline, prisms, mass(front, 0, places), centre(outline), 0);
  }

  /**
   * Returns what lies on the steering axis of a front system: the first of its prisms, the others
   * are its legs.
   */
  public static Prism stem(Part.Front front, Places places) {
    double d = places.value(front.tube());
    return new Prism(
        Curves.bar(places.pin(front.top()), places.pin(front.bottom()), d),
        new Interval(-d / 2, d / 2));
  }

  private static List<Prism> frontBody(Part.Front front, Places places) {
    double d = places.value(front.tube());
    double y = places.value(front.y());
    List<Interval> sides =
        List.of(new Interval(y - d / 2, y + d / 2), new Interval(-y - d / 2, -y + d / 2));
    List<Prism> prisms = new ArrayList<>();
    prisms.add(stem(front, places));
    List<PointMm> path = legs(front, places);
    for (int i = 1; i < path.size(); i++) {
      Geometry bar = Curves.bar(path.get(i - 1), path.get(i), d);
      sides.forEach(side -> prisms.add(new Prism(bar, side)));
    }
    return prisms;
  }

  /** The legs of a front system in side view, down to the axle. */
  private static List<PointMm> legs(Part.Front front, Places places) {
    PointMm axle = places.pin(front.axle());
    return front.pivot().isPresent()
        ? List.of(places.pin(front.bottom()), places.pin(front.pivot().get()), axle)
        : List.of(places.pin(front.top()), axle);
  }

  private static PartShape tube(Part.Tube tube, Places places) {
    List<PointMm> line = centreLine(tube, places);
    double d = places.value(tube.diameter());
    double wall = places.value(tube.wall());
    double y = places.value(tube.y());
    Geometry outline = Curves.strip(line, d);
    List<Interval> across = new ArrayList<>();
    across.add(new Interval(y - d / 2, y + d / 2));
    if (tube.both()) {
      across.add(across.get(0).mirrored());
    }
    List<Prism> prisms = across.stream().map(i -> new Prism(outline, i)).toList();
    double section = Math.PI / 4 * (d * d - Math.pow(Math.max(0, d - 2 * wall), 2));
    double volume = section * Curves.length(line) * across.size();
    return new PartShape(
        tube,
        outline,
        prisms,
        mass(tube, volume, places),
        centre(Curves.line(line)),
        Spreads.middle(across));
  }

  /** Returns the bent centre line of a tube. */
  public static List<PointMm> centreLine(Part.Tube tube, Places places) {
    List<PointMm> pins = tube.path().stream().map(places::pin).toList();
    return Curves.bent(pins, places.value(tube.bendRadius()));
  }

  private static PartShape rest(Part.Rest rest, Places places) {
    double d = places.value(rest.diameter());
    double y = places.value(rest.y());
    double half = places.value(rest.length()) / 2;
    PointMm at = places.pin(rest.at());
    Geometry outline =
        rest.to().isPresent()
            ? Curves.bar(at, places.pin(rest.to().get()), d)
            : Curves.disc(at, d / 2);
    Interval one = new Interval(y - half, y + half);
    return filled(rest, outline, List.of(one, one.mirrored()), places);
  }

  private static PartShape lamp(Part.Lamp lamp, Places places) {
    PointMm at = places.pin(lamp.at());
    double halfHeight = places.value(lamp.halfHeight());
    double halfWidth = places.value(lamp.halfWidth());
    double depth = places.value(lamp.depth());
    double y = places.value(lamp.y());
    double back = Lamps.facesForward(lamp.type()) ? -depth : depth;
    Geometry outline =
        Curves.polygon(
            List.of(
                at.plus(new PointMm(0, -halfHeight)),
                at.plus(new PointMm(back, -halfHeight)),
                at.plus(new PointMm(back, halfHeight)),
                at.plus(new PointMm(0, halfHeight))));
    List<Interval> across = new ArrayList<>();
    across.add(new Interval(y - halfWidth, y + halfWidth));
    if (lamp.pair()) {
      across.add(across.get(0).mirrored());
    }
    return filled(lamp, outline, across, places);
  }

  /** Returns a part that fills {@code outline} over each of {@code across}. */
  static PartShape filled(Part part, Geometry outline, List<Interval> across, Places places) {
    double width = across.stream().mapToDouble(Interval::length).sum();
    return new PartShape(
        part,
        outline,
        across.stream().map(i -> new Prism(outline, i)).toList(),
        mass(part, outline.getArea() * width, places),
        centre(outline),
        Spreads.middle(across));
  }

  /**
   * Returns the given mass, or that of {@code volumeMm3} of the part's material where it is filled
   * by it, or 0 where neither is known.
   */
  static double mass(Part part, double volumeMm3, Places places) {
    PartBase base = part.base();
    if (base.mass().isPresent()) {
      return places.value(base.mass().get());
    }
    double density = Material.named(base.material()).map(Material::densityKgMm3).orElse(Double.NaN);
    return part.filledByMaterial() && !Double.isNaN(density) ? density * volumeMm3 : 0;
  }

  static PointMm centre(Geometry geometry) {
    Point c = geometry.getCentroid();
    return c.isEmpty() ? PointMm.ORIGIN : new PointMm(c.getX(), c.getY());
  }
}
