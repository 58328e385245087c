package org.longlow.constraints.machine;

/**
 * Densities and moduli of what a shop works with, for layout and mass estimates.
 *
 * <p>The source of every value is marked as in {@link Mark}; where a range is given in the source,
 * the value is the usual one inside it.
 */
public enum Material {
  STEEL(7850, 205_000, Mark.FROM_MEMORY, "any handbook"),
  STAINLESS(7950, 200_000, Mark.FROM_MEMORY, "any handbook, 7900 to 8000"),
  ALUMINIUM(2700, 69_000, Mark.FROM_MEMORY, "any handbook"),
  TITANIUM(4430, 114_000, Mark.FROM_MEMORY, "any handbook"),
  BIRCH_PLYWOOD(680, 6960, Mark.FROM_MEMORY, "Handbook of Finnish Plywood; FPL-GTR-190 table 12-1"),
  SOFTWOOD_PLYWOOD(500, 6960, Mark.FROM_MEMORY, "Wood Handbook FPL-GTR-190 ch. 12, 450 to 550"),
  ABS(1050, 2_300, Mark.FROM_MEMORY, "any handbook"),
  POLYCARBONATE(1200, 2_300, Mark.FROM_MEMORY, "any handbook"),
  GLASS_FIBRE(2560, 72_000, Mark.FROM_MEMORY, "any handbook"),
  POLYESTER_RESIN(1200, 3_500, Mark.FROM_MEMORY, "any handbook"),
  EPOXY_RESIN(1150, 3_000, Mark.FROM_MEMORY, "any handbook"),
  PETROL(745, Double.NaN, Mark.CHECKED, "EN 228 limits 720 to 775 at 15 deg C"),
  ENGINE_OIL(880, Double.NaN, Mark.FROM_MEMORY, "0.85 to 0.91 kg/L"),
  COOLANT(1070, Double.NaN, Mark.FROM_MEMORY, "50/50 mix"),
  BRAKE_FLUID(1050, Double.NaN, Mark.FROM_MEMORY, "any handbook");

  /** How well a value is backed. */
  public enum Mark {
    CHECKED("checked"),
    FROM_MEMORY("from memory"),
    PRACTICE("common practice, no source");

    private final String words;

    Mark(String words) {
      this.words = words;
    }

    /** Returns the mark in words for reports. */
    public String words() {
      return words;
    }
  }

  private final double densityKgM3;
  private final double modulusMPa;
  private final Mark mark;
  private final String source;

  Material(double densityKgM3, double modulusMPa, Mark mark, String source) {
    this.densityKgM3 = densityKgM3;
    this.modulusMPa = modulusMPa;
    this.mark = mark;
    this.source = source;
  }

  /** Returns the density, kg/m³. */
  public double densityKgM3() {
    return densityKgM3;
  }

  /** Returns the modulus of elasticity, MPa; NaN for a fluid. */
  public double modulusMPa() {
    return modulusMPa;
  }

  /** Returns how well the density is backed. */
  public Mark mark() {
    return mark;
  }

  /** Returns where the density comes from. */
  public String source() {
    return source;
  }

  /** Returns the mass of a sheet per area, kg/m². */
  public double sheetKgM2(double thicknessMm) {
    return Values.positive("sheet thickness mm", thicknessMm) * densityKgM3 / 1000;
  }
}
