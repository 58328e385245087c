package org.longlow.sketcher.report;

import java.util.Comparator;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.person.GettingIn;
import org.longlow.constraints.check.person.GettingInFindings;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.GettingInPicture;
import org.longlow.sketcher.picture.InPose;
import org.longlow.svg.page.Page;

/** Whoever has least room on the way in, pose by pose. */
final class GettingInStrip {

  /** So many poses stand beside each other. */
  private static final int COLUMNS = 3;

  /** Small enough for three machines on the breadth of a page. */
  private static final double DENOMINATOR = 40;

  private GettingInStrip() {}

  /** Writes the strip; nothing where nobody's way in is known. */
  static void write(Html h, Study study) {
    Optional<Finding> tightest =
        study.findings().stream()
            .filter(f -> f.kind() == GettingInFindings.GETTING_IN)
            .min(Comparator.comparingDouble(Finding::margin));
    Optional<Occupant> who = tightest.flatMap(Finding::who);
    who.flatMap(w -> InPose.poses(study, w)).ifPresent(in -> figure(h, study, who.get(), in));
  }

  private static void figure(Html h, Study study, Occupant who, GettingIn in) {
    h.raw("<figure>\n");
    Plate.write(
        h,
        "in",
        who.words() + " getting in, pose by pose",
        Page.round(
            GettingInPicture.of(study, in, who, COLUMNS, DENOMINATOR).scaled(1 / DENOMINATOR),
            Elevations.MARGIN_MM));
    h.element(
        "figcaption",
        who.words()
            + " getting in, every section open; getting out is the way back. Least room is left "
            + in.tight().words()
            + ". These are a few poses of many, so try it on the real machine.");
    h.raw("</figure>\n");
  }
}
