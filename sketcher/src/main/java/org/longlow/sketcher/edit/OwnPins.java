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
    Set<String> left = new TreeSet<>(old.ownPins());
    left.removeAll(now.ownPins());
    Layout tidy = after;
    for (String pin : left) {
      tidy = isOwn(tidy, part, pin) ? unlessNeeded(tidy, pin) : tidy;
    }
    return tidy;
  }

  /**
   * Returns {@code after} without the pins, whatever they are called, that only parts used which
   * are gone. One that is nailed or has a note is somebody's, and stays.
   */
  static Layout without(Layout before, Layout after) {
    Set<String> left = new TreeSet<>();
    before.parts().values().stream()
        .filter(p -> !after.parts().containsKey(p.name()))
        .forEach(p -> left.addAll(p.ownPins()));
    Layout tidy = after;
    for (String pin : left) {
      tidy = isPlain(tidy, pin) ? unlessNeeded(tidy, pin) : tidy;
    }
    return tidy;
  }

  private static Layout unlessNeeded(Layout layout, String pin) {
    Entries.Without without = Entries.without(layout, new Entry("pins", pin));
    return without.also().isEmpty() && without.changed().isEmpty() ? without.layout() : layout;
  }

  private static boolean isOwn(Layout layout, String part, String pin) {
    String stem = Fresh.stem(part);
    return pin.startsWith(stem)
        && pin.length() > stem.length()
        && Character.isUpperCase(pin.charAt(stem.length()))
        && isPlain(layout, pin);
  }

  private static boolean isPlain(Layout layout, String pin) {
    return layout.pins().containsKey(pin)
        && !layout.pins().get(pin).nailed()
        && layout.pins().get(pin).note().isEmpty();
  }
}
