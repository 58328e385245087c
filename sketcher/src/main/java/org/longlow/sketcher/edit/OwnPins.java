package org.longlow.sketcher.edit;

import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;

/** Pins that a part got for itself when it was added: they go once nothing needs them. */
final class OwnPins {

  private OwnPins() {}

  /** Returns what the pin of a part is called that was added under a name. */
  static String name(String part, String word) {
    return Fresh.stem(part) + word;
  }

  /**
   * Returns {@code after} without the pins that a part had for itself and does not use any more, if
   * nothing else names them. A pin that somebody wrote a note on, nailed or gave a name of its own
   * is theirs, and stays.
   */
  static Layout tidied(Layout before, Layout after, String part) {
    Part old = before.parts().get(part);
    Part now = after.parts().get(part);
    if (old == null || now == null) {
      return after;
    }
    Set<String> left = new TreeSet<>(old.pins());
    left.removeAll(now.pins());
    Layout tidy = after;
    for (String pin : left) {
      if (isOwn(tidy, part, pin)) {
        Entries.Without without = Entries.without(tidy, new Entry("pins", pin));
        boolean needed = !without.also().isEmpty() || !without.changed().isEmpty();
        tidy = needed ? tidy : without.layout();
      }
    }
    return tidy;
  }

  private static boolean isOwn(Layout layout, String part, String pin) {
    String stem = Fresh.stem(part);
    return layout.pins().containsKey(pin)
        && pin.startsWith(stem)
        && pin.length() > stem.length()
        && Character.isUpperCase(pin.charAt(stem.length()))
        && !layout.pins().get(pin).nailed()
        && layout.pins().get(pin).note().isEmpty();
  }
}
