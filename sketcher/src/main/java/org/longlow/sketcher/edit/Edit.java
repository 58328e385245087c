package org.longlow.sketcher.edit;

import java.util.Objects;
import java.util.function.UnaryOperator;
import org.longlow.constraints.layout.Layout;

/**
 * A named change of a layout.
 *
 * @param name what the history calls it, such as {@code move backTop}
 * @param change a pure function
 */
public record Edit(String name, UnaryOperator<Layout> change) {
  public Edit {
    Objects.requireNonNull(change, "change of edit " + name);
    if (name == null || name.isBlank()) {
      throw new IllegalArgumentException("an edit needs a name for the history");
    }
  }

  /** Returns the edit that ends at {@code layout}, whatever was before. */
  public static Edit to(String name, Layout layout) {
    return new Edit(name, before -> layout);
  }

  public Layout applied(Layout layout) {
    return change.apply(layout);
  }
}
