package org.longlow.sketcher.edit;

import java.util.Optional;
import org.longlow.rider.geom.PointMm;

/**
 * Where a pin of something new goes.
 *
 * @param at in the axes of the drawn machine
 * @param shared the pin that is there already and serves, if one does
 */
public record PinSpot(PointMm at, Optional<String> shared) {

  /** Returns a place for a new pin. */
  public static PinSpot at(PointMm at) {
    return new PinSpot(at, Optional.empty());
  }
}
