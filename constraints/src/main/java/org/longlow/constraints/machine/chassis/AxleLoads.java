package org.longlow.constraints.machine.chassis;

import java.util.List;
import org.longlow.constraints.machine.Values;

/**
 * Wheel loads of a machine standing or accelerating on level ground, from plain statics.
 *
 * <p>No aerodynamics and no slope. A negative load means that wheel is off the ground.
 *
 * @param wheelbaseMm mm, &gt; 0
 * @param total whole mass at the common centre, x from the rear contact
 */
public record AxleLoads(double wheelbaseMm, MassPoint total) {

  public AxleLoads {
    Values.positive("wheelbase mm", wheelbaseMm);
    Values.positive("total mass kg", total.massKg());
  }

  public static AxleLoads of(double wheelbaseMm, List<MassPoint> masses) {
    return new AxleLoads(wheelbaseMm, MassPoint.total(masses));
  }

  /** Returns the weight, N. */
  public double weightN() {
    return total.massKg() * Values.STANDARD_GRAVITY_MS2;
  }

  /** Returns the share of the weight on the front wheel, 0 to 1 when the centre is between. */
  public double frontShare() {
    return total.at().x() / wheelbaseMm;
  }

  public double frontN() {
    return weightN() * frontShare();
  }

  public double rearN() {
    return weightN() * (wheelbaseMm - total.at().x()) / wheelbaseMm;
  }

  /**
   * Returns the braking, g, at which the rear wheel lifts; infinite if the centre is on the road.
   */
  public double brakeLiftG() {
    return liftG(wheelbaseMm - total.at().x());
  }

  /** Returns the acceleration, g, at which the front wheel lifts. */
  public double driveLiftG() {
    return liftG(total.at().x());
  }

  private double liftG(double armMm) {
    double height = total.at().z();
    return height > 0 ? armMm / height : Double.POSITIVE_INFINITY;
  }
}
