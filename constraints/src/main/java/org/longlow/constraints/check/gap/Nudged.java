package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.Tenths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Says what a part comes too near once it is moved as some advice has it, all else left. */
public final class Nudged {

  private final Layout layout;
  private final GapFindings gaps;
  private final List<PersonBody> people;

  /**
   * @param gaps the bodies of all parts, as drawn and in each stance that was looked at
   * @param people who sits, as drawn
   */
  public Nudged(Layout layout, GapFindings gaps, List<PersonBody> people) {
    this.layout = layout;
    this.gaps = gaps;
    this.people = people;
  }

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
    return now != null && now.gapMm() <= then.gapMm() + GapFindings.EASE_MM
        ? Optional.empty()
        : Optional.of(new Made(p.still().name(), then.gapMm(), limitMm));
  }

  static Optional<Made> worst(List<Made> made) {
    return made.stream().min(Comparator.comparingDouble(m -> m.gapMm() - m.limitMm()));
  }

  /** Returns a sentence on what these moves of a part make, found when it is read. */
  public Words but(String part, List<Move> moves) {
    return Words.later(() -> said(part, moves, " But ", "."));
  }

  /** Returns the same to go on within a sentence. */
  Words within(String part, List<Move> moves) {
    return said(part, moves, "; but ", "");
  }

  private Words said(String part, List<Move> moves, String before, String after) {
    Part moved = layout.parts().get(part);
    if (moved == null) {
      return Words.NONE; // somebody, whom nothing moves but the seat
    }
    List<Words> said = new ArrayList<>();
    for (Move move : moves) {
      List<Made> made = new ArrayList<>(gaps.made(part, move.by()).stream().toList());
      for (PersonBody person : people) {
        if (gaps.rules().clearOfPeople(part)) {
          Solid body = person.clearOf(moved, gaps.rules());
          made(
                  new Clearing.Position(body, gaps.drawn(part)),
                  move.by(),
                  gaps.rules().limitMm(part, person.sitting()))
              .map(m -> new Made(person.sitting().occupant().words(), m.gapMm(), m.limitMm()))
              .ifPresent(made::add);
        }
      }
      worst(made).ifPresent(m -> said.add(said(move, m)));
    }
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
