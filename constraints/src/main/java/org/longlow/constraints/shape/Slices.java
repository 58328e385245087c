package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * Plane sections of a body in its local axes, with what lies on it taken off square to its surface:
 * of all bodies that a part is made of, holes filled. A section of what is left at a place holds
 * each point round which a ball as thick as the skin lies within the body, so within each section
 * nearby it has a disc of the ball; the discs are taken at places so near to each other that they
 * leave {@link #SKIN_MM} at most.
 *
 * @param lofts the bodies
 * @param skinMm what is taken off
 * @param sided whether the skin covers the sides too, not only the strip along the edge
 * @param under what they are cut off to where they lie under a sheet along a line
 */
public record Slices(List<Loft> lofts, double skinMm, boolean sided, Optional<UnderLine> under) {

  /** Curves of sections lie within this of the true ones, mm. */
  static final double FLATNESS_MM = 0.01;

  /** What discs of the ball leave at most, square to the surface, mm. */
  static final double SKIN_MM = 0.01;

  /** The same where a section only tells how an edge leans. */
  static final double LEAN_MM = 0.03;

  /** Skins thinner than this are none, mm. */
  private static final double LEAST_MM = 1e-6;

  /** Chords of a quarter of a round corner. */
  private static final int QUARTER = 24;

  /** Bends of less than this from point to point belong to a curve. */
  private static final double SHARP_RAD = 0.05;

  /** Which plane is cut: square to the local x axis, or to the axis across the machine. */
  public enum Way {
    ACROSS,
    ALONG
  }

  /**
   * Returns the section at a place: y and z of it across, x and z of it along, mm. Empty where
   * there is nothing.
   */
  Geometry at(Way way, double place) {
    return at(way, place, SKIN_MM);
  }

  /** As {@link #at(Way, double)}, with no more than {@code leftMm} left of the skin. */
  Geometry at(Way way, double place, double leftMm) {
    Geometry left = inside(way, place, leftMm);
    return under.isPresent() ? areas(under.get().within(left, way == Way.ACROSS, place)) : left;
  }

  /** As {@link #at}, with the skin still on it. */
  Geometry outside(Way way, double place) {
    Geometry all = outside(way, place, 0);
    return under.isPresent() ? areas(under.get().within(all, way == Way.ACROSS, place)) : all;
  }

  private Geometry inside(Way way, double place, double leftMm) {
    Geometry outside = outside(way, place, 0);
    if (skinMm < LEAST_MM || outside.isEmpty()) {
      return outside;
    }
    if (way == Way.ALONG && !sided) {
      // the strip runs straight across: its inner side is that of the section
      return areas(eroded(outside, skinMm));
    }
    double wider = sided ? 0 : 2 * skinMm;
    Geometry left = outside;
    for (double d : offsets(way, place, leftMm)) {
      double r = Math.sqrt(Math.max(0, skinMm * skinMm - d * d));
      // what lies the skin within one section lies at least that less all motion within another
      if (d != 0 && way == Way.ACROSS && skinMm - motionMm(place, place + d) >= r) {
        continue;
      }
      Geometry there = outside(way, place + d, wider);
      if (r > LEAST_MM && !there.isEmpty()) {
        there = eroded(there, r);
      }
      left = OverlayNGRobust.overlay(left, there, OverlayNG.INTERSECTION);
      if (left.isEmpty()) {
        break;
      }
    }
    return areas(left);
  }

  /** How far points of one section lie from the same of another at most; all where they differ. */
  private double motionMm(double place, double other) {
    if (lofts.size() > 1) {
      return Double.POSITIVE_INFINITY;
    }
    Loft loft = lofts.get(0);
    List<Cut> here = CutAt.of(loft).at(place, pieces(loft));
    List<Cut> there = CutAt.of(loft).at(other, pieces(loft));
    if (here.size() != 1 || there.size() != 1) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.max(
        motionMm(here.get(0).left(), there.get(0).left()),
        motionMm(here.get(0).right(), there.get(0).right()));
  }

  private static double motionMm(List<double[]> side, List<double[]> other) {
    double most = 0;
    for (int i = 0; i < side.size(); i++) {
      double[] p = side.get(i);
      double[] q = other.get(i);
      most = Math.max(most, Math.hypot(p[0] - q[0], p[1] - q[1]));
    }
    return most;
  }

  /** Returns the least and the greatest place at which there is something. */
  Interval extent(Way way) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Loft loft : lofts) {
      for (Girth g : loft.ring()) {
        if (under.isPresent() && !under.get().holds(g.x(), g.z())) {
          continue;
        }
        from = Math.min(from, way == Way.ACROSS ? g.x() : g.from());
        to = Math.max(to, way == Way.ACROSS ? g.x() : g.to());
      }
    }
    return new Interval(Math.min(from, to), Math.max(from, to));
  }

  /** Where discs of the ball are taken, from its middle, that one first. */
  private List<Double> offsets(Way way, double place, double leftMm) {
    double step = 2 * Math.acos(1 - Math.min(1, leftMm / skinMm));
    int half = (int) Math.max(2, Math.ceil(Math.PI / 2 / step));
    TreeSet<Double> offsets = new TreeSet<>();
    for (int k = -half; k <= half; k++) {
      offsets.add(skinMm * Math.sin(Math.PI / 2 * k / half));
    }
    if (way == Way.ACROSS) {
      for (Loft loft : lofts) {
        bends(loft).stream()
            .map(x -> x - place)
            .filter(d -> Math.abs(d) < skinMm)
            .forEach(offsets::add);
      }
    }
    return offsets.stream().sorted(Comparator.comparingDouble(Math::abs)).toList();
  }

  /** Where a body steps or bends sharply: a ball may rest in the bend itself. */
  private static List<Double> bends(Loft loft) {
    List<Double> bends = new ArrayList<>();
    List<Girth> ring = loft.ring();
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      double[] before = ring.get((i + n - 1) % n).way(ring.get(i));
      double[] after = ring.get(i).way(ring.get((i + 1) % n));
      double on = 0;
      for (int k = 0; k < before.length; k++) {
        on += before[k] * after[k];
      }
      if (on < Math.cos(SHARP_RAD)) {
        bends.add(ring.get(i).x());
      }
    }
    return bends;
  }

  private static Geometry eroded(Geometry section, double byMm) {
    BufferParameters round =
        new BufferParameters(QUARTER, BufferParameters.CAP_ROUND, BufferParameters.JOIN_ROUND, 5);
    round.setSimplifyFactor(1e-4);
    return BufferOp.bufferOp(section, -byMm, round);
  }

  /** The section of the outside, its sides farther out by so much. */
  private Geometry outside(Way way, double place, double widerMm) {
    List<Geometry> all = new ArrayList<>();
    for (Loft loft : lofts) {
      if (way == Way.ACROSS) {
        for (Cut cut : CutAt.of(loft).at(place, pieces(loft))) {
          all.add(face(cut, widerMm));
        }
      } else {
        all.add(AlongSlice.of(loft, place, pieces(loft)));
      }
    }
    return areas(union(all));
  }

  private static int pieces(Loft loft) {
    return Lofted.pieces(loft.largestMm(), FLATNESS_MM);
  }

  private static Geometry union(List<Geometry> all) {
    return all.size() == 1 ? all.get(0) : OverlayNGRobust.union(all);
  }

  /** A cut as an area, y to the right and z up. */
  private static Geometry face(Cut cut, double widerMm) {
    List<Coordinate> ring = new ArrayList<>();
    cut.left().forEach(p -> add(ring, p[1] + widerMm, p[0]));
    for (int i = cut.right().size() - 1; i >= 0; i--) {
      double[] p = cut.right().get(i);
      add(ring, p[1] - widerMm, p[0]);
    }
    while (ring.size() > 1 && ring.get(0).distance(ring.get(ring.size() - 1)) < LEAST_MM) {
      ring.remove(ring.size() - 1);
    }
    if (ring.size() < 3) {
      return Curves.FACTORY.createPolygon();
    }
    ring.add(ring.get(0).copy());
    Polygon face = Curves.FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    return face.isValid() ? face : face.buffer(0);
  }

  /** Adds a point unless it is that before: of points that all but meet, lines may cross. */
  private static void add(List<Coordinate> ring, double y, double z) {
    Coordinate c = new Coordinate(y, z);
    if (ring.isEmpty() || ring.get(ring.size() - 1).distance(c) >= LEAST_MM) {
      ring.add(c);
    }
  }

  /** Only what has an area. */
  private static Geometry areas(Geometry any) {
    List<Polygon> areas = new ArrayList<>();
    for (int i = 0; any != null && i < any.getNumGeometries(); i++) {
      if (any.getGeometryN(i) instanceof Polygon p && p.getArea() > 1e-6) {
        areas.add(p);
      }
    }
    return areas.size() == 1
        ? areas.get(0)
        : Curves.FACTORY.createMultiPolygon(areas.toArray(Polygon[]::new));
  }
}
