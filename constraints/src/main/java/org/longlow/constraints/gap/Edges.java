package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.ConvexPieces;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.rider.geom.PointMm;

/**
 * The edges of an outline under a binary tree of boxes, each round a run of edges that follow each
 * other. Immutable.
 *
 * <p>What is inside lies to the left of every edge. The tree is complete: node 1 is the root, node
 * k has the children 2k and 2k + 1, and the leaves begin at {@link #firstLeaf}.
 */
final class Edges {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** Edges under one leaf. */
  static final int RUN = 4;

  /** Start x, start z, end x, end z of each edge, mm. */
  final double[] ends;

  /** Least x, least z, most x, most z of each node, mm; an empty node's are infinite. */
  final double[] boxes;

  /** First edge of each ring, and one past the last edge. */
  final int[] rings;

  final int firstLeaf;

  private volatile List<double[]> convex;

  /** What it was asked for last: it stands over the same breadths wherever it is asked. */
  private volatile Blocks blocks;

  private record Blocks(List<Interval> across, List<Piece> pieces) {}

  Edges(double[] ends, int[] rings) {
    this.ends = ends;
    this.rings = rings;
    int leaves = Math.max(1, (ends.length / 4 + RUN - 1) / RUN);
    this.firstLeaf = leaves == 1 ? 1 : Integer.highestOneBit(leaves - 1) * 2;
    this.boxes = new double[8 * firstLeaf];
    for (int leaf = 0; leaf < firstLeaf; leaf++) {
      boxRun(leaf);
    }
    for (int node = firstLeaf - 1; node >= 1; node--) {
      int b = 4 * node;
      int c = 8 * node;
      boxes[b] = Math.min(boxes[c], boxes[c + 4]);
      boxes[b + 1] = Math.min(boxes[c + 1], boxes[c + 5]);
      boxes[b + 2] = Math.max(boxes[c + 2], boxes[c + 6]);
      boxes[b + 3] = Math.max(boxes[c + 3], boxes[c + 7]);
    }
  }

  private void boxRun(int leaf) {
    double lowX = Double.POSITIVE_INFINITY;
    double lowZ = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    double highZ = Double.NEGATIVE_INFINITY;
    for (int k = 4 * RUN * leaf; k < Math.min(4 * RUN * (leaf + 1), ends.length); k += 2) {
      lowX = Math.min(lowX, ends[k]);
      highX = Math.max(highX, ends[k]);
      lowZ = Math.min(lowZ, ends[k + 1]);
      highZ = Math.max(highZ, ends[k + 1]);
    }
    int b = 4 * (firstLeaf + leaf);
    boxes[b] = lowX;
    boxes[b + 1] = lowZ;
    boxes[b + 2] = highX;
    boxes[b + 3] = highZ;
  }

  /** Returns the edges of {@code outline}: those of polygons, nothing else has a body. */
  static Edges of(Geometry outline) {
    List<CoordinateSequence> rings = new ArrayList<>();
    List<Boolean> turned = new ArrayList<>();
    collect(outline, rings, turned);
    int count = 0;
    for (CoordinateSequence ring : rings) {
      count += Math.max(0, ring.size() - 1);
    }
    double[] ends = new double[4 * count];
    int[] starts = new int[rings.size() + 1];
    int k = 0;
    for (int r = 0; r < rings.size(); r++) {
      CoordinateSequence ring = rings.get(r);
      int n = ring.size();
      boolean backwards = turned.get(r);
      starts[r] = k / 4;
      for (int i = 1; i < n; i++) {
        int from = backwards ? n - i : i - 1;
        int to = backwards ? n - i - 1 : i;
        ends[k++] = ring.getX(from);
        ends[k++] = ring.getY(from);
        ends[k++] = ring.getX(to);
        ends[k++] = ring.getY(to);
      }
    }
    starts[rings.size()] = k / 4;
    return new Edges(ends, starts);
  }

  /** Returns the edges of a line there and back, which encloses nothing. */
  static Edges along(List<PointMm> line) {
    int lengths = line.size() - 1;
    double[] ends = new double[8 * lengths];
    for (int i = 0; i < 2 * lengths; i++) {
      PointMm from = line.get(i < lengths ? i : 2 * lengths - i);
      PointMm to = line.get(i < lengths ? i + 1 : 2 * lengths - i - 1);
      ends[4 * i] = from.x();
      ends[4 * i + 1] = from.z();
      ends[4 * i + 2] = to.x();
      ends[4 * i + 3] = to.z();
    }
    return new Edges(ends, new int[] {0, 2 * lengths});
  }

  private static void collect(Geometry g, List<CoordinateSequence> rings, List<Boolean> turned) {
    if (g instanceof Polygon p) {
      if (!p.isEmpty()) {
        add(p.getExteriorRing(), true, rings, turned);
        for (int i = 0; i < p.getNumInteriorRing(); i++) {
          add(p.getInteriorRingN(i), false, rings, turned);
        }
      }
    } else if (g instanceof MultiPolygon) {
      for (int i = 0; i < g.getNumGeometries(); i++) {
        collect(g.getGeometryN(i), rings, turned);
      }
    }
  }

  /** Outer rings run counter-clockwise, holes clockwise: the body is on the left. */
  private static void add(
      LineString ring, boolean outer, List<CoordinateSequence> rings, List<Boolean> turned) {
    CoordinateSequence at = ring.getCoordinateSequence();
    double twice = 0;
    double x0 = at.getX(0);
    for (int i = 1; i < at.size(); i++) {
      twice += (at.getX(i - 1) + at.getX(i) - 2 * x0) * (at.getY(i) - at.getY(i - 1));
    }
    rings.add(at);
    turned.add(twice < 0 == outer);
  }

  /** Returns the same outline moved. */
  Edges moved(RigidMotion motion) {
    double c = Math.cos(motion.turnRad());
    double s = Math.sin(motion.turnRad());
    PointMm by = motion.shift();
    double[] moved = new double[ends.length];
    for (int k = 0; k < ends.length; k += 2) {
      moved[k] = c * ends[k] - s * ends[k + 1] + by.x();
      moved[k + 1] = s * ends[k] + c * ends[k + 1] + by.z();
    }
    Edges there = new Edges(moved, rings);
    List<double[]> known = convex;
    if (known != null) {
      there.convex =
          known.stream()
              .map(
                  ring -> {
                    double[] ringThere = new double[ring.length];
                    for (int k = 0; k < ring.length; k += 2) {
                      ringThere[k] = c * ring[k] - s * ring[k + 1] + by.x();
                      ringThere[k + 1] = s * ring[k] + c * ring[k + 1] + by.z();
                    }
                    return ringThere;
                  })
              .toList();
    }
    return there;
  }

  /** Returns the convex pieces of what is inside, x and z of their corners; found once. */
  List<double[]> convex() {
    List<double[]> known = convex;
    if (known == null) {
      known = ConvexPieces.of(outline());
      convex = known;
    }
    return known;
  }

  /** Returns its convex pieces over some breadths, which do not change; found once. */
  List<Piece> blocks(List<Interval> across) {
    Blocks known = blocks;
    if (known == null || known.across != across) {
      known = new Blocks(across, List.copyOf(Prism.blocks(convex(), across)));
      blocks = known;
    }
    return known.pieces;
  }

  /** Returns the same outline shifted. */
  Edges shifted(PointMm by) {
    return moved(new RigidMotion(0, by));
  }

  int count() {
    return ends.length / 4;
  }

  Envelope envelope() {
    return count() == 0 ? new Envelope() : new Envelope(boxes[4], boxes[6], boxes[5], boxes[7]);
  }

  /** Returns whether the first corner of a ring of another outline lies inside this one. */
  boolean holdsRing(Edges inner) {
    for (int r = 0; r + 1 < inner.rings.length; r++) {
      int k = 4 * inner.rings[r];
      if (k < inner.ends.length && inside(inner.ends[k], inner.ends[k + 1])) {
        return true;
      }
    }
    return false;
  }

  /** Returns the farthest that a corner is from a point, mm; 0 if there is none. */
  double reachMm(PointMm from) {
    double most = 0;
    for (int k = 0; k < ends.length; k += 4) {
      most = Math.max(most, Math.hypot(ends[k] - from.x(), ends[k + 1] - from.z()));
    }
    return most;
  }

  /** Returns how far it reaches towards a direction, mm from the origin. */
  double mostMm(PointMm towards) {
    double most = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < ends.length; k += 4) {
      most = Math.max(most, ends[k] * towards.x() + ends[k + 1] * towards.z());
    }
    return most;
  }

  /** Returns the area enclosed, mm². */
  double areaMm2() {
    return count() == 0 ? 0 : areaMm2(new PointMm(ends[0], ends[1]), PointMm.ORIGIN);
  }

  /**
   * Returns the area that does not lie past a line, mm²: of each edge what does not, summed about a
   * point of the line, from which pieces of the line itself add nothing (Green's theorem).
   *
   * @param line a point of it
   * @param past the direction square to it in which the rest lies
   */
  double areaMm2(PointMm line, PointMm past) {
    double twice = 0;
    for (int k = 0; k < ends.length; k += 4) {
      double ax = ends[k] - line.x();
      double az = ends[k + 1] - line.z();
      double bx = ends[k + 2] - line.x();
      double bz = ends[k + 3] - line.z();
      double a = ax * past.x() + az * past.z();
      double b = bx * past.x() + bz * past.z();
      if (a > 0 && b > 0) {
        continue;
      }
      // about a point of the line the cross product of a piece is its share of the whole edge's
      double share = a > 0 ? b / (b - a) : b > 0 ? a / (a - b) : 1;
      twice += share * (ax * bz - az * bx);
    }
    return twice / 2;
  }

  /** Returns the polygons that have these edges. */
  Geometry outline() {
    Geometry outers = FACTORY.createPolygon();
    Geometry holes = FACTORY.createPolygon();
    for (int r = 0; r + 1 < rings.length; r++) {
      int first = rings[r];
      int size = rings[r + 1] - first;
      Coordinate[] ring = new Coordinate[size + 1];
      double twice = 0;
      for (int i = 0; i < size; i++) {
        int k = 4 * (first + i);
        ring[i] = new Coordinate(ends[k], ends[k + 1]);
        twice +=
            (ends[k] - ends[4 * first]) * (ends[k + 3] - ends[k + 1])
                - (ends[k + 1] - ends[4 * first + 1]) * (ends[k + 2] - ends[k]);
      }
      ring[size] = ring[0].copy();
      Geometry polygon = FACTORY.createPolygon(ring);
      if (twice < 0) {
        holes = holes.isEmpty() ? polygon : holes.union(polygon);
      } else {
        outers = outers.isEmpty() ? polygon : outers.union(polygon);
      }
    }
    return holes.isEmpty() ? outers : outers.difference(holes);
  }

  /** Returns whether a point that is not on an edge lies inside: an odd number of edges ahead. */
  boolean inside(double x, double z) {
    return (crossings(1, x, z) & 1) == 1;
  }

  private int crossings(int node, double x, double z) {
    int b = 4 * node;
    if (z < boxes[b + 1] || z > boxes[b + 3] || x > boxes[b + 2]) {
      return 0;
    }
    if (node < firstLeaf) {
      return crossings(2 * node, x, z) + crossings(2 * node + 1, x, z);
    }
    int found = 0;
    int from = 4 * RUN * (node - firstLeaf);
    for (int k = from; k < Math.min(from + 4 * RUN, ends.length); k += 4) {
      double z0 = ends[k + 1];
      double z1 = ends[k + 3];
      if (z0 > z != z1 > z && x < ends[k] + (z - z0) / (z1 - z0) * (ends[k + 2] - ends[k])) {
        found++;
      }
    }
    return found;
  }

  /** Distance of a point to the right of an edge, where the outside is, mm. */
  static double offLine(double[] ends, int k, double x, double z) {
    double ux = ends[k + 2] - ends[k];
    double uz = ends[k + 3] - ends[k + 1];
    return ((x - ends[k]) * uz - (z - ends[k + 1]) * ux) / Math.hypot(ux, uz);
  }
}
