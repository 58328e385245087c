package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.words.Words;

/**
 * Care about people whom the model does not know well: outside the survey, with measures that do
 * not go together, or whose posture and sink did not agree. Nothing about them passes outright.
 */
public final class BodyCare {

  /** Somebody whom the body model does not know well. */
  private static final FindingKind BODY =
      new FindingKind("body", FindingGroup.SEAT, Rests.ON_DRAWING);

  private static final List<Basis> SURVEY =
      List.of(
          Basis.published(Known.CHECKED, "range of the ANSUR II survey, 2012"),
          Basis.judgement("what is unusual is a judgement at 3.5 standard deviations"));

  private BodyCare() {}

  /** Returns what is odd about this person, one finding for all of it; empty if nothing is. */
  static List<Finding> notes(Sitting sitting, Condition stance) {
    List<String> notes = new ArrayList<>(sitting.body().measures().notes());
    if (!settled(sitting)) {
      notes.add("Posture and sink did not agree, so every figure about this seat is rough.");
    }
    if (notes.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Finding(
            BODY,
            About.person(sitting.occupant(), "body"),
            Optional.of(stance),
            Verdict.CAUTION,
            Figures.NONE,
            SURVEY,
            Words.of(sitting.occupant().words() + ": " + String.join(" ", notes))));
  }

  /**
   * Returns a finding about somebody, or about a machine with them on it; it never passes if they
   * are odd.
   */
  public static Finding held(Finding f, List<Sitting> sittings) {
    if (f.kind() == BODY) {
      return f;
    }
    for (Sitting sitting : sittings) {
      Optional<String> why = why(sitting);
      if (why.isPresent() && concerns(f, sitting.occupant())) {
        return doubted(f, " This is rough: " + why.get() + ".");
      }
    }
    return f;
  }

  private static boolean concerns(Finding f, Occupant who) {
    return f.who().equals(Optional.of(who))
        || f.stance().filter(c -> c.aboard().contains(who)).isPresent();
  }

  private static Optional<String> why(Sitting sitting) {
    return sitting
        .doubt()
        .or(
            () ->
                settled(sitting)
                    ? Optional.empty()
                    : Optional.of("posture and sink did not agree"));
  }

  private static boolean settled(Sitting sitting) {
    return sitting.seated().map(SeatOutcome.Seated::converged).orElse(true);
  }

  private static Finding doubted(Finding f, String why) {
    return (f.verdict() == Verdict.PASS ? f.withVerdict(Verdict.CAUTION) : f)
        .withText(Words.of(f.words(), why));
  }
}
