package org.longlow.constraints.place;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.layout.Layout;

/**
 * What somebody has said that the solver may change, and leaves as it is wherever all else can hold
 * so: who types 32 deg for the recline wants 32 deg, not what is nearest to that and to every pin
 * as it was drawn before.
 *
 * @param measures names of free measures
 * @param pins names of pins that are not nailed
 */
public record Said(Set<String> measures, Set<String> pins) {

  public Said {
    measures = Set.copyOf(measures);
    pins = Set.copyOf(pins);
  }

  /** All measures: a file gives them by name, and its pins follow. */
  public static Said of(Layout layout) {
    return new Said(layout.measures().keySet(), Set.of());
  }

  /** What an edit changed, or, where it changed other things only, all measures. */
  public static Said between(Layout before, Layout after) {
    Said said =
        new Said(
            changed(before.measures(), after.measures()), changed(before.pins(), after.pins()));
    return said.measures.isEmpty() && said.pins.isEmpty() ? of(after) : said;
  }

  private static <T> Set<String> changed(Map<String, T> before, Map<String, T> after) {
    Set<String> changed = new TreeSet<>();
    after.forEach(
        (name, now) -> {
          if (before.containsKey(name) && !before.get(name).equals(now)) {
            changed.add(name);
          }
        });
    return changed;
  }
}
