package org.longlow.constraints.machine;

import java.util.List;
import org.longlow.rider.geom.PointMm;

/**
 * A mass at its own centre, in the elevation.
 *
 * @param massKg kg, &gt;= 0
 * @param at mass centre, mm
 */
public record MassPoint(double massKg, PointMm at) {

  public MassPoint {
    Values.notNegative("mass kg", massKg);
    if (at == null) {
      throw new IllegalArgumentException("a mass needs the place of its centre");
    }
  }

  public MassPoint(double massKg, double xMm, double zMm) {
    this(massKg, new PointMm(xMm, zMm));
  }

  /**
   * Returns all masses as one at their common centre.
   *
   * @throws IllegalArgumentException if together they weigh nothing
   */
  public static MassPoint total(List<MassPoint> masses) {
    double mass = 0;
    double mx = 0;
    double mz = 0;
    for (MassPoint m : masses) {
      mass += m.massKg;
      mx += m.massKg * m.at.x();
      mz += m.massKg * m.at.z();
    }
    Values.positive("total mass kg", mass);
    return new MassPoint(mass, mx / mass, mz / mass);
  }
}
