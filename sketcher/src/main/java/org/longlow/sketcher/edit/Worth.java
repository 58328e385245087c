package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.SolverTie;
import org.longlow.rider.geom.PointMm;

/** What quantities of pins are worth now: the first values of what is asked of them. */
final class Worth {

  /** Radius of a bend or pulley until somebody gives another. */
  private static final double RADIUS_MM = 40;

  private Worth() {}

  /** Returns a tie over pins that holds as they are now, as far as its kind has figures. */
  static Tie tie(Layout layout, Places now, TieKind kind, List<String> pins, String part) {
    List<Formula> radii = radii(now, kind, pins);
    int edge = kind == TieKind.ON_EDGE ? nearestEdge(layout, now, part, now.pin(pins.get(0))) : 0;
    Tie without = new Tie(kind, pins, Optional.empty(), radii, part, edge, false, "");
    return kind.is() == TieKind.Is.NONE
        ? without
        : with(without, Formula.of(value(layout, now, without), unit(kind)));
  }

  private static Tie with(Tie tie, Formula is) {
    return new Tie(
        tie.kind(),
        tie.pins(),
        Optional.of(is),
        tie.radii(),
        tie.part(),
        tie.edge(),
        tie.inside(),
        tie.note());
  }

  private static Unit unit(TieKind kind) {
    return kind.dim().map(Unit::of).orElse(Unit.MM);
  }

  private static double value(Layout layout, Places now, Tie tie) {
    List<PointMm> p = tie.pins().stream().map(now::pin).toList();
    return switch (tie.kind()) {
      case PATH_LENGTH, BELT_LENGTH -> length(layout, now, tie);
      case PART_WAY -> partWay(p.get(0), p.get(1), p.get(2));
      case FORMULA -> 0;
      default -> of(tie.kind().name(), p);
    };
  }

  /**
   * Returns a quantity that ties, limits and wishes can all speak of, internal units.
   *
   * @param kind its word as a constant, such as BESIDE
   */
  static double of(String kind, List<PointMm> p) {
    Optional<DoubleBinaryOperator> between = TieKind.valueOf(kind).between();
    if (between.isPresent()) {
      PointMm d = p.get(1).minus(p.get(0));
      return between.get().applyAsDouble(d.x(), d.z());
    }
    switch (kind) {
      case "HEIGHT":
        return p.get(0).z();
      case "BESIDE":
        PointMm line = p.get(2).minus(p.get(1));
        return line.cross(p.get(0).minus(p.get(1))) / line.length();
      case "ANGLE_BETWEEN":
        PointMm a = p.get(1).minus(p.get(0));
        PointMm b = p.get(3).minus(p.get(2));
        return Math.atan2(a.cross(b), a.dot(b));
      default:
        throw new IllegalArgumentException(kind + " is no quantity of pins alone");
    }
  }

  private static double partWay(PointMm p, PointMm q, PointMm r) {
    PointMm line = r.minus(q);
    return line.dot(p.minus(q)) / line.dot(line);
  }

  /** The solver's own measure of such a length: what its tie is off by from nothing. */
  private static double length(Layout layout, Places now, Tie tie) {
    String name = Fresh.name(layout, "ties", "length");
    Layout asked = layout.withTie(name, with(tie, Formula.of(0, Unit.MM)));
    LayoutProblem problem = LayoutProblem.of(asked);
    double[] x = problem.problem().start();
    for (String pin : tie.pins()) {
      int[] own = problem.variables(pin);
      if (own != null) { // a nailed pin is where it is written
        x[own[0]] = now.pin(pin).x();
        x[own[1]] = now.pin(pin).z();
      }
    }
    return problem.problem().ties().stream()
        .filter(t -> t.name().equals(name))
        .map(SolverTie::relations)
        .mapToDouble(r -> r.get(0).evaluate(x, null))
        .findFirst()
        .orElseThrow();
  }

  private static List<Formula> radii(Places now, TieKind kind, List<String> pins) {
    List<PointMm> p = pins.stream().map(now::pin).toList();
    List<Formula> radii = new ArrayList<>();
    switch (kind) {
      case ON_CIRCLE, ON_ARC -> radii.add(mm(p.get(0).distance(p.get(1))));
      case TANGENT_LINE ->
          radii.add(mm(Math.abs(of("BESIDE", List.of(p.get(2), p.get(0), p.get(1))))));
      case TANGENT_CIRCLES -> {
        double half = p.get(0).distance(p.get(1)) / 2;
        radii.add(mm(half));
        radii.add(mm(half));
      }
      case PATH_LENGTH -> radii.add(mm(RADIUS_MM));
      case BELT_LENGTH -> pins.forEach(pin -> radii.add(mm(RADIUS_MM)));
      default -> {}
    }
    return radii;
  }

  private static Formula mm(double value) {
    return Formula.of(Math.max(1, value), Unit.MM);
  }

  /** Returns a value in the unit that people write, rounded to a step of it towards nothing. */
  static Formula rounded(double internal, Dim dim, double step) {
    Unit unit = Unit.of(dim);
    double shown = Math.floor(unit.fromInternal(internal) / step + 1e-9) * step;
    return Formula.of(shown * unit.factor(), unit);
  }

  /** Returns which edge of a part's outline, if it has one, is nearest to a place. */
  private static int nearestEdge(Layout layout, Places now, String part, PointMm place) {
    if (!(layout.parts().get(part) instanceof Part.Outlined outlined)) {
      return 0;
    }
    List<PointMm> v = Outlines.vertices(outlined.frame(), outlined.outline(), now);
    int edges = v.size() - (outlined.outline().closed() ? 0 : 1);
    int best = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < edges; i++) {
      PointMm a = v.get(i);
      PointMm b = v.get((i + 1) % v.size());
      double d =
          Distance.pointToSegment(
              new Coordinate(place.x(), place.z()),
              new Coordinate(a.x(), a.z()),
              new Coordinate(b.x(), b.z()));
      if (d < least) {
        least = d;
        best = i;
      }
    }
    return best;
  }
}
