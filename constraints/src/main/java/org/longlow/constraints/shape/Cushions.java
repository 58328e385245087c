package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Material;
import org.longlow.rider.geom.PointMm;

/** Cushions: a board below the face, layers of foam above it, on the person's side. */
public final class Cushions {

  private Cushions() {}

  /**
   * Returns the unit vector square to the board towards the person: up for a pan (its face runs
   * rear to front), forward for a back or head rest (its face runs bottom to top).
   */
  public static PointMm towardsPerson(CushionPart cushion, PointMm from, PointMm to) {
    PointMm along = to.minus(from);
    double length = along.length();
    if (length < 1e-9) {
      return cushion.role() == CushionPart.Role.PAN ? new PointMm(0, 1) : new PointMm(1, 0);
    }
    PointMm left = along.left().times(1 / length);
    return cushion.role() == CushionPart.Role.PAN ? left : left.times(-1);
  }

  /** Returns the outlines of the layers, board first, then foam from the board up. */
  public static List<Geometry> bands(CushionPart cushion, Places places) {
    PointMm from = places.pin(cushion.from());
    PointMm to = places.pin(cushion.to());
    PointMm n = towardsPerson(cushion, from, to);
    List<Geometry> bands = new ArrayList<>();
    bands.add(band(from, to, n, -places.value(cushion.board()), 0));
    double height = 0;
    for (int i = cushion.layers().size() - 1; i >= 0; i--) {
      double t = places.value(cushion.layers().get(i).thickness());
      bands.add(band(from, to, n, height, height + t));
      height += t;
    }
    return bands;
  }

  private static Geometry band(PointMm from, PointMm to, PointMm n, double low, double high) {
    return Curves.polygon(
        List.of(
            from.plus(n.times(low)),
            to.plus(n.times(low)),
            to.plus(n.times(high)),
            from.plus(n.times(high))));
  }

  static PartShape of(CushionPart cushion, Places places) {
    PointMm from = places.pin(cushion.from());
    PointMm to = places.pin(cushion.to());
    PointMm n = towardsPerson(cushion, from, to);
    double board = places.value(cushion.board());
    double foam = 0;
    double areal = board * Material.PLYWOOD.densityKgMm3();
    for (FoamSpec layer : cushion.layers()) {
      double t = places.value(layer.thickness());
      foam += t;
      areal += t * places.value(layer.density());
    }
    Geometry outline = band(from, to, n, -board, foam);
    List<Interval> across = Spreads.of(cushion.base(), places);
    double width = across.stream().mapToDouble(Interval::length).sum();
    double mass =
        cushion.base().mass().isPresent()
            ? places.value(cushion.base().mass().get())
            : areal * from.distance(to) * width;
    return Filled.filled(cushion, outline, across, mass, Filled.centre(outline));
  }
}
