package org.longlow.constraints.document;

import java.util.List;
import java.util.Optional;

/** Groups of what is said of things that the document has elsewhere, by their names. */
final class SaidOf {

  private SaidOf() {}

  static <V> Type.Group<V> each(Referent to, Type<V> item) {
    return new Type.Group<>(to.word(), Naming.REFERENCES, item, List.of(), Optional.of(to));
  }

  /** Returns the type of one entry of any group: what is said of a measure has its dimension. */
  static Type<?> item(Type.Group<?> group, String key, Kind.Dims dims) {
    boolean ofMeasure = group.to().filter(Referent.MEASURE::equals).isPresent();
    return ofMeasure && group.item() instanceof Type.Quantity
        ? dims.apply(key).<Type<?>>map(Type::quantity).orElse(group.item())
        : group.item();
  }
}
