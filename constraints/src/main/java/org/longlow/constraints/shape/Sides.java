package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Profile;

/**
 * The sides of a body cut across, with figures for formulas.
 *
 * @param shape of each side
 * @param cornerMm radius of the corners of flat ones
 * @param drawn up and out of the points of drawn ones
 */
record Sides(Profile.Shape shape, double cornerMm, List<List<Double>> drawn) {

  static Sides of(Profile profile, Places places) {
    return new Sides(
        profile.shape(),
        profile.corner().map(places::value).orElse(0.0),
        profile.drawn().stream()
            .map(s -> List.of(places.value(s.up()), places.value(s.out())))
            .toList());
  }

  /** Returns whether they are straight from the lower edge to the upper. */
  boolean isStraight() {
    return drawn.isEmpty() && shape == Profile.Shape.FLAT && cornerMm <= 0;
  }

  /** Returns whether some of them is curved. */
  boolean isCurved() {
    return drawn.isEmpty() && !isStraight();
  }

  /**
   * Returns the points of a side from the lower edge to the upper: place, 0 to 1, and how far out
   * it is from the middle, mm.
   *
   * @param pieces of a quarter of a curve
   * @param around whether they go round a curve, touching it, instead of along its chords
   * @param heightMm from edge to edge
   * @param outMm from the middle to the side at the lower and at the upper edge
   */
  List<double[]> points(int pieces, boolean around, double heightMm, double[] outMm) {
    List<double[]> points = new ArrayList<>();
    if (!drawn.isEmpty()) {
      points.add(new double[] {0, outMm[0] * drawnAt(0)});
      for (List<Double> p : drawn) {
        points.add(new double[] {p.get(0), straight(p.get(0), outMm) * p.get(1)});
      }
      points.add(new double[] {1, outMm[1] * drawnAt(1)});
    } else if (isStraight()) {
      points.add(new double[] {0, outMm[0]});
      points.add(new double[] {1, outMm[1]});
    } else {
      // tangents half a step from one of their points to the next meet farther out by this
      double wide = around ? 1 / Math.cos(Math.PI / 4 / pieces) : 1;
      int last = around ? pieces - 1 : pieces;
      for (int i = 0; i <= 2 * last + 1; i++) {
        boolean above = i > last;
        double turn = Math.PI / 2 / pieces * ((above ? 2 * last + 1 - i : i) + (around ? 0.5 : 0));
        curved(above, wide * Math.cos(turn), wide * Math.sin(turn), heightMm, outMm, points);
      }
    }
    return points;
  }

  /**
   * Adds a point of a quarter of a curve.
   *
   * @param down how far from its middle towards the edge, 0 to 1 of its radius
   * @param outward how far from its middle outward
   */
  private void curved(
      boolean above,
      double down,
      double outward,
      double heightMm,
      double[] outMm,
      List<double[]> points) {
    if (shape == Profile.Shape.OVAL) {
      double up = (1 + (above ? down : -down)) / 2;
      points.add(new double[] {up, straight(up, outMm) * outward});
      return;
    }
    double radius = heightMm > 0 ? radius(heightMm, outMm[above ? 1 : 0]) : 0;
    double in = heightMm > 0 ? radius * (1 - down) / heightMm : 0.5;
    double up = above ? 1 - in : in;
    points.add(new double[] {up, straight(up, outMm) - radius * (1 - outward)});
  }

  private static double straight(double up, double[] outMm) {
    return outMm[0] + up * (outMm[1] - outMm[0]);
  }

  /**
   * Returns by how much each of what bounds the radius of a corner is more than another: where one
   * of these changes its sign, something else bounds it. None where there are no corners.
   */
  double[] bounds(double heightMm, double[] outMm) {
    if (shape == Profile.Shape.OVAL || !isCurved()) {
      return new double[0];
    }
    double half = heightMm / 2;
    return shape == Profile.Shape.ROUND
        ? new double[] {half - outMm[0], half - outMm[1], outMm[0], outMm[1]}
        : new double[] {
          half - outMm[0],
          half - outMm[1],
          outMm[0],
          outMm[1],
          cornerMm - outMm[0],
          cornerMm - outMm[1],
          cornerMm - half
        };
  }

  private double radius(double heightMm, double outMm) {
    double most = Math.max(0, Math.min(heightMm / 2, outMm));
    return shape == Profile.Shape.ROUND ? most : Math.min(cornerMm, most);
  }

  private double drawnAt(double up) {
    List<Double> before = null;
    for (List<Double> point : drawn) {
      if (up <= point.get(0)) {
        if (before == null || point.get(0) - before.get(0) < 1e-12) {
          return point.get(1);
        }
        double share = (up - before.get(0)) / (point.get(0) - before.get(0));
        return before.get(1) + share * (point.get(1) - before.get(1));
      }
      before = point;
    }
    return before == null ? 1 : before.get(1);
  }
}
