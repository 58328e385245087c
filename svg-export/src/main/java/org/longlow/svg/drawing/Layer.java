package org.longlow.svg.drawing;

import java.util.List;
import java.util.Objects;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * A named group of marks, drawn in order.
 *
 * @param id starts with a letter, then letters, digits, dot, hyphen or underscore; used as an id in
 *     files
 * @param title what a person calls the layer
 */
public record Layer(String id, String title, List<Mark> marks) {

  public Layer {
    if (id == null || !id.matches("[A-Za-z][A-Za-z0-9._-]*")) {
      throw new IllegalArgumentException(
          "layer id '" + id + "' must start with a letter and hold only letters, digits, . _ -");
    }
    Objects.requireNonNull(title, "title of layer " + id);
    marks = List.copyOf(marks);
  }

  /** Returns the layer with every mark transformed. */
  public Layer transformed(AffineTransformation t) {
    return new Layer(id, title, marks.stream().map(m -> m.transformed(t)).toList());
  }
}
