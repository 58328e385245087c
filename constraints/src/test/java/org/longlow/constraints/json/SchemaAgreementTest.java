package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.document.Faults;

/**
 * The published schema and the reader agree: a JSON Schema validator judges what the reader's own
 * structural checks let through and what they refuse.
 */
class SchemaAgreementTest {

  private static JsonSchema schema;

  @BeforeAll
  static void readSchema() {
    JsonNode node = Json.parse(LayoutSchema.text(), new Faults()).orElseThrow();
    schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(node);
  }

  static LongStream seeds() {
    return LongStream.range(0, Boolean.getBoolean("longlow.long") ? 20 : 1);
  }

  @Test
  void schemaIsASoundSchemaThatClosesEveryObject() {
    JsonNode node = Json.parse(LayoutSchema.text(), new Faults()).orElseThrow();
    JsonSchema meta =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(SchemaLocation.of(SpecVersion.VersionFlag.V202012.getId()));
    assertThat(meta.validate(node)).isEmpty();
    List<JsonNode> all = new ArrayList<>();
    collect(node, all);
    assertThat(all)
        .filteredOn(n -> n.isObject() && n.path("properties").isObject() && n.has("required"))
        .filteredOn(n -> !n.has("additionalProperties") && !n.has("allOf"))
        .isEmpty();
    assertThat(all).filteredOn(n -> n.has("description")).hasSizeGreaterThan(150);
  }

  @Test
  void publishedSchemaIsWhatTheDescriptionSays() throws IOException {
    String made = SchemaText.text();
    if (Boolean.getBoolean("golden.update")) {
      Path published =
          Path.of("src/main/resources/org/longlow/constraints/json/layout-1.schema.json");
      Files.writeString(published, made);
    }
    assertThat(LayoutSchema.text())
        .as("the description changed; if meant, rerun twice with -Dgolden.update=true")
        .isEqualTo(made);
  }

  @Test
  void schemaAcceptsPlankAndWhatIsWritten() {
    assertThat(schema.validate(plank())).isEmpty();
    assertThat(schema.validate(LayoutWriter.tree(Plank.layout()))).isEmpty();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void readerRefusesTheStructureExactlyWhereTheSchemaDoes(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int refused = 0;
    for (int i = 0; i < 50; i++) {
      ObjectNode root = plank();
      StringBuilder story = new StringBuilder();
      for (int n = 1 + random.nextInt(2); n > 0; n--) {
        story.append(mutate(root, random)).append("; ");
      }
      Faults faults = new Faults();
      ReadResult result = LayoutReader.read(root, null, faults);
      boolean bySchema = !schema.validate(root).isEmpty();
      assertThat(faults.breaksStructure())
          .as("%s schema: %s reader: %s", story, schema.validate(root), Plank.lines(result))
          .isEqualTo(bySchema);
      assertThat(result instanceof ReadResult.Refused).isEqualTo(!faults.isEmpty());
      refused += bySchema ? 1 : 0;
    }
    assertThat(refused).as("mutations that the schema refuses").isBetween(5, 49);
  }

  static ObjectNode plank() {
    return (ObjectNode) Json.parse(Plank.text(), new Faults()).orElseThrow();
  }

  /** Changes one place of the tree; returns what was done. */
  private static String mutate(ObjectNode root, SplittableRandom random) {
    List<JsonNode> containers = new ArrayList<>();
    collect(root, containers);
    JsonNode at = containers.get(random.nextInt(containers.size()));
    if (at instanceof ObjectNode object && !object.isEmpty()) {
      List<String> keys = new ArrayList<>();
      object.fieldNames().forEachRemaining(keys::add);
      String key = keys.get(random.nextInt(keys.size()));
      switch (random.nextInt(5)) {
        case 0:
          object.remove(key);
          return "removed " + key;
        case 1:
          JsonNode moved = object.remove(key);
          String other = name(random);
          object.set(other, moved);
          return "renamed " + key + " to " + other;
        case 2:
          String extra = name(random);
          object.set(extra, value(random));
          return "added " + extra;
        default:
          JsonNode value = value(random);
          object.set(key, value);
          return "set " + key + " to " + Json.shown(value);
      }
    }
    if (at instanceof ArrayNode array) {
      int size = array.size();
      switch (random.nextInt(4)) {
        case 0:
          if (size > 0) {
            array.remove(random.nextInt(size));
          }
          return "removed an item";
        case 1:
          array.insert(random.nextInt(size + 1), value(random));
          return "inserted an item";
        case 2:
          array.removeAll();
          return "emptied a list";
        default:
          JsonNode value = value(random);
          if (size > 0) {
            array.set(random.nextInt(size), value);
          }
          return "set an item to " + Json.shown(value);
      }
    }
    return "nothing";
  }

  private static void collect(JsonNode node, List<JsonNode> into) {
    if (node.isContainerNode()) {
      into.add(node);
      node.forEach(child -> collect(child, into));
    }
  }

  private static String name(SplittableRandom random) {
    String[] names = {
      "",
      " ",
      "kind",
      "note",
      "both",
      "left",
      "svg",
      "scale",
      "path",
      "points",
      "seat",
      "to",
      "at",
      "is",
      "free",
      "from",
      "with",
      "pins",
      "parts",
      "wheelbase",
      "a b",
      "a-b",
      "Ünal",
      "9th",
      "x".repeat(61),
      "x".repeat(60),
      "line\nbreak",
      "__proto__",
      "$ref",
      "demands",
      "tie",
      "closedCell",
      "edge",
      "frameArms",
      "pivot",
      "section",
      "stance",
      "measured",
      "angle"
    };
    return names[random.nextInt(names.length)];
  }

  private static JsonNode value(SplittableRandom random) {
    var nodes = Json.NODES;
    return switch (random.nextInt(26)) {
      case 0 -> nodes.nullNode();
      case 1 -> nodes.booleanNode(random.nextBoolean());
      case 2 -> nodes.numberNode((long) random.nextInt(-3, 3000));
      case 3 -> nodes.numberNode(random.nextDouble(-3, 3));
      case 4 -> nodes.numberNode(1e300);
      case 5 -> nodes.numberNode(1e-300);
      case 6 -> nodes.textNode("");
      case 7 -> nodes.textNode(" \t");
      case 8 -> nodes.textNode("\u2003");
      case 9 -> nodes.textNode("0 mm");
      case 10 -> nodes.textNode("12 mm");
      case 11 -> nodes.textNode("wheelbase / 0");
      case 12 -> nodes.textNode("x".repeat(501));
      case 13 -> nodes.textNode("\uD83D\uDE00".repeat(300));
      case 14 -> nodes.textNode("y".repeat(2001));
      case 15 -> nodes.textNode("crank");
      case 16 -> nodes.textNode("open");
      case 17 -> nodes.textNode("rail");
      case 18 -> nodes.textNode("smooth");
      case 19 -> nodes.arrayNode();
      case 20 -> nodes.arrayNode().add("crank").add("smooth");
      case 21 -> nodes.arrayNode().add("1 mm").add("2 mm").add("smooth");
      case 22 -> nodes.arrayNode().add(1).add("2 mm");
      case 23 -> nodes.objectNode();
      case 24 -> nodes.objectNode().put("is", "4 mm").put("note", "n");
      default -> nodes.objectNode().put("svg", "a.svg").put("scale", 1);
    };
  }
}
