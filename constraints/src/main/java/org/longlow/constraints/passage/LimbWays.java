package org.longlow.constraints.passage;

import java.util.Arrays;

/**
 * The widest way from each cell to where a limb leaves the machine sideways: a disc goes within the
 * band of its limb, through cells that it has room in, to one where nothing stands between that
 * band and the open.
 *
 * @param lattice the cells
 * @param freeMm room of the limb within its band, radius at each cell, mm
 * @param leavesMm room of it to leave sideways there, likewise; never more
 * @param walls cells that no disc's middle may be in
 * @param widestMm radius that gets out from each cell
 */
record LimbWays(Lattice lattice, int[] freeMm, int[] leavesMm, boolean[] walls, int[] widestMm) {

  /** Distances are whole millimetres up to this. */
  private static final int MOST_MM = 1200;

  /** Finds the widest ways. */
  static LimbWays of(Lattice lattice, int[] freeMm, int[] leavesMm, boolean[] walls) {
    int n = lattice.cells();
    int[] best = new int[n];
    // cells by the radius they are reached with, widest first
    int[] head = new int[MOST_MM + 1];
    Arrays.fill(head, -1);
    int[] next = new int[8 * n];
    int[] cellOf = new int[8 * n];
    int used = 0;
    int top = 0;
    for (int i = 0; i < n; i++) {
      best[i] = walls[i] ? 0 : Math.min(freeMm[i], leavesMm[i]);
      if (best[i] > 0 && leavesFirst(lattice, freeMm, leavesMm, i)) {
        next[used] = head[best[i]];
        cellOf[used] = i;
        head[best[i]] = used++;
        top = Math.max(top, best[i]);
      }
    }
    int columns = lattice.columns();
    for (int mm = top; mm > 0; mm--) {
      while (head[mm] >= 0) {
        int entry = head[mm];
        head[mm] = next[entry];
        int i = cellOf[entry];
        if (best[i] != mm) {
          continue;
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
          if (through > best[j]) {
            best[j] = through;
            if (used == next.length) {
              next = Arrays.copyOf(next, 2 * used);
              cellOf = Arrays.copyOf(cellOf, 2 * used);
            }
            next[used] = head[through];
            cellOf[used] = j;
            head[through] = used++;
          }
        }
      }
    }
    return new LimbWays(lattice, freeMm, leavesMm, walls, best);
  }

  /** Only where some neighbour is reached better from here than it leaves itself. */
  private static boolean leavesFirst(Lattice lattice, int[] free, int[] leaves, int i) {
    int columns = lattice.columns();
    int c = i % columns;
    return c > 0 && Math.min(leaves[i], free[i - 1]) > leaves[i - 1]
        || c + 1 < columns && Math.min(leaves[i], free[i + 1]) > leaves[i + 1]
        || i >= columns && Math.min(leaves[i], free[i - columns]) > leaves[i - columns]
        || i + columns < free.length
            && Math.min(leaves[i], free[i + columns]) > leaves[i + columns];
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
