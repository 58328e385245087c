package org.longlow.constraints.shape;

import java.util.List;

/**
 * Volume of a body and its moments about the origin of the axes it is told in.
 *
 * @param volume mm³
 * @param first ∫x, ∫y, ∫z, mm⁴
 * @param second ∫x², ∫y², ∫z², ∫xy, ∫yz, ∫zx, mm⁵
 */
record Bulk(double volume, double[] first, double[] second) {

  /** Gauss-Legendre points and weights on 0 to 1, exact to the fifth power. */
  private static final double[] POINTS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  static final Bulk NONE = new Bulk(0, new double[3], new double[6]);

  /**
   * Returns that of bodies between cuts. Between two cuts the area of a section is of second power
   * in x and its second moments of fourth, so that three points are exact.
   */
  static Bulk of(List<Loft.Strip> strips) {
    double[] sum = new double[10];
    for (Loft.Strip s : strips) {
      double length = s.to().x() - s.from().x();
      for (int k = 0; k < 3; k++) {
        Cut cut = s.from().towards(s.to(), POINTS[k]);
        add(cut, WEIGHTS[k] * length, sum);
      }
    }
    return new Bulk(
        sum[0],
        new double[] {sum[1], sum[2], sum[3]},
        new double[] {sum[4], sum[5], sum[6], sum[7], sum[8], sum[9]});
  }

  /** Adds a section times a weight: area and moments of a polygon by its corners (Green). */
  private static void add(Cut cut, double weight, double[] sum) {
    List<double[]> ring = cut.ring();
    double area = 0;
    double mz = 0;
    double my = 0;
    double mzz = 0;
    double myy = 0;
    double mzy = 0;
    for (int i = 0; i < ring.size(); i++) {
      double[] p = ring.get(i);
      double[] q = ring.get((i + 1) % ring.size());
      // up the left side, down the right: turning to the right, so the sign is turned
      double cross = q[0] * p[1] - p[0] * q[1];
      area += cross / 2;
      mz += cross * (p[0] + q[0]) / 6;
      my += cross * (p[1] + q[1]) / 6;
      mzz += cross * (p[0] * p[0] + p[0] * q[0] + q[0] * q[0]) / 12;
      myy += cross * (p[1] * p[1] + p[1] * q[1] + q[1] * q[1]) / 12;
      mzy += cross * (p[0] * q[1] + 2 * p[0] * p[1] + 2 * q[0] * q[1] + q[0] * p[1]) / 24;
    }
    double x = cut.x();
    double[] here = {area, x * area, my, mz, x * x * area, myy, mzz, x * my, mzy, x * mz};
    for (int k = 0; k < here.length; k++) {
      sum[k] += weight * here[k];
    }
  }
}
