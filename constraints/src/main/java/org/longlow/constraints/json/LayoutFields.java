package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;

/** A layout as a list of all that its file says, for comparing two of them. */
public final class LayoutFields {

  /** What a short form, such as a measure that is only a quantity, stands for. */
  private static final Map<String, String> SHORT =
      Map.of("measures", "is", "pins", "at", "stances", "stance");

  private static final int CHECK = 0x10000;

  private LayoutFields() {}

  /**
   * Where something is said.
   *
   * @param group the group of the file, such as {@code parts}; empty for what stands at its top
   * @param name the user's name in that group, or the key where the group has no names
   * @param field which field of it, such as {@code layers 2 thickness}
   */
  public record Field(String group, String name, String field) {}

  /**
   * Returns every field with its text, in the order of the file. What has its usual value is not
   * there. Lists of words or quantities are one text with commas; of a traced outline its corners
   * are counted, with a check number that tells other corners.
   */
  public static Map<Field, String> of(Layout layout) {
    Map<Field, String> out = new LinkedHashMap<>();
    LayoutWriter.tree(layout)
        .properties()
        .forEach(
            top -> {
              if (!top.getValue().isObject()) {
                put(out, new Field("", top.getKey(), ""), top.getValue());
                return;
              }
              top.getValue()
                  .properties()
                  .forEach(e -> entry(out, top.getKey(), e.getKey(), e.getValue()));
            });
    layout.parts().forEach((name, part) -> traced(out, name, part));
    return out;
  }

  private static void entry(Map<Field, String> out, String group, String name, JsonNode value) {
    if (value.isObject()) {
      walk(out, new Field(group, name, ""), value);
    } else {
      put(out, new Field(group, name, SHORT.getOrDefault(group, "")), value);
    }
  }

  private static void walk(Map<Field, String> out, Field at, JsonNode node) {
    node.properties()
        .forEach(
            e -> {
              Field field = inner(at, e.getKey());
              JsonNode value = e.getValue();
              if (value.isObject()) {
                walk(out, field, value);
              } else if (value.isArray() && holdsLists(value)) {
                items(out, field, value);
              } else {
                put(out, field, value);
              }
            });
  }

  private static void items(Map<Field, String> out, Field at, JsonNode array) {
    for (int i = 0; i < array.size(); i++) {
      Field field = inner(at, Integer.toString(i + 1));
      if (array.get(i).isObject()) {
        walk(out, field, array.get(i));
      } else {
        put(out, field, array.get(i));
      }
    }
  }

  private static boolean holdsLists(JsonNode array) {
    for (JsonNode item : array) {
      if (item.isContainerNode()) {
        return true;
      }
    }
    return false;
  }

  private static Field inner(Field at, String key) {
    return new Field(at.group(), at.name(), at.field().isEmpty() ? key : at.field() + " " + key);
  }

  private static void put(Map<Field, String> out, Field field, JsonNode value) {
    StringBuilder text = new StringBuilder();
    if (value.isArray()) {
      for (JsonNode item : value) {
        if (item.isObject()) {
          walk(out, field, item); // how far a body reaches at a vertex
        } else {
          text.append(text.length() == 0 ? "" : ", ").append(item.asText());
        }
      }
    } else {
      text.append(value.asText());
    }
    out.put(field, text.toString());
  }

  private static void traced(Map<Field, String> out, String name, Part part) {
    if (part.edge().orElse(null) instanceof Outline.Traced traced) {
      List<String> corners =
          traced.vertices().stream().map(v -> v.x().text() + v.z().text()).toList();
      int check = Math.floorMod(Objects.hash(corners, traced.closed()), CHECK);
      out.put(
          new Field("parts", name, "outline as traced"),
          corners.size() + " corners, check " + Integer.toHexString(check));
    }
  }
}
