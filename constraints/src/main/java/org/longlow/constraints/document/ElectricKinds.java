package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.NUMBER;

import java.util.function.Function;
import org.longlow.constraints.layout.Electric;
import org.longlow.constraints.layout.Part;

/** What parts take from the electrics and give to them. */
final class ElectricKinds {

  /** More is a slip of the unit: a thousand horsepower, W; judgement. */
  private static final double MOST_W = 750_000;

  /** More than any road machine carries, Wh; judgement. */
  private static final double MOST_WH = 200_000;

  private static final Kind<Electric> ELECTRIC =
      Kind.of(
          "electric",
          "What a part takes from the electrics of the machine and gives to them, in bare numbers.",
          ElectricKinds::electric);

  private ElectricKinds() {}

  static <P extends Part> Electric said(Source<P> s, Function<P, Electric> get) {
    return s.or(
        "electric",
        new Type.Nested<>(ELECTRIC),
        Electric.NOT_SAID,
        get,
        "What it takes from the electrics and gives to them, all of it, both sides together.");
  }

  private static Electric electric(Source<Electric> s) {
    return new Electric(
        s.may(
            "power",
            NUMBER.between(0, MOST_W),
            Electric::power,
            "What it takes while it is on, in W, as a bare number; of a motor that drives the"
                + " machine, at the demand speed."),
        s.may(
            "duty",
            NUMBER.between(0, 1),
            Electric::duty,
            "Share of a ride for which it is on, from 0 to 1; all of it unless said."),
        s.may(
            "supply",
            NUMBER.between(0, MOST_W),
            Electric::supply,
            "What it gives while riding, in W, as a bare number: a generator."),
        s.may(
            "energy",
            NUMBER.between(0, MOST_WH),
            Electric::energy,
            "What it stores, in Wh, as a bare number: a battery."));
  }
}
