package org.longlow.svg.page;

import org.locationtech.jts.geom.Envelope;

/** What of a sheet can be drawn on, in millimetres as they come out of the printer. */
final class UsableSheet {

  private UsableSheet() {}

  static double wideMm(TemplateSettings s) {
    return (s.paper().widthMm() - 2 * s.marginMm()) / s.correction().sx();
  }

  static double highMm(TemplateSettings s) {
    return (s.paper().heightMm() - 2 * s.marginMm()) / s.correction().sy();
  }

  /**
   * Returns a tiling in whose middle a box lies.
   *
   * @throws IllegalArgumentException if it has more than {@link Tiling#MOST_TILES}
   */
  static Tiling tiling(Envelope box, TemplateSettings s) {
    return new Tiling(box, wideMm(s), highMm(s), s.overlapMm());
  }
}
