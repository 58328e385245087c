package org.longlow.constraints.mend;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.check.LikeChecks;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Tracer;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;

/**
 * Changed machines solved and looked at for one finding. Counts what it does; that bounds the work,
 * so that the answer is the same on any machine. Not for several threads.
 */
final class Trying {

  private final Study base;
  private final Finding finding;
  private final Set<String> faults;
  private final Set<Occupant> sat;
  private final boolean partly;
  private int left;

  /**
   * @param most how many machines may be looked at
   */
  Trying(Study base, Finding finding, int most) {
    this.base = base;
    this.finding = finding;
    this.left = most;
    faults = faults(LayoutFaults.of(base.layout()));
    sat = seated(base.sittings());
    partly =
        Outcome.among(checks(base.placed(), base.sittings()).like(finding), finding.id())
            .filter(this::isSame)
            .isPresent();
  }

  private boolean isSame(Finding f) {
    return f.verdict() == finding.verdict()
        && Double.compare(f.value(), finding.value()) == 0
        && f.text().equals(finding.text());
  }

  private static Set<String> faults(List<Fault> faults) {
    return faults.stream().map(Fault::path).collect(Collectors.toSet());
  }

  boolean isSpent() {
    return left <= 0;
  }

  /** Returns how the finding comes out on a layout after a rewrite. */
  Outcome after(Rewrite rewrite) {
    if (isSpent()) {
      return Outcome.CANNOT_BE;
    }
    left--;
    try {
      return sound(rewrite).map(this::reading).orElse(Outcome.CANNOT_BE);
    } catch (OutOfRange e) {
      return Outcome.CANNOT_BE; // what no machine can be
    }
  }

  /** Returns the rewritten layout if nothing is wrong with it that was not before. */
  private Optional<Layout> sound(Rewrite rewrite) {
    try {
      LayoutFaults.Verdict verdict = LayoutFaults.verdict(rewrite.on(base.layout()), Tracer.NONE);
      return faults.containsAll(faults(verdict.faults()))
          ? Optional.of(verdict.layout())
          : Optional.empty();
    } catch (FormulaException e) {
      return Optional.empty(); // grown longer than formulas may be
    }
  }

  private Outcome reading(Layout layout) {
    Placed placed = Placer.solve(layout);
    if (!placed.holds()) {
      return Outcome.CANNOT_BE;
    }
    List<Sitting> sittings = Seats.of(layout, placed.places());
    return keepsSeated(sittings)
        ? Outcome.of(finding, figures(placed, sittings))
        : Outcome.CANNOT_BE;
  }

  /** What is found about somebody would only vanish with their seat. */
  private boolean keepsSeated(List<Sitting> sittings) {
    return seated(sittings).containsAll(sat);
  }

  private static Set<Occupant> seated(List<Sitting> sittings) {
    return sittings.stream()
        .filter(s -> s.seated().isPresent())
        .map(Sitting::occupant)
        .collect(Collectors.toSet());
  }

  /** Returns everything about the machine after a rewrite, if it can be. */
  Optional<Study> study(Rewrite rewrite) {
    try {
      return sound(rewrite)
          .map(Study::of)
          .filter(s -> s.placed().holds() && keepsSeated(s.sittings()));
    } catch (OutOfRange e) {
      return Optional.empty();
    }
  }

  private List<Finding> figures(Placed placed, List<Sitting> sittings) {
    LikeChecks checks = checks(placed, sittings);
    return partly ? checks.figures(finding) : checks.all();
  }

  private static LikeChecks checks(Placed placed, List<Sitting> sittings) {
    Layout layout = placed.layout();
    Map<String, PartShape> shapes = Shapes.of(layout, placed.places());
    Wheels wheels = Wheels.of(layout, placed.places());
    List<Standing> standings = new Stances(wheels, shapes).all(Study.riders(sittings));
    return new LikeChecks(placed, shapes, sittings, wheels, standings);
  }
}
