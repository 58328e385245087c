package org.longlow.constraints.check.road;

import java.util.List;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Prism;

/** The undersides of bodies, each made once: most stand alike in every stance and edit. */
final class Undersides {

  private static final Undersides LEFT = new Undersides(true);
  private static final Undersides RIGHT = new Undersides(false);

  private final boolean left;
  private final ByThing<List<Prism>, LowSide> known = new ByThing<>(256, this::once);

  private Undersides(boolean left) {
    this.left = left;
  }

  /** Returns those at one side. */
  static Undersides at(boolean left) {
    return left ? LEFT : RIGHT;
  }

  LowSide of(List<Prism> body) {
    return known.of(body);
  }

  /** Returns that of a body which will not be asked for again. */
  LowSide once(List<Prism> body) {
    return LowSide.of(body, left);
  }
}
