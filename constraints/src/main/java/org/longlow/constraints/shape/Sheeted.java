package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;

/**
 * Sheet over bodies between cuts, its outer face on theirs: flat patches, each moved inward by the
 * thickness.
 *
 * @param prisms its pieces
 * @param bulk as if all of it lay on its outer face
 */
record Sheeted(List<Prism> prisms, Bulk bulk) {

  /** Patches smaller than this are none, mm². */
  private static final double LEAST_MM2 = 1e-6;

  /** Collects patches. */
  private static final class Patches {
    private final double thicknessMm;
    private final List<Prism> prisms = new ArrayList<>();
    private Bulk bulk = Bulk.NONE;

    Patches(double thicknessMm) {
      this.thicknessMm = thicknessMm;
    }

    /** Adds a patch whose corners follow each other, its outside where a direction points. */
    void add(List<double[]> corners, double[] outward) {
      double[] normal = new double[3];
      double size = 0;
      Bulk sheet = Bulk.NONE;
      double[] o = corners.get(0);
      for (int i = 1; i + 1 < corners.size(); i++) {
        double[] n = cross(minus(corners.get(i), o), minus(corners.get(i + 1), o));
        double part = length(n) / 2;
        size += part;
        sheet = sheet.plus(Bulk.of(o, corners.get(i), corners.get(i + 1), part, thicknessMm));
        for (int k = 0; k < 3; k++) {
          normal[k] += n[k];
        }
      }
      double length = length(normal);
      if (size < LEAST_MM2 || length < LEAST_MM2) {
        return;
      }
      bulk = bulk.plus(sheet);
      double on = normal[0] * outward[0] + normal[1] * outward[1] + normal[2] * outward[2];
      double in = (on > 0 ? -thicknessMm : thicknessMm) / length;
      List<double[]> points = new ArrayList<>(corners);
      for (double[] p : corners) {
        points.add(
            new double[] {p[0] + in * normal[0], p[1] + in * normal[1], p[2] + in * normal[2]});
      }
      Lofted.prism(points).ifPresent(prisms::add);
    }

    Sheeted sheet() {
      return new Sheeted(List.copyOf(prisms), bulk);
    }

    private static double[] minus(double[] p, double[] q) {
      return new double[] {p[0] - q[0], p[1] - q[1], p[2] - q[2]};
    }

    private static double[] cross(double[] u, double[] v) {
      return new double[] {
        u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]
      };
    }

    private static double length(double[] v) {
      return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }
  }

  /**
   * Returns the sheet over a body that is closed all round.
   *
   * @param sides whether it has sides besides the strip round its edge
   */
  static Sheeted over(List<Loft.Strip> strips, double thicknessMm, boolean sides) {
    Patches patches = new Patches(thicknessMm);
    for (Loft.Strip s : strips) {
      int last = s.from().left().size() - 1;
      for (int j = 0; sides && j < last; j++) {
        patches.add(quad(s, s.from().left(), j, j + 1, s.to().left()), new double[] {0, 1, 0});
        patches.add(quad(s, s.from().right(), j, j + 1, s.to().right()), new double[] {0, -1, 0});
      }
      if (s.endsBelow()) {
        patches.add(edge(s, 0), new double[] {0, 0, -1});
      }
      if (s.endsAbove()) {
        patches.add(edge(s, last), new double[] {0, 0, 1});
      }
    }
    walls(strips, patches);
    return patches.sheet();
  }

  /** Returns the sheet along an outline, half of its thickness to each side of it. */
  static Sheeted along(List<Girth> line, boolean closed, double thicknessMm) {
    Patches patches = new Patches(thicknessMm);
    for (int i = 0; i + 1 < line.size() || closed && i < line.size(); i++) {
      Girth p = line.get(i);
      Girth q = line.get((i + 1) % line.size());
      double length = Math.hypot(q.x() - p.x(), q.z() - p.z());
      double[] out = {(q.z() - p.z()) / length, 0, (p.x() - q.x()) / length};
      double half = length > 0 ? thicknessMm / 2 : 0;
      double dx = half > 0 ? half * out[0] : 0;
      double dz = half > 0 ? half * out[2] : 0;
      if (half > 0) {
        patches.add(
            List.of(
                new double[] {p.x() + dx, p.from(), p.z() + dz},
                new double[] {p.x() + dx, p.to(), p.z() + dz},
                new double[] {q.x() + dx, q.to(), q.z() + dz},
                new double[] {q.x() + dx, q.from(), q.z() + dz}),
            out);
      }
    }
    return patches.sheet();
  }

  private static List<double[]> quad(
      Loft.Strip s, List<double[]> from, int i, int j, List<double[]> to) {
    return List.of(
        at(s.from().x(), from.get(i)),
        at(s.from().x(), from.get(j)),
        at(s.to().x(), to.get(j)),
        at(s.to().x(), to.get(i)));
  }

  private static List<double[]> edge(Loft.Strip s, int i) {
    return List.of(
        at(s.from().x(), s.from().left().get(i)),
        at(s.from().x(), s.from().right().get(i)),
        at(s.to().x(), s.to().right().get(i)),
        at(s.to().x(), s.to().left().get(i)));
  }

  /** A wall square to the axis closes what begins or ends at a cut. */
  private static void walls(List<Loft.Strip> strips, Patches patches) {
    for (Loft.Strip s : strips) {
      if (strips.stream().noneMatch(o -> o.to().x() == s.from().x() && meet(o.to(), s.from()))) {
        wall(s.from(), -1, patches);
      }
      if (strips.stream().noneMatch(o -> o.from().x() == s.to().x() && meet(s.to(), o.from()))) {
        wall(s.to(), 1, patches);
      }
    }
  }

  /** Whether two cuts at one place have some height in common. */
  private static boolean meet(Cut a, Cut b) {
    double low = Math.max(a.left().get(0)[0], b.left().get(0)[0]);
    int i = a.left().size() - 1;
    int j = b.left().size() - 1;
    double high = Math.min(a.left().get(i)[0], b.left().get(j)[0]);
    return low < high;
  }

  private static void wall(Cut cut, int ahead, Patches patches) {
    int last = cut.left().size() - 1;
    for (int j = 0; j < last; j++) {
      List<double[]> corners = new ArrayList<>();
      cut.band(j, j + 1).ring().forEach(p -> corners.add(at(cut.x(), p)));
      patches.add(corners, new double[] {ahead, 0, 0});
    }
  }

  private static double[] at(double x, double[] heightAndPlace) {
    return new double[] {x, heightAndPlace[1], heightAndPlace[0]};
  }
}
