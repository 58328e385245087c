package org.longlow.constraints.document;

import java.util.Optional;
import org.longlow.constraints.layout.Part;

/** What a pin is to a part, in the words of its description. */
public final class PinWords {

  private PinWords() {}

  /**
   * Returns it, such as {@code the front or upper end of the board}; empty where the part does not
   * need just that pin by a field of its own.
   */
  public static Optional<String> of(Part part, String pin) {
    return fields(part)
        .filter(f -> pin.equals(f.of(part)) || isThere(f, part, pin))
        .findFirst()
        .map(PinWords::words);
  }

  /** Returns what the pin is that a field of a part names; empty where it names none. */
  public static Optional<String> ofField(Part part, String key) {
    return fields(part).filter(f -> f.key().equals(key)).findFirst().map(PinWords::words);
  }

  private static java.util.stream.Stream<Field<Part, ?>> fields(Part part) {
    Kind<Part> kind = PartKinds.PART.kind(part);
    return kind.fields().stream().filter(f -> f.what().startsWith(Source.PIN_OF));
  }

  private static boolean isThere(Field<Part, ?> field, Part part, String pin) {
    return field.of(part) instanceof Optional<?> named && named.filter(pin::equals).isPresent();
  }

  private static String words(Field<?, ?> field) {
    return field.what().substring(Source.PIN_OF.length());
  }
}
