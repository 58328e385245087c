package org.longlow.constraints.check.road;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.shape.Prism;

/** The undersides of bodies to one side, each made once: most stand alike in every stance. */
final class Undersides {
  private final boolean left;
  private final Map<List<Prism>, LowSide> known = new IdentityHashMap<>();

  Undersides(boolean left) {
    this.left = left;
  }

  LowSide of(List<Prism> body) {
    return known.computeIfAbsent(body, b -> LowSide.of(b, left));
  }

  /** Returns that of a body which will not be asked for again. */
  LowSide once(List<Prism> body) {
    return LowSide.of(body, left);
  }
}
