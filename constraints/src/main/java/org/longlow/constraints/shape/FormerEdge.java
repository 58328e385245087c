package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.geom.PointMm;

/** The edge of a former: places along it, notches, where it leans most. */
final class FormerEdge {

  /** Paces along an edge for the lean, mm. */
  private static final double PACE_MM = 3;

  /** How far a notch runs out over the edge, mm. */
  private static final double OVER_MM = 5;

  private final Geometry line;
  private final Coordinate[] ring;

  /** Takes a section; where it is in pieces, girth and notches are those of the largest. */
  FormerEdge(Geometry line) {
    this.line = line;
    Polygon largest = (Polygon) line.getGeometryN(0);
    for (int i = 1; i < line.getNumGeometries(); i++) {
      if (line.getGeometryN(i).getArea() > largest.getArea()) {
        largest = (Polygon) line.getGeometryN(i);
      }
    }
    this.ring = largest.getExteriorRing().getCoordinates();
  }

  /** Returns the places a share of the way up each side; one where both meet. */
  List<PointMm> atGirth(double share) {
    Envelope box = new Envelope();
    for (Coordinate c : ring) {
      box.expandToInclude(c);
    }
    double middle = (box.getMinX() + box.getMaxX()) / 2;
    List<double[]> meets = crossings(true, middle);
    if (meets.size() < 2) {
      return List.of();
    }
    double from = meets.stream().min(Comparator.comparingDouble(m -> m[2])).orElseThrow()[0];
    double to = meets.stream().max(Comparator.comparingDouble(m -> m[2])).orElseThrow()[0];
    double all = length();
    double on = (to - from + all) % all;
    List<PointMm> at = new ArrayList<>();
    at.add(at((from + share * on) % all));
    if (share > 0 && share < 1) {
      at.add(at((from - share * (all - on) + all) % all));
    }
    return at;
  }

  /** Returns the outermost places at a height: one to each side. */
  List<PointMm> atHeight(double z) {
    List<double[]> meets = crossings(false, z);
    if (meets.size() < 2) {
      return List.of();
    }
    meets.sort(Comparator.comparingDouble(m -> m[1]));
    return List.of(at(meets.get(0)[0]), at(meets.get(meets.size() - 1)[0]));
  }

  /** Returns way along the ring, x and z where it crosses a line of one x, or of one z. */
  private List<double[]> crossings(boolean upright, double at) {
    List<double[]> out = new ArrayList<>();
    double along = 0;
    for (int i = 0; i + 1 < ring.length; i++) {
      double a = upright ? ring[i].x : ring[i].y;
      double b = upright ? ring[i + 1].x : ring[i + 1].y;
      double length = ring[i].distance(ring[i + 1]);
      if (a <= at != b <= at) {
        double t = (at - a) / (b - a);
        out.add(
            new double[] {
              along + t * length,
              ring[i].x + t * (ring[i + 1].x - ring[i].x),
              ring[i].y + t * (ring[i + 1].y - ring[i].y)
            });
      }
      along += length;
    }
    return out;
  }

  private double length() {
    double all = 0;
    for (int i = 0; i + 1 < ring.length; i++) {
      all += ring[i].distance(ring[i + 1]);
    }
    return all;
  }

  private PointMm at(double along) {
    double left = along;
    for (int i = 0; i + 1 < ring.length; i++) {
      double length = ring[i].distance(ring[i + 1]);
      if (left <= length && length > 0) {
        double t = left / length;
        return new PointMm(
            ring[i].x + t * (ring[i + 1].x - ring[i].x),
            ring[i].y + t * (ring[i + 1].y - ring[i].y));
      }
      left -= length;
    }
    return new PointMm(ring[0].x, ring[0].y);
  }

  /**
   * Returns what is cut away for a batten: its chord over the width is the direction, so that at a
   * corner it lies across both edges alike.
   *
   * @param more how far the board goes on outward
   */
  Geometry notch(PointMm at, double widthMm, double depthMm, double more) {
    double along = nearest(at);
    double all = length();
    PointMm back = at((along - widthMm / 2 + all) % all);
    PointMm on = at((along + widthMm / 2) % all);
    PointMm way = on.minus(back);
    PointMm u = way.length() > 1e-9 ? way.times(1 / way.length()) : PointMm.unit(0);
    PointMm out = u.left();
    PointMm probe = at.plus(out.times(0.01));
    if (isInside(new Coordinate(probe.x(), probe.z()))) {
      out = out.times(-1);
    }
    PointMm a = at.minus(u.times(widthMm / 2));
    PointMm b = at.plus(u.times(widthMm / 2));
    PointMm deep = out.times(-depthMm);
    PointMm over = out.times(more + OVER_MM);
    return Curves.polygon(List.of(a.plus(deep), b.plus(deep), b.plus(over), a.plus(over)));
  }

  private double nearest(PointMm p) {
    Coordinate c = new Coordinate(p.x(), p.z());
    double best = Double.POSITIVE_INFINITY;
    double there = 0;
    double along = 0;
    for (int i = 0; i + 1 < ring.length; i++) {
      LineSegment s = new LineSegment(ring[i], ring[i + 1]);
      double d = s.distance(c);
      if (d < best) {
        best = d;
        there = along + Math.max(0, Math.min(1, s.projectionFactor(c))) * s.getLength();
      }
      along += s.getLength();
    }
    return there;
  }

  private boolean isInside(Coordinate c) {
    return new IndexedPointInAreaLocator(line).locate(c) != Location.EXTERIOR;
  }

  /** Returns how each side of the edge leans most. */
  List<FormerCut.Lean> leans(FormerLean lean) {
    Map<FormerCut.Edge, FormerCut.Lean> most = new EnumMap<>(FormerCut.Edge.class);
    for (int i = 0; i + 1 < ring.length; i++) {
      LineSegment s = new LineSegment(ring[i], ring[i + 1]);
      int paces = (int) Math.max(1, Math.ceil(s.getLength() / PACE_MM));
      for (int k = 0; k < paces; k++) {
        Coordinate p = s.pointAlong((k + 0.5) / paces);
        Coordinate out = lean.outward(s, p);
        FormerCut.Lean here = new FormerCut.Lean(edge(out), lean.offMm(p, out), lean.rad(p, out));
        FormerCut.Lean before = most.get(here.edge());
        if (before == null || Math.abs(here.offMm()) > Math.abs(before.offMm())) {
          most.put(here.edge(), here);
        }
      }
    }
    return most.values().stream().filter(l -> l.offMm() != 0).toList();
  }

  /** Which side of the former faces that way. */
  private static FormerCut.Edge edge(Coordinate out) {
    if (Math.abs(out.y) >= Math.abs(out.x)) {
      return out.y > 0 ? FormerCut.Edge.TOP : FormerCut.Edge.BOTTOM;
    }
    return out.x > 0 ? FormerCut.Edge.LEFT : FormerCut.Edge.RIGHT;
  }
}
