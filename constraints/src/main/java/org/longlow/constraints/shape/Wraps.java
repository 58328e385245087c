package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.layout.Station;

/**
 * Bodies that are round cut across, laid flat: where straight lines run along them from cut to cut,
 * as on a cylinder or a cone, each such length is one piece that goes all round, with its seam in
 * the lowest middle; its ends are walls that fit into it.
 */
final class Wraps {

  /** Fewest pieces of a quarter of a curve: each bends too little to be taken for a corner. */
  private static final int PIECES = 16;

  /** Cuts that lie nearer than this to the lines past them are on these, mm. */
  private static final double STRAIGHT_MM = 0.01;

  /** Points nearer to each other than this are one, mm. */
  private static final double LEAST_MM = 1e-6;

  /** Walls of a smaller area are none, mm². */
  private static final double LEAST_MM2 = 1;

  private Wraps() {}

  /** Returns what a body is wrapped in, from behind to ahead, then its walls; else none. */
  static List<FlatPiece> of(Skin skin, Loft loft) {
    boolean curved =
        skin.part().outline().smooth().contains(true)
            || skin.part().breadth().stations().stream().anyMatch(Station::smooth);
    if (!skin.sided()
        || !skin.part().outline().closed()
        || loft.sides().isStraight()
        || !loft.holes().isEmpty()
        || curved) {
      return List.of();
    }
    int pieces = Math.max(PIECES, Lofted.pieces(loft.largestMm(), Slices.FLATNESS_MM));
    List<Loft.Strip> lengths = lengths(loft.strips(pieces, false));
    List<FlatPiece> wraps = new ArrayList<>();
    List<FlatPiece> walls = new ArrayList<>();
    for (int i = 0; i < lengths.size(); i++) {
      List<double[]> low = new ArrayList<>();
      List<double[]> high = new ArrayList<>();
      around(lengths.get(i), low, high);
      double t = skin.thicknessMm();
      Optional<Flattened> flat =
          low.size() < 4
              ? Optional.empty()
              : Flattened.of(low, high, new double[] {0, 0, -1}, true, t, skin.folded());
      if (flat.isEmpty()) {
        return List.of();
      }
      String what = lengths.size() == 1 ? "wrap" : "wrap " + (i + 1);
      wraps.add(Patterns.pattern(flat.get(), what, skin.bodies()));
      if (i == 0) {
        wall("rear end", skin, low, flat.get(), 1).ifPresent(walls::add);
      }
      if (i == lengths.size() - 1) {
        wall("front end", skin, high, flat.get(), -1).ifPresent(walls::add);
      }
    }
    wraps.addAll(walls);
    return wraps;
  }

  /** Strips put together as far as straight lines run along them; none where they do not join. */
  private static List<Loft.Strip> lengths(List<Loft.Strip> strips) {
    List<Loft.Strip> lengths = new ArrayList<>();
    List<Cut> between = new ArrayList<>();
    for (Loft.Strip s : strips) {
      int last = lengths.size() - 1;
      if (last >= 0 && !isSame(lengths.get(last).to(), s.from())) {
        return List.of();
      }
      between.add(s.from());
      if (last >= 0 && areBetween(between, lengths.get(last).from(), s.to())) {
        lengths.set(last, new Loft.Strip(lengths.get(last).from(), s.to(), true, true));
      } else {
        lengths.add(s);
        between.clear();
      }
    }
    return lengths;
  }

  private static boolean areBetween(List<Cut> cuts, Cut from, Cut to) {
    return cuts.stream()
        .allMatch(c -> isSame(c, from.towards(to, (c.x() - from.x()) / (to.x() - from.x()))));
  }

  private static boolean isSame(Cut one, Cut other) {
    List<double[]> a = one.ring();
    List<double[]> b = other.ring();
    for (int i = 0; i < a.size(); i++) {
      if (Math.hypot(a.get(i)[0] - b.get(i)[0], a.get(i)[1] - b.get(i)[1]) > STRAIGHT_MM) {
        return false;
      }
    }
    return Math.abs(one.x() - other.x()) < STRAIGHT_MM;
  }

  /** Both ends of the lines along a length, from the lowest middle up its left side and round. */
  private static void around(Loft.Strip length, List<double[]> low, List<double[]> high) {
    List<double[]> from = closed(length.from());
    List<double[]> to = closed(length.to());
    for (int i = 0; i < from.size(); i++) {
      double[] a = {length.from().x(), from.get(i)[1], from.get(i)[0]};
      double[] b = {length.to().x(), to.get(i)[1], to.get(i)[0]};
      int last = low.size() - 1;
      if (last < 0 || isApart(low.get(last), a) || isApart(high.get(last), b)) {
        low.add(a);
        high.add(b);
      }
    }
  }

  private static List<double[]> closed(Cut cut) {
    List<double[]> ring = cut.ring();
    double[] a = ring.get(0);
    double[] b = ring.get(ring.size() - 1);
    double[] middle = {(a[0] + b[0]) / 2, (a[1] + b[1]) / 2};
    List<double[]> closed = new ArrayList<>();
    closed.add(middle);
    closed.addAll(ring);
    closed.add(middle);
    return closed;
  }

  private static boolean isApart(double[] p, double[] q) {
    return Math.abs(p[1] - q[1]) > LEAST_MM || Math.abs(p[2] - q[2]) > LEAST_MM;
  }

  /** The wall at an end, as wide as the inside of the wrap is over all of the wall's thickness. */
  private static Optional<FlatPiece> wall(
      String what, Skin skin, List<double[]> outer, Flattened flat, int inward) {
    if (outer.stream().noneMatch(p -> isApart(outer.get(0), p))) {
      return Optional.empty();
    }
    List<double[]> middle = inward > 0 ? flat.low() : flat.high();
    List<double[]> other = inward > 0 ? flat.high() : flat.low();
    Geometry wall = null;
    for (double in : new double[] {0, skin.thicknessMm()}) {
      double x = outer.get(0)[0] + inward * in;
      List<Coordinate> ring = new ArrayList<>();
      for (int i = 0; i < outer.size(); i++) {
        double[] p = new double[3];
        for (int k = 0; k < 3; k++) {
          p[k] = 2 * middle.get(i)[k] - outer.get(i)[k];
        }
        double on = (x - p[0]) / (other.get(i)[0] - middle.get(i)[0]);
        double y = p[1] + on * (other.get(i)[1] - middle.get(i)[1]);
        double z = p[2] + on * (other.get(i)[2] - middle.get(i)[2]);
        ring.add(new Coordinate(y, z));
      }
      ring.set(ring.size() - 1, ring.get(0).copy());
      Geometry there = Curves.FACTORY.createPolygon(ring.toArray(Coordinate[]::new)).buffer(0);
      wall = wall == null ? there : wall.intersection(there);
    }
    return wall instanceof Polygon p && p.getArea() > LEAST_MM2
        ? Optional.of(
            new FlatPiece(
                what, skin.bodies(), p, List.of(), p.getEnvelopeInternal().getWidth(), List.of()))
        : Optional.empty();
  }
}
