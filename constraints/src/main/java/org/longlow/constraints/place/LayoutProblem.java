package org.longlow.constraints.place;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.gap.SideBySide;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.rider.geom.PointMm;

/** A layout as a problem for the solver, and the way back. Immutable. */
public final class LayoutProblem {

  /** A pin or measure that moved less keeps the text the user wrote, mm or scaled unit. */
  public static final double UNMOVED = 1e-7;

  private final Layout layout;
  private final Unknowns unknowns;
  private final Problem problem;
  private final Set<String> ofAngles;
  private final Map<String, SideBySide.Pair> across;

  private LayoutProblem(Layout layout, Unknowns unknowns, Problem problem, LimitBuilder limits) {
    this.layout = layout;
    this.unknowns = unknowns;
    this.problem = problem;
    ofAngles = Set.copyOf(limits.ofAngles());
    across = Map.copyOf(limits.across());
  }

  /** Returns the problem that {@code layout} poses. */
  public static LayoutProblem of(Layout layout) {
    return of(layout, null);
  }

  /**
   * As {@link #of(Layout)} with another look at which bodies lie side by side.
   *
   * @param seen values of all variables where they are looked at; null for those drawn
   */
  static LayoutProblem of(Layout layout, double[] seen) {
    Problem.Builder builder = Problem.builder();
    Unknowns unknowns = new Unknowns(layout, builder);
    TieBuilder ties = new TieBuilder(layout, unknowns);
    layout
        .ties()
        .forEach((name, tie) -> builder.tie(name, ties.relations(tie).toArray(Relation[]::new)));
    LimitBuilder limits =
        new LimitBuilder(layout, unknowns, seen == null ? unknowns.drawn() : seen);
    layout.ties().forEach((name, tie) -> limits.addArcEnds(name, tie, builder));
    layout.limits().forEach((name, limit) -> limits.add(name, limit, builder));
    layout.measures().forEach((name, measure) -> limits.addRange(name, measure, builder));
    layout.wishes().forEach((name, wish) -> limits.addWish(name, wish, builder));
    return new LayoutProblem(layout, unknowns, builder.build(), limits);
  }

  public Layout layout() {
    return layout;
  }

  public Problem problem() {
    return problem;
  }

  /** Returns the places as the file draws them, before solving. */
  public Places drawn() {
    return unknowns.places(unknowns.drawn());
  }

  /** Returns the places that the solver's values {@code x} stand for. */
  public Places places(double[] x) {
    return unknowns.places(x);
  }

  /** Returns whether a limit, by its name in reports, is about an angle. */
  public boolean isOfAngle(String limit) {
    return ofAngles.contains(limit);
  }

  /**
   * Returns where a limit, by its name in reports, is short across the machine, so that no move in
   * the elevation helps; empty if it is not.
   */
  public Optional<SideBySide.Pair> across(String limit) {
    return Optional.ofNullable(across.get(limit));
  }

  /** Returns the limits that are short across the machine, each with the outlines concerned. */
  Map<String, SideBySide.Pair> across() {
    return across;
  }

  /**
   * Returns the values of the variables of what somebody said, a measure within its range; nothing
   * of what cannot move.
   */
  Map<Integer, Double> values(AsWritten said) {
    Map<Integer, Double> values = new TreeMap<>();
    double[] drawn = unknowns.drawn();
    unknowns
        .measureVariables()
        .forEach(
            (name, v) -> {
              if (said.measures().contains(name)) {
                values.put(v, within(layout.measures().get(name), drawn[v]));
              }
            });
    unknowns
        .pinVariables()
        .forEach(
            (name, v) -> {
              if (said.pins().contains(name)) {
                values.put(v[0], drawn[v[0]]);
                values.put(v[1], drawn[v[1]]);
              }
            });
    return values;
  }

  private double within(Measure measure, double value) {
    double most = measure.to().map(unknowns::startValue).orElse(Double.POSITIVE_INFINITY);
    double least = measure.from().map(unknowns::startValue).orElse(Double.NEGATIVE_INFINITY);
    return Math.max(least, Math.min(most, value));
  }

  /** Returns the x and z variables of a pin, or null if it is fixed. */
  public int[] variables(String pin) {
    return unknowns.pinVariables().get(pin);
  }

  /**
   * Returns the layout with what moved written at its new place. What did not move keeps its text.
   */
  public Layout withPlaces(double[] x) {
    Places places = places(x);
    Map<String, Pin> moved = new LinkedHashMap<>();
    unknowns
        .pinVariables()
        .keySet()
        .forEach(
            name -> {
              PointMm now = places.pin(name);
              PointMm was = unknowns.drawn(name);
              Pin pin = layout.pins().get(name);
              boolean movedX = Math.abs(now.x() - was.x()) > UNMOVED;
              boolean movedZ = Math.abs(now.z() - was.z()) > UNMOVED;
              if (movedX || movedZ) {
                moved.put(
                    name,
                    pin.at(
                        movedX ? Formula.of(now.x(), Unit.MM) : pin.x(),
                        movedZ ? Formula.of(now.z(), Unit.MM) : pin.z()));
              }
            });
    Layout result = moved.isEmpty() ? layout : layout.withPins(moved);
    Measures measures = Measures.of(layout);
    for (Map.Entry<String, Integer> e : unknowns.measureVariables().entrySet()) {
      double now = x[e.getValue()];
      double was = measures.start().get(e.getKey());
      Measure measure = layout.measures().get(e.getKey());
      if (Math.abs(now - was) > UNMOVED * (measure.dim().equals(Dim.ANGLE) ? 1e-3 : 1)) {
        result =
            result.withMeasure(e.getKey(), measure.withIs(Formula.of(now, Unit.of(measure.dim()))));
      }
    }
    return result;
  }
}
