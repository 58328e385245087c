package org.longlow.svg.page;

import org.locationtech.jts.geom.Envelope;

/**
 * Pieces of a roll for one template, as long as it needs, the template lying along the roll or
 * across it.
 */
final class RollPieces {

  /** Beside the template there is room for the block of notes and the bars, mm. */
  private static final double NOTES_MM = TemplateSettings.NOTES_HEIGHT_MM + 4;

  private RollPieces() {}

  /** Returns the settings for a template whose width lies across the roll. */
  static TemplateSettings upright(Envelope box, TemplateSettings s) {
    return s.withPaper(piece(box.getHeight(), s.correction().sy(), s), false);
  }

  /** Returns the settings for a template whose width lies along the roll. */
  static TemplateSettings turned(Envelope box, TemplateSettings s) {
    Paper piece = piece(box.getWidth(), s.correction().sy(), s);
    return s.withPaper(piece.turned(), false).withCorrection(s.correction().turned());
  }

  private static Paper piece(double lengthMm, double factor, TemplateSettings s) {
    double least = TemplateSettings.LEAST_USABLE_MM + 2 * (s.overlapMm() - Tiling.OVERLAP_MM);
    double usable = Math.max(least, lengthMm + NOTES_MM + 2 * s.overlapMm());
    return s.paper().piece(Math.max(least, usable * factor) + 2 * s.marginMm());
  }
}
