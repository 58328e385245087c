package org.longlow.svg.drawing;

import java.util.Arrays;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** The few plane figures that sheets and dimensions are made of. */
public final class Planar {

  /** The one geometry factory of this module: floating precision, no reference system. */
  public static final GeometryFactory FACTORY = new GeometryFactory();

  private Planar() {}

  /** Returns the line through x, y, x, y ... */
  public static LineString line(double... xy) {
    return FACTORY.createLineString(coordinates(xy));
  }

  /** Returns the polygon with corners x, y, x, y ...; the last side is added. */
  public static Polygon polygon(double... xy) {
    Coordinate[] open = coordinates(xy);
    Coordinate[] ring = Arrays.copyOf(open, open.length + 1);
    ring[open.length] = open[0].copy();
    return FACTORY.createPolygon(ring);
  }

  /** Returns the rectangle with the given lower left and upper right corners. */
  public static Polygon rectangle(double x1, double y1, double x2, double y2) {
    return polygon(x1, y1, x2, y1, x2, y2, x1, y2);
  }

  /** Returns the rectangle of an envelope that is not null. */
  public static Polygon rectangle(Envelope e) {
    return rectangle(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY());
  }

  /**
   * Returns a circular arc in steps of at most 2 deg: off the true arc by at most 0.016 % of the
   * radius.
   */
  public static LineString arc(double cx, double cy, double r, double fromRad, double toRad) {
    int n = Math.max(2, (int) Math.ceil(Math.abs(toRad - fromRad) / (Math.PI / 90)));
    double[] xy = new double[2 * n + 2];
    for (int i = 0; i <= n; i++) {
      double a = fromRad + (toRad - fromRad) * i / n;
      xy[2 * i] = cx + r * Math.cos(a);
      xy[2 * i + 1] = cy + r * Math.sin(a);
    }
    return line(xy);
  }

  /** Returns a disc as a polygon of 180 sides. */
  public static Polygon disc(double cx, double cy, double r) {
    Coordinate[] ring = arc(cx, cy, r, 0, 2 * Math.PI).getCoordinates();
    ring[ring.length - 1] = ring[0].copy();
    return FACTORY.createPolygon(ring);
  }

  /** Returns a disc as a polygon of so many sides: at least 12, at most 180. */
  public static Polygon disc(double cx, double cy, double r, int sides) {
    int n = Math.max(12, Math.min(180, sides));
    double[] xy = new double[2 * n];
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      xy[2 * i] = cx + r * Math.cos(a);
      xy[2 * i + 1] = cy + r * Math.sin(a);
    }
    return polygon(xy);
  }

  private static Coordinate[] coordinates(double... xy) {
    Coordinate[] out = new Coordinate[xy.length / 2];
    for (int i = 0; i < out.length; i++) {
      out[i] = new Coordinate(xy[2 * i], xy[2 * i + 1]);
    }
    return out;
  }
}
