package org.longlow.svg.page;

import java.util.Locale;
import org.locationtech.jts.geom.Envelope;

/** The room on a drawing sheet: frame, margins, and what is left for the picture. */
public final class SheetSpace {

  /** A picture lower than this is none, mm. */
  private static final double LEAST_PICTURE_MM = 50;

  /** Filing margin at the left, mm (ISO 5457:1999, checked in drawing articles). */
  public static final double LEFT_MM = 20;

  /** Margin on the other sides, mm (ISO 5457:1999, checked in drawing articles). */
  public static final double MARGIN_MM = 10;

  /** Empty room kept between picture and frame, mm. */
  static final double AIR_MM = 6;

  /** Width of the frame line and of the centring marks, mm (from memory). */
  public static final double FRAME_LINE_MM = 0.7;

  /**
   * Width, mm: the most that ISO 7200 allows, and just the drawing space of an upright A4 sheet.
   */
  static final double TITLE_WIDTH_MM = 180;

  static final double TITLE_HEIGHT_MM = 40;

  private SheetSpace() {}

  /** Returns the space inside the frame, page mm. */
  public static Envelope drawingSpace(Paper paper) {
    return new Envelope(
        LEFT_MM, paper.widthMm() - MARGIN_MM, MARGIN_MM, paper.heightMm() - MARGIN_MM);
  }

  /** Returns how long a sheet must be for a picture that is so wide, mm. */
  public static double longFor(double pictureMm) {
    return LEFT_MM + MARGIN_MM + Math.max(TITLE_WIDTH_MM, pictureMm + 2 * AIR_MM);
  }

  /** Returns whether paper is large enough for the title block and a picture over it. */
  public static boolean serves(Paper paper) {
    Envelope s = drawingSpace(paper);
    return s.getWidth() >= TITLE_WIDTH_MM
        && s.getHeight() >= TITLE_HEIGHT_MM + AIR_MM + LEAST_PICTURE_MM;
  }

  /**
   * Returns the space for the picture: inside the frame, above the title block, with some air, page
   * mm.
   */
  public static Envelope pictureSpace(Paper paper) {
    Envelope s = drawingSpace(paper);
    double bottom = s.getMinY() + TITLE_HEIGHT_MM + AIR_MM;
    if (!serves(paper)) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "paper %s of %s x %s mm is too small for a drawing sheet; take A4 or larger",
              paper.name(),
              paper.widthMm(),
              paper.heightMm()));
    }
    return new Envelope(s.getMinX() + AIR_MM, s.getMaxX() - AIR_MM, bottom, s.getMaxY() - AIR_MM);
  }

  /** Whether there is room for a bar to measure by beside the title block. */
  static boolean hasCheckBar(Paper paper) {
    return drawingSpace(paper).getWidth() - TITLE_WIDTH_MM >= ScaleBar.BLOCK_LONG_MM + 4;
  }
}
