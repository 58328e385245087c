package org.longlow.rider.seat;

import org.longlow.rider.geom.OutOfRange;

/**
 * One layer of a cushion.
 *
 * @param thicknessMm free thickness, mm, in (0, 1000]
 * @param foam what it is made of
 */
public record FoamLayer(double thicknessMm, Foam foam) {

  /** Thickest layer, mm; judgement. */
  public static final double MOST_MM = 1000;

  /** Thickest memory layer that the bottoming rule allows, mm; common practice, no source. */
  public static final double MEMORY_MAX_MM = 25;

  public FoamLayer {
    if (!(thicknessMm > 0 && thicknessMm <= MOST_MM)) {
      throw new OutOfRange("thicknessMm must be above 0 to 1000 mm, got " + thicknessMm);
    }
    if (foam == null) {
      throw new IllegalArgumentException("a layer needs a foam, got none");
    }
  }
}
