package org.longlow.sketcher.edit;

import java.util.Objects;
import java.util.function.UnaryOperator;
import org.longlow.constraints.layout.Layout;

/**
 * A named change of a layout: of whichever it is given, since another edit may have come first.
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

  public Layout applied(Layout layout) {
    return change.apply(layout);
  }
}
