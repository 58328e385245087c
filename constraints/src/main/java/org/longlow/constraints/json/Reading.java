package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.MathFunction;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Occupant;

/** What all readers of one file share: its faults, the names it declares and its measures. */
final class Reading {

  /** Most entries of one group, such as pins. */
  static final int MAX_ENTRIES = 2000;

  /** What touches and gaps call whoever sits on the machine. */
  static final String RIDER = Occupant.RIDER;

  private static final Pattern NAME =
      Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N} _.'()+-]{0,59}");
  private static final Pattern MEASURE_NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]{0,59}");

  final Faults faults;

  /** The folder of the layout file; null where there is none. */
  final java.nio.file.Path folder;

  final Quantities quantities;
  final Set<String> pins;
  final Set<String> parts;
  final Set<String> partsAndRider;
  final Set<String> sections;
  final Set<String> seats = new LinkedHashSet<>();
  final List<String> notes = new ArrayList<>();

  Reading(JsonNode root, java.nio.file.Path folder, Faults faults) {
    this.faults = faults;
    this.folder = folder;
    this.quantities = new Quantities(faults, keys(root, "measures"));
    this.pins = keys(root, "pins");
    this.parts = keys(root, "parts");
    this.sections = keys(root, "sections");
    this.partsAndRider = new LinkedHashSet<>(parts);
    partsAndRider.add(RIDER);
    for (JsonNode part : root.path("parts")) {
      String kind = part.path("kind").asText();
      if (PartReader.SEATED.contains(kind)) {
        seats.add(part.path("seat").asText(RIDER));
      }
    }
  }

  private static Set<String> keys(JsonNode root, String group) {
    Set<String> keys = new LinkedHashSet<>();
    root.path(group).fieldNames().forEachRemaining(keys::add);
    return keys;
  }

  /** Reads a name and holds it to the {@code known} ones; returns it as written. */
  String reference(String path, JsonNode node, Collection<String> known, String what) {
    if (!node.isTextual()) {
      faults.structure(
          path, Json.shown(node), "must be the name of a " + what, "put the name in quotes");
      return "";
    }
    String name = node.textValue();
    if (!known.contains(name)) {
      faults.meaning(
          path, Json.shown(node), "is no " + what + " here", Names.advice(name, known, what));
    }
    return name;
  }

  /** Holds the name of an entry to the pattern for names. */
  void checkName(String path, String name, String what) {
    if (!NAME.matcher(name).matches()) {
      faults.structure(
          path,
          "",
          "is no good name for a " + what,
          "use up to 60 letters, digits, spaces and _ . ' ( ) + -, a letter or digit first");
    }
  }

  void checkMeasureName(String path, String name) {
    if (!MEASURE_NAME.matcher(name).matches()) {
      faults.structure(
          path,
          "",
          "is no good name for a measure",
          "use up to 60 of A-Z a-z 0-9 _ without spaces, a letter first, so formulas can use it");
    } else if (Unit.named(name).isPresent()) {
      faults.meaning(path, "", "is named like the unit " + name, "choose another name");
    } else if (MathFunction.named(name).isPresent()
        || Formula.RESERVED.contains(name)
        || name.equals(OutlineReader.SMOOTH)) {
      faults.meaning(
          path, "", "is named like something formulas already know", "choose another name");
    }
  }
}
