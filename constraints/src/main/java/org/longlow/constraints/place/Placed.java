package org.longlow.constraints.place;

import java.util.Map;
import java.util.TreeMap;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
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

  /**
   * Returns the free measures that are not worth what the layout says, by name, since its ties,
   * limits and ranges hold otherwise only: what they are worth, internal units.
   */
  public Map<String, Double> gaveWay() {
    Map<String, Double> gave = new TreeMap<>();
    Measures.of(layout())
        .start()
        .forEach(
            (name, said) -> {
              double now = places.measures().get(name);
              double shown = layout().measures().get(name).dim().equals(Dim.ANGLE) ? 1e-3 : 0.05;
              if (Math.abs(now - said) > shown) {
                gave.put(name, now);
              }
            });
    return gave;
  }
}
