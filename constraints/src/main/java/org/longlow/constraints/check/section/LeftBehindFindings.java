package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.words.Words;

/** Parts that hang on nothing but a section and are not said to move with it. */
final class LeftBehindFindings {

  /** A part that would stay in the air where the section that holds it opens. */
  static final FindingKind LEFT_BEHIND =
      new FindingKind("left-behind", FindingGroup.OPENING, Rests.ON_DRAWING);

  private static final Basis HOW = Basis.model("pins of parts, and what they move with");

  private LeftBehindFindings() {}

  static List<Finding> of(String name, Layout layout, Places places) {
    Section section = layout.sections().get(name);
    List<Finding> findings = new ArrayList<>();
    for (Map.Entry<String, Part> entry : layout.parts().entrySet()) {
      List<String> pins = List.copyOf(entry.getValue().pins());
      boolean hangs =
          !pins.isEmpty()
              && pins.stream().allMatch(p -> layout.pins().get(p).with().equals(name))
              && !section.parts().contains(entry.getKey());
      if (hangs) {
        findings.add(finding(name, entry.getKey(), pins, places));
      }
    }
    return findings;
  }

  private static Finding finding(String section, String part, List<String> pins, Places places) {
    return Finding.note(
            LEFT_BEHIND,
            new About(part, List.of(part), Optional.empty(), List.of(section, part)),
            Verdict.FAIL,
            HOW,
            Words.of(
                part
                    + " hangs on "
                    + String.join(", ", pins)
                    + ", which "
                    + (pins.size() > 1 ? "move" : "moves")
                    + " with section "
                    + section
                    + ", but is not among its parts: it would stay in the air, and neither its way"
                    + " nor its weight is looked at. Add it to the parts of "
                    + section
                    + ", or hang it on a pin that stays."))
        .in(Condition.open(section))
        .at(places.pin(pins.get(0)));
  }
}
