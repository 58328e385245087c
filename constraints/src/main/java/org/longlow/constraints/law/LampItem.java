package org.longlow.constraints.law;

import java.util.Locale;

/**
 * One lamp or reflector: its centre and its lit area seen along the machine.
 *
 * @param name the user's name for it, not blank
 * @param kind what it is for
 * @param colour of the light
 * @param xMm centre, forward of the rear contact, mm
 * @param yMm centre, left of the centreline, mm
 * @param zMm centre above the road, mm
 * @param halfWidthMm half the width of the lit area, mm, &gt; 0
 * @param halfHeightMm half its height, mm, &gt; 0
 * @param round true if the lit area is a circle (both halves equal), false if a rectangle
 * @param steered true if it turns with the bars
 */
public record LampItem(
    String name,
    LampKind kind,
    LampColour colour,
    double xMm,
    double yMm,
    double zMm,
    double halfWidthMm,
    double halfHeightMm,
    boolean round,
    boolean steered) {

  public LampItem {
    if (name == null || name.isBlank() || kind == null || colour == null) {
      throw new IllegalArgumentException(
          "lamp \"" + name + "\" needs a name, a kind and a colour, got " + kind + ", " + colour);
    }
    require(name, "centre x mm", xMm, Double.NEGATIVE_INFINITY);
    require(name, "centre y mm", yMm, Double.NEGATIVE_INFINITY);
    require(name, "centre z mm", zMm, Double.NEGATIVE_INFINITY);
    require(name, "half width mm", halfWidthMm, 0);
    require(name, "half height mm", halfHeightMm, 0);
    if (round && halfWidthMm != halfHeightMm) {
      throw new IllegalArgumentException(
          "lamp \"" + name + "\" is round but its half width and half height differ");
    }
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

  /** Returns a lamp with a round lit area, on the body. */
  public static LampItem round(
      String name, LampKind kind, LampColour colour, double x, double y, double z, double radius) {
    return new LampItem(name, kind, colour, x, y, z, radius, radius, true, false);
  }

  /** Returns a lamp with a rectangular lit area, on the body. */
  public static LampItem box(
      String name,
      LampKind kind,
      LampColour colour,
      double x,
      double y,
      double z,
      double halfWidth,
      double halfHeight) {
    return new LampItem(name, kind, colour, x, y, z, halfWidth, halfHeight, false, false);
  }

  /** Returns the same lamp on the other side, under another name. */
  public LampItem mirrored(String otherName) {
    return new LampItem(
        otherName, kind, colour, xMm, -yMm, zMm, halfWidthMm, halfHeightMm, round, steered);
  }

  /** Returns the lower edge of the lit area above the road, mm. */
  public double lowestMm() {
    return zMm - halfHeightMm;
  }

  /** Returns the upper edge of the lit area above the road, mm. */
  public double highestMm() {
    return zMm + halfHeightMm;
  }

  /**
   * Returns the shortest distance between two lit areas in the front view (square to the machine's
   * axis), mm; 0 or less if they overlap.
   */
  public double frontViewGapMm(LampItem other) {
    double dy = Math.abs(yMm - other.yMm);
    double dz = Math.abs(zMm - other.zMm);
    // A circle is a point with a margin, a rectangle a core without one.
    double coreY = (round ? 0 : halfWidthMm) + (other.round ? 0 : other.halfWidthMm);
    double coreZ = (round ? 0 : halfHeightMm) + (other.round ? 0 : other.halfHeightMm);
    double margin = (round ? halfWidthMm : 0) + (other.round ? other.halfWidthMm : 0);
    return Math.hypot(Math.max(0, dy - coreY), Math.max(0, dz - coreZ)) - margin;
  }
}
