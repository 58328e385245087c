package org.longlow.constraints.gap;

import java.util.List;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;

/**
 * What it takes to bring one body away from another by a gap, in every position the two can be in:
 * a shift in the elevation, a shift across the machine, or both sides of it farther out or in.
 *
 * <p>Each figure is the smallest that will do, the gap of a body being that of {@link Solid#to}. In
 * the elevation, corners are kept off along a polygon drawn round their circle, which asks up to
 * {@value Wider#ROUND_SHARE} of the gap too much. Worked out when asked for.
 */
public final class Clearing {

  /**
   * A position of two bodies to each other.
   *
   * @param still the body that stays
   * @param moved the body that is to be shifted, in the axes of the shift
   */
  public record Position(Solid still, Solid moved) {}

  private final Shifts shifts;
  private List<WayClear.Pair> pairs;
  private WayClear elevation;

  /**
   * @param positions every position in which they must keep the gap
   * @param gapMm the gap, mm, &gt;= 0; at 0 they may touch
   */
  public Clearing(List<Position> positions, double gapMm) {
    shifts =
        new Shifts(
            positions.stream()
                .map(p -> new Shifts.Two(p.still().coarse(), p.moved().coarse()))
                .toList(),
            gapMm);
  }

  /**
   * Returns the smallest shift in the elevation, a ten thousandth of a millimetre beyond where they
   * touch.
   */
  public PointMm elevation() {
    return solved().shift();
  }

  /** Returns the smallest shift in the elevation in tenths of mm, if one near the smallest does. */
  public Optional<PointMm> elevationInTenths() {
    PointMm exact = elevation();
    return Tenths.near(exact, shift -> WayClear.clears(pairs, shift));
  }

  /** Returns how far they touch in the elevation from where they are, mm. */
  public double elevationMm() {
    return solved().mm();
  }

  private WayClear solved() {
    if (elevation == null) {
      pairs = shifts.pairs();
      elevation = WayClear.of(pairs);
    }
    return elevation;
  }

  /** Returns the smallest shift across the machine, mm, left positive. */
  public double acrossMm() {
    return shifts.acrossMm();
  }

  /**
   * Returns how much farther out (positive) or in (negative) both sides of the shifted body must
   * be, mm; infinite where nothing would be left of it. What lies across the middle plane is taken
   * to grow or shrink with them.
   */
  public double apartMm() {
    return shifts.apartMm();
  }
}
