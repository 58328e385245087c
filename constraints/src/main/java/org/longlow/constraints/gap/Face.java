package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;

/**
 * An outline with all the intervals across the machine over which it stands. For one pair of
 * outlines only the intervals that come closest matter, since nothing else differs.
 */
record Face(Edges edges, List<Interval> across) {

  /** Returns the faces of {@code prisms}: those that share an outline make one. */
  static List<Face> of(List<Prism> prisms) {
    Map<Geometry, List<Interval>> byOutline = new IdentityHashMap<>();
    List<Face> faces = new ArrayList<>(prisms.size());
    for (Prism prism : prisms) {
      List<Interval> known = byOutline.get(prism.outline());
      if (known != null) {
        known.add(prism.across());
      } else if (!prism.outline().isEmpty()) {
        List<Interval> across = new ArrayList<>(2);
        across.add(prism.across());
        byOutline.put(prism.outline(), across);
        faces.add(new Face(Edges.of(prism.outline()), across));
      }
    }
    return faces;
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
