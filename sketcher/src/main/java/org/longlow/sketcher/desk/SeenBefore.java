package org.longlow.sketcher.desk;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.stand.Condition;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * Whether the machine was seen as drawn before a slider or a finding put it into a stance, so that
 * it is seen so again once both are closed. Whoever has chosen a stance meanwhile stays in it.
 */
final class DrawnBefore {

  /** What shows the machine in a stance of its own. */
  enum By {
    SLIDER,
    FINDING
  }

  private final Set<By> open = EnumSet.noneOf(By.class);
  private boolean drawn;
  private Optional<Condition> put = Optional.empty();

  /** One of them is about to show the machine, which is seen so now. */
  void enter(By by, PictureOptions now) {
    drawn |= now.asDrawn();
    open.add(by);
  }

  /** The stance that is seen now was not chosen by anybody. */
  void put(Optional<Condition> stance) {
    put = stance;
  }

  /** One of them is closed; returns whether the machine is to be seen as drawn again. */
  boolean leave(By by, PictureOptions now) {
    if (!open.remove(by) || !open.isEmpty()) {
      return false;
    }
    boolean back = drawn && (now.stance().isEmpty() || now.stance().equals(put));
    forget();
    return back;
  }

  /** Forgets what was open. */
  void forget() {
    open.clear();
    drawn = false;
    put = Optional.empty();
  }
}
