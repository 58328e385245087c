package org.longlow.constraints.check.rule;

import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.space.Piece;

/**
 * A convex body as seen from a point: the convex polygon of its corners, each told by how far it is
 * to one side and up for each mm ahead. What is straight stays straight so.
 */
final class Tangents {

  /** What is nearer ahead than this is left off, mm. */
  private static final double NEAREST_MM = 0.1;

  /** Sides told apart no finer. */
  private static final double FINE = 1e-9;

  /** To the side of its corners, in turn against the clock. */
  private final double[] sides;

  /** Up of them. */
  private final double[] ups;

  private Tangents(double[] sides, double[] ups) {
    this.sides = sides;
    this.ups = ups;
  }

  /**
   * Returns how a body is seen.
   *
   * @param rings of its corners as {@link Piece#rings} tells them, each ahead, to the side and up,
   *     mm
   * @param from the point from which it is seen, likewise
   */
  static Tangents of(List<double[][]> rings, double[] from) {
    Seen seen = new Seen(from);
    for (int k = 0; k < rings.size(); k++) {
      double[][] ring = rings.get(k);
      for (int i = 0; i < ring.length; i++) {
        double[] c = ring[i];
        seen.corner(c);
        if (ring.length == 1) {
          for (int other = k + 1; other < rings.size(); other++) {
            seen.cut(c, rings.get(other)[0]);
          }
        } else {
          seen.cut(c, ring[(i + 1) % ring.length]);
          if (k + 1 < rings.size()) {
            seen.cut(c, rings.get(k + 1)[i]);
          }
        }
      }
    }
    return seen.hull();
  }

  /** Corners as they are seen, sorted from one side to the other and upwards. */
  private static final class Seen {
    private final double[] from;
    private double[] sides = new double[32];
    private double[] ups = new double[32];
    private int count;

    Seen(double[] from) {
      this.from = from;
    }

    void corner(double[] c) {
      double ahead = c[0] - from[0];
      if (ahead >= NEAREST_MM) {
        add((c[1] - from[1]) / ahead, (c[2] - from[2]) / ahead);
      }
    }

    /** Adds where an edge comes as near to the face as is looked, if it comes from beyond that. */
    void cut(double[] c, double[] d) {
      double near = c[0] - from[0];
      double far = d[0] - from[0];
      if (near < NEAREST_MM != far < NEAREST_MM) {
        double share = (NEAREST_MM - near) / (far - near);
        double side = c[1] - from[1];
        double up = c[2] - from[2];
        add(
            (side + share * (d[1] - from[1] - side)) / NEAREST_MM,
            (up + share * (d[2] - from[2] - up)) / NEAREST_MM);
      }
    }

    private void add(double side, double up) {
      if (count == sides.length) {
        sides = Arrays.copyOf(sides, 2 * count);
        ups = Arrays.copyOf(ups, 2 * count);
      }
      int at = count++;
      for (;
          at > 0 && (sides[at - 1] > side || (sides[at - 1] == side && ups[at - 1] > up));
          at--) {
        sides[at] = sides[at - 1];
        ups[at] = ups[at - 1];
      }
      sides[at] = side;
      ups[at] = up;
    }

    /** Returns the corners of its hull (Andrew's chain). */
    Tangents hull() {
      double[] x = new double[2 * count];
      double[] y = new double[2 * count];
      int size = 0;
      for (int pass = 0; pass < 2; pass++) {
        int start = size;
        for (int k = 0; k < count; k++) {
          int i = pass == 0 ? k : count - 1 - k;
          while (size > start + 1
              && turn(x[size - 2], y[size - 2], x[size - 1], y[size - 1], sides[i], ups[i]) <= 0) {
            size--;
          }
          x[size] = sides[i];
          y[size] = ups[i];
          size++;
        }
        if (size > start + 1 || pass > 0) {
          size--;
        }
      }
      return new Tangents(Arrays.copyOf(x, Math.max(0, size)), Arrays.copyOf(y, Math.max(0, size)));
    }

    private static double turn(double ax, double ay, double bx, double by, double cx, double cy) {
      return (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
    }
  }

  /** Returns whether the body stands straight ahead, on the level. */
  boolean straightAhead() {
    return first(1, 0, 0, 0) == 0;
  }

  /**
   * Returns the first angle to one side at which the body stands somewhere between two elevations,
   * rad; a right angle if it does nowhere.
   *
   * @param side 1 or -1
   * @param most as far as is looked, less than a right angle, rad
   * @param down the lowest ray below the level, rad
   * @param up the highest ray above the level, rad
   */
  double first(int side, double most, double down, double up) {
    First first = new First(side, Math.tan(most), -Math.tan(down), Math.tan(up));
    first.at(0);
    for (int i = 0; i < sides.length; i++) {
      int j = (i + 1) % sides.length;
      first.at(side * sides[i]);
      first.crossings(side * sides[i], ups[i], side * sides[j], ups[j], first.down);
      first.crossings(side * sides[i], ups[i], side * sides[j], ups[j], first.up);
    }
    return Math.atan(first.least);
  }

  /** The least of places at which the body stands between two elevations. */
  private final class First {
    private final int side;
    private final double end;
    private final double down;
    private final double up;
    private double least = Double.POSITIVE_INFINITY;

    First(int side, double end, double down, double up) {
      this.side = side;
      this.end = end;
      this.down = down;
      this.up = up;
    }

    void at(double s) {
      if (s >= 0 && s <= end && s < least && stands(side * s)) {
        least = s;
      }
    }

    /** Where an edge crosses the rays of an elevation, which rise as the root of 1 + s². */
    void crossings(double s, double w, double s2, double w2, double tangent) {
      if (Math.abs(s2 - s) < FINE) {
        return;
      }
      double slope = (w2 - w) / (s2 - s);
      double at = w - slope * s;
      double a = tangent * tangent - slope * slope;
      double b = -2 * at * slope;
      double c = tangent * tangent - at * at;
      if (Math.abs(a) < 1e-15) {
        if (b != 0) {
          at(-c / b);
        }
        return;
      }
      double root = b * b - 4 * a * c;
      if (root >= 0) {
        at((-b + Math.sqrt(root)) / (2 * a));
        at((-b - Math.sqrt(root)) / (2 * a));
      }
    }

    private boolean stands(double s) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < sides.length; i++) {
        int j = (i + 1) % sides.length;
        double from = Math.min(sides[i], sides[j]) - FINE;
        double to = Math.max(sides[i], sides[j]) + FINE;
        if (s < from || s > to) {
          continue;
        }
        boolean upright = Math.abs(sides[j] - sides[i]) < FINE;
        double share =
            upright ? 0 : Math.max(0, Math.min(1, (s - sides[i]) / (sides[j] - sides[i])));
        double w = ups[i] + share * (ups[j] - ups[i]);
        low = Math.min(low, upright ? Math.min(ups[i], ups[j]) : w);
        high = Math.max(high, upright ? Math.max(ups[i], ups[j]) : w);
      }
      double rise = Math.sqrt(1 + s * s);
      return low <= up * rise + FINE && high >= down * rise - FINE;
    }
  }
}
