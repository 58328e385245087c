package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.stand.SeenFrom;
import org.longlow.constraints.study.Profiles;
import org.longlow.constraints.study.Study;

/** How large the machine is against the wind and the light, and where the middle of that is. */
final class SilhouetteTable {

  private static final List<String> HEADINGS =
      List.of("What", "Seen from", "Area", "Middle forward", "Middle left", "Middle up");

  private SilhouetteTable() {}

  static void write(Html h, Study study) {
    if (study.standings().isEmpty()) {
      return;
    }
    FigureWords figures = FigureWords.of(study);
    h.element("h2", "Silhouettes");
    h.table(
        "silhouettes",
        "What is hidden of whoever looks from there, gaps left out, and the middle of that area;"
            + " from the rear contact point and the road. People as the bodies that gaps are"
            + " measured to. The middle seen from the side is a first estimate of where wind"
            + " presses",
        HEADINGS);
    for (Profiles.Profile p : Profiles.of(study)) {
      h.row("", HEADINGS, row(figures, p.what(), p.from(), p.seen()));
    }
    h.closeTable();
  }

  private static List<String> row(FigureWords figures, String what, SeenFrom from, Silhouette s) {
    String across = figures.mm(s.centroid().x());
    String up = figures.mm(s.centroid().z());
    String area = figures.sheet(s.areaMm2());
    return switch (from) {
      case SIDE -> List.of(what, "the side", area, across, "", up);
      case FRONT -> List.of(what, "the front", area, "", across, up);
      case ABOVE -> List.of(what, "below", area, across, up, "");
    };
  }
}
