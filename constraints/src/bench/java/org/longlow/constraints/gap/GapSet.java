package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** Seeded parts spread over a machine of 2.5 m by 1.2 m: bars, discs, bent strips and cowls. */
final class GapSet {

  private GapSet() {}

  static List<Prism> of(int parts) {
    SplittableRandom random = new SplittableRandom(77);
    List<Prism> prisms = new ArrayList<>();
    for (int i = 0; i < parts; i++) {
      PointMm at = new PointMm(random.nextDouble(2500), random.nextDouble(1200));
      double y = random.nextDouble(-250, 200);
      prisms.add(
          new Prism(outline(i % 4, at, random), new Interval(y, y + random.nextDouble(10, 200))));
    }
    return prisms;
  }

  private static Geometry outline(int kind, PointMm at, SplittableRandom random) {
    double turn = random.nextDouble(2 * Math.PI);
    double size = random.nextDouble(40, 250);
    switch (kind) {
      case 0:
        return Curves.bar(at, at.plus(PointMm.unit(turn).times(size)), 30);
      case 1:
        return Curves.disc(at, size / 2);
      case 2:
        PointMm knee = at.plus(PointMm.unit(turn).times(size));
        PointMm end = knee.plus(PointMm.unit(turn + 1).times(size));
        return Curves.strip(Curves.bent(List.of(at, knee, end), 100), 28);
      default:
        List<PointMm> corners = new ArrayList<>();
        for (int k = 0; k < 8; k++) {
          double reach = size * (0.6 + 0.4 * random.nextDouble());
          corners.add(at.plus(PointMm.unit(k * Math.PI / 4).times(reach)));
        }
        return Curves.polygon(Curves.through(corners, Collections.nCopies(8, true), true));
    }
  }

  /** Builds the indexes and measures the pairs nearer than the horizon. */
  static List<Gap> longlow(List<Prism> prisms, double horizonMm) {
    List<Solid> bodies = new ArrayList<>(prisms.size());
    for (int i = 0; i < prisms.size(); i++) {
      bodies.add(new Solid(Integer.toString(i), List.of(prisms.get(i))));
    }
    return Gaps.among(bodies, horizonMm, (a, b) -> horizonMm);
  }

  /** The reference: JTS distance of every pair of outlines. */
  static double jts(List<Prism> prisms) {
    double sum = 0;
    for (int i = 0; i < prisms.size(); i++) {
      for (int j = i + 1; j < prisms.size(); j++) {
        sum += prisms.get(i).outline().distance(prisms.get(j).outline());
      }
    }
    return sum;
  }
}
