package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

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
      add(corners, outward, 0);
    }

    /** Adds one that is thicker on its inside, which has no weight. */
    void add(List<double[]> corners, double[] outward, double overMm) {
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
      double thick = thicknessMm + overMm;
      double in = (on > 0 ? -thick : thick) / length;
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
   * @param overMm how far it lies outside of the curves it goes round at most; it is that much
   *     thicker, so that it holds all of them
   * @param sides whether it has sides besides the strip round its edge
   */
  static Sheeted over(List<Loft.Strip> strips, double thicknessMm, double overMm, boolean sides) {
    Patches patches = new Patches(thicknessMm);
    for (Loft.Strip s : strips) {
      int last = s.from().left().size() - 1;
      if (sides) {
        sides(s, overMm, patches);
      }
      if (s.endsBelow()) {
        patches.add(edge(s, 0), new double[] {0, 0, -1}, overMm);
      }
      if (s.endsAbove()) {
        patches.add(edge(s, last), new double[] {0, 0, 1}, overMm);
      }
    }
    walls(strips, patches);
    return patches.sheet();
  }

  /** Returns the sheet of the sides of a body alone. */
  static Sheeted beside(List<Loft.Strip> strips, double thicknessMm) {
    Patches patches = new Patches(thicknessMm);
    strips.forEach(s -> sides(s, 0, patches));
    return patches.sheet();
  }

  private static void sides(Loft.Strip s, double overMm, Patches patches) {
    for (int j = 0; j + 1 < s.from().left().size(); j++) {
      patches.add(
          quad(s, s.from().left(), j, j + 1, s.to().left()), new double[] {0, 1, 0}, overMm);
      patches.add(
          quad(s, s.from().right(), j, j + 1, s.to().right()), new double[] {0, -1, 0}, overMm);
    }
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

  /** Walls square to the axis close what is not met by a body before or behind it. */
  private static void walls(List<Loft.Strip> strips, Patches patches) {
    for (Loft.Strip s : strips) {
      double from = s.from().x();
      double to = s.to().x();
      wall(s.from(), beside(strips, o -> o.to().x() == from, Loft.Strip::to), -1, patches);
      wall(s.to(), beside(strips, o -> o.from().x() == to, Loft.Strip::from), 1, patches);
    }
  }

  /** The faces of strips that end at a place, with the holes between them. */
  private static List<Geometry> beside(
      List<Loft.Strip> strips, Predicate<Loft.Strip> there, Function<Loft.Strip, Cut> end) {
    List<Geometry> faces = new ArrayList<>();
    Geometry before = null;
    for (Loft.Strip s : strips) {
      if (there.test(s)) {
        Geometry face = face(end.apply(s));
        faces.add(face);
        if (before != null && !s.endsBelow()) {
          faces.add(before.union(face).convexHull());
        }
        before = s.endsAbove() ? null : face;
      }
    }
    return faces;
  }

  private static Geometry face(Cut cut) {
    List<Coordinate> ring = new ArrayList<>();
    cut.ring().forEach(p -> ring.add(new Coordinate(p[0], p[1])));
    ring.add(ring.get(0));
    return Curves.FACTORY.createPolygon(ring.toArray(Coordinate[]::new)).buffer(0);
  }

  private static void wall(Cut cut, List<Geometry> beside, int ahead, Patches patches) {
    Geometry open = face(cut);
    for (Geometry face : beside) {
      open = open.equalsExact(face) ? Curves.FACTORY.createPolygon() : open.difference(face);
    }
    for (double[] piece : ConvexPieces.of(open)) {
      List<double[]> corners = new ArrayList<>();
      for (int i = 0; i < piece.length; i += 2) {
        corners.add(new double[] {cut.x(), piece[i + 1], piece[i]});
      }
      patches.add(corners, new double[] {ahead, 0, 0});
    }
  }

  private static double[] at(double x, double[] heightAndPlace) {
    return new double[] {x, heightAndPlace[1], heightAndPlace[0]};
  }
}
