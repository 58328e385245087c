package org.longlow.sketcher.edit;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
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
   * Returns the step that the drag has made, pins written where they are now. Where ties held
   * everything it changes nothing, though the layout be written less exactly than it is solved.
   */
  public Edit edit() {
    return Edit.to("move " + pin, moved() ? problem.withPlaces(last.x()) : problem.layout());
  }

  private boolean moved() {
    Places now = problem.places(last.x());
    // a measure is found anew only where a pin moved
    return before.pins().entrySet().stream()
        .anyMatch(p -> p.getValue().distance(now.pin(p.getKey())) > STILL_MM);
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
