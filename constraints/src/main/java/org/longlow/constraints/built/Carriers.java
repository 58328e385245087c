package org.longlow.constraints.built;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.shape.Places;

/**
 * Ties through which a measure that was measured says where pins are. Where such a tie does not
 * hold, it is not the plan that the machine goes against: what was measured contradicts itself.
 */
final class Carriers {

  private final Layout plan;
  private final AsBuilt built;

  Carriers(Layout plan) {
    this.plan = plan;
    this.built = plan.asBuilt();
  }

  /** Returns the measure that {@code tie} asks for and nothing else, if it was measured. */
  Optional<String> of(Tie tie) {
    return tie.is().map(f -> f.text().strip()).filter(built.measures()::containsKey);
  }

  /**
   * Returns the measures that are contradicted where {@code tie} does not hold; none where it is a
   * tie of the plan alone. Where another tie says the same measure and holds, the measure is right
   * and this tie was made otherwise.
   */
  List<String> contradicted(String name, Tie tie, Places now) {
    Optional<String> measure = of(tie);
    if (measure.isPresent()) {
      return plan.ties().entrySet().stream()
              .filter(e -> !e.getKey().equals(name) && of(e.getValue()).equals(measure))
              .anyMatch(e -> holds(e.getValue(), now))
          ? List.of()
          : List.of(measure.get());
    }
    return tie.is().map(this::byFormula).orElseGet(() -> placing(tie));
  }

  /** Of a formula of measures all of which were measured: those. */
  private List<String> byFormula(Formula is) {
    Set<String> names = new TreeSet<>(is.names());
    return !names.isEmpty() && built.measures().keySet().containsAll(names)
        ? List.copyOf(names)
        : List.of();
  }

  /** Of pins all of which were measured, some by measures that place them: those measures. */
  private List<String> placing(Tie tie) {
    Set<String> placing = new TreeSet<>();
    for (String name : tie.pins()) {
      if (!built.pins().containsKey(name)) {
        Pin pin = plan.pins().get(name);
        Set<String> names = new TreeSet<>();
        Stream.of(pin.x(), pin.z()).map(Formula::names).forEach(names::addAll);
        if (!pin.nailed() || names.isEmpty() || !built.measures().keySet().containsAll(names)) {
          return List.of();
        }
        placing.addAll(names);
      }
    }
    return List.copyOf(placing);
  }

  private static boolean holds(Tie tie, Places now) {
    double is = PinFigures.of(tie.kind(), tie.pins(), now);
    Dim dim = tie.kind().dim().orElse(Dim.LENGTH);
    return Double.isFinite(is) && PinFigures.same(is, now.value(tie.is().orElseThrow()), dim);
  }
}
