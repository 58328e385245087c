package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * How far sides between two cuts are from flat. A hull of two cuts reaches out over a side that is
 * twisted, so such strips are cut finer.
 */
final class Twist {

  /** A side that lies nearer to its hull than this is flat enough, mm. */
  static final double LEAST_MM = 0.5;

  /** Most pieces along a strip and up it. */
  private static final int MOST = 8;

  private Twist() {}

  /** Returns strips whose sides are as good as flat from point to point. */
  static List<Loft.Strip> without(List<Loft.Strip> strips) {
    List<Loft.Strip> finer = new ArrayList<>();
    for (Loft.Strip s : strips) {
      int last = s.from().left().size() - 1;
      double off = 0;
      for (int j = 0; j < last; j++) {
        off = Math.max(off, mm(s, j, j + 1));
      }
      // twice as fine both ways is four times as near
      int n = (int) Math.min(MOST, Math.ceil(Math.sqrt(off / LEAST_MM)));
      if (n <= 1) {
        finer.add(s);
        continue;
      }
      Cut end = s.to().finer(n);
      Cut from = s.from().finer(n);
      Cut before = from;
      for (int k = 1; k <= n; k++) {
        Cut next = k == n ? end : from.towards(end, (double) k / n);
        finer.add(new Loft.Strip(before, next, s.endsBelow(), s.endsAbove()));
        before = next;
      }
    }
    return finer;
  }

  /** Returns how far the sides from one point to another lie from their hull, mm. */
  static double mm(Loft.Strip s, int i, int j) {
    double length = s.to().x() - s.from().x();
    return Math.max(
        mm(length, s.from().left(), s.to().left(), i, j),
        mm(length, s.from().right(), s.to().right(), i, j));
  }

  /** Half of what the two diagonals of a patch pass each other by. */
  private static double mm(double length, List<double[]> from, List<double[]> to, int i, int j) {
    double[] a = from.get(i);
    double[] b = from.get(j);
    double[] c = to.get(j);
    double[] d = to.get(i);
    double uz = c[0] - a[0];
    double uy = c[1] - a[1];
    double vz = d[0] - b[0];
    double vy = d[1] - b[1];
    double nx = uz * vy - uy * vz;
    double nz = length * (uy - vy);
    double ny = length * (vz - uz);
    double size = Math.sqrt(nx * nx + nz * nz + ny * ny);
    double across = (a[0] + c[0] - b[0] - d[0]) * nz + (a[1] + c[1] - b[1] - d[1]) * ny;
    return size > 0 ? Math.abs(across) / (4 * size) : 0;
  }
}
