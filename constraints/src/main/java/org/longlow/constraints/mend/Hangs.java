package org.longlow.constraints.mend;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;

/**
 * What a finding hangs on: the parts, pins, ties and measures behind it, the nearest first. From a
 * part to its pins and the measures it names, from a free pin to the ties that hold it, from a tie
 * to its other pins, and so on.
 */
final class Hangs {

  /** So many of the heaviest parts are looked at where it is weight that counts. */
  private static final int HEAVIEST = 6;

  private final Study study;
  private final Layout layout;
  private final Set<Entry> all = new LinkedHashSet<>();
  private final Deque<Entry> open = new ArrayDeque<>();

  private Hangs(Study study) {
    this.study = study;
    this.layout = study.layout();
  }

  /** Returns the entries that {@code finding} hangs on, the nearest first. */
  static Set<Entry> of(Study study, Finding finding) {
    Hangs hangs = new Hangs(study);
    hangs.begin(finding);
    while (!hangs.open.isEmpty()) {
      hangs.behind(hangs.open.remove());
    }
    return hangs.all;
  }

  private void add(String group, String name) {
    Entry entry = new Entry(group, name);
    if (!all.contains(entry) && named(group).contains(name)) {
      all.add(entry);
      open.add(entry);
    }
  }

  private Collection<String> named(String group) {
    return switch (group) {
      case "parts" -> layout.parts().keySet();
      case "pins" -> layout.pins().keySet();
      case "ties" -> layout.ties().keySet();
      case "limits" -> layout.limits().keySet();
      case "sections" -> layout.sections().keySet();
      default -> layout.measures().keySet();
    };
  }

  private void begin(Finding finding) {
    finding.about().parts().forEach(part -> add("parts", part));
    finding.who().ifPresent(who -> seat(who.seat()));
    for (String word : finding.about().path()) {
      for (String group : List.of("parts", "pins", "ties", "limits", "sections", "measures")) {
        add(group, word);
      }
    }
    if (finding.kind() == SightFindings.SIGHT) {
      layout.parts(ShellPart.class).forEach(part -> add("parts", part.name()));
    }
    switch (finding.group()) {
      case STEERING, SAG, CLEARANCE -> carriers();
      case LOADS -> heaviest().forEach(part -> add("parts", part));
      default -> {
        // its own parts and people say it all
      }
    }
  }

  private void seat(String seat) {
    layout.parts().values().stream()
        .filter(part -> part.seatOf().filter(seat::equals).isPresent())
        .forEach(part -> add("parts", part.name()));
  }

  private void carriers() {
    layout.parts().values().stream()
        .filter(part -> part instanceof Part.Carrier)
        .forEach(part -> add("parts", part.name()));
  }

  private Stream<String> heaviest() {
    return study.shapes().values().stream()
        .filter(shape -> !(shape.part() instanceof Part.AtEnd) && shape.massKg() > 0)
        .sorted(Comparator.comparingDouble(PartShape::massKg).reversed())
        .limit(HEAVIEST)
        .map(shape -> shape.part().name());
  }

  private void behind(Entry entry) {
    String name = entry.name();
    switch (entry.group()) {
      case "parts" -> part(layout.parts().get(name));
      case "pins" -> pin(name, layout.pins().get(name));
      case "ties" -> tie(layout.ties().get(name));
      case "limits" -> limit(layout.limits().get(name));
      case "sections" -> section(layout.sections().get(name));
      default -> {
        if (!layout.measures().get(name).free()) {
          measures(layout.measures().get(name).is());
        }
      }
    }
  }

  private void part(Part part) {
    part.pins().forEach(pin -> add("pins", pin));
    quantities(layout, part.name(), row -> measures(Formula.parse(row.text())));
  }

  /** Gives each quantity that a part says, as its description lists them. */
  static void quantities(Layout layout, String part, Consumer<Form.Row> use) {
    Forms.of(layout, new Entry("parts", part)).map(Form::rows).orElse(List.of()).stream()
        .filter(row -> row.input() == Form.Input.QUANTITY && !row.text().isEmpty())
        .forEach(use);
  }

  private void pin(String name, Pin pin) {
    if (pin.nailed()) {
      measures(pin.x());
      measures(pin.z());
      return;
    }
    layout
        .ties()
        .forEach(
            (tie, said) -> {
              if (said.pins().contains(name)) {
                add("ties", tie);
              }
            });
  }

  private void tie(Tie tie) {
    tie.is().ifPresent(this::measures);
    tie.radii().forEach(this::measures);
    tie.pins().forEach(pin -> add("pins", pin));
  }

  private void limit(Limit limit) {
    limit.pins().forEach(pin -> add("pins", pin));
    limit.parts().forEach(part -> add("parts", part));
    add("measures", limit.measure());
  }

  private void section(Section section) {
    section.parts().forEach(part -> add("parts", part));
    section.pivot().ifPresent(pin -> add("pins", pin));
    section.frameArms().forEach(pin -> add("pins", pin));
    section.sectionArms().forEach(pin -> add("pins", pin));
  }

  private void measures(Formula formula) {
    formula.names().forEach(name -> add("measures", name));
  }

  /** Returns the only part that hangs on a pin, where nothing else does. */
  static Optional<String> onlyPart(Layout layout, String pin) {
    List<String> parts =
        layout.parts().values().stream()
            .filter(part -> part.ownPins().contains(pin))
            .map(Part::name)
            .toList();
    boolean other =
        layout.ties().values().stream().anyMatch(tie -> tie.pins().contains(pin))
            || layout.limits().values().stream().anyMatch(limit -> limit.pins().contains(pin))
            || layout.sections().values().stream().anyMatch(s -> ofSection(s, pin));
    return parts.size() == 1 && !other ? Optional.of(parts.get(0)) : Optional.empty();
  }

  private static boolean ofSection(Section section, String pin) {
    return section.pivot().filter(pin::equals).isPresent()
        || section.frameArms().contains(pin)
        || section.sectionArms().contains(pin);
  }
}
