package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.BalanceChart;
import org.longlow.svg.page.Page;

/** How the machine balances by itself over its speeds, and what small changes do to that. */
final class BalanceTable {

  private BalanceTable() {}

  static void write(Html h, Study study) {
    BalanceChart.of(study).ifPresent(c -> write(h, c));
  }

  private static void write(Html h, BalanceChart chart) {
    h.element("h2", "Balance");
    h.raw("<figure>\n");
    Plate.write(
        h,
        "balance",
        "how it balances by itself over its speed, " + chart.who(),
        Page.round(chart.drawing(), Elevations.MARGIN_MM));
    h.element("figcaption", BalanceChart.CAPTION);
    h.raw("</figure>\n");
    h.table(
        "balance-changes",
        "Hands off, " + chart.who() + ", one thing changed at a time and all else as it is",
        BalanceChart.HEADINGS);
    for (List<String> row : chart.rows()) {
      h.row("", BalanceChart.HEADINGS, row);
    }
    h.closeTable();
  }
}
