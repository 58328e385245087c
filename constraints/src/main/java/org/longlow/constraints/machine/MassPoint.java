package org.longlow.constraints.machine;

import java.util.List;
import org.longlow.rider.geom.PointMm;

/**
 * A mass at its own centre.
 *
 * @param massKg kg, &gt;= 0
 * @param at mass centre in the elevation, mm
 * @param yMm how far the centre lies to the left of the middle plane, mm
 */
public record MassPoint(double massKg, PointMm at, double yMm) {

  public MassPoint {
    Values.notNegative("mass kg", massKg);
    if (at == null) {
      throw new IllegalArgumentException("a mass needs the place of its centre");
    }
    Values.finite("mass y mm", yMm);
  }

  /** A mass in the middle plane. */
  public MassPoint(double massKg, PointMm at) {
    this(massKg, at, 0);
  }

  /** A mass in the middle plane. */
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
    double my = 0;
    double mz = 0;
    for (MassPoint m : masses) {
      mass += m.massKg;
      mx += m.massKg * m.at.x();
      my += m.massKg * m.yMm;
      mz += m.massKg * m.at.z();
    }
    Values.positive("total mass kg", mass);
    return new MassPoint(mass, new PointMm(mx / mass, mz / mass), my / mass);
  }
}
