package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Faults;

/** JSON as it is laid out and read, beside the library's own reader. */
class JsonTextTest {

  private static final ObjectMapper JACKSON = new ObjectMapper();

  private static JsonNode tree(String json) {
    try {
      return JACKSON.readTree(json.replace('\'', '"'));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException(json, e);
    }
  }

  private static JsonNode random(SplittableRandom random, int depth) {
    int kind = random.nextInt(depth > 4 ? 6 : 8);
    switch (kind) {
      case 0:
        return Json.NODES.nullNode();
      case 1:
        return Json.NODES.booleanNode(random.nextBoolean());
      case 2:
        return Json.NODES.numberNode(random.nextLong(-1_000_000, 1_000_000));
      case 3:
        return Json.NODES.numberNode(random.nextDouble() + 0.25);
      case 4, 5:
        return Json.NODES.textNode("t\u00e9 \"x\" \\ \n\u0001".substring(0, random.nextInt(12)));
      case 6:
        ArrayNode array = Json.NODES.arrayNode();
        for (int i = random.nextInt(7); i > 0; i--) {
          array.add(random(random, depth + 1));
        }
        return array;
      default:
        ObjectNode object = Json.NODES.objectNode();
        for (int i = random.nextInt(7); i > 0; i--) {
          object.set("key " + random.nextInt(100), random(random, depth + 1));
        }
        return object;
    }
  }

  /** Whatever is written the library and the reader read as the same, within the columns. */
  @Test
  void whatIsWrittenReadsBack() throws JsonProcessingException {
    SplittableRandom random = new SplittableRandom(4);
    int broken = 0;
    for (int i = 0; i < 150; i++) {
      JsonNode node = random(random, 0);
      for (int width : new int[] {1, 30, 80}) {
        String text = Json.pretty(node, width, i % 3);
        assertThat(text).endsWith("\n");
        JsonNode back = JACKSON.readTree(text);
        assertThat(back.toString()).isEqualTo(node.toString());
        Faults faults = new Faults();
        assertThat(Json.parse(text, faults).orElseThrow().toString()).isEqualTo(node.toString());
        assertThat(faults.isEmpty()).isTrue();
        // a container shares its line with others only where all of it fits
        for (String line : text.lines().toList()) {
          String rest = line.strip().replaceFirst("^\"(\\\\.|[^\"\\\\])*\": ", "");
          boolean whole = rest.matches("[\\[{].+[\\]}],?");
          assertThat(!whole || line.length() <= width).as(line).isTrue();
        }
        broken += text.indexOf('\n') < text.length() - 1 ? 1 : 0;
      }
      assertThat(JACKSON.readTree(Json.compact(node)).toString()).isEqualTo(node.toString());
      assertThat(Json.compact(node)).doesNotContain("\n");
    }
    assertThat(broken).isGreaterThan(90);
  }

  @Test
  void isLaidOutByWidthDepthAndRows() {
    JsonNode node =
        tree("{'pins': {'a': [1, 2], 'b': {'at': [3, 4.5], 'x': null}}, 'e': [], 'f': {}, 'g': 1}");
    assertThat(Json.compact(node))
        .isEqualTo(
            "{\"pins\": {\"a\": [1, 2], \"b\": {\"at\": [3, 4.5], \"x\": null}}, \"e\": [], \"f\":"
                + " {}, \"g\": 1}");
    String one =
        """
        {
          "pins": {"a": [1, 2], "b": {"at": [3, 4.5], "x": null}},
          "e": [],
          "f": {},
          "g": 1
        }
        """;
    assertThat(Json.pretty(node, 100, 1)).isEqualTo(one);
    // 57 columns hold the first entry with its comma, 56 do not
    String pins = one.lines().toList().get(1);
    assertThat(Json.pretty(node, pins.length(), 1)).isEqualTo(one);
    String two =
        """
        {
          "pins": {
            "a": [1, 2],
            "b": {"at": [3, 4.5], "x": null}
          },
          "e": [],
          "f": {},
          "g": 1
        }
        """;
    assertThat(Json.pretty(node, pins.length() - 1, 1)).isEqualTo(two);
    assertThat(Json.pretty(node, 100, 2)).isEqualTo(two);
    assertThat(Json.pretty(node, new Json.Style(10, 1, Set.of("pins")))).isEqualTo(two);
    assertThat(Json.pretty(node, new Json.Style(10, 1, Set.of("a"))))
        .contains("\"a\": [\n      1,\n      2\n    ]");
    assertThat(Json.pretty(node, 100, 0)).isEqualTo(Json.compact(node) + "\n");
    assertThat(Json.pretty(tree("[[1, 2], 'abc']"), 6, 0))
        .isEqualTo("[\n  [\n    1,\n    2\n  ],\n  \"abc\"\n]\n");
    assertThat(Json.pretty(tree("[[1, 2], 'abc']"), 9, 0))
        .isEqualTo("[\n  [1, 2],\n  \"abc\"\n]\n");
  }

  /** Numbers keep their digits; whole ones are written without a point up to 1e15. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "1, 1",
    "1.0, 1",
    "-3.0, -3",
    "1e3, 1000",
    "0.1, 0.1",
    "1.5e-7, 1.5E-7",
    "999999999999999, 999999999999999",
    "1e15, 1.0E15",
    "-1e15, -1.0E15",
    "1e300, 1.0E300"
  })
  void numbers(String read, String written) {
    Faults faults = new Faults();
    assertThat(Json.compact(Json.parse(read, faults).orElseThrow())).isEqualTo(written);
    assertThat(faults.isEmpty()).isTrue();
  }

  @Test
  void isShownShort() {
    assertThat(Json.shown(null)).isEmpty();
    assertThat(Json.shown(Json.NODES.missingNode())).isEmpty();
    assertThat(Json.shown(tree("{}"))).isEqualTo("{}");
    assertThat(Json.shown(tree("{'a': 1}"))).isEqualTo("{...}");
    assertThat(Json.shown(tree("[]"))).isEqualTo("[]");
    assertThat(Json.shown(tree("[1]"))).isEqualTo("[...]");
    assertThat(Json.shown(tree("'a'"))).isEqualTo("\"a\"");
    assertThat(Json.shown(tree("2.5"))).isEqualTo("2.5");
    assertThat(Json.shown(tree("true"))).isEqualTo("true");
  }

  private static List<Fault> faults(String json) {
    Faults faults = new Faults();
    Json.parse(json, faults);
    return faults.list();
  }

  /** Bounds: the last that is read and the first that is not. */
  @Test
  void bounds() {
    String deep = "[".repeat(Json.MAX_DEPTH) + "]".repeat(Json.MAX_DEPTH);
    assertThat(faults(deep)).isEmpty();
    assertThat(faults("[" + deep + "]"))
        .singleElement()
        .extracting(Fault::message)
        .asString()
        .contains("nesting " + Json.MAX_DEPTH);
    // the list itself is a value
    String many = "[" + "0,".repeat(Json.MAX_VALUES - 2) + "0]";
    assertThat(faults(many)).isEmpty();
    assertThat(faults(many.replace("]", ",0]")))
        .singleElement()
        .extracting(Fault::message)
        .isEqualTo("holds more than 200000 values");
    String blank = " ".repeat(Json.MAX_CHARS - 1);
    assertThat(faults("1" + blank)).isEmpty();
    assertThat(faults("1 " + blank))
        .singleElement()
        .extracting(Fault::message)
        .asString()
        .startsWith("is 4000001 characters long");
    assertThat(faults("\uFEFF{}")).isEmpty();
    assertThat(faults("\uFEFF \n"))
        .singleElement()
        .extracting(Fault::message)
        .isEqualTo("is empty");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          {"a": 1} x            ~ $ ~ is not JSON at line 1, column 10: Unrecognized token
          {"a": 1} 2            ~ $ ~ is not JSON at line 1, column 10: goes on after its end
          {"a": {"b": 1, "b": 2}} ~ $.a.b ~ is written twice, the second time at line 1
          {"a": [1, {"b": 1e999}]} ~ $.a[1].b ~ is beyond the range of numbers
          [-1e999]              ~ $[0] ~ is beyond the range of numbers
          [Infinity]            ~ $ ~ (NaN and Infinity are not numbers)
          {"a": 1               ~ $ ~ is not JSON at line 1
          """)
  void faultsNameTheirPlace(String json, String path, String words) {
    assertThat(faults(json))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.path()).isEqualTo(path);
              assertThat(f.message()).contains(words);
              assertThat(f.message()).doesNotContain("enable");
            });
  }
}
