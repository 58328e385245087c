package org.longlow.constraints.law;

import java.util.Locale;
import org.longlow.constraints.layout.LampPart;

/**
 * One lamp, reflector or number plate: its centre and its face seen along the machine.
 *
 * @param part the user's name of its part, not blank
 * @param other true for the second one of a pair
 * @param kind what it is for
 * @param colour of the light
 * @param ahead true in the front half of the wheelbase, false in the rear half
 * @param xMm centre, forward of the rear contact, mm
 * @param yMm centre, left of the centreline, mm
 * @param zMm centre above the road, mm
 * @param halfWidthMm half the width of the lit area, mm, &gt; 0
 * @param halfHeightMm half its height, mm, &gt; 0; as wide as high counts as round, else as a
 *     rectangle
 * @param steered true if it turns with the bars
 */
public record LampItem(
    String part,
    boolean other,
    LampPart.Kind kind,
    LampPart.Colour colour,
    boolean ahead,
    double xMm,
    double yMm,
    double zMm,
    double halfWidthMm,
    double halfHeightMm,
    boolean steered) {

  public LampItem {
    if (part == null || part.isBlank() || kind == null || colour == null) {
      throw new IllegalArgumentException(
          "lamp \"" + part + "\" needs a name, a kind and a colour, got " + kind + ", " + colour);
    }
    require(part, "centre x mm", xMm, Double.NEGATIVE_INFINITY);
    require(part, "centre y mm", yMm, Double.NEGATIVE_INFINITY);
    require(part, "centre z mm", zMm, Double.NEGATIVE_INFINITY);
    require(part, "half width mm", halfWidthMm, 0);
    require(part, "half height mm", halfHeightMm, 0);
  }

  private static void require(String name, String what, double value, double above) {
    if (!Double.isFinite(value) || value <= above) {
      throw new IllegalArgumentException(
          String.format(
              Locale.ROOT,
              "lamp \"%s\": %s is %s; allowed is a finite number%s",
              name,
              what,
              value,
              above == 0 ? " above 0" : ""));
    }
  }

  /** Returns the second one of a pair, on the other side. */
  public LampItem mirrored() {
    return new LampItem(
        part, true, kind, colour, ahead, xMm, -yMm, zMm, halfWidthMm, halfHeightMm, steered);
  }

  /** Returns the lower edge of the lit area above the road, mm. */
  public double lowestMm() {
    return zMm - halfHeightMm;
  }

  /** Returns the upper edge of the lit area above the road, mm. */
  public double highestMm() {
    return zMm + halfHeightMm;
  }

  /** Returns whether the lit area counts as a circle. */
  public boolean round() {
    return halfWidthMm == halfHeightMm;
  }

  /** Returns the area of the rectangle round the lit area, mm². */
  public double boxAreaMm2() {
    return 4 * halfWidthMm * halfHeightMm;
  }

  /** Returns the lit area, mm². */
  public double areaMm2() {
    return round() ? Math.PI * halfWidthMm * halfWidthMm : boxAreaMm2();
  }

  /**
   * Returns the shortest distance between two lit areas in the front view (square to the machine's
   * axis), mm; 0 or less if they overlap.
   */
  public double frontViewGapMm(LampItem another) {
    double dy = Math.abs(yMm - another.yMm);
    double dz = Math.abs(zMm - another.zMm);
    // A circle is a point with a margin, a rectangle a core without one.
    double coreY = (round() ? 0 : halfWidthMm) + (another.round() ? 0 : another.halfWidthMm);
    double coreZ = (round() ? 0 : halfHeightMm) + (another.round() ? 0 : another.halfHeightMm);
    double margin = (round() ? halfWidthMm : 0) + (another.round() ? another.halfWidthMm : 0);
    return Math.hypot(Math.max(0, dy - coreY), Math.max(0, dz - coreZ)) - margin;
  }
}
