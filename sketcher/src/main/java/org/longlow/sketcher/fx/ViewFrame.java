package org.longlow.sketcher.fx;

import org.locationtech.jts.geom.Envelope;
import org.longlow.rider.geom.PointMm;

/**
 * How the elevation lies on the screen.
 *
 * @param pxPerMm logical pixels for each mm of the machine, &gt; 0
 * @param originX where x = 0 is, px from the left
 * @param originY where z = 0 is, px from the top
 */
record ViewFrame(double pxPerMm, double originX, double originY) {

  /** How far a key moves the card, px. */
  static final double PAN_PX = 40;

  /** Logical pixels of a millimetre of paper, by the definition of the CSS pixel (1/96 in). */
  static final double PX_PER_PAPER_MM = 96 / 25.4;

  /** Furthest out and in, px/mm. */
  static final double SMALLEST = 0.02;

  static final double LARGEST = 40;

  ViewFrame {
    if (!(pxPerMm > 0) || !Double.isFinite(originX) || !Double.isFinite(originY)) {
      throw new IllegalArgumentException(
          "view needs a scale > 0 and a finite place, got " + pxPerMm + " px/mm");
    }
  }

  /** Returns the frame that shows {@code box} within a width and height, with a margin, px. */
  static ViewFrame fitting(Envelope box, double width, double height, double margin) {
    double w = Math.max(50, width - 2 * margin);
    double h = Math.max(50, height - 2 * margin);
    double scale =
        box.isNull()
            ? 0.4
            : clamp(Math.min(w / Math.max(1, box.getWidth()), h / Math.max(1, box.getHeight())));
    double cx = box.isNull() ? 800 : (box.getMinX() + box.getMaxX()) / 2;
    double cz = box.isNull() ? 500 : (box.getMinY() + box.getMaxY()) / 2;
    return new ViewFrame(scale, width / 2 - cx * scale, height / 2 + cz * scale);
  }

  double screenX(double xMm) {
    return originX + xMm * pxPerMm;
  }

  double screenY(double zMm) {
    return originY - zMm * pxPerMm;
  }

  /** Returns a box of the drawing on the screen, px. */
  Spots.Box onScreen(Envelope mm) {
    return new Spots.Box(
        screenX(mm.getMinX()),
        screenY(mm.getMaxY()),
        mm.getWidth() * pxPerMm,
        mm.getHeight() * pxPerMm);
  }

  PointMm point(double px, double py) {
    return new PointMm((px - originX) / pxPerMm, (originY - py) / pxPerMm);
  }

  /** Returns the frame zoomed so that what is under (px, py) stays there. */
  ViewFrame zoomedAt(double px, double py, double factor) {
    double scale = clamp(pxPerMm * factor);
    double f = scale / pxPerMm;
    return new ViewFrame(scale, px + (originX - px) * f, py + (originY - py) * f);
  }

  /** Returns the frame panned as little as brings so much of a box within what is seen, px. */
  ViewFrame keeping(Envelope mm, Spots.Box seen, double leastPx) {
    Spots.Box box = onScreen(mm);
    double x = Math.min(0, seen.right() - leastPx - box.x());
    double y = Math.min(0, seen.bottom() - leastPx - box.y());
    return panned(
        x < 0 ? x : Math.max(0, seen.x() + leastPx - box.right()),
        y < 0 ? y : Math.max(0, seen.y() + leastPx - box.bottom()));
  }

  ViewFrame panned(double dx, double dy) {
    return new ViewFrame(pxPerMm, originX + dx, originY + dy);
  }

  /** Returns N of the scale 1:N at which the machine appears, for strokes and letters. */
  double denominator() {
    return PX_PER_PAPER_MM / pxPerMm;
  }

  private static double clamp(double scale) {
    return Math.max(SMALLEST, Math.min(LARGEST, scale));
  }
}
