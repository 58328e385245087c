package org.longlow.svg.drawing;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** Hatching: parallel lines inside an area. */
public final class Hatch {

  /** More lines than this would be grey, not hatching. */
  public static final int MOST_LINES = 20_000;

  private Hatch() {}

  /**
   * Returns the parts inside the area of parallel lines. The lines of two hatchings with the same
   * spacing and angle fall together, because one line of the family always passes through the
   * origin.
   *
   * @param area a valid polygon or collection of polygons, mm
   * @param spacingMm distance between lines, mm, greater than 0
   * @param angleRad direction of the lines, rad
   * @throws IllegalArgumentException if more than {@value #MOST_LINES} lines would be needed
   */
  public static Geometry lines(Geometry area, double spacingMm, double angleRad) {
    if (!(spacingMm > 0)) {
      throw new IllegalArgumentException(
          "hatch spacing is " + spacingMm + " mm; allowed: more than 0");
    }
    Envelope box = area.getEnvelopeInternal();
    if (box.isNull()) {
      return area.getFactory().createMultiLineString();
    }
    double c = Math.cos(angleRad);
    double s = Math.sin(angleRad);
    double reach = Math.hypot(box.getWidth(), box.getHeight());
    double mx = box.getMinX() + box.getWidth() / 2;
    double my = box.getMinY() + box.getHeight() / 2;
    double along = mx * c + my * s;
    double across = my * c - mx * s;
    double first = Math.ceil((across - reach / 2) / spacingMm);
    double last = Math.floor((across + reach / 2) / spacingMm);
    if (last - first > MOST_LINES) {
      throw new IllegalArgumentException(
          "hatch spacing of " + spacingMm + " mm needs more than " + MOST_LINES + " lines");
    }
    List<LineString> lines = new ArrayList<>();
    for (double k = first; k <= last; k++) {
      double v = k * spacingMm;
      double a = along - reach;
      double b = along + reach;
      lines.add(Planar.line(a * c - v * s, a * s + v * c, b * c - v * s, b * s + v * c));
    }
    return area.getFactory()
        .createMultiLineString(lines.toArray(new LineString[0]))
        .intersection(area);
  }
}
