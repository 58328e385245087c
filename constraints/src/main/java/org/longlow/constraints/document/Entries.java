package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TyreFigures;
import org.longlow.rider.geom.OutOfRange;

/**
 * Entries of a layout renamed and taken out, with all that refers to them. Groups are called as in
 * files: measures, pins, parts, ties, limits, wishes, sections, stances, crew, photos, dimensions,
 * stock.
 */
public final class Entries {

  /**
   * An entry of the document.
   *
   * @param group such as pins
   * @param name the user's
   */
  public record Entry(String group, String name) {}

  /**
   * A layout without an entry.
   *
   * @param also what goes with it, for it would have nothing to be about
   * @param changed what stays but named it
   */
  public record Without(Layout layout, List<Entry> also, List<Entry> changed) {}

  private Entries() {}

  /** Returns the entries of a group by name, as Java has them. */
  public static Map<String, ?> of(Layout layout, String group) {
    Object entries = Document.LAYOUT.field(group).of(layout);
    if (!(entries instanceof Map<?, ?> map)) {
      throw new IllegalArgumentException(group + " are no entries");
    }
    Map<String, Object> byName = new LinkedHashMap<>();
    map.forEach((name, entry) -> byName.put(name.toString(), entry));
    return byName;
  }

  /**
   * Returns the layout with an entry called otherwise, wherever it is named; {@link LayoutFaults}
   * tells whether the name is a good one.
   *
   * @throws OutOfRange if there is no such entry, or one that has the name
   */
  public static Layout renamed(Layout layout, Entry entry, String to) {
    Map<String, ?> there = of(layout, entry.group());
    require(there, entry);
    if (there.containsKey(to)) {
      throw new OutOfRange("there is already " + to + " among the " + entry.group());
    }
    Set<Referent> targets = ReferenceNames.targets(entry.group());
    return new Rewriting() {
      @Override
      String ref(Referent target, String name) {
        return targets.contains(target) && name.equals(entry.name()) ? to : name;
      }

      @Override
      Formula formula(Formula formula) {
        return targets.contains(Referent.MEASURE) ? replaced(formula, entry.name(), to) : formula;
      }

      @Override
      String called(String group, String name) {
        return group.equals(entry.group()) && name.equals(entry.name()) ? to : name;
      }
    }.of(layout);
  }

  /**
   * Returns the layout without an entry. Where a formula used a measure, its own formula stands
   * instead, where it used a tyre of a wheel, what that measured; lists and optional fields lose
   * what they named; what cannot be without it goes too.
   *
   * @throws OutOfRange if there is no such entry
   */
  public static Without without(Layout layout, Entry entry) {
    require(of(layout, entry.group()), entry);
    Layout rest = layout;
    if (entry.group().equals("measures")) {
      Formula instead = layout.measures().get(entry.name()).is();
      rest =
          new Rewriting() {
            @Override
            String ref(Referent target, String name) {
              return name;
            }

            @Override
            Formula formula(Formula formula) {
              boolean alone = formula.text().strip().equals(entry.name());
              return alone ? instead : replaced(formula, entry.name(), instead.bracketed());
            }
          }.of(layout);
    }
    Map<String, Object> entries = new LinkedHashMap<>(of(rest, entry.group()));
    entries.remove(entry.name());
    rest = Change.set(rest, entries, entry.group());
    Set<Entry> gone = new LinkedHashSet<>();
    Set<Entry> changed = new LinkedHashSet<>();
    // what goes may have been named in turn
    for (int before = -1; before < gone.size(); ) {
      before = gone.size();
      rest = pruned(rest, ReferenceNames.in(layout), gone, changed);
    }
    rest = withoutTyres(rest, TyreFigures.of(layout), changed);
    changed.removeAll(gone);
    return new Without(rest, new ArrayList<>(gone), new ArrayList<>(changed));
  }

  /** Puts what tyres that are gone measured where formulas named it. */
  private static Layout withoutTyres(
      Layout layout, Map<String, Double> before, Set<Entry> changed) {
    Map<String, Double> lost = new LinkedHashMap<>(before);
    lost.keySet().removeAll(TyreFigures.of(layout).keySet());
    if (lost.isEmpty()) {
      return layout;
    }
    return new Rewriting() {
      @Override
      String ref(Referent target, String name) {
        return name;
      }

      @Override
      Formula formula(Formula formula) {
        Formula now = formula;
        for (Map.Entry<String, Double> figure : lost.entrySet()) {
          now = replaced(now, figure.getKey(), Formula.of(figure.getValue(), Unit.MM).bracketed());
        }
        return now;
      }

      @Override
      void changed(String group, String name) {
        changed.add(new Entry(group, name));
      }
    }.of(layout);
  }

  /** Takes out what names something that was known and is no more. */
  private static Layout pruned(
      Layout layout,
      Map<Referent, Collection<String>> before,
      Set<Entry> gone,
      Set<Entry> changed) {
    Map<Referent, Collection<String>> now = ReferenceNames.in(layout);
    return new Rewriting() {
      @Override
      String ref(Referent target, String name) {
        boolean lost = before.get(target).contains(name) && !now.get(target).contains(name);
        return lost ? null : name;
      }

      @Override
      void gone(String group, String name) {
        gone.add(new Entry(group, name));
      }

      @Override
      void changed(String group, String name) {
        changed.add(new Entry(group, name));
      }
    }.of(layout);
  }

  private static Formula replaced(Formula formula, String name, String by) {
    if (!formula.names().contains(name)) {
      return formula;
    }
    Pattern word = Pattern.compile("(?<![A-Za-z0-9_])" + Pattern.quote(name) + "(?![A-Za-z0-9_])");
    return Formula.parse(word.matcher(formula.text()).replaceAll(Matcher.quoteReplacement(by)));
  }

  private static void require(Map<String, ?> there, Entry entry) {
    if (!there.containsKey(entry.name())) {
      throw new OutOfRange("there is no " + entry.name() + " among the " + entry.group());
    }
  }
}
