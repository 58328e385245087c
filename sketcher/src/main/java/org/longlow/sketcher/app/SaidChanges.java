package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.json.LayoutFields;
import org.longlow.constraints.json.LayoutFields.Field;
import org.longlow.constraints.layout.Layout;

/** What two layout files say otherwise; the same quantity written in another way is the same. */
final class SaidChanges {

  /** A pin drawn nearer than this to where it was is where it was, mm: solving rounds. */
  private static final double DRAWN_MM = 0.05;

  /** Quantities that differ by less, as a share, differ by rounding. */
  private static final double ROUNDING = 1e-9;

  private static final String NONE = "-";

  private static final Map<String, String> KINDS =
      Map.ofEntries(
          Map.entry("measures", "measure"),
          Map.entry("pins", "pin"),
          Map.entry("parts", "part"),
          Map.entry("ties", "tie"),
          Map.entry("limits", "limit"),
          Map.entry("wishes", "wish"),
          Map.entry("sections", "section"),
          Map.entry("stances", "stance"),
          Map.entry("crew", "person"),
          Map.entry("demands", "demand"),
          Map.entry("photos", "photo"),
          Map.entry("dimensions", "dimension"),
          Map.entry("lines", "line"),
          Map.entry("stock", "stock"),
          Map.entry("variants", "variant"),
          Map.entry("asBuilt", "as built"),
          Map.entry("titleBlock", "title block"),
          Map.entry("", "layout"));

  private SaidChanges() {}

  static List<Difference> of(Layout before, Layout after) {
    Map<Field, String> was = LayoutFields.of(before);
    Map<Field, String> now = LayoutFields.of(after);
    Map<String, Set<String>> namesWere = names(was);
    Map<String, Set<String>> namesAre = names(now);
    Set<Field> all = new LinkedHashSet<>(was.keySet());
    all.addAll(now.keySet());
    List<Difference> changes = new ArrayList<>();
    Set<Field> told = new LinkedHashSet<>();
    for (Field field : all) {
      boolean there = has(namesWere, field);
      boolean here = has(namesAre, field);
      if (there && here) {
        field(field, was.get(field), now.get(field)).ifPresent(changes::add);
      } else if (told.add(new Field(field.group(), field.name(), ""))) {
        // the first field says what it is: its kind, or its value where it has only one
        changes.add(
            new Difference(
                kind(field.group()),
                field.name(),
                here ? "added" : "removed",
                was.getOrDefault(field, NONE),
                now.getOrDefault(field, NONE)));
      }
    }
    namesWere.forEach(
        (group, names) ->
            order(group, names, namesAre.getOrDefault(group, Set.of())).ifPresent(changes::add));
    return changes;
  }

  /** What has no word of its own here is called as the file calls it. */
  private static String kind(String group) {
    return KINDS.getOrDefault(group, group);
  }

  private static Map<String, Set<String>> names(Map<Field, String> fields) {
    Map<String, Set<String>> names = new LinkedHashMap<>();
    fields
        .keySet()
        .forEach(f -> names.computeIfAbsent(f.group(), g -> new LinkedHashSet<>()).add(f.name()));
    return names;
  }

  private static boolean has(Map<String, Set<String>> names, Field field) {
    return names.getOrDefault(field.group(), Set.of()).contains(field.name());
  }

  private static Optional<Difference> field(Field field, String was, String now) {
    boolean drawn = field.group().equals("pins") && field.field().equals("at");
    if (same(was, now, drawn ? DRAWN_MM : 0)) {
      return Optional.empty();
    }
    String what = drawn ? "drawn at" : field.field();
    return Optional.of(
        new Difference(
            kind(field.group()),
            field.name(),
            what,
            was == null ? NONE : was,
            now == null ? NONE : now));
  }

  /** The first of the crew rides first, the first pan is the rider's: the order means something. */
  private static Optional<Difference> order(String group, Set<String> were, Set<String> are) {
    List<String> before = were.stream().filter(are::contains).toList();
    List<String> after = are.stream().filter(were::contains).toList();
    return before.equals(after) || group.isEmpty() || group.equals("demands")
        ? Optional.empty()
        : Optional.of(
            new Difference(
                kind(group),
                "all " + group,
                "order",
                String.join(", ", before),
                String.join(", ", after)));
  }

  /** Compares texts, or lists of them, as quantities where they are some. */
  private static boolean same(String a, String b, double within) {
    if (a == null || b == null || a.equals(b)) {
      return a != null && b != null;
    }
    String[] as = a.split(", ");
    String[] bs = b.split(", ");
    if (as.length != bs.length) {
      return false;
    }
    for (int i = 0; i < as.length; i++) {
      if (!as[i].equals(bs[i]) && !sameQuantity(as[i], bs[i], within)) {
        return false;
      }
    }
    return true;
  }

  private static boolean sameQuantity(String a, String b, double within) {
    Optional<Formula> x = fixed(a);
    Optional<Formula> y = fixed(b);
    if (x.isEmpty() || y.isEmpty()) {
      return false;
    }
    try {
      Dim dim = x.get().expr().dim(n -> Dim.NUMBER);
      Dim other = y.get().expr().dim(n -> Dim.NUMBER);
      Dim both = dim.equals(Dim.NUMBER) ? other : dim;
      double from = x.get().as(both, n -> Dim.NUMBER).evaluate(n -> Double.NaN);
      double to = y.get().as(both, n -> Dim.NUMBER).evaluate(n -> Double.NaN);
      double size = Math.max(Math.abs(from), Math.abs(to));
      return Math.abs(from - to) <= Math.max(within, ROUNDING * size);
    } catch (FormulaException e) {
      return false;
    }
  }

  private static Optional<Formula> fixed(String text) {
    try {
      return Optional.of(Formula.parse(text)).filter(f -> f.names().isEmpty());
    } catch (FormulaException e) {
      return Optional.empty();
    }
  }
}
