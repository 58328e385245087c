package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.OutOfRange;

/** A value of a document put in the place of another, wherever it stands. */
public final class Change {

  private final Object to;
  private final Kind.Dims dims;

  private Change(Object to, Kind.Dims dims) {
    this.to = to;
    this.dims = dims;
  }

  /**
   * Returns {@code layout} with one value replaced, as Java has it; {@link LayoutFaults} tells
   * whether it can be.
   *
   * @param value of the Java type that the field at {@code path} has; what may be absent comes bare
   * @param path from the top by keys, names and indices, such as ties, baseline, is
   * @throws OutOfRange if the layout has no such place
   */
  public static Layout set(Layout layout, Object value, String... path) {
    Kind.Dims dims =
        name -> Optional.ofNullable(layout.measures().get(name)).map(measure -> measure.dim());
    return new Change(value, dims).in(Document.LAYOUT, "", layout, List.of(path));
  }

  private <T> T in(Kind<T> general, String name, T owner, List<String> path) {
    Kind<T> kind = general.exactly(name, owner, dims);
    String key = path.get(0);
    if (kind.fields().stream().noneMatch(f -> f.key().equals(key))) {
      throw new OutOfRange("the layout has no " + String.join(" ", path));
    }
    return kind.mapped(
        name,
        owner,
        (field, old) -> field.key().equals(key) ? at(field.type(), name, old, path) : old);
  }

  /** The value for the place at which {@code path} has arrived. */
  private Object at(Type<?> type, String name, Object old, List<String> path) {
    List<String> rest = path.subList(1, path.size());
    if (rest.isEmpty()) {
      return type instanceof Type.Maybe ? Optional.of(to) : to;
    }
    if (type instanceof Type.Group<?> group) {
      Map<Object, Object> entries = new LinkedHashMap<>((Map<?, ?>) old);
      if (!entries.containsKey(rest.get(0))) {
        throw new OutOfRange("the layout has no " + String.join(" ", path));
      }
      entries.compute(rest.get(0), (key, entry) -> at(group.item(), rest.get(0), entry, rest));
      return entries;
    }
    if (type instanceof Type.Nested<?> nested) {
      return nested(nested.kind(), name, old, rest);
    }
    if (type instanceof Type.Choice<?> choice) {
      return chosen(choice, name, old, rest);
    }
    if (old instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list);
      int i = Integer.parseInt(rest.get(0));
      copy.set(
          i,
          at(type instanceof Type.ListOf<?> of ? of.item() : Type.LENGTH, "", copy.get(i), rest));
      return copy;
    }
    throw new OutOfRange("the layout has no " + String.join(" ", path));
  }

  @SuppressWarnings("unchecked")
  private <T> T nested(Kind<T> kind, String name, Object old, List<String> path) {
    return in(kind, name, (T) old, path);
  }

  @SuppressWarnings("unchecked")
  private <V> V chosen(Type.Choice<V> choice, String name, Object old, List<String> path) {
    return in(choice.kind((V) old), name, (V) old, path);
  }
}
