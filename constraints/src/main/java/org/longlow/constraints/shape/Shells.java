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

  private static final Memo<Bent, Sheet> SHEETS = new Memo<>(128, Shells::sheet);

  private Shells() {}

  /** A sheet as drawn: its edge, thickness in mm, and whether it closes on itself. */
  private record Bent(List<PointMm> edge, double thicknessMm, boolean closed) {}

  /** Its strip, the area within or null, and both together. */
  private record Sheet(Geometry strip, Geometry area, Geometry both) {}

  private static Sheet sheet(Bent bent) {
    if (!bent.closed() && bent.edge().size() <= 2) {
      Geometry strip = Curves.strip(bent.edge(), bent.thicknessMm());
      return new Sheet(strip, null, strip);
    }
    Geometry area = Curves.polygon(bent.edge());
    Geometry strip =
        bent.closed()
            ? area.difference(area.buffer(-bent.thicknessMm()))
            : Curves.strip(bent.edge(), bent.thicknessMm());
    return new Sheet(strip, area, area.union(strip));
  }

  static PartShape of(Part.Shell shell, Places places) {
    List<PointMm> edge = Outlines.points(shell.frame(), shell.outline(), places);
    double t = places.value(shell.thickness());
    List<Interval> across = Spreads.of(shell.base(), places);
    Sheet sheet = SHEETS.of(new Bent(List.copyOf(edge), t, shell.outline().closed()));
    Geometry strip = sheet.strip();
    Geometry area = sheet.area();
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
    Geometry outline = sides ? sheet.both() : strip;
    return new PartShape(
        shell,
        outline,
        prisms,
        Shapes.mass(shell, volume, places),
        Shapes.centre(outline),
        Spreads.middle(across));
  }
}
