package org.longlow.constraints.stand;

import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Hubs;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;

/**
 * The lowest point of a machine but for its tyres.
 *
 * @param part whose it is
 * @param heightMm over the road, mm
 * @param at in the axes of the frame
 */
public record Lowest(String part, double heightMm, PointMm at) {

  /**
   * Returns the lowest point of parts over the road of a stance, and of what wheels have about
   * their axles; empty if there is nothing but wheels.
   */
  public static Optional<Lowest> of(Standing standing) {
    PointMm along = standing.ground().along();
    PointMm from = standing.ground().rearContact();
    double least = Double.POSITIVE_INFINITY;
    String part = null;
    Coordinate at = null;
    for (PartShape shape : standing.shapes().values()) {
      if (shape.part() instanceof WheelPart wheel) {
        PointMm axle = standing.places().pin(wheel.axle());
        for (HubBody body : Hubs.turning(wheel)) {
          double radius = standing.places().value(body.radius());
          double height = along.cross(axle.minus(from)) - radius;
          if (height < least) {
            least = height;
            part = wheel.name();
            PointMm bottom = axle.minus(along.left().times(radius));
            at = new Coordinate(bottom.x(), bottom.z());
          }
        }
        continue;
      }
      Envelope box = shape.outline().getEnvelopeInternal();
      double lowest =
          along.x() * (box.getMinY() - from.z())
              - along.z() * ((along.z() > 0 ? box.getMaxX() : box.getMinX()) - from.x());
      if (lowest > least) {
        continue; // not even a corner of its box is lower
      }
      for (Coordinate c : shape.outline().getCoordinates()) {
        double height = along.x() * (c.y - from.z()) - along.z() * (c.x - from.x());
        if (height < least) {
          least = height;
          part = shape.part().name();
          at = c;
        }
      }
    }
    return part == null
        ? Optional.empty()
        : Optional.of(new Lowest(part, least, new PointMm(at.x, at.y)));
  }
}
