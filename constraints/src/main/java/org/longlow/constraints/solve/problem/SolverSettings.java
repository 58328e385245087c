package org.longlow.constraints.solve.problem;

/**
 * Tolerances and bounds of a solve.
 *
 * @param tieToleranceMm a tie or limit holds when it is off by no more, mm
 * @param nearnessMm the position counts as nearest when the next step would be shorter, mm (scaled
 *     variables)
 * @param maxIterations steps allowed per connected group and phase
 * @param rankTolerance a row of the scaled Jacobian counts as dependent when what is new in it is a
 *     smaller share of its length
 * @param nearSingularGain a tie is flagged as near a dead point when 1 mm in it moves some variable
 *     by more than this many (scaled) mm
 * @param restarts how often a group that seems contradictory is shaken and tried again
 * @param keepTurns whether steps that turn a two-link chain over are refused while another way can
 *     be found
 * @param workAllowed what a solve may cost, and what its diagnosis may: about as many evaluations
 *     of a closed-form relation with its slopes. A count, so that answers do not depend on the
 *     machine
 */
public record SolverSettings(
    double tieToleranceMm,
    double nearnessMm,
    int maxIterations,
    double rankTolerance,
    double nearSingularGain,
    int restarts,
    boolean keepTurns,
    long workAllowed) {
  /**
   * Tie tolerance 1e-7 mm (steps aim at a hundredth of it), nearness 1e-7 mm, 200 steps, rank 1e-7,
   * near-singular above 100 mm per mm, 12 restarts, turns kept, 20 million units of work.
   */
  public static final SolverSettings DEFAULT =
      new SolverSettings(1e-7, 1e-7, 200, 1e-7, 100, 12, true, 20_000_000);

  public SolverSettings {
    if (!(tieToleranceMm > 0)
        || !(nearnessMm > 0)
        || !(rankTolerance > 0)
        || !(nearSingularGain > 0)) {
      throw new IllegalArgumentException("solver tolerances are > 0");
    }
    if (maxIterations < 1 || restarts < 0 || workAllowed < 1) {
      throw new IllegalArgumentException(
          "solver needs at least 1 iteration, 0 or more restarts and some work allowed");
    }
  }

  /** A copy with another nearness, mm. */
  public SolverSettings withNearnessMm(double value) {
    return new SolverSettings(
        tieToleranceMm,
        value,
        maxIterations,
        rankTolerance,
        nearSingularGain,
        restarts,
        keepTurns,
        workAllowed);
  }

  /** A copy with another bound on the steps. */
  public SolverSettings withMaxIterations(int value) {
    return new SolverSettings(
        tieToleranceMm,
        nearnessMm,
        value,
        rankTolerance,
        nearSingularGain,
        restarts,
        keepTurns,
        workAllowed);
  }

  /** A copy with another number of restarts. */
  public SolverSettings withRestarts(int value) {
    return new SolverSettings(
        tieToleranceMm,
        nearnessMm,
        maxIterations,
        rankTolerance,
        nearSingularGain,
        value,
        keepTurns,
        workAllowed);
  }

  /** A copy that keeps or does not keep the turn of two-link chains. */
  public SolverSettings withKeepTurns(boolean value) {
    return new SolverSettings(
        tieToleranceMm,
        nearnessMm,
        maxIterations,
        rankTolerance,
        nearSingularGain,
        restarts,
        value,
        workAllowed);
  }
}
