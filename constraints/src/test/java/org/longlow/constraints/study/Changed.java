package org.longlow.constraints.study;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;

/** Values with something of them changed, as no file may have it. */
public final class Changed {

  private Changed() {}

  /**
   * A record with some of its components changed.
   *
   * @param values by the names of components; others are kept
   */
  public static <R extends Record> R with(R record, Map<String, ?> values) {
    RecordComponent[] components = record.getClass().getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    Object[] all = new Object[components.length];
    Map<String, Object> left = new LinkedHashMap<>(values);
    try {
      for (int i = 0; i < components.length; i++) {
        String name = components[i].getName();
        types[i] = components[i].getType();
        all[i] =
            left.containsKey(name) ? left.remove(name) : components[i].getAccessor().invoke(record);
      }
      if (!left.isEmpty()) {
        throw new IllegalArgumentException(record.getClass() + " has no " + left.keySet());
      }
      @SuppressWarnings("unchecked")
      Constructor<R> made = (Constructor<R>) record.getClass().getDeclaredConstructor(types);
      return made.newInstance(all);
    } catch (ReflectiveOperationException e) {
      throw new IllegalArgumentException(record.toString(), e);
    }
  }

  /** A layout that lacks a part, as while somebody draws it: a file without a wheel is refused. */
  public static Layout without(Layout layout, String part) {
    Map<String, Part> parts = new LinkedHashMap<>(layout.parts());
    if (parts.remove(part) == null) {
      throw new IllegalArgumentException("no part " + part);
    }
    return with(layout, Map.of("parts", parts));
  }
}
