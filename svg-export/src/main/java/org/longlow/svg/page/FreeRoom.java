package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryComponentFilter;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/** Finds places on a sheet where a block of notes covers as little of the drawing as possible. */
final class FreeRoom {

  private static final double STEP_MM = 3;

  /** Places tried along one side at most; on large sheets the step grows. */
  private static final int MOST_STEPS = 60;

  /** Room kept between a block and the lines of the drawing, mm. */
  private static final double CLEAR_MM = 2;

  /** Covering this much of words costs as much as covering one millimetre of line does. */
  private static final double WORDS_COST_PER_MM2 = 1;

  private final Envelope region;
  private final List<double[]> segments = new ArrayList<>();
  private final List<Envelope> words = new ArrayList<>();
  private final List<Envelope> taken = new ArrayList<>();

  /**
   * @param drawing what is on the sheet, in the unit of the region
   * @param region where blocks may go
   */
  FreeRoom(Drawing drawing, Envelope region) {
    this.region = region;
    for (Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape) {
          if (shape.style().stroke() != null) {
            add(Clip.lines(shape.geometry(), region));
          }
        } else if (mark instanceof Mark.Words w && region.intersects(w.boxMm())) {
          words.add(w.boxMm());
        }
      }
    }
  }

  private void add(Geometry lines) {
    GeometryComponentFilter each =
        part -> {
          if (part instanceof LineString line) {
            Coordinate[] c = line.getCoordinates();
            for (int i = 1; i < c.length; i++) {
              segments.add(new double[] {c[i - 1].x, c[i - 1].y, c[i].x, c[i].y});
            }
          }
        };
    lines.apply(each);
  }

  /**
   * Takes a place for a block: of those that cover least, the one nearest to a wished place. Blocks
   * never overlap each other.
   *
   * @param wishX 0 at the left of the region, 1 at the right
   * @param wishY 0 at the bottom, 1 at the top
   * @param onlyIfFree whether a place that covers something is no use
   * @return the place, or null if there is none
   */
  Envelope take(double width, double height, double wishX, double wishY, boolean onlyIfFree) {
    double freeX = region.getWidth() - width;
    double freeY = region.getHeight() - height;
    if (freeX < 0 || freeY < 0) {
      return null;
    }
    int nx = steps(freeX);
    int ny = steps(freeY);
    Envelope best = null;
    double bestCost = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= nx; i++) {
      for (int j = 0; j <= ny; j++) {
        // From the wished side onwards: near places come first, and the far ones need no closer
        // look.
        double x = place(region.getMinX(), freeX, i, nx, wishX);
        double y = place(region.getMinY(), freeY, j, ny, wishY);
        double far =
            Math.hypot(x - region.getMinX() - wishX * freeX, y - region.getMinY() - wishY * freeY);
        // Distance only decides between places that cover the same.
        double cost = far * 1e-4;
        if (cost >= bestCost) {
          continue;
        }
        Envelope box = new Envelope(x, x + width, y, y + height);
        if (taken.stream().anyMatch(box::intersects)) {
          continue;
        }
        double covered = covered(box, bestCost - cost);
        cost += covered;
        if (cost < bestCost && !(onlyIfFree && covered > 0)) {
          bestCost = cost;
          best = box;
        }
      }
    }
    if (best != null) {
      taken.add(best);
    }
    return best;
  }

  /** Returns how much of the drawing a block covers: mm of line, and mm² of words. */
  double covered(Envelope block) {
    return covered(block, Double.POSITIVE_INFINITY);
  }

  private static int steps(double free) {
    return (int) Math.min(MOST_STEPS, Math.ceil(free / STEP_MM));
  }

  private static double place(double from, double free, int i, int n, double wish) {
    double share = n == 0 ? 0 : (double) i / n;
    return from + free * (wish > 0.5 ? 1 - share : share);
  }

  private double covered(Envelope block, double enough) {
    Envelope box = new Envelope(block);
    box.expandBy(CLEAR_MM);
    double sum = 0;
    for (Envelope w : words) {
      if (w.intersects(box)) {
        sum += WORDS_COST_PER_MM2 * w.intersection(box).getArea();
      }
    }
    double[] t = new double[2];
    for (double[] s : segments) {
      if (sum > enough) {
        return sum;
      }
      // most lie to one side of the block
      if (s[0] < box.getMinX() && s[2] < box.getMinX()
          || s[0] > box.getMaxX() && s[2] > box.getMaxX()
          || s[1] < box.getMinY() && s[3] < box.getMinY()
          || s[1] > box.getMaxY() && s[3] > box.getMaxY()) {
        continue;
      }
      double dx = s[2] - s[0];
      double dy = s[3] - s[1];
      if (Clip.inside(s[0], s[1], dx, dy, box, t)) {
        sum += (t[1] - t[0]) * Math.hypot(dx, dy);
      }
    }
    return sum;
  }
}
