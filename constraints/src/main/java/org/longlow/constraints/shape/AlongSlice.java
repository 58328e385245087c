package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/**
 * The section of a body in a plane along the machine: where each cut square to its axis meets the
 * plane, from cut to cut, halved until that is straight.
 */
final class AlongSlice {

  /** What a line from cut to cut keeps within of the true edge, mm. */
  private static final double NEAR_MM = 0.005;

  /** Nearer cuts are not halved, mm. */
  private static final double LEAST_MM = 1e-4;

  /** Runs that end nearer to each other than this are one, mm. */
  private static final double JOINT_MM = 0.01;

  private final CutRings rings;
  private final double y;
  private final List<List<double[]>> open = new ArrayList<>();
  private final List<Geometry> found = new ArrayList<>();

  private AlongSlice(Loft loft, double y, int pieces) {
    this.rings = CutRings.of(loft, pieces);
    this.y = y;
  }

  /** Returns x and z of it. */
  static Geometry of(Loft loft, double y, int pieces) {
    AlongSlice slice = new AlongSlice(loft, y, pieces);
    TreeSet<Double> cuts = new TreeSet<>(loft.places());
    loft.ring().forEach(g -> cuts.add(g.x()));
    double first = loft.ring().stream().mapToDouble(Girth::x).min().orElse(0);
    double last = loft.ring().stream().mapToDouble(Girth::x).max().orElse(0);
    Double before = null;
    for (double x : cuts.subSet(first, true, last, true)) {
      if (before != null && x - before > LEAST_MM) {
        // within, so that steps count to the side they are on
        double in = LEAST_MM / 10;
        slice.between(before + in, slice.at(before + in), x - in, slice.at(x - in));
      }
      before = x;
    }
    slice.open.forEach(slice::close);
    return slice.found.isEmpty()
        ? Curves.FACTORY.createPolygon()
        : OverlayNGRobust.union(slice.found);
  }

  /** Where the plane is inside at a place: heights from and to, in turn. */
  private List<double[]> at(double x) {
    List<double[]> inside = new ArrayList<>();
    for (double[] ring : rings.at(x)) {
      List<Double> crossed = new ArrayList<>();
      for (int i = 0; i + 3 < ring.length; i += 2) {
        double a = ring[i + 1];
        double b = ring[i + 3];
        if (a <= y != b <= y) {
          crossed.add(ring[i] + (y - a) / (b - a) * (ring[i + 2] - ring[i]));
        }
      }
      crossed.sort(Comparator.naturalOrder());
      for (int i = 0; i + 1 < crossed.size(); i += 2) {
        inside.add(new double[] {crossed.get(i), crossed.get(i + 1)});
      }
    }
    inside.sort(Comparator.comparingDouble(r -> r[0]));
    return inside;
  }

  private void between(double from, List<double[]> a, double to, List<double[]> b) {
    if (a.isEmpty() && b.isEmpty() && to - from < 1) {
      return;
    }
    double middle = (from + to) / 2;
    List<double[]> m = at(middle);
    boolean same = a.size() == b.size() && a.size() == m.size();
    if (same && (to - from < LEAST_MM || isStraight(a, m, b))) {
      for (int i = 0; i < a.size(); i++) {
        add(from, a.get(i), to, b.get(i));
      }
    } else if (to - from > LEAST_MM) {
      between(from, a, middle, m);
      between(middle, m, to, b);
    }
  }

  private static boolean isStraight(List<double[]> a, List<double[]> m, List<double[]> b) {
    for (int i = 0; i < a.size(); i++) {
      for (int k = 0; k < 2; k++) {
        if (Math.abs((a.get(i)[k] + b.get(i)[k]) / 2 - m.get(i)[k]) > NEAR_MM) {
          return false;
        }
      }
    }
    return true;
  }

  /** Goes on with the run that ends there, or begins one. */
  private void add(double from, double[] a, double to, double[] b) {
    for (List<double[]> run : open) {
      double[] last = run.get(run.size() - 1);
      if (from - last[0] < LEAST_MM
          && Math.abs(a[0] - last[1]) < JOINT_MM
          && Math.abs(a[1] - last[2]) < JOINT_MM) {
        run.add(new double[] {to, b[0], b[1]});
        return;
      }
    }
    open.removeIf(run -> from - run.get(run.size() - 1)[0] > LEAST_MM && close(run));
    List<double[]> run = new ArrayList<>();
    run.add(new double[] {from, a[0], a[1]});
    run.add(new double[] {to, b[0], b[1]});
    open.add(run);
  }

  /** A run as an area, a little longer than it is so that it meets the next. */
  private boolean close(List<double[]> run) {
    List<Coordinate> ring = new ArrayList<>();
    int last = run.size() - 1;
    for (int i = 0; i <= last; i++) {
      double more = i == 0 ? -LEAST_MM / 5 : i == last ? LEAST_MM / 5 : 0;
      ring.add(new Coordinate(run.get(i)[0] + more, run.get(i)[1]));
    }
    for (int i = last; i >= 0; i--) {
      double more = i == 0 ? -LEAST_MM / 5 : i == last ? LEAST_MM / 5 : 0;
      ring.add(new Coordinate(run.get(i)[0] + more, run.get(i)[2]));
    }
    ring.add(ring.get(0).copy());
    Polygon area = Curves.FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
    if (area.getArea() > 0) {
      found.add(area.isValid() ? area : area.buffer(0));
    }
    return true;
  }
}
