package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.Lacking;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.shape.Places;
import org.longlow.sketcher.edit.Bench.Group;
import org.longlow.sketcher.edit.Bench.Row;

/** Lays a thing on the bench: what is said of it, under headings. */
public final class OnBench {

  /** What is cut to build a part over says nothing of the part itself. */
  private static final String FORMERS = "formers";

  private final Layout layout;
  private final BenchRows rows;
  private final MeasuredRows measured;

  private OnBench(Layout layout, Places places) {
    this.layout = layout;
    rows = new BenchRows(layout, places);
    measured = new MeasuredRows(layout, places);
  }

  /** Lays {@code subject} on the bench; the whole machine if the layout has no such thing. */
  public static Bench of(Layout layout, Places places, String subject) {
    OnBench on = new OnBench(layout, places);
    if (subject.equals(Subjects.DEMANDS)) {
      return on.form(subject, "demands", Forms.demands(layout));
    }
    if (subject.equals(Subjects.AS_BUILT)) {
      return on.form(subject, MeasuredRows.HEADING, Forms.asBuilt(layout));
    }
    if (subject.equals(Subjects.NAMES)) {
      return on.form(subject, layout.name(), Forms.whole(layout));
    }
    if (isWhole(layout, subject)) {
      return on.whole();
    }
    Entries.Entry entry = Subjects.entry(subject).orElseThrow();
    return switch (entry.group()) {
      case "parts" -> on.part(layout.parts().get(entry.name()), subject);
      case "pins" -> on.pin(entry.name(), subject);
      case "crew" -> on.person(layout.crew().get(entry.name()), subject);
      case "measures" -> on.measure(entry.name(), subject);
      default -> on.form(subject, entry.name(), on.form(entry.group(), entry.name()));
    };
  }

  /** Returns whether a subject is none of the layout's things, so that the whole is shown. */
  public static boolean isWhole(Layout layout, String subject) {
    return !subject.equals(Subjects.DEMANDS)
        && !subject.equals(Subjects.NAMES)
        && !subject.equals(Subjects.AS_BUILT)
        && Subjects.entry(layout, subject).isEmpty();
  }

  private Bench whole() {
    List<Row> measures = layout.measures().keySet().stream().map(rows::measure).toList();
    return new Bench(
        "",
        layout.name(),
        "the whole machine",
        "",
        List.of(
            new Group("measures", measures),
            new Group(MeasuredRows.HEADING, measured.whole(rows))));
  }

  private Bench part(Part part, String subject) {
    List<Row> lacking = new ArrayList<>();
    List<Row> own = new ArrayList<>();
    List<Row> more = new ArrayList<>();
    List<String> lacks = Lacking.of(part);
    for (FormRows.Said said : FormRows.of(form("parts", part.name()))) {
      if (lacks.contains(key(said))) {
        lacking.add(rows.said(said));
      } else if (said.isQuantity() && !said.target().path().contains(FORMERS)) {
        own.add(rows.said(said));
      } else {
        more.add(rows.said(said));
      }
    }
    List<Row> pins = new ArrayList<>();
    part.pins().forEach(p -> pins.addAll(rows.pin(p, p + " ")));
    return bench(
        subject,
        part.name(),
        part.kind(),
        part.base().note(),
        List.of(
            new Group("to give first", lacking),
            new Group("its own", own),
            new Group("where it hangs", pins),
            new Group(MeasuredRows.HEADING, measured.part(part))),
        more);
  }

  /** The key of a field of a part itself; empty for fields inside of one. */
  private static String key(FormRows.Said said) {
    List<String> path = said.target().path();
    return path.size() == 3 ? path.get(2) : "";
  }

  private Form form(String group, String name) {
    return Forms.of(layout, new Entries.Entry(group, name)).orElseThrow();
  }

  /** Everything else is filled in as it is described. */
  private Bench form(String subject, String title, Form form) {
    List<Row> said = FormRows.of(form).stream().map(rows::said).toList();
    return bench(
        subject, title, form.name(), "", List.of(new Group("what it says", said)), List.of());
  }

  private Bench measure(String name, String subject) {
    List<Row> said = FormRows.of(form("measures", name)).stream().map(rows::said).toList();
    return bench(
        subject,
        name,
        "measure",
        "",
        List.of(
            new Group("what it says", said),
            new Group(MeasuredRows.HEADING, List.of(measured.measure(name)))),
        List.of());
  }

  private Bench pin(String name, String subject) {
    Pin pin = layout.pins().get(name);
    List<Row> ties = new ArrayList<>();
    layout.ties().forEach((key, tie) -> rows.tie(key, tie, name).ifPresent(ties::add));
    List<Row> limits = new ArrayList<>();
    layout.limits().forEach((key, limit) -> limits.addAll(rows.limit(key, limit, name)));
    return bench(
        subject,
        name,
        pin.nailed() ? "pin, nailed" : "pin",
        pin.note(),
        List.of(
            new Group("place", rows.pin(name, "")),
            new Group("ties", ties),
            new Group("limits", limits),
            new Group(MeasuredRows.HEADING, measured.pin(name))),
        FormRows.of(form("pins", name)).stream()
            .filter(said -> !said.isQuantity() && !said.label().equals("nailed"))
            .map(rows::said)
            .toList());
  }

  private Bench person(Person person, String subject) {
    List<Row> body =
        List.of(
            rows.row(
                new Target.OfPerson(person.name(), true),
                "stature",
                person.stature(),
                Dim.LENGTH,
                ""),
            rows.row(
                new Target.OfPerson(person.name(), false), "mass", person.mass(), Dim.MASS, ""));
    Set<String> shown = Set.of("stature", "mass");
    return bench(
        subject,
        person.name(),
        "crew, " + person.sex(),
        "",
        List.of(new Group("body", body)),
        FormRows.of(form("crew", person.name())).stream()
            .filter(said -> !shown.contains(said.label()))
            .map(rows::said)
            .toList());
  }

  private Bench bench(
      String subject, String title, String kind, String note, List<Group> groups, List<Row> more) {
    List<Group> all = new ArrayList<>();
    groups.stream().filter(g -> !g.rows().isEmpty()).forEach(all::add);
    List<Row> used = new ArrayList<>();
    // The list grows while measures name further measures.
    List<String> queue = new ArrayList<>(rows.measures());
    for (int i = 0; i < queue.size(); i++) {
      used.add(rows.measure(queue.get(i)));
      layout.measures().get(queue.get(i)).is().names().stream()
          .filter(n -> layout.measures().containsKey(n) && !queue.contains(n))
          .forEach(queue::add);
    }
    if (!used.isEmpty()) {
      all.add(new Group("measures it rests on", used));
    }
    if (!more.isEmpty()) {
      all.add(new Group("more to say", more));
    }
    return new Bench(subject, title, kind, note, all);
  }
}
