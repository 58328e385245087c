package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.longlow.constraints.formula.Dim;

/**
 * A kind of thing in the document, described once: its fields, how they make a Java value, and what
 * must hold between them. Reader, writer, schema, forms and checks are loops over this.
 *
 * @param <T> the Java value
 */
public final class Kind<T> {

  /**
   * Makes a value, asking for each field where its constructor needs it. Run once with usual values
   * it tells which fields there are; the compiler sees to it that none is forgotten.
   */
  public interface Shape<T> {
    T of(Source<T> source);
  }

  /** Reports what does not hold between the fields of a value. */
  public interface Rule<T> {
    void check(T value, Spot at);
  }

  /** Tells the dimension of a measure, where it is known. */
  public interface Dims extends Function<String, Optional<Dim>> {}

  /** Finds the kind with what only the value tells, such as the dimension of its quantities. */
  public interface Exactly<T> {
    Kind<T> of(String called, T value, Dims dims);
  }

  private final String name;
  private final String help;
  private final Shape<T> shape;
  private final List<Field<T, ?>> fields = new ArrayList<>();
  private final List<Rule<T>> rules = new ArrayList<>();
  private String shortKey = "";
  private String decidedBy = "";
  private final Map<String, List<String>> together = new HashMap<>();
  private final Map<String, List<String>> clears = new HashMap<>();
  private Exactly<T> exactly = (called, value, dims) -> this;

  private Kind(String name, String help, Shape<T> shape) {
    this.name = name;
    this.help = help;
    this.shape = shape;
    List<Field<T, ?>> last = new ArrayList<>();
    shape.of(
        new Source<T>() {
          @Override
          public String name() {
            return "";
          }

          @Override
          public <V> V of(Field<T, V> field) {
            (field.shared() ? last : fields).add(field);
            return field.orElse();
          }
        });
    fields.addAll(last);
  }

  /**
   * @param name in the schema
   * @param help one sentence
   */
  static <T> Kind<T> of(String name, String help, Shape<T> shape) {
    return new Kind<>(name, help, shape);
  }

  /** Adds a rule between fields. */
  Kind<T> rule(Rule<T> rule) {
    rules.add(rule);
    return this;
  }

  /** Lets the value of field {@code key} stand for an object that says nothing else. */
  Kind<T> shortAs(String key) {
    shortKey = key;
    return this;
  }

  /** Makes field {@code key} the one without which nothing can be said about the value. */
  Kind<T> decidedBy(String key) {
    decidedBy = key;
    return this;
  }

  /** Makes fields stand all or none. */
  Kind<T> together(String... keys) {
    List.of(keys).forEach(key -> together.put(key, List.of(keys)));
    return this;
  }

  /** Takes out what other fields say once field {@code key} is given a value. */
  Kind<T> clearing(String key, String... others) {
    clears.put(key, List.of(others));
    return this;
  }

  Kind<T> exactly(Exactly<T> other) {
    exactly = other;
    return this;
  }

  public String name() {
    return name;
  }

  public String help() {
    return help;
  }

  /** The fields, in the order in which files have them. */
  public List<Field<T, ?>> fields() {
    return fields;
  }

  public Field<T, ?> field(String key) {
    return fields.stream().filter(f -> f.key().equals(key)).findFirst().orElseThrow();
  }

  List<Rule<T>> rules() {
    return rules;
  }

  /** The field that may stand alone for the whole, if there is one. */
  public Optional<Field<T, ?>> shortField() {
    return shortKey.isEmpty() ? Optional.empty() : Optional.of(field(shortKey));
  }

  public String decidedBy() {
    return decidedBy;
  }

  /** Returns the fields that stand all or none with one, and that one; empty if it stands alone. */
  public List<String> togetherWith(String key) {
    return together.getOrDefault(key, List.of());
  }

  /** Returns the fields that say nothing any more once one is given a value. */
  List<String> clearedBy(String key) {
    return clears.getOrDefault(key, List.of());
  }

  Kind<T> exactly(String called, T value, Dims dims) {
    return exactly.of(called, value, dims);
  }

  /** Returns whether {@code value} says nothing but its short field. */
  public boolean isShort(T value) {
    return !shortKey.isEmpty()
        && fields.stream()
            .allMatch(f -> f.key().equals(shortKey) || f.of(value).equals(f.orElse()));
  }

  /**
   * Makes a value.
   *
   * @param values by key, each of its field's type; what is not there has its usual value
   */
  public T make(String called, Map<String, ?> values) {
    return shape.of(
        new Source<T>() {
          @Override
          public String name() {
            return called;
          }

          @Override
          @SuppressWarnings("unchecked")
          public <V> V of(Field<T, V> field) {
            return values.containsKey(field.key()) ? (V) values.get(field.key()) : field.orElse();
          }
        });
  }

  /** Returns {@code value} with each field changed by {@code change}. */
  public T mapped(String called, T value, BiFunction<Field<T, ?>, Object, Object> change) {
    Map<String, Object> values = new HashMap<>();
    for (Field<T, ?> field : fields) {
      values.put(field.key(), change.apply(field, field.of(value)));
    }
    return make(called, values);
  }
}
