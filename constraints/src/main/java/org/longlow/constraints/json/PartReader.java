package org.longlow.constraints.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.machine.TyreSize;

/** Reads parts, one method for each shape of part. */
final class PartReader {

  /** Kinds that belong to a seat. */
  static final Set<String> SEATED = Set.of("cushion", "grip", "peg", "footboard");

  /** Most foam layers on one board. */
  static final int MAX_LAYERS = 20;

  /** Most pins of one tube. */
  static final int MAX_PATH = 50;

  /** All kinds, in the order of the documentation. */
  static final List<String> KINDS = kinds();

  private static final List<String> COLOURS = List.of("white", "amber", "red");

  private final Reading reading;
  private final OutlineReader outlines;
  private final FoamReader foams;

  PartReader(Reading reading) {
    this.reading = reading;
    this.outlines = new OutlineReader(reading);
    this.foams = new FoamReader(reading);
  }

  private static List<String> kinds() {
    List<String> kinds = new ArrayList<>(List.of("wheel", "front", "swingarm"));
    kinds.addAll(Obj.words(Part.TubeKind.class));
    kinds.addAll(Obj.words(Part.SolidKind.class));
    kinds.addAll(Obj.words(Part.ShellKind.class));
    kinds.add("cushion");
    kinds.addAll(Obj.words(Part.RestKind.class));
    kinds.addAll(List.of("lamp", "stand"));
    return List.copyOf(kinds);
  }

  /** Returns the part, or null where even its kind is unknown. */
  Part part(Obj.Entry e) {
    reading.checkName(e.path(), e.name(), "part");
    if (e.name().equals(Reading.RIDER)) {
      reading.faults.meaning(
          e.path(), "", "is the word for whoever sits on the machine", "choose another name");
    }
    Optional<Obj> open = Obj.open(reading, e.path(), e.json());
    if (open.isEmpty()) {
      return null;
    }
    Obj obj = open.get();
    String kind = obj.oneOf("kind", KINDS, null);
    if (kind == null) {
      return null;
    }
    Part part =
        switch (kind) {
          case "wheel" -> wheel(obj, e.name());
          case "front" -> front(obj, e.name());
          case "swingarm" -> swingarm(obj, e.name());
          case "rail", "exhaust" -> tube(obj, e.name(), of(Part.TubeKind.class, kind));
          case "cowl", "screen" -> shell(obj, e.name(), of(Part.ShellKind.class, kind));
          case "cushion" -> cushion(obj, e.name());
          case "grip", "peg", "footboard" -> rest(obj, e.name(), of(Part.RestKind.class, kind));
          case "lamp" -> lamp(obj, e.name());
          case "stand" -> stand(obj, e.name());
          default -> solid(obj, e.name(), of(Part.SolidKind.class, kind));
        };
    obj.close();
    return part;
  }

  private static <E extends Enum<E>> E of(Class<E> type, String word) {
    return type.getEnumConstants()[Obj.words(type).indexOf(word)];
  }

  private PartBase base(Obj obj, String name, boolean needsSpread, boolean mayBeTwo) {
    Optional<Spread> spread = spread(obj, needsSpread, mayBeTwo);
    Optional<Formula> mass = obj.may("mass", Dim.MASS, Sign.POSITIVE);
    String material = material(obj, mass.isPresent());
    boolean steered = obj.flag("steered", false);
    boolean hot = obj.flag("hot", Part.usuallyHot(obj.text("kind", "")));
    List<String> touches =
        obj.references("touches", reading.partsAndRider, "part", 0, Reading.MAX_ENTRIES);
    return new PartBase(name, spread, mass, material, steered, hot, touches, obj.text("note", ""));
  }

  private String material(Obj obj, boolean weighed) {
    String word = obj.text("material", "");
    Optional<Material> material = Material.named(word);
    if (!word.isEmpty() && material.isEmpty()) {
      reading.faults.meaning(
          obj.at("material"),
          Json.quoted(word),
          "is no material Longlow knows",
          Names.advice(word, Obj.words(Material.class), "material"));
    }
    if (material.isPresent() && Double.isNaN(material.get().densityKgM3()) && !weighed) {
      reading.faults.meaning(
          obj.at("mass"), "", "is missing, material " + word + " has no density", "weigh the part");
    }
    return word;
  }

  private Optional<Spread> spread(Obj obj, boolean needed, boolean mayBeTwo) {
    boolean both = mayBeTwo && obj.flag("both", false);
    if (!needed && !obj.has("left") & !obj.has("right")) {
      return Optional.empty();
    }
    Formula left = obj.need("left", Dim.LENGTH, Sign.ANY);
    Formula right = obj.need("right", Dim.LENGTH, Sign.ANY);
    Optional<Double> l = reading.quantities.fixedValue(left);
    Optional<Double> r = reading.quantities.fixedValue(right);
    if (l.isPresent() && r.isPresent() && l.get() + r.get() <= 0) {
      reading.faults.meaning(
          obj.at("right"),
          Json.quoted(right.text()),
          "leaves no width: the part runs from -right to +left, and left is " + left.text(),
          "make left + right more than 0");
    }
    return Optional.of(new Spread(left, right, both));
  }

  private Part wheel(Obj obj, String name) {
    PartBase base = base(obj, name, false, false);
    Part.End end = obj.word("end", Part.End.class, null);
    String axle = obj.pin("axle", "the axle");
    String tyre = obj.text("tyre", "");
    Optional<Formula> radius = obj.may("radius", Dim.LENGTH, Sign.POSITIVE);
    Optional<Formula> width = obj.may("width", Dim.LENGTH, Sign.POSITIVE);
    Optional<Formula> crown = obj.may("crown", Dim.LENGTH, Sign.POSITIVE);
    if (tyre.isBlank() && (radius.isEmpty() || width.isEmpty())) {
      reading.faults.meaning(
          obj.path,
          "",
          "has neither a tyre size nor a measured radius and width",
          "add \"tyre\", such as \"120/70 R17\", or \"radius\" and \"width\"");
    }
    if (!tyre.isBlank()) {
      for (String fault : TyreSize.read(tyre).faults()) {
        reading.faults.meaning(obj.at("tyre"), Json.quoted(tyre), fault, "");
      }
    }
    return new Part.Wheel(base, end, axle, tyre, radius, width, crown);
  }

  private Part front(Obj obj, String name) {
    PartBase base = base(obj, name, false, false);
    Part.FrontKind type = obj.word("type", Part.FrontKind.class, null);
    String top = obj.pin("top", "the upper end of the steering axis");
    String bottom = obj.pin("bottom", "the lower end of the steering axis");
    Optional<String> pivot = obj.mayPin("pivot");
    if (type == Part.FrontKind.TELESCOPIC && pivot.isPresent()) {
      reading.faults.meaning(
          obj.at("pivot"), "", "is not part of a telescopic fork", "take it out");
    }
    if (type != null && type != Part.FrontKind.TELESCOPIC && pivot.isEmpty()) {
      reading.faults.meaning(
          obj.at("pivot"), "", "is missing", "add the pin that the link turns about");
    }
    return new Part.Front(
        base,
        type,
        top,
        bottom,
        pivot,
        obj.pin("axle", "the axle"),
        obj.need("tube", Dim.LENGTH, Sign.POSITIVE),
        obj.need("y", Dim.LENGTH, Sign.NOT_NEGATIVE),
        obj.need("bump", Dim.LENGTH, Sign.NOT_NEGATIVE),
        obj.need("droop", Dim.LENGTH, Sign.NOT_NEGATIVE),
        obj.may("rate", Dim.RATE, Sign.POSITIVE),
        obj.may("preload", Dim.FORCE, Sign.NOT_NEGATIVE));
  }

  private Part swingarm(Obj obj, String name) {
    return new Part.Swingarm(
        base(obj, name, true, false),
        obj.pin("pivot", "the pivot"),
        obj.pin("axle", "the axle"),
        obj.need("depth", Dim.LENGTH, Sign.POSITIVE),
        obj.need("bump", Dim.LENGTH, Sign.NOT_NEGATIVE),
        obj.need("droop", Dim.LENGTH, Sign.NOT_NEGATIVE),
        obj.may("rate", Dim.RATE, Sign.POSITIVE),
        obj.may("preload", Dim.FORCE, Sign.NOT_NEGATIVE));
  }

  private Part tube(Obj obj, String name, Part.TubeKind type) {
    PartBase base = base(obj, name, false, false);
    obj.required("path", "two or more pins");
    List<String> path = obj.references("path", reading.pins, "pin", 2, MAX_PATH);
    for (int i = 1; i < path.size(); i++) {
      if (path.get(i).equals(path.get(i - 1)) && !path.get(i).isEmpty()) {
        reading.faults.meaning(
            JsonPath.index(obj.at("path"), i),
            Json.quoted(path.get(i)),
            "is the same pin as the one before",
            "take one of them out");
      }
    }
    Formula diameter = obj.need("diameter", Dim.LENGTH, Sign.POSITIVE);
    Formula wall = obj.need("wall", Dim.LENGTH, Sign.POSITIVE);
    Optional<Double> d = reading.quantities.fixedValue(diameter);
    Optional<Double> w = reading.quantities.fixedValue(wall);
    if (d.isPresent() && w.isPresent() && d.get() > 0 && 2 * w.get() > d.get()) {
      reading.faults.meaning(
          obj.at("wall"),
          Json.quoted(wall.text()),
          "is more than half the diameter, " + diameter.text(),
          "write the thickness of the tube's wall");
    }
    return new Part.Tube(
        base,
        type,
        path,
        diameter,
        wall,
        obj.need("bendRadius", Dim.LENGTH, Sign.POSITIVE),
        obj.need("y", Dim.LENGTH, Sign.ANY),
        obj.flag("both", false));
  }

  private Part solid(Obj obj, String name, Part.SolidKind type) {
    PartBase base = base(obj, name, true, true);
    return new Part.Solid(base, type, outlines.frame(obj), outlines.outline(obj));
  }

  private Part shell(Obj obj, String name, Part.ShellKind type) {
    PartBase base = base(obj, name, true, true);
    return new Part.Shell(
        base,
        type,
        outlines.frame(obj),
        outlines.outline(obj),
        obj.need("thickness", Dim.LENGTH, Sign.POSITIVE),
        obj.flag("open", false));
  }

  private Part cushion(Obj obj, String name) {
    PartBase base = base(obj, name, true, true);
    Part.CushionRole role = obj.word("role", Part.CushionRole.class, null);
    String seat = obj.filled("seat", Reading.RIDER);
    String from = obj.pin("from", "the rear or lower end of the board");
    String to = obj.pin("to", "the front or upper end of the board");
    if (!from.isEmpty() && from.equals(to)) {
      reading.faults.meaning(
          obj.at("to"), Json.quoted(to), "is the same pin as from", "give the board two ends");
    }
    Formula board = obj.need("board", Dim.LENGTH, Sign.POSITIVE);
    obj.required("layers", "the foam from the top down to the board");
    List<FoamSpec> layers = new ArrayList<>();
    for (Obj.Item item : obj.items("layers", 1, MAX_LAYERS)) {
      Obj.open(reading, item.path(), item.json()).ifPresent(layer -> layers.add(foams.foam(layer)));
    }
    return new Part.Cushion(base, role, seat, from, to, board, layers);
  }

  private Part rest(Obj obj, String name, Part.RestKind type) {
    PartBase base = base(obj, name, false, false);
    String seat = obj.filled("seat", Reading.RIDER);
    String at = obj.pin("at", "its centre");
    Optional<String> to =
        type == Part.RestKind.FOOTBOARD
            ? Optional.of(obj.pin("to", "its front end"))
            : Optional.empty();
    return new Part.Rest(
        base,
        type,
        seat,
        at,
        to,
        obj.need("diameter", Dim.LENGTH, Sign.POSITIVE),
        obj.need("y", Dim.LENGTH, Sign.NOT_NEGATIVE),
        obj.need("length", Dim.LENGTH, Sign.POSITIVE),
        obj.flag("folds", false));
  }

  private Part lamp(Obj obj, String name) {
    PartBase base = base(obj, name, false, false);
    Part.LampKind type = obj.word("lamp", Part.LampKind.class, null);
    return new Part.Lamp(
        base,
        type,
        obj.pin("at", "the centre of the lit area"),
        obj.or("y", Dim.LENGTH, Sign.ANY, "0 mm"),
        obj.flag("pair", false),
        obj.need("halfWidth", Dim.LENGTH, Sign.POSITIVE),
        obj.need("halfHeight", Dim.LENGTH, Sign.POSITIVE),
        obj.need("depth", Dim.LENGTH, Sign.POSITIVE),
        obj.oneOf("colour", COLOURS, type == null ? "white" : colour(type)));
  }

  /** The colour that a lamp has where the file gives none. */
  private static String colour(Part.LampKind type) {
    return switch (type) {
      case TAIL, STOP, REAR_FOG, REAR_REFLECTOR -> "red";
      case FRONT_SIGNAL, REAR_SIGNAL, SIDE_REFLECTOR -> "amber";
      case HEADLAMP, DRIVING_BEAM, DAYTIME, FRONT_FOG, FRONT_POSITION, PLATE_LAMP, PLATE -> "white";
    };
  }

  private Part stand(Obj obj, String name) {
    return new Part.Stand(
        base(obj, name, false, false),
        obj.pin("pivot", "the hinge"),
        obj.pin("foot", "the foot when parked"),
        obj.pin("stowed", "the foot when riding"),
        obj.need("y", Dim.LENGTH, Sign.ANY),
        obj.need("diameter", Dim.LENGTH, Sign.POSITIVE),
        obj.need("lean", Dim.ANGLE, Sign.between(0, 45)));
  }
}
