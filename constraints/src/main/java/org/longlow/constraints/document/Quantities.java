package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.formula.TyreWord;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Quoted;

/**
 * Quantities and formulas, knowing the measures of the layout.
 *
 * <p>A formula is held to its dimension, and to its range wherever no free measure takes part in
 * it, because the value of a free one is the solver's to choose.
 */
public final class Quantities {

  /** Units as people write them out: the word, then the unit meant. */
  private static final List<Map.Entry<String, String>> SPELT_OUT =
      List.of(
          Map.entry("millimeter", "mm"),
          Map.entry("centimeter", "cm"),
          Map.entry("meter", "m"),
          Map.entry("inch", "in"),
          Map.entry("inches", "in"),
          Map.entry("foot", "ft"),
          Map.entry("feet", "ft"),
          Map.entry("degree", "deg"),
          Map.entry("radian", "rad"),
          Map.entry("kilogram", "kg"),
          Map.entry("gram", "g"),
          Map.entry("pound", "lb"),
          Map.entry("lbs", "lb"),
          Map.entry("newton", "N"));

  /** A shorter word is near to too much. */
  private static final int SURELY_SPELT_OUT = 5;

  private static final String NO_NUMBER =
      "look for a division by zero, the root of less than zero, or asin or acos beyond 1";

  /** Stands for a formula that could not be read; its faults are already reported. */
  public static final Formula LOST = new Formula("", new Expr.Num(Double.NaN, Dim.NUMBER));

  /** Most measures that may hang on one another in a row; a bound keeps every walk shallow. */
  static final int MAX_CHAIN = 100;

  /** Most terms of a measure once the measures it uses are put in, as the solver does. */
  static final int MAX_TERMS = 1000;

  private final Faults faults;
  private final Set<String> names;
  private final Map<String, Formula> formulas = new LinkedHashMap<>();
  private final Map<String, String> paths = new HashMap<>();
  private final Set<String> free = new HashSet<>();
  private final Map<String, Dim> dims = new HashMap<>();
  private final Map<String, Double> values = new HashMap<>();
  private final Set<String> moving = new HashSet<>();
  private final Map<String, Integer> terms = new HashMap<>();
  private final Set<String> used = new TreeSet<>();

  /**
   * @param measures names of all measures of the file, read or not
   * @param tyres what the tyres measure, mm, by their names
   */
  Quantities(Faults faults, Set<String> measures, Map<String, Double> tyres) {
    this.faults = faults;
    this.names = new LinkedHashSet<>(measures);
    names.addAll(tyres.keySet());
    tyres.keySet().forEach(name -> dims.put(name, Dim.LENGTH));
    values.putAll(tyres);
  }

  /** Makes a measure known; {@link #link} works out what they all are. */
  void declare(String name, Formula is, boolean isFree) {
    formulas.put(name, is);
    if (isFree) {
      free.add(name);
    }
  }

  /**
   * Works out dimension and value of each measure; reports circles, unknown names and units that do
   * not fit.
   *
   * @param paths the path of each measure's formula
   */
  void link(Map<String, String> paths) {
    this.paths.putAll(paths);
    Map<String, List<String>> circles = new HashMap<>();
    for (String name : formulas.keySet()) {
      visit(name, new ArrayList<>(), paths, circles);
    }
  }

  private void visit(
      String name, List<String> trail, Map<String, String> paths, Map<String, List<String>> seen) {
    if (seen.containsKey(name)) {
      return;
    }
    int start = trail.indexOf(name);
    if (start >= 0) {
      List<String> circle = new ArrayList<>(trail.subList(start, trail.size()));
      circle.forEach(c -> seen.put(c, circle));
      String first = circle.get(0);
      faults.meaning(
          paths.get(first),
          Quoted.of(formulas.get(first).text()),
          "goes round in a circle: " + String.join(" -> ", circle) + " -> " + first,
          "give one of them a value of its own");
      return;
    }
    Formula is = formulas.get(name);
    if (trail.size() == MAX_CHAIN) {
      seen.put(name, List.of());
      faults.meaning(
          paths.get(name),
          Quoted.of(is.text()),
          "is the end of a chain of more than " + MAX_CHAIN + " measures",
          "let measures use fewer others in a row");
      return;
    }
    trail.add(name);
    for (String other : is.names()) {
      if (formulas.containsKey(other)) {
        visit(other, trail, paths, seen);
      }
    }
    trail.remove(trail.size() - 1);
    if (seen.putIfAbsent(name, List.of()) == null) {
      settle(name, is, paths.get(name));
    }
  }

  private void settle(String name, Formula is, String path) {
    if (is == LOST || !namesKnown(is, path)) {
      return;
    }
    if (free.contains(name) || is.names().stream().anyMatch(moving::contains)) {
      moving.add(name);
    }
    int count = free.contains(name) || !moving.contains(name) ? 1 : count(is.expr());
    terms.put(name, Math.min(count, MAX_TERMS));
    if (count > MAX_TERMS) {
      faults.meaning(
          path,
          Quoted.of(is.text()),
          "has more than " + MAX_TERMS + " terms once the measures it uses are put in",
          "use free measures less often in it");
      return;
    }
    if (is.names().stream().allMatch(dims::containsKey)) {
      try {
        dims.put(name, is.expr().dim(dims::get));
      } catch (FormulaException e) {
        faults.meaning(path, Quoted.of(is.text()), e.getMessage(), "mend the units");
        return;
      }
      double value = is.evaluate(n -> values.getOrDefault(n, Double.NaN));
      if (Double.isFinite(value)) {
        // one beyond reach is told here, not again wherever it is used
        if (inReach(path, is, value, dims.get(name), Optional.empty())) {
          values.put(name, value);
        }
      } else if (is.names().stream().allMatch(values::containsKey)) {
        faults.meaning(path, Quoted.of(is.text()), "gives no finite number", NO_NUMBER);
      }
    }
  }

  private int count(Expr expr) {
    int sum = 1;
    if (expr instanceof Expr.Name n) {
      return terms.getOrDefault(n.name(), 1);
    } else if (expr instanceof Expr.Op op) {
      sum += count(op.left()) + count(op.right());
    } else if (expr instanceof Expr.Call call) {
      for (Expr argument : call.arguments()) {
        sum += count(argument);
      }
    }
    return sum;
  }

  private boolean namesKnown(Formula formula, String path) {
    boolean known = true;
    for (String name : formula.names()) {
      used.add(name);
      if (!names.contains(name)) {
        known = false;
        faults.meaning(
            path,
            Quoted.of(formula.text()),
            "uses " + name + ", which is no measure, unit or function",
            TyreWord.isOne(name) ? tyreAdvice(name) : advice(name),
            Optional.of(new Faults.Cause("", "", name)));
      }
    }
    return known;
  }

  private String advice(String name) {
    return Names.nearest(name, names)
        .map(near -> "did you mean " + near + "?")
        .orElseGet(() -> unitAdvice(name));
  }

  /** A tyre that is known to nobody; the other one is not meant. */
  private static String tyreAdvice(String name) {
    String end = name.startsWith("front") ? "front" : "rear";
    return "write the length itself, or give the "
        + end
        + " wheel a tyre size, or this figure as a plain length";
  }

  /** Where no measure is meant, a unit may be: 1500 milimeter. */
  private String unitAdvice(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    for (Map.Entry<String, String> spelt : SPELT_OUT) {
      if (lower.equals(spelt.getKey())
          || (lower.length() >= SURELY_SPELT_OUT
              && Names.nearest(lower, List.of(spelt.getKey())).isPresent())) {
        return "write " + spelt.getValue();
      }
    }
    return "units are mm cm m in ft, deg rad, kg g lb, N kN lbf, kPa psi, km/h mph; "
        + Names.advice(name, names, "measure");
  }

  /** Returns the dimension of the measure {@code name}, if it could be worked out. */
  Optional<Dim> dim(String name) {
    return Optional.ofNullable(dims.get(name));
  }

  /** Returns the measures that some formula uses. */
  Set<String> used() {
    return used;
  }

  /** Notes that the measure {@code name} is used by a limit or wish. */
  void use(String name) {
    used.add(name);
  }

  boolean isFree(String name) {
    return free.contains(name);
  }

  /** Returns the value, in internal units, if it does not depend on a free measure. */
  Optional<Double> fixedValue(Formula formula) {
    if (formula == LOST || formula.names().stream().anyMatch(moving::contains)) {
      return Optional.empty();
    }
    double value = formula.evaluate(n -> values.getOrDefault(n, Double.NaN));
    return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
  }

  /** Holds {@code formula} to dimension and range. */
  Formula fit(String path, Formula formula, Dim dim, Range range) {
    if (!namesKnown(formula, path) || !formula.names().stream().allMatch(dims::containsKey)) {
      return LOST;
    }
    String shown = Quoted.of(formula.text());
    Formula fitted = formula;
    try {
      if (dim == null) {
        formula.expr().dim(dims::get);
      } else {
        fitted = formula.as(dim, dims::get);
      }
    } catch (FormulaException e) {
      faults.meaning(path, shown, e.getMessage(), "mend the unit", behind(formula));
      return LOST;
    }
    if (!formula.names().stream().allMatch(values::containsKey)) {
      return fitted;
    }
    double value = fitted.evaluate(values::get);
    if (!Double.isFinite(value)) {
      faults.meaning(path, shown, "gives no finite number", NO_NUMBER, behind(formula));
      return fitted;
    }
    Dim own = dim == null ? fitted.expr().dim(dims::get) : dim;
    Unit unit = Unit.of(own);
    boolean settled = formula.names().stream().noneMatch(moving::contains);
    double given = unit.fromInternal(value);
    if (settled && inReach(path, fitted, value, own, behind(formula)) && !range.allows(given)) {
      boolean plain = formula.names().isEmpty();
      faults.meaning(
          path,
          shown,
          (plain ? "" : "is " + Range.number(given) + ' ' + unit.symbol() + ", ")
              + range.words(unit),
          plain ? "write another value" : "change the measures it uses",
          behind(formula));
    }
    return fitted;
  }

  /** The one measure that a formula hangs on, by way of others or not; none if there are more. */
  private Optional<Faults.Cause> behind(Formula formula) {
    Optional<Faults.Cause> cause = Optional.empty();
    Formula at = formula;
    for (int i = 0; i <= MAX_CHAIN && at != null && at.names().size() == 1; i++) {
      String name = at.names().iterator().next();
      at = formulas.get(name);
      if (at == null) {
        return cause; // a tyre's figure, which is told of the wheel
      }
      cause = Optional.of(new Faults.Cause(paths.get(name), Quoted.of(at.text()), name));
    }
    return at != null && at.names().isEmpty() ? cause : Optional.empty();
  }

  private boolean inReach(
      String path, Formula formula, double value, Dim dim, Optional<Faults.Cause> cause) {
    double largest = Range.largest(dim);
    if (Math.abs(value) <= largest) {
      return true;
    }
    Unit unit = Unit.of(dim);
    faults.meaning(
        path,
        Quoted.of(formula.text()),
        "is beyond "
            + Range.number(unit.fromInternal(largest))
            + (unit == Unit.NONE ? "" : ' ' + unit.symbol()),
        "look at the unit",
        cause);
    return false;
  }
}
