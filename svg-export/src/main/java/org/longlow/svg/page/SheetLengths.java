package org.longlow.svg.page;

import java.util.Locale;
import java.util.Objects;
import java.util.function.DoubleFunction;

/**
 * How lengths are written on template sheets.
 *
 * @param says writes a length, mm, with its unit
 * @param inchBar whether the bars to measure have a line of 4 in beside their 100 mm
 */
public record SheetLengths(DoubleFunction<String> says, boolean inchBar) {

  /** Millimetres and tenths. */
  public static final SheetLengths MM =
      new SheetLengths(mm -> String.format(Locale.ROOT, "%.1f mm", mm), false);

  public SheetLengths {
    Objects.requireNonNull(says, "how a length is written");
  }
}
