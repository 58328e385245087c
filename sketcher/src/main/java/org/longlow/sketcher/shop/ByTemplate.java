package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Traits;
import org.longlow.constraints.layout.Traits.Make;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;

/**
 * What is made to a template out of solid material, such as arms, brackets and stands: no cutting
 * plan has it, and its material is to be bought all the same.
 *
 * @param material in the word of the layout, empty where none is said
 * @param parts made of it
 * @param netKg what they weigh, kg; without those whose mass is not known
 * @param unknown how many those are
 */
record ByTemplate(String material, List<String> parts, double netKg, int unknown) {

  ByTemplate {
    parts = List.copyOf(parts);
  }

  /** Returns all such parts without a price of their own, by material. */
  static List<ByTemplate> of(Study study) {
    Map<String, List<PartShape>> of = new LinkedHashMap<>();
    for (PartShape shape : study.shapes().values()) {
      if (isMaterial(shape.part()) && shape.part().base().purchase().price().isEmpty()) {
        of.computeIfAbsent(shape.part().base().material(), m -> new ArrayList<>()).add(shape);
      }
    }
    List<ByTemplate> all = new ArrayList<>();
    of.forEach(
        (material, shapes) ->
            all.add(
                new ByTemplate(
                    material,
                    shapes.stream().map(s -> s.part().name()).toList(),
                    shapes.stream().mapToDouble(PartShape::massKg).sum(),
                    (int) shapes.stream().filter(s -> !(s.massKg() > 0)).count())));
    return all;
  }

  /** Returns whether a shop makes it out of solid material. */
  private static boolean isMaterial(Part part) {
    Traits traits = part.traits();
    if (part instanceof SolidPart solid && solid.angle().sheet().isPresent()) {
      return false; // its sheet is planned
    }
    boolean bears =
        switch (traits.duty()) {
          case CARRIER, FRAME, STAND -> true;
          case CONTROL -> false; // such as a lever, which is cast or forged
          default -> traits.filled();
        };
    return bears && isToTemplate(part);
  }

  private static boolean isToTemplate(Part part) {
    return part.traits().make() == Make.MADE || part.traits().make() == Make.FITTED;
  }

  /** Returns whether shops sell it and a builder may make it: a battery, box or tank. */
  static boolean isBoughtOrMade(Part part) {
    return isToTemplate(part) && !isMaterial(part);
  }
}
