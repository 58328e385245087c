package org.longlow.sketcher.report;

import org.longlow.sketcher.picture.PictureOptions;

/**
 * How a report is made.
 *
 * @param picture what the first elevation shows; its findings are replaced by those that fail or
 *     need care and can be seen there
 * @param date date of issue, such as 2026-03-01; empty for none
 */
public record ReportOptions(PictureOptions picture, String date) {

  /** The first rider, named parts, main dimensions, no date. */
  public static final ReportOptions PLAIN =
      new ReportOptions(PictureOptions.PLAIN.withNames(true).withDimensions(true), "");

  /** Returns options whose first elevation shows these people in this stance. */
  public ReportOptions withFirst(PictureOptions shown) {
    return new ReportOptions(shown.withNames(true).withDimensions(true), date);
  }
}
