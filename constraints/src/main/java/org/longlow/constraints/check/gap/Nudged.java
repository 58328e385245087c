package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.gap.AfterMove.Made;
import org.longlow.constraints.check.gap.AfterMove.Move;
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.words.Words;

/** Says what a part comes too near, or whom, once it is moved as some advice has it. */
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

  /** Returns a sentence on what these moves of a part make, found when it is read. */
  public Words but(String part, List<Move> moves) {
    return layout.parts().containsKey(part)
        ? Words.later(() -> AfterMove.said(moves, move -> made(part, move), " But ", "."))
        : Words.NONE; // somebody, whom nothing moves but the seat
  }

  private Optional<Made> made(String part, Move move) {
    List<Made> made = new ArrayList<>(gaps.made(part, move.by()).stream().toList());
    if (gaps.rules().clearOfPeople(part)) {
      people.forEach(person -> made(part, person, move).ifPresent(made::add));
    }
    return AfterMove.worst(made);
  }

  private Optional<Made> made(String name, PersonBody person, Move move) {
    Part part = layout.parts().get(name);
    Solid body = person.clearOf(part, gaps.rules());
    return AfterMove.made(
            new Clearing.Position(body, gaps.drawn(name)),
            move.by(),
            gaps.rules().limitMm(name, person.sitting()))
        .map(m -> new Made(person.sitting().occupant().words(), m.gapMm(), m.limitMm()));
  }
}
