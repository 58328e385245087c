package org.longlow.constraints.stand;

import java.util.Collection;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.PartShape;

/**
 * How a machine resists turning about its centre of mass, axes along those of the frame (ISO 8855).
 * Each part's mass is spread evenly over its body, each segment of a person is at its centre.
 *
 * @param rollKgM2 about the axis forward
 * @param pitchKgM2 about the axis to the left
 * @param yawKgM2 about the axis up
 * @param productKgM2 ∫xz dm
 */
public record Inertia(double rollKgM2, double pitchKgM2, double yawKgM2, double productKgM2) {

  private static final double M2 = 1e-6;

  /**
   * Returns that of parts and people.
   *
   * @param total all of them as one
   */
  public static Inertia of(Collection<PartShape> shapes, Rider rider, MassPoint total) {
    double[] sum = new double[4];
    for (PartShape shape : shapes) {
      if (shape.massKg() > 0) {
        MassPoint mass = new MassPoint(shape.massKg(), shape.centre(), shape.centreYMm());
        add(mass, shape.bulk().meanSquares(), total, sum);
      }
    }
    for (MassPoint mass : rider.masses()) {
      add(mass, new double[6], total, sum);
    }
    return new Inertia(
        M2 * (sum[1] + sum[2]), M2 * (sum[0] + sum[2]), M2 * (sum[0] + sum[1]), M2 * sum[3]);
  }

  private static void add(MassPoint mass, double[] own, MassPoint total, double[] sum) {
    double x = mass.at().x() - total.at().x();
    double y = mass.yMm() - total.yMm();
    double z = mass.at().z() - total.at().z();
    sum[0] += mass.massKg() * (own[0] + x * x);
    sum[1] += mass.massKg() * (own[1] + y * y);
    sum[2] += mass.massKg() * (own[2] + z * z);
    sum[3] += mass.massKg() * (own[5] + x * z);
  }
}
