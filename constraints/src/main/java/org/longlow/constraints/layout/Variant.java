package org.longlow.constraints.layout;

import java.util.List;
import java.util.Map;

/**
 * Another state of the same machine: what it has otherwise than the layout. All else is as the
 * layout says, also where that changes later.
 *
 * @param measures measures of the layout as they are in it
 * @param pins pins of the layout as they are in it
 * @param parts parts of the layout as they are in it
 * @param without parts that it has not
 * @param note for people, may be empty
 */
public record Variant(
    Map<String, Measure> measures,
    Map<String, Pin> pins,
    Map<String, Part> parts,
    List<String> without,
    String note) {

  /** The word that means the machine as it was built, wherever a variant is named. */
  public static final String AS_BUILT = "as-built";

  public Variant {
    measures = Ordered.copy(measures);
    pins = Ordered.copy(pins);
    parts = Ordered.copy(parts);
    without = List.copyOf(without);
  }
}
