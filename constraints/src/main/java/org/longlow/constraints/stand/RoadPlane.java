package org.longlow.constraints.stand;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.rider.geom.PointMm;

/**
 * The road as a plane under the frame, which may lean.
 *
 * @param startMm how high the origin of the frame is over it, mm
 * @param up its normal in the elevation; shorter than 1 where the machine leans
 * @param byY rise for each mm to the left
 */
public record RoadPlane(double startMm, PointMm up, double byY) {

  /** A point of a body and how high it is over the road, mm. */
  public record Low(double heightMm, PointMm at, double yMm) {}

  /** Returns the road under a machine that stands upright. */
  public static RoadPlane under(Ground ground) {
    PointMm up = ground.along().left();
    return new RoadPlane(-up.dot(ground.rearContact()), up, 0);
  }

  /** Returns this road seen by a body that has moved over it: from where that body was. */
  public RoadPlane from(RigidMotion motion) {
    return new RoadPlane(startMm + up.dot(motion.shift()), motion.inverse().turn(up), byY);
  }

  public double heightMm(PointMm at, double yMm) {
    return startMm + up.dot(at) + byY * yMm;
  }

  /**
   * Returns by how much more at least anything in a box of the elevation stands over this road than
   * over another; no end below where one of them leans.
   */
  public double aboveMm(RoadPlane other, Envelope box) {
    if (byY != 0 || other.byY != 0) {
      return Double.NEGATIVE_INFINITY;
    }
    PointMm turned = up.minus(other.up);
    double x = turned.x() > 0 ? box.getMinX() : box.getMaxX();
    double z = turned.z() > 0 ? box.getMinY() : box.getMaxY();
    return startMm - other.startMm + turned.dot(new PointMm(x, z));
  }

  /** Returns the lowest point of a body. */
  public Low lowest(List<Prism> body) {
    Low least = new Low(Double.POSITIVE_INFINITY, PointMm.ORIGIN, 0);
    double[] down = {-up.x(), -byY, -up.z()};
    double[] point = new double[3];
    for (Prism prism : body) {
      for (Piece piece : prism.pieces()) {
        piece.farthest(down, point);
        least = lower(least, new PointMm(point[0], point[2]), point[1]);
      }
      if (prism.isFull()) {
        double y = byY < 0 ? prism.across().to() : prism.across().from();
        for (Coordinate c : prism.outline().getCoordinates()) {
          least = lower(least, new PointMm(c.x, c.y), y);
        }
      }
    }
    return least;
  }

  private Low lower(Low least, PointMm at, double yMm) {
    double height = heightMm(at, yMm);
    return height < least.heightMm() ? new Low(height, at, yMm) : least;
  }
}
