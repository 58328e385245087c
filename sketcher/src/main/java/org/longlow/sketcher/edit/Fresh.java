package org.longlow.sketcher.edit;

import java.util.Collection;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Layout;

/** Names for what is new in a layout. */
final class Fresh {

  private Fresh() {}

  /** Returns the first of {@code wanted}, wanted2, wanted3 ... that is not taken. */
  static String name(Collection<String> taken, String wanted) {
    String name = wanted;
    for (int n = 2; taken.contains(name); n++) {
      name = wanted + n;
    }
    return name;
  }

  /** As {@link #name(Collection, String)} among the entries of a group. */
  static String name(Layout layout, String group, String wanted) {
    return name(Entries.of(layout, group).keySet(), wanted);
  }

  /** Returns a name without the number that made it a fresh one. */
  static String stem(String name) {
    String stem = name.replaceFirst("\\d+$", "");
    return stem.isEmpty() ? name : stem;
  }
}
