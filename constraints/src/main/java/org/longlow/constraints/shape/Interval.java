package org.longlow.constraints.shape;

/**
 * An interval across the machine, y to the left.
 *
 * @param from right end, mm
 * @param to left end, mm, not less than {@code from}
 */
public record Interval(double from, double to) {
  public Interval {
    if (!(from <= to)) {
      throw new IllegalArgumentException("interval needs from <= to, got " + from + " to " + to);
    }
  }

  /** Returns the gap to {@code other} in mm; negative by how much they overlap. */
  public double gap(Interval other) {
    return Math.max(from - other.to, other.from - to);
  }

  public Interval mirrored() {
    return new Interval(-to, -from);
  }

  /** Returns whether both ends of two lie no farther than that from each other. */
  public boolean isNear(Interval other, double byMm) {
    return Math.abs(from - other.from) <= byMm && Math.abs(to - other.to) <= byMm;
  }

  public double middle() {
    return (from + to) / 2;
  }

  public double length() {
    return to - from;
  }
}
