package org.longlow.constraints.layout;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.TyreWord;

/**
 * The measures of a layout with every formula reduced to the free measures it rests on.
 *
 * @param exprs each measure's value over free measures only, in internal units; a free measure is
 *     its own name; beside them what the tyres measure, by {@link TyreFigures}
 * @param start where the solver starts each free measure, internal units
 */
public record Measures(Map<String, Expr> exprs, Map<String, Double> start) {

  public Measures {
    exprs = Ordered.copy(exprs);
    start = Ordered.copy(start);
  }

  /**
   * Reduces the measures of {@code layout}.
   *
   * @throws IllegalArgumentException if formulas run in a circle or name no measure; a layout that
   *     was read from a file has neither
   */
  public static Measures of(Layout layout) {
    Map<String, Expr> done = new LinkedHashMap<>();
    Map<String, Double> tyres = TyreFigures.of(layout);
    tyres.forEach((name, mm) -> done.put(name, new Expr.Num(mm, Dim.LENGTH)));
    for (String name : layout.measures().keySet()) {
      reduce(layout, name, done, new HashSet<>());
    }
    Map<String, Expr> exprs = new LinkedHashMap<>();
    Map<String, Double> start = new LinkedHashMap<>();
    layout.measures().keySet().forEach(name -> exprs.put(name, done.get(name)));
    tyres.keySet().forEach(name -> exprs.put(name, done.get(name)));
    layout
        .measures()
        .forEach(
            (name, measure) -> {
              if (measure.free()) {
                start.put(name, Double.NaN);
              }
            });
    // a free measure starts at its formula, evaluated where the free measures it names start
    for (String name : start.keySet()) {
      startOf(layout, name, exprs, start, new HashSet<>());
    }
    return new Measures(exprs, start);
  }

  private static double startOf(
      Layout layout,
      String name,
      Map<String, Expr> exprs,
      Map<String, Double> start,
      Set<String> under) {
    Double known = start.get(name);
    if (!Double.isNaN(known)) {
      return known;
    }
    if (!under.add(name)) {
      throw new IllegalArgumentException("measure " + name + " starts from itself");
    }
    Expr expr = reducedFormula(layout.measures().get(name).is(), exprs);
    double value =
        expr.evaluate(other -> startOf(layout, other, exprs, start, new HashSet<>(under)));
    start.put(name, value);
    return value;
  }

  private static Expr reduce(
      Layout layout, String name, Map<String, Expr> done, Set<String> under) {
    Expr known = done.get(name);
    if (known != null) {
      return known;
    }
    Measure measure = layout.measures().get(name);
    if (measure == null || !under.add(name)) {
      throw new IllegalArgumentException(
          measure == null
              ? "no measure is called " + name
              : "the formula of " + name + " runs in a circle");
    }
    Expr expr;
    if (measure.free()) {
      expr = new Expr.Name(name);
    } else {
      Set<String> names = new TreeSet<>();
      measure.is().expr().collectNames(names);
      Map<String, Expr> inner = new HashMap<>();
      names.forEach(n -> inner.put(n, reduce(layout, n, done, under)));
      expr = measure.is().expr().replaced(inner::get);
    }
    under.remove(name);
    done.put(name, expr);
    return expr;
  }

  private static Expr reducedFormula(Formula formula, Map<String, Expr> exprs) {
    return formula.expr().replaced(exprs::get);
  }

  /** Returns {@code formula} over free measures only. */
  public Expr reduced(Formula formula) {
    return reducedFormula(formula, exprs);
  }

  /** Returns what {@code formula} is worth where the free measures start, internal units. */
  public double drawn(Formula formula) {
    return reduced(formula).evaluate(start::get);
  }

  /** Returns the value of every measure and of what the tyres measure, given the free ones. */
  public Map<String, Double> values(ToDoubleFunction<String> free) {
    Map<String, Double> values = new LinkedHashMap<>();
    exprs.forEach((name, expr) -> values.put(name, expr.evaluate(free)));
    return Collections.unmodifiableMap(values);
  }

  /** Returns the dimension of the measure {@code name} of {@code layout}. */
  public static Dim dim(Layout layout, String name) {
    return known(layout, name).orElse(Dim.NUMBER);
  }

  /** Returns the dimension of what formulas of {@code layout} may name so; empty for nothing. */
  public static Optional<Dim> known(Layout layout, String name) {
    Measure measure = layout.measures().get(name);
    return measure != null
        ? Optional.of(measure.dim())
        : Optional.of(Dim.LENGTH).filter(d -> TyreWord.words().contains(name));
  }
}
