package org.longlow.constraints.passage;

import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/**
 * Square cells over a window of the elevation. What is told of a point is told of its cell, so
 * figures are good to {@link #CELL_MM}.
 *
 * @param x0 rear edge, mm
 * @param z0 lower edge, mm
 * @param columns cells along
 * @param rows cells up
 */
record Lattice(double x0, double z0, int columns, int rows) {

  /** Breadth of a cell, mm. */
  static final double CELL_MM = ReachedCells.CELL_MM;

  /** Farther than this nothing is looked for, cells. */
  private static final int FAR = 40;

  /** Cells that outlines reach into, of all the plane, so that a window can be moved over them. */
  private static final ByThing<Geometry, int[]> REACHED =
      new ByThing<>(2048, outline -> new ReachedCells(outline).cells());

  /** Room by what is filled: what moves within its cells, or beside a band, changes none. */
  private static final Memo<Filled, int[]> CLEAR = new Memo<>(64, Filled::clearMm);

  private record Filled(Lattice lattice, boolean[] cells) {

    int[] clearMm() {
      return lattice.clear(cells);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Filled f
          && f.lattice.equals(lattice)
          && Arrays.equals(f.cells, cells);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(cells);
    }
  }

  /** Cells of all windows lie over each other. */
  static Lattice over(double x0, double x1, double z0, double z1) {
    double x = Math.floor(x0 / CELL_MM) * CELL_MM;
    double z = Math.floor(z0 / CELL_MM) * CELL_MM;
    return new Lattice(
        x,
        z,
        Math.max(1, (int) Math.ceil((x1 - x) / CELL_MM)),
        Math.max(1, (int) Math.ceil((z1 - z) / CELL_MM)));
  }

  int cells() {
    return columns * rows;
  }

  /** The cell of a point; that at the edge of the window for one beyond it. */
  int cell(PointMm p) {
    return row(p.z()) * columns + column(p.x());
  }

  private int column(double x) {
    return Math.max(0, Math.min(columns - 1, (int) Math.floor((x - x0) / CELL_MM)));
  }

  private int row(double z) {
    return Math.max(0, Math.min(rows - 1, (int) Math.floor((z - z0) / CELL_MM)));
  }

  PointMm middle(int cell) {
    return new PointMm(
        x0 + (cell % columns + 0.5) * CELL_MM, z0 + (cell / columns + 0.5) * CELL_MM);
  }

  /** Whether a body reaches into the window. */
  boolean sees(Geometry outline) {
    var box = outline.getEnvelopeInternal();
    return box.getMaxX() > x0
        && box.getMinX() < x0 + columns * CELL_MM
        && box.getMaxY() > z0
        && box.getMinY() < z0 + rows * CELL_MM;
  }

  /** Returns the cells that bodies reach into within a band across the machine. */
  boolean[] filled(List<Prism> bodies, Interval band) {
    boolean[] filled = new boolean[cells()];
    int firstColumn = (int) Math.round(x0 / CELL_MM);
    int firstRow = (int) Math.round(z0 / CELL_MM);
    for (Prism body : bodies) {
      if (body.across().gap(band) < 0) {
        int[] cells = REACHED.of(body.outline());
        for (int k = 0; k < cells.length; k += 2) {
          int c = cells[k] - firstColumn;
          int r = cells[k + 1] - firstRow;
          if (c >= 0 && c < columns && r >= 0 && r < rows) {
            filled[r * columns + c] = true;
          }
        }
      }
    }
    return filled;
  }

  /**
   * Returns the cells that one of them sees past filled ones, on straight lines. Where something
   * fills that one, somebody stands as near to it as there is room.
   */
  boolean[] seen(boolean[] filled, int at) {
    boolean[] seen = new boolean[cells()];
    int from = beside(filled, at);
    int column = from % columns;
    int row = from / columns;
    for (int c = 0; c < columns; c++) {
      ray(filled, seen, column, row, c, 0);
      ray(filled, seen, column, row, c, rows - 1);
    }
    for (int r = 1; r + 1 < rows; r++) {
      ray(filled, seen, column, row, 0, r);
      ray(filled, seen, column, row, columns - 1, r);
    }
    return seen;
  }

  /** Returns the nearest free cell in the row of one, ahead before behind; itself without any. */
  private int beside(boolean[] filled, int at) {
    int row = at / columns * columns;
    for (int off = 0; off < columns; off++) {
      for (int c : new int[] {at - row + off, at - row - off}) {
        if (c >= 0 && c < columns && !filled[row + c]) {
          return row + c;
        }
      }
    }
    return at;
  }

  private void ray(boolean[] filled, boolean[] seen, int column, int row, int toColumn, int toRow) {
    int steps = Math.max(Math.abs(toColumn - column), Math.abs(toRow - row));
    double dc = steps == 0 ? 0 : (double) (toColumn - column) / steps;
    double dr = steps == 0 ? 0 : (double) (toRow - row) / steps;
    for (int k = 0; k <= steps; k++) {
      int i = (int) (row + dr * k + 0.5) * columns + (int) (column + dc * k + 0.5);
      if (filled[i]) {
        return;
      }
      seen[i] = true;
    }
  }

  /**
   * Returns how far the middle of each cell is from the edge of the nearest filled one, mm, at most
   * {@link #FAR} cells; exact distances of middles (Felzenszwalb and Huttenlocher 2012, distance
   * transforms of sampled functions), less half a cell. Not to be changed, nor what is filled.
   */
  int[] clearMm(boolean[] filled) {
    return CLEAR.of(new Filled(this, filled));
  }

  private int[] clear(boolean[] filled) {
    int[] down = new int[cells()];
    for (int c = 0; c < columns; c++) {
      int since = FAR; // cells
      for (int r = 0; r < rows; r++) {
        int i = r * columns + c;
        since = filled[i] ? 0 : Math.min(FAR, since + 1);
        down[i] = since;
      }
      since = FAR;
      for (int r = rows - 1; r >= 0; r--) {
        int i = r * columns + c;
        since = filled[i] ? 0 : Math.min(FAR, since + 1);
        down[i] = Math.min(down[i], since);
      }
    }
    int[] clear = new int[cells()];
    int[] at = new int[columns];
    double[] from = new double[columns + 1];
    for (int r = 0; r < rows; r++) {
      along(down, r * columns, at, from, clear);
    }
    return clear;
  }

  /** Lower envelope of the parabolas of one row. */
  private void along(int[] down, int row, int[] at, double[] from, int[] clear) {
    int k = 0;
    at[0] = 0;
    from[0] = Double.NEGATIVE_INFINITY;
    from[1] = Double.POSITIVE_INFINITY;
    for (int q = 1; q < columns; q++) {
      double s = meets(down, row, at[k], q);
      while (s <= from[k]) {
        k--;
        s = meets(down, row, at[k], q);
      }
      k++;
      at[k] = q;
      from[k] = s;
      from[k + 1] = Double.POSITIVE_INFINITY;
    }
    k = 0;
    for (int q = 0; q < columns; q++) {
      while (from[k + 1] < q) {
        k++;
      }
      int d = down[row + at[k]];
      double square = (double) (q - at[k]) * (q - at[k]) + (double) d * d;
      double cells = Math.min(FAR, Math.sqrt(square));
      clear[row + q] = (int) Math.round(Math.max(0, cells - 0.5) * CELL_MM);
    }
  }

  private static double meets(int[] down, int row, int p, int q) {
    double fp = (double) down[row + p] * down[row + p] + (double) p * p;
    double fq = (double) down[row + q] * down[row + q] + (double) q * q;
    return (fq - fp) / (2.0 * (q - p));
  }
}
