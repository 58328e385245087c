package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.Wish;

/** All that a layout has and all that was found, as one list to look things up in. */
public final class Things {

  private static final String FINDING = "finding:";

  private Things() {}

  /**
   * One thing to be found.
   *
   * @param subject what is picked by it, such as {@code part:tank}, or {@code finding:} with an id
   * @param name its name
   * @param kind what it is, in a few words
   * @param words what it is found by, in lower case
   */
  public record Thing(String subject, String name, String kind, String words) {

    /** Returns the id of the finding that it is, or empty. */
    public String finding() {
      return subject.startsWith(FINDING) ? subject.substring(FINDING.length()) : "";
    }
  }

  /** Returns everything, in the order of the document, then the findings, worst first. */
  public static List<Thing> of(Layout layout, List<Finding> findings) {
    List<Thing> all = new ArrayList<>();
    all.add(thing("", layout.name(), "the whole machine"));
    all.add(thing(Subjects.NAMES, layout.name(), "name, title, notes"));
    all.add(thing(Subjects.DEMANDS, "demands", "what the machine asks of itself"));
    all.add(thing(Subjects.AS_BUILT, "as built", "what was measured on the machine made"));
    Subjects.each(
        (word, group) ->
            Entries.of(layout, group)
                .forEach(
                    (name, value) ->
                        all.add(thing(word + ":" + name, name, kind(word, value), more(value)))));
    findings.forEach(
        f ->
            all.add(
                thing(
                    FINDING + f.id(),
                    f.subject(),
                    f.verdict().says() + ": " + f.text(layout.units()),
                    f.kind().word())));
    return all;
  }

  private static Thing thing(String subject, String name, String kind) {
    return thing(subject, name, kind, "");
  }

  private static Thing thing(String subject, String name, String kind, String more) {
    String words = (name + " " + kind + " " + more).toLowerCase(Locale.ROOT);
    return new Thing(subject, name, kind, words);
  }

  /** What its fields say of it in words of the description, such as headlamp or telescopic. */
  private static String more(Object value) {
    return value instanceof Part part
        ? Document.PART.kind(part).fields().stream()
            .filter(f -> f.type() instanceof Type.Word)
            .map(f -> ((Type.Word<?>) f.type()).of(f.of(part)))
            .collect(Collectors.joining(" "))
        : "";
  }

  private static String kind(String word, Object value) {
    if (value instanceof Part part) {
      return part.kind();
    }
    if (value instanceof Tie tie) {
      return "tie: " + tie.kind().word() + " " + String.join(", ", tie.pins());
    }
    if (value instanceof Limit limit) {
      return "limit: " + limit.kind().word() + " " + String.join(", ", limit.pins());
    }
    return value instanceof Measure m ? "measure: " + m.is().text() : word;
  }

  /**
   * Returns what has all the words that were typed, those whose name begins so first; then what is
   * also called so.
   */
  public static List<Thing> matching(List<Thing> all, String typed) {
    String said = typed.strip().toLowerCase(Locale.ROOT);
    List<Thing> found =
        new ArrayList<>(all.stream().filter(t -> AlsoCalled.has(t.words(), typed)).toList());
    found.sort(Comparator.comparing(t -> !begins(t, said)));
    all.stream()
        .filter(t -> !AlsoCalled.has(t.words(), typed) && AlsoCalled.matches(t.words(), typed))
        .forEach(found::add);
    return found;
  }

  private static boolean begins(Thing thing, String said) {
    return thing.name().toLowerCase(Locale.ROOT).startsWith(said);
  }

  /** Returns the pins that a tie, limit, wish or dimension is about; none for anything else. */
  public static List<String> pins(Layout layout, String subject) {
    int colon = subject.indexOf(':');
    if (colon < 0) {
      return List.of();
    }
    String name = subject.substring(colon + 1);
    return switch (subject.substring(0, colon)) {
      case "tie" -> pins(layout.ties(), name, Tie::pins);
      case "limit" -> pins(layout.limits(), name, Limit::pins);
      case "wish" -> pins(layout.wishes(), name, Wish::pins);
      case "dimension" -> pins(layout.dimensions(), name, Things::pins);
      case "line" -> pins(layout.lines(), name, Things::points);
      default -> List.of();
    };
  }

  private static List<String> points(Line line) {
    return line.points().stream().map(Line.Point::pin).toList();
  }

  private static List<String> pins(Dimension dimension) {
    return dimension.ends().stream().map(Dimension.End::pin).filter(pin -> !pin.isEmpty()).toList();
  }

  private static <T> List<String> pins(
      Map<String, T> entries, String name, java.util.function.Function<T, List<String>> pins) {
    T entry = entries.get(name);
    return entry == null ? List.of() : pins.apply(entry);
  }
}
