package org.longlow.constraints.document;

import java.util.LinkedHashMap;
import java.util.Map;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.OutOfRange;

/** Entries of one layout put into another, or once more into their own, under other names. */
public final class Copies {

  private Copies() {}

  /**
   * Returns {@code to} with copies of entries of {@code from}. What they name is what was copied
   * with them where that was copied; everything else they name keeps its name.
   *
   * @param names of the copies; an entry that is given a name which {@code to} has already is not
   *     copied, what named it names that instead
   * @throws OutOfRange if {@code from} has no such entry
   */
  public static Layout into(Layout to, Layout from, Map<Entry, String> names) {
    Layout renamed = renamed(from, names);
    Layout result = to;
    for (Map.Entry<Entry, String> copy : names.entrySet()) {
      String group = copy.getKey().group();
      if (!Entries.of(from, group).containsKey(copy.getKey().name())) {
        throw new OutOfRange("there is no " + copy.getKey().name() + " among the " + group);
      }
      Map<String, Object> entries = new LinkedHashMap<>(Entries.of(result, group));
      if (entries.putIfAbsent(copy.getValue(), Entries.of(renamed, group).get(copy.getValue()))
          == null) {
        result = Change.set(result, entries, group);
      }
    }
    return result;
  }

  /** Entries that are not copied make room for the copies' names. */
  private static Layout renamed(Layout from, Map<Entry, String> names) {
    return new Rewriting() {
      @Override
      String ref(Referent target, String name) {
        return names.entrySet().stream()
            .filter(e -> e.getKey().name().equals(name))
            .filter(e -> ReferenceNames.targets(e.getKey().group()).contains(target))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElse(name);
      }

      @Override
      String called(String group, String name) {
        return names.getOrDefault(new Entry(group, name), "\0" + name);
      }
    }.of(from);
  }
}
