package org.longlow.constraints.passage;

import java.util.Arrays;
import java.util.Optional;
import org.longlow.constraints.shape.Memo;
import org.longlow.rider.geom.PointMm;

/**
 * The widest way from a cell to where a limb leaves the machine sideways: a disc goes within the
 * band of its limb, through cells that it has room in, to one where nothing stands between that
 * band and the open. What was found is kept with it, for any number of threads.
 */
final class LimbWays {

  /** Distances are whole millimetres up to this. */
  private static final int MOST_MM = 1200;

  /** Ways by what is filled: what moves within its cells changes none. */
  private static final Memo<Filled, LimbWays> KNOWN = new Memo<>(64, Filled::ways);

  private final Lattice lattice;
  private final int[] freeMm;
  private final int[] leavesMm;
  private final boolean[] walls;

  /** Of each cell the widest way out, once asked for. */
  private volatile int[] widestMm;

  private volatile Sill sill;

  /** The last answer of its kind; the place is null where there is none. */
  private record Sill(int from, int radiusMm, PointMm at) {}

  /**
   * @param lattice the cells
   * @param freeMm room of the limb within its band, radius at each cell, mm
   * @param leavesMm room of it to leave sideways there, likewise; never more
   * @param walls cells that no disc's middle may be in
   */
  LimbWays(Lattice lattice, int[] freeMm, int[] leavesMm, boolean[] walls) {
    this.lattice = lattice;
    this.freeMm = freeMm;
    this.leavesMm = leavesMm;
    this.walls = walls;
  }

  /**
   * What bodies fill.
   *
   * @param hip the cell that what leaves must be seen from; -1 where that is not asked
   */
  private record Filled(
      Lattice lattice, boolean[] within, boolean[] outside, boolean[] walls, int hip) {

    LimbWays ways() {
      int[] leaves = lattice.clearMm(outside);
      if (hip >= 0) {
        leaves = leaves.clone();
        boolean[] seen = lattice.seen(outside, hip);
        for (int i = 0; i < leaves.length; i++) {
          leaves[i] = seen[i] ? leaves[i] : 0;
        }
      }
      return new LimbWays(lattice, lattice.clearMm(within), leaves, walls);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Filled f
          && f.hip == hip
          && f.lattice.equals(lattice)
          && Arrays.equals(f.within, within)
          && Arrays.equals(f.outside, outside)
          && Arrays.equals(f.walls, walls);
    }

    @Override
    public int hashCode() {
      return 31 * Arrays.hashCode(within) + Arrays.hashCode(outside);
    }
  }

  /**
   * Returns the ways of a limb that leaves wherever it has room to.
   *
   * @param within cells filled within its band
   * @param outside cells filled between that band and the open
   * @param walls cells that no disc's middle may be in
   */
  static LimbWays of(Lattice lattice, boolean[] within, boolean[] outside, boolean[] walls) {
    return KNOWN.of(new Filled(lattice, within, outside, walls, -1));
  }

  /** Returns the same of a leg, which leaves only where its hip sees it. */
  static LimbWays ofLeg(
      Lattice lattice, boolean[] within, boolean[] outside, boolean[] walls, PointMm hip) {
    return KNOWN.of(new Filled(lattice, within, outside, walls, lattice.cell(hip)));
  }

  Lattice lattice() {
    return lattice;
  }

  /** Returns the radius of the widest disc that gets out from one of these cells, mm. */
  int widestMm(int... from) {
    int[] widest = widestMm;
    if (widest == null) {
      widest = widest();
      widestMm = widest;
    }
    int most = 0;
    for (int i : from) {
      most = Math.max(most, widest[i]);
    }
    return most;
  }

  /**
   * Goes from where limbs leave to all cells, widest first, so that each is left by its widest way
   * when its turn comes.
   */
  private int[] widest() {
    int n = lattice.cells();
    int columns = lattice.columns();
    int[] widest = new int[n];
    // cells by the radius they are reached with
    int[] head = new int[MOST_MM + 1];
    Arrays.fill(head, -1);
    int[] next = new int[5 * n];
    int[] cellOf = new int[5 * n];
    int used = 0;
    int top = 0;
    for (int i = 0; i < n; i++) {
      int leaves = walls[i] ? 0 : Math.min(freeMm[i], leavesMm[i]);
      if (leaves > 0) {
        widest[i] = leaves;
        top = Math.max(top, leaves);
        next[used] = head[leaves];
        cellOf[used] = i;
        head[leaves] = used++;
      }
    }
    for (int mm = top; mm > 0; mm--) {
      while (head[mm] >= 0) {
        int i = cellOf[head[mm]];
        head[mm] = next[head[mm]];
        if (widest[i] != mm) {
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
          if (through > widest[j]) {
            widest[j] = through;
            next[used] = head[through];
            cellOf[used] = j;
            head[through] = used++;
          }
        }
      }
    }
    return widest;
  }

  /**
   * Returns the lowest edge of a disc that comes from a cell where it leaves sideways lowest, mm;
   * empty where it does not get out.
   */
  Optional<PointMm> sill(int from, int radiusMm) {
    Sill known = sill;
    if (known == null || known.from != from || known.radiusMm != radiusMm) {
      known = new Sill(from, radiusMm, lowest(from, radiusMm));
      sill = known;
    }
    return Optional.ofNullable(known.at);
  }

  private PointMm lowest(int from, int radiusMm) {
    if (walls[from] || freeMm[from] < radiusMm) {
      return null;
    }
    int columns = lattice.columns();
    int n = lattice.cells();
    boolean[] seen = new boolean[n];
    int[] queue = new int[n];
    int end = 0;
    queue[end++] = from;
    seen[from] = true;
    PointMm lowest = null;
    for (int k = 0; k < end; k++) {
      int i = queue[k];
      if (leavesMm[i] >= radiusMm) {
        PointMm middle = lattice.middle(i);
        double z = Math.max(0, middle.z() - radiusMm);
        lowest = lowest == null || z < lowest.z() ? new PointMm(middle.x(), z) : lowest;
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
