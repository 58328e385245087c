package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * Parts that open together.
 *
 * <p>With a pivot it turns about that pin. With a linkage it is the coupler of a four-bar linkage
 * whose two arms hinge on the frame at {@code frameArms} and on the section at {@code sectionArms}
 * (first arm: first pin of each); the first arm turns by {@code angle}.
 *
 * @param parts names of the parts that move
 * @param pivot single pivot, or absent for a linkage
 * @param frameArms the linkage's two pins on the frame
 * @param sectionArms the linkage's two pins on the section
 * @param angle turn from shut to fully open, counter-clockwise positive
 * @param opens by what it is opened, held open and held shut
 * @param note for people, may be empty
 */
public record Section(
    List<String> parts,
    Optional<String> pivot,
    List<String> frameArms,
    List<String> sectionArms,
    Formula angle,
    Opens opens,
    String note) {
  public Section {
    parts = List.copyOf(parts);
    frameArms = List.copyOf(frameArms);
    sectionArms = List.copyOf(sectionArms);
  }
}
