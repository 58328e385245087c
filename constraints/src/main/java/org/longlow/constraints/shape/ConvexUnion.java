package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateXY;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;

/**
 * Area and centre of what a few convex polygons cover together, by inclusion and exclusion: what
 * several of them have in common is convex too, and cut out of each other in turn.
 */
final class ConvexUnion {

  private final List<List<Coordinate>> rings = new ArrayList<>();
  private final Coordinate from;
  private double twiceArea;
  private double momentX;
  private double momentZ;

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

  /** Returns the corners anticlockwise, from those of the first, the last not repeated. */
  private List<Coordinate> ring(Polygon polygon) {
    Coordinate[] corners = polygon.getExteriorRing().getCoordinates();
    List<Coordinate> ring = new ArrayList<>();
    for (int i = 1; i < corners.length; i++) {
      ring.add(new CoordinateXY(corners[i].x - from.x, corners[i].y - from.y));
    }
    if (twiceArea(ring) < 0) {
      Collections.reverse(ring);
    }
    return ring;
  }

  /** Adds what is common to some of them with each of the others after these, and so on. */
  private void add(List<Coordinate> common, int after, int sign) {
    for (int i = after; i < rings.size(); i++) {
      List<Coordinate> ring = common == null ? rings.get(i) : cut(common, rings.get(i));
      if (!ring.isEmpty()) {
        addMoments(ring, sign);
        add(ring, i + 1, -sign);
      }
    }
  }

  private static double twiceArea(List<Coordinate> ring) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      sum += cross(ring.get(i), ring.get((i + 1) % ring.size()));
    }
    return sum;
  }

  private void addMoments(List<Coordinate> ring, int sign) {
    for (int i = 0; i < ring.size(); i++) {
      Coordinate a = ring.get(i);
      Coordinate b = ring.get((i + 1) % ring.size());
      double twice = sign * cross(a, b);
      twiceArea += twice;
      momentX += twice * (a.x + b.x);
      momentZ += twice * (a.y + b.y);
    }
  }

  private static double cross(Coordinate a, Coordinate b) {
    return a.x * b.y - a.y * b.x;
  }

  /** Returns what of a convex ring lies within another, both anticlockwise. */
  private static List<Coordinate> cut(List<Coordinate> ring, List<Coordinate> within) {
    List<Coordinate> left = ring;
    for (int k = 0; k < within.size() && !left.isEmpty(); k++) {
      left = leftOf(left, within.get(k), within.get((k + 1) % within.size()));
    }
    return left;
  }

  /** Returns what of a ring is left of an edge; the ring itself where all of it is. */
  private static List<Coordinate> leftOf(List<Coordinate> ring, Coordinate a, Coordinate b) {
    int right = 0;
    for (Coordinate c : ring) {
      right += side(a, b, c) < 0 ? 1 : 0;
    }
    if (right == 0 || right == ring.size()) {
      return right == 0 ? ring : List.of();
    }
    List<Coordinate> kept = new ArrayList<>(ring.size() - right + 2);
    Coordinate last = ring.get(ring.size() - 1);
    double was = side(a, b, last);
    for (Coordinate c : ring) {
      double is = side(a, b, c);
      if (was < 0 != is < 0) {
        double share = was / (was - is);
        kept.add(
            new CoordinateXY(last.x + share * (c.x - last.x), last.y + share * (c.y - last.y)));
      }
      if (is >= 0) {
        kept.add(c);
      }
      last = c;
      was = is;
    }
    return kept;
  }

  private static double side(Coordinate a, Coordinate b, Coordinate c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  }
}
