package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;

import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.words.Quoted;

/** How far bodies reach to each side at a place of them. */
final class ReachKind {

  static final Kind<HalfBreadths> REACH =
      Kind.of(
              "reach",
              "How far a body reaches to each side at a place of it.",
              (Source<HalfBreadths> s) -> reach(s, r -> r))
          .rule(ReachKind::wide);

  private ReachKind() {}

  /** The fields of a reach in something that has one. */
  static <T> HalfBreadths reach(Source<T> s, Function<? super T, HalfBreadths> get) {
    return new HalfBreadths(
        s.may(
            "left",
            LENGTH,
            t -> get.apply(t).left(),
            "Reach to the left there; absent it is as far as the right."),
        s.may(
            "right",
            LENGTH,
            t -> get.apply(t).right(),
            "Reach to the right there; absent it is as far as the left."));
  }

  /** Reports a reach that says nothing, or has its sides in the wrong order. */
  static void wide(HalfBreadths reach, Spot at) {
    if (reach.isEmpty()) {
      at.fault("", "", "says neither left nor right", "write one of them");
    } else {
      wide(reach.leftOrRight(), reach.rightOrLeft(), at);
    }
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
