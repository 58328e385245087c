package org.longlow.constraints.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Faults;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.FieldPath;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.document.Written;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Names;

/**
 * Reads JSON as the description of the document says, one method for each type of field. A value
 * that cannot be read is null after its fault is reported; what it means is judged afterwards, on
 * the layout.
 */
final class DocumentReader implements Type.Cases<DocumentReader.Found, Object> {

  /**
   * A JSON value and where it stands.
   *
   * @param name of the entry it belongs to
   */
  record Found(String path, String name, JsonNode json) {
    Found item(int index) {
      return new Found(FieldPath.index(path, index), name, json.get(index));
    }
  }

  /** What a vertex may say besides, last. */
  private static final String REACHING =
      ", each with {\"left\": \"80 mm\", \"right\": \"60 mm\"} last where the body's reach is said";

  private static final Set<String> VERSION = Set.of(LayoutWriter.VERSION);

  private final Faults faults;
  private final Set<String> objects = new HashSet<>();
  private final Set<String> said = new HashSet<>();
  private final Set<String> unread = new HashSet<>();
  private int group;

  DocumentReader(Faults faults) {
    this.faults = faults;
  }

  /** Returns the layout; entries that could not be read are null in it. */
  Optional<Layout> layout(JsonNode root) {
    if (!root.isObject()) {
      notAnObject(new Found("$", "", root));
      return Optional.empty();
    }
    return version(root)
        ? Optional.of(object(Document.LAYOUT, new Found("$", "", root), VERSION))
        : Optional.empty();
  }

  /** A newer file may differ in anything, so then nothing else is looked at. */
  private boolean version(JsonNode root) {
    if (!root.has(LayoutWriter.VERSION)) {
      missing("$", LayoutWriter.VERSION, "the version of the file: " + Layout.FILE_VERSION);
      return true;
    }
    JsonNode version = root.get(LayoutWriter.VERSION);
    boolean newer = version.isNumber() && version.doubleValue() > Layout.FILE_VERSION;
    if (!version.isNumber() || version.doubleValue() != Layout.FILE_VERSION) {
      refuse(
          new Found("$." + LayoutWriter.VERSION, "", version),
          "must be " + Layout.FILE_VERSION + ", the version of the file format",
          newer ? "read it with a newer Longlow" : "write \"longlow\": " + Layout.FILE_VERSION);
    }
    return !newer;
  }

  /** Tells what the layout does not: how it was written. */
  Written written() {
    return new Written(objects, said, unread);
  }

  private Object refuse(Found at, String message, String remedy) {
    unread.add(at.path());
    faults.structure(at.path(), Json.shown(at.json()), message, remedy);
    return null;
  }

  private Object notAnObject(Found at) {
    return refuse(at, "must be an object", "write { ... } with its keys");
  }

  private void missing(String path, String key, String what) {
    String at = FieldPath.key(path, key);
    unread.add(at);
    faults.structure(at, "", "is missing", "add " + Json.quoted(key) + ", " + what);
  }

  private <T> T object(Kind<T> kind, Found at, Set<String> more) {
    boolean top = at.path().equals("$");
    Map<String, Object> values = new HashMap<>();
    Set<String> known = new LinkedHashSet<>(more);
    for (Field<T, ?> field : kind.fields()) {
      if (top) {
        faults.at(++group, 0);
      }
      String key = field.key();
      known.add(key);
      if (at.json().has(key)) {
        String path = FieldPath.key(at.path(), key);
        Object value = field.type().by(this, new Found(path, at.name(), at.json().get(key)));
        if (value != null) {
          values.put(key, value);
        }
        if (field.orElse() != null && field.orElse().equals(value)) {
          said.add(path);
        }
      } else if (field.required()) {
        missing(at.path(), key, field.what());
      } else if (kind.togetherWith(key).stream().anyMatch(at.json()::has)) {
        missing(at.path(), key, field.type().said());
      }
    }
    if (top) {
      faults.at(++group, 0);
    }
    unknown(at, known);
    boolean undecided = !kind.decidedBy().isEmpty() && !values.containsKey(kind.decidedBy());
    return undecided ? null : kind.make(at.name(), values);
  }

  private void unknown(Found at, Set<String> known) {
    at.json()
        .fieldNames()
        .forEachRemaining(
            key -> {
              if (!known.contains(key)) {
                faults.structure(
                    FieldPath.key(at.path(), key),
                    Json.shown(at.json().get(key)),
                    "is not a known key here",
                    Names.advice(key, known, "key"));
              }
            });
  }

  @Override
  public Object text(Type.Text type, Found at) {
    return at.json().isTextual()
        ? at.json().textValue()
        : refuse(at, "must be text", "put it in quotes");
  }

  @Override
  public Object flag(Type.Flag type, Found at) {
    return at.json().isBoolean()
        ? (Object) at.json().booleanValue()
        : refuse(at, "must be true or false", flagAdvice(at.json()));
  }

  private static String flagAdvice(JsonNode node) {
    if (node.isTextual()) {
      return "write it without quotes";
    }
    return node.isNumber() && (node.asDouble() == 0 || node.asDouble() == 1)
        ? "write " + (node.asDouble() == 1)
        : "";
  }

  @Override
  public Object whole(Type.Whole type, Found at) {
    return at.json().isIntegralNumber() && at.json().canConvertToInt()
        ? (Object) at.json().intValue()
        : refuse(at, type.said(), "");
  }

  @Override
  public Object weight(Type.Weight type, Found at) {
    return at.json().isNumber()
        ? (Object) at.json().doubleValue()
        : refuse(at, Type.Weight.WORDS, "such as 1");
  }

  @Override
  public Object word(Type.Word<?> type, Found at) {
    int index = at.json().isTextual() ? type.words().indexOf(at.json().textValue()) : -1;
    if (index >= 0) {
      return type.values().get(index);
    }
    notOneOf(faults, at.path(), at.json(), type.words());
    return null;
  }

  static void notOneOf(Faults faults, String path, JsonNode json, Collection<String> words) {
    faults.notOneOf(path, Json.shown(json), json.textValue(), words);
  }

  @Override
  public Object quantity(Type.Quantity type, Found at) {
    if (!at.json().isTextual() && !at.json().isNumber()) {
      return refuse(at, "is no quantity", "write one such as \"1600 mm\" or a formula");
    }
    String text = Json.text(at.json());
    if (text.codePointCount(0, text.length()) > Formula.MAX_LENGTH) {
      return refuse(
          at,
          "is longer than " + Formula.MAX_LENGTH + " characters",
          "split it over several measures");
    }
    try {
      return Formula.parse(text);
    } catch (FormulaException e) {
      faults.meaning(at.path(), Json.shown(at.json()), e.getMessage(), "");
      return null;
    }
  }

  @Override
  public Object place(Type.Place type, Found at) {
    if (!at.json().isArray()) {
      return refuse(at, "must be a place", "write " + type.said());
    }
    return at.json().size() == 2
        ? List.of(read(Type.LENGTH, at.item(0)), read(Type.LENGTH, at.item(1)))
        : refuse(at, "must hold two lengths, x and z", "write " + type.said());
  }

  /** Returns the value, or what stands in for it. */
  private <V> V read(Type<V> type, Found at) {
    @SuppressWarnings("unchecked")
    V value = (V) type.by(this, at);
    return value == null ? type.lost() : value;
  }

  @Override
  public Object ref(Type.Ref type, Found at) {
    return at.json().isTextual()
        ? at.json().textValue()
        : refuse(at, "must be the name of a " + type.to().word(), "put the name in quotes");
  }

  @Override
  public Object list(Type.ListOf<?> type, Found at) {
    if (!at.json().isArray()) {
      return refuse(at, "must be a list", "write [ ... ], even for one");
    }
    List<Object> items = new ArrayList<>();
    for (int i = 0; i < at.json().size(); i++) {
      Object item = read(type.item(), at.item(i));
      if (item != null) {
        items.add(item);
      }
    }
    return items;
  }

  @Override
  public Object maybe(Type.Maybe<?> type, Found at) {
    return Optional.ofNullable(read(type.inner(), at));
  }

  @Override
  public Object nested(Type.Nested<?> type, Found at) {
    return nested(type.kind(), at);
  }

  private <T> Object nested(Kind<T> kind, Found at) {
    if (at.json().isObject()) {
      objects.add(at.path());
      return object(kind, at, Set.of());
    }
    if (kind.shortField().isEmpty()) {
      return notAnObject(at);
    }
    Field<T, ?> only = kind.shortField().get();
    boolean isWord = only.type() instanceof Type.Word<?>;
    Object value = isWord ? wordOrObject(kind, only, at) : only.type().by(this, at);
    if (value == null) {
      return only.key().equals(kind.decidedBy()) ? null : kind.make(at.name(), Map.of());
    }
    return kind.make(at.name(), Map.of(only.key(), value));
  }

  /** A word that may stand for a whole object: refused, both are told. */
  private <T> Object wordOrObject(Kind<T> kind, Field<T, ?> only, Found at) {
    Type.Word<?> type = (Type.Word<?>) only.type();
    String text = at.json().isTextual() ? at.json().textValue() : "";
    if (type.words().contains(text)) {
      return word(type, at);
    }
    List<String> keys = kind.fields().stream().map(f -> Json.quoted(f.key()) + ": ...").toList();
    faults.structure(
        at.path(),
        Json.shown(at.json()),
        "must be one of " + String.join(", ", type.words()) + ", or an object",
        Names.nearest(text, type.words())
            .map(near -> "did you mean " + near + "?")
            .orElse("write one of these, in quotes, or some of {" + String.join(", ", keys) + "}"));
    return null;
  }

  @Override
  public Object choice(Type.Choice<?> type, Found at) {
    if (!at.json().isObject()) {
      return notAnObject(at);
    }
    List<String> words = List.copyOf(type.kinds().keySet());
    if (!at.json().has(type.key())) {
      String said = String.join(", ", (Iterable<String>) () -> at.json().fieldNames());
      missing(
          at.path(),
          type.key(),
          "one of " + words + (said.isEmpty() ? "" : "; all that is said here is " + said));
      return null;
    }
    JsonNode word = at.json().get(type.key());
    Kind<?> kind = word.isTextual() ? type.kinds().get(word.textValue()) : null;
    if (kind == null) {
      notOneOf(faults, FieldPath.key(at.path(), type.key()), word, words);
      return null;
    }
    return object(kind, at, Set.of(type.key()));
  }

  @Override
  public Object group(Type.Group<?> type, Found at) {
    if (!at.json().isObject()) {
      return refuse(at, "must be an object", "write { \"name\": ..., ... }");
    }
    Map<String, Object> entries = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> e : at.json().properties()) {
      if (type.naming().given()) {
        faults.at(group, entries.size() + 1);
      }
      String path = FieldPath.key(at.path(), e.getKey());
      Found entry = new Found(path, type.naming().named() ? e.getKey() : at.name(), e.getValue());
      Object value = type.item().by(this, entry);
      entries.put(e.getKey(), type.naming().given() || value != null ? value : type.item().lost());
    }
    return entries;
  }

  @Override
  public Object vertex(Type.Vertices type, Found at) {
    JsonNode json = at.json();
    if (json.isTextual()) {
      return new Vertex(null, null, json.textValue(), false);
    }
    int size = json.isArray() ? json.size() : 0;
    boolean reaches = type.reach().isPresent() && size > 1 && json.get(size - 1).isObject();
    int rest = reaches ? size - 1 : size;
    boolean smooth =
        type.mayBeSmooth() && rest > 1 && json.get(rest - 1).asText().equals(Type.Vertices.SMOOTH);
    rest -= smooth ? 1 : 0;
    boolean onPin = rest == 1 && rest < size && json.get(0).isTextual();
    if (rest != 2 && !onPin) {
      return refuse(
          at,
          "is no vertex",
          type.mayBeSmooth()
              ? "write [\"x mm\", \"z mm\"], [\"x mm\", \"z mm\", \"smooth\"], a pin or [pin,"
                  + " \"smooth\"]"
                  + (type.reach().isPresent() ? REACHING : "")
              : "write " + type.said());
    }
    Optional<HalfBreadths> reach =
        reaches
            ? Optional.ofNullable(object(type.reach().get(), at.item(size - 1), Set.of()))
            : Optional.empty();
    return onPin
        ? new Vertex(null, null, json.get(0).textValue(), smooth, reach)
        : new Vertex(
            read(Type.LENGTH, at.item(0)), read(Type.LENGTH, at.item(1)), null, smooth, reach);
  }

  @Override
  public Object outline(Type.Outlines type, Found at) {
    if (!at.json().isObject()) {
      return notAnObject(at);
    }
    boolean traced = at.json().has(Type.Outlines.TRACED_BY);
    Kind<?> kind = traced ? type.traced() : type.drawn();
    return object(kind, at, Set.of());
  }
}
