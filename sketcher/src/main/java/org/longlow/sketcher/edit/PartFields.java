package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Part;

/**
 * The quantities of a part that can be typed over, as its kind describes them. Outline vertices are
 * left out: they are drawn, not typed.
 */
public final class PartFields {

  private PartFields() {}

  /**
   * One quantity of a part.
   *
   * @param path where in the part it is, such as layers, 1, thickness
   * @param label for people, such as {@code layer 2 thickness}
   * @param formula as the user wrote it
   * @param help one sentence
   */
  public record Field(List<String> path, String label, Formula formula, String help) {}

  /** Returns the quantities of {@code part} that it has, in the order of its kind. */
  public static List<Field> of(Part part) {
    List<Field> fields = new ArrayList<>();
    collect(Document.PART.kind(part), part, List.of(), "", fields);
    return fields;
  }

  private static <T> void collect(
      Kind<T> kind, T owner, List<String> path, String label, List<Field> into) {
    for (org.longlow.constraints.document.Field<T, ?> field : kind.fields()) {
      Object value = field.of(owner);
      if (value instanceof Optional<?> optional) {
        value = optional.orElse(null);
      }
      List<String> at = then(path, field.key());
      if (value instanceof Formula formula) {
        into.add(new Field(at, label + words(field.key()), formula, field.help()));
      } else if (field.type() instanceof Type.Nested<?> nested) {
        inner(nested, value, at, label, into);
      } else if (field.type() instanceof Type.ListOf<?> list
          && list.item() instanceof Type.Nested<?> item) {
        int i = 0;
        for (Object one : (List<?>) value) {
          inner(item, one, then(at, Integer.toString(i)), "layer " + ++i + " ", into);
        }
      }
    }
  }

  @SuppressWarnings("unchecked")
  private static <T> void inner(
      Type.Nested<T> type, Object value, List<String> path, String label, List<Field> into) {
    collect(type.kind(), (T) value, path, label, into);
  }

  private static List<String> then(List<String> path, String step) {
    List<String> longer = new ArrayList<>(path);
    longer.add(step);
    return List.copyOf(longer);
  }

  /** Returns a name in camel case as words. */
  static String words(String name) {
    return name.replaceAll("([a-z])([A-Z0-9])", "$1 $2").toLowerCase(Locale.ROOT);
  }
}
