package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import org.longlow.rider.geom.PointMm;

/**
 * The outline of a drive as somebody traced it, in side view with its front to the right, from the
 * lower rear corner of the box round it.
 *
 * @param corners in order, each once, mm
 */
public record Tracing(List<PointMm> corners) {

  /** How far what is drawn may stay from what was traced, mm. */
  private static final double NEAR_MM = 0.5;

  /** What is no higher than this share of the whole may lie under a pan. */
  private static final double LOW = 0.6;

  public Tracing {
    corners = List.copyOf(corners);
  }

  /**
   * Returns the outline of points anywhere, scaled.
   *
   * @param points in order; the last may be the first again
   * @param scale mm for each of their units
   */
  static Tracing of(List<PointMm> points, double scale) {
    double left = points.stream().mapToDouble(PointMm::x).min().orElse(0);
    double low = points.stream().mapToDouble(PointMm::z).min().orElse(0);
    List<PointMm> corners = new ArrayList<>();
    for (PointMm p : points) {
      corners.add(p.minus(new PointMm(left, low)).times(scale));
    }
    int last = corners.size() - 1;
    if (last > 0 && corners.get(last).equals(corners.get(0))) {
      corners.remove(last);
    }
    return new Tracing(corners);
  }

  double lengthMm() {
    return corners.stream().mapToDouble(PointMm::x).max().orElse(0);
  }

  double heightMm() {
    return corners.stream().mapToDouble(PointMm::z).max().orElse(0);
  }

  /** Returns how far forward it reaches at a height, mm; at none of it, its length. */
  double frontMm(double upMm) {
    double front = Double.NEGATIVE_INFINITY;
    PointMm before = corners.get(corners.size() - 1);
    for (PointMm p : corners) {
      if ((before.z() - upMm) * (p.z() - upMm) <= 0) {
        double share = p.z() == before.z() ? 0 : (upMm - p.z()) / (before.z() - p.z());
        front = Math.max(front, p.x() + share * (before.x() - p.x()));
      }
      before = p;
    }
    return front > Double.NEGATIVE_INFINITY ? front : lengthMm();
  }

  /** Returns how much of it, from its rear, lies low, mm. */
  double lowRearMm() {
    double most = lengthMm();
    double limit = LOW * heightMm();
    PointMm before = corners.get(corners.size() - 1);
    for (PointMm p : corners) {
      if (p.z() > limit) {
        most = Math.min(most, p.x());
      }
      if ((before.z() > limit) != (p.z() > limit)) {
        double share = (limit - p.z()) / (before.z() - p.z());
        most = Math.min(most, p.x() + share * (before.x() - p.x()));
      }
      before = p;
    }
    return Math.max(0, most);
  }

  /** Returns whether its edge encloses one area and crosses itself nowhere. */
  boolean isSound() {
    return corners.size() > 2 && area().isValid();
  }

  private Polygon area() {
    List<Coordinate> ring = new ArrayList<>();
    corners.forEach(p -> ring.add(new Coordinate(p.x(), p.z())));
    ring.add(ring.get(0));
    return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
  }

  /** Returns it with fewer corners, each a tenth of a millimetre fine. */
  List<PointMm> drawn() {
    Geometry fewer = TopologyPreservingSimplifier.simplify(area(), NEAR_MM);
    Coordinate[] kept = ((Polygon) fewer).getExteriorRing().getCoordinates();
    List<PointMm> drawn = new ArrayList<>();
    for (int k = 0; k + 1 < kept.length; k++) {
      drawn.add(new PointMm(Math.rint(kept[k].x * 10) / 10, Math.rint(kept[k].y * 10) / 10));
    }
    return drawn;
  }
}
