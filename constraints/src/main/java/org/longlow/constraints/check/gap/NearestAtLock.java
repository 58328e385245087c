package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.gap.TurnedBodies.State;
import org.longlow.constraints.lock.TurnSweep;
import org.longlow.rider.words.Words;

/** All that keeps its gap on the way to full lock, and which of it comes nearest. */
final class NearestAtLock {

  /** Of stances in which two are as near but for rounding, the first counts, mm. */
  static final double SAME_MM = 1e-6;

  private final List<Clear> clear = new ArrayList<>();

  /**
   * Two that keep their gap in a stance.
   *
   * @param aheadMm how far apart they are straight ahead at least, mm
   * @param nearest where they are nearest on the way, if nearer than a cut, mm
   */
  private record Clear(
      About about,
      State state,
      double aheadMm,
      DoubleFunction<Optional<TurnSweep.Closest>> nearest) {}

  /** Adds two that keep their gap; see {@link Clear}. */
  void add(
      About about,
      State state,
      double aheadMm,
      DoubleFunction<Optional<TurnSweep.Closest>> nearest) {
    clear.add(new Clear(about, state, aheadMm, nearest));
  }

  /** Returns what comes nearest, and where on the way, in words; empty for nothing near. */
  Words words() {
    // the nearest straight ahead first: what is farther off is then soon passed over
    clear.sort(Comparator.comparingDouble(Clear::aheadMm));
    Clear nearest = null;
    TurnSweep.Closest there = null;
    for (Clear pair : clear) {
      double cut = there == null ? GapFindings.HORIZON_MM : there.gapMm();
      Optional<TurnSweep.Closest> nearer = pair.nearest().apply(cut);
      if (nearer.isPresent() && nearer.get().gapMm() < cut - SAME_MM) {
        there = nearer.get();
        nearest = pair;
      }
    }
    if (there == null) {
      return Words.of("");
    }
    boolean ahead = Math.toDegrees(Math.abs(there.turnRad())) < 0.05;
    return Say.format(
        " Of what keeps its gap to both sides %s come nearest, %s apart %s%s.",
        nearest.about().words(),
        Say.mm(there.gapMm()),
        ahead
            ? Words.of("straight ahead")
            : Words.of("turned ", LockWords.degrees(there.turnRad())),
        nearest.state().condition().map(c -> ", " + c.says()).orElse(""));
  }
}
