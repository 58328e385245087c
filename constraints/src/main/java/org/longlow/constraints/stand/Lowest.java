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

  /** A round outline may end so far within its box, mm; more than ever. */
  private static final double CHORDS_MM = 1;

  /**
   * Returns how high the lower corner of a box is over a road, or, for -1, the other one of its
   * lower side, which nothing that reaches that side lies wholly above.
   */
  private static double lowestMm(Envelope box, PointMm along, PointMm from, int side) {
    double x = side * along.z() > 0 ? box.getMaxX() : box.getMinX();
    return along.x() * (box.getMinY() - from.z()) - along.z() * (x - from.x());
  }

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
    double bound = Double.POSITIVE_INFINITY;
    for (PartShape shape : standing.shapes().values()) {
      if (!(shape.part() instanceof WheelPart) && !shape.box().isNull()) {
        bound = Math.min(bound, lowestMm(shape.box(), along, from, -1) + CHORDS_MM);
      }
    }
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
      if (lowestMm(shape.box(), along, from, 1) > Math.min(least, bound)) {
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
