package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.shape.Interval;

/**
 * What keeps the outlines of two bodies from being a gap apart, in every position the two can be
 * in, and the shifts that are left.
 *
 * @param positions every position in which they must keep the gap
 * @param gapMm the gap, mm, &gt;= 0; at 0 they may touch
 */
record Shifts(List<Two> positions, double gapMm) {

  /** The outlines of two bodies, the second of which is to be shifted. */
  record Two(List<Face> still, List<Face> moved) {}

  /**
   * Returns how deep two bodies are that overlap: the smallest shift that takes one out, mm.
   *
   * @param enoughMm where they are no deeper than this, any depth up to it will do
   */
  static double depthMm(List<Face> a, List<Face> b, double enoughMm) {
    Shifts out = new Shifts(List.of(new Two(a, b)), 0);
    return WayClear.mm(out.pairs(), () -> Math.abs(out.acrossMm()), enoughMm);
  }

  /** Returns the outlines to be taken out of each other in the elevation. */
  List<WayClear.Pair> pairs() {
    Wider wider = new Wider();
    List<WayClear.Pair> pairs = new ArrayList<>();
    for (Two position : positions) {
      for (Face a : position.still()) {
        for (Face b : position.moved()) {
          double across = a.acrossMm(b);
          if (across < gapMm || across < 0) {
            double needed = across > 0 ? Math.sqrt(gapMm * gapMm - across * across) : gapMm;
            pairs.add(new WayClear.Pair(a.edges(), wider.of(b.edges(), needed)));
          }
        }
      }
    }
    return pairs;
  }

  /** Returns the smallest shift across the machine, mm, left positive. */
  double acrossMm() {
    Across across = new Across();
    tooClose((still, moved, needed) -> forbidSide(across, still, moved, needed));
    return across.least();
  }

  /**
   * Returns how much farther out (positive) or in (negative) both sides of the shifted body must
   * be, mm; infinite where nothing would be left of it. What lies across the middle plane is taken
   * to grow or shrink with them.
   */
  double apartMm() {
    Across apart = new Across();
    tooClose(
        (still, moved, needed) -> {
          if (moved.from() < 0 && moved.to() > 0) {
            forbidMiddle(apart, still, moved, needed);
          } else if (moved.middle() > 0) {
            forbidSide(apart, still, moved, needed);
          } else {
            forbidSide(apart, still.mirrored(), moved.mirrored(), needed);
          }
        });
    return apart.least();
  }

  /** What grows to both sides never lets go; what shrinks does on the side that is left first. */
  private static void forbidMiddle(Across apart, Interval still, Interval moved, double needed) {
    double narrower = still.gap(moved) - needed;
    boolean gone = narrower <= -moved.length() / 2;
    apart.forbid(gone ? Double.NEGATIVE_INFINITY : narrower, Double.POSITIVE_INFINITY);
  }

  /** Shifts to the left at which they are too close. */
  private static void forbidSide(Across shifts, Interval still, Interval moved, double needed) {
    shifts.forbid(still.from() - moved.to() - needed, still.to() - moved.from() + needed);
  }

  @FunctionalInterface
  private interface Pairs {
    void add(Interval still, Interval moved, double neededMm);
  }

  /** Visits the intervals of outlines that are too close in the elevation to pass each other. */
  private void tooClose(Pairs pairs) {
    for (Two position : positions) {
      for (Face a : position.still()) {
        for (Face b : position.moved()) {
          double side = sideMm(a, b);
          if (side < gapMm || side < 0) {
            double needed = side > 0 ? Math.sqrt(gapMm * gapMm - side * side) : gapMm;
            for (Interval still : a.across()) {
              b.across().forEach(moved -> pairs.add(still, moved, needed));
            }
          }
        }
      }
    }
  }

  /** Returns the distance of two outlines, mm; -1 where they overlap. */
  private double sideMm(Face a, Face b) {
    if (a.apartMm(b) > gapMm) {
      return Double.POSITIVE_INFINITY;
    }
    if (Overlap.isThere(a.edges(), b.edges())) {
      return -1;
    }
    Nearest near = Nearest.of(a.edges(), b.edges(), Math.max(gapMm, Nearest.TOUCH_MM));
    return near == null ? Double.POSITIVE_INFINITY : near.distanceMm();
  }
}
