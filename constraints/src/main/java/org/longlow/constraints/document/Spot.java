package org.longlow.constraints.document;

import java.util.Collection;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.words.Quoted;

/** Where in a document a {@link Kind.Rule} looks, and what it may know of the rest. */
public interface Spot {

  /** The user's name of the entry, if it has one. */
  String name();

  /** The names that {@code target} may have here. */
  Collection<String> known(Referent target);

  /** The part {@code name}; null where it could not be read. */
  Part part(String name);

  /** The value in internal units, if it does not depend on a free measure. */
  Optional<Double> fixed(Formula formula);

  boolean isFree(String measure);

  /** Returns whether what stands at {@code key} could be read. */
  boolean isSound(String key);

  /** Returns whether the file says what stands at {@code key}, though it be the usual. */
  boolean isSaid(String key);

  /**
   * Reports a fault.
   *
   * @param key the field at fault, or empty for the whole
   * @param value as shown, or empty
   */
  void fault(String key, String value, String message, String remedy);

  /** Reports a fault of an entry of the list or group at {@code key}. */
  void itemFault(String key, Object item, String value, String message, String remedy);

  /** Reports a smallest value above the largest one. */
  default void ordered(Optional<Formula> from, Optional<Formula> to) {
    Optional<Double> low = from.flatMap(this::fixed);
    Optional<Double> high = to.flatMap(this::fixed);
    if (low.isPresent() && high.isPresent() && low.get() > high.get()) {
      fault(
          "to", Quoted.of(to.get().text()), "is less than from, " + from.get().text(), "swap them");
    }
  }
}
