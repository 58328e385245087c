package org.longlow.constraints.solve;

import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.SolverSettings;

/**
 * Entry point: positions, and what they leave open.
 *
 * <p>Pure functions of the problem and settings; the same input gives the same answer. To solve
 * again and again over the same structure, keep a {@link SolveSession}; to follow a finger, a
 * {@link DragSession}.
 */
public final class Solver {
  private Solver() {}

  /** Solves with the default settings. */
  public static SolveReport solve(Problem problem) {
    return solve(problem, SolverSettings.DEFAULT);
  }

  /**
   * Finds positions that satisfy ties and limits, have the least wishes and are nearest to the
   * anchor, in that order of rank.
   *
   * <p>Limits of the method: of a system of curved equations it finds the solution that continues
   * from the start, not every solution; a verdict of contradiction means that several searches from
   * and around the start ended at a least sum of squares that is not zero.
   */
  public static SolveReport solve(Problem problem, SolverSettings settings) {
    return new SolveSession(problem, settings).solve();
  }

  /** Solves and diagnoses. */
  public static SolveReport solveAndDiagnose(Problem problem, SolverSettings settings) {
    return diagnosed(problem, solve(problem, settings), settings);
  }

  /** Returns the report of a problem with its diagnosis. */
  public static SolveReport diagnosed(
      Problem problem, SolveReport report, SolverSettings settings) {
    return report.withDiagnosis(diagnose(problem, report, settings));
  }

  /**
   * Rank, freedoms, redundant ties, the smallest contradiction and near-singular ties at the
   * positions of a report.
   *
   * @param problem the problem solved
   * @param report its report
   */
  public static Diagnosis diagnose(Problem problem, SolveReport report, SolverSettings settings) {
    return new Diagnoser(problem, settings).diagnose(report);
  }

  /**
   * Starts to drag variables.
   *
   * @param problem what holds while dragging
   * @param solution values of all variables, where ties and limits hold
   * @param variables indices of the variables that follow the pointer
   */
  public static DragSession drag(
      Problem problem, double[] solution, SolverSettings settings, int... variables) {
    return new DragSession(problem, solution, settings, variables);
  }
}
