package org.longlow.sketcher.fx;

import java.util.Locale;
import org.longlow.sketcher.edit.AlsoCalled;

/**
 * Something that can be done in the window: it stands in the list of keys and is found by its
 * words.
 *
 * @param words what it does, as said on its button or in the list
 * @param keys by which keys, as people read them; empty for none
 * @param run does it
 */
record Deed(String words, String keys, Runnable run) {

  /** Returns whether all that was typed is in its words, or in those it is also called by. */
  boolean matches(String typed) {
    return AlsoCalled.matches(words.toLowerCase(Locale.ROOT), typed);
  }
}
