package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.OutOfRange;

/** A value of a document put in the place of another, wherever it stands. */
public final class Change {

  private static final Pattern INDEX = Pattern.compile("\\d{1,5}");

  /** What stands at a place instead. */
  @FunctionalInterface
  interface At {
    /**
     * @param field the field that the place is in or is
     * @param type of the value, with {@link Type.Maybe} where it may be absent
     */
    Object instead(Field<?, ?> field, Type<?> type, Object old);
  }

  private final At leaf;
  private final Kind.Dims dims;
  private Field<?, ?> field;

  private Change(At leaf, Kind.Dims dims) {
    this.leaf = leaf;
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
    return at(
        layout,
        List.of(path),
        (field, type, old) -> type instanceof Type.Maybe ? Optional.of(value) : value);
  }

  /** Returns {@code layout} with what stands at {@code path} replaced. */
  static Layout at(Layout layout, List<String> path, At leaf) {
    Kind.Dims dims = name -> Measures.known(layout, name);
    return new Change(leaf, dims).in(Document.LAYOUT, "", layout, path);
  }

  private <T> T in(Kind<T> general, String name, T owner, List<String> path) {
    Kind<T> kind = general.exactly(name, owner, dims);
    String key = path.get(0);
    Field<T, ?> own =
        kind.fields().stream()
            .filter(f -> f.key().equals(key))
            .findFirst()
            .orElseThrow(() -> new OutOfRange("the layout has no " + String.join(" ", path)));
    field = own;
    Object now = at(own.type(), name, own.of(owner), path);
    List<String> gone = Optional.empty().equals(now) ? kind.togetherWith(key) : List.of();
    List<String> cleared = Objects.equals(own.orElse(), now) ? List.of() : kind.clearedBy(key);
    return kind.mapped(
        name,
        owner,
        (f, old) ->
            f.key().equals(key) || gone.contains(f.key())
                ? now
                : cleared.contains(f.key()) ? f.orElse() : old);
  }

  /** The value for the place at which {@code path} has arrived. */
  private Object at(Type<?> type, String name, Object old, List<String> path) {
    List<String> rest = path.subList(1, path.size());
    if (rest.isEmpty()) {
      return leaf.instead(field, type, old);
    }
    if (type instanceof Type.Group<?> group) {
      Map<Object, Object> entries = new LinkedHashMap<>((Map<?, ?>) old);
      if (!entries.containsKey(rest.get(0))) {
        throw new OutOfRange("the layout has no " + String.join(" ", path));
      }
      entries.compute(
          rest.get(0),
          (key, entry) -> at(SaidOf.item(group, rest.get(0), dims), rest.get(0), entry, rest));
      return entries;
    }
    if (type instanceof Type.Nested<?> nested) {
      return nested(nested.kind(), name, old, rest);
    }
    if (type instanceof Type.Choice<?> choice) {
      return chosen(choice, name, old, rest);
    }
    if (type instanceof Type.Outlines outlines) {
      return old instanceof Outline.Traced
          ? traced(outlines, name, (Outline.Traced) old, rest)
          : nested(outlines.drawn(), name, old, rest);
    }
    if (old instanceof Vertex vertex) {
      return vertex(vertex, rest.get(0));
    }
    if (old instanceof List<?> list && INDEX.matcher(rest.get(0)).matches()) {
      List<Object> copy = new ArrayList<>(list);
      int i = Integer.parseInt(rest.get(0));
      if (i >= copy.size()) {
        throw new OutOfRange("the layout has no " + String.join(" ", path));
      }
      copy.set(
          i,
          at(type instanceof Type.ListOf<?> of ? of.item() : Type.LENGTH, "", copy.get(i), rest));
      return copy;
    }
    throw new OutOfRange("the layout has no " + String.join(" ", path));
  }

  /** The kind knows what the file says; the vertices come from where that points. */
  private Outline traced(
      Type.Outlines outlines, String name, Outline.Traced old, List<String> path) {
    Outline.Traced now = nested(outlines.traced(), name, old, path);
    return now.as(old.vertices(), old.closed());
  }

  /** A vertex is at x and z, or on a pin. */
  private Vertex vertex(Vertex old, String key) {
    boolean onPin = old.pin() != null;
    if (key.equals("pin")) {
      String pin = (String) leaf.instead(field, Type.ref(Referent.PIN), onPin ? old.pin() : "");
      return pin.isEmpty() ? old : old.on(pin);
    } else if (key.equals(Type.Vertices.SMOOTH)) {
      boolean smooth = (Boolean) leaf.instead(field, Type.FLAG, old.smooth());
      return old.smooth(smooth);
    } else if (key.equals("left") || key.equals("right")) {
      return old.reaching(reach(old.reach(), key.equals("left")));
    } else if (onPin || !key.equals("0") && !key.equals("1")) {
      throw new OutOfRange("this vertex has no " + key);
    }
    boolean isX = key.equals("0");
    Formula now = (Formula) leaf.instead(field, Type.LENGTH, isX ? old.x() : old.z());
    return old.at(isX ? now : old.x(), isX ? old.z() : now);
  }

  @SuppressWarnings("unchecked")
  private Optional<HalfBreadths> reach(Optional<HalfBreadths> old, boolean isLeft) {
    Optional<Formula> left = old.flatMap(HalfBreadths::left);
    Optional<Formula> right = old.flatMap(HalfBreadths::right);
    Type<Optional<Formula>> type = new Type.Maybe<>(Type.LENGTH);
    Optional<Formula> now = (Optional<Formula>) leaf.instead(field, type, isLeft ? left : right);
    return Optional.of(isLeft ? new HalfBreadths(now, right) : new HalfBreadths(left, now))
        .filter(reach -> !reach.isEmpty());
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
