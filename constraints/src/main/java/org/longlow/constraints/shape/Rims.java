package org.longlow.constraints.shape;

import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.chassis.TyreSize;

/** Rims of wheels: where a tyre sits, and what is free inside. */
public final class Rims {

  /**
   * From a rim's bead seat to its inside, mm: depth of the well and its wall. Common practice, from
   * memory.
   */
  public static final double DEPTH_MM = 25;

  private Rims() {}

  /** Returns the radius that the tyre sits on; without a size, of one as high as it is wide. */
  public static double beadMm(WheelPart wheel, Tyre tyre) {
    TyreSize size = wheel.tyre().isEmpty() ? null : Tyres.read(wheel.tyre()).size();
    double bead = size != null ? size.rimDiameterMm() / 2 : tyre.freeRadiusMm() - tyre.widthMm();
    return Math.min(bead, tyre.freeRadiusMm());
  }

  /** Returns the radius of what is free inside: that which the wheel says, else a usual one. */
  public static double insideMm(WheelPart wheel, Tyre tyre, Places places) {
    return wheel
        .rimInside()
        .map(places::value)
        .orElseGet(() -> Math.max(0, beadMm(wheel, tyre) - DEPTH_MM));
  }
}
