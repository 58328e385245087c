package org.longlow.sketcher.desk;

import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.sketcher.picture.PictureOptions;

/** How the picture of a machine is asked for: at first, and after each thing a builder picks. */
final class Looks {

  /** Widest a name on the card may be, paper mm; sheets and reports have them whole. */
  private static final double NAME_MM = 26;

  private Looks() {}

  /** Returns the first look at a layout: the first of its crew is seated, the scale is kept. */
  static PictureOptions first(Layout layout, PictureOptions before) {
    String person = layout.crew().keySet().stream().findFirst().orElse("");
    return PictureOptions.PLAIN
        .withNames(true)
        .withNameWidth(NAME_MM)
        .withPerson(person)
        .withDenominator(before.denominator());
  }

  /**
   * Returns how to go on looking at a machine once it was seen first: as drawn if nobody sits on it
   * yet, so that it does not sink into its springs when its first seat is put down.
   */
  static PictureOptions onceSeen(BoardState first, PictureOptions now) {
    boolean drawn = first.standing().isEmpty() && first.study().placed().holds();
    return drawn ? now.withAsDrawn() : now;
  }

  /** Seats a person; the stance follows them. */
  static UnaryOperator<PictureOptions> seated(String person) {
    return o -> {
      PictureOptions next = o.withPerson(person);
      return o.asDrawn()
          ? next.withAsDrawn()
          : next.withStance(o.stance().filter(s -> s.kind() != Stance.Kind.LADEN));
    };
  }

  /** Shows or hides a person as a ghost. */
  static UnaryOperator<PictureOptions> ghost(String person, boolean shownToo) {
    return o -> {
      Set<String> ghosts = new LinkedHashSet<>(o.ghosts());
      if (shownToo) {
        ghosts.add(person);
      } else {
        ghosts.remove(person);
      }
      return o.withGhosts(ghosts);
    };
  }
}
