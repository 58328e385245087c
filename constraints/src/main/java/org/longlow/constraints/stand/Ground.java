package org.longlow.constraints.stand;

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
    PointMm d = frontAxle.minus(rearAxle);
    double sine = (frontRadiusMm - rearRadiusMm) / d.length();
    if (!(Math.abs(sine) < 1)) {
      throw new IllegalArgumentException(
          "the wheels stand " + d.length() + " mm apart, too close for one road under both");
    }
    double angle = d.angleRad() - Math.asin(sine);
    PointMm down = PointMm.unit(angle).left().times(-1);
    return new Ground(
        rearAxle.plus(down.times(rearRadiusMm)), frontAxle.plus(down.times(frontRadiusMm)));
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

  /** Returns a point of the frame in the axes of the road: x from the rear contact, z up. */
  public PointMm toRoad(PointMm p) {
    PointMm d = p.minus(rearContact);
    return new PointMm(along().dot(d), along().cross(d));
  }

  /** Returns a point of the road's axes in those of the frame. */
  public PointMm toFrame(PointMm road) {
    return rearContact.plus(along().times(road.x())).plus(along().left().times(road.z()));
  }

  /** Returns how far the frame is pitched nose-up against the drawn machine, rad. */
  public double noseUpRad() {
    return -along().angleRad();
  }
}
