package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Rod;
import org.longlow.rider.geom.PointMm;

/** Parts that fill an outline over some width, and what they weigh. */
final class Filled {

  private Filled() {}

  /** Returns a part that fills {@code outline} over each of {@code across}. */
  static PartShape filled(Part part, Geometry outline, List<Interval> across, Places places) {
    double mass =
        FillMass.mass(
            part, outline.getArea() * across.stream().mapToDouble(Interval::length).sum(), places);
    return filled(part, outline, across, mass, centre(outline));
  }

  /** As the other, of a part whose mass and centre do not follow from its outline. */
  static PartShape filled(
      Part part, Geometry outline, List<Interval> across, double massKg, PointMm centre) {
    List<Prism> prisms = across.stream().map(i -> new Prism(outline, i)).toList();
    return new PartShape(part, outline, prisms, massKg, centre, Spreads.middle(across));
  }

  /** Returns a part of one or more bodies drawn by their outlines. */
  static PartShape bodies(Part.Flat flat, Places places) {
    Geometry outline = Outlines.area(flat.frame(), flat.outline(), places);
    Optional<AngleFlat> angle = AngleFlat.of(flat, places);
    if (angle.isPresent()) {
      return AngleFlat.shape(angle.get(), outline, places);
    }
    if (flat.bodies().isEmpty() && flat.breadth().isEven(flat.outline())) {
      return filled(flat, outline, Spreads.of(flat.base(), places), places);
    }
    List<FurtherBody> bodies = new ArrayList<>();
    flat.base()
        .spread()
        .ifPresent(s -> bodies.add(new FurtherBody("", flat.outline(), s, flat.breadth())));
    bodies.addAll(flat.bodies());
    List<Prism> prisms = new ArrayList<>();
    Bulk bulk = Bulk.NONE;
    for (FurtherBody body : bodies) {
      Shaped shaped = body(flat, body, places);
      prisms.addAll(shaped.prisms());
      bulk = bulk.plus(shaped.bulk());
      if (!body.outline().equals(flat.outline())) {
        Geometry more = Outlines.area(flat.frame(), body.outline(), places);
        outline = OverlayNGRobust.overlay(outline, more, OverlayNG.UNION);
      }
    }
    Shaped all = new Shaped(prisms, bulk);
    PointMm centre = bulk.volume() > 0 ? all.centre() : centre(outline);
    double mass = FillMass.mass(flat, bulk.volume(), places);
    return new PartShape(flat, outline, prisms, mass, centre, all.centreYMm(), Optional.of(bulk));
  }

  private static Shaped body(Part.Flat flat, FurtherBody body, Places places) {
    if (!body.breadth().isEven(body.outline())) {
      return Shaped.solid(flat.frame(), body.outline(), body.spread(), body.breadth(), places);
    }
    Geometry area = Outlines.area(flat.frame(), body.outline(), places);
    List<Prism> prisms =
        Spreads.of(body.spread(), places).stream().map(i -> new Prism(area, i)).toList();
    return new Shaped(prisms, PartShape.bulk(prisms));
  }

  static PointMm centre(Geometry geometry) {
    Point c = geometry.getCentroid();
    return c.isEmpty() ? PointMm.ORIGIN : new PointMm(c.getX(), c.getY());
  }

  /** Returns the round rods along a line so far beside the middle, its ends round or square. */
  static List<Piece> rods(List<PointMm> line, double y, double radius, boolean roundEnds) {
    List<Piece> rods = new ArrayList<>();
    for (int i = 1; i < line.size(); i++) {
      boolean first = roundEnds || i > 1;
      boolean last = roundEnds || i + 1 < line.size();
      rods.add(new Rod(line.get(i - 1), line.get(i), y, radius, first, last));
    }
    return rods;
  }
}
