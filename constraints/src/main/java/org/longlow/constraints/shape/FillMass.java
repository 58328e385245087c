package org.longlow.constraints.shape;

import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;

/** What parts weigh that are filled by their material. */
final class FillMass {

  private FillMass() {}

  /**
   * Returns the given mass, or that of {@code volumeMm3} of the part's material where it is filled
   * by it, with what it holds when full; 0 where neither is known.
   */
  static double mass(Part part, double volumeMm3, Places places) {
    return part.traits().filled() || part.base().mass().isPresent()
        ? massOf(part, volumeMm3, places) + part.held().map(places::value).orElse(0.0)
        : 0;
  }

  /** As {@link #mass}, of a part whose volume is that of its material. */
  static double massOf(Part part, double volumeMm3, Places places) {
    PartBase base = part.base();
    if (base.mass().isPresent()) {
      return places.value(base.mass().get());
    }
    double density = Material.named(base.material()).map(Material::densityKgMm3).orElse(Double.NaN);
    return Double.isNaN(density) ? 0 : density * volumeMm3;
  }
}
