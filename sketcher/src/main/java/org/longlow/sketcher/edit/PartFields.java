package org.longlow.sketcher.edit;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;

/**
 * The quantities of a part, found in its records, so that a part with new quantities needs no new
 * code here. Outline vertices are left out: they are drawn, not typed.
 */
public final class PartFields {

  private PartFields() {}

  /**
   * One quantity of a part.
   *
   * @param path where it is, such as {@code layers.1.thickness}; base and spread are left out
   * @param label for people, such as {@code layer 2 thickness}
   * @param formula as the user wrote it
   */
  public record Field(String path, String label, Formula formula) {}

  /** Returns the quantities of {@code part}, in the order of its records. */
  public static List<Field> of(Part part) {
    List<Field> fields = new ArrayList<>();
    collect(part, "", "", fields);
    return fields;
  }

  private static void collect(Object record, String path, String label, List<Field> fields) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      Object value = read(record, component);
      String name = component.getName();
      boolean inner = name.equals("base") || name.equals("spread") || name.equals("frame");
      String at = inner ? path + name + "." : path + name;
      String said = inner ? label : label + words(name);
      add(inner, value, at, said, fields);
    }
  }

  private static void add(boolean inner, Object value, String at, String said, List<Field> fields) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(v -> add(inner, v, at, said, fields));
    } else if (value instanceof Formula formula) {
      fields.add(new Field(at, said, formula));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        if (list.get(i) instanceof Record r) {
          collect(r, at + "." + i + ".", "layer " + (i + 1) + " ", fields);
        }
      }
    } else if (inner && value instanceof Record r && !(value instanceof Outline)) {
      collect(r, at, said, fields);
    }
  }

  /**
   * Returns the part with one quantity replaced.
   *
   * @throws IllegalArgumentException if it has none at {@code path}
   */
  public static Part with(Part part, String path, Formula formula) {
    return (Part) replaced(part, List.of(path.split("\\.")), formula, path);
  }

  private static Object replaced(Object value, List<String> path, Formula formula, String whole) {
    if (path.isEmpty()) {
      return formula;
    }
    if (value instanceof Optional<?> optional) {
      return optional.map(v -> replaced(v, path, formula, whole));
    }
    if (value instanceof List<?> list) {
      List<Object> copy = new ArrayList<>(list);
      int i = Integer.parseInt(path.get(0));
      copy.set(i, replaced(list.get(i), path.subList(1, path.size()), formula, whole));
      return copy;
    }
    if (!(value instanceof Record)) {
      throw new IllegalArgumentException("there is no quantity at " + whole);
    }
    RecordComponent[] components = value.getClass().getRecordComponents();
    Object[] values = new Object[components.length];
    Class<?>[] types = new Class<?>[components.length];
    boolean found = false;
    for (int i = 0; i < components.length; i++) {
      values[i] = read(value, components[i]);
      types[i] = components[i].getType();
      if (components[i].getName().equals(path.get(0))) {
        List<String> rest = path.subList(1, path.size());
        // An optional quantity has no step of its own in the path.
        values[i] =
            rest.isEmpty() && values[i] instanceof Optional<?>
                ? Optional.of(formula)
                : replaced(values[i], rest, formula, whole);
        found = true;
      }
    }
    if (!found) {
      throw new IllegalArgumentException("there is no quantity at " + whole);
    }
    try {
      Constructor<?> constructor = value.getClass().getDeclaredConstructor(types);
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException(whole + ": " + e.getCause().getMessage(), e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("records have a public constructor: " + whole, e);
    }
  }

  private static Object read(Object record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("records have public accessors: " + component, e);
    }
  }

  /** Returns a name in camel case as words. */
  static String words(String name) {
    return name.replaceAll("([a-z])([A-Z0-9])", "$1 $2").toLowerCase(Locale.ROOT);
  }
}
