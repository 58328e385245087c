package org.longlow.sketcher.desk;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * How the machine was seen before a slider or a finding put it into a stance, so that it is seen so
 * again once both are closed. Whoever has chosen a stance meanwhile stays in it.
 */
final class SeenBefore {

  /** What shows the machine in a stance of its own. */
  enum By {
    SLIDER,
    FINDING
  }

  private final Set<By> open = EnumSet.noneOf(By.class);
  private PictureOptions before;
  private PictureOptions put;

  /** One of them is about to show the machine, which is seen so now. */
  void enter(By by, PictureOptions now) {
    if (open.isEmpty()) {
      before = now;
    }
    open.add(by);
  }

  /** What is seen now was not chosen by anybody. */
  void put(PictureOptions shown) {
    put = shown;
  }

  /** One of them is closed; returns how the machine is to be seen, if that is as before. */
  Optional<PictureOptions> leave(By by, BoardState shown, PictureOptions now) {
    if (!open.remove(by) || !open.isEmpty()) {
      return Optional.empty();
    }
    boolean unchosen =
        !now.asDrawn()
            && (now.stance().isEmpty() || put != null && now.stance().equals(put.stance()));
    Optional<PictureOptions> back = unchosen ? Optional.of(again(shown, now)) : Optional.empty();
    forget();
    return back;
  }

  private PictureOptions again(BoardState shown, PictureOptions now) {
    if (before.asDrawn()) {
      return shown.in(Optional.empty(), now);
    }
    PictureOptions back = now.withStance(before.stance()).withOpening(before.opening());
    // whoever was picked meanwhile stays
    boolean unpicked = put == null || now.person().equals(put.person());
    return unpicked ? back.withPerson(before.person()).withSeated(before.seated()) : back;
  }

  /** Forgets what was open. */
  void forget() {
    open.clear();
    before = null;
    put = null;
  }
}
