package org.longlow.constraints.gap;

/**
 * How far round bars keep from what they would touch if they were square. A bar is all that is
 * within its radius of its middle line, and less where it is cut square; so what is told here they
 * keep at least, and just that where they are nearest along their lengths.
 */
final class RoundGap {

  private RoundGap() {}

  /**
   * Returns a distance that the bodies keep, mm; negative infinity if neither is round, and {@code
   * cutMm} or more where they keep that.
   *
   * @param acrossMm the gap of the breadths that are closest, negative where they overlap
   * @param cutMm nothing beyond this matters, mm, &gt; 0
   */
  static double mm(Face a, Face b, double acrossMm, double cutMm) {
    double most = Double.NEGATIVE_INFINITY;
    if (a.core() != null) {
      most = keptMm(a.core(), b.edges(), acrossMm, cutMm);
    }
    if (b.core() != null) {
      most = Math.max(most, keptMm(b.core(), a.edges(), acrossMm, cutMm));
    }
    if (a.core() != null && b.core() != null) {
      double radii = a.core().radiusMm() + b.core().radiusMm();
      double apart = sideMm(a.core().line(), b.core().line(), cutMm + radii);
      most = Math.max(most, Math.hypot(Math.max(0, acrossMm + radii), apart) - radii);
    }
    return most;
  }

  /** A bar beside what fills its outline over its breadth. */
  private static double keptMm(Face.Core core, Edges filled, double acrossMm, double cutMm) {
    double radius = core.radiusMm();
    double side = core.beginsIn(filled) ? 0 : sideMm(core.line(), filled, cutMm + radius);
    return Math.hypot(Math.max(0, acrossMm + radius), side) - radius;
  }

  private static double sideMm(Edges a, Edges b, double cutMm) {
    Nearest near = Nearest.of(a, b, cutMm);
    return near == null ? cutMm : near.distanceMm();
  }
}
