package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.formula.MathFunction;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.shape.Places;

/**
 * Names that a formula may go on with where it is typed.
 *
 * @param from where the letters typed of the name begin
 * @param to where they end: the caret
 * @param names what they may mean, the likeliest first; never empty
 */
public record Completion(int from, int to, List<Name> names) {

  /** More are no help. */
  private static final int MOST = 8;

  /** Letters from which on functions are named too; one letter is mostly a measure's. */
  private static final int FUNCTION_LETTERS = 2;

  /**
   * A name that can stand in a formula.
   *
   * @param text what is put in
   * @param says what it is worth now, or what it is
   */
  public record Name(String text, String says) {}

  public Completion {
    names = List.copyOf(names);
  }

  /**
   * Returns what the letters before the caret may go on to. Nothing is offered within a name, and
   * not where a number stands before: that is its unit.
   */
  public static Optional<Completion> at(Layout layout, Places places, String text, int caret) {
    int from = caret;
    while (from > 0 && isOfName(text.charAt(from - 1))) {
      from--;
    }
    boolean within = caret < text.length() && isOfName(text.charAt(caret));
    String typed = text.substring(from, caret);
    if (within || typed.isEmpty() || !Character.isLetter(typed.charAt(0)) || isUnit(text, from)) {
      return Optional.empty();
    }
    List<Name> names = names(layout, places, typed.toLowerCase(Locale.ROOT));
    return names.isEmpty() || names.get(0).text().equals(typed)
        ? Optional.empty()
        : Optional.of(new Completion(from, caret, names));
  }

  private static boolean isOfName(char c) {
    return c < 128 && (Character.isLetterOrDigit(c) || c == '_');
  }

  private static boolean isUnit(String text, int from) {
    String before = text.substring(0, from).stripTrailing();
    return !before.isEmpty() && "0123456789.".indexOf(before.charAt(before.length() - 1)) >= 0;
  }

  private static List<Name> names(Layout layout, Places places, String typed) {
    List<String> measures = new ArrayList<>(layout.measures().keySet());
    measures.removeIf(m -> !m.toLowerCase(Locale.ROOT).contains(typed));
    // what begins so comes first, and of those the shortest
    measures.sort(
        Comparator.comparing((String m) -> !m.toLowerCase(Locale.ROOT).startsWith(typed))
            .thenComparingInt(String::length));
    places.measures().keySet().stream()
        .filter(n -> !layout.measures().containsKey(n))
        .filter(n -> n.toLowerCase(Locale.ROOT).startsWith(typed))
        .forEach(measures::add);
    Stream<Name> functions =
        typed.length() < FUNCTION_LETTERS
            ? Stream.empty()
            : Stream.of(MathFunction.values())
                .map(f -> f.name().toLowerCase(Locale.ROOT))
                .filter(f -> f.startsWith(typed))
                .map(f -> new Name(f + "(", "function"));
    return Stream.concat(
            measures.stream().map(m -> new Name(m, worth(layout, places, m))), functions)
        .limit(MOST)
        .toList();
  }

  private static String worth(Layout layout, Places places, String measure) {
    Double now = places.measures().get(measure);
    return now == null ? "" : Bench.worth(now, Measures.dim(layout, measure), layout.units());
  }

  /** Returns the text with a name put in. */
  public String taken(String text, Name name) {
    return text.substring(0, from) + name.text() + text.substring(to);
  }

  /** Returns where the caret is then. */
  public int caret(Name name) {
    return from + name.text().length();
  }
}
