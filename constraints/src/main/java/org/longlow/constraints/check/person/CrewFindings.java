package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.rider.words.Words;

/**
 * Whether there is somebody to ride, and a seat for each of them: without, little can be judged.
 */
public final class CrewFindings {

  /** Nobody is there to ride. */
  private static final FindingKind CREW =
      FindingKind.leading("crew", FindingGroup.SEAT, Rests.ON_DRAWING);

  private static final Basis SOURCE = Basis.model("this layout");

  private CrewFindings() {}

  public static List<Finding> of(Layout layout) {
    List<Finding> findings = new ArrayList<>();
    Set<String> seats = SeatParts.of(layout).keySet();
    for (Person person : layout.crew().values()) {
      for (String seat : person.seats()) {
        if (!seats.contains(seat)) {
          findings.add(
              Finding.note(
                  SeatFindings.SEAT,
                  About.person(new Occupant(person.name(), seat), "").said(person.name()),
                  Verdict.FAIL,
                  SOURCE,
                  Words.of(
                      person.name()
                          + " has nowhere to sit: the "
                          + seat
                          + " seat has no pan; add a cushion with the role pan.")));
        }
      }
    }
    if (layout.crew().isEmpty()) {
      findings.add(
          Finding.note(
              CREW,
              About.thing("crew"),
              Verdict.CAUTION,
              SOURCE,
              Words.of(
                  "Nobody is said to ride it, so seat, reach, sight, lean and laden loads are not"
                      + " judged; add somebody to the crew.")));
    }
    return findings;
  }
}
