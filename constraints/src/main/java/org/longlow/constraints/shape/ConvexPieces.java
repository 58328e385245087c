package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import org.longlow.rider.geom.PointMm;

/**
 * Outlines cut into convex pieces: triangles by ear clipping, then put together again over every
 * edge that is not needed (Hertel and Mehlhorn 1983). The pieces cover the outline and no more.
 */
public final class ConvexPieces {

  /** A corner that turns in by less than this, as a share of its sides' product, is straight. */
  private static final double STRAIGHT = 1e-9;

  private static final Memo<Geometry, List<double[]>> CUT = new Memo<>(512, ConvexPieces::cut);

  private ConvexPieces() {}

  /** Returns rings, x and z of their corners in turn, counter-clockwise. */
  public static List<double[]> of(Geometry outline) {
    return CUT.of(outline);
  }

  private static List<double[]> cut(Geometry outline) {
    List<double[]> pieces = new ArrayList<>();
    for (int i = 0; i < outline.getNumGeometries(); i++) {
      if (outline.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
        List<Coordinate> ring = ring(polygon);
        if (polygon.getNumInteriorRing() == 0 && isConvex(ring)) {
          pieces.add(flat(ring));
        } else {
          merged(polygon).forEach(piece -> pieces.add(flat(piece)));
        }
      }
    }
    return pieces;
  }

  /** The corners of a polygon's outside, counter-clockwise, none twice. */
  private static List<Coordinate> ring(Polygon polygon) {
    Coordinate[] at = polygon.getExteriorRing().getCoordinates();
    double twice = 0;
    for (int i = 1; i < at.length; i++) {
      twice +=
          (at[i - 1].x - at[0].x) * (at[i].y - at[0].y)
              - (at[i].x - at[0].x) * (at[i - 1].y - at[0].y);
    }
    List<Coordinate> ring = new ArrayList<>();
    for (int i = 0; i + 1 < at.length; i++) {
      ring.add(twice > 0 ? at[i] : at[at.length - 1 - i]);
    }
    return ring;
  }

  private static boolean isConvex(List<Coordinate> ring) {
    double turned = 0;
    for (int i = 0; i < ring.size(); i++) {
      Coordinate a = ring.get(i);
      Coordinate b = ring.get((i + 1) % ring.size());
      Coordinate c = ring.get((i + 2) % ring.size());
      double ux = b.x - a.x;
      double uz = b.y - a.y;
      double vx = c.x - b.x;
      double vz = c.y - b.y;
      double cross = ux * vz - uz * vx;
      if (cross < -STRAIGHT * PointMm.norm(ux, uz) * PointMm.norm(vx, vz)) {
        return false;
      }
      turned += Math.atan2(cross, ux * vx + uz * vz);
    }
    return turned < 3 * Math.PI; // once round
  }

  private static List<List<Coordinate>> merged(Polygon polygon) {
    Geometry triangles = PolygonTriangulator.triangulate(polygon);
    List<List<Coordinate>> pieces = new ArrayList<>();
    for (int i = 0; i < triangles.getNumGeometries(); i++) {
      pieces.add(ring((Polygon) triangles.getGeometryN(i)));
    }
    int[] now = new int[pieces.size()];
    Map<List<Coordinate>, Integer> sideOf = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      now[i] = i;
      List<Coordinate> ring = pieces.get(i);
      for (int k = 0; k < 3; k++) {
        sideOf.put(List.of(ring.get(k), ring.get((k + 1) % 3)), i);
      }
    }
    sideOf.forEach(
        (side, i) -> {
          Integer other = sideOf.get(List.of(side.get(1), side.get(0)));
          if (other != null && i < other) {
            join(pieces, now, side, find(now, i), find(now, other));
          }
        });
    List<List<Coordinate>> kept = new ArrayList<>();
    for (int i = 0; i < now.length; i++) {
      if (now[i] == i) {
        kept.add(pieces.get(i));
      }
    }
    return kept;
  }

  private static int find(int[] now, int i) {
    int at = i;
    while (now[at] != at) {
      at = now[at];
    }
    return at;
  }

  /** Puts two pieces together over a side that they share, if what comes out is convex. */
  private static void join(
      List<List<Coordinate>> pieces, int[] now, List<Coordinate> side, int one, int other) {
    if (one == other) {
      return;
    }
    List<Coordinate> a = pieces.get(one);
    List<Coordinate> b = pieces.get(other);
    int from = a.indexOf(side.get(1));
    int to = b.indexOf(side.get(0));
    List<Coordinate> both = new ArrayList<>(a.size() + b.size() - 2);
    for (int k = 0; k < a.size(); k++) {
      both.add(a.get((from + k) % a.size()));
    }
    for (int k = 1; k + 1 < b.size(); k++) {
      both.add(b.get((to + k) % b.size()));
    }
    if (isConvex(both)) {
      pieces.set(one, both);
      now[other] = one;
    }
  }

  private static double[] flat(List<Coordinate> ring) {
    double[] flat = new double[2 * ring.size()];
    for (int i = 0; i < ring.size(); i++) {
      flat[2 * i] = ring.get(i).x;
      flat[2 * i + 1] = ring.get(i).y;
    }
    return flat;
  }
}
