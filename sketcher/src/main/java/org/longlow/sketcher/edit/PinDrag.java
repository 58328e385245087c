package org.longlow.sketcher.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.DragSession;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.Solver;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/** A pin that follows the pointer while ties and limits hold. For one thread at a time. */
public final class PinDrag {

  /** What ties may be off by: what moved less did not move. */
  private static final double STILL_MM = SolverSettings.DEFAULT.tieToleranceMm();

  private final String pin;
  private final LayoutProblem problem;
  private final PointMm begin;
  private final Places before;
  private final DragSession session;
  private SolveReport last;

  private PinDrag(String pin, Placed placed, int[] variables) {
    this.pin = pin;
    this.problem = placed.problem();
    this.before = placed.places();
    this.begin = before.pin(pin);
    this.last = placed.report();
    this.session =
        Solver.drag(problem.problem(), placed.report().x(), SolverSettings.DEFAULT, variables);
  }

  /** Begins to drag; empty if the pin is nailed or the layout does not hold as it is. */
  public static Optional<PinDrag> of(Placed placed, String pin) {
    int[] variables = placed.problem().variables(pin);
    return variables == null || !placed.holds()
        ? Optional.empty()
        : Optional.of(new PinDrag(pin, placed, variables));
  }

  public String pin() {
    return pin;
  }

  /** Returns where the pin was when the drag began. */
  public PointMm begin() {
    return begin;
  }

  /**
   * Moves the pin towards {@code target}.
   *
   * @return everything about the machine as it is then; a target out of reach gives the nearest
   */
  public Study moveTo(PointMm target) {
    SolveReport report = session.moveTo(target.x(), target.z());
    if (report.status().holds()) {
      last = report;
    }
    return study();
  }

  /**
   * Returns everything about the machine as it is now, its findings worked out when they are asked
   * for.
   */
  public Study study() {
    return Study.unchecked(new Placed(problem, last, problem.places(last.x())));
  }

  /**
   * Returns the step that the drag has made: of the layout that it began on, what moved is written
   * where it is now, and nothing else.
   */
  public Edit edit() {
    Places now = problem.places(last.x());
    Layout solved = problem.withPlaces(last.x());
    return new Edit("move " + pin, layout -> written(layout, solved, now));
  }

  /**
   * Returns the step for a layout that was changed since the drag began: the pin goes where it was
   * dragged, and what hangs on it has to be solved.
   */
  public Edit editOfPin() {
    Places now = problem.places(last.x());
    Layout solved = problem.withPlaces(last.x());
    return new Edit(
        "move " + pin,
        layout ->
            isMoved(pin, now) && layout.pins().containsKey(pin)
                ? layout.withPins(Map.of(pin, written(layout, solved, pin)))
                : layout);
  }

  private boolean isMoved(String name, Places now) {
    return before.pin(name).distance(now.pin(name)) > STILL_MM;
  }

  private static Pin written(Layout layout, Layout solved, String name) {
    Pin at = solved.pins().get(name);
    return layout.pins().get(name).at(at.x(), at.z());
  }

  private Layout written(Layout layout, Layout solved, Places now) {
    Map<String, Pin> pins = new LinkedHashMap<>();
    for (String name : layout.pins().keySet()) {
      if (problem.variables(name) != null && isMoved(name, now)) {
        pins.put(name, written(layout, solved, name));
      }
    }
    if (pins.isEmpty()) {
      return layout; // a measure is found anew only where a pin moved
    }
    Layout written = layout.withPins(pins);
    for (Map.Entry<String, Measure> m : layout.measures().entrySet()) {
      String name = m.getKey();
      Double was = m.getValue().free() ? before.measures().get(name) : null;
      if (was != null && Math.abs(was - now.measures().get(name)) > LayoutProblem.UNMOVED) {
        Measure found = solved.measures().get(name);
        written = written.withMeasure(name, m.getValue().withIs(found.is()));
      }
    }
    return written;
  }

  /** Returns what holds the pin back now: names of limits it slides along. */
  public List<String> stops() {
    Set<String> names = new TreeSet<>();
    last.activeLimits().forEach(n -> names.add(Trial.shown(n)));
    return List.copyOf(names);
  }

  /**
   * Returns what changes, for writing beside the pointer: how far the pin has gone, and its
   * distance and direction from the pin it is tied or joined to.
   */
  public static List<String> words(Layout layout, String pin, PointMm begin, Study now) {
    Units units = layout.units();
    PointMm at = now.placed().places().pin(pin);
    PointMm gone = at.minus(begin);
    String moved =
        pin
            + (gone.x() < 0 ? "  \u2212" : "  +")
            + units.says(Math.abs(gone.x()), FigureSort.LENGTH_IN_TENTHS)
            + (gone.z() < 0 ? " forward  \u2212" : " forward  +")
            + units.says(Math.abs(gone.z()), FigureSort.LENGTH_IN_TENTHS)
            + " up";
    Optional<String> partner = partner(layout, pin);
    if (partner.isEmpty()) {
      return List.of(moved);
    }
    PointMm from = at.minus(now.placed().places().pin(partner.get()));
    return List.of(
        moved,
        String.format(
            Locale.ROOT,
            "%s from %s, %.1f\u00b0 from level",
            units.says(from.length(), FigureSort.LENGTH_IN_TENTHS),
            partner.get(),
            Math.toDegrees(from.angleRad())));
  }

  /** Returns the pin that tells most about a pin's place: the other end of its part or tie. */
  static Optional<String> partner(Layout layout, String pin) {
    for (CushionPart c : layout.parts(CushionPart.class).toList()) {
      if (c.from().equals(pin) || c.to().equals(pin)) {
        return Optional.of(c.from().equals(pin) ? c.to() : c.from());
      }
    }
    for (Tie tie : layout.ties().values()) {
      if (tie.pins().size() == 2 && tie.pins().contains(pin)) {
        return tie.pins().stream().filter(p -> !p.equals(pin)).findFirst();
      }
    }
    for (Part part : layout.parts().values()) {
      List<String> pins = part.pins();
      int i = pins.indexOf(pin);
      if (i >= 0 && pins.size() > 1) {
        return Optional.of(pins.get(i == 0 ? 1 : i - 1));
      }
    }
    return Optional.empty();
  }
}
