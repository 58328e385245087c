package org.longlow.rider.pose;

import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.RoundHull.Circle;

/** What a part of a body is made of: circles on its segment, as thick as it is there. */
final class Rounds {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Rounds() {}

  /** Returns the radius of a limb as round as its girth, mm. */
  static double girthRadius(Body body, String name) {
    return body.measures().get(name) / (2 * Math.PI);
  }

  static double mix(double atStart, double atEnd, double share) {
    return atStart + (atEnd - atStart) * share;
  }

  static Circle circle(PointMm centre, double radius) {
    return new Circle(centre, Math.max(1, radius));
  }

  static Flesh hull(String name, double inner, double outer, Circle... circles) {
    return new Flesh(name, FACTORY.createPolygon(RoundHull.ring(circles)), inner, outer);
  }
}
