package org.longlow.constraints.shape;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.rider.geom.PointMm;

/** Parts that fill an outline over some width, and what they weigh. */
final class Filled {

  private Filled() {}

  /** Returns a part that fills {@code outline} over each of {@code across}. */
  static PartShape filled(Part part, Geometry outline, List<Interval> across, Places places) {
    double mass =
        mass(part, outline.getArea() * across.stream().mapToDouble(Interval::length).sum(), places);
    return filled(part, outline, across, mass, centre(outline));
  }

  /** As the other, of a part whose mass and centre do not follow from its outline. */
  static PartShape filled(
      Part part, Geometry outline, List<Interval> across, double massKg, PointMm centre) {
    List<Prism> prisms = across.stream().map(i -> new Prism(outline, i)).toList();
    return new PartShape(part, outline, prisms, massKg, centre, Spreads.middle(across));
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
    return part.traits().filled() && !Double.isNaN(density) ? density * volumeMm3 : 0;
  }

  static PointMm centre(Geometry geometry) {
    Point c = geometry.getCentroid();
    return c.isEmpty() ? PointMm.ORIGIN : new PointMm(c.getX(), c.getY());
  }
}
