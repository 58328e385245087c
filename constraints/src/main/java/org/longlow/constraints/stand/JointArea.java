package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.rider.geom.PointMm;

/**
 * Area and centroid of what convex outlines cover together, from those stretches of their edges
 * that no other covers (Green's theorem). Corners are put on a grid so fine that nobody sees it,
 * where on which side of an edge a corner lies is exact: edges that lie on each other would
 * otherwise count twice or never.
 */
final class JointArea {

  /** Corners are whole numbers of so many bits; products of their differences fit a long. */
  private static final int BITS = 30;

  /** A convex outline, its corners counter-clockwise on the grid. */
  private record Ring(long[] x, long[] y, Envelope box) {

    int corners() {
      return x.length;
    }

    int after(int i) {
      return i + 1 < x.length ? i + 1 : 0;
    }

    /** More than nought where a place is left of an edge, so inside of it. */
    long inside(int edge, long atX, long atY) {
      int next = after(edge);
      return (x[next] - x[edge]) * (atY - y[edge]) - (y[next] - y[edge]) * (atX - x[edge]);
    }

    boolean covers(Ring other) {
      if (!box.covers(other.box)) {
        return false;
      }
      for (int edge = 0; edge < corners(); edge++) {
        for (int i = 0; i < other.corners(); i++) {
          if (inside(edge, other.x[i], other.y[i]) < 0) {
            return false;
          }
        }
      }
      return true;
    }
  }

  private final List<Ring> rings = new ArrayList<>();
  private double[] spans = new double[32];
  private double twice;
  private double mx;
  private double my;

  private JointArea() {}

  /**
   * Returns area and centroid; empty where nothing is covered.
   *
   * @param outlines points of each, whose hull it is, mm
   */
  static Optional<Silhouette> of(Collection<Coordinate[]> outlines) {
    Envelope all = new Envelope();
    outlines.forEach(o -> Arrays.stream(o).forEach(all::expandToInclude));
    double size = Math.max(all.getWidth(), all.getHeight());
    if (!(size > 0)) {
      return Optional.empty();
    }
    double scale = Math.scalb(1.0, BITS - 1 - Math.getExponent(size));
    JointArea joint = new JointArea();
    outlines.stream()
        .map(o -> ring(o, all.getMinX(), all.getMinY(), scale))
        .filter(r -> r.corners() > 2)
        .sorted(Comparator.comparingDouble((Ring r) -> -r.box.getArea()))
        .forEach(joint::add);
    joint.measure();
    if (!(joint.twice > 0)) {
      return Optional.empty();
    }
    PointMm middle =
        new PointMm(
            all.getMinX() + joint.mx / (3 * joint.twice) / scale,
            all.getMinY() + joint.my / (3 * joint.twice) / scale);
    return Optional.of(new Silhouette(joint.twice / 2 / scale / scale, middle));
  }

  /** Returns the hull of points put on the grid, without corners that are none. */
  private static Ring ring(Coordinate[] outline, double fromX, double fromY, double scale) {
    long[][] at =
        Arrays.stream(outline)
            .map(
                c ->
                    new long[] {
                      Math.round((c.x - fromX) * scale), Math.round((c.y - fromY) * scale)
                    })
            .sorted(Comparator.<long[]>comparingLong(p -> p[0]).thenComparingLong(p -> p[1]))
            .toArray(long[][]::new);
    long[][] hull = new long[2 * at.length + 1][];
    int n = 0;
    for (int pass = 0; pass < 2; pass++) {
      int first = n;
      for (int i = 0; i < at.length; i++) {
        long[] p = at[pass == 0 ? i : at.length - 1 - i];
        while (n > first + 1 && turn(hull[n - 2], hull[n - 1], p) <= 0) {
          n--;
        }
        hull[n++] = p;
      }
      n--; // where one half ends the other begins
    }
    long[] x = new long[n];
    long[] y = new long[n];
    Envelope box = new Envelope();
    for (int i = 0; i < n; i++) {
      x[i] = hull[i][0];
      y[i] = hull[i][1];
      box.expandToInclude(x[i], y[i]);
    }
    return new Ring(x, y, box);
  }

  private static long turn(long[] a, long[] b, long[] c) {
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  }

  /** Keeps a ring unless one before covers all of it. */
  private void add(Ring ring) {
    if (rings.stream().noneMatch(r -> r.covers(ring))) {
      rings.add(ring);
    }
  }

  private void measure() {
    for (int i = 0; i < rings.size(); i++) {
      Ring ring = rings.get(i);
      int of = i;
      int[] near =
          IntStream.range(0, rings.size())
              .filter(k -> k != of && rings.get(k).box.intersects(ring.box))
              .toArray();
      for (int edge = 0; edge < ring.corners(); edge++) {
        bare(ring, edge, covered(i, edge, near));
      }
    }
  }

  /** Puts the stretches of an edge that others cover into {@code spans}; returns their ends. */
  private int covered(int of, int edge, int[] near) {
    Ring ring = rings.get(of);
    int next = ring.after(edge);
    Envelope box = new Envelope(ring.x[edge], ring.x[next], ring.y[edge], ring.y[next]);
    int n = 0;
    for (int k : near) {
      Ring other = rings.get(k);
      if (!other.box.intersects(box)) {
        continue;
      }
      if (n + 2 > spans.length) {
        spans = Arrays.copyOf(spans, 2 * spans.length);
      }
      if (within(ring, edge, other, k < of, n)) {
        n += 2;
        if (spans[n - 2] == 0 && spans[n - 1] == 1) {
          spans[0] = 0;
          spans[1] = 1;
          return 2;
        }
      }
    }
    return n;
  }

  /**
   * Puts into {@code spans} from where to where another covers an edge, as shares of it. Of two
   * edges that run the same way on each other the first counts; of two that meet, neither.
   */
  private boolean within(Ring ring, int edge, Ring other, boolean first, int into) {
    int next = ring.after(edge);
    double from = 0;
    double to = 1;
    for (int b = 0; b < other.corners(); b++) {
      long start = other.inside(b, ring.x[edge], ring.y[edge]);
      long end = other.inside(b, ring.x[next], ring.y[next]);
      if (start == 0 && end == 0) {
        int last = other.after(b);
        boolean sameWay =
            (other.x[last] - other.x[b]) * (ring.x[next] - ring.x[edge])
                    + (other.y[last] - other.y[b]) * (ring.y[next] - ring.y[edge])
                > 0;
        if (sameWay && !first) {
          return false;
        }
      } else if (start <= 0 && end <= 0) {
        return false;
      } else if (start < 0) {
        from = Math.max(from, (double) start / ((double) start - end));
      } else if (end < 0) {
        to = Math.min(to, (double) start / ((double) start - end));
      }
    }
    spans[into] = from;
    spans[into + 1] = to;
    return from < to;
  }

  /** Counts what is left of an edge. */
  private void bare(Ring ring, int edge, int ends) {
    double at = 0;
    while (at < 1) {
      double next = 1;
      double reach = at;
      for (int i = 0; i < ends; i += 2) {
        if (spans[i] <= at) {
          reach = Math.max(reach, spans[i + 1]);
        } else {
          next = Math.min(next, spans[i]);
        }
      }
      if (reach > at) {
        at = reach;
      } else {
        count(ring, edge, at, next);
        at = next;
      }
    }
  }

  private void count(Ring ring, int edge, double from, double to) {
    int next = ring.after(edge);
    double dx = ring.x[next] - ring.x[edge];
    double dy = ring.y[next] - ring.y[edge];
    double ax = ring.x[edge] + from * dx;
    double ay = ring.y[edge] + from * dy;
    double bx = ring.x[edge] + to * dx;
    double by = ring.y[edge] + to * dy;
    double cross = ax * by - ay * bx;
    twice += cross;
    mx += (ax + bx) * cross;
    my += (ay + by) * cross;
  }
}
