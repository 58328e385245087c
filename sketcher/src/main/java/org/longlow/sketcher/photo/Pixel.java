package org.longlow.sketcher.photo;

/**
 * A place on a photo that stands upright.
 *
 * @param right of its left edge, pixels
 * @param down from its upper edge, pixels
 */
public record Pixel(double right, double down) {

  public double distance(Pixel other) {
    return Math.hypot(right - other.right, down - other.down);
  }
}
