package org.longlow.constraints.document;

import java.util.function.Function;

/**
 * A field of a kind: all that anybody needs to know to read it, write it, describe it or refuse it.
 *
 * @param key its name in files
 * @param what it is, for whoever left it out; empty if it may be left out
 * @param orElse its value where it is left out
 * @param always true if it is written also where it has that value
 * @param shared true if every part has it; such fields come last
 * @param help one sentence
 * @param get its value in a Java value
 */
public record Field<T, V>(
    String key,
    Type<V> type,
    String what,
    V orElse,
    boolean always,
    boolean shared,
    String help,
    Function<? super T, ? extends V> get) {

  public boolean required() {
    return !what.isEmpty();
  }

  public V of(T value) {
    return get.apply(value);
  }
}
