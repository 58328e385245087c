package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.words.Words;

/** What is not judged of controls, feet and ways in and out, and how to say it: one line in all. */
public final class UnjudgedFindings {

  /** What is not judged since the layout is silent on it. */
  public static final FindingKind UNJUDGED =
      new FindingKind("unjudged", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  private UnjudgedFindings() {}

  /** Returns that line; empty where all of it is judged. */
  public static Optional<Finding> of(Layout layout, List<Sitting> sittings) {
    List<String> said = new ArrayList<>();
    boolean seated =
        sittings.stream().anyMatch(s -> s.occupant().rides() && s.posture().isPresent());
    if (!seated) {
      said.add(
          "Nobody is seated to steer it, so reach, pedals, feet at a stop and ways in and out are"
              + " not judged: give the rider's seat a pan, a back and foot rests, and the crew"
              + " somebody who sits on it.");
    }
    List<SolidPart> levers =
        layout.parts(SolidPart.class).filter(p -> p.type() == SolidPart.Kind.LEVER).toList();
    List<String> silent =
        levers.stream().filter(p -> p.worked().isEmpty()).map(SolidPart::name).toList();
    if (levers.isEmpty()) {
      said.add(
          "No hand lever, switch or pedal is drawn, so whether hands and feet reach them is not"
              + " judged: draw each as a lever and say by what it is worked (worked).");
    } else if (!silent.isEmpty()) {
      said.add(
          "By what it is worked is not said of "
              + String.join(", ", silent)
              + ", so whether hands and feet reach that is not judged: give each worked.");
    }
    boolean hands =
        levers.stream().anyMatch(p -> p.worked().filter(w -> !w.by().pedal()).isPresent());
    if (hands
        && seated
        && sittings.stream()
            .noneMatch(s -> s.occupant().rides() && s.parts().hands().isPresent())) {
      said.add("There are no grips, so no reach from them is judged: give the rider's seat grips.");
    }
    return said.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.note(
                UNJUDGED,
                About.thing("what is not judged of controls", "controls"),
                Verdict.NOT_APPLICABLE,
                Basis.model("this layout"),
                Words.of(String.join(" ", said))));
  }
}
