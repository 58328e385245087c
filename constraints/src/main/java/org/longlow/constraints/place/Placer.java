package org.longlow.constraints.place;

import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.SolverSettings;

/** Solves layouts. */
public final class Placer {

  private Placer() {}

  /** Returns the solved layout with the diagnosis of its freedoms. */
  public static Placed place(Layout layout) {
    LayoutProblem problem = LayoutProblem.of(layout);
    SolveReport report = Solver.solveAndDiagnose(problem.problem(), SolverSettings.DEFAULT);
    return new Placed(problem, report, problem.places(report.x()));
  }
}
