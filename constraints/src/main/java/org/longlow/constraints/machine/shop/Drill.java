package org.longlow.constraints.machine.shop;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.longlow.constraints.machine.Values;

/**
 * The drills that a home shop can buy: by 0.1 mm to 10 mm and by 0.5 mm to 13 mm, as they stand in
 * ISO 235, and by 1/64 in to 1/2 in (both from memory, their texts not seen). What is larger is
 * sawn or bored.
 */
public final class Drill {

  /** A chuck of a home shop takes no more, mm; common practice. */
  public static final double MOST_MM = 13;

  private static final double FINE_MM = 0.1;
  private static final double FINE_TO_MM = 10;
  private static final double COARSE_MM = 0.5;
  private static final double INCH_MM = 25.4;
  private static final int PARTS = 64;
  private static final int MOST_PARTS = 32;

  private Drill() {}

  /**
   * Returns the metric drill that is nearest to a hole, mm; empty for one that is sawn or bored.
   *
   * @param diameterMm &gt; 0
   */
  public static OptionalDouble metricMm(double diameterMm) {
    Values.positive("hole mm", diameterMm);
    if (diameterMm > MOST_MM + COARSE_MM / 2) {
      return OptionalDouble.empty();
    }
    double step = diameterMm > FINE_TO_MM + FINE_MM / 2 ? COARSE_MM : FINE_MM;
    double steps = Math.max(1, Math.rint(diameterMm / step));
    // a tenth is no binary fraction: divide, so that 6.6 is 6.6
    return OptionalDouble.of(steps / Math.rint(1 / step));
  }

  /** Returns how many 64ths of an inch the nearest drill has; empty for what is sawn or bored. */
  public static OptionalInt sixtyFourths(double diameterMm) {
    Values.positive("hole mm", diameterMm);
    double parts = diameterMm * PARTS / INCH_MM;
    return parts > MOST_PARTS + 0.5
        ? OptionalInt.empty()
        : OptionalInt.of((int) Math.max(1, Math.rint(parts)));
  }
}
