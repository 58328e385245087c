package org.longlow.constraints.place;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.longlow.constraints.layout.Layout;

/**
 * What somebody has said that the solver may change, and leaves as it is wherever all else can hold
 * so: who types 32 deg for the recline wants 32 deg, not what is nearest to that and to every pin
 * as it was drawn before.
 *
 * @param measures names of free measures
 * @param pins names of pins that are not nailed
 */
public record AsWritten(Set<String> measures, Set<String> pins) {

  public AsWritten {
    measures = Set.copyOf(measures);
    pins = Set.copyOf(pins);
  }

  /** All measures: a file gives them by name, and its pins follow. */
  static List<AsWritten> of(Layout layout) {
    return List.of(new AsWritten(layout.measures().keySet(), Set.of()));
  }

  /**
   * Returns what an edit leaves as it is, what is tried first first: all measures, or those that it
   * changed; where it moved a pin by hand, that and the measures it changed.
   */
  public static List<AsWritten> between(Layout before, Layout after) {
    AsWritten changed =
        new AsWritten(
            changed(before.measures(), after.measures()), changed(before.pins(), after.pins()));
    if (!changed.pins.isEmpty()) {
      return List.of(changed);
    }
    return Stream.concat(of(after).stream(), Stream.of(changed)).toList();
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
