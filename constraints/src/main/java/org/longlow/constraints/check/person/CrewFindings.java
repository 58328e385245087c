package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.HashSet;
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
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
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

  /**
   * Returns it.
   *
   * @param places as drawn
   */
  public static List<Finding> of(Layout layout, Places places, List<Sitting> sittings) {
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
    findings.addAll(handholds(layout, places, sittings, seats));
    return findings;
  }

  /** Handholds of no seat, and those that no hand comes to. */
  private static List<Finding> handholds(
      Layout layout, Places places, List<Sitting> sittings, Set<String> seats) {
    Handholds holds = new Handholds(layout, places);
    List<Sitting> crew = sittings.stream().filter(s -> s.posture().isPresent()).toList();
    Set<RestPart> reached = new HashSet<>();
    for (Sitting s : crew) {
      reached.addAll(holds.seated(s));
      if (s.parts().feet().isPresent()) {
        reached.addAll(holds.beside(s));
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (RestPart hold : layout.parts(RestPart.class).toList()) {
      if (hold.type() != RestPart.Kind.HANDHOLD) {
        continue;
      }
      if (!seats.contains(hold.seat())) {
        findings.add(
            unheld(hold, " is of the " + hold.seat() + " seat, which has no pan: mend its seat."));
      } else if (!crew.isEmpty() && !reached.contains(hold)) {
        findings.add(
            unheld(
                hold,
                " is out of reach of everybody, as they sit and as they stand beside: bring it"
                    + " nearer."));
      }
    }
    return findings;
  }

  private static Finding unheld(RestPart hold, String words) {
    return Finding.note(
        SeatFindings.SEAT,
        About.thing(hold.name(), hold.name()),
        Verdict.CAUTION,
        SOURCE,
        Words.of("The handhold " + hold.name() + words));
  }
}
