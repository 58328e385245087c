package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Faults;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.FieldPath;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Part;

/**
 * Spoils every field of every kind in every way its type allows, and holds the reader to a JSON
 * Schema validator over the published schema: both refuse the same structure. What only the reader
 * can know (ranges, dimensions, names of other things) it must refuse at that very field.
 */
class EveryFieldTest {

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  /** A field that many kinds have, described by one line, is spoilt in so many of them. */
  private static final int MOST = LONG ? Integer.MAX_VALUE : 1;

  /** Of the fields of a type that was met before, each so manieth is spoilt. */
  private static final int EACH = LONG ? 1 : 9;

  /** What must become of it: refused for its structure, for its meaning, or sound in structure. */
  private enum Verdict {
    STRUCTURE,
    MEANING,
    SOUND
  }

  /** One object of the document that is of {@code kind}. */
  private record Sample(Kind<?> kind, ObjectNode object, String path) {}

  private static JsonSchema schema;
  private static ObjectNode root;
  private static Map<String, Sample> samples;

  @BeforeAll
  static void findOneOfEachKind() {
    JsonNode node = Json.parse(LayoutSchema.text(), new Faults()).orElseThrow();
    schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(node);
    root = SchemaAgreementTest.plank();
    ObjectNode traced = ((ObjectNode) root.path("parts").path("silencer")).deepCopy();
    traced.putObject("outline").put("svg", "pipe.svg").put("path", "p").put("scale", "1 mm");
    ((ObjectNode) root.path("parts")).set("traced", traced);
    samples = new LinkedHashMap<>();
    collect(Document.LAYOUT, root, "$");
  }

  private static <T> void collect(Kind<T> kind, ObjectNode object, String path) {
    samples.putIfAbsent(kind.name(), new Sample(kind, object, path));
    for (Field<T, ?> field : kind.fields()) {
      if (object.has(field.key())) {
        look(field.type(), object.get(field.key()), FieldPath.key(path, field.key()));
      }
    }
  }

  private static void look(Type<?> type, JsonNode node, String path) {
    if (type instanceof Type.Nested<?> nested && node instanceof ObjectNode object) {
      collect(nested.kind(), object, path);
    } else if (type instanceof Type.Choice<?> choice) {
      collect(choice.kinds().get(node.path(choice.key()).asText()), (ObjectNode) node, path);
    } else if (type instanceof Type.Group<?> group) {
      node.properties()
          .forEach(e -> look(group.item(), e.getValue(), FieldPath.key(path, e.getKey())));
    } else if (type instanceof Type.ListOf<?> list && node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        look(list.item(), node.get(i), FieldPath.index(path, i));
      }
    } else if (type instanceof Type.Vertices vertices && node.isArray()) {
      int last = node.size() - 1;
      if (node.get(last) instanceof ObjectNode reach) {
        collect(vertices.reach().orElseThrow(), reach, FieldPath.index(path, last));
      }
    } else if (type instanceof Type.Outlines outlines) {
      boolean traced = node.has(Type.Outlines.TRACED_BY);
      Kind<?> kind = traced ? outlines.traced() : outlines.drawn();
      collect(kind, (ObjectNode) node, path);
    }
  }

  @Test
  void plankHasOneOfEachKind() {
    TreeSet<String> kinds =
        new TreeSet<>(
            List.of(
                "layout",
                "measure",
                "pin",
                "frame",
                "drawn",
                "traced",
                "foam",
                "foamTest",
                "foamPress",
                "tie",
                "limit",
                "wish",
                "section",
                "stance",
                "person",
                "demands",
                "photo",
                "dimension",
                "end",
                "stock",
                "fastener",
                "round",
                "slot",
                "cut",
                "reach",
                "station",
                "profile",
                "share",
                "body",
                "formers",
                "formerAcross",
                "formerAlong",
                "stringer",
                "variant",
                "asBuilt",
                "gasSpring",
                "counterweight",
                "catch",
                "duct",
                "line",
                "linePoint",
                "titleBlock",
                "revision",
                "span",
                "worked",
                "shock",
                "rocker",
                "hubBody",
                "electric"));
    Document.PART.kinds().values().forEach(kind -> kinds.add(kind.name()));
    assertThat(new TreeSet<>(samples.keySet())).isEqualTo(kinds);
  }

  /** What the compiler cannot see: that {@code PartKinds} describes each record of a part. */
  @Test
  void plankHasAPartOfEachRecord() {
    Set<Class<?>> read = new HashSet<>();
    Plank.layout().parts().values().forEach(part -> read.add(part.getClass()));
    assertThat(read).isEqualTo(records(Part.class).collect(Collectors.toSet()));
  }

  private static Stream<Class<?>> records(Class<?> type) {
    return type.isRecord()
        ? Stream.of(type)
        : Stream.of(type.getPermittedSubclasses()).flatMap(EveryFieldTest::records);
  }

  @Test
  void everyFieldIsExplained() {
    for (Sample sample : samples.values()) {
      for (Field<?, ?> field : sample.kind().fields()) {
        assertThat(field.help())
            .as("%s %s", sample.kind().name(), field.key())
            .matches("(?s)[A-Z0-9].*\\.");
      }
    }
  }

  @Test
  void readerAndSchemaAgreeOnEveryFieldSpoilt() {
    int tried = 0;
    int met = 0;
    Set<Object> types = new HashSet<>();
    Map<List<Object>, Integer> alike = new HashMap<>();
    for (Sample sample : samples.values()) {
      for (Field<?, ?> field : sample.kind().fields()) {
        String key = field.key();
        if (alike.merge(List.of(key, field.required(), field.help()), 1, Integer::sum) > MOST
            || !types.add(typeOf(field)) && met++ % EACH != 0) {
          continue;
        }
        JsonNode old = sample.object().get(key);
        List<String> partners =
            sample.kind().togetherWith(key).stream().filter(k -> !sample.object().has(k)).toList();
        partners.forEach(k -> sample.object().put(k, "900 mm"));
        boolean needed = field.required() || !sample.kind().togetherWith(key).isEmpty();
        sample.object().remove(key);
        judge(sample, key, needed ? Verdict.STRUCTURE : Verdict.SOUND, "gone");
        for (Map.Entry<JsonNode, Verdict> spoilt : spoilt(field.type()).entrySet()) {
          sample.object().set(key, spoilt.getKey());
          judge(sample, key, spoilt.getValue(), Json.shown(spoilt.getKey()));
          tried++;
        }
        partners.forEach(sample.object()::remove);
        sample.object().remove(key);
        if (old != null) {
          sample.object().set(key, old);
        }
      }
      sample.object().put("zebra", 3);
      judge(sample, "zebra", Verdict.STRUCTURE, "extra");
      sample.object().remove("zebra");
    }
    assertThat(tried).isGreaterThan(LONG ? 600 : 50);
  }

  private static Object typeOf(Field<?, ?> field) {
    return field.type() instanceof Type.Maybe<?> maybe
        ? List.of(maybe.inner().getClass())
        : field.type().getClass();
  }

  /**
   * Returns the document without what has nothing to do with a place in it: where only structure is
   * asked about all other groups and members, else what says the whole once more.
   */
  private static ObjectNode about(String path, boolean structure) {
    if (path.equals("$")) {
      return root;
    }
    ObjectNode about = Json.NODES.objectNode();
    for (Map.Entry<String, JsonNode> e : root.properties()) {
      String at = FieldPath.key("$", e.getKey());
      boolean again = e.getKey().equals("variants") || e.getKey().equals("asBuilt");
      if (path.equals(at) || isWithin(path, at) && !structure) {
        about.set(e.getKey(), e.getValue());
      } else if (isWithin(path, at)) {
        about.set(e.getKey(), member(e.getValue(), at, path));
      } else if (structure ? !e.getValue().isObject() : !again) {
        about.set(e.getKey(), e.getValue());
      }
    }
    return about;
  }

  private static JsonNode member(JsonNode group, String at, String path) {
    ObjectNode one = Json.NODES.objectNode();
    for (Map.Entry<String, JsonNode> m : group.properties()) {
      String there = FieldPath.key(at, m.getKey());
      if (path.equals(there) || isWithin(path, there)) {
        one.set(m.getKey(), m.getValue());
      }
    }
    return one;
  }

  private static boolean isWithin(String path, String at) {
    return path.startsWith(at + '.') || path.startsWith(at + '[');
  }

  private static void judge(Sample sample, String key, Verdict expected, String story) {
    Faults faults = new Faults();
    LayoutReader.read(about(sample.path(), false), null, faults);
    String path = FieldPath.key(sample.path(), key);
    String told = sample.kind().name() + ' ' + path + ' ' + story + ": " + faults.list();
    assertThat(faults.breaksStructure()).as(told).isEqualTo(expected == Verdict.STRUCTURE);
    assertThat(schema.validate(about(sample.path(), true)).isEmpty())
        .as("schema, " + told)
        .isEqualTo(expected != Verdict.STRUCTURE);
    if (expected != Verdict.SOUND) {
      // an outline without its file is taken for a drawn one
      String at = story.equals("gone") ? sample.path() : path;
      assertThat(faults.list()).as(told).extracting(Fault::path).anyMatch(p -> p.startsWith(at));
    }
  }

  /** Returns values that spoil a field of {@code type}. */
  private static Map<JsonNode, Verdict> spoilt(Type<?> type) {
    Map<JsonNode, Verdict> values = new LinkedHashMap<>();
    values.put(Json.NODES.nullNode(), Verdict.STRUCTURE);
    values.put(Json.NODES.booleanNode(true), verdictOfTrue(type));
    Type<?> inner = type instanceof Type.Maybe<?> maybe ? maybe.inner() : type;
    if (inner instanceof Type.Text text) {
      put(values, "x".repeat(Type.MAX_TEXT + 1), Verdict.STRUCTURE);
      put(values, " ", text.filled() ? Verdict.STRUCTURE : Verdict.SOUND);
    } else if (inner instanceof Type.Whole whole) {
      values.put(Json.NODES.numberNode(-1), Verdict.STRUCTURE);
      values.put(Json.NODES.numberNode(0.5), Verdict.STRUCTURE);
      values.put(Json.NODES.numberNode(whole.most() + 1), Verdict.STRUCTURE);
    } else if (inner instanceof Type.Weight) {
      values.put(Json.NODES.numberNode(0), Verdict.STRUCTURE);
      values.put(Json.NODES.numberNode(1e7), Verdict.MEANING);
    } else if (inner instanceof Type.Word) {
      put(values, "zebra", Verdict.STRUCTURE);
    } else if (inner instanceof Type.Ref) {
      put(values, "no such thing", Verdict.MEANING);
      values.put(Json.NODES.numberNode(7), Verdict.STRUCTURE);
    } else if (inner instanceof Type.Quantity quantity) {
      put(values, "x".repeat(501), Verdict.STRUCTURE);
      put(values, "1 mm +", Verdict.MEANING);
      put(values, "zebra", Verdict.MEANING);
      outOfRange(quantity, values);
    } else if (inner instanceof Type.Place) {
      values.put(Json.NODES.arrayNode().add("1 mm"), Verdict.STRUCTURE);
      values.put(Json.NODES.arrayNode().add("1 mm").add("1 kg"), Verdict.MEANING);
    } else if (inner instanceof Type.ListOf<?> list) {
      ArrayNode many = Json.NODES.arrayNode();
      for (int i = 0; i <= list.most(); i++) {
        many.add("zebra");
      }
      values.put(many, Verdict.STRUCTURE);
      values.put(Json.NODES.arrayNode().addNull(), Verdict.STRUCTURE);
      values.put(Json.NODES.arrayNode(), list.fewest() > 0 ? Verdict.STRUCTURE : Verdict.SOUND);
    } else if (inner instanceof Type.Group) {
      values.put(Json.NODES.objectNode().putNull("zebra"), Verdict.STRUCTURE);
      values.put(Json.NODES.arrayNode(), Verdict.STRUCTURE);
    } else if (inner instanceof Type.Outlines) {
      values.put(Json.NODES.objectNode(), Verdict.STRUCTURE);
    }
    return values;
  }

  private static Verdict verdictOfTrue(Type<?> type) {
    return type instanceof Type.Flag ? Verdict.SOUND : Verdict.STRUCTURE;
  }

  private static void put(Map<JsonNode, Verdict> values, String text, Verdict verdict) {
    values.put(Json.NODES.textNode(text), verdict);
  }

  private static void outOfRange(Type.Quantity quantity, Map<JsonNode, Verdict> values) {
    if (quantity.dim().isEmpty()) {
      return;
    }
    Unit unit = Unit.of(quantity.dim().get());
    put(values, quantity.dim().get().equals(Dim.MASS) ? "1 mm" : "1 kg", Verdict.MEANING);
    List<Double> outside = new ArrayList<>();
    for (double value : new double[] {-400, -1, 0, 1e-300, 1e-7, 46, 1199, 2201, 361}) {
      if (!quantity.range().allows(value)) {
        outside.add(value);
      }
    }
    for (double value : outside) {
      String text = unit == Unit.NONE ? value + "" : value + " * 1 " + unit.symbol();
      put(values, text, Verdict.MEANING);
    }
  }
}
