package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Stock;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.words.Counted;
import org.longlow.constraints.words.Names;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.OutOfRange;

/**
 * Something that is no part and can be added to a layout.
 *
 * @param group of the document, such as ties
 * @param word which of its kinds, such as distance
 * @param help one sentence or less, may be empty
 * @param edit for what is picked
 */
public record Addable(
    String group, String word, String help, Function<Additions.Picked, Edit> edit) {

  /** Returns all that can be added to a layout, in the order of the document. */
  public static List<Addable> of(Layout layout) {
    List<Addable> all = new ArrayList<>();
    all.add(of("measures", "measure", "A named quantity.", p -> Additions.measure()));
    for (TieKind kind : TieKind.values()) {
      all.add(of("ties", kind.word(), kind.help(), p -> Additions.tie(kind, p)));
    }
    for (Limit.Kind kind : Limit.Kind.values()) {
      all.add(of("limits", kind.word(), needs(kind), p -> Additions.limit(kind, p)));
    }
    for (Wish.Kind kind : Wish.Kind.values()) {
      all.add(of("wishes", kind.word(), "", p -> Additions.wish(kind, p)));
    }
    String opens = "What is picked opens together, on the pin picked or on four.";
    all.add(of("sections", "section", opens, Additions::section));
    Stream.of(Stance.Kind.values())
        .filter(k -> k == Stance.Kind.OPEN || !layout.stances().containsValue(new Stance(k, "")))
        .forEach(k -> all.add(of("stances", k.word(), "", p -> Additions.stance(k))));
    all.add(of("crew", "woman", "Of mean size.", p -> Additions.person(Sex.FEMALE)));
    all.add(of("crew", "man", "Of mean size.", p -> Additions.person(Sex.MALE)));
    String led = "What is picked leads it, from end to end; it is held against its way.";
    for (Line.Kind kind : Line.Kind.values()) {
      all.add(of("lines", Names.word(kind), led, p -> NewLine.of(kind, p)));
    }
    for (Stock.Form form : Stock.Form.values()) {
      all.add(
          of(
              "stock",
              Names.word(form),
              "What is bought to cut parts from, with its size and price.",
              p -> NewStock.of(form)));
    }
    String other = "Another state of the machine: say what it has otherwise.";
    all.add(of("variants", "variant", other, p -> Additions.variant()));
    Stream.of(Demands.Key.values())
        .filter(k -> !layout.demands().limits().containsKey(k))
        .forEach(k -> all.add(of("demands", k.word(), k.meaning(), p -> Additions.demand(k))));
    Document.rules().stream()
        .filter(r -> !layout.demands().rules().contains(r))
        .forEach(r -> all.add(of("demands", "rules " + r, "", p -> Additions.rules(r))));
    return all;
  }

  private static Addable of(
      String group, String word, String help, Function<Additions.Picked, Edit> edit) {
    return new Addable(group, word, help, edit);
  }

  private static String needs(Limit.Kind kind) {
    String pins = kind.pins() == 0 ? "" : Counted.of(kind.pins(), "pin");
    String parts = kind.parts() == 0 ? "" : Counted.of(kind.parts(), "part");
    return (pins + " " + parts).strip();
  }

  /** Returns what it is, such as tie distance. */
  public String title() {
    String one =
        switch (group) {
          case "wishes" -> "wish ";
          case "crew" -> "person ";
          case "stock" -> "stock ";
          case "measures", "sections", "variants" -> "";
          default -> group.substring(0, group.length() - 1) + " ";
        };
    return one + word;
  }

  /** What else a builder may call what is in a group, or what it is for. */
  private static final Map<String, String> ALSO =
      Map.of(
          "measures", "quantity number parameter variable dimension",
          "ties", "relation fix hold",
          "limits", "range gap clearance least most",
          "wishes", "prefer comfort",
          "sections", "hinge lid door flap canopy opening",
          "stances", "state",
          "lines", "wire wiring harness brake clutch throttle pipe",
          "crew", "rider passenger pillion people driver human body somebody",
          "demands", "requirement law",
          "stock", "bar sheet price cost buy kerf plywood tube foam");

  /**
   * Returns whether each word of what is searched for begins a word of its title, of its group or
   * of what else such things are called.
   */
  public boolean matches(String search) {
    String all = title() + " " + group + " " + ALSO.getOrDefault(group, "");
    List<String> described = List.of(all.toLowerCase(Locale.ROOT).split("\\W+"));
    return Stream.of(search.strip().toLowerCase(Locale.ROOT).split("\\s+"))
        .allMatch(word -> described.stream().anyMatch(d -> d.startsWith(word)));
  }

  /** Returns what an edit adds to this group of a layout, as a subject; empty if it cannot be. */
  public Optional<String> subject(Layout before, Edit made) {
    if (group.equals("demands")) {
      return Optional.of(Subjects.DEMANDS);
    }
    try {
      Layout after = made.applied(before);
      return Entries.of(after, group).keySet().stream()
          .filter(name -> !Entries.of(before, group).containsKey(name))
          .map(name -> Subjects.of(new Entries.Entry(group, name)))
          .findFirst();
    } catch (OutOfRange e) {
      return Optional.empty();
    }
  }
}
