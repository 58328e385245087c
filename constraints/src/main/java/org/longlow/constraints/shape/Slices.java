package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
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
 */
public record Slices(List<Loft> lofts, double skinMm, boolean sided) {

  /** Curves of sections lie within this of the true ones, mm. */
  static final double FLATNESS_MM = 0.01;

  /** What discs of the ball leave at most, square to the surface, mm. */
  private static final double SKIN_MM = 0.005;

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
    Geometry outside = outside(way, place, 0);
    if (skinMm < LEAST_MM || outside.isEmpty()) {
      return outside;
    }
    if (way == Way.ALONG && !sided) {
      // the strip runs straight across: its inner side is that of the section
      return eroded(outside, skinMm);
    }
    double wider = sided ? 0 : 2 * skinMm;
    Geometry left = outside;
    for (double d : offsets(way, place)) {
      double r = Math.sqrt(Math.max(0, skinMm * skinMm - d * d));
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

  /** Returns the least and the greatest place at which there is something. */
  Interval extent(Way way) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Loft loft : lofts) {
      for (Girth g : loft.ring()) {
        from = Math.min(from, way == Way.ACROSS ? g.x() : g.from());
        to = Math.max(to, way == Way.ACROSS ? g.x() : g.to());
      }
    }
    return new Interval(Math.min(from, to), Math.max(from, to));
  }

  /** Where discs of the ball are taken, from its middle. */
  private List<Double> offsets(Way way, double place) {
    double step = 2 * Math.acos(1 - Math.min(1, SKIN_MM / skinMm));
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
    return List.copyOf(offsets);
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
    cut.left().forEach(p -> ring.add(new Coordinate(p[1] + widerMm, p[0])));
    for (int i = cut.right().size() - 1; i >= 0; i--) {
      double[] p = cut.right().get(i);
      ring.add(new Coordinate(p[1] - widerMm, p[0]));
    }
    ring.add(ring.get(0).copy());
    Coordinate[] corners = ring.toArray(Coordinate[]::new);
    if (new Envelope(corners[0]).equals(box(corners)) || corners.length < 4) {
      return Curves.FACTORY.createPolygon();
    }
    Polygon face = Curves.FACTORY.createPolygon(corners);
    return face.isValid() ? face : face.buffer(0);
  }

  private static Envelope box(Coordinate[] corners) {
    Envelope box = new Envelope();
    Arrays.stream(corners).forEach(box::expandToInclude);
    return box;
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
