package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.built.BuiltMachine;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.mend.Offer;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.app.BuiltTable;

/** What is told of a machine as built besides its findings. */
final class BuiltText {

  /** So many new failures are mended in words; looking for each takes a second or so. */
  private static final int MENDED = 5;

  private BuiltText() {}

  static void print(BuiltMachine machine, Units units, PrintWriter out) {
    TextTable table =
        new TextTable(
            List.of(
                TextTable.Column.of(BuiltTable.HEADINGS.get(0), 14),
                TextTable.Column.of(BuiltTable.HEADINGS.get(1), 34),
                TextTable.Column.of(BuiltTable.HEADINGS.get(2), 12),
                new TextTable.Column(BuiltTable.HEADINGS.get(3), 16, true),
                new TextTable.Column(BuiltTable.HEADINGS.get(4), 16, true),
                new TextTable.Column(BuiltTable.HEADINGS.get(5), 16, true)));
    BuiltTable.of(machine.rows(), units).forEach(table::row);
    table.print(out);
    out.println();
    List<Finding> fresh = WorstFirst.of(machine.newlyFailing());
    if (fresh.isEmpty()) {
      out.println("nothing fails as built that did not fail as planned");
    }
    for (Finding f : fresh.subList(0, Math.min(MENDED, fresh.size()))) {
      out.println("fails as built, not as planned: " + f.id() + ": " + f.text(units));
      Optional<Offer> mend = machine.leastMend(f);
      out.println(
          "    " + mend.map(m -> "least change that mends it: " + m.says()).orElse(NO_CHANGE));
    }
    if (fresh.size() > MENDED) {
      out.println(
          "and "
              + Counted.of(fresh.size() - MENDED, "more")
              + " that did not fail as planned, in the table above");
    }
    out.println();
  }

  private static final String NO_CHANGE = "no single change was found that mends it";
}
