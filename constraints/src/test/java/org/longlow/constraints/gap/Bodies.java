package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** Seeded shapes for tests of gaps. */
final class Bodies {

  static final Interval MIDDLE = new Interval(-50, 50);

  private Bodies() {}

  /** A star-like outline, a plate on a 10 mm grid, a bent strip, a ring with a hole, or a hook. */
  static Geometry outline(SplittableRandom random, double x, double z, double size) {
    PointMm at = new PointMm(x, z);
    switch (random.nextInt(5)) {
      case 0:
        List<PointMm> star = new ArrayList<>();
        int n = 3 + random.nextInt(14);
        for (int i = 0; i < n; i++) {
          double reach = size * (0.3 + 0.7 * random.nextDouble());
          star.add(at.plus(PointMm.unit(2 * Math.PI * i / n).times(reach)));
        }
        return Curves.polygon(star);
      case 1:
        double w = 10 * (1 + random.nextInt(8));
        double h = 10 * (1 + random.nextInt(8));
        return plate(10 * Math.round(x / 10), 10 * Math.round(z / 10), w, h);
      case 2:
        List<PointMm> line = new ArrayList<>(List.of(at));
        for (int i = 0; i < 3; i++) {
          line.add(line.get(i).plus(PointMm.unit(random.nextDouble(6.28)).times(size)));
        }
        return Curves.strip(line, 5 + random.nextDouble(20));
      case 3:
        Geometry hole = plate(x - 0.4 * size, z - 0.3 * size, 0.8 * size, 0.6 * size);
        return Curves.bar(at, at.plus(new PointMm(1, 0)), 2 * size).difference(hole);
      default:
        return plate(x, z, size, size)
            .difference(plate(x + 0.3 * size, z + 0.3 * size, size, 0.4 * size));
    }
  }

  static Geometry plate(double x, double z, double w, double h) {
    return Curves.polygon(
        List.of(
            new PointMm(x, z),
            new PointMm(x + w, z),
            new PointMm(x + w, z + h),
            new PointMm(x, z + h)));
  }

  static Solid body(String name, Geometry outline, Interval... across) {
    return new Solid(name, List.of(across).stream().map(i -> new Prism(outline, i)).toList());
  }

  /** A body of one outline across the middle. */
  static Solid body(Geometry outline) {
    return body("b", outline, MIDDLE);
  }

  /** A convex outline about a place, of three corners or more. */
  static Geometry hull(SplittableRandom random, double x, double z, double size) {
    Coordinate[] corners = new Coordinate[4 + random.nextInt(9)];
    for (int i = 0; i < corners.length; i++) {
      corners[i] =
          new Coordinate(x + random.nextDouble(-size, size), z + random.nextDouble(-size, size));
    }
    return new ConvexHull(corners, new GeometryFactory()).getConvexHull();
  }

  /** The room of each contact over a gap, mm, the least first. */
  static double[] rooms(Contacts contacts, double gap) {
    return IntStream.range(0, contacts.count())
        .mapToDouble(k -> contacts.roomMm(k, gap))
        .sorted()
        .toArray();
  }
}
