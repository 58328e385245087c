package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.built.BuiltRow;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Unit;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/** What was measured beside what was planned, as text in the units shown. */
public final class BuiltTable {

  public static final List<String> HEADINGS =
      List.of("measured", "name", "figure", "planned", "built", "difference");

  private static final String NOT_KNOWN = "not known";

  private BuiltTable() {}

  /** Returns the table, a row each. */
  public static List<List<String>> of(List<BuiltRow> rows, Units units) {
    List<List<String>> table = new ArrayList<>();
    for (BuiltRow row : rows) {
      double more = row.difference();
      String sign = more > 0 ? "+" : "";
      table.add(
          List.of(
              row.kind(),
              row.name(),
              row.what(),
              says(row.planned(), row.dim(), units),
              says(row.built(), row.dim(), units),
              Double.isNaN(more) ? "" : sign + says(more, row.dim(), units)));
    }
    return table;
  }

  static void write(Html h, List<BuiltRow> rows, Units units) {
    if (rows.isEmpty()) {
      return;
    }
    h.element("h2", "Planned and built");
    h.table("built", "What was measured on the machine that was made", HEADINGS);
    of(rows, units).forEach(row -> h.row("", HEADINGS, row));
    h.closeTable();
  }

  private static String says(double value, Dim dim, Units units) {
    if (Double.isNaN(value)) {
      return NOT_KNOWN;
    }
    if (dim.equals(Dim.LENGTH)) {
      return units.says(value, FigureSort.LENGTH_IN_TENTHS);
    }
    if (dim.equals(Dim.MASS)) {
      return units.says(value, FigureSort.MASS_IN_TENTHS);
    }
    if (dim.equals(Dim.ANGLE)) {
      return units.says(Math.toDegrees(value), FigureSort.ANGLE);
    }
    Unit unit = Unit.of(dim, units);
    return (Decimals.upTo(3, unit.fromInternal(value)) + " " + unit.symbol()).strip();
  }
}
