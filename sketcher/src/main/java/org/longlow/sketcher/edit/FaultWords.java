package org.longlow.sketcher.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.FieldPath;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.PinWords;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.words.OneLine;

/** A fault in the words of the window: which thing, which field of its ticket. */
final class FaultWords {

  private static final Pattern PATH =
      Pattern.compile(
          "\\$(?:\\.[\\p{L}_$][\\p{L}\\p{N}_$-]*|\\[\\d+]|\\[\"(?:[^\"\\\\]|\\\\.)*\"])+");

  private FaultWords() {}

  /** Returns it on one line, such as {@code pin frontAxle, x = "wide": is unknown}. */
  static String line(Layout layout, Fault fault) {
    String value = fault.value().isEmpty() ? "" : " = " + fault.value();
    String remedy = fault.remedy().isEmpty() ? "" : "; " + fault.remedy();
    return OneLine.of(
        place(layout, fault.path()) + value + ": " + said(layout, fault.message() + remedy));
  }

  /** Returns a text with the places of a file that it names in the words of the window. */
  static String said(Layout layout, String text) {
    return PATH.matcher(text)
        .replaceAll(path -> Matcher.quoteReplacement(place(layout, path.group())));
  }

  private static String place(Layout layout, String path) {
    return entry(layout, path)
        .map(
            e -> {
              String own = one(e.group()) + e.name();
              return pin(layout, e, path)
                  .or(() -> label(Forms.of(layout, e).stream(), path))
                  .map(l -> own + ", " + l)
                  .orElse(own);
            })
        .or(() -> label(Stream.of(Forms.demands(layout)), path).map(l -> "demands, " + l))
        .or(() -> label(Stream.of(Forms.whole(layout)), path))
        .orElse("the machine");
  }

  /** Returns what a pin is to the part that a path leads into, for its key may be a bare "to". */
  private static Optional<String> pin(Layout layout, Entry entry, String path) {
    String part = json(List.of(entry.group(), entry.name()));
    return entry.group().equals("parts") && path.length() > part.length() + 1
        ? PinWords.ofField(layout.parts().get(entry.name()), path.substring(part.length() + 1))
        : Optional.empty();
  }

  private static Optional<Entry> entry(Layout layout, String path) {
    return Document.LAYOUT.fields().stream()
        .filter(f -> f.of(layout) instanceof Map)
        .map(Field::key)
        .flatMap(g -> Entries.of(layout, g).keySet().stream().map(name -> new Entry(g, name)))
        .filter(e -> isWithin(path, json(List.of(e.group(), e.name()))))
        .findFirst();
  }

  private static boolean isWithin(String path, String outer) {
    return path.startsWith(outer)
        && (path.length() == outer.length() || ".[".indexOf(path.charAt(outer.length())) >= 0);
  }

  /** Returns what the innermost field of a form that a path is in is called there. */
  private static Optional<String> label(Stream<Form> forms, String path) {
    return forms
        .flatMap(f -> FormRows.of(f).stream())
        .filter(row -> isWithin(path, json(row.target().path())))
        .reduce((a, b) -> b.target().path().size() > a.target().path().size() ? b : a)
        .map(FormRows.Said::label);
  }

  private static String json(List<String> path) {
    String json = "$";
    for (String step : path) {
      json =
          step.matches("\\d{1,5}")
              ? FieldPath.index(json, Integer.parseInt(step))
              : FieldPath.key(json, step);
    }
    return json;
  }

  private static String one(String group) {
    return switch (group) {
      case "crew" -> "";
      case "wishes" -> "wish ";
      default -> group.substring(0, group.length() - 1) + " ";
    };
  }
}
