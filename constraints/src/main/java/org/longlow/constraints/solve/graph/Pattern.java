package org.longlow.constraints.solve.graph;

/**
 * Which rows read which columns: a bipartite graph, stored by rows.
 *
 * @param rows number of rows
 * @param columns number of columns
 * @param start row i reads the columns at places {@code start[i]} to {@code start[i + 1]}
 * @param column the columns read, row after row
 */
public record Pattern(int rows, int columns, int[] start, int[] column) {
  /** The same graph seen from the columns: rows and columns exchanged. */
  public Pattern transposed() {
    int[] first = new int[columns + 1];
    for (int c : column) {
      first[c + 1]++;
    }
    for (int c = 0; c < columns; c++) {
      first[c + 1] += first[c];
    }
    int[] next = first.clone();
    int[] row = new int[column.length];
    for (int i = 0; i < rows; i++) {
      for (int e = start[i]; e < start[i + 1]; e++) {
        row[next[column[e]]++] = i;
      }
    }
    return new Pattern(columns, rows, first, row);
  }
}
