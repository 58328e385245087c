package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** A table of plain text; what is wider than its column goes on below, nothing is cut off. */
final class TextTable {

  /**
   * A column.
   *
   * @param heading its heading
   * @param most how many characters wide it may become
   * @param number whether its cells are set to the right
   */
  record Column(String heading, int most, boolean number) {
    static Column of(String heading, int most) {
      return new Column(heading, most, false);
    }
  }

  private static final String BETWEEN = "  ";

  private final List<Column> columns;
  private final List<List<String>> rows = new ArrayList<>();

  TextTable(List<Column> columns) {
    this.columns = List.copyOf(columns);
    rows.add(columns.stream().map(Column::heading).toList());
  }

  void row(List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(cells.size() + " cells for " + columns.size());
    }
    rows.add(cells);
  }

  void print(PrintWriter out) {
    List<List<List<String>>> wrapped = new ArrayList<>();
    int[] widths = new int[columns.size()];
    for (List<String> row : rows) {
      List<List<String>> cells = new ArrayList<>();
      for (int i = 0; i < columns.size(); i++) {
        List<String> lines = wrapped(row.get(i), columns.get(i).most());
        cells.add(lines);
        for (String line : lines) {
          widths[i] = Math.max(widths[i], line.length());
        }
      }
      wrapped.add(cells);
    }
    for (List<List<String>> cells : wrapped) {
      int high = cells.stream().mapToInt(List::size).max().orElse(0);
      for (int line = 0; line < high; line++) {
        out.println(line(cells, line, widths));
      }
    }
  }

  private String line(List<List<String>> cells, int line, int[] widths) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < columns.size(); i++) {
      String cell = line < cells.get(i).size() ? cells.get(i).get(line) : "";
      String pad = " ".repeat(widths[i] - cell.length());
      text.append(columns.get(i).number() ? pad + cell : cell + pad).append(BETWEEN);
    }
    return text.toString().stripTrailing();
  }

  /** Breaks after a space, a dot or a comma where there is one, and within a word if need be. */
  static List<String> wrapped(String text, int most) {
    List<String> lines = new ArrayList<>();
    String rest = text;
    while (rest.length() > most) {
      int at = most;
      for (int i = most; i > most / 3; i--) {
        if (" .,".indexOf(rest.charAt(i - 1)) >= 0) {
          at = i;
          break;
        }
      }
      lines.add(rest.substring(0, at).stripTrailing());
      rest = rest.substring(at).stripLeading();
    }
    lines.add(rest);
    return lines;
  }
}
