package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/** Finds places on a sheet where a block of notes covers as little of the drawing as possible. */
final class FreeRoom {

  static final double STEP_MM = 3;

  /** Places tried along one side at most; on large sheets the step grows. */
  private static final int MOST_STEPS = 60;

  /** Room kept between a block and the lines of the drawing, mm. */
  private static final double CLEAR_MM = 2;

  /** Covering a line to cut costs as much as so many that are not, which can be left out there. */
  private static final double CUT_COST = 20;

  /** Covering this much of words costs as much as covering one millimetre of line does. */
  private static final double WORDS_COST_PER_MM2 = 1;

  private final Envelope region;
  private final InkSums ink;
  private final List<Envelope> taken;

  /**
   * @param drawing what is on the sheet, in the unit of the region
   * @param region where blocks may go
   */
  FreeRoom(Drawing drawing, Envelope region) {
    this(region, new InkSums(region), new ArrayList<>());
    for (Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape) {
          if (shape.style().stroke() != null) {
            ink.lines(Clip.lines(shape.geometry(), region), Clip.isCut(shape) ? CUT_COST : 1);
          }
        } else if (mark instanceof Mark.Words w && region.intersects(w.boxMm())) {
          ink.area(region.intersection(w.boxMm()), WORDS_COST_PER_MM2);
        }
      }
    }
  }

  private FreeRoom(Envelope region, InkSums ink, List<Envelope> taken) {
    this.region = region;
    this.ink = ink;
    this.taken = taken;
  }

  /** Returns what is left now in a part of the region, to be taken by itself. */
  FreeRoom within(Envelope part) {
    return new FreeRoom(part, ink, new ArrayList<>(taken));
  }

  /** Returns what is left now, to be taken otherwise. */
  FreeRoom again() {
    return within(region);
  }

  /**
   * Takes a place for a block: of those that cover least, the one nearest to a wished place. Blocks
   * never overlap each other.
   *
   * @param wishX 0 at the left of the region, 1 at the right
   * @param wishY 0 at the bottom, 1 at the top
   * @param step from one place that is tried to the next, mm
   * @param onlyIfFree whether a place that covers something is no use
   * @return the place, or null if there is none
   */
  Envelope take(
      double width, double height, double wishX, double wishY, double step, boolean onlyIfFree) {
    double freeX = region.getWidth() - width;
    double freeY = region.getHeight() - height;
    if (freeX < 0 || freeY < 0) {
      return null;
    }
    int nx = steps(freeX, step);
    int ny = steps(freeY, step);
    Envelope best = null;
    double bestCost = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= nx; i++) {
      for (int j = 0; j <= ny; j++) {
        // From the wished side onwards: near places come first, and the far ones need no closer
        // look.
        double x = place(region.getMinX(), freeX, i, nx, wishX);
        double y = place(region.getMinY(), freeY, j, ny, wishY);
        double farX = x - region.getMinX() - wishX * freeX;
        double farY = y - region.getMinY() - wishY * freeY;
        double far = Math.sqrt(farX * farX + farY * farY); // Math.hypot takes many times as long
        // Distance only decides between places that cover the same.
        double cost = far * 1e-4;
        if (cost >= bestCost) {
          continue;
        }
        Envelope box = new Envelope(x, x + width, y, y + height);
        if (isTaken(box)) {
          continue;
        }
        double covered = covered(box);
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

  /** Returns whether a block lies on another. */
  boolean isTaken(Envelope box) {
    for (Envelope other : taken) { // a stream for each place tried takes longer than all the rest
      if (box.intersects(other)) {
        return true;
      }
    }
    return false;
  }

  /** Takes a place that was found otherwise. */
  void take(Envelope box) {
    taken.add(box);
  }

  /**
   * Returns how much of the drawing a block covers: mm of line, those to cut counted many times,
   * and mm² of words.
   */
  double covered(Envelope block) {
    Envelope box = new Envelope(block);
    box.expandBy(CLEAR_MM);
    return ink.in(box);
  }

  private static int steps(double free, double step) {
    return (int) Math.min(MOST_STEPS * STEP_MM / step, Math.ceil(free / step));
  }

  private static double place(double from, double free, int i, int n, double wish) {
    double share = n == 0 ? 0 : (double) i / n;
    return from + free * (wish > 0.5 ? 1 - share : share);
  }
}
