package org.longlow.sketcher.template;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.machine.shop.TubeCope;
import org.longlow.constraints.machine.shop.TubeEndCut;

/**
 * What an end of a rail meets and how it is cut there.
 *
 * @param pin the pin of that end
 * @param to names of what it meets
 * @param how in words
 * @param cut to be wrapped round it; empty where it is sawn square or no template can tell
 */
record TubeEnd(String pin, List<String> to, String how, Optional<TubeEndCut> cut) {

  TubeEnd {
    to = List.copyOf(to);
  }

  /** An end that is sawn off square, or by hand as the words say. */
  static TubeEnd plain(String pin, List<String> to, String how) {
    return new TubeEnd(pin, to, how, Optional.empty());
  }

  /** Returns how far its longest point lies past its pin, mm; less than 0 short of it. */
  double pastPinMm() {
    return cut.map(c -> -c.lowestMm()).orElse(0.0);
  }

  /** Returns whether it is cut to the side of a round tube. */
  boolean isCope() {
    return cut.filter(TubeCope.class::isInstance).isPresent();
  }

  /** Returns what it is, for a card: pin and what is done there. */
  String line() {
    return pin + ": " + how;
  }
}
