package org.longlow.sketcher.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.edit.Several;
import org.longlow.sketcher.edit.Subjects;

/**
 * What is picked, in the order of picking; the last of it lies on the bench.
 *
 * @param subjects such as {@code part:tank}, each once
 */
public record Selection(List<String> subjects) {

  /** Nothing: the whole machine lies on the bench. */
  public static final Selection NONE = new Selection(List.of());

  public Selection {
    subjects = List.copyOf(new LinkedHashSet<>(subjects));
  }

  /** Returns one thing picked; empty for none. */
  public static Selection of(String subject) {
    return subject.isEmpty() ? NONE : new Selection(List.of(subject));
  }

  /** Returns what lies on the bench; empty if nothing is picked. */
  public String last() {
    return subjects.isEmpty() ? "" : subjects.get(subjects.size() - 1);
  }

  /** Returns this with a thing picked as well, or without it if it was. */
  public Selection toggled(String subject) {
    List<String> other = new ArrayList<>(subjects);
    if (!other.remove(subject)) {
      other.add(subject);
    }
    return new Selection(other);
  }

  /** Returns this and more. */
  public Selection with(Collection<String> more) {
    List<String> all = new ArrayList<>(subjects);
    all.addAll(more);
    return new Selection(all);
  }

  /** Returns what of this a layout still has. */
  public Selection in(Layout layout) {
    return new Selection(
        subjects.stream().filter(s -> Subjects.entry(layout, s).isPresent()).toList());
  }

  public List<String> parts() {
    return named("part:");
  }

  /** Returns the pins that are picked themselves. */
  public List<String> pins() {
    return named("pin:");
  }

  /** Returns the pins picked and those of the parts picked. */
  public Set<String> allPins(Layout layout) {
    Set<String> pins = new LinkedHashSet<>(pins());
    pins.addAll(Several.pins(layout, parts()));
    return pins;
  }

  /** Returns it as entries of the document. */
  public List<Entry> entries() {
    return subjects.stream().flatMap(s -> Subjects.entry(s).stream()).toList();
  }

  private List<String> named(String kind) {
    return subjects.stream()
        .filter(s -> s.startsWith(kind))
        .map(s -> s.substring(kind.length()))
        .toList();
  }
}
