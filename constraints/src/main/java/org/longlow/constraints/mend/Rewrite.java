package org.longlow.constraints.mend;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;

/**
 * Fields of a layout typed over.
 *
 * @param texts what is typed, by where it stands: the path from the top by keys, names and indices
 */
public record Rewrite(Map<List<String>, String> texts) {

  public Rewrite {
    texts = new LinkedHashMap<>(texts);
  }

  /** Returns {@code layout} with these fields as typed. */
  public Layout on(Layout layout) {
    Layout now = layout;
    for (Map.Entry<List<String>, String> typed : texts.entrySet()) {
      now = Typing.typed(now, typed.getValue(), typed.getKey());
    }
    return now;
  }
}
