package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.rider.geom.PointMm;

/**
 * What clears the whole way of a section's body past another: shifts and cuts, each applied and
 * swept again before it is said.
 *
 * <p>A remedy for the worst position is tried on the whole way; where it still fouls, the position
 * at which it does so worst is added, and the remedy for all of them is tried, until it holds. A
 * remedy is accepted only if the sweep with it leaves {@link Sweep#BOUND_MM} more than what is
 * asked, so that with the bound of the sweep the gap is kept everywhere.
 */
public final class SweptClearing {

  /** So many positions have always been enough; a remedy that needs more is not said. */
  private static final int MOST_POSITIONS = 24;

  /** Beyond what the sweep is asked for, so that what is solved for is found to hold, mm. */
  private static final double EASE_MM = 0.01;

  private final Sweep sweep;
  private final Solid part;
  private final Solid other;
  private final double gapMm;
  private final double worst;

  /**
   * @param part of the section, shut
   * @param other what it fouls
   * @param gapMm what is asked, mm
   * @param worst the opening at which it is worst
   */
  public SweptClearing(Sweep sweep, Solid part, Solid other, double gapMm, double worst) {
    this.sweep = sweep;
    this.part = part;
    this.other = other;
    this.gapMm = gapMm + Sweep.BOUND_MM;
    this.worst = worst;
  }

  /** Returns the shift of the other body in the elevation, in tenths of mm. */
  public Optional<PointMm> shiftOfOther() {
    return remedy(
        openings -> shift(openings, true), shift -> opens(part, other.moved(Solid.by(shift))));
  }

  /** Returns the shift of the section's body as shut, in tenths of mm. */
  public Optional<PointMm> shiftOfPart() {
    return remedy(
        openings -> shift(openings, false), shift -> opens(part.moved(Solid.by(shift)), other));
  }

  /** Returns the shift of the other body across the machine, left positive, in tenths of mm. */
  public Optional<Double> acrossOfOther() {
    return remedy(
        openings -> Optional.of(Tenths.away(clearing(openings, true).acrossMm())),
        mm -> opens(part, other.across(mm)));
  }

  /** Returns how much farther out both sides of the other body must be, in tenths of mm. */
  public Optional<Double> apartOfOther() {
    return remedy(openings -> apart(clearing(openings, true)), mm -> opens(part, other.apart(mm)));
  }

  /** Returns how much farther out both sides of the section's body must be, in tenths of mm. */
  public Optional<Double> apartOfPart() {
    return remedy(openings -> apart(clearing(openings, false)), mm -> opens(part.apart(mm), other));
  }

  private static Optional<Double> apart(Clearing clearing) {
    return Optional.of(Tenths.away(clearing.apartMm())).filter(Double::isFinite);
  }

  /** Returns the straight cut off the section's body. */
  public Optional<StraightCut> cutOfPart() {
    return remedy(
        openings ->
            Optional.of(
                StraightCut.of(
                    part,
                    openings.stream().map(o -> other.moved(sweep.motion(o).inverse())).toList(),
                    gapMm + EASE_MM)),
        cut -> opens(cut.rest(), other));
  }

  /** Returns the straight cut off the other body. */
  public Optional<StraightCut> cutOfOther() {
    return remedy(
        openings ->
            Optional.of(
                StraightCut.of(
                    other,
                    openings.stream().map(o -> sweep.at(part, o)).toList(),
                    gapMm + EASE_MM)),
        cut -> opens(part, cut.rest()));
  }

  /** An opening at which a remedy fails worst; NaN if it holds. */
  private double opens(Solid body, Solid past) {
    if (!body.hasFaces() || !past.hasFaces()) {
      return Double.NaN;
    }
    double first = sweep.firstBelow(body, past, gapMm);
    return Double.isNaN(first) ? first : sweep.worst(body, past, first).opening();
  }

  private <T> Optional<T> remedy(
      Function<List<Double>, Optional<T>> of, Function<T, Double> failsAt) {
    List<Double> openings = new ArrayList<>(List.of(worst));
    while (openings.size() < MOST_POSITIONS) {
      Optional<T> remedy = of.apply(openings);
      if (remedy.isEmpty()) {
        return remedy;
      }
      double fails = failsAt.apply(remedy.get());
      if (Double.isNaN(fails)) {
        return remedy;
      }
      if (openings.contains(fails)) {
        return Optional.empty();
      }
      openings.add(fails);
    }
    return Optional.empty();
  }

  private Clearing clearing(List<Double> openings, boolean shiftsOther) {
    List<Clearing.Position> positions = new ArrayList<>();
    for (double opening : openings) {
      positions.add(
          shiftsOther
              ? new Clearing.Position(sweep.at(part, opening), other)
              : new Clearing.Position(other.moved(sweep.motion(opening).inverse()), part));
    }
    return new Clearing(positions, gapMm + EASE_MM);
  }

  private Optional<PointMm> shift(List<Double> openings, boolean shiftsOther) {
    return clearing(openings, shiftsOther).elevationInTenths();
  }
}
