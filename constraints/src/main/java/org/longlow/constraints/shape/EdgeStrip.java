package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

/**
 * The strip along the edge of a shell, laid flat: it bends along the edge alone.
 *
 * @param ring points of the edge in turn
 * @param flat where they are along the flat strip
 * @param left how far the strip reaches to the left there, between the sides where there are some
 * @param right likewise to the right, as a place across the machine
 */
record EdgeStrip(List<Girth> ring, FlatLine flat, double[] left, double[] right) {

  /** Paces for the slope of a side, mm. */
  private static final double PACE_MM = 0.01;

  /** Lays the strip of a sheet flat. */
  static EdgeStrip of(Skin skin, Loft loft) {
    boolean closed = skin.part().outline().closed();
    boolean sided = skin.sided();
    double thicknessMm = skin.thicknessMm();
    List<Girth> ring = loft.ring();
    List<double[]> points = new ArrayList<>();
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      Girth p = ring.get(i);
      Girth q = ring.get((i + 1) % ring.size());
      points.add(new double[] {p.x(), p.z()});
      twice += p.x() * q.z() - q.x() * p.z();
    }
    // a closed line is the outer face, an open one the middle of the sheet
    double off = closed ? thicknessMm / 2 : 0;
    FlatLine flat = FlatLine.of(points, closed, twice > 0, off, thicknessMm, skin.folded());
    int n = flat.alongMm().length;
    double[] left = new double[n];
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      Girth g = ring.get(i % ring.size());
      left[i] = g.to() - (sided ? thicknessMm * across(loft, g, true) : 0);
      right[i] = g.from() + (sided ? thicknessMm * across(loft, g, false) : 0);
      if (left[i] < right[i]) {
        // both sides meet before the edge: nothing of the strip is left between them
        left[i] = (left[i] + right[i]) / 2;
        right[i] = left[i];
      }
    }
    return new EdgeStrip(ring, flat, left, right);
  }

  /** How much thicker a slanting side is straight across than square to itself. */
  private static double across(Loft loft, Girth at, boolean leftSide) {
    CutAt cuts = CutAt.of(loft);
    double[] xs = cuts.places();
    double back = Math.max(xs[0], at.x() - PACE_MM);
    double on = Math.min(xs[xs.length - 1], at.x() + PACE_MM);
    double[] behind = side(cuts, back, at.z(), leftSide);
    double[] ahead = side(cuts, on, at.z(), leftSide);
    double along = on > back ? (ahead[0] - behind[0]) / (on - back) : 0;
    return Math.sqrt(1 + along * along + behind[1] * behind[1]);
  }

  /** Where a straight side is at a height, and how it slants up it. */
  private static double[] side(CutAt cuts, double x, double z, boolean leftSide) {
    List<Cut> all = cuts.at(x, 1);
    if (all.isEmpty()) {
      return new double[2];
    }
    List<double[]> side = leftSide ? all.get(0).left() : all.get(0).right();
    double[] a = side.get(0);
    double[] b = side.get(side.size() - 1);
    double slant = b[0] - a[0] > PACE_MM ? (b[1] - a[1]) / (b[0] - a[0]) : 0;
    return new double[] {a[1] + slant * (z - a[0]), slant};
  }

  /** Returns how wide it is at each point of the edge. */
  double wideMm(int i) {
    return left[i] - right[i];
  }

  /** Returns its outline: along it to the right, across the machine up. */
  Geometry outline() {
    List<Coordinate> edge = new ArrayList<>();
    int n = left.length;
    for (int i = 0; i < n; i++) {
      edge.add(new Coordinate(flat.alongMm()[i], left[i]));
    }
    for (int i = n - 1; i >= 0; i--) {
      edge.add(new Coordinate(flat.alongMm()[i], right[i]));
    }
    edge.add(edge.get(0).copy());
    return Curves.FACTORY.createPolygon(edge.toArray(Coordinate[]::new)).buffer(0);
  }
}
