package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.Wish;

/**
 * Writes layout files.
 *
 * <p>The order is that of the layout, formulas stay as the user wrote them, and what has its usual
 * value is left out. Reading the text again gives an equal layout (of a traced outline, file, path
 * and scale are written, and its vertices are read from there).
 */
public final class LayoutWriter {

  private static final Json.Style STYLE = new Json.Style(110, 2, Set.of("measures", "pins"));

  private LayoutWriter() {}

  /** Returns the text of the layout file, indented, one pin or measure a line. */
  public static String toJson(Layout layout) {
    return Json.pretty(tree(layout), STYLE);
  }

  /**
   * Saves {@code layout} as {@code file}, see {@link WholeFile#write}.
   *
   * @throws IOException if it cannot be written; the older file is then as it was
   */
  public static void save(Layout layout, Path file) throws IOException {
    byte[] text = toJson(layout).getBytes(StandardCharsets.UTF_8);
    WholeFile.write(file, out -> out.write(text));
  }

  /**
   * Saves {@code layout} so that only its owner reads it, see {@link WholeFile#writePrivate}.
   *
   * @throws IOException if it cannot be written; the older file is then as it was
   */
  public static void savePrivate(Layout layout, Path file) throws IOException {
    byte[] text = toJson(layout).getBytes(StandardCharsets.UTF_8);
    WholeFile.writePrivate(file, out -> out.write(text));
  }

  static ObjectNode tree(Layout layout) {
    ObjectNode top = object();
    top.put("longlow", Layout.FILE_VERSION);
    top.put("name", layout.name());
    text(top, "title", layout.title());
    names(top, "notes", layout.notes());
    group(top, "measures", layout.measures(), LayoutWriter::measure);
    group(top, "pins", layout.pins(), LayoutWriter::pin);
    group(top, "parts", layout.parts(), PartWriter::part);
    group(top, "ties", layout.ties(), LayoutWriter::tie);
    group(top, "limits", layout.limits(), LayoutWriter::limit);
    group(top, "wishes", layout.wishes(), LayoutWriter::wish);
    group(top, "sections", layout.sections(), LayoutWriter::section);
    group(top, "stances", layout.stances(), LayoutWriter::stance);
    group(top, "crew", layout.crew(), LayoutWriter::person);
    ObjectNode demands = demands(layout.demands());
    if (!demands.isEmpty()) {
      top.set("demands", demands);
    }
    return top;
  }

  private static <V> void group(
      ObjectNode top, String key, Map<String, V> values, Function<V, JsonNode> writer) {
    if (!values.isEmpty()) {
      ObjectNode group = top.putObject(key);
      values.forEach((name, value) -> group.set(name, writer.apply(value)));
    }
  }

  private static JsonNode measure(Measure m) {
    if (!m.free() && m.from().isEmpty() && m.to().isEmpty() && m.note().isEmpty()) {
      return Json.NODES.textNode(m.is().text());
    }
    ObjectNode node = object();
    quantity(node, "is", m.is());
    flag(node, "free", m.free());
    quantity(node, "from", m.from());
    quantity(node, "to", m.to());
    text(node, "note", m.note());
    return node;
  }

  private static JsonNode pin(Pin p) {
    ArrayNode at = Json.NODES.arrayNode().add(p.x().text()).add(p.z().text());
    if (!p.nailed() && p.with().equals(Pin.FRAME) && p.note().isEmpty()) {
      return at;
    }
    ObjectNode node = object();
    node.set("at", at);
    flag(node, "nailed", p.nailed());
    if (!p.with().equals(Pin.FRAME)) {
      node.put("with", p.with());
    }
    text(node, "note", p.note());
    return node;
  }

  private static JsonNode tie(Tie t) {
    ObjectNode node = object();
    node.put("tie", t.kind().word());
    names(node, "pins", t.pins());
    quantity(node, "is", t.is());
    if (!t.radii().isEmpty()) {
      ArrayNode radii = node.putArray("radii");
      t.radii().forEach(r -> radii.add(r.text()));
    }
    text(node, "part", t.part());
    if (t.edge() != 0) {
      node.put("edge", t.edge());
    }
    flag(node, "inside", t.inside());
    text(node, "note", t.note());
    return node;
  }

  private static JsonNode limit(Limit l) {
    ObjectNode node = object();
    node.put("limit", l.kind().word());
    names(node, "pins", l.pins());
    names(node, "parts", l.parts());
    text(node, "measure", l.measure());
    quantity(node, "from", l.from());
    quantity(node, "to", l.to());
    text(node, "note", l.note());
    return node;
  }

  private static JsonNode wish(Wish w) {
    ObjectNode node = object();
    node.put("wish", w.kind().word());
    names(node, "pins", w.pins());
    text(node, "measure", w.measure());
    quantity(node, "is", w.is());
    if (w.weight() == Math.rint(w.weight()) && Math.abs(w.weight()) < 1e15) {
      node.put("weight", (long) w.weight());
    } else {
      node.put("weight", w.weight());
    }
    text(node, "note", w.note());
    return node;
  }

  private static JsonNode section(Section s) {
    ObjectNode node = object();
    names(node, "parts", s.parts());
    s.pivot().ifPresent(p -> node.put("pivot", p));
    names(node, "frameArms", s.frameArms());
    names(node, "sectionArms", s.sectionArms());
    quantity(node, "angle", s.angle());
    text(node, "note", s.note());
    return node;
  }

  private static JsonNode stance(Stance s) {
    if (s.section().isEmpty()) {
      return Json.NODES.textNode(s.kind().word());
    }
    return object().put("stance", s.kind().word()).put("section", s.section());
  }

  private static JsonNode person(Person p) {
    ObjectNode node = object();
    node.put("sex", p.sex());
    quantity(node, "stature", p.stature());
    quantity(node, "mass", p.mass());
    if (!p.measured().isEmpty()) {
      ObjectNode measured = node.putObject("measured");
      p.measured().forEach((name, value) -> quantity(measured, name, value));
    }
    names(node, "seats", p.seats());
    node.put("helmet", p.helmet());
    node.put("boots", p.boots());
    node.put("clothes", p.clothes());
    return node;
  }

  private static ObjectNode demands(Demands d) {
    ObjectNode node = object();
    names(node, "rules", d.rules());
    d.limits().forEach((key, value) -> quantity(node, key.word(), value));
    return node;
  }

  static ObjectNode object() {
    return Json.NODES.objectNode();
  }

  static void text(ObjectNode node, String key, String text) {
    if (!text.isEmpty()) {
      node.put(key, text);
    }
  }

  static void flag(ObjectNode node, String key, boolean value) {
    if (value) {
      node.put(key, true);
    }
  }

  static void names(ObjectNode node, String key, Collection<String> names) {
    if (!names.isEmpty()) {
      ArrayNode array = node.putArray(key);
      names.forEach(array::add);
    }
  }

  static void quantity(ObjectNode node, String key, Formula formula) {
    node.put(key, formula.text());
  }

  static void quantity(ObjectNode node, String key, Optional<Formula> formula) {
    formula.ifPresent(f -> node.put(key, f.text()));
  }
}
