package org.longlow.constraints.place;

import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.SolveReport;

/**
 * A solved layout.
 *
 * @param problem the layout as posed to the solver
 * @param report how the solve went, with its values
 * @param places where pins are and what measures are worth; the best found where ties contradict
 */
public record Placed(LayoutProblem problem, SolveReport report, Places places) {

  public Layout layout() {
    return problem.layout();
  }

  /** Returns whether every tie and limit holds. */
  public boolean holds() {
    return report.status().holds();
  }
}
