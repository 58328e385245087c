package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Rod;
import org.longlow.rider.geom.PointMm;

/**
 * An outline with all the intervals across the machine over which it stands. For one pair of
 * outlines only the intervals that come closest matter, since nothing else differs.
 *
 * @param pieces what is within them, where that is less than all
 * @param core the middle line of round bars, where the pieces are such; else null
 */
record Face(Edges edges, List<Interval> across, List<Piece> pieces, Core core) {

  /** How many hulls a side of a body in pieces is taken as, for what takes long. */
  private static final int HULLS = 8;

  /**
   * The middle line of round bars.
   *
   * @param line there and back
   */
  record Core(Edges line, double radiusMm) {

    /**
     * Returns that of some pieces, of the first as far as others go on from it; null if they are no
     * bars. On the other side it is the same.
     */
    static Core of(List<Piece> pieces) {
      if (pieces.isEmpty() || !(pieces.get(0) instanceof Rod first)) {
        return null;
      }
      List<PointMm> line = new ArrayList<>(List.of(first.from()));
      for (Piece piece : pieces) {
        if (piece instanceof Rod rod && rod.from().equals(line.get(line.size() - 1))) {
          line.add(rod.to());
        }
      }
      return first.radiusMm() > 0 ? new Core(Edges.along(line), first.radiusMm()) : null;
    }

    /** Returns whether its line begins inside an outline. */
    boolean beginsIn(Edges outline) {
      return outline.inside(line.ends[0], line.ends[1]);
    }

    Core moved(RigidMotion motion) {
      return new Core(line.moved(motion), radiusMm);
    }
  }

  Face(Edges edges, List<Interval> across) {
    this(edges, across, List.of(), null);
  }

  /** Returns the faces of {@code prisms}: those that share an outline make one. */
  static List<Face> of(List<Prism> prisms) {
    Map<Geometry, Face> byOutline = new IdentityHashMap<>();
    List<Face> faces = new ArrayList<>(prisms.size());
    for (Prism prism : prisms) {
      Face known = byOutline.get(prism.outline());
      if (known != null && known.isFull() == prism.isFull()) {
        known.across.add(prism.across());
        known.pieces.addAll(prism.pieces());
      } else if (!prism.outline().isEmpty()) {
        Face face =
            new Face(
                known != null ? known.edges : Edges.of(prism.outline()),
                new ArrayList<>(List.of(prism.across())),
                new ArrayList<>(prism.pieces()),
                Core.of(prism.pieces()));
        byOutline.put(prism.outline(), face);
        faces.add(face);
      }
    }
    return faces;
  }

  /** Returns fewer faces that hold some: of those in pieces, hulls of a few in turn. */
  static List<Face> coarse(List<Face> faces) {
    List<Face> coarse = new ArrayList<>(faces.stream().filter(Face::isPlain).toList());
    if (faces.size() - coarse.size() <= HULLS) {
      return faces;
    }
    for (int side = -1; side <= 1; side++) {
      List<Face> there = new ArrayList<>();
      for (Face face : faces) {
        for (Interval i : face.isPlain() ? List.<Interval>of() : face.across) {
          if (side == (i.from() >= 0 ? 1 : i.to() <= 0 ? -1 : 0)) {
            there.add(new Face(face.edges, List.of(i)));
          }
        }
      }
      int each = Math.max(1, (there.size() + HULLS - 1) / HULLS);
      for (int k = 0; k < there.size(); k += each) {
        coarse.add(hull(there.subList(k, Math.min(there.size(), k + each))));
      }
    }
    return coarse;
  }

  private static Face hull(List<Face> faces) {
    List<Coordinate> corners = new ArrayList<>();
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Face face : faces) {
      double[] ends = face.edges.ends;
      for (int k = 0; k < ends.length; k += 4) {
        corners.add(new Coordinate(ends[k], ends[k + 1]));
      }
      from = Math.min(from, face.across.get(0).from());
      to = Math.max(to, face.across.get(0).to());
    }
    Geometry hull =
        new ConvexHull(corners.toArray(new Coordinate[0]), new GeometryFactory()).getConvexHull();
    return new Face(Edges.of(hull), List.of(new Interval(from, to)));
  }

  /** Returns whether it fills its outline over all of its intervals. */
  boolean isFull() {
    return pieces.isEmpty();
  }

  /** Returns whether it is a round bar or fills its outline over its intervals. */
  boolean isPlain() {
    return isFull() || core != null;
  }

  /** Returns the convex pieces that it is made of. */
  List<Piece> convex() {
    return isFull() ? edges.blocks(across) : pieces;
  }

  /** Returns some moved; outlines that they share are moved once. */
  static List<Face> moved(List<Face> faces, RigidMotion motion) {
    Map<Edges, Edges> done = new IdentityHashMap<>();
    List<Face> moved = new ArrayList<>(faces.size());
    for (Face face : faces) {
      moved.add(face.moved(motion, e -> done.computeIfAbsent(e, k -> k.moved(motion))));
    }
    return moved;
  }

  /** Returns it moved, its edges by a function that moves equal ones once. */
  private Face moved(RigidMotion motion, Function<Edges, Edges> moving) {
    return new Face(
        moving.apply(edges),
        across,
        pieces.isEmpty() ? pieces : new MovedPieces(pieces, motion),
        core == null ? null : core.moved(motion));
  }

  /** Returns it shifted across the machine, left positive. */
  Face across(double mm) {
    return new Face(
        edges,
        across.stream().map(i -> new Interval(i.from() + mm, i.to() + mm)).toList(),
        pieces.stream().map(p -> p.across(mm)).toList(),
        core);
  }

  /** Returns the smallest gap across the machine, mm; negative by how much they overlap. */
  double acrossMm(Face other) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < across.size(); i++) {
      for (int j = 0; j < other.across.size(); j++) {
        least = Math.min(least, across.get(i).gap(other.across.get(j)));
      }
    }
    return least;
  }

  /** Returns the distance of the boxes round both outlines, mm. */
  double apartMm(Face other) {
    double[] p = edges.boxes;
    double[] q = other.edges.boxes;
    double dx = Math.max(0, Math.max(p[4] - q[6], q[4] - p[6]));
    double dz = Math.max(0, Math.max(p[5] - q[7], q[5] - p[7]));
    return dx == 0 ? dz : dz == 0 ? dx : Math.sqrt(dx * dx + dz * dz);
  }

  /** Returns whether one outline holds a corner of the other; then they overlap. */
  boolean holdsCornerOf(Face other) {
    return edges.holdsRing(other.edges) || other.edges.holdsRing(edges);
  }
}
