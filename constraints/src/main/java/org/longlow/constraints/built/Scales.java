package org.longlow.constraints.built;

import java.util.Arrays;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * What scales under the wheels show, nobody aboard.
 *
 * @param frontKg under the front wheel
 * @param rearKg under the rear wheel
 */
public record Scales(double frontKg, double rearKg) {

  /** Returns what they should show of a machine as it was reckoned; empty if it does not stand. */
  public static Optional<Scales> reckoned(Study study) {
    return unladen(study)
        .map(s -> s.load().axles())
        .map(a -> new Scales(a.frontN() / gravity(), a.rearN() / gravity()));
  }

  /** Returns what was measured, if both were. */
  public static Optional<Scales> measured(Study study, AsBuilt built) {
    return built.frontLoad().isPresent() && built.rearLoad().isPresent()
        ? Optional.of(
            new Scales(
                study.placed().places().value(built.frontLoad().get()),
                study.placed().places().value(built.rearLoad().get())))
        : Optional.empty();
  }

  double totalKg() {
    return frontKg + rearKg;
  }

  /** Returns how far ahead of the rear contact the centre of mass is, mm. */
  double centreMm(double wheelbaseMm) {
    return wheelbaseMm * frontKg / totalKg();
  }

  /**
   * Returns where a mass would be that makes other scales of these, mm ahead of the rear contact;
   * far off where the two weigh alike.
   */
  double missingAtMm(Scales reckoned, double wheelbaseMm) {
    return wheelbaseMm * (frontKg - reckoned.frontKg) / (totalKg() - reckoned.totalKg());
  }

  /** Returns both the other way round. */
  Scales swapped() {
    return new Scales(rearKg, frontKg);
  }

  /** Returns whether each differs by at most such a share of the other. */
  boolean isNear(Scales reckoned, double share) {
    return Math.abs(frontKg - reckoned.frontKg) <= share * reckoned.frontKg
        && Math.abs(rearKg - reckoned.rearKg) <= share * reckoned.rearKg;
  }

  /** Returns whether the machine has anything ahead of and behind a place along it. */
  static boolean isInside(Study study, double aheadMm) {
    Standing standing = unladen(study).orElseThrow();
    DoubleSummaryStatistics x =
        standing.shapes().values().stream()
            .flatMap(s -> Arrays.stream(s.outline().getCoordinates()))
            .mapToDouble(c -> standing.ground().toRoad(new PointMm(c.x, c.y)).x())
            .summaryStatistics();
    return aheadMm >= x.getMin() && aheadMm <= x.getMax();
  }

  static Optional<Standing> unladen(Study study) {
    return study.standings().stream()
        .filter(s -> s.kind() == Stance.Kind.UNLADEN && s.load() != null)
        .findFirst();
  }

  static double wheelbaseMm(Study study) {
    return unladen(study).map(s -> s.load().axles()).map(AxleLoads::wheelbaseMm).orElse(Double.NaN);
  }

  /** Returns the parts whose centres are nearest to a place along the machine, nearest first. */
  static List<String> nearest(Study study, double aheadMm, int most) {
    Standing standing = unladen(study).orElseThrow();
    return standing.shapes().values().stream()
        .filter(s -> s.massKg() > 0)
        .sorted(
            Comparator.comparingDouble(
                s -> Math.abs(standing.ground().toRoad(s.centre()).x() - aheadMm)))
        .limit(most)
        .map(s -> s.part().name())
        .toList();
  }

  private static double gravity() {
    return Values.STANDARD_GRAVITY_MS2;
  }
}
