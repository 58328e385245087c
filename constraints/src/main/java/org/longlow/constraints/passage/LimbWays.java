package org.longlow.constraints.passage;

import java.util.Arrays;

/**
 * The widest way from a cell to where a limb leaves the machine sideways: a disc goes within the
 * band of its limb, through cells that it has room in, to one where nothing stands between that
 * band and the open.
 *
 * @param lattice the cells
 * @param freeMm room of the limb within its band, radius at each cell, mm
 * @param leavesMm room of it to leave sideways there, likewise; never more
 * @param walls cells that no disc's middle may be in
 */
record LimbWays(Lattice lattice, int[] freeMm, int[] leavesMm, boolean[] walls) {

  /** Distances are whole millimetres up to this. */
  private static final int MOST_MM = 1200;

  /**
   * Returns the radius of the widest disc that gets out from one of these cells, mm: cells are gone
   * through widest first, so that what is reached while wider than the best way out is all there
   * is.
   */
  int widestMm(int... from) {
    int n = lattice.cells();
    int columns = lattice.columns();
    int[] reached = new int[n];
    // cells by the radius they are reached with
    int[] head = new int[MOST_MM + 1];
    Arrays.fill(head, -1);
    int[] next = new int[4 * n + from.length];
    int[] cellOf = new int[4 * n + from.length];
    int used = 0;
    int top = 0;
    for (int i : from) {
      if (!walls[i] && freeMm[i] > reached[i]) {
        reached[i] = freeMm[i];
        top = Math.max(top, freeMm[i]);
        next[used] = head[freeMm[i]];
        cellOf[used] = i;
        head[freeMm[i]] = used++;
      }
    }
    int out = 0;
    for (int mm = top; mm > out; mm--) {
      while (head[mm] >= 0) {
        int i = cellOf[head[mm]];
        head[mm] = next[head[mm]];
        if (reached[i] != mm) {
          continue;
        }
        out = Math.max(out, Math.min(mm, leavesMm[i]));
        if (out == mm) {
          break;
        }
        int c = i % columns;
        for (int side = 0; side < 4; side++) {
          int j =
              side == 0
                  ? (c > 0 ? i - 1 : -1)
                  : side == 1
                      ? (c + 1 < columns ? i + 1 : -1)
                      : side == 2 ? i - columns : i + columns;
          if (j < 0 || j >= n || walls[j]) {
            continue;
          }
          int through = Math.min(mm, freeMm[j]);
          if (through > reached[j]) {
            reached[j] = through;
            next[used] = head[through];
            cellOf[used] = j;
            head[through] = used++;
          }
        }
      }
    }
    return out;
  }

  /**
   * Returns the lowest place where a disc leaves sideways that comes from a cell.
   *
   * @return the height of the disc's lower edge, mm; NaN where it does not get out
   */
  double sillMm(int from, int radiusMm) {
    if (walls[from] || freeMm[from] < radiusMm) {
      return Double.NaN;
    }
    int columns = lattice.columns();
    int n = lattice.cells();
    boolean[] seen = new boolean[n];
    int[] queue = new int[n];
    int end = 0;
    queue[end++] = from;
    seen[from] = true;
    double lowest = Double.NaN;
    for (int k = 0; k < end; k++) {
      int i = queue[k];
      if (leavesMm[i] >= radiusMm) {
        double z = Math.max(0, lattice.middle(i).z() - radiusMm);
        lowest = Double.isNaN(lowest) ? z : Math.min(lowest, z);
      }
      int c = i % columns;
      int[] sides = {c > 0 ? i - 1 : -1, c + 1 < columns ? i + 1 : -1, i - columns, i + columns};
      for (int j : sides) {
        if (j >= 0 && j < n && !seen[j] && !walls[j] && freeMm[j] >= radiusMm) {
          seen[j] = true;
          queue[end++] = j;
        }
      }
    }
    return lowest;
  }
}
