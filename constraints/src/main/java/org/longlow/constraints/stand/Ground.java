package org.longlow.constraints.stand;

import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.ride.GroundPlane;
import org.longlow.rider.geom.PointMm;

/**
 * The road under the machine, as a line in the axes of the frame.
 *
 * @param rearContact where the rear tyre touches it
 * @param frontContact where the front tyre touches it
 */
public record Ground(PointMm rearContact, PointMm frontContact) {

  /**
   * Returns the line that both tyres touch from above.
   *
   * @throws IllegalArgumentException if one wheel stands inside the other
   */
  public static Ground under(
      PointMm rearAxle, double rearRadiusMm, PointMm frontAxle, double frontRadiusMm) {
    RigidMotion onRoad = GroundPlane.stand(rearAxle, rearRadiusMm, frontAxle, frontRadiusMm);
    RigidMotion back = onRoad.inverse();
    return new Ground(
        back.apply(PointMm.ORIGIN), back.apply(new PointMm(onRoad.apply(frontAxle).x(), 0)));
  }

  /** Returns the forward direction of the road. */
  public PointMm along() {
    PointMm d = frontContact.minus(rearContact);
    return d.times(1 / d.length());
  }

  /** Returns the distance between the contact points, mm. */
  public double wheelbaseMm() {
    return frontContact.distance(rearContact);
  }

  /** Returns how high a point of the frame is above the road, mm. */
  public double heightMm(PointMm p) {
    return along().cross(p.minus(rearContact));
  }

  /** Returns how high points of the elevation are above the road, mm. */
  public double[] heightsMm(Coordinate[] points) {
    return onRoad(points)[1];
  }

  /**
   * Returns points of the elevation in the axes of the road, as {@link #toRoad} has each: first how
   * far ahead each is, then how high, mm.
   */
  public double[][] onRoad(Coordinate[] points) {
    PointMm along = along();
    double[] ahead = new double[points.length];
    double[] up = new double[points.length];
    for (int i = 0; i < points.length; i++) {
      double x = points[i].x - rearContact.x();
      double z = points[i].y - rearContact.z();
      ahead[i] = along.x() * x + along.z() * z;
      up[i] = along.x() * z - along.z() * x;
    }
    return new double[][] {ahead, up};
  }

  /** Returns a point of the frame in the axes of the road: x from the rear contact, z up. */
  public PointMm toRoad(PointMm p) {
    return ontoRoad().apply(p);
  }

  /** Returns {@link #toRoad}, for many points: its direction is worked out once. */
  public UnaryOperator<PointMm> ontoRoad() {
    PointMm along = along();
    return p -> {
      PointMm d = p.minus(rearContact);
      return new PointMm(along.dot(d), along.cross(d));
    };
  }

  /** Returns a point of the road's axes in those of the frame. */
  public PointMm toFrame(PointMm road) {
    return rearContact.plus(along().times(road.x())).plus(along().left().times(road.z()));
  }
}
