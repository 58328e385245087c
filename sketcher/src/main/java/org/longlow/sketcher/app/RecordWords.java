package org.longlow.sketcher.app;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a record looks like as JSON, with words for values. */
final class RecordWords {

  private RecordWords() {}

  /** Returns it, such as {@code {"radiusMm": number, "rollDeg": number or nothing}}. */
  static String of(Class<?> record) {
    return Stream.of(record.getRecordComponents())
        .map(RecordWords::field)
        .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String field(RecordComponent component) {
    return '"' + component.getName() + "\": " + value(component.getGenericType());
  }

  private static String value(Type type) {
    if (type instanceof ParameterizedType generic) {
      Type[] inner = generic.getActualTypeArguments();
      Class<?> raw = (Class<?>) generic.getRawType();
      if (raw == Optional.class) {
        return value(inner[0]) + " or nothing";
      }
      if (raw == List.class) {
        return "[" + value(inner[0]) + ", ...]";
      }
      if (raw == Map.class) {
        return "{name: " + value(inner[1]) + ", ...}";
      }
    }
    Class<?> plain = (Class<?>) type;
    if (plain.isRecord()) {
      return of(plain);
    }
    if (plain == String.class) {
      return "text";
    }
    return plain == Boolean.class || plain == boolean.class ? "true or false" : "number";
  }
}
