package org.longlow.sketcher.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Layout;

/** What can lie on the bench, said as a word and a name: {@code part:tank}, {@code pin:grip}. */
public final class Subjects {

  /** What the machine asks of itself. */
  public static final String DEMANDS = "demands:";

  /** Name, title and notes of the layout. */
  public static final String NAMES = "layout:";

  /** What was measured on the machine that was made. */
  public static final String AS_BUILT = "as-built:";

  private static final Map<String, String> GROUPS = new LinkedHashMap<>();

  static {
    GROUPS.put("part", "parts");
    GROUPS.put("pin", "pins");
    GROUPS.put("person", "crew");
    GROUPS.put("measure", "measures");
    GROUPS.put("tie", "ties");
    GROUPS.put("limit", "limits");
    GROUPS.put("wish", "wishes");
    GROUPS.put("section", "sections");
    GROUPS.put("stance", "stances");
    GROUPS.put("photo", "photos");
    GROUPS.put("dimension", "dimensions");
    GROUPS.put("line", "lines");
    GROUPS.put("stock", "stock");
    GROUPS.put("variant", "variants");
  }

  private Subjects() {}

  /** Gives each word with its group of the document, in the order in which people look. */
  static void each(BiConsumer<String, String> word) {
    GROUPS.forEach(word);
  }

  /** Returns the subject of an entry of the document. */
  public static String of(Entries.Entry entry) {
    return GROUPS.entrySet().stream()
        .filter(g -> g.getValue().equals(entry.group()))
        .map(g -> g.getKey() + ":" + entry.name())
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(entry.group() + " is no group"));
  }

  /** Returns the entry that a subject names, whether or not there is one; empty for the rest. */
  public static Optional<Entries.Entry> entry(String subject) {
    int colon = subject.indexOf(':');
    String group = colon < 0 ? null : GROUPS.get(subject.substring(0, colon));
    return Optional.ofNullable(group).map(g -> new Entries.Entry(g, subject.substring(colon + 1)));
  }

  /** Returns the entry that a subject names, if the layout has it. */
  public static Optional<Entries.Entry> entry(Layout layout, String subject) {
    return entry(subject).filter(e -> Entries.of(layout, e.group()).containsKey(e.name()));
  }
}
