package org.longlow.svg.page;

/** A grid of squares, full or not, that tells quickly whether another one fits into it. */
final class Squares {

  private static final int WORD = 64;

  private final int columns;
  private final long[][] rows;

  Squares(int columns, int rows) {
    this.columns = columns;
    this.rows = new long[rows][(columns + WORD - 1) / WORD + 1];
  }

  static Squares of(InkRaster raster) {
    Squares bits = new Squares(raster.columns(), raster.rows());
    for (int r = 0; r < raster.rows(); r++) {
      for (int c = 0; c < raster.columns(); c++) {
        if (raster.full()[r][c]) {
          bits.rows[r][c / WORD] |= 1L << c;
        }
      }
    }
    return bits;
  }

  int rows() {
    return rows.length;
  }

  int columns() {
    return columns;
  }

  /** Returns the row above the highest full square, 0 if none is. */
  int top() {
    for (int r = rows.length; r > 0; r--) {
      for (long word : rows[r - 1]) {
        if (word != 0) {
          return r;
        }
      }
    }
    return 0;
  }

  /** Returns whether another has a full square on one of this, its first column and row there. */
  boolean meets(Squares other, int column, int row) {
    int word = column / WORD;
    int shift = column % WORD;
    for (int r = Math.max(0, -row); r < other.rows.length && row + r < rows.length; r++) {
      long[] mine = rows[row + r];
      long carried = 0;
      for (int i = 0; i < other.rows[r].length; i++) {
        long theirs = other.rows[r][i];
        long moved = theirs << shift | carried;
        if (word + i < mine.length && (mine[word + i] & moved) != 0) {
          return true;
        }
        carried = shift == 0 ? 0 : theirs >>> (WORD - shift);
      }
      if (word + other.rows[r].length < mine.length
          && (mine[word + other.rows[r].length] & carried) != 0) {
        return true;
      }
    }
    return false;
  }

  /** Fills what is full in another, its first column and row there. */
  void add(Squares other, int column, int row) {
    for (int r = 0; r < other.rows.length; r++) {
      for (int c = 0; c < other.columns; c++) {
        if ((other.rows[r][c / WORD] >>> c & 1) != 0) {
          set(column + c, row + r);
        }
      }
    }
  }

  private void set(int column, int row) {
    if (column >= 0 && column < columns && row >= 0 && row < rows.length) {
      rows[row][column / WORD] |= 1L << column;
    }
  }

  /** Fills a rectangle. */
  void fill(int column, int row, int wide, int high) {
    for (int r = row; r < row + high; r++) {
      for (int c = column; c < column + wide; c++) {
        set(c, r);
      }
    }
  }
}
