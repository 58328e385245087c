package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;

/**
 * Area and centre of what a few convex polygons cover together, by inclusion and exclusion: what
 * several of them have in common is convex too, and cut out of each other in turn.
 */
final class ConvexUnion {

  private final List<Ring> rings = new ArrayList<>();
  private final Coordinate from;
  private double twiceArea;
  private double momentX;
  private double momentZ;

  /** Corners of a convex polygon anticlockwise, the last not repeated. */
  private static final class Ring {
    private final double[] x;
    private final double[] z;
    private int size;

    private Ring(int room) {
      x = new double[room];
      z = new double[room];
    }

    private void add(double atX, double atZ) {
      x[size] = atX;
      z[size++] = atZ;
    }

    /** The corner after one, in turn. */
    private int after(int corner) {
      return corner + 1 < size ? corner + 1 : 0;
    }

    private double cross(int a) {
      int b = after(a);
      return x[a] * z[b] - z[a] * x[b];
    }

    /** How far a corner of this is left of an edge of another, times its length. */
    private double leftOf(Ring other, int edge, int corner) {
      int next = other.after(edge);
      double dx = other.x[next] - other.x[edge];
      double dz = other.z[next] - other.z[edge];
      return dx * (z[corner] - other.z[edge]) - dz * (x[corner] - other.x[edge]);
    }

    /** Returns what of it is left of an edge of another; itself where all of it is. */
    private Ring cut(Ring other, int edge) {
      int right = 0;
      for (int i = 0; i < size; i++) {
        right += leftOf(other, edge, i) < 0 ? 1 : 0;
      }
      if (right == 0) {
        return this;
      }
      Ring kept = new Ring(right == size ? 0 : size + right);
      int last = size - 1;
      double was = leftOf(other, edge, last);
      for (int i = 0; i < size && right < size; i++) {
        double is = leftOf(other, edge, i);
        if (was < 0 != is < 0) {
          double share = was / (was - is);
          kept.add(x[last] + share * (x[i] - x[last]), z[last] + share * (z[i] - z[last]));
        }
        if (is >= 0) {
          kept.add(x[i], z[i]);
        }
        last = i;
        was = is;
      }
      return kept;
    }

    /** Returns what of it lies within another: its long edges first leave little for the others. */
    private Ring within(Ring other) {
      double longest = 0;
      for (int k = 0; k < other.size; k++) {
        longest = Math.max(longest, other.length(k));
      }
      return within(other, longest / 2, Double.MAX_VALUE).within(other, -1, longest / 2);
    }

    private Ring within(Ring other, double over, double upTo) {
      Ring left = this;
      for (int k = 0; k < other.size && left.size > 0; k++) {
        double length = other.length(k);
        left = length > over && length <= upTo ? left.cut(other, k) : left;
      }
      return left;
    }

    private double length(int edge) {
      int next = after(edge);
      return Math.abs(x[next] - x[edge]) + Math.abs(z[next] - z[edge]);
    }
  }

  private ConvexUnion(List<Polygon> polygons) {
    from = polygons.get(0).getCoordinate();
    for (Polygon polygon : polygons) {
      rings.add(ring(polygon));
    }
    add(null, 0, 1);
  }

  /**
   * Returns the centre of what they cover, each wound either way; the origin where that has no
   * area. Exact but for rounding.
   */
  static PointMm centre(List<Polygon> convex) {
    List<Polygon> filled = convex.stream().filter(p -> p.getArea() > 0).toList();
    if (filled.isEmpty()) {
      return PointMm.ORIGIN;
    }
    ConvexUnion all = new ConvexUnion(filled);
    return new PointMm(
        all.from.x + all.momentX / (3 * all.twiceArea),
        all.from.y + all.momentZ / (3 * all.twiceArea));
  }

  /** Returns the corners from the first of the first polygon on. */
  private Ring ring(Polygon polygon) {
    Coordinate[] corners = polygon.getExteriorRing().getCoordinates();
    boolean clockwise = !Orientation.isCCWArea(corners);
    Ring ring = new Ring(corners.length - 1);
    for (int i = 1; i < corners.length; i++) {
      Coordinate c = corners[clockwise ? corners.length - i : i];
      ring.add(c.x - from.x, c.y - from.y);
    }
    return ring;
  }

  /** Adds what is common to some of them with each of the others after these, and so on. */
  private void add(Ring common, int after, int sign) {
    for (int i = after; i < rings.size(); i++) {
      Ring ring = common == null ? rings.get(i) : common.within(rings.get(i));
      if (ring.size > 0) {
        addMoments(ring, sign);
        add(ring, i + 1, -sign);
      }
    }
  }

  private void addMoments(Ring ring, int sign) {
    for (int i = 0; i < ring.size; i++) {
      int next = ring.after(i);
      double twice = sign * ring.cross(i);
      twiceArea += twice;
      momentX += twice * (ring.x[i] + ring.x[next]);
      momentZ += twice * (ring.z[i] + ring.z[next]);
    }
  }
}
