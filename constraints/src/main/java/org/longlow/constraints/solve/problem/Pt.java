package org.longlow.constraints.solve.problem;

/**
 * A point of the elevation: x forward and z up, mm; each coordinate a variable, a constant or a
 * formula.
 *
 * @param x forward coordinate, mm
 * @param z height, mm
 */
public record Pt(Quantity x, Quantity z) {
  public Pt {
    if (x == null || z == null) {
      throw new IllegalArgumentException("a point needs both coordinates");
    }
  }

  /** A point whose coordinates are the two variables given. */
  public static Pt variables(int xVariable, int zVariable) {
    return new Pt(Quantity.variable(xVariable), Quantity.variable(zVariable));
  }

  /** A point that never moves. */
  public static Pt at(double xMm, double zMm) {
    return new Pt(Quantity.of(xMm), Quantity.of(zMm));
  }
}
