package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.EntryNames;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.Naming;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;

/** Writes the published schema (JSON Schema, draft 2020-12) from the description. */
final class SchemaText implements Type.Cases<Void, ObjectNode> {

  private static final String QUANTITY =
      "A quantity with its unit, or a formula over measures: numbers, measures, units, + - * / ^"
          + " ( ), and sin cos tan asin acos atan atan2 sqrt abs hypot min max. Units: mm cm m in"
          + " ft, deg rad, kg g lb, N kN lbf, kPa, km/h mph m/s, and their products such as N/mm or"
          + " kg/m^3."
          + " Inches may be written as on a tape: 63 1/2 in; feet with inches: 5 ft 9 1/2 in. A"
          + " space between a number and a unit multiplies, from left to right.";

  private static final Map<Dim, String> QUANTITIES =
      Map.of(
          Dim.LENGTH, "length",
          Dim.ANGLE, "angle",
          Dim.MASS, "mass",
          Dim.FORCE, "force",
          Dim.RATE, "rate",
          Dim.DENSITY, "density",
          Dim.PRESSURE, "pressure",
          Dim.SPEED, "speed",
          Dim.NUMBER, "number");

  private final Map<String, ObjectNode> defs = new LinkedHashMap<>();

  private SchemaText() {}

  static String text() {
    SchemaText schema = new SchemaText();
    ObjectNode top = node();
    top.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    top.put("$id", "urn:longlow:layout-" + Layout.FILE_VERSION);
    top.put("title", "Longlow layout, version " + Layout.FILE_VERSION);
    ObjectNode layout = schema.object(Document.LAYOUT, LayoutWriter.VERSION, List.of());
    ((ObjectNode) layout.get("properties"))
        .putObject(LayoutWriter.VERSION)
        .put("const", Layout.FILE_VERSION)
        .put("description", "Version of the file format.");
    top.setAll(layout);
    top.put(
        "description",
        Document.LAYOUT.help()
            + " Beyond this schema the reader checks names, units, ranges and shapes.");
    ObjectNode defs = top.putObject("$defs");
    schema.defs.forEach(defs::set);
    return Json.pretty(top, new Json.Style(110, 3, Set.of()));
  }

  private static ObjectNode node() {
    return Json.NODES.objectNode();
  }

  private static ObjectNode type(String type) {
    return node().put("type", type);
  }

  /** Returns a reference to what {@code making} makes once. */
  private ObjectNode shared(String name, java.util.function.Supplier<ObjectNode> making) {
    if (!defs.containsKey(name)) {
      defs.put(name, node());
      defs.put(name, making.get());
    }
    return node().put("$ref", "#/$defs/" + name);
  }

  /**
   * The schema of an object.
   *
   * @param key that decides the kind, or empty
   * @param words that it may have
   */
  private <T> ObjectNode object(Kind<T> kind, String key, List<String> words) {
    ObjectNode object = type("object").put("description", kind.help());
    ObjectNode properties = object.putObject("properties");
    ArrayNode required = Json.NODES.arrayNode();
    if (!key.isEmpty()) {
      ArrayNode allowed = properties.putObject(key).putArray("enum");
      words.forEach(allowed::add);
      required.add(key);
    }
    for (Field<T, ?> field : kind.fields()) {
      ObjectNode property = field.type().by(this, null);
      property.put("description", field.help() + least(field.type()));
      JsonNode usual = usual(field);
      if (usual != null) {
        property.set("default", usual);
      }
      properties.set(field.key(), property);
      if (field.required()) {
        required.add(field.key());
      }
    }
    object.set("required", required);
    object.put("additionalProperties", false);
    ObjectNode together = object.objectNode();
    for (Field<?, ?> field : kind.fields()) {
      String one = field.key();
      if (!kind.togetherWith(one).isEmpty()) {
        ArrayNode others = together.putArray(one);
        kind.togetherWith(one).stream().filter(o -> !o.equals(one)).forEach(others::add);
      }
    }
    if (!together.isEmpty()) {
      object.set("dependentRequired", together);
    }
    return object;
  }

  /** Says the least that a quantity may be, where the kind knows it. */
  private static String least(Type<?> type) {
    Type<?> inner = type instanceof Type.Maybe<?> maybe ? maybe.inner() : type;
    if (!(inner instanceof Type.Quantity quantity)
        || quantity.range().from() <= 0
        || Double.isFinite(quantity.range().to())) {
      return "";
    }
    String words = quantity.range().words(Unit.of(quantity.dim().orElseThrow()));
    return " It " + words + ".";
  }

  /** Returns what absence means, where one plain value says it. */
  private static JsonNode usual(Field<?, ?> field) {
    Object value = field.orElse();
    if (field.required() || field.type() instanceof Type.Word) {
      return null;
    }
    if (value instanceof Formula formula) {
      return Json.NODES.textNode(formula.text());
    }
    return value instanceof Boolean
            || value instanceof Number
            || value instanceof String text && !text.isEmpty()
        ? Binding.tree(value)
        : null;
  }

  @Override
  public ObjectNode text(Type.Text type, Void none) {
    ObjectNode text = type("string").put("maxLength", Type.MAX_TEXT);
    return type.filled() ? text.put("pattern", "\\S") : text;
  }

  @Override
  public ObjectNode flag(Type.Flag type, Void none) {
    return type("boolean");
  }

  @Override
  public ObjectNode whole(Type.Whole type, Void none) {
    return type("integer").put("minimum", 0).put("maximum", type.most());
  }

  @Override
  public ObjectNode weight(Type.Weight type, Void none) {
    return type("number").put("exclusiveMinimum", 0);
  }

  @Override
  public ObjectNode word(Type.Word<?> type, Void none) {
    ObjectNode word = node();
    ArrayNode words = word.putArray("enum");
    type.words().forEach(words::add);
    return word;
  }

  @Override
  public ObjectNode quantity(Type.Quantity type, Void none) {
    String name = type.dim().map(QUANTITIES::get).orElse("quantity");
    return shared(
        name,
        () -> {
          ObjectNode node = node();
          node.putArray("type").add("string").add("number");
          node.put("maxLength", Formula.MAX_LENGTH);
          String unit = type.dim().map(d -> Unit.of(d).symbol()).orElse("");
          return node.put(
              "description",
              type.dim().isEmpty()
                  ? QUANTITY
                  : Character.toUpperCase(type.said().charAt(0))
                      + type.said().substring(1)
                      + (unit.isEmpty() ? "." : "; a bare number is in " + unit + "."));
        });
  }

  @Override
  public ObjectNode place(Type.Place type, Void none) {
    return shared(
        "place",
        () -> {
          ObjectNode place = items(Type.LENGTH, 2, 2);
          return place.put(
              "description", "x forward of the rear contact point and z above the ground.");
        });
  }

  private ObjectNode items(Type<?> item, int fewest, int most) {
    ObjectNode array = type("array").put("minItems", fewest).put("maxItems", most);
    array.set("items", item.by(this, null));
    return array;
  }

  @Override
  public ObjectNode ref(Type.Ref type, Void none) {
    return type("string");
  }

  @Override
  public ObjectNode list(Type.ListOf<?> type, Void none) {
    return items(type.item(), type.fewest(), type.most());
  }

  @Override
  public ObjectNode maybe(Type.Maybe<?> type, Void none) {
    return type.inner().by(this, null);
  }

  @Override
  public ObjectNode nested(Type.Nested<?> type, Void none) {
    return nested(type.kind());
  }

  private <T> ObjectNode nested(Kind<T> kind) {
    return shared(
        kind.name(),
        () -> {
          ObjectNode object = object(kind, "", List.of());
          if (kind.shortField().isEmpty()) {
            return object;
          }
          ObjectNode either = node().put("description", kind.help());
          either.set("if", type("object"));
          either.set("then", object.without("description"));
          either.set("else", kind.shortField().get().type().by(this, null));
          return either;
        });
  }

  @Override
  public ObjectNode choice(Type.Choice<?> type, Void none) {
    return shared(
        type.name(),
        () -> {
          Map<String, List<String>> words = new LinkedHashMap<>();
          Map<String, Kind<?>> kinds = new LinkedHashMap<>();
          type.kinds()
              .forEach(
                  (word, kind) -> {
                    words.computeIfAbsent(kind.name(), k -> new java.util.ArrayList<>()).add(word);
                    kinds.put(kind.name(), kind);
                  });
          ObjectNode choice = type("object").put("description", type.help());
          choice.putArray("required").add(type.key());
          ObjectNode properties = choice.putObject("properties");
          ArrayNode all = properties.putObject(type.key()).putArray("enum");
          type.kinds().keySet().forEach(all::add);
          ArrayNode each = choice.putArray("allOf");
          kinds.forEach(
              (name, kind) -> {
                ObjectNode rule = each.addObject();
                ArrayNode ones =
                    rule.putObject("if")
                        .putObject("properties")
                        .putObject(type.key())
                        .putArray("enum");
                words.get(name).forEach(ones::add);
                rule.set("then", shared(name, () -> object(kind, type.key(), words.get(name))));
              });
          return choice;
        });
  }

  @Override
  public ObjectNode group(Type.Group<?> type, Void none) {
    ObjectNode group = type("object").put("maxProperties", Type.MAX_ENTRIES);
    if (type.naming().given()) {
      boolean measure = type.naming() == Naming.MEASURE_NAMES;
      String pattern = (measure ? EntryNames.MEASURE_NAME : EntryNames.NAME).pattern();
      group.set(
          "propertyNames",
          shared(
              measure ? "measureName" : "name", () -> node().put("pattern", '^' + pattern + '$')));
    }
    group.set("additionalProperties", type.item().by(this, null));
    return group;
  }

  @Override
  public ObjectNode vertex(Type.Vertices type, Void none) {
    String name = type.reach().isPresent() ? "vertex" : type.mayBeSmooth() ? "corner" : "spot";
    return shared(name, () -> vertex(type.mayBeSmooth(), type.reach()));
  }

  private ObjectNode vertex(boolean mayBeSmooth, Optional<Kind<HalfBreadths>> reach) {
    ObjectNode vertex =
        node()
            .put(
                "description",
                reach.isPresent()
                    ? "A vertex: [x, z] in the local axes or a pin, either of these with"
                        + " \"smooth\" where the edge runs through without a corner, and last how"
                        + " far the body reaches to each side there."
                    : mayBeSmooth
                        ? "A vertex: [x, z] in the local axes, a pin, or either of these with"
                            + " \"smooth\" where the edge runs through without a corner."
                        : "A place of an outline: [x, z] in the local axes, or a pin.");
    ArrayNode any = vertex.putArray("anyOf");
    any.add(type("string"));
    ObjectNode smooth = node().put("const", Type.Vertices.SMOOTH);
    if (mayBeSmooth) {
      any.add(tuple(type("string"), smooth));
    }
    any.add(items(Type.LENGTH, 2, 2));
    ObjectNode length = Type.LENGTH.by(this, null);
    if (mayBeSmooth) {
      any.add(tuple(length, length, smooth));
    }
    if (reach.isPresent()) {
      ObjectNode broad = new Type.Nested<>(reach.get()).by(this, null);
      any.add(tuple(type("string"), broad));
      any.add(tuple(type("string"), smooth, broad));
      any.add(tuple(length, length, broad));
      any.add(tuple(length, length, smooth, broad));
    }
    return vertex;
  }

  private static ObjectNode tuple(ObjectNode... items) {
    ObjectNode array = type("array").put("minItems", items.length).put("maxItems", items.length);
    array.putArray("prefixItems").addAll(List.of(items));
    return array;
  }

  @Override
  public ObjectNode outline(Type.Outlines type, Void none) {
    return shared(
        "outline",
        () -> {
          ObjectNode outline =
              type("object")
                  .put(
                      "description", "The edge of a part: its vertices, or a path of an SVG file.");
          outline.putObject("if").putArray("required").add(Type.Outlines.TRACED_BY);
          outline.set("then", object(type.traced(), "", List.of()));
          outline.set("else", object(type.drawn(), "", List.of()));
          return outline;
        });
  }
}
