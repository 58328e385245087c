package org.longlow.sketcher.picture;

import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shadows;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Planar;

/**
 * From where somebody looks at a machine that stands, or leans, on a road. Axes of what they see:
 * across the page, up it, and towards them.
 */
public final class Eye {

  /** Points are left out where the line past them misses them by no more, mm. */
  private static final double FLATNESS_MM = 0.1;

  private final Aspect aspect;

  /** How forward, left and up of the frame go across, up and towards. */
  private final double[][] rows = new double[3][3];

  /** Where the origin of the frame is seen. */
  private final double[] origin;

  /** What is seen upright as it leans on the page. */
  private final AffineTransformation roll;

  private Eye(Aspect aspect, double[][] onRoad, AffineTransformation roll) {
    this.aspect = aspect;
    this.roll = roll;
    origin = seen(onRoad[0]);
    for (int k = 0; k < 3; k++) {
      double[] unit = seen(onRoad[k + 1]);
      for (int i = 0; i < 3; i++) {
        rows[i][k] = unit[i] - origin[i];
      }
    }
  }

  /**
   * Returns it.
   *
   * @param ground the road under the machine upright
   * @param leaned how it leans, which is seen from ahead alone
   */
  static Eye of(Aspect aspect, Ground ground, Optional<Leaned> leaned) {
    boolean leans = aspect == Aspect.FRONT && leaned.isPresent();
    double[][] onRoad = new double[4][];
    for (int k = 0; k < 4; k++) {
      double x = k == 1 ? 1 : 0;
      double y = k == 2 ? 1 : 0;
      double z = k == 3 ? 1 : 0;
      PointMm upright = ground.toRoad(new PointMm(x, z));
      onRoad[k] =
          leans ? leaned.get().pitched(x, y, z) : new double[] {upright.x(), y, upright.z()};
    }
    return new Eye(
        aspect,
        onRoad,
        leans ? leaned.get().roll() : AffineTransformation.translationInstance(0, 0));
  }

  private double[] seen(double[] road) {
    return switch (aspect) {
      case SIDE -> new double[] {road[0], road[2], -road[1]};
      case FRONT -> new double[] {road[1], road[2], road[0]};
      case PLAN -> new double[] {road[0], road[1], road[2]};
    };
  }

  Aspect aspect() {
    return aspect;
  }

  /**
   * Returns where a point of the frame is on the page, mm.
   *
   * @param y how far it is to the left, mm
   */
  public PointMm page(PointMm elevation, double y) {
    double[] at = {elevation.x(), y, elevation.z()};
    Coordinate page = new Coordinate(part(0, at) + origin[0], part(1, at) + origin[1]);
    roll.transform(page, page);
    return new PointMm(page.x, page.y);
  }

  /** Returns where the place of a finding is on the page. */
  public PointMm page(Finding finding, Map<String, PartShape> shapes) {
    PointMm at = finding.where().orElseThrow();
    return page(at, finding.across().orElseGet(() -> across(finding, at, shapes)));
  }

  /**
   * What says nothing of where it is across is about a part, on the left where it has two sides, or
   * else about the middle.
   */
  private static double across(Finding finding, PointMm at, Map<String, PartShape> shapes) {
    Point place = Planar.FACTORY.createPoint(new Coordinate(at.x(), at.z()));
    return finding.about().parts().stream()
        .map(shapes::get)
        .filter(Objects::nonNull)
        .findFirst()
        .flatMap(
            shape ->
                shape.prisms().stream()
                    .min(
                        Comparator.comparingDouble((Prism p) -> p.outline().distance(place))
                            .thenComparing(p -> -p.across().to())))
        .map(p -> (p.across().from() + p.across().to()) / 2)
        .orElse(0.0);
  }

  private double part(int row, double[] p) {
    return rows[row][0] * p[0] + rows[row][1] * p[1] + rows[row][2] * p[2];
  }

  /** Returns a convex body of the frame in the axes of what is seen; for one thread. */
  Convex seen(Convex body) {
    double[] way = new double[3];
    double[] at = new double[3];
    return (d, out) -> {
      for (int k = 0; k < 3; k++) {
        way[k] = rows[0][k] * d[0] + rows[1][k] * d[1] + rows[2][k] * d[2];
      }
      body.farthest(way, at);
      for (int i = 0; i < 3; i++) {
        out[i] = part(i, at) + origin[i];
      }
    };
  }

  /** Returns what was seen upright as it leans on the page. */
  Geometry onPage(Geometry upright) {
    return roll.isIdentity() ? upright : roll.transform(upright);
  }

  /** Returns how a convex body in the axes of the frame is seen upright. */
  Shadow shadow(Convex body) {
    Convex seen = seen(body);
    return Shadow.of(Shadows.of(seen, FLATNESS_MM), seen);
  }
}
