package org.longlow.svg.drawing;

/**
 * Which point of a line of words sits on the given place. The first half of the name is the height
 * (on the base line unless said otherwise; centre and top are measured on capitals), the second
 * half the place along the line.
 */
public enum Anchor {
  START(0, 0),
  MIDDLE(0.5, 0),
  END(1, 0),
  CENTRE_START(0, 0.5),
  CENTRE(0.5, 0.5),
  CENTRE_END(1, 0.5),
  TOP_START(0, 1),
  TOP_MIDDLE(0.5, 1),
  TOP_END(1, 1);

  private final double along;
  private final double up;

  Anchor(double along, double up) {
    this.along = along;
    this.up = up;
  }

  /** Returns 0 at the start of the words, 0.5 in the middle, 1 at the end. */
  public double along() {
    return along;
  }

  /** Returns the height above the base line as a share of the capital height: 0, 0.5 or 1. */
  public double up() {
    return up;
  }
}
