package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * What a body looks like cut square to its local x axis, between an edge below and one above.
 *
 * @param x where it is cut, mm
 * @param left height and place across the machine of its left side, from below to above, mm
 * @param right likewise of its right side, as many points
 */
record Cut(double x, List<double[]> left, List<double[]> right) {

  /** Turns back by less than this, as a share of the sides' product, are none. */
  private static final double STRAIGHT = 1e-6;

  /** Returns the part of it from one of its points to another. */
  Cut band(int from, int to) {
    return new Cut(x, left.subList(from, to + 1), right.subList(from, to + 1));
  }

  /** Returns the same cut with so many pieces for each of its sides' pieces. */
  Cut finer(int pieces) {
    return new Cut(x, finer(left, pieces), finer(right, pieces));
  }

  private static List<double[]> finer(List<double[]> side, int pieces) {
    List<double[]> points = new ArrayList<>();
    points.add(side.get(0));
    for (int i = 1; i < side.size(); i++) {
      double[] a = side.get(i - 1);
      double[] b = side.get(i);
      for (int k = 1; k <= pieces; k++) {
        double t = (double) k / pieces;
        points.add(new double[] {a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])});
      }
    }
    return points;
  }

  /** Returns its edge: up its left side and down its right. */
  List<double[]> ring() {
    List<double[]> ring = new ArrayList<>(left);
    for (int i = right.size() - 1; i >= 0; i--) {
      ring.add(right.get(i));
    }
    return ring;
  }

  /** Returns whether it turns one way all round. */
  boolean isConvex() {
    List<double[]> ring = ring();
    int n = ring.size();
    for (int i = 0; i < n; i++) {
      double[] a = ring.get(i);
      double[] b = ring.get((i + 1) % n);
      double[] c = ring.get((i + 2) % n);
      double ux = b[0] - a[0];
      double uy = b[1] - a[1];
      double vx = c[0] - b[0];
      double vy = c[1] - b[1];
      if (ux * vy - uy * vx > STRAIGHT * (1 + Math.hypot(ux, uy) * Math.hypot(vx, vy))) {
        return false;
      }
    }
    return true;
  }

  /** Returns the cut so far on from this to another that has as many points. */
  Cut towards(Cut other, double share) {
    return new Cut(
        x + share * (other.x - x),
        towards(left, other.left, share),
        towards(right, other.right, share));
  }

  private static List<double[]> towards(List<double[]> from, List<double[]> to, double share) {
    List<double[]> points = new ArrayList<>(from.size());
    for (int i = 0; i < from.size(); i++) {
      double[] a = from.get(i);
      double[] b = to.get(i);
      points.add(new double[] {a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])});
    }
    return points;
  }
}
