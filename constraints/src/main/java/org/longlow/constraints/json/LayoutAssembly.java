package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.Wish;

/** Puts a layout together, group by group. */
final class LayoutAssembly {

  private final Reading reading;

  LayoutAssembly(Reading reading) {
    this.reading = reading;
  }

  /** Returns the layout; it is only sound if no fault was collected. */
  Optional<Layout> layout(JsonNode root) {
    Optional<Obj> open = Obj.open(reading, "$", root);
    if (open.isEmpty()) {
      return Optional.empty();
    }
    Obj top = open.get();
    if (!version(top)) {
      return Optional.empty();
    }
    top.required("name", "a short name for the layout");
    String name = top.filled("name", "");
    String title = top.text("title", "");
    List<String> notes = top.texts("notes", 100);
    Map<String, Measure> measures = measures(top);
    Map<String, Pin> pins = new LinkedHashMap<>();
    top.each("pins", e -> pins.put(e.name(), pin(e)));
    PartReader partReader = new PartReader(reading);
    Map<String, Part> parts = new LinkedHashMap<>();
    top.each("parts", e -> parts.put(e.name(), partReader.part(e)));
    RelationReader relations = new RelationReader(reading, parts);
    Map<String, Tie> ties = new LinkedHashMap<>();
    top.each("ties", e -> ties.put(e.name(), relations.tie(e)));
    Map<String, Limit> limits = new LinkedHashMap<>();
    top.each("limits", e -> limits.put(e.name(), relations.limit(e)));
    Map<String, Wish> wishes = new LinkedHashMap<>();
    top.each("wishes", e -> wishes.put(e.name(), relations.wish(e)));
    StateReader states = new StateReader(reading);
    Map<String, Section> sections = new LinkedHashMap<>();
    top.each("sections", e -> sections.put(e.name(), states.section(e)));
    Map<String, Stance> stances = new LinkedHashMap<>();
    top.each("stances", e -> stances.put(e.name(), states.stance(e)));
    Map<String, Person> crew = new LinkedHashMap<>();
    top.each("crew", e -> crew.put(e.name(), states.person(e)));
    JsonNode demandNode = top.optional("demands");
    Demands demands =
        demandNode == null
            ? new Demands(List.of(), Map.of())
            : states.demands(top.at("demands"), demandNode);
    top.close();
    wheels(root.path("parts"));
    for (String unused : measures.keySet()) {
      if (!reading.quantities.used().contains(unused)) {
        reading.notes.add("measure " + unused + " is used nowhere");
      }
    }
    if (!reading.faults.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Layout(
            name, title, notes, measures, pins, parts, ties, limits, wishes, sections, stances,
            crew, demands));
  }

  /** A file of another version may differ in anything, so then nothing else is looked at. */
  private boolean version(Obj top) {
    JsonNode version = top.required("longlow", "the version of the file: 1");
    if (version == null) {
      return true;
    }
    if (!version.isNumber() || version.doubleValue() != Layout.FILE_VERSION) {
      boolean newer = version.isNumber() && version.doubleValue() > Layout.FILE_VERSION;
      reading.faults.structure(
          top.at("longlow"),
          Json.shown(version),
          "must be " + Layout.FILE_VERSION + ", the version of the file format",
          newer ? "read it with a newer Longlow" : "write \"longlow\": " + Layout.FILE_VERSION);
      return !newer;
    }
    return true;
  }

  private Map<String, Measure> measures(Obj top) {
    Map<String, Raw> raws = new LinkedHashMap<>();
    Map<String, String> paths = new LinkedHashMap<>();
    top.each(
        "measures",
        e -> {
          reading.checkMeasureName(e.path(), e.name());
          Raw raw = raw(e);
          raws.put(e.name(), raw);
          paths.put(e.name(), raw.isPath);
          reading.quantities.declare(e.name(), raw.is, raw.free);
        });
    reading.quantities.link(paths);
    Map<String, Measure> measures = new LinkedHashMap<>();
    raws.forEach((name, raw) -> measures.put(name, measure(name, raw)));
    return measures;
  }

  /** A measure before it is known what all measures are. */
  private record Raw(
      Formula is,
      String isPath,
      boolean free,
      JsonNode from,
      String fromPath,
      JsonNode to,
      String toPath,
      String note) {}

  private Raw raw(Obj.Entry e) {
    if (!e.json().isObject()) {
      Formula is = reading.quantities.raw(e.path(), e.json()).orElse(Quantities.LOST);
      return new Raw(is, e.path(), false, null, "", null, "", "");
    }
    Obj obj = Obj.open(reading, e.path(), e.json()).orElseThrow();
    JsonNode isNode = obj.required("is", "a quantity or formula");
    Formula is =
        isNode == null
            ? Quantities.LOST
            : reading.quantities.raw(obj.at("is"), isNode).orElse(Quantities.LOST);
    Raw raw =
        new Raw(
            is,
            obj.at("is"),
            obj.flag("free", false),
            obj.optional("from"),
            obj.at("from"),
            obj.optional("to"),
            obj.at("to"),
            obj.text("note", ""));
    obj.close();
    return raw;
  }

  private Measure measure(String name, Raw raw) {
    Dim dim = reading.quantities.dim(name).orElse(null);
    Optional<Formula> from = bound(raw.fromPath, raw.from, dim);
    Optional<Formula> to = bound(raw.toPath, raw.to, dim);
    ordered(reading, raw.toPath, from, to);
    return new Measure(raw.is, dim == null ? Dim.NUMBER : dim, raw.free, from, to, raw.note);
  }

  private Optional<Formula> bound(String path, JsonNode node, Dim dim) {
    return node == null
        ? Optional.empty()
        : Optional.of(reading.quantities.read(path, node, dim, Sign.ANY));
  }

  /** Reports a smallest value above the largest one. */
  static void ordered(Reading reading, String path, Optional<Formula> from, Optional<Formula> to) {
    if (from.isEmpty() || to.isEmpty()) {
      return;
    }
    Optional<Double> low = reading.quantities.fixedValue(from.get());
    Optional<Double> high = reading.quantities.fixedValue(to.get());
    if (low.isPresent() && high.isPresent() && low.get() > high.get()) {
      reading.faults.meaning(
          path,
          Json.quoted(to.get().text()),
          "is less than from, " + from.get().text(),
          "swap them");
    }
  }

  private static final List<String> CARRIERS = List.of(Pin.FRAME, Pin.FRONT_WHEEL, Pin.REAR_WHEEL);

  private Pin pin(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "pin");
    if (e.json().isArray()) {
      Formula[] at = place(e.path(), e.json());
      return new Pin(at[0], at[1], false, Pin.FRAME, "");
    }
    if (!e.json().isObject()) {
      reading.faults.structure(
          e.path(), Json.shown(e.json()), "must be a place", "write [\"x mm\", \"z mm\"]");
      return null;
    }
    Obj obj = Obj.open(reading, e.path(), e.json()).orElseThrow();
    JsonNode atNode = obj.required("at", "[\"x mm\", \"z mm\"]");
    Formula[] at =
        atNode == null
            ? new Formula[] {Quantities.LOST, Quantities.LOST}
            : place(obj.at("at"), atNode);
    boolean nailed = obj.flag("nailed", false);
    JsonNode withNode = obj.optional("with");
    String with = Pin.FRAME;
    if (withNode != null) {
      Set<String> known = new java.util.LinkedHashSet<>(CARRIERS);
      known.addAll(reading.sections);
      with = reading.reference(obj.at("with"), withNode, known, "carrier of pins");
    }
    String note = obj.text("note", "");
    obj.close();
    return new Pin(at[0], at[1], nailed, with, note);
  }

  private Formula[] place(String path, JsonNode node) {
    if (!node.isArray() || node.size() != 2) {
      reading.faults.structure(
          path, Json.shown(node), "must hold two lengths, x and z", "write [\"x mm\", \"z mm\"]");
      return new Formula[] {Quantities.LOST, Quantities.LOST};
    }
    return new Formula[] {
      reading.quantities.read(JsonPath.index(path, 0), node.get(0), Dim.LENGTH, Sign.ANY),
      reading.quantities.read(JsonPath.index(path, 1), node.get(1), Dim.LENGTH, Sign.ANY)
    };
  }

  private void wheels(JsonNode parts) {
    for (String end : Obj.words(Part.End.class)) {
      int count = 0;
      for (JsonNode part : parts) {
        if (part.path("kind").asText().equals("wheel") && part.path("end").asText().equals(end)) {
          count++;
        }
      }
      if (count != 1) {
        reading.faults.meaning(
            "$.parts",
            "",
            "has " + count + " wheels with \"end\": \"" + end + "\", needs exactly one",
            count == 0 ? "add a part of kind wheel" : "take one out or change its end");
      }
    }
  }
}
