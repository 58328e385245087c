package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Wish;

/** Reads ties, limits and wishes. */
final class RelationReader {

  /** Most pins of one relation. */
  static final int MAX_PINS = 50;

  private final Reading reading;
  private final Map<String, Part> parts;

  /**
   * @param parts the parts as read; null values where one could not be
   */
  RelationReader(Reading reading, Map<String, Part> parts) {
    this.reading = reading;
    this.parts = parts;
  }

  /** Returns the tie, or null where even its kind is unknown. */
  Tie tie(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "tie");
    Obj obj = Obj.open(reading, e.path(), e.json()).orElse(null);
    TieKind kind = obj == null ? null : obj.word("tie", TieKind.class, null);
    if (kind == null) {
      return null;
    }
    List<String> pins = obj.references("pins", reading.pins, "pin", 0, MAX_PINS);
    count(obj, "pins", pins.size(), kind.fewestPins(), kind.mostPins(), kind.word());
    boolean takesTarget = kind.target().isPresent() || kind == TieKind.FORMULA;
    Optional<Formula> is = target(obj, kind.word(), takesTarget, takesTarget, kind.target());
    List<Formula> radii = radii(obj);
    if (kind == TieKind.BELT_LENGTH) {
      count(obj, "radii", radii.size(), pins.size(), pins.size(), "a belt over these pins");
    } else {
      count(obj, "radii", radii.size(), kind.radii(), kind.radii(), kind.word());
    }
    String part = "";
    JsonNode partNode = obj.optional("part");
    if (partNode != null && !isBlank(partNode)) {
      part = reading.reference(obj.at("part"), partNode, reading.parts, "part");
    }
    int edge = obj.count("edge", OutlineReader.MAX_POINTS);
    edge(obj, kind, part, edge);
    boolean inside = obj.flag("inside", false);
    String note = obj.text("note", "");
    obj.close();
    return new Tie(kind, pins, is, radii, part, edge, inside, note);
  }

  /** An empty name says the same as none. */
  private static boolean isBlank(JsonNode node) {
    return node.isTextual() && node.textValue().isEmpty();
  }

  private List<Formula> radii(Obj obj) {
    List<Formula> radii = new ArrayList<>();
    for (Obj.Item item : obj.items("radii", 0, MAX_PINS)) {
      radii.add(reading.quantities.read(item.path(), item.json(), Dim.LENGTH, Sign.POSITIVE));
    }
    return radii;
  }

  private void edge(Obj obj, TieKind kind, String part, int edge) {
    if (kind != TieKind.ON_EDGE) {
      if (!part.isEmpty()) {
        reading.faults.meaning(
            obj.at("part"), Json.quoted(part), "is not used by " + kind.word(), "take it out");
      }
      return;
    }
    if (part.isEmpty()) {
      reading.faults.meaning(obj.at("part"), "", "is missing", "name the part whose edge is meant");
      return;
    }
    Outline outline = outline(parts.get(part));
    if (outline == null) {
      if (parts.get(part) != null) {
        reading.faults.meaning(
            obj.at("part"), Json.quoted(part), "has no outline", "name a solid, cowl or screen");
      }
      return;
    }
    int edges = outline.vertices().size() - (outline.closed() ? 0 : 1);
    if (edge >= edges && edges > 0) {
      reading.faults.meaning(
          obj.at("edge"),
          Integer.toString(edge),
          "is no edge of " + part + ", which has edges 0 to " + (edges - 1),
          "count edges from 0, edge 0 runs from the first vertex to the second");
    }
  }

  private static Outline outline(Part part) {
    if (part instanceof Part.Solid solid) {
      return solid.outline();
    }
    return part instanceof Part.Shell shell ? shell.outline() : null;
  }

  private Optional<Formula> target(
      Obj obj, String word, boolean takes, boolean needs, Optional<Dim> dim) {
    JsonNode node = obj.optional("is");
    if (node == null) {
      if (needs) {
        reading.faults.meaning(
            obj.at("is"), "", "is missing, " + word + " needs it", "add the target quantity");
      }
      return Optional.empty();
    }
    if (!takes) {
      reading.faults.meaning(
          obj.at("is"), Json.shown(node), "is not used by " + word, "take it out");
    }
    return Optional.of(reading.quantities.read(obj.at("is"), node, dim.orElse(null), Sign.ANY));
  }

  private void count(Obj obj, String key, int count, int fewest, int most, String word) {
    if (count < fewest || count > most) {
      String needs = fewest == most ? Integer.toString(fewest) : "from " + fewest + " to " + most;
      reading.faults.meaning(
          obj.at(key),
          "",
          "has " + count + " entries, " + word + " needs " + needs,
          count < fewest ? "add the missing ones" : "take the others out");
    }
  }

  /** Returns the limit, or null where even its kind is unknown. */
  Limit limit(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "limit");
    Obj obj = Obj.open(reading, e.path(), e.json()).orElse(null);
    Limit.Kind kind = obj == null ? null : obj.word("limit", Limit.Kind.class, null);
    if (kind == null) {
      return null;
    }
    List<String> pins = obj.references("pins", reading.pins, "pin", 0, MAX_PINS);
    count(obj, "pins", pins.size(), kind.pins(), kind.pins(), kind.word());
    List<String> partNames =
        obj.references(
            "parts",
            kind == Limit.Kind.GAP ? reading.partsAndRider : reading.parts,
            "part",
            0,
            MAX_PINS);
    count(obj, "parts", partNames.size(), kind.parts(), kind.parts(), kind.word());
    if (partNames.size() == 2 && partNames.get(0).equals(partNames.get(1))) {
      reading.faults.meaning(
          obj.at("parts"),
          partNames.get(0),
          "is named twice, a gap is between two",
          "name another part, or " + Reading.RIDER);
    }
    String measure = measure(obj, kind == Limit.Kind.MEASURE, kind.word());
    Dim dim = kind.dim().or(() -> reading.quantities.dim(measure)).orElse(null);
    Optional<Formula> from = obj.may("from", dim, Sign.ANY);
    Optional<Formula> to = obj.may("to", dim, Sign.ANY);
    if (from.isEmpty() && to.isEmpty()) {
      reading.faults.meaning(obj.path, "", "limits nothing", "add \"from\" or \"to\" or both");
    }
    LayoutAssembly.ordered(reading, obj.at("to"), from, to);
    String note = obj.text("note", "");
    obj.close();
    return new Limit(kind, pins, partNames, measure, from, to, note);
  }

  private String measure(Obj obj, boolean needed, String word) {
    JsonNode node = obj.optional("measure");
    if (node == null || isBlank(node)) {
      if (needed) {
        reading.faults.meaning(obj.at("measure"), "", "is missing", "name a free measure");
      }
      return "";
    }
    String name = reading.reference(obj.at("measure"), node, reading.quantities.names(), "measure");
    reading.quantities.use(name);
    if (!needed) {
      reading.faults.meaning(
          obj.at("measure"), Json.shown(node), "is not used by " + word, "take it out");
    } else if (reading.quantities.names().contains(name) && !reading.quantities.isFree(name)) {
      reading.faults.meaning(
          obj.at("measure"),
          Json.shown(node),
          "is not free, so nothing can be asked of it",
          "write \"free\": true at the measure or take this out");
    }
    return name;
  }

  /** Returns the wish, or null where even its kind is unknown. */
  Wish wish(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "wish");
    Obj obj = Obj.open(reading, e.path(), e.json()).orElse(null);
    Wish.Kind kind = obj == null ? null : obj.word("wish", Wish.Kind.class, null);
    if (kind == null) {
      return null;
    }
    List<String> pins = obj.references("pins", reading.pins, "pin", 0, MAX_PINS);
    count(obj, "pins", pins.size(), kind.pins(), kind.pins(), kind.word());
    String measure = measure(obj, kind == Wish.Kind.MEASURE, kind.word());
    Optional<Dim> dim = kind.dim().or(() -> reading.quantities.dim(measure));
    boolean takes = kind != Wish.Kind.COMFORT;
    Optional<Formula> is = target(obj, kind.word(), takes, takes, dim);
    double weight = obj.positive("weight", 1);
    String note = obj.text("note", "");
    obj.close();
    return new Wish(kind, pins, measure, is, weight, note);
  }
}
