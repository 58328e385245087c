package org.longlow.sketcher.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Spoils JSON as people, programs and bad luck do: a value left out, another unit, a name that is
 * somebody else's, a number far too large, a list too short, two values exchanged.
 */
final class Mutations {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "0",
          "0 mm",
          "-1 mm",
          "1e300 mm",
          "1e-300 mm",
          "90 deg",
          "180 deg",
          "360 deg",
          "-90 deg",
          "0 kg",
          "100000 kg",
          "1/0",
          "sqrt(-1)",
          "wheelbase",
          "63 1/2 in",
          "rider",
          "rear",
          "front",
          "a b",
          "\u001b[31m",
          "\u202e",
          "\n",
          "x".repeat(300),
          "\uD83D\uDE00",
          "nan",
          "endless",
          "0x10",
          "__proto__",
          "../../up",
          "passenger",
          "1 mm + 1 kg");

  private static final double[] NUMBERS = {
    0, -1, 1, 0.5, 1e-9, -1e-9, 1e9, -1e9, 1e300, 90, 180, 360, 9000, 1e5, -250, 2
  };

  private final SplittableRandom random;

  /** A value and where it hangs. */
  private record Spot(JsonNode parent, String field, int index) {}

  Mutations(long seed) {
    random = new SplittableRandom(seed);
  }

  /** Returns a copy of {@code root} spoilt in one to three places. */
  JsonNode spoilt(JsonNode root) {
    JsonNode copy = root.deepCopy();
    // every second one only gets other figures, so that the reader lets many pass
    boolean figuresOnly = random.nextBoolean();
    for (int n = 1 + random.nextInt(3); n > 0; n--) {
      List<Spot> spots = new ArrayList<>();
      collect(copy, spots);
      if (figuresOnly) {
        spots.removeIf(s -> !hasFigure(value(s)));
      }
      if (figuresOnly && !spots.isEmpty()) {
        Spot spot = spots.get(random.nextInt(spots.size()));
        set(spot, scaled(value(spot)));
      } else if (!spots.isEmpty()) {
        spoil(spots.get(random.nextInt(spots.size())), spots);
      }
    }
    return copy;
  }

  private static boolean hasFigure(JsonNode value) {
    return value.isNumber() || value.isTextual() && NUMBER.matcher(value.asText()).find();
  }

  private static void collect(JsonNode node, List<Spot> spots) {
    if (node instanceof ObjectNode object) {
      object
          .properties()
          .forEach(
              e -> {
                spots.add(new Spot(object, e.getKey(), -1));
                collect(e.getValue(), spots);
              });
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        spots.add(new Spot(array, null, i));
        collect(array.get(i), spots);
      }
    }
  }

  private void spoil(Spot spot, List<Spot> spots) {
    JsonNode now = value(spot);
    switch (random.nextInt(8)) {
      case 0 -> remove(spot);
      case 1 -> set(spot, value(spots.get(random.nextInt(spots.size()))).deepCopy());
      case 2 -> set(spot, NODES.textNode(TEXTS.get(random.nextInt(TEXTS.size()))));
      case 3 -> set(spot, NODES.numberNode(NUMBERS[random.nextInt(NUMBERS.length)]));
      case 4 -> rename(spot);
      default -> set(spot, scaled(now));
    }
  }

  private static JsonNode value(Spot spot) {
    return spot.field() != null ? spot.parent().get(spot.field()) : spot.parent().get(spot.index());
  }

  private static void set(Spot spot, JsonNode value) {
    if (spot.field() != null) {
      ((ObjectNode) spot.parent()).set(spot.field(), value);
    } else {
      ((ArrayNode) spot.parent()).set(spot.index(), value);
    }
  }

  private static void remove(Spot spot) {
    if (spot.field() != null) {
      ((ObjectNode) spot.parent()).remove(spot.field());
    } else {
      ((ArrayNode) spot.parent()).remove(spot.index());
    }
  }

  private void rename(Spot spot) {
    if (spot.field() != null) {
      JsonNode value = ((ObjectNode) spot.parent()).remove(spot.field());
      ((ObjectNode) spot.parent())
          .set(TEXTS.get(random.nextInt(TEXTS.size())) + spot.field(), value);
    } else {
      ((ArrayNode) spot.parent()).add(value(spot).deepCopy());
    }
  }

  /** Returns the value with its number, if it has one, made another; most stay plausible. */
  private JsonNode scaled(JsonNode value) {
    double factor =
        switch (random.nextInt(6)) {
          case 0 -> -1;
          case 1 -> 0;
          case 2 -> 10;
          case 3 -> 0.1;
          default -> 0.5 + random.nextDouble();
        };
    if (value.isNumber()) {
      return NODES.numberNode(value.asDouble() * factor);
    }
    if (value.isTextual()) {
      Matcher m = NUMBER.matcher(value.asText());
      if (m.find()) {
        double number = Double.parseDouble(m.group()) * factor;
        return NODES.textNode(
            m.replaceFirst(Matcher.quoteReplacement(String.format(Locale.ROOT, "%.4f", number))));
      }
    }
    if (value.isBoolean()) {
      return NODES.booleanNode(!value.asBoolean());
    }
    return NODES.nullNode();
  }
}
