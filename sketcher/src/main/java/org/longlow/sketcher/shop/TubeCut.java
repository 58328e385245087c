package org.longlow.sketcher.shop;

import org.longlow.constraints.layout.TubePart;
import org.longlow.sketcher.template.TubeBends;

/**
 * Tube to be cut for a part.
 *
 * @param part whose
 * @param pieces how many
 * @param diameterMm outside diameter, mm
 * @param wallMm mm
 * @param bends how it is bent
 * @param lengthMm to saw off, between the longest points of its ends, mm
 */
public record TubeCut(
    TubePart part, int pieces, double diameterMm, double wallMm, TubeBends bends, double lengthMm) {

  /** Returns its material in the word of the layout, empty where none is said. */
  public String material() {
    return part.base().material();
  }
}
