package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.ride.BalanceFindings;
import org.longlow.sketcher.desk.ChartWork;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.picture.BalanceChart;
import org.longlow.svg.page.Page;

/** How the machine balances over its speed, under the finding that says from which on it does. */
final class ChartPane extends VBox {

  /** As far from the edges as the findings above are. */
  private static final double EDGE_PX = 12;

  private static final double MARGIN_MM = 3;

  /** As high as both panels are read, px. */
  private static final double HIGH_PX = 280;

  private final Desk desk;
  private final ChartWork work;
  private final SheetView sheet = new SheetView();
  private final Label words = Bits.wrapped("", "finding-detail");
  private BalanceChart drawn;

  ChartPane(Desk desk) {
    super(3);
    this.desk = desk;
    work = new ChartWork(desk);
    Called.by(sheet, "balance-chart");
    Called.by(words, "balance-words");
    sheet.setMinHeight(HIGH_PX);
    sheet.setPrefHeight(HIGH_PX);
    setPadding(new Insets(0, EDGE_PX, 0, EDGE_PX));
    getChildren().addAll(sheet, words);
    setVisible(false);
    setManaged(false);
  }

  /** Shows it under that finding, and nothing under any other. */
  void refresh(Optional<Finding> picked) {
    boolean asked = picked.filter(f -> f.kind() == BalanceFindings.BALANCE).isPresent();
    setVisible(asked);
    setManaged(asked);
    if (!asked || desk.shown().isEmpty()) {
      return;
    }
    Optional<Optional<BalanceChart>> made = work.of(desk.shown().get());
    BalanceChart chart = made.flatMap(c -> c).orElse(null);
    words.setText(
        made.isEmpty()
            ? "The chart is drawn as soon as the machine is worked out\u2026"
            : chart == null ? BalanceChart.NONE : said(chart));
    sheet.setVisible(chart != null);
    sheet.setManaged(chart != null);
    if (chart != null && chart != drawn) {
      sheet.show(
          Page.round(chart.drawing(), MARGIN_MM), "how it balances over its speed, " + chart.who());
    }
    drawn = chart;
  }

  private static String said(BalanceChart chart) {
    return BalanceChart.CAPTION
        + "\n"
        + chart.rows().stream().map(ChartPane::row).collect(Collectors.joining("\n"));
  }

  private static String row(List<String> row) {
    return row.get(0) + ": balances from " + row.get(1) + ", falls slowly from " + row.get(2);
  }
}
