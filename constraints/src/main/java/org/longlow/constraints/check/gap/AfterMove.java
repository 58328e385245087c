package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.Tenths;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Moves of a part as some advice has them, and what a part then comes too near. */
public final class AfterMove {

  /** Less than by this a gap is as it was, mm. */
  private static final double LESS_MM = 0.001;

  private AfterMove() {}

  /**
   * A way to move something.
   *
   * @param done as said once it is done, such as {@code raised so}
   * @param by what it does to the body as drawn
   */
  public record Move(String done, UnaryOperator<Solid> by) {

    /** Returns a move straight up by so much, in tenths of a millimetre as it is told. */
    public static Move up(double mm) {
      PointMm by = new PointMm(0, Tenths.away(mm));
      return new Move("raised so", s -> s.moved(Solid.by(by)));
    }

    /** Returns both sides so much farther in, likewise. */
    public static Move in(double mm) {
      return new Move("brought in so", s -> s.apart(-Tenths.away(mm)));
    }
  }

  /** A gap that is too small after a move, and smaller than before. */
  record Made(String other, double gapMm, double limitMm) {}

  static Optional<Made> made(Clearing.Position p, UnaryOperator<Solid> move, double limitMm) {
    Gap then = move.apply(p.moved()).to(p.still(), limitMm);
    if (then == null) {
      return Optional.empty();
    }
    Gap now = p.moved().to(p.still(), limitMm);
    return now != null && now.gapMm() <= then.gapMm() + LESS_MM
        ? Optional.empty()
        : Optional.of(new Made(p.still().name(), then.gapMm(), limitMm));
  }

  static Optional<Made> worst(List<Made> made) {
    return made.stream().min(Comparator.comparingDouble(m -> m.gapMm() - m.limitMm()));
  }

  /**
   * Returns what moves make, in words; nothing where they make nothing.
   *
   * @param made the worst that a move makes
   */
  static Words said(
      List<Move> moves, Function<Move, Optional<Made>> made, String before, String after) {
    List<Words> said = new ArrayList<>();
    moves.forEach(move -> made.apply(move).ifPresent(m -> said.add(said(move, m))));
    return said.isEmpty() ? Words.NONE : Words.of(before, Words.join("; ", said), after);
  }

  private static Words said(Move move, Made made) {
    return made.gapMm() > 0
        ? Words.of(
            move.done() + " it is ",
            Say.mm(made.gapMm()),
            " from " + made.other() + ", where ",
            Words.atLeast(made.limitMm()),
            " are asked")
        : Words.of(move.done() + " it runs into " + made.other());
  }
}
