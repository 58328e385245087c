package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.constraints.built.BuiltRow;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * How a report is made.
 *
 * @param picture what the first elevation shows; its findings are replaced by those that fail or
 *     need care and can be seen there
 * @param date date of issue, such as 2026-03-01; empty for none
 * @param built what was measured beside what was planned, where the machine is as built
 */
public record ReportOptions(PictureOptions picture, String date, List<BuiltRow> built) {

  /** The first rider, named parts, main dimensions, no date. */
  public static final ReportOptions PLAIN =
      new ReportOptions(PictureOptions.PLAIN.withNames(true).withDimensions(true), "", List.of());

  public ReportOptions {
    built = List.copyOf(built);
  }

  /** Returns options whose first elevation shows these people in this stance. */
  public ReportOptions withFirst(PictureOptions shown) {
    return new ReportOptions(shown.withNames(true).withDimensions(true), date, built);
  }

  /** Returns options with what was measured. */
  public ReportOptions withBuilt(List<BuiltRow> rows) {
    return new ReportOptions(picture, date, rows);
  }
}
