package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.geom.PointMm;

/**
 * Cowls and screens as sheet: a strip along the drawn edge over the whole width, and, unless it is
 * open, two sides. What lies inside a cowl touches nothing as long as it stays off both.
 */
final class Shells {

  private Shells() {}

  static PartShape of(Part.Shell shell, Places places) {
    List<PointMm> edge = Outlines.points(shell.frame(), shell.outline(), places);
    double t = places.value(shell.thickness());
    List<Interval> across = Spreads.of(shell.base(), places);
    Geometry strip;
    Geometry area;
    if (shell.outline().closed()) {
      area = Curves.polygon(edge);
      strip = area.difference(area.buffer(-t));
    } else {
      area = edge.size() > 2 ? Curves.polygon(edge) : null;
      strip = Curves.strip(edge, t);
    }
    boolean sides = !shell.open() && area != null;
    List<Prism> prisms = new ArrayList<>();
    double volume = 0;
    for (Interval i : across) {
      prisms.add(new Prism(strip, i));
      volume += strip.getArea() * i.length();
      if (sides && i.length() > 2 * t) {
        prisms.add(new Prism(area, new Interval(i.to() - t, i.to())));
        prisms.add(new Prism(area, new Interval(i.from(), i.from() + t)));
        volume += 2 * area.getArea() * t;
      }
    }
    Geometry outline = sides ? area.union(strip) : strip;
    return new PartShape(
        shell,
        outline,
        prisms,
        Shapes.mass(shell.base(), volume, places),
        Shapes.centre(outline),
        Spreads.middle(across));
  }
}
