package org.longlow.sketcher.report;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.SeenFrom;
import org.longlow.constraints.stand.Silhouettes;
import org.longlow.constraints.stand.Standing;
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
    Standing first = study.standings().get(0);
    rows(h, figures, "machine alone", first, first.shapes().values(), Rider.NOBODY);
    List<PartShape> turning = turning(study, first);
    rows(h, figures, "what turns with the bars, straight ahead", first, turning, Rider.NOBODY);
    study.standings().stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .forEach(s -> rows(h, figures, s.condition().says(), s, s.shapes().values(), s.rider()));
    h.closeTable();
  }

  private static List<PartShape> turning(Study study, Standing standing) {
    Optional<Steered> steered =
        study
            .layout()
            .parts(FrontPart.class)
            .findFirst()
            .flatMap(fork -> Steered.of(study.layout(), fork, study.placed().places()));
    return standing.shapes().values().stream()
        .filter(s -> steered.filter(t -> t.turns(s.part().name())).isPresent())
        .toList();
  }

  private static void rows(
      Html h,
      FigureWords figures,
      String what,
      Standing standing,
      Collection<PartShape> shapes,
      Rider rider) {
    for (SeenFrom from : SeenFrom.values()) {
      Silhouettes.of(shapes, rider, standing.ground(), from)
          .ifPresent(s -> h.row("", HEADINGS, row(figures, what, from, s)));
    }
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
