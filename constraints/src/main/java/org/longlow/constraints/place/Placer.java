package org.longlow.constraints.place;

import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.SolverSettings;

/** Solves layouts. */
public final class Placer {

  private Placer() {}

  /** Returns the solved layout with the diagnosis of its freedoms. */
  public static Placed place(Layout layout) {
    Placed placed = solve(layout);
    SolveReport report =
        Solver.diagnosed(placed.problem().problem(), placed.report(), SolverSettings.DEFAULT);
    return new Placed(placed.problem(), report, placed.places());
  }

  /** Returns the solved layout without a diagnosis, for searches that ask again and again. */
  public static Placed solve(Layout layout) {
    LayoutProblem problem = LayoutProblem.of(layout);
    SolveReport report = Solver.solve(problem.problem(), SolverSettings.DEFAULT);
    if (!problem.across().isEmpty() && report.failedTies().isEmpty()) {
      // what lies side by side as drawn may not do so where the ties put it
      LayoutProblem again = LayoutProblem.of(layout, report.x());
      if (!again.across().keySet().equals(problem.across().keySet())) {
        problem = again;
        report = Solver.solve(problem.problem(), SolverSettings.DEFAULT);
      }
    }
    return new Placed(problem, report, problem.places(report.x()));
  }
}
