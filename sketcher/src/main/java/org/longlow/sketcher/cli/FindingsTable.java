package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.check.Finding;
import org.longlow.constraints.check.FindingGroup;
import org.longlow.constraints.check.Verdict;

/** Findings as a table of plain text, worst first. */
final class FindingsTable {

  private FindingsTable() {}

  static void print(List<Finding> findings, PrintWriter out) {
    List<String[]> rows = new ArrayList<>();
    rows.add(new String[] {"verdict", "finding", "figure", "limit", "margin", "stance"});
    List<Finding> sorted = new ArrayList<>(findings);
    sorted.sort(Comparator.comparing(Finding::verdict));
    for (Finding f : sorted) {
      rows.add(
          new String[] {
            f.verdict().says(),
            f.id(),
            figure(f.value(), f.unit()),
            figure(f.limit(), f.unit()),
            figure(f.margin(), f.unit()),
            f.stance()
          });
    }
    int[] widths = new int[6];
    for (String[] row : rows) {
      for (int i = 0; i < row.length; i++) {
        widths[i] = Math.max(widths[i], row[i].length());
      }
    }
    for (String[] row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < row.length; i++) {
        boolean number = i >= 2 && i <= 4;
        String pad = " ".repeat(widths[i] - row[i].length());
        line.append(number ? pad + row[i] : row[i] + pad).append("  ");
      }
      out.println(line.toString().stripTrailing());
    }
    out.println();
    for (Finding f : sorted) {
      if (f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CAUTION) {
        out.println(f.verdict().says() + ": " + f.text());
      }
    }
    out.println();
    for (FindingGroup group : FindingGroup.of(findings)) {
      out.println("caution, " + group.title() + ": " + group.caution());
    }
    out.println();
  }

  private static String figure(double value, String unit) {
    if (Double.isNaN(value)) {
      return "-";
    }
    String digits =
        switch (unit) {
          case "share" -> "%.3f";
          case "count" -> "%.0f";
          default -> "%.1f";
        };
    String text = String.format(Locale.ROOT, digits, value);
    return unit.isEmpty() ? text : text + " " + unit;
  }
}
