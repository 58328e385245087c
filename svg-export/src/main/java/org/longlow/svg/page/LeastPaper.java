package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Looks for the turn of a template and the place of the grid over it that need fewest sheets, by
 * its ink alone. Counts are those of a raster; who takes one counts again.
 */
final class LeastPaper {

  private static final double RASTER_MM = 3;

  /** Places of the grid that are tried each way, over what its sheets leave over. */
  private static final int SHIFTS = 8;

  /** Longest sides of the hull that are laid level. */
  private static final int SIDES = 14;

  /** Turns that differ by less are the same, rad. */
  private static final double SAME_RAD = Math.toRadians(0.5);

  /** So many places far from the middle are told. */
  private static final int FAR = 4;

  private LeastPaper() {}

  /**
   * A way to lie.
   *
   * @param turnRad of the template, counter-clockwise
   * @param tilings of its ink that need as many sheets: the one nearest the middle, then those
   *     farthest from it, which leave the most room in one place
   * @param sheets how many are needed
   */
  record Way(double turnRad, List<Tiling> tilings, int sheets) {}

  /** A place of the grid, so many steps from the middle. */
  private record Place(Tiling tiling, int sheets, double off) {}

  /** Returns turns worth trying: none, and those that lay a side of the hull level. */
  static List<Double> turns(Geometry ink) {
    List<Double> turns = new ArrayList<>(List.of(0.0));
    Coordinate[] hull = new ConvexHull(ink).getConvexHull().getCoordinates();
    List<double[]> sides = new ArrayList<>();
    for (int i = 1; i < hull.length; i++) {
      double dx = hull[i].x - hull[i - 1].x;
      double dy = hull[i].y - hull[i - 1].y;
      sides.add(new double[] {Math.hypot(dx, dy), -Math.atan2(dy, dx)});
    }
    sides.sort(Comparator.comparingDouble(s -> -s[0]));
    for (double[] side : sides) {
      // Sheets upright and on their side are both tried, so a quarter turn is no other.
      double turn = Math.IEEEremainder(side[1], Math.PI / 2);
      if (turns.size() <= SIDES && turns.stream().noneMatch(t -> isSame(t, turn))) {
        turns.add(turn);
      }
    }
    return turns;
  }

  private static boolean isSame(double a, double b) {
    return Math.abs(Math.IEEEremainder(a - b, Math.PI / 2)) < SAME_RAD;
  }

  /** Returns the ink as it lies turned. */
  static Geometry turned(Geometry ink, double rad) {
    return rad == 0 ? ink : AffineTransformation.rotationInstance(rad).transform(ink);
  }

  /**
   * Returns the places of the grid that need fewest sheets; of equals the one nearest the middle
   * first.
   */
  static Way best(Geometry ink, double turnRad, TemplateSettings s) {
    Geometry lies = turned(ink, turnRad);
    Envelope box = lies.getEnvelopeInternal();
    Tiling middle = UsableSheet.tiling(box, s);
    double w = middle.usableWidthMm();
    double h = middle.usableHeightMm();
    double o = s.overlapMm();
    if (middle.rows() * middle.columns() == 1) {
      return new Way(turnRad, List.of(middle), 1);
    }
    int[][] sums = InkRaster.of(lies, box, RASTER_MM).sums();
    double spareX = Tiling.spare(box.getWidth(), w, o);
    double spareY = Tiling.spare(box.getHeight(), h, o);
    List<Place> places = new ArrayList<>();
    for (int i = 0; i <= SHIFTS; i++) {
      for (int j = 0; j <= SHIFTS; j++) {
        Tiling tiling =
            new Tiling(
                box,
                w,
                h,
                o,
                box.getMinX() - spareX * i / SHIFTS,
                box.getMaxY() + spareY * j / SHIFTS);
        double off = Math.hypot(i - SHIFTS / 2.0, j - SHIFTS / 2.0);
        places.add(new Place(tiling, sheets(tiling, box, sums), off));
      }
    }
    int least = places.stream().mapToInt(Place::sheets).min().orElseThrow();
    places.removeIf(p -> p.sheets() > least);
    places.sort(Comparator.comparingDouble(Place::off));
    List<Tiling> kept = new ArrayList<>(List.of(places.get(0).tiling()));
    for (int i = places.size() - 1; i > Math.max(0, places.size() - 1 - FAR); i--) {
      kept.add(places.get(i).tiling());
    }
    return new Way(turnRad, kept, least);
  }

  private static int sheets(Tiling tiling, Envelope box, int[][] sums) {
    int sheets = 0;
    for (int r = 0; r < tiling.rows(); r++) {
      for (int c = 0; c < tiling.columns(); c++) {
        Envelope cell = tiling.cell(r, c);
        int x1 = square(cell.getMinX() - box.getMinX(), sums[0].length, false);
        int x2 = square(cell.getMaxX() - box.getMinX(), sums[0].length, true);
        int y1 = square(cell.getMinY() - box.getMinY(), sums.length, false);
        int y2 = square(cell.getMaxY() - box.getMinY(), sums.length, true);
        sheets += sums[y2][x2] - sums[y1][x2] - sums[y2][x1] + sums[y1][x1] > 0 ? 1 : 0;
      }
    }
    return sheets;
  }

  private static int square(double mm, int length, boolean up) {
    double at = mm / RASTER_MM;
    return (int) Math.max(0, Math.min(length - 1, up ? Math.ceil(at) : Math.floor(at)));
  }
}
