package org.longlow.constraints.gap;

import java.util.List;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** A named body with its indexes, made once and asked many times. Not for several threads. */
public final class Body {

  private final String name;
  private final List<Face> faces;
  private final Envelope envelope = new Envelope();

  public Body(String name, List<Prism> prisms) {
    this.name = name;
    this.faces = prisms.stream().filter(p -> !p.outline().isEmpty()).map(Face::new).toList();
    faces.forEach(f -> envelope.expandToInclude(f.envelope));
  }

  public String name() {
    return name;
  }

  Envelope envelope() {
    return envelope;
  }

  /**
   * Returns the gap to {@code other}, or null if it is more than {@code horizonMm}.
   *
   * @param horizonMm farthest gap of interest, mm
   */
  public Gap to(Body other, double horizonMm) {
    double best = horizonMm;
    PointMm where = null;
    for (Face a : faces) {
      for (Face b : other.faces) {
        double across = a.across.gap(b.across);
        if (across >= best || a.envelope.distance(b.envelope) > Math.max(0, best)) {
          continue;
        }
        double side = a.distance(b);
        double gap;
        if (across > 0) {
          gap = Math.hypot(across, side);
        } else if (side > 0) {
          gap = side;
        } else {
          gap = -Math.min(depth(a, b), -across);
          gap = Math.min(gap, 0);
        }
        if (gap < best) {
          best = gap;
          where = side > 0 ? a.between(b) : a.shared(b);
        }
      }
    }
    return where == null ? null : new Gap(name, other.name, best, where);
  }

  private static double depth(Face a, Face b) {
    Geometry shared = a.outline.intersection(b.outline);
    if (shared.isEmpty() || shared.getArea() == 0) {
      return 0;
    }
    return new MinimumDiameter(shared).getLength();
  }

  /** One prism with the indexes of its outline. */
  private static final class Face {
    final Geometry outline;
    final Interval across;
    final Envelope envelope;
    private IndexedFacetDistance facets;
    private PreparedGeometry prepared;

    Face(Prism prism) {
      this.outline = prism.outline();
      this.across = prism.across();
      this.envelope = outline.getEnvelopeInternal();
    }

    /** Distance in the elevation; 0 where the outlines touch or overlap. */
    double distance(Face other) {
      if (envelope.intersects(other.envelope)) {
        if (prepared == null) {
          prepared = PreparedGeometryFactory.prepare(outline);
        }
        if (prepared.intersects(other.outline)) {
          return 0;
        }
      }
      return facets().distance(other.outline);
    }

    private IndexedFacetDistance facets() {
      if (facets == null) {
        facets = new IndexedFacetDistance(outline);
      }
      return facets;
    }

    PointMm between(Face other) {
      Coordinate[] near = facets().nearestPoints(other.outline);
      return new PointMm((near[0].x + near[1].x) / 2, (near[0].y + near[1].y) / 2);
    }

    PointMm shared(Face other) {
      Point p = outline.intersection(other.outline).getCentroid();
      if (!p.isEmpty()) {
        return new PointMm(p.getX(), p.getY());
      }
      Coordinate c = other.outline.getCoordinate();
      return new PointMm(c.x, c.y);
    }
  }
}
