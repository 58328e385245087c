package org.longlow.constraints.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.document.Faults;
import org.longlow.constraints.document.FieldPath;
import org.longlow.constraints.words.DecimalComma;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.words.Decimals;

/**
 * The one way text becomes JSON values and back.
 *
 * <p>Strict JSON (RFC 8259): no comments, no NaN, no trailing text, and every key once. Order is
 * kept, doubles have full precision ({@link Double#toString}), and nothing depends on the locale.
 * The tree is built straight from tokens: that sees repeated keys with their paths, bounds depth
 * and size, and starts in half the time of a general data binder.
 */
final class Json {

  /** Deepest nesting accepted; a layout needs 7. */
  static final int MAX_DEPTH = 40;

  /** Most characters accepted in one file. */
  static final int MAX_CHARS = 4_000_000;

  /** Most values accepted in one file. */
  static final int MAX_VALUES = 200_000;

  /** Of a number that is refused so many characters are shown. */
  private static final int LONGEST_SHOWN = 20;

  static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(MAX_DEPTH)
                  .maxNumberLength(400)
                  .maxNameLength(1000)
                  .maxStringLength(100_000)
                  .build())
          .build();

  private Json() {}

  /** Reads the text of a layout; see {@link #parse(String, Faults, String)}. */
  static Optional<JsonNode> parse(String text, Faults faults) {
    return parse(text, faults, "write a JSON object such as {\"longlow\": 1, ...}");
  }

  /**
   * Reads {@code text}; empty if it is not JSON, and then {@code faults} says why.
   *
   * @param wanted what to write where there is nothing
   */
  static Optional<JsonNode> parse(String text, Faults faults, String wanted) {
    if (text.length() > MAX_CHARS) {
      faults.structure(
          "$",
          "",
          "is " + text.length() + " characters long, at most " + MAX_CHARS + " are read",
          "split it up or take traced outlines from SVG files");
      return Optional.empty();
    }
    String body = text.startsWith("\uFEFF") ? text.substring(1) : text;
    if (body.isBlank()) {
      faults.structure("$", "", "is empty", wanted);
      return Optional.empty();
    }
    try (JsonParser parser = FACTORY.createParser(body)) {
      parser.nextToken();
      Builder builder = new Builder(parser, faults);
      JsonNode node = builder.value("$");
      if (parser.nextToken() != null) {
        return refuse(faults, parser.currentTokenLocation(), "goes on after its end");
      }
      return Optional.of(node);
    } catch (TooMuch e) {
      faults.structure("$", "", e.getMessage(), "split it up");
      return Optional.empty();
    } catch (StreamConstraintsException e) {
      faults.structure(
          "$",
          "",
          "goes past a limit of the reader: nesting " + MAX_DEPTH + ", text 100000 characters",
          "write it flatter or shorter");
      return Optional.empty();
    } catch (JsonEOFException e) {
      return refuse(
          faults, e.getLocation(), "ends before all that was opened is closed; it may be cut off");
    } catch (JsonProcessingException e) {
      Optional<String> comma = comma(body, e.getLocation());
      return comma.isPresent()
          ? refuse(faults, e.getLocation(), "has a comma within a number", comma.get())
          : refuse(faults, e.getLocation(), firstLine(e.getOriginalMessage()));
    } catch (IOException e) {
      throw new UncheckedIOException("reading from a string cannot fail", e);
    }
  }

  /** What to write where the reader stopped just behind a comma between two digits. */
  private static Optional<String> comma(String body, JsonLocation at) {
    int place = (int) at.getCharOffset();
    int comma = body.lastIndexOf(',', Math.min(place, body.length() - 1));
    if (comma < 0 || place - comma > 2) {
      return Optional.empty();
    }
    int from = comma;
    while (from > 0 && isOfNumber(body.charAt(from - 1))) {
      from--;
    }
    int to = comma + 1;
    while (to < body.length() && isOfNumber(body.charAt(to))) {
      to++;
    }
    return DecimalComma.advice(body.substring(from, to));
  }

  private static boolean isOfNumber(char c) {
    return Character.isDigit(c) || c == '.';
  }

  private static Optional<JsonNode> refuse(Faults faults, JsonLocation at, String why) {
    return refuse(faults, at, why, "look there for a missing quote, comma, colon or bracket");
  }

  private static Optional<JsonNode> refuse(
      Faults faults, JsonLocation at, String why, String remedy) {
    String place = at == null ? "" : " at line " + at.getLineNr() + ", column " + at.getColumnNr();
    faults.structure("$", "", "is not JSON" + place + ": " + why, remedy);
    return Optional.empty();
  }

  /** The library's words, without its hints about settings that nobody here can change. */
  private static String firstLine(String message) {
    String line = message.lines().findFirst().orElse("cannot be read");
    // where what is not closed began is told with settings of the library
    line = line.replaceFirst(" \\((?:start marker|for \\w+ starting) at .*", "");
    int hint = line.indexOf(": enable ");
    return hint > 0 ? line.substring(0, hint) + " (NaN and Infinity are not numbers)" : line;
  }

  /** Thrown inside {@link #parse} when there is more than {@link #MAX_VALUES}. */
  private static final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1L;

    TooMuch(String message) {
      super(message);
    }
  }

  private static final class Builder {
    private final JsonParser parser;
    private final Faults faults;
    private int values;

    Builder(JsonParser parser, Faults faults) {
      this.parser = parser;
      this.faults = faults;
    }

    /** Returns the value that starts at the current token; depth is bounded by the parser. */
    JsonNode value(String path) throws IOException {
      if (++values > MAX_VALUES) {
        throw new TooMuch("holds more than " + MAX_VALUES + " values");
      }
      JsonToken token = parser.currentToken();
      if (token == null) {
        return NODES.missingNode();
      }
      switch (token) {
        case START_OBJECT:
          ObjectNode object = NODES.objectNode();
          while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            String inner = FieldPath.key(path, key);
            if (object.has(key)) {
              faults.structure(
                  inner,
                  "",
                  "is written twice, the second time at line "
                      + parser.currentTokenLocation().getLineNr(),
                  "keep one of them or rename it");
            }
            parser.nextToken();
            object.set(key, value(inner));
          }
          return object;
        case START_ARRAY:
          ArrayNode array = NODES.arrayNode();
          while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(FieldPath.index(path, array.size())));
          }
          return array;
        case VALUE_STRING:
          return NODES.textNode(parser.getText());
        case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT:
          return number(path, parser.getText());
        case VALUE_TRUE:
          return NODES.booleanNode(true);
        case VALUE_FALSE:
          return NODES.booleanNode(false);
        default:
          return NODES.nullNode();
      }
    }

    private JsonNode number(String path, String text) {
      double value = Double.parseDouble(text);
      if (!Double.isFinite(value)) {
        String shown =
            text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "..." : text;
        faults.structure(path, shown, "is beyond the range of numbers", "look at the exponent");
        return NODES.numberNode(0);
      }
      boolean whole = value == Math.rint(value) && Math.abs(value) < 1e15;
      return whole ? NODES.numberNode((long) value) : NODES.numberNode(value);
    }
  }

  /** Returns {@code node} on one line, shortened, for messages. */
  static String shown(JsonNode node) {
    if (node == null || node.isMissingNode()) {
      return "";
    }
    if (node.isObject()) {
      return node.isEmpty() ? "{}" : "{...}";
    }
    if (node.isArray()) {
      return node.isEmpty() ? "[]" : "[...]";
    }
    return node.isTextual() ? Quoted.cut(node.textValue()) : text(node);
  }

  /** Returns what a number or word is written as, a huge number such as 1e308. */
  static String text(JsonNode node) {
    boolean whole = node.isInt() || node.isLong();
    return node.isNumber() && !whole ? Decimals.written(node.doubleValue()) : node.asText();
  }

  static String quoted(String text) {
    return Quoted.of(text);
  }

  /** Returns {@code node} without line breaks, with a space after colons and commas. */
  static String compact(JsonNode node) {
    StringBuilder out = new StringBuilder();
    compact(node, out);
    return out.toString();
  }

  private static void compact(JsonNode node, StringBuilder out) {
    if (node.isObject()) {
      String gap = "";
      out.append('{');
      for (Map.Entry<String, JsonNode> entry : node.properties()) {
        out.append(gap).append(quoted(entry.getKey())).append(": ");
        compact(entry.getValue(), out);
        gap = ", ";
      }
      out.append('}');
    } else if (node.isArray()) {
      String gap = "";
      out.append('[');
      for (JsonNode item : node) {
        out.append(gap);
        compact(item, out);
        gap = ", ";
      }
      out.append(']');
    } else if (node.isTextual()) {
      out.append(quoted(node.textValue()));
    } else if (node.isFloatingPointNumber()) {
      double value = node.doubleValue();
      out.append(Double.isFinite(value) ? Double.toString(value) : "null");
    } else {
      out.append(node.asText());
    }
  }

  /**
   * How to lay JSON out.
   *
   * @param width what fits within this many columns stays on one line
   * @param open objects nested less than this deep get a line for each entry all the same
   * @param rows keys whose object gets exactly one line for each entry, however long
   */
  record Style(int width, int open, Set<String> rows) {}

  /** Returns {@code node} indented by two spaces, without rows. */
  static String pretty(JsonNode node, int width, int open) {
    return pretty(node, new Style(width, open, Set.of()));
  }

  /** Returns {@code node} indented by two spaces. */
  static String pretty(JsonNode node, Style style) {
    StringBuilder out = new StringBuilder();
    pretty(node, 0, 0, "", style, out);
    return out.append('\n').toString();
  }

  private static void pretty(
      JsonNode node, int depth, int column, String key, Style style, StringBuilder out) {
    boolean opened = depth < style.open && node.isObject() && !node.isEmpty();
    String line = opened ? null : compact(node);
    if (line != null && (column + line.length() < style.width || !node.isContainerNode())) {
      out.append(line);
      return;
    }
    String indent = "  ".repeat(depth + 1);
    String gap = "";
    out.append(node.isObject() ? '{' : '[');
    if (node.isObject()) {
      boolean rows = depth == 1 && style.rows.contains(key);
      for (Map.Entry<String, JsonNode> entry : node.properties()) {
        String head = indent + quoted(entry.getKey()) + ": ";
        out.append(gap).append('\n').append(head);
        if (rows) {
          compact(entry.getValue(), out);
        } else {
          pretty(entry.getValue(), depth + 1, head.length(), entry.getKey(), style, out);
        }
        gap = ",";
      }
    } else {
      for (JsonNode item : node) {
        out.append(gap).append('\n').append(indent);
        pretty(item, depth + 1, indent.length(), "", style, out);
        gap = ",";
      }
    }
    out.append('\n').append("  ".repeat(depth)).append(node.isObject() ? '}' : ']');
  }
}
