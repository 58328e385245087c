package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.longlow.constraints.document.Faults;
import org.longlow.constraints.document.FieldPath;
import org.longlow.constraints.words.DecimalComma;
import org.longlow.constraints.words.Names;

/** Reading and writing by reflection over record components. */
final class Binding {
  private final Faults faults;

  Binding(Faults faults) {
    this.faults = faults;
  }

  /** Returns the value, or null after a fault. */
  Object value(String path, JsonNode node, Type type) {
    if (type instanceof ParameterizedType generic) {
      Type inner = generic.getActualTypeArguments()[0];
      if (generic.getRawType() == Optional.class) {
        return node.isNull() ? Optional.empty() : Optional.ofNullable(value(path, node, inner));
      }
      if (generic.getRawType() == List.class) {
        return list(path, node, inner);
      }
      if (generic.getRawType() == Map.class) {
        return map(path, node, generic.getActualTypeArguments()[1]);
      }
    }
    if (!(type instanceof Class<?> c)) {
      throw new IllegalArgumentException("cannot bind " + type);
    }
    if (mayBeAbsent(type) && node.isNull()) {
      return c == OptionalDouble.class ? OptionalDouble.empty() : null;
    }
    if (c == double.class || c == Double.class || c == OptionalDouble.class) {
      Double number = number(path, node);
      return number == null || c != OptionalDouble.class ? number : OptionalDouble.of(number);
    }
    if (c == int.class || c == Integer.class) {
      return whole(path, node);
    }
    if (c == boolean.class || c == Boolean.class) {
      return node.isBoolean() ? node.booleanValue() : wrong(path, node, "must be true or false");
    }
    if (c == String.class) {
      return node.isTextual() ? node.textValue() : wrong(path, node, "must be text in quotes");
    }
    if (c.isEnum()) {
      return word(path, node, c);
    }
    if (c.isRecord()) {
      return record(path, node, c);
    }
    throw new IllegalArgumentException("cannot bind " + type);
  }

  private Object wrong(String path, JsonNode node, String message) {
    faults.structure(path, Json.shown(node), message, "");
    return null;
  }

  private Double number(String path, JsonNode node) {
    if (!node.isNumber() || !Double.isFinite(node.doubleValue())) {
      faults.structure(
          path,
          Json.shown(node),
          "must be a finite number",
          node.isTextual() ? DecimalComma.advice(node.textValue()).orElse("") : "");
      return null;
    }
    return node.doubleValue();
  }

  private Object whole(String path, JsonNode node) {
    return node.isIntegralNumber() && node.canConvertToInt()
        ? Integer.valueOf(node.intValue())
        : wrong(path, node, "must be a whole number");
  }

  private Object word(String path, JsonNode node, Class<?> type) {
    List<String> words = new ArrayList<>();
    for (Object constant : type.getEnumConstants()) {
      String word = Names.word((Enum<?>) constant);
      if (node.isTextual() && node.textValue().equals(word)) {
        return constant;
      }
      words.add(word);
    }
    DocumentReader.notOneOf(faults, path, node, words);
    return null;
  }

  private Object list(String path, JsonNode node, Type inner) {
    if (!node.isArray()) {
      return wrong(path, node, "must be a list: [ ... ]");
    }
    List<Object> list = new ArrayList<>();
    for (int i = 0; i < node.size(); i++) {
      list.add(present(FieldPath.index(path, i), node.get(i), inner));
    }
    return faults.isEmpty() ? List.copyOf(list) : list;
  }

  private Object map(String path, JsonNode node, Type inner) {
    if (!node.isObject()) {
      return wrong(path, node, "must be an object: { ... }");
    }
    Map<String, Object> map = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> e : node.properties()) {
      map.put(e.getKey(), present(FieldPath.key(path, e.getKey()), e.getValue(), inner));
    }
    return map;
  }

  /** A value inside a list or map, where leaving it out is how to say nothing. */
  private Object present(String path, JsonNode node, Type type) {
    return node.isNull()
        ? wrong(path, node, "is null inside a list or object; give a value or leave it out")
        : value(path, node, type);
  }

  private Object record(String path, JsonNode node, Class<?> type) {
    if (!node.isObject()) {
      return wrong(path, node, "must be an object: { ... }");
    }
    int before = faults.count();
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    Object[] values = new Object[components.length];
    Set<String> known = new LinkedHashSet<>();
    for (int i = 0; i < components.length; i++) {
      String key = components[i].getName();
      known.add(key);
      types[i] = components[i].getType();
      if (node.has(key)) {
        values[i] = value(FieldPath.key(path, key), node.get(key), components[i].getGenericType());
      } else if (mayBeAbsent(components[i].getGenericType())) {
        values[i] = absent(types[i]);
      } else {
        faults.structure(FieldPath.key(path, key), "", "is missing", "add " + Json.quoted(key));
      }
    }
    for (Iterator<String> i = node.fieldNames(); i.hasNext(); ) {
      String key = i.next();
      if (!known.contains(key)) {
        faults.structure(
            FieldPath.key(path, key),
            Json.shown(node.get(key)),
            "is not a known name here",
            Names.advice(key, known, "name"));
      }
    }
    return faults.count() > before ? null : construct(path, type, types, values);
  }

  private Object construct(String path, Class<?> type, Class<?>[] types, Object[] values) {
    try {
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      constructor.setAccessible(true);
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof IllegalArgumentException refusal) {
        faults.meaning(path, "", String.valueOf(refusal.getMessage()), "");
        return null;
      }
      throw new IllegalStateException("cannot make " + type.getName(), e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot make " + type.getName(), e);
    }
  }

  private static boolean mayBeAbsent(Type type) {
    return type == OptionalDouble.class
        || type == Double.class
        || type == Integer.class
        || type == Boolean.class
        || type instanceof ParameterizedType p && p.getRawType() == Optional.class;
  }

  private static Object absent(Class<?> type) {
    if (type == Optional.class) {
      return Optional.empty();
    }
    return type == OptionalDouble.class ? OptionalDouble.empty() : null;
  }

  /** Returns {@code value} as JSON. */
  static JsonNode tree(Object value) {
    if (value == null) {
      return Json.NODES.nullNode();
    }
    if (value instanceof Optional<?> optional) {
      return tree(optional.orElse(null));
    }
    if (value instanceof OptionalDouble optional) {
      return tree(optional.isPresent() ? (Double) optional.getAsDouble() : null);
    }
    if (value instanceof Number number) {
      boolean whole = value instanceof Integer || value instanceof Long;
      return whole
          ? Json.NODES.numberNode(number.longValue())
          : Json.NODES.numberNode(number.doubleValue() + 0.0); // no zero has a sign
    }
    if (value instanceof Boolean flag) {
      return Json.NODES.booleanNode(flag);
    }
    if (value instanceof Enum<?> word) {
      return Json.NODES.textNode(Names.word(word));
    }
    if (value instanceof double[] numbers) {
      var array = Json.NODES.arrayNode();
      for (double number : numbers) {
        array.add(tree(number));
      }
      return array;
    }
    if (value instanceof double[][] rows) {
      var array = Json.NODES.arrayNode();
      for (double[] row : rows) {
        array.add(tree(row));
      }
      return array;
    }
    if (value instanceof Iterable<?> items) {
      var array = Json.NODES.arrayNode();
      items.forEach(item -> array.add(tree(item)));
      return array;
    }
    if (value instanceof Map<?, ?> map) {
      var object = Json.NODES.objectNode();
      map.forEach((key, item) -> object.set(String.valueOf(key), tree(item)));
      return object;
    }
    return value instanceof Record record
        ? components(record)
        : Json.NODES.textNode(value.toString());
  }

  private static JsonNode components(Record record) {
    var object = Json.NODES.objectNode();
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      try {
        var accessor = component.getAccessor();
        accessor.setAccessible(true);
        object.set(component.getName(), tree(accessor.invoke(record)));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException("cannot read " + component, e);
      }
    }
    return object;
  }
}
