package org.longlow.constraints.document;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TyreFigures;

/**
 * What is known of a layout while it is checked: its names and quantities, and how it is written.
 */
final class Surroundings {

  final Faults faults;
  final Quantities quantities;
  private final Written written;
  private final Map<Referent, Collection<String>> names;
  private final Map<String, Part> parts = new HashMap<>();

  /**
   * @param written how the file has it; null where there is no file
   */
  Surroundings(Layout layout, Faults faults, Written written) {
    this.faults = faults;
    this.written = written;
    this.quantities = new Quantities(faults, layout.measures().keySet(), TyreFigures.of(layout));
    this.names = ReferenceNames.in(layout);
  }

  /** Returns the names that {@code target} may have here. */
  Collection<String> names(Referent target) {
    return names.get(target);
  }

  /** Returns the part {@code name} once it was checked. */
  Part part(String name) {
    return parts.get(name);
  }

  /** Takes a part that was checked. */
  void put(String name, Part part) {
    parts.put(name, part);
  }

  /** Returns whether the file writes out what stands at {@code path}, though it be the usual. */
  boolean isSaid(String path) {
    return written != null && written.said().contains(path);
  }

  /** Returns whether what stands at {@code path} is missing or could not be read. */
  boolean isUnread(String path) {
    return written != null && written.unread().contains(path);
  }

  /** Returns whether a value of {@code kind} is written in its short form. */
  <T> boolean isShort(Kind<T> kind, String path, T value) {
    return written == null
        ? kind.isShort(value)
        : kind.shortField().isPresent() && !written.objects().contains(path);
  }
}
