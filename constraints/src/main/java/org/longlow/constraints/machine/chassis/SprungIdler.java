package org.longlow.constraints.machine.chassis;

import org.longlow.rider.geom.Bracket;
import org.longlow.rider.geom.PointMm;

/**
 * An idler that a spring presses straight on a run, which it keeps taut.
 *
 * @param run with the idler where its way begins
 * @param wheel which of its wheels it is
 * @param pressing its way, one mm long, towards the run
 */
public record SprungIdler(BeltRun run, int wheel, PointMm pressing) {

  /** Its way is looked along in steps, mm. */
  private static final double STEP_MM = 2;

  /** Where it rests is found so exactly, mm. */
  private static final double WITHIN_MM = 1e-6;

  /**
   * Where it rests.
   *
   * @param atMm along its way
   * @param looseMm length that it cannot take up before it meets a wheel or another stretch;
   *     negative by what the run is short of even off the idler
   */
  public record Rest(double atMm, double looseMm) {}

  /**
   * Returns where it keeps a run of this length taut.
   *
   * @param fromMm along its way, where to begin to look
   */
  public Rest rest(double lengthMm, double fromMm) {
    double at = fromMm;
    while (missingMm(at, lengthMm) > 0) {
      if (!touches(at)) {
        return new Rest(at, -missingMm(at, lengthMm));
      }
      at -= STEP_MM;
    }
    while (missingMm(at, lengthMm) < 0) {
      if (!hasRoom(at + STEP_MM)) {
        return new Rest(at, -missingMm(at, lengthMm));
      }
      at += STEP_MM;
      if (missingMm(at, lengthMm) >= 0) {
        return new Rest(
            Bracket.root(mm -> missingMm(mm, lengthMm), at - STEP_MM, at, WITHIN_MM), 0);
      }
    }
    return new Rest(at, 0);
  }

  /** Returns the run with the idler so far along its way. */
  public BeltRun at(double mm) {
    return run.with(wheel, run.wheels().get(wheel).at().plus(pressing.times(mm)));
  }

  private boolean touches(double mm) {
    return BeltRun.touches(at(mm).wrapsRad().get(wheel));
  }

  /** How much longer than that a run would have to be; where it is off, it lies as without it. */
  private double missingMm(double mm, double lengthMm) {
    return (touches(mm) ? at(mm) : run.without(wheel)).lengthMm() - lengthMm;
  }

  /** Whether the idler is clear of the other wheels and of the stretches that it does not press. */
  private boolean hasRoom(double mm) {
    BeltRun there = at(mm);
    BeltRun.Wheel idler = there.wheels().get(wheel);
    int count = there.wheels().size();
    for (int i = 0; i < count; i++) {
      BeltRun.Wheel other = there.wheels().get(i);
      if (i != wheel && idler.at().distance(other.at()) <= idler.radiusMm() + other.radiusMm()) {
        return false;
      }
    }
    for (int i = 0; i < count; i++) {
      if (i != wheel
          && (i + 1) % count != wheel
          && there.straights().get(i).distance(idler.at()) <= idler.radiusMm()) {
        return false;
      }
    }
    return true;
  }
}
