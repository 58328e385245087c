package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * A body within an outline whose breadth varies: cut square to its local x axis wherever something
 * changes, and straight between two cuts. On each cut its sides run from the edge below to the edge
 * above, in the axes of the outline.
 *
 * @param ring its outline, in turn
 * @param holes through it, places in turn
 * @param places where it is cut besides
 * @param sides what it looks like cut across
 * @param middleMm of what its sides are shares; NaN where that is half way between its ends
 */
record Loft(
    List<Girth> ring, List<List<Girth>> holes, List<Double> places, Sides sides, double middleMm) {

  /** Places nearer to each other than this are one, mm. */
  private static final double LEAST_MM = 1e-6;

  /**
   * What lies between two cuts, straight between equal points of both.
   *
   * @param endsBelow whether it ends below at the outline, not at a hole
   * @param endsAbove likewise above
   */
  record Strip(Cut from, Cut to, boolean endsBelow, boolean endsAbove) {}

  /** An edge of the outline or a hole, in the direction of x. */
  record Edge(Girth a, Girth b, boolean ofHole) {

    static Edge of(Girth p, Girth q, boolean ofHole) {
      return p.x() <= q.x() ? new Edge(p, q, ofHole) : new Edge(q, p, ofHole);
    }

    boolean spans(double from, double to) {
      return b.x() - a.x() > LEAST_MM && a.x() <= from + LEAST_MM && b.x() >= to - LEAST_MM;
    }

    Girth at(double x) {
      return a.towards(b, Math.max(0, Math.min(1, (x - a.x()) / (b.x() - a.x()))));
    }
  }

  /**
   * Returns its strips, from behind to ahead.
   *
   * @param pieces of a quarter of a curved side
   * @param around whether curved sides are gone round, instead of along their chords
   */
  List<Strip> strips(int pieces, boolean around) {
    List<Edge> edges = new ArrayList<>();
    add(edges, ring, false);
    holes.forEach(hole -> add(edges, hole, true));
    List<Strip> strips = new ArrayList<>();
    Double before = null;
    for (double x : cuts(edges)) {
      if (before != null && x - before > LEAST_MM) {
        double from = before;
        for (double kink : kinks(edges, before, x)) {
          between(edges, from, kink, pieces, around, strips);
          from = kink;
        }
        between(edges, from, x, pieces, around, strips);
        before = x;
      }
      before = before == null ? Double.valueOf(x) : before;
    }
    return strips;
  }

  /** Returns its image on the other side of the middle plane, holes filled. */
  Loft mirrored() {
    List<Girth> other =
        ring.stream().map(g -> new Girth(g.x(), g.z(), -g.to(), -g.from())).toList();
    return new Loft(other, List.of(), places, sides, middleMm);
  }

  /** Returns the largest radius that its sides can have: half its height, or its breadth. */
  double largestMm() {
    double low = ring.stream().mapToDouble(Girth::z).min().orElse(0);
    double high = ring.stream().mapToDouble(Girth::z).max().orElse(0);
    double out =
        ring.stream()
            .mapToDouble(g -> Math.max(Math.abs(g.from()), Math.abs(g.to())))
            .max()
            .orElse(0);
    return Math.max(1, Math.max((high - low) / 2, out));
  }

  private static void add(List<Edge> edges, List<Girth> ring, boolean ofHole) {
    for (int i = 0; i < ring.size(); i++) {
      edges.add(Edge.of(ring.get(i), ring.get((i + 1) % ring.size()), ofHole));
    }
  }

  /** Returns the edges of its outline. */
  List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    add(edges, ring, false);
    return edges;
  }

  /** Returns the cut between two of its edges, along the chords of curved sides. */
  Cut cut(double x, Edge below, Edge above, int pieces) {
    return cut(x, below, above, below, above, pieces, false);
  }

  private Iterable<Double> cuts(List<Edge> edges) {
    TreeSet<Double> cuts = new TreeSet<>();
    edges.forEach(e -> cuts.addAll(List.of(e.a().x(), e.b().x())));
    double first = cuts.first();
    double last = cuts.last();
    places.stream().filter(x -> x > first && x < last).forEach(cuts::add);
    return cuts;
  }

  /** The edges that run from one place to another, from below to above. */
  private static List<Edge> across(List<Edge> edges, double from, double to) {
    double middle = (from + to) / 2;
    return edges.stream()
        .filter(e -> e.spans(from, to))
        .sorted(Comparator.comparingDouble(e -> e.at(middle).z()))
        .toList();
  }

  /** The places between two cuts at which something else begins to say how round corners are. */
  private Iterable<Double> kinks(List<Edge> edges, double from, double to) {
    TreeSet<Double> kinks = new TreeSet<>();
    List<Edge> outer = across(edges, from, to).stream().filter(e -> !e.ofHole()).toList();
    for (int i = 0; i + 1 < outer.size(); i += 2) {
      Edge below = outer.get(i);
      Edge above = outer.get(i + 1);
      for (boolean left : new boolean[] {true, false}) {
        double[] first = sides.bounds(height(below, above, from), out(below, above, from, left));
        double[] last = sides.bounds(height(below, above, to), out(below, above, to, left));
        for (int k = 0; k < first.length; k++) {
          double share = first[k] / (first[k] - last[k]);
          double x = from + share * (to - from);
          if (first[k] * last[k] < 0 && x - from > LEAST_MM && to - x > LEAST_MM) {
            kinks.add(x);
          }
        }
      }
    }
    return kinks;
  }

  private static double height(Edge below, Edge above, double x) {
    return above.at(x).z() - below.at(x).z();
  }

  /** How far out a side is at the lower and at the upper edge. */
  private double[] out(Edge below, Edge above, double x, boolean left) {
    return new double[] {out(below.at(x), left), out(above.at(x), left)};
  }

  private double out(Girth g, boolean left) {
    return left ? g.to() - middle(g) : middle(g) - g.from();
  }

  private void between(
      List<Edge> edges, double from, double to, int pieces, boolean around, List<Strip> strips) {
    List<Edge> across = across(edges, from, to);
    // a body begins at an edge of the outline or ends at one of a hole, whichever comes in turn
    List<Edge> outer = across.stream().filter(e -> !e.ofHole()).toList();
    for (int i = 0; i + 1 < outer.size(); i += 2) {
      Edge below = outer.get(i);
      Edge above = outer.get(i + 1);
      List<Edge> within = across.subList(across.indexOf(below), across.indexOf(above) + 1);
      for (int k = 0; k + 1 < within.size(); k += 2) {
        Edge low = within.get(k);
        Edge high = within.get(k + 1);
        strips.add(
            new Strip(
                cut(from, below, above, low, high, pieces, around),
                cut(to, below, above, low, high, pieces, around),
                !low.ofHole(),
                !high.ofHole()));
      }
    }
  }

  /** The cut from one edge to another, where the body, holes filled, is between two. */
  private Cut cut(
      double x, Edge below, Edge above, Edge low, Edge high, int pieces, boolean around) {
    Girth b = below.at(x);
    Girth a = above.at(x);
    double height = a.z() - b.z();
    double from = height > LEAST_MM ? (low.at(x).z() - b.z()) / height : 0;
    double to = height > LEAST_MM ? (high.at(x).z() - b.z()) / height : 1;
    return new Cut(
        x,
        side(b, a, height, true, from, to, pieces, around),
        side(b, a, height, false, from, to, pieces, around));
  }

  private List<double[]> side(
      Girth below,
      Girth above,
      double height,
      boolean left,
      double from,
      double to,
      int pieces,
      boolean around) {
    int way = left ? 1 : -1;
    double[] middle = {middle(below), middle(above)};
    double[] out = {out(below, left), out(above, left)};
    List<double[]> points = sides.points(pieces, around, height, out);
    List<double[]> side = new ArrayList<>();
    for (double[] point : points) {
      double up = Math.max(from, Math.min(to, point[0]));
      double at = middle[0] + up * (middle[1] - middle[0]);
      double far = up == point[0] ? point[1] : between(points, up);
      side.add(new double[] {below.z() + up * height, at + way * far});
    }
    return side;
  }

  /** How far out the line of points is at a place between them. */
  private static double between(List<double[]> points, double up) {
    int i = 1;
    while (i + 1 < points.size() && points.get(i)[0] < up) {
      i++;
    }
    double[] a = points.get(i - 1);
    double[] b = points.get(i);
    double share = b[0] > a[0] ? Math.max(0, Math.min(1, (up - a[0]) / (b[0] - a[0]))) : 1;
    return a[1] + share * (b[1] - a[1]);
  }

  private double middle(Girth g) {
    return Double.isNaN(middleMm) ? (g.from() + g.to()) / 2 : middleMm;
  }
}
