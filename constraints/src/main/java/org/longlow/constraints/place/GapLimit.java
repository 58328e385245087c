package org.longlow.constraints.place;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.longlow.constraints.gap.Body;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.solve.Relation;

/**
 * The smallest gap between two parts, less what is asked, as a relation of the pins they hang on.
 *
 * <p>The nearest points jump as parts pass each other, so the slope is a central difference over
 * {@link #STEP_MM}; it is exact where the nearest features stay the same.
 */
final class GapLimit implements Relation {

  private static final double STEP_MM = 1e-4;

  /** Beyond this the parts are far apart and the gap has no slope worth following, mm. */
  private static final double HORIZON_MM = 5000;

  private final Unknowns unknowns;
  private final Part first;
  private final Part second;
  private final double leastMm;
  private final int[] variables;

  private GapLimit(Unknowns unknowns, Part first, Part second, double leastMm, int[] variables) {
    this.unknowns = unknowns;
    this.first = first;
    this.second = second;
    this.leastMm = leastMm;
    this.variables = variables;
  }

  /**
   * Returns the relation, or empty where a person is meant or nothing of it can move. A gap to a
   * person is held by its finding and sought by {@code suit}: seating them anew for every slope is
   * too slow for a drag.
   */
  static Optional<GapLimit> of(Layout layout, Unknowns unknowns, Limit limit) {
    Part a = layout.parts().get(limit.parts().get(0));
    Part b = layout.parts().get(limit.parts().get(1));
    if (a == null || b == null || limit.from().isEmpty()) {
      return Optional.empty();
    }
    TreeSet<Integer> used = new TreeSet<>();
    for (Part part : List.of(a, b)) {
      for (String pin : part.pins()) {
        int[] xz = unknowns.pinVariables().get(pin);
        if (xz != null) {
          used.add(xz[0]);
          used.add(xz[1]);
        }
      }
    }
    int[] variables = used.stream().mapToInt(Integer::intValue).toArray();
    if (variables.length == 0) {
      return Optional.empty();
    }
    double least = unknowns.startValue(limit.from().get());
    return Optional.of(new GapLimit(unknowns, a, b, least, variables));
  }

  @Override
  public int[] variables() {
    return variables;
  }

  @Override
  public double evaluate(double[] x, double[] gradient) {
    if (gradient != null) {
      double[] y = x.clone();
      for (int i = 0; i < variables.length; i++) {
        double at = y[variables[i]];
        y[variables[i]] = at + STEP_MM;
        double up = gap(y);
        y[variables[i]] = at - STEP_MM;
        double down = gap(y);
        y[variables[i]] = at;
        gradient[i] = (up - down) / (2 * STEP_MM);
      }
    }
    return gap(x) - leastMm;
  }

  private double gap(double[] x) {
    Places places = unknowns.places(x);
    Gap gap =
        new Body(first.name(), Shapes.of(first, places, false).prisms())
            .to(new Body(second.name(), Shapes.of(second, places, false).prisms()), HORIZON_MM);
    return gap == null ? HORIZON_MM : gap.gapMm();
  }
}
