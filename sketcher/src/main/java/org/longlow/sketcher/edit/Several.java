package org.longlow.sketcher.edit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Copies;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Edits of several things at once, each one step. */
public final class Several {

  /** A hundredth of what a tie may be off by. */
  private static final double FIRM_MM = SolverSettings.DEFAULT.tieToleranceMm() / 100;

  private Several() {}

  /** Returns what the history calls several things. */
  public static String called(Collection<String> names) {
    List<String> all = List.copyOf(names);
    return all.size() <= 3
        ? String.join(", ", all)
        : String.join(", ", all.subList(0, 2)) + " and " + (all.size() - 2) + " more";
  }

  /** Returns the pins on which parts hang. */
  public static Set<String> pins(Layout layout, Collection<String> parts) {
    return parts.stream()
        .map(layout.parts()::get)
        .filter(p -> p != null)
        .flatMap(p -> p.ownPins().stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  // --- taken out ---

  /** Returns the edit that takes things out, and with them what cannot be without them. */
  public static Edit takeOut(List<Entry> entries) {
    return new Edit(
        "take out " + called(entries.stream().map(Entry::name).toList()),
        layout -> without(layout, entries).layout());
  }

  /**
   * Says what becomes of the rest where things are taken out; empty if nothing names them and
   * nothing was measured of them.
   */
  public static String follows(Layout layout, List<Entry> entries) {
    Entries.Without without = without(layout, entries);
    String out = called(entries.stream().map(Entry::name).toList());
    List<String> lines = new ArrayList<>();
    List<String> measured = MeasuredLost.of(layout.asBuilt(), without.layout().asBuilt());
    // pins of no use to anything that stays are no reason to ask
    if (measured.isEmpty()
        && without.changed().isEmpty()
        && entries.stream().noneMatch(Several::isPin)
        && without.also().stream().allMatch(Several::isPin)) {
      return "";
    }
    if (!without.also().isEmpty()) {
      lines.add("With " + out + " goes " + names(without.also()) + ".");
    }
    if (!without.changed().isEmpty()) {
      String it = entries.size() == 1 ? "It is" : "They are";
      lines.add(it + " named no more by " + names(without.changed()) + ".");
    }
    if (!measured.isEmpty()) {
      lines.add("What was measured as built goes too: " + String.join(", ", measured) + ".");
    }
    return String.join("\n", lines);
  }

  private static boolean isPin(Entry entry) {
    return entry.group().equals("pins");
  }

  private static Entries.Without without(Layout layout, List<Entry> entries) {
    Layout rest = layout;
    Set<Entry> also = new LinkedHashSet<>();
    Set<Entry> changed = new LinkedHashSet<>();
    for (Entry entry : entries) {
      // what goes with another is gone by then
      if (!also.contains(entry)) {
        Entries.Without without = Entries.without(rest, entry);
        rest = without.layout();
        also.addAll(without.also());
        changed.addAll(without.changed());
      }
    }
    Layout tidy = OwnPins.without(layout, rest);
    rest.pins().keySet().stream()
        .filter(p -> !tidy.pins().containsKey(p))
        .forEach(p -> also.add(new Entry("pins", p)));
    also.removeAll(entries);
    changed.removeAll(also);
    changed.removeAll(entries);
    return new Entries.Without(tidy, List.copyOf(also), List.copyOf(changed));
  }

  private static String names(List<Entry> entries) {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    entries.forEach(e -> groups.computeIfAbsent(e.group(), g -> new ArrayList<>()).add(e.name()));
    return groups.entrySet().stream()
        .map(g -> String.join(", ", g.getValue()) + " (" + g.getKey() + ")")
        .collect(Collectors.joining(", "));
  }

  // --- moved, nailed ---

  /**
   * Returns the edit that moves pins by a step; those that are nailed stay, and what ties hold is
   * held.
   */
  public static Edit move(Collection<String> pins, PointMm step) {
    return new Edit("move " + called(pins), layout -> moved(layout, pins, step));
  }

  private static Layout moved(Layout layout, Collection<String> pins, PointMm step) {
    Places now = Drawn.places(layout);
    Map<String, Pin> moved = new LinkedHashMap<>();
    for (String name : pins) {
      Pin pin = layout.pins().get(name);
      if (pin != null && !pin.nailed()) {
        PointMm to = now.pin(name).plus(step);
        moved.put(
            name,
            pin.at(
                step.x() == 0 ? pin.x() : Formula.of(to.x(), Unit.MM),
                step.z() == 0 ? pin.z() : Formula.of(to.z(), Unit.MM)));
      }
    }
    if (moved.isEmpty()) {
      throw new OutOfRange("is held: every pin of it is nailed; loosen one first");
    }
    return layout.withPins(moved);
  }

  /** Returns the edit that nails pins where the solver has them, or lets all of them go. */
  public static Edit nail(Collection<String> names, boolean nailed) {
    return new Edit(
        (nailed ? "nail " : "loosen ") + called(names),
        layout -> {
          Places written = Drawn.places(layout);
          Places now = nailed ? Placer.solve(layout).places() : written;
          Map<String, Pin> pins = new LinkedHashMap<>();
          for (String name : names) {
            Pin pin = layout.pins().get(name);
            if (nailed) {
              PointMm was = written.pin(name);
              PointMm at = now.pin(name);
              pin = pin.at(exactly(pin.x(), was.x(), at.x()), exactly(pin.z(), was.z(), at.z()));
            }
            pins.put(name, new Pin(pin.x(), pin.z(), nailed, pin.with(), pin.note()));
          }
          return layout.withPins(pins);
        });
  }

  /** Between nails nothing gives way, so places as they are usually written are too rough. */
  private static Formula exactly(Formula text, double was, double now) {
    return Math.abs(was - now) <= FIRM_MM
        ? text
        : Formula.parse(
            BigDecimal.valueOf(now).setScale(10, RoundingMode.HALF_EVEN).toPlainString() + " mm");
  }

  // --- once more ---

  /**
   * Returns the edit that makes copies of parts beside them, on pins of their own. Ties and limits
   * that speak of nothing else come with them, and a copy opens with the section of its original.
   */
  public static Edit duplicate(Collection<String> parts, PointMm step) {
    return new Edit("copy " + called(parts), layout -> copied(layout, parts, step));
  }

  /** Returns the names that copies of parts get. */
  public static Map<String, String> copies(Layout layout, Collection<String> parts) {
    return fresh(layout, "parts", parts);
  }

  private static Layout copied(Layout layout, Collection<String> parts, PointMm step) {
    for (String name : parts) {
      if (layout.parts().get(name) instanceof Part.AtEnd) {
        throw new OutOfRange(name + " has its one place on a machine; it cannot be there twice");
      }
    }
    Set<String> pins = pins(layout, parts);
    Map<String, String> newPins = fresh(layout, "pins", pins);
    Map<String, String> newParts = fresh(layout, "parts", parts);
    Map<Entry, String> names = new LinkedHashMap<>();
    newPins.forEach((old, name) -> names.put(new Entry("pins", old), name));
    newParts.forEach((old, name) -> names.put(new Entry("parts", old), name));
    fresh(layout, "ties", about(layout.ties(), t -> isAbout(t, pins, parts)))
        .forEach((old, name) -> names.put(new Entry("ties", old), name));
    fresh(layout, "limits", about(layout.limits(), l -> isAbout(l, pins, parts)))
        .forEach((old, name) -> names.put(new Entry("limits", old), name));
    Layout with = Copies.into(layout, layout, names);
    Map<String, Pin> shifted = new LinkedHashMap<>();
    for (String name : newPins.values()) {
      Pin pin = with.pins().get(name);
      shifted.put(name, pin.at(Shifted.by(pin.x(), step.x()), Shifted.by(pin.z(), step.z())));
    }
    return inSections(with.withPins(shifted), newParts);
  }

  private static Map<String, String> fresh(Layout layout, String group, Collection<String> old) {
    Set<String> taken = new LinkedHashSet<>(Entries.of(layout, group).keySet());
    Map<String, String> names = new LinkedHashMap<>();
    for (String name : old) {
      String free = Fresh.name(taken, Fresh.stem(name));
      taken.add(free);
      names.put(name, free);
    }
    return names;
  }

  private static <V> List<String> about(Map<String, V> entries, Predicate<V> test) {
    return entries.entrySet().stream()
        .filter(e -> test.test(e.getValue()))
        .map(Map.Entry::getKey)
        .toList();
  }

  private static boolean isAbout(Tie tie, Set<String> pins, Collection<String> parts) {
    return !tie.pins().isEmpty()
        && pins.containsAll(tie.pins())
        && (tie.part().isEmpty() || parts.contains(tie.part()));
  }

  private static boolean isAbout(Limit limit, Set<String> pins, Collection<String> parts) {
    return !(limit.pins().isEmpty() && limit.parts().isEmpty())
        && pins.containsAll(limit.pins())
        && parts.containsAll(limit.parts());
  }

  private static Layout inSections(Layout layout, Map<String, String> copies) {
    Layout with = layout;
    for (Map.Entry<String, Section> section : layout.sections().entrySet()) {
      List<String> parts = new ArrayList<>(section.getValue().parts());
      section.getValue().parts().stream()
          .filter(copies::containsKey)
          .map(copies::get)
          .forEach(parts::add);
      if (parts.size() > section.getValue().parts().size()) {
        with = Change.set(with, parts, "sections", section.getKey(), "parts");
      }
    }
    return with;
  }
}
