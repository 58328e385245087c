package org.longlow.constraints.document;

import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.formula.Formula;

/** Gives a {@link Kind.Shape} its fields. */
interface Source<T> {

  /** How the description of a field that needs a pin begins. */
  String PIN_OF = "the pin of ";

  /** The user's name for it. */
  String name();

  <V> V of(Field<T, V> field);

  /**
   * A field that must be there; where it is not, {@link Type#lost} stands in.
   *
   * @param what it is, for whoever left it out
   */
  default <V> V need(
      String key, Type<V> type, String what, Function<? super T, V> get, String help) {
    return of(new Field<>(key, type, what, type.lost(), true, false, help, get));
  }

  default <V> V need(String key, Type.Word<V> type, Function<? super T, V> get, String help) {
    return need(key, type, "one of " + type.words(), get, help);
  }

  default Formula need(
      String key, Type.Quantity type, Function<? super T, Formula> get, String help) {
    return need(key, type, type.said(), get, help);
  }

  /** A pin that must be there. */
  default String pin(String key, String what, Function<? super T, String> get, String help) {
    return need(key, Type.ref(Referent.PIN), PIN_OF + what, get, help);
  }

  default <V> Optional<V> may(
      String key, Type<V> type, Function<? super T, Optional<V>> get, String help) {
    return or(key, new Type.Maybe<>(type), Optional.empty(), get, help);
  }

  default boolean flag(String key, Function<? super T, Boolean> get, String help) {
    return or(key, Type.FLAG, false, get, help);
  }

  default String text(String key, Function<? super T, String> get, String help) {
    return or(key, Type.TEXT, "", get, help);
  }

  /** A remark for people. */
  default String note(Function<? super T, String> get) {
    return text("note", get, "For people.");
  }

  /** A field that has the value {@code orElse} where it is left out. */
  default <V> V or(String key, Type<V> type, V orElse, Function<? super T, V> get, String help) {
    return of(new Field<>(key, type, "", orElse, false, false, help, get));
  }

  /** As {@link #or}, and files say it even where it has that value. */
  default <V> V orSaid(
      String key, Type<V> type, V orElse, Function<? super T, V> get, String help) {
    return of(new Field<>(key, type, "", orElse, true, false, help, get));
  }
}
