package org.longlow.constraints.place;

import java.util.AbstractMap;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Derivative;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.Problem;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.rider.geom.PointMm;

/** Which variable of the solver stands for which pin and measure. */
final class Unknowns {

  /** An angle of 0.001 rad counts as much as 1 mm of a pin: the arc at 1 m. */
  private static final double ANGLE_SCALE = 1e-3;

  private final Layout layout;
  private final Measures measures;
  private final Map<String, Integer> measureVariables = new LinkedHashMap<>();
  private final Map<Integer, Double> scales = new HashMap<>();
  private final Map<String, int[]> pinVariables = new LinkedHashMap<>();
  private final Map<String, Pt> points = new LinkedHashMap<>();

  Unknowns(Layout layout, Problem.Builder builder) {
    this.layout = layout;
    this.measures = Measures.of(layout);
    measures
        .start()
        .forEach(
            (name, start) -> {
              Dim dim = Measures.dim(layout, name);
              double scale =
                  dim.equals(Dim.LENGTH)
                      ? 1
                      : dim.equals(Dim.ANGLE)
                          ? ANGLE_SCALE
                          : Math.max(1e-6, Math.abs(start) * 1e-3);
              int variable =
                  builder.variable(new Problem.Variable(name, start, start, scale, false));
              measureVariables.put(name, variable);
              scales.put(variable, scale);
            });
    layout
        .pins()
        .forEach(
            (name, pin) -> {
              if (pin.nailed()) {
                points.put(name, new Pt(quantity(pin.x()), quantity(pin.z())));
              } else {
                Pt pt = builder.pin(name, startValue(pin.x()), startValue(pin.z()));
                points.put(name, pt);
                pinVariables.put(
                    name,
                    new int[] {
                      ((Quantity.Variable) pt.x()).index(), ((Quantity.Variable) pt.z()).index()
                    });
              }
            });
  }

  /** Returns the value of {@code formula} where the solver starts. */
  double startValue(Formula formula) {
    return measures.drawn(formula);
  }

  Pt point(String pin) {
    Pt pt = points.get(pin);
    if (pt == null) {
      throw new IllegalArgumentException("no pin is called " + pin);
    }
    return pt;
  }

  /** Returns where a pin is drawn, before solving. */
  PointMm drawn(String pin) {
    Pin p = layout.pins().get(pin);
    return new PointMm(startValue(p.x()), startValue(p.z()));
  }

  /** Returns {@code formula} as an input of a relation: a constant, or a function of measures. */
  Quantity quantity(Formula formula) {
    return quantity(measures.reduced(formula));
  }

  Quantity measure(String name) {
    return quantity(measures.exprs().get(name));
  }

  private Quantity quantity(Expr expr) {
    TreeSet<String> names = new TreeSet<>();
    expr.collectNames(names);
    if (names.isEmpty()) {
      return Quantity.of(expr.evaluate(n -> Double.NaN));
    }
    if (expr instanceof Expr.Name name) {
      return Quantity.variable(measureVariables.get(name.name()));
    }
    List<String> order = List.copyOf(names);
    List<Expr> slopes = order.stream().map(name -> Derivative.of(expr, name)).toList();
    int[] variables = order.stream().mapToInt(measureVariables::get).toArray();
    return Quantity.formula(
        variables,
        (x, gradient) -> {
          if (gradient != null) {
            for (int i = 0; i < variables.length; i++) {
              gradient[i] = slopes.get(i).evaluate(n -> x[measureVariables.get(n)]);
            }
          }
          return expr.evaluate(n -> x[measureVariables.get(n)]);
        });
  }

  /** Returns the places that the solver's values stand for. */
  Places places(double[] x) {
    Map<String, Double> values = measures.values(n -> x[measureVariables.get(n)]);
    Map<String, PointMm> pins = new LinkedHashMap<>();
    points.forEach(
        (name, pt) -> pins.put(name, new PointMm(pt.x().value(x, null), pt.z().value(x, null))));
    return new Places(pins, values);
  }

  /** As {@link #places(double[])} for a few pins only. */
  Places places(double[] x, Collection<String> pins) {
    Map<String, PointMm> at = new HashMap<>();
    for (String name : pins) {
      Pt pt = point(name);
      at.put(name, new PointMm(pt.x().value(x, null), pt.z().value(x, null)));
    }
    return new Places(at, measures.values(n -> x[measureVariables.get(n)]));
  }

  /**
   * Returns the variables that something rests on: those of its pins, and of the measures that
   * {@code work} reads, ascending.
   */
  int[] variablesOf(Collection<String> pins, Consumer<Places> work) {
    Set<String> read = new HashSet<>();
    Map<String, PointMm> at = new HashMap<>();
    pins.forEach(name -> at.put(name, drawn(name)));
    Map<String, Double> values = measures.values(n -> measures.start().get(n));
    work.accept(
        new Places(
            at,
            new AbstractMap<>() {
              @Override
              public Double get(Object name) {
                read.add((String) name);
                return values.get(name);
              }

              @Override
              public Set<Map.Entry<String, Double>> entrySet() {
                return values.entrySet();
              }
            }));
    IntStream ofPins =
        pins.stream()
            .flatMap(name -> Stream.of(point(name).x(), point(name).z()))
            .flatMapToInt(q -> IntStream.of(q.variables()));
    IntStream ofMeasures =
        read.stream().flatMapToInt(name -> IntStream.of(measure(name).variables()));
    return IntStream.concat(ofPins, ofMeasures).distinct().sorted().toArray();
  }

  /** Returns how large a change of a variable counts as much as 1 mm of a pin. */
  double scale(int variable) {
    return scales.getOrDefault(variable, 1.0);
  }

  /** Returns the values of all variables where things are drawn. */
  double[] drawn() {
    double[] x = new double[measureVariables.size() + 2 * pinVariables.size()];
    measureVariables.forEach((name, v) -> x[v] = measures.start().get(name));
    pinVariables.forEach(
        (name, v) -> {
          x[v[0]] = drawn(name).x();
          x[v[1]] = drawn(name).z();
        });
    return x;
  }

  Map<String, int[]> pinVariables() {
    return pinVariables;
  }

  Map<String, Integer> measureVariables() {
    return measureVariables;
  }
}
