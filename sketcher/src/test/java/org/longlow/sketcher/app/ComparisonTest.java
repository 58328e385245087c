package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.picture.Plover;

/** Every single edit of a layout is listed, by name; what is only rounding is not. */
class ComparisonTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern QUANTITY = Pattern.compile("(-?\\d+(?:\\.\\d+)?)( ?\\S.*)?");
  private static final Set<String> GROUPS =
      Set.of(
          "measures",
          "pins",
          "parts",
          "ties",
          "limits",
          "wishes",
          "sections",
          "stances",
          "crew",
          "demands");

  private static final List<String> WORDS =
      List.of("female", "male", "red", "amber", "steel", "stainless", "uk", "telescopic", "box");

  /** Else a kind that was changed in one layout is not changed again in the next. */
  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  /** Of the kinds of fields each so manieth, told by its words and so the same in every build. */
  private static final int EACH = LONG ? 1 : 3;

  /** Fields of one kind are alike: one edit of a layout's is enough, of so many tried. */
  private static final int MOST_OF_A_KIND = LONG ? 8 : 3;

  /** What the file calls by a group of its own has a word on either side of the change. */
  @Test
  void aTitleBlockThatComesOrGoesIsListed() throws Exception {
    Layout plain = Plover.layout();
    String text = LayoutWriter.toJson(plain);
    int end = text.lastIndexOf('}');
    String titled =
        text.substring(0, end).stripTrailing() + ", \"titleBlock\": {\"owner\": \"Ash\"}}";
    Layout with = ((ReadResult.Read) LayoutReader.read(titled, null)).layout();
    for (List<Difference> changes :
        List.of(SaidChanges.of(plain, with), SaidChanges.of(with, plain))) {
      assertThat(changes).isNotEmpty().allSatisfy(c -> assertThat(c.kind()).isNotNull());
    }
  }

  private static Map<String, Layout> layouts() {
    Map<String, Layout> out = new LinkedHashMap<>();
    Demos.names().forEach(name -> out.put(name, Demos.layout(name)));
    out.put("plover", Plover.layout());
    return out;
  }

  private static Optional<Layout> read(JsonNode json) throws IOException {
    ReadResult result = LayoutReader.read(JSON.writeValueAsString(json), Path.of("."));
    return result instanceof ReadResult.Read read ? Optional.of(read.layout()) : Optional.empty();
  }

  @Test
  @Tag("long")
  void everySingleEditIsListedByName() throws IOException {
    Random random = new Random(20260301);
    Set<String> seen = new TreeSet<>();
    Set<String> all = new TreeSet<>();
    int listed = 0;
    for (Layout layout : layouts().values()) {
      JsonNode json = JSON.readTree(LayoutWriter.toJson(layout));
      if (read(json).isEmpty()) {
        continue; // traced outlines lie elsewhere
      }
      Layout before = read(json).orElseThrow();
      Map<String, List<JsonNode>> others = new TreeMap<>();
      List<List<String>> leaves = new ArrayList<>();
      leaves(json, new ArrayList<>(), leaves);
      leaves.forEach(
          path ->
              others.computeIfAbsent(kind(json, path), k -> new ArrayList<>()).add(at(json, path)));
      names(json, "pins", others);
      names(json, "parts", others);
      Map<String, Integer> tried = new TreeMap<>();
      Set<String> done = new TreeSet<>(LONG ? Set.of() : seen);
      Collections.shuffle(leaves, random);
      for (List<String> path : leaves) {
        if (Math.floorMod(kind(json, path).hashCode(), EACH) != 0) {
          continue;
        }
        all.add(kind(json, path));
        if (done.contains(kind(json, path))
            || !LONG && needsMore(kind(json, path))
            || tried.merge(kind(json, path), 1, Integer::sum) > MOST_OF_A_KIND) {
          continue;
        }
        for (JsonNode to : edits(at(json, path), others.get(kind(json, path)), others, random)) {
          Optional<Layout> after = read(with(json, path, to));
          if (after.isEmpty() || after.get().equals(before)) {
            continue;
          }
          List<Difference> changes = SaidChanges.of(before, after.get());
          assertThat(changes).as("%s to %s", path, to).isNotEmpty();
          assertThat(changes).as("%s to %s", path, to).anyMatch(c -> names(c, path));
          listed++;
          done.add(kind(json, path));
          break;
        }
      }
      seen.addAll(done);
    }
    assertThat(listed).isGreaterThan(LONG ? 200 : 35);
    all.removeAll(seen);
    assertThat(all)
        .allMatch(ComparisonTest::needsMore, "kinds of fields that were never changed: " + all);
  }

  /** What hardly a single edit can change without a fault; every one is tried in long sweeps. */
  private static boolean needsMore(String kind) {
    return kind.equals("longlow")
        || kind.startsWith("stances ")
        || Stream.of(
                "role",
                "end",
                "type",
                "kind",
                "tie",
                "limit",
                "wish",
                "closedCell",
                "profile shape")
            .anyMatch(key -> kind.endsWith(" " + key));
  }

  private static void names(JsonNode json, String group, Map<String, List<JsonNode>> into) {
    List<JsonNode> names = into.computeIfAbsent("names of " + group, k -> new ArrayList<>());
    json.get(group).fieldNames().forEachRemaining(n -> names.add(TextNode.valueOf(n)));
  }

  private static boolean names(Difference change, List<String> path) {
    boolean inGroup = GROUPS.contains(path.get(0));
    if (!change.name().equals(path.get(inGroup ? 1 : 0))) {
      return false;
    }
    List<String> field = path.subList(inGroup ? 2 : path.size(), path.size());
    String last = field.stream().filter(k -> !k.matches("\\d+")).reduce((a, b) -> b).orElse("");
    return change.what().contains(last)
        || change.what().equals("drawn at")
        || change.what().equals("is");
  }

  /** Returns other values worth trying, in a seeded order. */
  private static List<JsonNode> edits(
      JsonNode was, List<JsonNode> alike, Map<String, List<JsonNode>> all, Random random) {
    List<JsonNode> out = new ArrayList<>();
    if (was.isBoolean()) {
      return List.of(BooleanNode.valueOf(!was.booleanValue()));
    }
    if (was.isNumber()) {
      return List.of(
          DoubleNode.valueOf(was.doubleValue() + 1), DoubleNode.valueOf(was.doubleValue() - 1));
    }
    Matcher m = QUANTITY.matcher(was.asText());
    if (m.matches()) {
      double value = Double.parseDouble(m.group(1));
      String unit = m.group(2) == null ? "" : m.group(2);
      for (double factor : new double[] {1 + 0.04 * random.nextDouble() + 1e-3, 0.97}) {
        out.add(
            TextNode.valueOf(
                String.format(Locale.ROOT, "%.6f", value == 0 ? factor : value * factor) + unit));
      }
      return out;
    }
    List<JsonNode> others = new ArrayList<>(alike);
    for (String names : List.of("names of pins", "names of parts")) {
      List<JsonNode> some = new ArrayList<>(all.get(names));
      Collections.shuffle(some, random);
      if (some.contains(was)) {
        others.addAll(some.subList(0, Math.min(6, some.size())));
      }
    }
    others.removeIf(o -> o.equals(was) || !o.isTextual());
    Collections.shuffle(others, random);
    out.addAll(others.subList(0, Math.min(8, others.size())));
    for (String word : WORDS) {
      out.add(TextNode.valueOf(word));
    }
    out.add(TextNode.valueOf(was.asText() + " * 1.01"));
    out.add(TextNode.valueOf(was.asText() + "x"));
    return out;
  }

  private static void leaves(JsonNode node, List<String> path, List<List<String>> out) {
    if (node.isObject()) {
      node.properties().forEach(e -> leaves(e.getValue(), plus(path, e.getKey()), out));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        leaves(node.get(i), plus(path, Integer.toString(i)), out);
      }
    } else {
      out.add(path);
    }
  }

  private static List<String> plus(List<String> path, String key) {
    List<String> out = new ArrayList<>(path);
    out.add(key);
    return out;
  }

  private static JsonNode at(JsonNode json, List<String> path) {
    JsonNode node = json;
    for (String key : path) {
      node = node.isArray() ? node.get(Integer.parseInt(key)) : node.get(key);
    }
    return node;
  }

  private static JsonNode with(JsonNode json, List<String> path, JsonNode to) {
    JsonNode copy = json.deepCopy();
    JsonNode parent = at(copy, path.subList(0, path.size() - 1));
    String key = path.get(path.size() - 1);
    if (parent instanceof ObjectNode object) {
      object.set(key, to);
    } else {
      ((ArrayNode) parent).set(Integer.parseInt(key), to);
    }
    return copy;
  }

  /** The group, the kind of part and the field: edits of one kind are alike. */
  private static String kind(JsonNode json, List<String> path) {
    String group = path.get(0);
    StringBuilder text = new StringBuilder(group);
    if (group.equals("parts")) {
      text.append(' ').append(json.get(group).get(path.get(1)).get("kind").asText());
    }
    for (int i = GROUPS.contains(group) ? 2 : 1; i < path.size(); i++) {
      if (!path.get(i).matches("\\d+")) {
        text.append(' ').append(path.get(i));
      }
    }
    return text.toString();
  }

  @Test
  @Tag("long")
  void everythingAddedOrRemovedIsListed() throws IOException {
    int looked = 0;
    for (Layout layout : layouts().values()) {
      JsonNode json = JSON.readTree(LayoutWriter.toJson(layout));
      Optional<Layout> full = read(json);
      if (full.isEmpty()) {
        continue;
      }
      for (String group : GROUPS) {
        if (!json.has(group)) {
          continue;
        }
        int nth = 0;
        for (Map.Entry<String, JsonNode> entry : json.get(group).properties()) {
          if (nth++ % (LONG ? 1 : 3) != 0) {
            continue;
          }
          JsonNode copy = json.deepCopy();
          ((ObjectNode) copy.get(group)).remove(entry.getKey());
          Optional<Layout> less = read(copy);
          if (less.isPresent()) {
            assertThat(SaidChanges.of(full.get(), less.get()))
                .as("%s %s", group, entry.getKey())
                .anyMatch(c -> c.name().equals(entry.getKey()) && c.what().equals("removed"));
            assertThat(SaidChanges.of(less.get(), full.get()))
                .as("%s %s", group, entry.getKey())
                .anyMatch(c -> c.name().equals(entry.getKey()) && c.what().equals("added"));
            looked++;
          }
        }
      }
    }
    assertThat(looked).isGreaterThan(LONG ? 80 : 25);
  }

  @Test
  void anotherOrderOfTheCrewIsListed() throws IOException {
    JsonNode json = JSON.readTree(LayoutWriter.toJson(Demos.layout("heron")));
    ObjectNode crew = (ObjectNode) json.deepCopy().get("crew");
    ObjectNode copy = json.deepCopy();
    ObjectNode turned = copy.putObject("crew");
    turned.set("Bram", crew.get("Bram"));
    turned.set("Runa", crew.get("Runa"));
    assertThat(SaidChanges.of(read(json).orElseThrow(), read(copy).orElseThrow()))
        .containsExactly(new Difference("person", "all crew", "order", "Runa, Bram", "Bram, Runa"));
  }

  @Test
  void roundingAndOtherUnitsAreNoChange() {
    Layout layout = Demos.layout("dunlin");
    Map<String, Pin> pins = new LinkedHashMap<>();
    layout
        .pins()
        .forEach(
            (name, pin) -> {
              if (pin.x().names().isEmpty() && pin.z().names().isEmpty() && !pin.nailed()) {
                pins.put(name, pin.at(nudged(pin.x()), nudged(pin.z())));
              }
            });
    assertThat(pins).hasSizeGreaterThan(5);
    Layout other = layout.withPins(pins);
    String wheelbase = layout.measures().get("wheelbase").is().text();
    double mm = Double.parseDouble(wheelbase.replace(" mm", ""));
    Formula inMetres = Formula.parse(mm / 1000 + " m");
    other = other.withMeasure("wheelbase", other.measures().get("wheelbase").withIs(inMetres));
    Comparison comparison = Comparison.of(Study.of(layout), Study.of(other));
    assertThat(comparison.said()).isEmpty();
    assertThat(comparison.came()).isEmpty();
    assertThat(comparison.verdicts()).isEmpty();
  }

  private static Formula nudged(Formula f) {
    return Formula.parse(f.evaluate(n -> Double.NaN) + 3e-7 + " mm");
  }

  @Test
  void aMeasureBringsItsTargetsPinsPartsPeopleAndLoads() {
    Layout before = Demos.layout("heron");
    Layout after =
        before.withMeasure(
            "wheelbase", before.measures().get("wheelbase").withIs(Formula.parse("1900 mm")));
    Comparison c = Comparison.of(Study.of(before), Study.of(after));
    assertThat(c.said())
        .containsExactly(new Difference("measure", "wheelbase", "is", "1850 mm", "1900 mm"));
    Set<String> kinds = new TreeSet<>();
    c.came().forEach(change -> kinds.add(change.kind()));
    assertThat(kinds).contains("pin", "part", "load");
    assertThat(c.came())
        .anyMatch(x -> x.kind().equals("tie") && x.after().equals("1900.0 mm"))
        .anyMatch(x -> x.kind().equals("pin") && x.name().equals("frontAxle"))
        .anyMatch(
            x ->
                x.kind().equals("load")
                    && x.name().equals("laden, Bram and Runa")
                    && x.what().equals("front")
                    && newtons(x.after()) != newtons(x.before()));
  }

  private static double newtons(String text) {
    return Double.parseDouble(text.replace(" N", ""));
  }

  @Test
  void aMassIsListedWithWhatTheAxlesCarryThen() throws IOException {
    JsonNode json = JSON.readTree(LayoutWriter.toJson(Demos.layout("heron")));
    Layout before = read(json).orElseThrow();
    Layout after =
        read(with(json, List.of("parts", "engine", "mass"), TextNode.valueOf("70 kg")))
            .orElseThrow();
    Comparison c = Comparison.of(Study.of(before), Study.of(after));
    double was = Double.parseDouble(json.at("/parts/engine/mass").asText().replace(" kg", ""));
    String by = String.format(Locale.ROOT, "%.1f kg", was);
    assertThat(c.came()).contains(new Difference("part", "engine", "mass", by, "70.0 kg"));
    Difference total =
        c.came().stream()
            .filter(x -> x.name().equals("unladen") && x.what().equals("mass"))
            .findFirst()
            .orElseThrow();
    double more =
        Double.parseDouble(total.after().replace(" kg", ""))
            - Double.parseDouble(total.before().replace(" kg", ""));
    assertThat(more).isBetween(70 - was - 0.11, 70 - was + 0.11);
  }
}
