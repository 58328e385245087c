package org.longlow.constraints.check.finding;

import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.rider.geom.PointMm;

/**
 * Where a finding is worst.
 *
 * @param where the place on the elevation, in the axes of the drawn machine, if it has one
 * @param across where that place is across the machine, left positive, mm, if that is known
 * @param opening how far the section of its stance is open where it is worst, 0 shut to 1 open
 * @param from how far it is open where what is asked is first not kept
 */
public record Site(
    Optional<PointMm> where, OptionalDouble across, OptionalDouble opening, OptionalDouble from) {

  static final Site NOWHERE =
      new Site(
          Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
}
