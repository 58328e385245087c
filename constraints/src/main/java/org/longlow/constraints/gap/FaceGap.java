package org.longlow.constraints.gap;

import java.util.function.Supplier;
import org.longlow.rider.geom.PointMm;

/** The gap between one face of a body and one of another. */
final class FaceGap {

  private final Face a;
  private final Face b;
  private final String first;
  private final String second;
  private final double cut;

  private FaceGap(Face a, Face b, String first, String second, double cut) {
    this.a = a;
    this.b = b;
    this.first = first;
    this.second = second;
    this.cut = cut;
  }

  /**
   * Returns the gap of two faces below a cut, or null; any negative one where they overlap.
   *
   * @param first the body that {@code a} is of
   * @param second the body that {@code b} is of
   */
  static Gap of(Face a, Face b, String first, String second, double cut) {
    double apart = a.apartMm(b);
    if (apart > 0 && apart >= cut) {
      return null;
    }
    double across = a.acrossMm(b);
    if (across >= cut) {
      return null;
    }
    return new FaceGap(a, b, first, second, cut).of(across, apart);
  }

  /** Returns whether two faces have more in common than a touch. */
  static boolean overlap(Face a, Face b) {
    return a.acrossMm(b) < 0
        && a.apartMm(b) == 0
        && Overlap.isThere(a.edges(), b.edges())
        && overlapInSpace(a, b);
  }

  /** Returns whether two faces whose outlines overlap do so across the machine too. */
  static boolean overlapInSpace(Face a, Face b) {
    return a.isPlain() && b.isPlain()
        ? RoundGap.mm(a, b, a.acrossMm(b), Nearest.TOUCH_MM) <= 0
        : InSpace.overlap(a, b);
  }

  private Gap of(double across, double apart) {
    if (!a.isPlain() || !b.isPlain()) {
      return inSpace();
    }
    Gap square = square(across, apart);
    if (square == null || a.isFull() && b.isFull()) {
      return square;
    }
    double round = RoundGap.mm(a, b, across, cut);
    if (round <= Math.max(square.gapMm(), 0)) {
      return square;
    }
    return round < cut ? square.wide(round) : null;
  }

  /** The gap as if round bars were square. */
  private Gap square(double across, double apart) {
    Nearest near = null;
    if (apart > 0 || !a.holdsCornerOf(b)) {
      double aside = across > 0 ? Math.sqrt(cut * cut - across * across) : cut;
      near = Nearest.of(a.edges(), b.edges(), Math.max(aside, Nearest.TOUCH_MM));
      if (near == null) {
        return null;
      }
    }
    double side = near == null ? 0 : near.distanceMm();
    if (side > 0) {
      double gap = across > 0 ? Math.sqrt(across * across + side * side) : side;
      PointMm middle = near.middle();
      return gap < cut ? new Gap(first, second, gap, () -> middle) : null;
    }
    double gap = across >= 0 ? across : overlap(a, b) ? -1 : 0;
    return gap < cut ? new Gap(first, second, gap, shared(a, b)) : null;
  }

  private Gap inSpace() {
    InSpace near = InSpace.of(a, b, cut);
    if (near == null) {
      return null;
    }
    if (near.mm() > 0) {
      return new Gap(first, second, near.mm(), near::where);
    }
    return new Gap(first, second, overlap(a, b) ? -1 : 0, shared(a, b));
  }

  private static Supplier<PointMm> shared(Face a, Face b) {
    return () -> new Overlap(a.edges(), b.edges()).middle();
  }
}
