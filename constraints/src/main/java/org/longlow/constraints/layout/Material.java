package org.longlow.constraints.layout;

import java.util.Locale;
import java.util.Optional;

/**
 * Materials a part can be of, with their densities in kg/m³.
 *
 * <p>Metals and plain plastics: any handbook, from memory (stainless 7900 to 8000). Plywood: birch,
 * Handbook of Finnish Plywood and FPL-GTR-190 table 12-1, from memory. Laminate: glass 2560 and
 * resin 1200 kg/m³ at 30 % glass by mass, computed. Rubber and foam (where no layer says more):
 * common practice, no source. {@link #MIXED} has none: such a part needs its mass.
 */
public enum Material {
  STEEL(7850),
  STAINLESS(7950),
  ALUMINIUM(2700),
  TITANIUM(4430),
  PLYWOOD(680),
  LAMINATE(1430),
  ABS(1050),
  POLYCARBONATE(1200),
  RUBBER(1150),
  FOAM(45),
  MIXED(Double.NaN);

  private final double densityKgM3;

  Material(double densityKgM3) {
    this.densityKgM3 = densityKgM3;
  }

  /** Density in kg/m³; NaN for {@link #MIXED}. */
  public double densityKgM3() {
    return densityKgM3;
  }

  /** Density in kg/mm³. */
  public double densityKgMm3() {
    return densityKgM3 * 1e-9;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Returns the material called {@code word}. */
  public static Optional<Material> named(String word) {
    for (Material m : values()) {
      if (m.word().equals(word)) {
        return Optional.of(m);
      }
    }
    return Optional.empty();
  }
}
