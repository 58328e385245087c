package org.longlow.constraints.layout;

import java.util.Locale;
import java.util.Optional;

/**
 * Materials a part can be of, with their densities in kg/m³.
 *
 * <p>Densities are those of {@link org.longlow.constraints.machine.Material}, with their sources,
 * where it lists the material. Laminate: glass 2560 and resin 1200 kg/m³ at 30 % glass by mass,
 * computed. Rubber and foam (where no layer says more): common practice, no source. {@link #MIXED}
 * has none: such a part needs its mass.
 */
public enum Material {
  STEEL(org.longlow.constraints.machine.Material.STEEL),
  STAINLESS(org.longlow.constraints.machine.Material.STAINLESS),
  ALUMINIUM(org.longlow.constraints.machine.Material.ALUMINIUM),
  TITANIUM(org.longlow.constraints.machine.Material.TITANIUM),
  PLYWOOD(org.longlow.constraints.machine.Material.BIRCH_PLYWOOD),
  LAMINATE(1430),
  ABS(org.longlow.constraints.machine.Material.ABS),
  POLYCARBONATE(org.longlow.constraints.machine.Material.POLYCARBONATE),
  RUBBER(1150),
  FOAM(45),
  MIXED(Double.NaN);

  private final double densityKgM3;

  Material(org.longlow.constraints.machine.Material listed) {
    this(listed.densityKgM3());
  }

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
