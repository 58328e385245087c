package org.longlow.sketcher.desk;

import java.util.Optional;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.BalanceChart;

/**
 * The chart of balance, made on the worker when it is looked at; it is never that of another
 * machine than is shown. Belongs to the desk's thread.
 */
public final class ChartWork {

  private final Desk desk;
  private Study of;
  private Optional<BalanceChart> made;

  public ChartWork(Desk desk) {
    this.desk = desk;
  }

  /**
   * Returns the chart of what is shown, and inside empty where it has none; empty until it is made,
   * and while the machine is moved.
   */
  public Optional<Optional<BalanceChart>> of(BoardState shown) {
    if (shown.live() || shown.working()) {
      return Optional.empty();
    }
    Study study = shown.study();
    if (of != study) {
      of = study;
      made = null;
      desk.queue(
          () -> {
            Optional<BalanceChart> chart = BalanceChart.of(study);
            return () -> {
              if (of == study) {
                made = chart;
                desk.tell();
              }
            };
          });
    }
    return Optional.ofNullable(made);
  }
}
