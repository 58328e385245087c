package org.longlow.constraints.place;

import java.util.List;
import java.util.Map;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.SolveSession;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.SolverSettings;

/** Solves layouts. */
public final class Placer {

  private Placer() {}

  /** Returns the solved layout with the diagnosis of its freedoms. */
  public static Placed place(Layout layout) {
    return place(layout, AsWritten.of(layout));
  }

  /**
   * As {@link #place(Layout)} after somebody has changed it.
   *
   * @param said what stays as it is if that can be, what is tried first first
   */
  public static Placed place(Layout layout, List<AsWritten> said) {
    Placed placed = solve(layout, said);
    SolveReport report =
        Solver.diagnosed(placed.problem().problem(), placed.report(), SolverSettings.DEFAULT);
    return new Placed(placed.problem(), report, placed.places());
  }

  /** Returns the solved layout without a diagnosis, for searches that ask again and again. */
  public static Placed solve(Layout layout) {
    return solve(layout, AsWritten.of(layout));
  }

  private static Placed solve(Layout layout, List<AsWritten> said) {
    LayoutProblem problem = LayoutProblem.of(layout);
    SolveReport report = report(problem, said);
    if (!problem.across().isEmpty() && report.failedTies().isEmpty()) {
      // what lies side by side as drawn may not do so where the ties put it
      LayoutProblem again = LayoutProblem.of(layout, report.x());
      if (!again.across().keySet().equals(problem.across().keySet())) {
        problem = again;
        report = report(problem, said);
      }
    }
    return new Placed(problem, report, problem.places(report.x()));
  }

  /** What was said gives way, as all else does, only where it must. */
  private static SolveReport report(LayoutProblem problem, List<AsWritten> said) {
    Problem all = problem.problem();
    SolveSession session = new SolveSession(all, SolverSettings.DEFAULT);
    SolveReport nearest = session.solve();
    if (!nearest.status().holds() || !all.wishes().isEmpty()) {
      return nearest;
    }
    for (AsWritten some : said) {
      Map<Integer, Double> held = problem.values(some);
      if (held.keySet().stream().noneMatch(v -> hasMoved(all.variables().get(v), nearest.x()[v]))) {
        return nearest;
      }
      SolveReport kept = Solver.solve(all.holding(held), SolverSettings.DEFAULT);
      if (kept.status().holds()) {
        return session.solve(all.withStart(kept.x()));
      }
    }
    return nearest;
  }

  private static boolean hasMoved(Problem.Variable v, double now) {
    return Math.abs(now - v.start()) > LayoutProblem.UNMOVED * v.scale();
  }
}
