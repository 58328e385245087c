package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;

/**
 * A JSON object being read. Asking for a key makes it known; {@link #close} reports the keys that
 * nobody asked for.
 */
final class Obj {

  /** Longest free text accepted. */
  static final int MAX_TEXT = 2000;

  private static final Pattern INK = Pattern.compile("\\S");

  final Reading reading;
  final String path;
  private final JsonNode json;
  private final Set<String> known = new LinkedHashSet<>();

  private Obj(Reading reading, String path, JsonNode json) {
    this.reading = reading;
    this.path = path;
    this.json = json;
  }

  /** Opens {@code json}; if it is no object, reports that and reads as an empty one. */
  static Optional<Obj> open(Reading reading, String path, JsonNode json) {
    if (json.isObject()) {
      return Optional.of(new Obj(reading, path, json));
    }
    reading.faults.structure(
        path, Json.shown(json), "must be an object", "write { ... } with its keys");
    return Optional.empty();
  }

  /** Reports keys that were not asked for. */
  void close() {
    for (Iterator<String> i = json.fieldNames(); i.hasNext(); ) {
      String key = i.next();
      if (!known.contains(key)) {
        reading.faults.structure(
            at(key),
            Json.shown(json.get(key)),
            "is not a known key here",
            Names.advice(key, known, "key"));
      }
    }
  }

  String at(String key) {
    return JsonPath.key(path, key);
  }

  boolean has(String key) {
    known.add(key);
    return json.has(key);
  }

  /** Returns the value at {@code key}, or null after reporting that it is missing. */
  JsonNode required(String key, String what) {
    if (has(key)) {
      return json.get(key);
    }
    reading.faults.structure(at(key), "", "is missing", "add " + Json.quoted(key) + ", " + what);
    return null;
  }

  JsonNode optional(String key) {
    return has(key) ? json.get(key) : null;
  }

  /** Free text; {@code orElse} where absent. */
  String text(String key, String orElse) {
    JsonNode node = optional(key);
    return node == null ? orElse : text(at(key), node, orElse);
  }

  private String text(String where, JsonNode node, String orElse) {
    if (!node.isTextual()) {
      reading.faults.structure(where, Json.shown(node), "must be text", "put it in quotes");
      return orElse;
    }
    String text = node.textValue();
    if (text.codePointCount(0, text.length()) > MAX_TEXT) {
      reading.faults.structure(
          where, Json.shown(node), "is longer than " + MAX_TEXT + " characters", "shorten it");
      return orElse;
    }
    return text;
  }

  /** A list of free text; empty where absent. */
  List<String> texts(String key, int most) {
    List<String> texts = new ArrayList<>();
    for (Item item : items(key, 0, most)) {
      texts.add(text(item.path, item.json, ""));
    }
    return texts;
  }

  /** Free text with something in it; {@code orElse} where absent or wrong. */
  String filled(String key, String orElse) {
    String text = text(key, orElse);
    if (json.path(key).isTextual() && !INK.matcher(text).find()) {
      reading.faults.structure(
          at(key), Json.shown(json.get(key)), "is empty", "write a name or leave the key out");
      return orElse;
    }
    return text;
  }

  boolean flag(String key, boolean orElse) {
    JsonNode node = optional(key);
    if (node == null) {
      return orElse;
    }
    if (!node.isBoolean()) {
      reading.faults.structure(
          at(key), Json.shown(node), "must be true or false", "write it without quotes");
      return orElse;
    }
    return node.booleanValue();
  }

  /** A whole number from 0 to {@code most}; 0 where absent. */
  int count(String key, int most) {
    JsonNode node = optional(key);
    if (node == null) {
      return 0;
    }
    if (!node.isIntegralNumber() || node.longValue() < 0 || node.longValue() > most) {
      reading.faults.structure(
          at(key), Json.shown(node), "must be a whole number from 0 to " + most, "");
      return 0;
    }
    return node.intValue();
  }

  /** A bare number more than 0; {@code orElse} where absent. */
  double positive(String key, double orElse) {
    JsonNode node = optional(key);
    if (node == null) {
      return orElse;
    }
    if (!node.isNumber() || !(node.doubleValue() > 0)) {
      reading.faults.structure(
          at(key), Json.shown(node), "must be a number more than 0", "such as 1");
      return orElse;
    }
    if (node.doubleValue() > 1e6) {
      reading.faults.meaning(at(key), Json.shown(node), "is beyond 1000000", "such as 1");
    }
    return node.doubleValue();
  }

  /** One of the words of an enum; {@code orElse} where absent, null where it is no such word. */
  <E extends Enum<E>> E word(String key, Class<E> type, E orElse) {
    JsonNode node = orElse == null ? required(key, "one of " + words(type)) : optional(key);
    if (node == null) {
      return orElse;
    }
    return word(at(key), node, type);
  }

  <E extends Enum<E>> E word(String where, JsonNode node, Class<E> type) {
    List<String> words = words(type);
    int index = node.isTextual() ? words.indexOf(node.textValue()) : -1;
    if (index < 0) {
      notOneOf(reading.faults, where, node, words);
      return null;
    }
    return type.getEnumConstants()[index];
  }

  /** One of {@code words}; {@code orElse} where absent or wrong. */
  String oneOf(String key, List<String> words, String orElse) {
    JsonNode node = orElse == null ? required(key, "one of " + words) : optional(key);
    if (node == null) {
      return orElse;
    }
    if (!node.isTextual() || !words.contains(node.textValue())) {
      notOneOf(reading.faults, at(key), node, words);
      return orElse;
    }
    return node.textValue();
  }

  static void notOneOf(Faults faults, String where, JsonNode node, Collection<String> words) {
    faults.structure(
        where,
        Json.shown(node),
        "must be one of " + String.join(", ", words),
        node.isTextual()
            ? Names.nearest(node.textValue(), words).map(n -> "did you mean " + n + "?").orElse("")
            : "put it in quotes");
  }

  static <E extends Enum<E>> List<String> words(Class<E> type) {
    List<String> words = new ArrayList<>();
    for (E value : type.getEnumConstants()) {
      words.add(word(value));
    }
    return words;
  }

  static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A quantity that must be there. */
  Formula need(String key, Dim dim, Sign sign) {
    JsonNode node = required(key, dim.words());
    return node == null ? Quantities.LOST : reading.quantities.read(at(key), node, dim, sign);
  }

  /** A quantity that may be absent. */
  Optional<Formula> may(String key, Dim dim, Sign sign) {
    JsonNode node = optional(key);
    return node == null
        ? Optional.empty()
        : Optional.of(reading.quantities.read(at(key), node, dim, sign));
  }

  /** A quantity with a default. */
  Formula or(String key, Dim dim, Sign sign, String standard) {
    return may(key, dim, sign).orElseGet(() -> Formula.parse(standard));
  }

  /** The name of a pin that must be there; empty where it is not. */
  String pin(String key, String what) {
    JsonNode node = required(key, "the pin of " + what);
    return node == null ? "" : reading.reference(at(key), node, reading.pins, "pin");
  }

  Optional<String> mayPin(String key) {
    JsonNode node = optional(key);
    return node == null
        ? Optional.empty()
        : Optional.of(reading.reference(at(key), node, reading.pins, "pin"));
  }

  /** Names of {@code known} things; empty where absent. */
  List<String> references(String key, Collection<String> known, String what, int fewest, int most) {
    List<String> names = new ArrayList<>();
    for (Item item : items(key, fewest, most)) {
      names.add(reading.reference(item.path, item.json, known, what));
    }
    return names;
  }

  /** A value in a list, with its path. */
  record Item(String path, JsonNode json) {}

  /** The items of a list; empty where absent. */
  List<Item> items(String key, int fewest, int most) {
    JsonNode node = optional(key);
    return node == null ? List.of() : items(at(key), node, fewest, most);
  }

  List<Item> items(String where, JsonNode node, int fewest, int most) {
    if (!node.isArray()) {
      reading.faults.structure(
          where, Json.shown(node), "must be a list", "write [ ... ], even for one");
      return List.of();
    }
    if (node.size() < fewest || node.size() > most) {
      String allowed =
          fewest == most
              ? "needs " + fewest
              : node.size() < fewest ? "needs at least " + fewest : "takes at most " + most;
      reading.faults.structure(
          where, Json.shown(node), "has " + node.size() + " entries, " + allowed, "");
    }
    List<Item> items = new ArrayList<>();
    for (int i = 0; i < Math.min(node.size(), most); i++) {
      items.add(new Item(JsonPath.index(where, i), node.get(i)));
    }
    return items;
  }

  /** Reads each entry of the object at {@code key} by {@code reader}; nothing where absent. */
  void each(String key, Consumer<Entry> reader) {
    JsonNode node = optional(key);
    if (node == null) {
      return;
    }
    if (!node.isObject()) {
      reading.faults.structure(
          at(key), Json.shown(node), "must be an object", "write { \"name\": ..., ... }");
      return;
    }
    if (node.size() > Reading.MAX_ENTRIES) {
      reading.faults.structure(
          at(key),
          "",
          "has " + node.size() + " entries, takes at most " + Reading.MAX_ENTRIES,
          "split the layout up");
      return;
    }
    node.properties()
        .forEach(
            e ->
                reader.accept(
                    new Entry(e.getKey(), JsonPath.key(at(key), e.getKey()), e.getValue())));
  }

  /** An entry of a group such as {@code parts}. */
  record Entry(String name, String path, JsonNode json) {}
}
