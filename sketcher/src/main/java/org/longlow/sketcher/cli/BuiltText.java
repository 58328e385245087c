package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.built.BuiltMachine;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.mend.Offer;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.report.BuiltTable;

/** What is told of a machine as built besides its findings. */
final class BuiltText {

  private BuiltText() {}

  /** Prints what was measured beside what was planned. */
  static void table(BuiltMachine machine, Units units, PrintWriter out) {
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
  }

  /** Prints what fails now and did not, and for {@code mends} of it how it is mended least. */
  static void failures(BuiltMachine machine, int mends, Units units, PrintWriter out) {
    List<Finding> fresh = WorstFirst.of(machine.newlyFailing());
    if (fresh.isEmpty()) {
      out.println("nothing fails as built that did not fail as planned");
    }
    for (int i = 0; i < fresh.size(); i++) {
      Finding f = fresh.get(i);
      out.println("fails as built, not as planned: " + f.id() + ": " + f.text(units));
      if (i < mends) {
        Optional<Offer> mend = machine.leastMend(f);
        out.println(
            "    " + mend.map(m -> "least change that mends it: " + m.says()).orElse(NO_CHANGE));
      }
    }
    if (fresh.size() > mends) {
      out.println("for the least change that mends more of them: --mends " + fresh.size());
    }
    out.println();
  }

  private static final String NO_CHANGE = "no single change was found that mends it";
}
