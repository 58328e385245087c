package org.longlow.constraints.gap;

import org.longlow.rider.geom.PointMm;

/** The gap between two bodies. Immutable. */
public final class Gap {

  private final String first;
  private final String second;
  private final double gapMm;
  private final PointMm between;
  private final Edges a;
  private final Edges b;

  /** Made with the place between the bodies, or else with the outlines that overlap. */
  Gap(String first, String second, double gapMm, PointMm between, Edges a, Edges b) {
    this.first = first;
    this.second = second;
    this.gapMm = gapMm;
    this.between = between;
    this.a = a;
    this.b = b;
  }

  /** Returns the same place with another distance. */
  Gap wide(double mm) {
    return new Gap(first, second, mm, between, a, b);
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
   * Worked out when asked for.
   */
  public PointMm where() {
    return between != null ? between : new Overlap(a, b).middle();
  }
}
