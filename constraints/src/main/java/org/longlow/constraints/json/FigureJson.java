package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Faults;

/**
 * Binds records to JSON objects by the names of their components.
 *
 * <p>A component may be a {@code double}, {@code int}, {@code boolean}, {@code String}, enum (its
 * word in lower case), another record, or a {@code List} or {@code Map} (of text to these) of them.
 * It must be there unless it is an {@code Optional}, an {@code OptionalDouble} or a boxed {@code
 * Double}, {@code Integer} or {@code Boolean}; those become empty or null where the key is absent
 * or null. A record that refuses its values with an {@link IllegalArgumentException} makes a fault.
 */
public final class FigureJson {

  private static final String WANTED =
      "write a JSON object with what the figure takes; without --input it says what that is";

  private FigureJson() {}

  /** What reading gives: the record, or everything wrong with the JSON object. */
  public sealed interface Result<R> {

    /** A sound input. */
    record Bound<R>(R value) implements Result<R> {}

    /** An input with faults; never empty. */
    record Refused<R>(List<Fault> faults) implements Result<R> {
      public Refused {
        faults = List.copyOf(faults);
      }
    }
  }

  /** Reads {@code json} as a {@code type}; its content never makes this throw. */
  public static <R extends Record> Result<R> read(String json, Class<R> type) {
    Faults faults = new Faults();
    Optional<JsonNode> root = Json.parse(json, faults, WANTED);
    Object value = root.isPresent() ? new Binding(faults).value("$", root.get(), type) : null;
    return faults.isEmpty()
        ? new Result.Bound<>(type.cast(value))
        : new Result.Refused<>(faults.list());
  }

  /**
   * Returns a record or a map of names as a JSON object, in its order, doubles at full precision,
   * absent values and numbers that are not finite as null.
   */
  public static String write(Object answer) {
    return Json.pretty(Binding.tree(answer), 100, 1);
  }
}
