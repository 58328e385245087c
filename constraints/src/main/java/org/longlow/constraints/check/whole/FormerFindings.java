package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.FormerFaults;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.Words;

/**
 * Formers and stringers that cannot be made where they are asked for, as far as places tell it.
 * What only a cut tells is on their templates and in the cut list.
 */
public final class FormerFindings {

  /** Cross sections that are asked for as templates. */
  static final FindingKind FORMERS =
      new FindingKind("formers", FindingGroup.PLACES, Rests.ON_DRAWING);

  private FormerFindings() {}

  /** Returns one for each part at most, and none where all can be made. */
  public static List<Finding> of(Layout layout, Places places) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      List<Words> lines =
          FormerFaults.placed(part, places).stream().map(FormerFaults.Fault::line).toList();
      if (!lines.isEmpty()) {
        findings.add(
            Finding.note(
                FORMERS,
                About.parts(part.name()),
                Verdict.CAUTION,
                Basis.model("places against how far the part reaches"),
                Words.of("Formers of " + part.name() + ": ", Words.join(". ", lines), ".")));
      }
    }
    return findings;
  }
}
