package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.machine.shop.SheetFold;
import org.longlow.rider.words.Words;

/**
 * A sheet bent along a line, laid flat: its length is that of its middle, at folds that of {@link
 * SheetFold}.
 *
 * @param alongMm where each point of the line is on the flat sheet; one more than points where the
 *     line closes
 * @param folds in turn
 * @param faults what cannot be folded as it is drawn; lengths are then those drawn, without what
 *     folds and mitres take
 */
record FlatLine(double[] alongMm, List<Fold> folds, List<Words> faults) {

  /** Turns of less than this from point to point belong to a curve, rad. */
  static final double SHARP_RAD = 0.12;

  /**
   * A fold.
   *
   * @param point of the line at which it is
   * @param alongMm the middle of it on the flat sheet
   * @param rad how far it is folded; positive where the line is on its outside
   */
  record Fold(int point, double alongMm, double rad) {}

  /** Returns the length of all of it, mm. */
  double lengthMm() {
    return alongMm[alongMm.length - 1];
  }

  /**
   * Returns where the points of a line are on the flat sheet.
   *
   * @param points of the line as drawn, two coordinates each
   * @param closed whether the last is joined to the first, where the sheet begins and ends, cut to
   *     a mitre
   * @param insideLeft whether the sheet's middle lies to the left of the line
   * @param offMm how far the middle of the sheet is from the line
   * @param thicknessMm of the sheet
   * @param folded whether corners are folded; else they are joined, mitred
   */
  static FlatLine of(
      List<double[]> points,
      boolean closed,
      boolean insideLeft,
      double offMm,
      double thicknessMm,
      boolean folded) {
    List<Words> faults = faults(points, closed, insideLeft, offMm, thicknessMm, folded);
    return faults.isEmpty()
        ? laid(points, closed, insideLeft, offMm, thicknessMm, folded, faults)
        : laid(points, closed, insideLeft, 0, 0, folded, faults);
  }

  /** Holds what corners take against the legs beside them. */
  private static List<Words> faults(
      List<double[]> points,
      boolean closed,
      boolean insideLeft,
      double offMm,
      double thicknessMm,
      boolean folded) {
    int n = points.size();
    int last = closed ? n : n - 1;
    Legs legs = new Legs(thicknessMm);
    for (int i = 0; i < last; i++) {
      double[] a = points.get(i);
      double[] b = points.get((i + 1) % n);
      double from = i == 0 && !closed ? 0 : turn(points, i, insideLeft);
      double to = i + 1 == last && !closed ? 0 : turn(points, (i + 1) % n, insideLeft);
      legs.on(
          Math.hypot(b[0] - a[0], b[1] - a[1]), offMm * (Math.tan(from / 2) + Math.tan(to / 2)));
      if (i + 1 < last && folded && Math.abs(to) >= SHARP_RAD) {
        legs.fold(to);
      } else if (i + 1 == last || Math.abs(to) >= SHARP_RAD) {
        legs.corner();
      }
    }
    return legs.faults();
  }

  private static FlatLine laid(
      List<double[]> points,
      boolean closed,
      boolean insideLeft,
      double offMm,
      double thicknessMm,
      boolean folded,
      List<Words> faults) {
    int n = points.size();
    int last = closed ? n : n - 1;
    double[] along = new double[last + 1];
    List<Fold> folds = new ArrayList<>();
    for (int i = 0; i < last; i++) {
      double[] a = points.get(i);
      double[] b = points.get((i + 1) % n);
      double from = i == 0 && !closed ? 0 : turn(points, i, insideLeft);
      double to = i + 1 == last && !closed ? 0 : turn(points, (i + 1) % n, insideLeft);
      double length =
          Math.hypot(b[0] - a[0], b[1] - a[1]) - offMm * (Math.tan(from / 2) + Math.tan(to / 2));
      double at = along[i];
      if (i > 0 && folded && Math.abs(from) >= SHARP_RAD) {
        double shorter = shorter(thicknessMm, from);
        folds.add(new Fold(i, at - shorter / 2, from));
        along[i] = at - shorter / 2;
        at -= shorter;
      }
      along[i + 1] = at + length;
    }
    return new FlatLine(along, List.copyOf(folds), faults);
  }

  /** How much shorter the way round a fold is than that along the middle of mitred sheet. */
  static double shorter(double thicknessMm, double rad) {
    if (thicknessMm == 0) {
      return 0;
    }
    double a = Math.abs(rad);
    return 2 * SheetFold.middleSetBackMm(thicknessMm, a) - SheetFold.allowanceMm(thicknessMm, a);
  }

  /** How far the line turns at a point towards its inside. */
  private static double turn(List<double[]> points, int i, boolean insideLeft) {
    int n = points.size();
    double[] o = points.get((i + n - 1) % n);
    double[] p = points.get(i);
    double[] q = points.get((i + 1) % n);
    double ux = p[0] - o[0];
    double uy = p[1] - o[1];
    double vx = q[0] - p[0];
    double vy = q[1] - p[1];
    double turn = Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy);
    return insideLeft ? turn : -turn;
  }
}
