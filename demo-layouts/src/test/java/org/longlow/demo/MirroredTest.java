package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;

/**
 * A machine whose left is its right gets the findings of its image: people are alike both sides.
 */
class MirroredTest {

  /**
   * What is found by steps of a search or sweep may end a step apart; figures are shown rounder.
   */
  private static final double ALIKE = 1e-6;

  /** Kinds of which there is one on each side, whose y is a distance. */
  private static final Set<String> PAIRED = Set.of("front", "grip", "peg", "footboard", "handhold");

  @TempDir Path folder;

  private static String negative(JsonNode formula) {
    return "0 mm - (" + (formula.isNumber() ? formula.asText() + " mm" : formula.asText()) + ")";
  }

  /** Turns left into right in all that an object says, and in all within. */
  private static void mirror(JsonNode node) {
    if (node instanceof ArrayNode items) {
      items.forEach(MirroredTest::mirror);
    } else if (node instanceof ObjectNode thing) {
      boolean paired =
          PAIRED.contains(thing.path("kind").asText())
              || thing.path("both").asBoolean()
              || thing.path("pair").asBoolean();
      JsonNode left = thing.get("left");
      JsonNode right = thing.get("right");
      if (!paired && (left != null || right != null)) {
        put(thing, "left", right);
        put(thing, "right", left);
      }
      if (!paired && thing.has("y")) {
        thing.put("y", negative(thing.get("y")));
      }
      if (thing.get("across") instanceof ArrayNode across && across.path(0).isValueNode()) {
        for (int i = 0; i < across.size(); i++) {
          across.set(i, negative(across.get(i)));
        }
      }
      thing.elements().forEachRemaining(MirroredTest::mirror);
    }
  }

  private static void put(ObjectNode thing, String field, JsonNode value) {
    if (value == null) {
      thing.remove(field);
    } else {
      thing.set(field, value);
    }
  }

  private Map<String, Finding> findings(String text) {
    ReadResult read = LayoutReader.read(text, folder);
    assertThat(read).as(String.valueOf(read)).isInstanceOf(ReadResult.Read.class);
    Layout layout = ((ReadResult.Read) read).layout();
    Map<String, Finding> by = new TreeMap<>();
    Study.of(layout).findings().forEach(f -> by.put(f.id(), f));
    return by;
  }

  /** What is said of the image of something: what is alike on both sides is said alike too. */
  private static String image(String text) {
    return text.replaceAll("\\bleft\\b", "\0")
        .replaceAll("\\bright\\b", "left")
        .replace("\0", "right");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "dunlin", "curlew"})
  void findingsAreThoseOfTheImage(String name) throws IOException {
    Demos.copy(name, folder);
    String text = Files.readString(folder.resolve(name + ".json"));
    JsonNode file = new ObjectMapper().readTree(text);
    mirror(file.get("parts"));
    mirror(file.path("lines"));
    mirror(file.get("ties"));
    Map<String, Finding> plain = findings(text);
    Map<String, Finding> mirrored = findings(file.toString());
    StringBuilder wrong = new StringBuilder();
    for (Finding f : plain.values()) {
      Finding g = mirrored.get(image(f.id()));
      if (g == null) {
        wrong.append("\n").append(f.id()).append(" has no image");
      } else if (f.verdict() != g.verdict()
          || !alike(f.value(), g.value())
          || !imaged(f.text(), g.text())) {
        wrong
            .append("\n")
            .append(List.of(f.id(), f.verdict(), f.value(), f.text()))
            .append("\n   ")
            .append(List.of(g.verdict(), g.value(), g.text()));
      }
    }
    assertThat(wrong.toString()).isEmpty();
    assertThat(mirrored).hasSameSizeAs(plain);
    // on which side the stand is, at least, is told
    assertThat(plain.values()).anyMatch(f -> !f.text().equals(mirrored.get(image(f.id())).text()));
  }

  /** Each sentence is said of the other side, or as before where both sides are alike. */
  private static boolean imaged(String text, String other) {
    String[] of = text.split("(?<=\\.) ");
    String[] to = other.split("(?<=\\.) ");
    boolean same = of.length == to.length;
    for (int i = 0; same && i < of.length; i++) {
      same = of[i].equals(to[i]) || image(of[i]).equals(to[i]);
    }
    return same;
  }

  private static boolean alike(double a, double b) {
    return Double.isNaN(a) ? Double.isNaN(b) : Math.abs(a - b) <= ALIKE * Math.max(1, Math.abs(a));
  }
}
