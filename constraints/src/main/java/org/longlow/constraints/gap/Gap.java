package org.longlow.constraints.gap;

import java.util.function.Supplier;
import org.longlow.rider.geom.PointMm;

/** The gap between two bodies. Immutable. */
public final class Gap {

  private final String first;
  private final String second;
  private final double gapMm;
  private final Supplier<PointMm> where;
  private volatile PointMm known;

  /**
   * @param where works out the place, when that is asked for
   */
  Gap(String first, String second, double gapMm, Supplier<PointMm> where) {
    this.first = first;
    this.second = second;
    this.gapMm = gapMm;
    this.where = where;
  }

  /** Returns the same place with another distance. */
  Gap wide(double mm) {
    return new Gap(first, second, mm, this::where);
  }

  /** Returns the name of one body. */
  public String first() {
    return first;
  }

  /** Returns the name of the other body. */
  public String second() {
    return second;
  }

  /** Returns the smallest distance, mm; negative where they overlap, by about how deep. */
  public double gapMm() {
    return gapMm;
  }

  /**
   * Returns the middle of the place where they are closest, or of the overlap of their outlines.
   * Worked out when first asked for.
   */
  public PointMm where() {
    if (known == null) {
      known = where.get();
    }
    return known;
  }
}
