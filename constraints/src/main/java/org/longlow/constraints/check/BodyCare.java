package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.seat.SeatOutcome;

/**
 * Care about people whom the model does not know well: outside the survey, with measures that do
 * not go together, or whose posture and sink did not agree. Nothing about them passes outright.
 */
final class BodyCare {

  private BodyCare() {}

  /** Returns what is odd about this person, one finding for all of it; empty if nothing is. */
  static List<Finding> notes(Sitting sitting, String stance) {
    List<String> notes = new ArrayList<>(sitting.body().measures().notes());
    if (!settled(sitting)) {
      notes.add("Posture and sink did not agree, so every figure about this seat is rough.");
    }
    if (notes.isEmpty()) {
      return List.of();
    }
    return List.of(
        Finding.note(
            "body." + SeatFindings.name(sitting),
            SeatFindings.who(sitting) + ", body",
            stance,
            Verdict.CAUTION,
            Double.NaN,
            "",
            "range of the ANSUR II survey, 2012; what is unusual is a judgement at 3.5 standard"
                + " deviations",
            SeatFindings.who(sitting) + ": " + String.join(" ", notes)));
  }

  /** Returns a finding about somebody; it never passes if they are odd. */
  static Finding held(Finding f, List<Sitting> sittings) {
    return sittings.stream()
        .filter(s -> f.who().equals(Optional.of(new Finding.Occupant(s.person(), s.seat()))))
        .filter(s -> !s.body().measures().notes().isEmpty() || !settled(s))
        .findFirst()
        .filter(s -> !f.id().startsWith("body."))
        .map(s -> doubted(f, why(s)))
        .orElse(f);
  }

  private static String why(Sitting sitting) {
    return sitting.body().measures().notes().isEmpty()
        ? " This is rough: posture and sink did not agree."
        : " This is rough: the body of " + sitting.person() + " is an extrapolation.";
  }

  private static boolean settled(Sitting sitting) {
    return sitting.seated().map(SeatOutcome.Seated::converged).orElse(true);
  }

  private static Finding doubted(Finding f, String why) {
    return (f.verdict() == Verdict.PASS ? f.withVerdict(Verdict.CAUTION) : f)
        .withText(f.text() + why);
  }
}
