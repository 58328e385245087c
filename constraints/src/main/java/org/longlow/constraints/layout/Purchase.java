package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * What is paid for a part, and bought with it.
 *
 * @param price of all of it as it is bought, both sides together, in the currency of the layout
 * @param fasteners that hold it
 */
public record Purchase(Optional<Formula> price, List<Fastener> fasteners) {

  /** Nothing said. */
  public static final Purchase NONE = new Purchase(Optional.empty(), List.of());

  public Purchase {
    fasteners = List.copyOf(fasteners);
  }

  /**
   * Fasteners of one kind.
   *
   * @param what such as {@code M8 x 30 bolt, 8.8}
   * @param count how many, both sides together
   * @param price of one, in the currency of the layout
   */
  public record Fastener(String what, int count, Optional<Formula> price) {}
}
