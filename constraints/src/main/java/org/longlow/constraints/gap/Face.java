package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;

/**
 * An outline with all the intervals across the machine over which it stands. For one pair of
 * outlines only the intervals that come closest matter, since nothing else differs.
 *
 * @param pieces what is within them, where that is less than all
 */
record Face(Edges edges, List<Interval> across, List<Piece> pieces) {

  Face(Edges edges, List<Interval> across) {
    this(edges, across, List.of());
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
                new ArrayList<>(prism.pieces()));
        byOutline.put(prism.outline(), face);
        faces.add(face);
      }
    }
    return faces;
  }

  /** Returns whether it fills its outline over all of its intervals. */
  boolean isFull() {
    return pieces.isEmpty();
  }

  /** Returns the convex pieces that it is made of. */
  List<Piece> convex() {
    return isFull() ? Prism.blocks(edges.convex(), across) : pieces;
  }

  /** Returns it moved, its edges by a function that moves equal ones once. */
  Face moved(RigidMotion motion, Function<Edges, Edges> moving) {
    return new Face(
        moving.apply(edges), across, pieces.stream().map(p -> p.moved(motion)).toList());
  }

  /** Returns it shifted across the machine, left positive. */
  Face across(double mm) {
    return new Face(
        edges,
        across.stream().map(i -> new Interval(i.from() + mm, i.to() + mm)).toList(),
        pieces.stream().map(p -> p.across(mm)).toList());
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
