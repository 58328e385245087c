package org.longlow.constraints.mend;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;

/**
 * Fields of a layout typed over, and entries left out.
 *
 * @param texts what is typed, by where it stands: the path from the top by keys, names and indices
 * @param gone entries that are let go of
 */
public record Rewrite(Map<List<String>, String> texts, List<Entry> gone) {

  public Rewrite {
    texts = new LinkedHashMap<>(texts);
    gone = List.copyOf(gone);
  }

  Rewrite(Map<List<String>, String> texts) {
    this(texts, List.of());
  }

  static Rewrite without(Entry entry) {
    return new Rewrite(Map.of(), List.of(entry));
  }

  /** Returns the first entry that it changes or lets go of. */
  public Entry about() {
    if (!gone.isEmpty()) {
      return gone.get(0);
    }
    List<String> first = texts.keySet().iterator().next();
    return new Entry(first.get(0), first.get(1));
  }

  /** Returns {@code layout} with these fields as typed and without what is let go of. */
  public Layout on(Layout layout) {
    Layout now = layout;
    for (Map.Entry<List<String>, String> typed : texts.entrySet()) {
      now = Typing.typed(now, typed.getValue(), typed.getKey());
    }
    for (Entry entry : gone) {
      now = Entries.without(now, entry).layout();
    }
    return now;
  }
}
