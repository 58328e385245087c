package org.longlow.constraints.mend;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * A pin that the solver may move, pulled while ties and limits hold; what it takes along is typed
 * too.
 *
 * @param name what is moved, in the user's names
 * @param pin the pin that is pulled
 * @param placed where everything is; it holds
 * @param way the direction of a step, of length 1
 */
record Pull(String name, String pin, Placed placed, PointMm way) implements Dial.Moving {

  /** A pull along one axis that arrives no nearer than this is stopped by something, mm. */
  private static final double ARRIVED_MM = 0.05;

  @Override
  public String thing() {
    return "pins " + pin;
  }

  @Override
  public Grid grid() {
    return Grid.MM;
  }

  @Override
  public Dial.Moving along(PointMm other) {
    return new Pull(name, pin, placed, other);
  }

  @Override
  public Optional<Rewrite> turned(int steps) {
    int[] both = placed.problem().variables(pin);
    double[] x = placed.report().x();
    PointMm at = placed.places().pin(pin);
    double toX = at.x() + steps * way.x();
    double toZ = at.z() + steps * way.z();
    SolveReport report;
    if (way.z() == 0) {
      report = pulled(x, new int[] {both[0]}, toX);
    } else if (way.x() == 0) {
      report = pulled(x, new int[] {both[1]}, toZ);
    } else {
      report = pulled(x, both, toX, toZ);
    }
    double off =
        Math.max(off(way.x(), report.x()[both[0]] - toX), off(way.z(), report.x()[both[1]] - toZ));
    return report.status().holds() && off < ARRIVED_MM
        ? Optional.of(typed(placed.layout(), placed.problem().withPlaces(report.x())))
        : Optional.empty();
  }

  /** Returns whether a little pull moves another pin. */
  boolean moves(String other) {
    return turned(1)
        .filter(r -> r.texts().containsKey(List.of("pins", other, "at", "0")))
        .isPresent();
  }

  private static double off(double way, double by) {
    return way == 0 ? 0 : Math.abs(by);
  }

  private SolveReport pulled(double[] x, int[] variables, double... to) {
    return Solver.drag(placed.problem().problem(), x, SolverSettings.DEFAULT, variables).moveTo(to);
  }

  /** Returns what differs in the places of pins and in free measures. */
  private static Rewrite typed(Layout before, Layout after) {
    Map<List<String>, String> texts = new LinkedHashMap<>();
    after
        .pins()
        .forEach(
            (name, pin) -> {
              Pin was = before.pins().get(name);
              if (pin != was) {
                texts.put(List.of("pins", name, "at", "0"), pin.x().text());
                texts.put(List.of("pins", name, "at", "1"), pin.z().text());
              }
            });
    after
        .measures()
        .forEach(
            (name, measure) -> {
              Measure was = before.measures().get(name);
              if (measure != was) {
                texts.put(List.of("measures", name, "is"), measure.is().text());
              }
            });
    return new Rewrite(texts);
  }

  /** What slides along something goes farther than it is pulled. */
  @Override
  public double size(int steps, Places before, Places after) {
    return after.pin(pin).distance(before.pin(pin)) / Grid.MM.much();
  }

  @Override
  public Words says(int steps, Places before, Places after) {
    return Say.moved(name, after.pin(pin).minus(before.pin(pin)));
  }
}
