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
import org.longlow.constraints.shape.AngleFlat;
import org.longlow.constraints.shape.ByPlaces;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.rider.words.Words;

/** Sheet that cannot be folded as it is drawn: legs shorter than folds take, folds too sharp. */
public final class FoldFindings {

  /** Folds of sheet. */
  static final FindingKind FOLDS = new FindingKind("folds", FindingGroup.PLACES, Rests.ON_DRAWING);

  private static final ByPlaces<Part, List<Words>> FAULTS =
      new ByPlaces<>(
          256,
          2,
          (part, places) ->
              Unrolled.of(part, places)
                  .map(Unrolled::faults)
                  .or(() -> AngleFlat.of(part, places).map(AngleFlat::faults))
                  .orElse(List.of()));

  private FoldFindings() {}

  /** Returns one for each part at most, and none where all can be folded. */
  public static List<Finding> of(Layout layout, Places places) {
    List<Finding> findings = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      if (AngleFlat.lacksEdge(part, places)) {
        findings.add(
            Finding.note(
                FOLDS,
                About.parts(part.name()),
                Verdict.FAIL,
                Basis.model("the drawn edge"),
                Words.of(
                    "The edge that the second leg of "
                        + part.name()
                        + " is turned along has no length, so it has no such leg: move its two"
                        + " points apart, or name another edge.")));
      }
      List<Words> lines = FAULTS.of(part, places);
      if (!lines.isEmpty()) {
        findings.add(
            Finding.note(
                FOLDS,
                About.parts(part.name()),
                Verdict.CAUTION,
                Basis.model("legs against what folds with a radius of one thickness take"),
                Words.of("Sheet of " + part.name() + ": ", Words.join(". ", lines), ".")));
      }
    }
    return findings;
  }
}
