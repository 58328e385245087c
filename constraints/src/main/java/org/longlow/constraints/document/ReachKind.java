package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;

import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.words.Quoted;

/** How far bodies reach to each side at a place of them. */
final class ReachKind {

  static final Kind<HalfBreadths> REACH =
      Kind.of(
              "reach",
              "How far a body reaches to each side at a place of it.",
              (Source<HalfBreadths> s) -> reach(s, r -> r))
          .rule(ReachKind::wide);

  /** What stands in for a reach that is left out. */
  static final String UNSAID = " Stations may say it instead.";

  private ReachKind() {}

  /** The fields of a reach in something that has one. */
  static <T> HalfBreadths reach(Source<T> s, Function<? super T, HalfBreadths> get) {
    return new HalfBreadths(
        s.may(
            "left",
            PartSizes.REACH,
            t -> get.apply(t).left(),
            "Reach to the left there; absent it is as far as the right."),
        s.may(
            "right",
            PartSizes.REACH,
            t -> get.apply(t).right(),
            "Reach to the right there; absent it is as far as the left."));
  }

  /** Returns it, or with its first station's reach where it says none; empty for neither. */
  static Optional<Spread> byStations(Spread spread, Breadth breadth) {
    return spread.said()
        ? Optional.of(spread)
        : breadth.stations().stream()
            .map(Station::reach)
            .filter(reach -> !reach.isEmpty())
            .findFirst()
            .map(r -> new Spread(r.leftOrRight(), r.rightOrLeft(), spread.both(), false));
  }

  /**
   * Returns how far something reaches.
   *
   * @param mayBeUnsaid whether stations may say it instead
   */
  static Optional<Spread> spread(
      Optional<Formula> left, Optional<Formula> right, boolean both, boolean mayBeUnsaid) {
    // one alone is a fault in a file; typed alone it is meant for both sides
    return left.isPresent() || right.isPresent()
        ? Optional.of(new Spread(left.or(() -> right).get(), right.or(() -> left).get(), both))
        : Optional.of(new Spread(Quantities.LOST, Quantities.LOST, both, false))
            .filter(s -> mayBeUnsaid);
  }

  /** Reports an outlined part or body of which nothing says how far it reaches. */
  static void missing(Spot at) {
    at.fault(
        "left",
        "",
        "is missing",
        "add \"left\" and \"right\", each " + LENGTH.said() + ", or \"stations\"");
  }

  /** Reports a reach that says nothing, or has its sides in the wrong order. */
  static void wide(HalfBreadths reach, Spot at) {
    if (reach.isEmpty()) {
      at.fault("", "", "says neither left nor right", "write one of them");
    } else {
      wide(reach.leftOrRight(), reach.rightOrLeft(), at);
    }
  }

  /** Returns whether both sides are at one place. */
  static boolean isNought(HalfBreadths reach, Spot at) {
    if (reach.isEmpty()) {
      return false;
    }
    Optional<Double> l = at.fixed(reach.leftOrRight());
    Optional<Double> r = at.fixed(reach.rightOrLeft());
    return l.isPresent() && r.isPresent() && l.get() + r.get() == 0;
  }

  /** Reports sides in the wrong order. */
  static void wide(Formula left, Formula right, Spot at) {
    Optional<Double> l = at.fixed(left);
    Optional<Double> r = at.fixed(right);
    if (l.isPresent() && r.isPresent() && l.get() + r.get() < 0) {
      at.fault(
          "left",
          Quoted.of(left.text()),
          "lies to the right of the right side: the body runs from -right to +left",
          "make left + right at least 0");
    }
  }
}
