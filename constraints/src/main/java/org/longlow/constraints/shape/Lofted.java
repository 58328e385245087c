package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.space.Hull;

/** Bodies between cuts as convex pieces, each within an outline and a breadth of its own. */
final class Lofted {

  /** Fewest pieces of a quarter of a curved side, for bodies. */
  private static final int PIECES = 5;

  /** What a curved side is at least divided into, so that its pieces lie closely round it. */
  private static final int BANDS = 4;

  private Lofted() {}

  /**
   * Returns how many pieces a quarter of a side this large needs to lie near enough to its curve.
   */
  static int pieces(double radiusMm) {
    return pieces(radiusMm, Fineness.FLATNESS_MM);
  }

  /** As {@link #pieces(double)}, for chords within {@code flatnessMm} of the curve. */
  static int pieces(double radiusMm, double flatnessMm) {
    double turn = Math.acos(1 - Math.min(1, flatnessMm / radiusMm));
    return Math.max(PIECES, (int) Math.ceil(Math.PI / 4 / turn));
  }

  /** Returns how far straight pieces round a quarter of a circle reach beyond it at most, mm. */
  static double overMm(double radiusMm, int pieces) {
    return radiusMm * (1 / Math.cos(Math.PI / 4 / pieces) - 1);
  }

  /** Returns a body that is filled. */
  static List<Prism> solid(List<Loft.Strip> strips) {
    List<Prism> prisms = new ArrayList<>();
    for (Loft.Strip strip : Twist.without(strips)) {
      int last = strip.from().left().size() - 1;
      int most = last <= 1 ? last : (last + BANDS - 1) / BANDS;
      int from = 0;
      while (from < last) {
        int to = from + 1;
        while (to < last
            && to - from < most
            && isConvex(strip, from, to + 1)
            && Twist.mm(strip, from, to + 1) < Twist.LEAST_MM) {
          to++;
        }
        List<double[]> points = new ArrayList<>();
        add(strip.from().band(from, to), 0, points);
        add(strip.to().band(from, to), 0, points);
        prism(points).ifPresent(prisms::add);
        from = to;
      }
    }
    return prisms;
  }

  private static boolean isConvex(Loft.Strip strip, int from, int to) {
    return strip.from().band(from, to).isConvex() && strip.to().band(from, to).isConvex();
  }

  private static void add(Cut cut, double ahead, List<double[]> points) {
    for (double[] p : cut.ring()) {
      points.add(new double[] {cut.x() + ahead, p[1], p[0]});
    }
  }

  /** Returns the hull of points with what it lies within; empty where that has no area. */
  static Optional<Prism> prism(List<double[]> points) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    Coordinate[] side = new Coordinate[points.size()];
    for (int i = 0; i < side.length; i++) {
      double[] p = points.get(i);
      side[i] = new Coordinate(p[0], p[2]);
      from = Math.min(from, p[1]);
      to = Math.max(to, p[1]);
    }
    Geometry outline = Curves.FACTORY.createMultiPointFromCoords(side).convexHull();
    return outline instanceof Polygon
        ? Optional.of(new Prism(outline, new Interval(from, to), List.of(Hull.of(points))))
        : Optional.empty();
  }
}
