package org.longlow.constraints.machine.chassis;

import java.util.List;
import org.longlow.constraints.machine.Values;
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
    return Sum.of(masses).total();
  }

  /**
   * Masses added up so far, to be added to: mass, kg, and its moments about the axes, kg mm. What
   * balances on a lever past its pivot may be less than nothing.
   */
  public record Sum(double massKg, double momentX, double momentY, double momentZ) {

    /** No mass at all. */
    public static final Sum NONE = new Sum(0, 0, 0, 0);

    public static Sum of(List<MassPoint> masses) {
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
      return new Sum(mass, mx, my, mz);
    }

    /** Returns these with a share, of any sign, of a mass. */
    public Sum plus(MassPoint m, double share) {
      double kg = m.massKg * share;
      return new Sum(
          massKg + kg, momentX + kg * m.at.x(), momentY + kg * m.yMm, momentZ + kg * m.at.z());
    }

    public Sum plus(Sum other) {
      return new Sum(
          massKg + other.massKg,
          momentX + other.momentX,
          momentY + other.momentY,
          momentZ + other.momentZ);
    }

    /** Returns these after so many kg of them were shifted in the elevation. */
    public Sum shifted(double kg, PointMm by) {
      return new Sum(massKg, momentX + kg * by.x(), momentY, momentZ + kg * by.z());
    }

    /** Returns all as one mass at their common centre. */
    public MassPoint total() {
      Values.positive("total mass kg", massKg);
      return new MassPoint(
          massKg, new PointMm(momentX / massKg, momentZ / massKg), momentY / massKg);
    }
  }
}
