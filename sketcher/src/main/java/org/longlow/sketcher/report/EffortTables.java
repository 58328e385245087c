package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.person.Effort;
import org.longlow.constraints.check.person.Effort.Held;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.seat.Balance;
import org.longlow.rider.words.FigureSort;

/** What each joint of somebody holds, and how their forces close. */
final class EffortTables {

  private static final List<String> HEADINGS =
      List.of("Joint", Html.VERDICT, "Without wind", "Riding", "Braking", "Strength from");

  private static final double KMH_PER_MS = 3.6;

  private EffortTables() {}

  static void write(Html h, Study study, Sitting s) {
    Optional<Effort> effort =
        Effort.of(study.layout(), s, study.standings(), study.placed().places());
    if (effort.isEmpty()) {
      return;
    }
    FigureWords figures = FigureWords.of(study);
    Effort e = effort.get();
    h.raw("<details>\n")
        .element(
            "summary",
            "Effort at "
                + figures.units().says(KMH_PER_MS * e.speedMs(), FigureSort.SPEED)
                + " and braking with "
                + FigureUnit.G.says(e.slowed().g())
                + ", each side; shares are those of a weak person's strength");
    h.table("effort", "Effort of " + s.person(), HEADINGS);
    for (Joint joint : Joint.values()) {
      Held riding = e.riding().get(joint);
      Held stopping = e.stopping().get(joint);
      var verdict =
          riding.verdict().compareTo(stopping.verdict()) < 0
              ? riding.verdict()
              : stopping.verdict();
      h.row(
          verdict.word(),
          HEADINGS,
          List.of(
              joint.word(),
              FindingTables.verdict(verdict),
              torque(figures, e.still().get(joint)),
              torque(figures, riding),
              torque(figures, stopping),
              riding.muscles().source()));
    }
    h.closeTable();
    h.element("p class=\"quiet\"", balance(figures, e.balance()));
    h.raw("</details>\n");
  }

  private static String torque(FigureWords figures, Held held) {
    return held.nothing()
        ? "nothing"
        : figures.units().says(Math.abs(held.loadNm()), FigureSort.TORQUE)
            + ", "
            + FigureUnit.SHARE.says(held.weak());
  }

  /** Says where the pushes must act for forces and moments to add up to nothing. */
  private static String balance(FigureWords figures, Balance b) {
    List<String> words = new ArrayList<>();
    words.add(
        "To stay put the pan must push "
            + figures.mm(Math.abs(b.panMm()))
            + (b.panMm() < 0 ? " behind" : " ahead of")
            + " the middle of the foam's pressure");
    words.add(
        "the back "
            + figures.mm(Math.abs(b.backMm()))
            + (b.backMm() < 0 ? " below" : " above")
            + " the middle of its contact, since flesh and pelvis turn in foam that is reckoned"
            + " pressed flat");
    words.add(
        "the hips hold "
            + figures.units().says(Math.abs(b.hipNm()), FigureSort.TORQUE)
            + " together; "
            + figures.units().says(Math.abs(b.leftNm()), FigureSort.TORQUE)
            + " are left over.");
    return String.join(", ", words);
  }
}
