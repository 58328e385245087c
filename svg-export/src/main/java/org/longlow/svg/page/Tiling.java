package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;

/**
 * A drawing divided over a grid of overlapping tiles.
 *
 * <p>Along an axis the number of tiles is 1 + ceil((W - u) / (u - overlap)), u being the usable
 * length of a sheet and W reaching from the first tile to the end of the drawing. Unless said
 * otherwise what is left over is shared between both ends, so the drawing sits in the middle of the
 * grid. Row 0 is at the top (row letter A), column 0 at the left (number 1).
 *
 * @param bounds what is to be covered, drawing mm
 * @param usableWidthMm width of a tile, drawing mm
 * @param usableHeightMm height of a tile, drawing mm
 * @param overlapMm width of the band shared by neighbours, drawing mm
 * @param leftMm where the first column begins, not right of the bounds
 * @param topMm where the first row begins, not below the top of the bounds
 */
public record Tiling(
    Envelope bounds,
    double usableWidthMm,
    double usableHeightMm,
    double overlapMm,
    double leftMm,
    double topMm) {

  /**
   * Design margin for home printers, mm; their unprintable margin is typically 3 to 5 (from
   * memory).
   */
  public static final double MARGIN_MM = 10;

  /** Usual overlap, mm. */
  public static final double OVERLAP_MM = 10;

  /** More tiles than this are refused: nobody glues them. */
  public static final int MOST_TILES = 1_000;

  /** Sums of millimetres that should be equal may differ by this much. */
  private static final double SLACK = 1e-9;

  /** A tiling in whose middle the drawing sits. */
  public Tiling(Envelope bounds, double usableWidthMm, double usableHeightMm, double overlapMm) {
    this(
        bounds,
        usableWidthMm,
        usableHeightMm,
        overlapMm,
        bounds == null
            ? 0
            : bounds.getMinX() - spare(bounds.getWidth(), usableWidthMm, overlapMm) / 2,
        bounds == null
            ? 0
            : bounds.getMaxY() + spare(bounds.getHeight(), usableHeightMm, overlapMm) / 2);
  }

  public Tiling {
    if (bounds == null || bounds.isNull()) {
      throw new IllegalArgumentException("nothing to tile: the drawing is empty");
    }
    bounds = new Envelope(bounds);
    if (!(overlapMm >= 0)
        || !(usableWidthMm > 2 * overlapMm)
        || !(usableHeightMm > 2 * overlapMm)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "a usable area of %s x %s mm with an overlap of %s mm cannot be tiled;"
                  + " each side must be more than twice the overlap: take larger paper,"
                  + " a smaller margin or a smaller overlap",
              usableWidthMm,
              usableHeightMm,
              overlapMm));
    }
    Envelope covered = new Envelope(bounds);
    covered.expandToInclude(leftMm, topMm);
    refusal(covered, usableWidthMm, usableHeightMm, overlapMm)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException(why);
            });
  }

  /** Returns why nobody would glue so many tiles; empty if they are few enough. */
  static Optional<String> refusal(
      Envelope bounds, double usableWidthMm, double usableHeightMm, double overlapMm) {
    double tiles =
        (double) count(bounds.getWidth(), usableWidthMm, overlapMm)
            * count(bounds.getHeight(), usableHeightMm, overlapMm);
    return tiles <= MOST_TILES
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%.0f x %.0f mm would need %.0f sheets; allowed: %d. Check the part's size or take"
                    + " larger paper",
                bounds.getWidth(),
                bounds.getHeight(),
                tiles,
                MOST_TILES));
  }

  /** Returns the tiling of some bounds at 1:1 on sheets of paper with a margin all round. */
  public static Tiling of(Envelope bounds, Paper paper, double marginMm, double overlapMm) {
    if (!(marginMm >= 0)) {
      throw new IllegalArgumentException("margin is " + marginMm + " mm; allowed: 0 or more");
    }
    return new Tiling(
        bounds, paper.widthMm() - 2 * marginMm, paper.heightMm() - 2 * marginMm, overlapMm);
  }

  private static int count(double length, double usable, double overlap) {
    double more = Math.ceil((length - usable) / (usable - overlap) - SLACK);
    return 1 + (int) Math.max(0, Math.min(more, Integer.MAX_VALUE - 1));
  }

  /** Returns what tiles cover more than a length, mm. */
  static double spare(double length, double usable, double overlap) {
    return (count(length, usable, overlap) - 1) * (usable - overlap) + usable - length;
  }

  /** Returns the same grid, with as many more whole tiles as a place needs that it leaves out. */
  Tiling over(Envelope place) {
    Envelope all = new Envelope(bounds);
    all.expandToInclude(place);
    double stepX = usableWidthMm - overlapMm;
    double stepY = usableHeightMm - overlapMm;
    double left = leftMm - stepX * Math.max(0, Math.ceil((leftMm - all.getMinX()) / stepX - SLACK));
    double top = topMm + stepY * Math.max(0, Math.ceil((all.getMaxY() - topMm) / stepY - SLACK));
    return new Tiling(all, usableWidthMm, usableHeightMm, overlapMm, left, top);
  }

  public int columns() {
    return count(bounds.getMaxX() - leftMm, usableWidthMm, overlapMm);
  }

  public int rows() {
    return count(topMm - bounds.getMinY(), usableHeightMm, overlapMm);
  }

  /** Returns the rectangle that the sheet in this place shows, drawing mm. */
  public Envelope tile(int row, int column) {
    checkPlace(row, column);
    double stepX = usableWidthMm - overlapMm;
    double stepY = usableHeightMm - overlapMm;
    double left = leftMm + column * stepX;
    double top = topMm - row * stepY;
    return new Envelope(left, left + usableWidthMm, top - usableHeightMm, top);
  }

  /** Returns the tile less half of each band it shares: cells touch and do not overlap. */
  public Envelope cell(int row, int column) {
    Envelope t = tile(row, column);
    double h = overlapMm / 2;
    return new Envelope(
        t.getMinX() + (column > 0 ? h : 0),
        t.getMaxX() - (column < columns() - 1 ? h : 0),
        t.getMinY() + (row < rows() - 1 ? h : 0),
        t.getMaxY() - (row > 0 ? h : 0));
  }

  /** Returns whether a place lies on one sheet, off every band that it shares with others. */
  public boolean isClear(Envelope place) {
    int row = row(place.getMaxY());
    int column = column(place.getMinX());
    Envelope tile = tile(row, column);
    return new Envelope(
            tile.getMinX() + (column > 0 ? overlapMm : 0),
            tile.getMaxX() - (column < columns() - 1 ? overlapMm : 0),
            tile.getMinY() + (row < rows() - 1 ? overlapMm : 0),
            tile.getMaxY() - (row > 0 ? overlapMm : 0))
        .contains(place);
  }

  /** As {@link #isClear(Envelope)}, and on a sheet that is used anyway. */
  public boolean isClear(Envelope place, boolean[][] used) {
    return used[row(place.getMaxY())][column(place.getMinX())] && isClear(place);
  }

  /** Returns whether a point lies in the cell of a used sheet. */
  public boolean isOn(double x, double y, boolean[][] used) {
    int row = row(y);
    int column = column(x);
    for (int r = Math.max(0, row - 1); r <= row; r++) {
      for (int c = Math.max(0, column - 1); c <= column; c++) {
        if (used[r][c] && cell(r, c).contains(x, y)) {
          return true;
        }
      }
    }
    return false;
  }

  private int column(double x) {
    return index((x - leftMm) / (usableWidthMm - overlapMm), columns());
  }

  private int row(double y) {
    return index((topMm - y) / (usableHeightMm - overlapMm), rows());
  }

  private static int index(double steps, int count) {
    return (int) Math.max(0, Math.min(count - 1, Math.floor(steps)));
  }

  /**
   * Returns which sheets are needed: those whose cell meets a shape (for a polygon, its whole area)
   * or the anchor of words.
   *
   * @return [row][column]
   */
  public boolean[][] used(Drawing drawing) {
    boolean[][] out = new boolean[rows()][columns()];
    List<Geometry> shapes = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        shapes.add(
            mark instanceof Mark.Shape s
                ? s.geometry()
                : Planar.FACTORY.createPoint(
                    new Coordinate(((Mark.Words) mark).x(), ((Mark.Words) mark).y())));
      }
    }
    for (int r = 0; r < out.length; r++) {
      for (int c = 0; c < out[r].length; c++) {
        Envelope cell = cell(r, c);
        Polygon box = Planar.rectangle(cell);
        out[r][c] =
            shapes.stream()
                .anyMatch(
                    g ->
                        cell.intersects(g.getEnvelopeInternal())
                            && (cell.contains(g.getEnvelopeInternal()) || box.intersects(g)));
      }
    }
    return out;
  }

  /** Returns the name of a sheet: row letter and column number, {@code A1} at the top left. */
  public static String label(int row, int column) {
    StringBuilder letters = new StringBuilder();
    for (int n = row; n >= 0; n = n / 26 - 1) {
      letters.insert(0, (char) ('A' + n % 26));
    }
    return letters.toString() + (column + 1);
  }

  private void checkPlace(int row, int column) {
    if (row < 0 || row >= rows() || column < 0 || column >= columns()) {
      throw new IllegalArgumentException(
          "no tile in row " + row + ", column " + column + " of " + rows() + " x " + columns());
    }
  }
}
