package org.longlow.constraints.solve;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;

/**
 * The answer of a solve.
 *
 * @param status how it ended
 * @param x values of all variables, always finite; a copy that belongs to the caller
 * @param iterations steps taken in all groups together
 * @param work what it cost, in the units of {@link SolverSettings#workAllowed}
 * @param maxResidualMm most by which a tie is off, in the millimetres that it asks for: where two
 *     ties ask for lengths 1 mm apart, 0.5 for each
 * @param failedLimits limits that do not hold, the worst first
 * @param activeLimits limits that hold with nothing to spare and hold something back, in the order
 *     of the problem
 * @param failedTies ties that do not hold, in the order of the problem
 * @param shaken names of variables that were moved a little to get away from a degenerate start
 *     (zero lengths, pins on top of each other, pins in line)
 * @param turned two-link chains (named by their middle pin) that had to be turned over to satisfy
 *     the ties
 * @param diagnosis what the ties leave open; empty when only positions were asked for
 */
public record SolveReport(
    SolveStatus status,
    double[] x,
    int iterations,
    long work,
    double maxResidualMm,
    List<LimitFailure> failedLimits,
    List<String> activeLimits,
    List<String> failedTies,
    List<String> shaken,
    List<String> turned,
    Optional<Diagnosis> diagnosis) {
  public SolveReport {
    failedLimits = List.copyOf(failedLimits);
    activeLimits = List.copyOf(activeLimits);
    failedTies = List.copyOf(failedTies);
    shaken = List.copyOf(shaken);
    turned = List.copyOf(turned);
  }

  SolveReport withDiagnosis(Diagnosis found) {
    return new SolveReport(
        status,
        x,
        iterations,
        work,
        maxResidualMm,
        failedLimits,
        activeLimits,
        failedTies,
        shaken,
        turned,
        Optional.of(found));
  }
}
