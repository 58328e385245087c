package org.longlow.sketcher.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Field;
import org.longlow.constraints.document.Kind;
import org.longlow.constraints.document.Range;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.document.Usual;
import org.longlow.constraints.formula.Unit;

/** The page of all kinds of the layout file with their fields, written from the description. */
final class FormatPage implements Type.Cases<Void, String> {

  /** Each kind with the words that decide for it; empty where nothing decides. */
  private final Map<Kind<?>, List<String>> kinds = new LinkedHashMap<>();

  /** Kinds by name, each to be written once. */
  private final Map<String, Kind<?>> byName = new LinkedHashMap<>();

  private final Map<String, String> choices = new LinkedHashMap<>();

  private FormatPage() {}

  static String text() {
    FormatPage page = new FormatPage();
    page.link(Document.LAYOUT, List.of());
    String layout = page.section(Document.LAYOUT, List.of());
    StringBuilder others = new StringBuilder();
    // kinds are met while others are written
    for (int i = 1; i < page.kinds.size(); i++) {
      Kind<?> kind = List.copyOf(page.kinds.keySet()).get(i);
      others.append(page.section(kind, page.kinds.get(kind)));
    }
    return """
        # Every field of the layout file

        This page is made from the description that the program itself reads by. A file is one JSON object, a
        [layout](#layout) with `"longlow": 1` at its head. A quantity is text with its unit (`"1640 mm"`, `"63 1/2 in"`,
        `"24 deg"`) or a formula over measures (`"boardTop + 60 mm"`); a bare number takes mm, deg, kg or N.

        """
        + layout
        + String.join("", page.choices.values())
        + others.toString().stripTrailing()
        + "\n";
  }

  private String link(Kind<?> kind, List<String> words) {
    Kind<?> known = byName.putIfAbsent(kind.name(), kind);
    if (known == null) {
      kinds.put(kind, words);
    }
    return "[" + kind.name() + "](#" + kind.name().toLowerCase(Locale.ROOT).replace(' ', '-') + ")";
  }

  private <T> String section(Kind<T> kind, List<String> words) {
    StringBuilder out = new StringBuilder("## " + kind.name() + "\n\n" + kind.help() + "\n\n");
    if (!words.isEmpty()) {
      out.append("For ").append(quoted(words)).append(".\n\n");
    }
    kind.shortField()
        .ifPresent(f -> out.append("`" + f.key() + "` alone may stand for the whole.\n\n"));
    if (kind.fields().isEmpty()) {
      return out.toString();
    }
    out.append("| field | takes | left out | what it is |\n|---|---|---|---|\n");
    for (Field<T, ?> field : kind.fields()) {
      out.append("| `" + field.key() + "` | ")
          .append(cell(field.type().by(this, null)))
          .append(" | " + cell(leftOut(field)) + " | ")
          .append(cell(field.help()) + " |\n");
    }
    return out.append('\n').toString();
  }

  private static String cell(String words) {
    return words.replace("|", "\\|").replace("\n", " ");
  }

  private static String leftOut(Field<?, ?> field) {
    if (field.required()) {
      return "must be there";
    }
    Object usual = field.orElse();
    if (usual instanceof Boolean) {
      return usual.equals(true) ? "true" : "false";
    }
    return field.type() instanceof Type.ListOf || field.type() instanceof Type.Group
        ? "none"
        : Usual.of(field);
  }

  private static String quoted(List<String> words) {
    return words.stream().map(w -> "`" + w + "`").collect(Collectors.joining(", "));
  }

  @Override
  public String text(Type.Text type, Void none) {
    return "text";
  }

  @Override
  public String flag(Type.Flag type, Void none) {
    return "true or false";
  }

  @Override
  public String whole(Type.Whole type, Void none) {
    return bare(type.said());
  }

  @Override
  public String weight(Type.Weight type, Void none) {
    return bare(Type.Weight.WORDS);
  }

  /** Returns what is said of a value without its verb. */
  private static String bare(String words) {
    return words.replace("must not be negative", "0 or more").replaceFirst("^must (be )?", "");
  }

  @Override
  public String word(Type.Word<?> type, Void none) {
    return quoted(type.words());
  }

  @Override
  public String quantity(Type.Quantity type, Void none) {
    String what = type.said().replaceFirst(" \\(such as.*", "");
    if (type.range().from() == Range.ANY.from() && type.range().to() == Range.ANY.to()) {
      return what;
    }
    return what + ", " + bare(type.range().words(type.dim().map(Unit::of).orElse(Unit.NONE)));
  }

  @Override
  public String place(Type.Place type, Void none) {
    return "`[x, z]`";
  }

  @Override
  public String ref(Type.Ref type, Void none) {
    return "name of a " + type.to().word();
  }

  @Override
  public String list(Type.ListOf<?> type, Void none) {
    String count =
        type.fewest() == type.most() ? "" + type.most() : type.fewest() + " to " + type.most();
    return "list of " + count + ": " + type.item().by(this, none);
  }

  @Override
  public String maybe(Type.Maybe<?> type, Void none) {
    return type.inner().by(this, none);
  }

  @Override
  public String nested(Type.Nested<?> type, Void none) {
    return link(type.kind(), List.of());
  }

  @Override
  public String choice(Type.Choice<?> type, Void none) {
    // words of one family have a kind each, all alike
    Map<String, Kind<?>> ofName = new LinkedHashMap<>();
    Map<String, List<String>> words = new LinkedHashMap<>();
    type.kinds()
        .forEach(
            (word, kind) -> {
              ofName.put(kind.name(), kind);
              words.computeIfAbsent(kind.name(), n -> new ArrayList<>()).add(word);
            });
    if (!choices.containsKey(type.name())) {
      StringBuilder out = new StringBuilder("## " + type.name() + "\n\n" + type.help() + "\n\n");
      out.append("| `" + type.key() + "` | fields |\n|---|---|\n");
      choices.put(type.name(), "");
      words.forEach(
          (name, those) ->
              out.append("| " + quoted(those) + " | " + link(ofName.get(name), those) + " |\n"));
      choices.put(type.name(), out.append('\n').toString());
    }
    return "[" + type.name() + "](#" + type.name().toLowerCase(Locale.ROOT) + ")";
  }

  @Override
  public String group(Type.Group<?> type, Void none) {
    String item = type.item().by(this, none);
    return type.keys().isEmpty() ? "by name: " + item : "by " + quoted(type.keys()) + ": " + item;
  }

  @Override
  public String vertex(Type.Vertices type, Void none) {
    String smooth = type.mayBeSmooth() ? ", either with `\"" + Type.Vertices.SMOOTH + "\"`" : "";
    Optional<String> reach = type.reach().map(kind -> ", last " + link(kind, List.of()));
    return "`[x, z]` or a pin" + smooth + reach.orElse("");
  }

  @Override
  public String outline(Type.Outlines type, Void none) {
    String drawn = link(type.drawn(), List.of());
    return drawn + " or, with `" + Type.Outlines.TRACED_BY + "`, " + link(type.traced(), List.of());
  }
}
