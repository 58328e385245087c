package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * What somebody asks for while an edit is still being tried is meant for what that edit gives, so
 * it waits its turn. Belongs to the desk's thread.
 */
final class InTurn {

  private final BooleanSupplier behind;
  private final List<Runnable> waiting = new ArrayList<>();

  /**
   * @param behind whether what was asked for before is not done yet
   */
  InTurn(BooleanSupplier behind) {
    this.behind = behind;
  }

  /** Does it now, or when all before it is done. */
  void once(Runnable next) {
    waiting.add(next);
    goOn();
  }

  /** Does what waits, as far as it can be done. */
  void goOn() {
    while (!waiting.isEmpty() && !behind.getAsBoolean()) {
      waiting.remove(0).run();
    }
  }

  /** Nothing waits any more: it was meant for another machine. */
  void forget() {
    waiting.clear();
  }
}
