package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.longlow.rider.geom.PointMm;

/** Figures that can be said in tenths of a millimetre and still do what they must. */
public final class Tenths {

  /** How many tenths aside of the exact shift others are tried. */
  private static final int ASIDE = 6;

  private Tenths() {}

  /** Returns the figure a tenth or less farther from zero, whole tenths. */
  public static double away(double mm) {
    double tenths = Math.ceil(Math.abs(mm) * 10 - 1e-6) / 10;
    return mm < 0 ? -tenths : tenths;
  }

  /** Returns the smallest shift in whole tenths near an exact one that will do, if there is one. */
  static Optional<PointMm> near(PointMm exact, Predicate<PointMm> does) {
    long x = Math.round(exact.x() * 10);
    long z = Math.round(exact.z() * 10);
    List<PointMm> all = new ArrayList<>();
    for (long i = x - ASIDE; i <= x + ASIDE; i++) {
      for (long j = z - ASIDE; j <= z + ASIDE; j++) {
        all.add(new PointMm(i / 10.0, j / 10.0));
      }
    }
    all.sort(
        Comparator.comparingDouble(PointMm::length)
            .thenComparingDouble(PointMm::x)
            .thenComparingDouble(PointMm::z));
    double least = exact.length() - 2 * WayClear.PAST_MM;
    return all.stream().filter(p -> p.length() >= least && does.test(p)).findFirst();
  }
}
