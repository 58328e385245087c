package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.longlow.constraints.layout.Profile;

/**
 * What lies under a sheet along a line that does not close: between its inner face and the chord
 * from one end of the line to the other. The line is the middle of the sheet.
 *
 * @param loft its outer face, gone on with beyond both ends and closed far behind the chord, so
 *     that no skin is taken off there
 * @param from one end of the chord, x and z
 * @param way to its other end
 * @param side 1 where the sheet lies to the left of that, else -1
 */
record UnderLine(Loft loft, double[] from, double[] way, int side) {

  /** A line that leaves its chord by less than this has nothing under it, mm. */
  private static final double LEAST_MM = 0.5;

  /** How far the outer face goes on beyond the skin at least, mm. */
  private static final double BEYOND_MM = 10;

  private static final double WIDE_MM = 1e6;

  /**
   * Returns what lies under a sheet; empty where its line is straight, or crosses its chord.
   *
   * @param along the sheet's line with its breadths
   */
  static Optional<UnderLine> of(Loft along, double thicknessMm, double skinMm) {
    List<Girth> line = along.ring();
    Girth a = line.get(0);
    Girth b = line.get(line.size() - 1);
    double[] from = {a.x(), a.z()};
    double[] way = {b.x() - a.x(), b.z() - a.z()};
    double chord = Math.hypot(way[0], way[1]);
    double least = 0;
    double most = 0;
    for (Girth g : line) {
      double off = (way[0] * (g.z() - a.z()) - way[1] * (g.x() - a.x())) / chord;
      least = Math.min(least, off);
      most = Math.max(most, off);
    }
    if (!(chord > LEAST_MM) || Math.max(-least, most) < LEAST_MM || Math.min(-least, most) > 1e-6) {
      return Optional.empty();
    }
    int side = most > -least ? 1 : -1;
    double far = 3 * skinMm + BEYOND_MM;
    List<Girth> outer = offset(line, side * thicknessMm / 2);
    double[] down = {side * way[1] / chord * far, -side * way[0] / chord * far};
    Girth first = beyond(outer.get(1), outer.get(0), far);
    Girth last = beyond(outer.get(outer.size() - 2), outer.get(outer.size() - 1), far);
    List<Girth> ring = new ArrayList<>();
    ring.add(moved(first, down[0], down[1]));
    ring.add(first);
    ring.addAll(outer);
    ring.add(last);
    ring.add(moved(last, down[0], down[1]));
    Loft loft =
        new Loft(
            ring,
            List.of(),
            along.places(),
            new Sides(Profile.Shape.FLAT, 0, List.of()),
            along.middleMm());
    return isSimple(ring) ? Optional.of(new UnderLine(loft, from, way, side)) : Optional.empty();
  }

  /** Moves a line to its left, mitred. */
  private static List<Girth> offset(List<Girth> line, double byMm) {
    List<Girth> out = new ArrayList<>();
    int n = line.size();
    for (int i = 0; i < n; i++) {
      double[] p = direction(line.get(Math.max(0, i - 1)), line.get(Math.max(1, i)));
      double[] q = direction(line.get(Math.min(n - 2, i)), line.get(Math.min(n - 1, i + 1)));
      double by = byMm / Math.max(0.1, 1 + p[0] * q[0] + p[1] * q[1]);
      out.add(moved(line.get(i), -by * (p[1] + q[1]), by * (p[0] + q[0])));
    }
    return out;
  }

  private static double[] direction(Girth a, Girth b) {
    double length = Math.max(1e-12, Math.hypot(b.x() - a.x(), b.z() - a.z()));
    return new double[] {(b.x() - a.x()) / length, (b.z() - a.z()) / length};
  }

  private static Girth beyond(Girth before, Girth end, double farMm) {
    double[] on = direction(before, end);
    return moved(end, on[0] * farMm, on[1] * farMm);
  }

  private static Girth moved(Girth g, double dx, double dz) {
    return new Girth(g.x() + dx, g.z() + dz, g.from(), g.to());
  }

  private static boolean isSimple(List<Girth> ring) {
    List<Coordinate> at = new ArrayList<>();
    ring.forEach(g -> at.add(new Coordinate(g.x(), g.z())));
    at.add(at.get(0).copy());
    return Curves.FACTORY.createPolygon(at.toArray(Coordinate[]::new)).isValid();
  }

  /** Returns whether a place is on the sheet's side of the chord. */
  boolean holds(double x, double z) {
    return side * (way[0] * (z - from[1]) - way[1] * (x - from[0])) >= -1e-6;
  }

  /**
   * Returns what of a section lies on the sheet's side of the chord.
   *
   * @param across whether it is square to the local x axis, at {@code place}
   */
  Geometry within(Geometry section, boolean across, double place) {
    double length = Math.hypot(way[0], way[1]);
    double[] u = {way[0] / length, way[1] / length};
    if (!across) {
      double[] out = {-side * u[1], side * u[0]};
      return OverlayNGRobust.overlay(
          section,
          quad(
              from[0] - WIDE_MM * u[0],
              from[1] - WIDE_MM * u[1],
              from[0] + WIDE_MM * u[0],
              from[1] + WIDE_MM * u[1],
              from[0] + WIDE_MM * (u[0] + out[0]),
              from[1] + WIDE_MM * (u[1] + out[1]),
              from[0] + WIDE_MM * (out[0] - u[0]),
              from[1] + WIDE_MM * (out[1] - u[1])),
          OverlayNG.INTERSECTION);
    }
    if (Math.abs(u[0]) < 1e-9) {
      return holds(place, from[1]) ? section : Curves.FACTORY.createPolygon();
    }
    double z = from[1] + u[1] / u[0] * (place - from[0]);
    double far = z + side * Math.signum(u[0]) * WIDE_MM;
    return OverlayNGRobust.overlay(
        section,
        quad(-WIDE_MM, z, WIDE_MM, z, WIDE_MM, far, -WIDE_MM, far),
        OverlayNG.INTERSECTION);
  }

  private static Polygon quad(double... xy) {
    Coordinate[] ring = new Coordinate[5];
    for (int i = 0; i < 5; i++) {
      ring[i] = new Coordinate(xy[2 * (i % 4)], xy[2 * (i % 4) + 1]);
    }
    return Curves.FACTORY.createPolygon(ring);
  }
}
