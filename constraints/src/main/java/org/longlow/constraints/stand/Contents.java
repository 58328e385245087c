package org.longlow.constraints.stand;

import java.util.Collection;
import java.util.List;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;

/** Fuel and luggage: what parts weigh with and without what they hold. */
final class Contents {

  private Contents() {}

  /** Whether some part says what it holds. */
  static boolean any(Collection<PartShape> shapes) {
    return shapes.stream().anyMatch(s -> s.part().held().isPresent());
  }

  /** Returns the same parts with nothing in them; where they were. */
  static List<PartShape> without(Collection<PartShape> shapes, Places places) {
    return shapes.stream().map(s -> s.part().held().isEmpty() ? s : empty(s, places)).toList();
  }

  private static PartShape empty(PartShape shape, Places places) {
    return new PartShape(
        shape.part(),
        shape.outline(),
        shape.prisms(),
        // what nobody has weighed counts for nothing, full or empty
        Math.max(0, shape.massKg() - places.value(shape.part().held().orElseThrow())),
        shape.centre(),
        shape.centreYMm(),
        shape.varying());
  }
}
