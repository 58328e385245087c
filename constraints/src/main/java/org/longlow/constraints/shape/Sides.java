package org.longlow.constraints.shape;

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

  /** Returns how many points a side has that is curved in quarters of so many pieces. */
  int count(int pieces) {
    if (!drawn.isEmpty()) {
      return drawn.size() + 2;
    }
    return switch (shape) {
      case FLAT -> cornerMm > 0 ? 2 * pieces + 2 : 2;
      case ROUND -> 2 * pieces + 2;
      case OVAL -> 2 * pieces + 1;
    };
  }

  /**
   * Returns where point {@code i} of a side is, 0 at the lower edge to 1 at the upper.
   *
   * @param heightMm from edge to edge
   * @param outMm from the middle to the side at the lower and at the upper edge
   */
  double up(int i, int pieces, double heightMm, double[] outMm) {
    if (!drawn.isEmpty()) {
      return i == 0 ? 0 : i > drawn.size() ? 1 : drawn.get(i - 1).get(0);
    }
    if (shape == Profile.Shape.OVAL) {
      return (1 - Math.cos(Math.PI * i / (2 * pieces))) / 2;
    }
    int last = count(pieces) - 1;
    if (last == 1 || heightMm <= 0) {
      return (double) i / last;
    }
    boolean above = i > last / 2;
    double radius = radius(heightMm, outMm[above ? 1 : 0]);
    double turn = Math.PI / 2 * (above ? last - i : i) / pieces;
    double in = radius * (1 - Math.cos(turn)) / heightMm;
    return above ? 1 - in : in;
  }

  /** Returns how far out a side is at a place of it, from the middle, mm. */
  double out(double up, double heightMm, double[] outMm) {
    double straight = outMm[0] + up * (outMm[1] - outMm[0]);
    if (!drawn.isEmpty()) {
      return straight * drawnAt(up);
    }
    if (shape == Profile.Shape.OVAL) {
      return straight * 2 * Math.sqrt(Math.max(0, up * (1 - up)));
    }
    boolean above = up > 0.5;
    double radius = radius(heightMm, outMm[above ? 1 : 0]);
    double in = radius - (above ? 1 - up : up) * heightMm;
    // where the edges meet in a point, rounding may bring the lower one above the upper
    return in <= 0
        ? straight
        : straight - radius + Math.sqrt(Math.max(0, radius * radius - in * in));
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
