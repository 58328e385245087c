package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.check.ride.Balanced;
import org.longlow.constraints.machine.ride.WhippleModel;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.BalancePicture;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Page;

/** How the machine balances by itself over its speeds, and what small changes do to that. */
final class BalanceTable {

  private static final List<String> HEADINGS =
      List.of("Changed", "Balances by itself from", "Slowly falls to a side from");

  private static final String NEVER = "no speed";

  private BalanceTable() {}

  static void write(Html h, Study study) {
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    if (wheels.stands()) {
      Balanced.last(wheels, study.standings()).ifPresent(b -> write(h, b, study.layout().units()));
    }
  }

  private static void write(Html h, Balanced balanced, Units units) {
    h.element("h2", "Balance");
    String who = "with " + balanced.stance().condition().people();
    Drawing drawing = BalancePicture.of("Hands off, " + who, balanced.model(), units);
    h.raw("<figure>\n");
    Plate.write(
        h,
        "balance",
        "how it balances by itself over its speed, " + who,
        Page.round(drawing, Elevations.MARGIN_MM));
    h.element("figcaption", BalancePicture.KEY + ". " + WhippleModel.CAUTION);
    h.raw("</figure>\n");
    h.table(
        "balance-changes",
        "Hands off, " + who + ", one thing changed at a time and all else as it is",
        HEADINGS);
    for (Balanced.Change change : balanced.changes()) {
      h.row(
          "",
          HEADINGS,
          List.of(
              change.what().in(units),
              change.weave().map(w -> w.in(units)).orElse(NEVER),
              change.capsize().map(w -> w.in(units)).orElse(NEVER)));
    }
    h.closeTable();
  }
}
