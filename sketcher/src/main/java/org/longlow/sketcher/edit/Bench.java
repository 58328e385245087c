package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Form.Input;
import org.longlow.constraints.document.Lacking;
import org.longlow.constraints.document.ShownQuantity;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.Units;

/**
 * What lies on the bench: a picked thing with its quantities, in groups.
 *
 * @param subject such as {@code part:tank} or {@code pin:gripPin}; empty for the whole machine
 * @param title its name
 * @param kind what it is, in a word or two
 * @param note the user's note on it, may be empty
 * @param groups its quantities
 */
public record Bench(String subject, String title, String kind, String note, List<Group> groups) {

  /** Quantities under one heading. */
  public record Group(String heading, List<Row> rows) {
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One quantity, or anything else that is said of a thing.
   *
   * @param target what typing changes
   * @param label its name
   * @param text value or formula as the user wrote it
   * @param value what it is worth now, with unit; empty where text says it already
   * @param note for people, may be empty
   * @param measure true if it is a measure and can be freed
   * @param free true if it is a measure that the solver finds
   * @param input how it is filled in
   * @param choices what can be picked, where it is picked
   * @param usual what stands in where nothing is said, in few words; may be empty
   * @param drops true if it is an item of a list that can be dropped
   */
  public record Row(
      Target target,
      String label,
      String text,
      String value,
      String note,
      boolean measure,
      boolean free,
      Input input,
      List<String> choices,
      String usual,
      boolean drops) {

    /** A quantity that is no measure. */
    Row(Target target, String label, String text, String value, String note) {
      this(target, label, text, value, note, false, false, Input.QUANTITY, List.of(), "", false);
    }

    Row leaving(String instead) {
      return new Row(
          target, label, text, value, note, measure, free, input, choices, instead, drops);
    }

    Row dropping(boolean on) {
      return new Row(target, label, text, value, note, measure, free, input, choices, usual, on);
    }
  }

  public Bench {
    groups = List.copyOf(groups);
  }

  /** Returns the thing that lies on the bench, as the document has it; empty for the whole. */
  public Optional<Entries.Entry> entry() {
    return Subjects.entry(subject);
  }

  /** Lays {@code subject} on the bench; the whole machine if the layout has no such thing. */
  public static Bench of(Layout layout, Places places, String subject) {
    Builder builder = new Builder(layout, places);
    if (subject.equals(Subjects.DEMANDS)) {
      return builder.form(subject, "demands", Form.demands(layout));
    }
    if (subject.equals(Subjects.NAMES)) {
      return builder.form(subject, layout.name(), Form.whole(layout));
    }
    if (isWhole(layout, subject)) {
      return whole(layout, places);
    }
    Entries.Entry entry = Subjects.entry(subject).orElseThrow();
    return switch (entry.group()) {
      case "parts" -> builder.part(layout.parts().get(entry.name()), subject);
      case "pins" -> builder.pin(entry.name(), subject);
      case "crew" -> builder.person(layout.crew().get(entry.name()), subject);
      default -> builder.form(subject, entry.name(), builder.form(entry.group(), entry.name()));
    };
  }

  /** Returns whether a subject is none of the layout's things, so that the whole is shown. */
  public static boolean isWhole(Layout layout, String subject) {
    return !subject.equals(Subjects.DEMANDS)
        && !subject.equals(Subjects.NAMES)
        && Subjects.entry(layout, subject).isEmpty();
  }

  private static Bench whole(Layout layout, Places places) {
    Builder b = new Builder(layout, places);
    List<Row> rows = layout.measures().keySet().stream().map(b::measure).toList();
    return new Bench(
        "", layout.name(), "the whole machine", "", List.of(new Group("measures", rows)));
  }

  /** Says what something is worth: in inches as a shop reads it. */
  static String worth(double internal, Dim dim, Units units) {
    return units == Units.IN && dim.equals(Dim.LENGTH)
        ? units.inField(internal)
        : figure(internal, dim, units);
  }

  /** Writes a value in its edge unit, to a tenth of a millimetre or degree. */
  public static String figure(double internal, Dim dim, Units units) {
    if (units == Units.IN && dim.equals(Dim.LENGTH)) {
      return units.given(internal);
    }
    Unit unit = Unit.of(dim, units);
    double shown = unit.fromInternal(internal);
    int digits = dim.equals(Dim.NUMBER) ? 3 : dim.equals(Dim.ANGLE) ? 2 : 1;
    String text = Decimals.upTo(digits, shown);
    return unit == Unit.NONE ? text : text + " " + unit.symbol();
  }

  private static final class Builder {
    private final Layout layout;
    private final Places places;
    private final Set<String> measures = new LinkedHashSet<>();

    Builder(Layout layout, Places places) {
      this.layout = layout;
      this.places = places;
    }

    Bench part(Part part, String subject) {
      List<Row> lacking = new ArrayList<>();
      List<Row> own = new ArrayList<>();
      List<Row> more = new ArrayList<>();
      List<String> lacks = Lacking.of(part);
      for (FormRows.Said said : FormRows.of(form("parts", part.name()))) {
        if (lacks.contains(key(said))) {
          lacking.add(plain(said));
        } else if (said.isQuantity()) {
          own.add(said(said));
        } else {
          more.add(plain(said));
        }
      }
      List<Row> pins = new ArrayList<>();
      part.pins().forEach(p -> pins.addAll(pinRows(p, p + " ")));
      return bench(
          subject,
          part.name(),
          part.kind(),
          part.base().note(),
          List.of(
              new Group("to give first", lacking),
              new Group("its own", own),
              new Group("where it hangs", pins)),
          more);
    }

    /** The key of a field of a part itself; empty for fields inside of one. */
    private static String key(FormRows.Said said) {
      List<String> path = said.target().path();
      return path.size() == 3 ? path.get(2) : "";
    }

    private Form form(String group, String name) {
      return Form.of(layout, new Entries.Entry(group, name)).orElseThrow();
    }

    /** Everything else is filled in as it is described. */
    Bench form(String subject, String title, Form form) {
      List<Row> rows = FormRows.of(form).stream().map(this::said).toList();
      return bench(
          subject, title, form.name(), "", List.of(new Group("what it says", rows)), List.of());
    }

    /** What stands in for nothing said is told in the units shown. */
    private Row plain(FormRows.Said said) {
      String usual = said.usual();
      boolean figure = said.dim().isPresent() && usual.matches("[0-9].*");
      return new Row(
          said.target(),
          said.label(),
          said.text(),
          "",
          said.help(),
          false,
          false,
          said.input(),
          said.choices(),
          figure ? text(Formula.parse(usual), said.dim().get()) : usual,
          said.drops());
    }

    private Row said(FormRows.Said said) {
      return said.isQuantity()
          ? quantity(said).leaving(said.usual()).dropping(said.drops())
          : plain(said);
    }

    private Row quantity(FormRows.Said said) {
      Formula formula = Formula.parse(said.text());
      return row(said.target(), said.label(), formula, said.dim(), said.help());
    }

    Bench pin(String name, String subject) {
      Pin pin = layout.pins().get(name);
      List<Row> ties = new ArrayList<>();
      layout.ties().forEach((key, tie) -> tieRow(key, tie, name).ifPresent(ties::add));
      List<Row> limits = new ArrayList<>();
      layout.limits().forEach((key, limit) -> limits.addAll(limitRows(key, limit, name)));
      return bench(
          subject,
          name,
          pin.nailed() ? "pin, nailed" : "pin",
          pin.note(),
          List.of(
              new Group("place", pinRows(name, "")),
              new Group("ties", ties),
              new Group("limits", limits)),
          FormRows.of(form("pins", name)).stream()
              .filter(said -> !said.isQuantity() && !said.label().equals("nailed"))
              .map(this::plain)
              .toList());
    }

    Bench person(Person person, String subject) {
      List<Row> rows =
          List.of(
              row(
                  new Target.OfPerson(person.name(), true),
                  "stature",
                  person.stature(),
                  Dim.LENGTH,
                  ""),
              row(new Target.OfPerson(person.name(), false), "mass", person.mass(), Dim.MASS, ""));
      Set<String> shown = Set.of("stature", "mass");
      return bench(
          subject,
          person.name(),
          "crew, " + person.sex(),
          "",
          List.of(new Group("body", rows)),
          FormRows.of(form("crew", person.name())).stream()
              .filter(said -> !shown.contains(said.label()))
              .map(this::plain)
              .toList());
    }

    private Bench bench(
        String subject,
        String title,
        String kind,
        String note,
        List<Group> groups,
        List<Row> more) {
      List<Group> all = new ArrayList<>();
      groups.stream().filter(g -> !g.rows().isEmpty()).forEach(all::add);
      List<Row> used = new ArrayList<>();
      // The list grows while measures name further measures.
      List<String> queue = new ArrayList<>(measures);
      for (int i = 0; i < queue.size(); i++) {
        used.add(measure(queue.get(i)));
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

    private List<Row> pinRows(String name, String before) {
      Pin pin = layout.pins().get(name);
      return List.of(
          pinRow(name, true, before + "x", pin.x(), places.pin(name).x(), pin.note()),
          pinRow(name, false, before + "z", pin.z(), places.pin(name).z(), ""));
    }

    private Row pinRow(
        String name, boolean x, String label, Formula formula, double nowMm, String note) {
      collect(formula);
      return new Row(
          new Target.OfPin(name, x),
          label,
          text(formula, Dim.LENGTH),
          Bench.worth(nowMm, Dim.LENGTH, layout.units()),
          help(note, Dim.LENGTH));
    }

    private Optional<Row> tieRow(String key, Tie tie, String pin) {
      if (!tie.pins().contains(pin)) {
        return Optional.empty();
      }
      String said = tie.kind().word() + ": " + String.join(", ", tie.pins());
      String note = tie.note().isEmpty() ? said : said + "; " + tie.note();
      if (tie.is().isEmpty()) {
        return Optional.of(new Row(new Target.OfTie(key), key, "", "", note));
      }
      return Optional.of(row(new Target.OfTie(key), key, tie.is().get(), tie.kind().dim(), note));
    }

    private List<Row> limitRows(String key, Limit limit, String pin) {
      List<Row> rows = new ArrayList<>();
      if (limit.pins().contains(pin)) {
        String note = limit.kind().word() + ": " + String.join(", ", limit.pins());
        Optional<Dim> dim = limit.kind().dim();
        limit
            .from()
            .map(f -> row(new Target.OfLimit(key, true), key + " from", f, dim, note))
            .ifPresent(rows::add);
        limit
            .to()
            .map(f -> row(new Target.OfLimit(key, false), key + " to", f, dim, note))
            .ifPresent(rows::add);
      }
      return rows;
    }

    Row measure(String name) {
      Measure m = layout.measures().get(name);
      return new Row(
          new Target.OfMeasure(name),
          name,
          text(m.is(), m.dim()),
          value(m.is(), places.measures().getOrDefault(name, Double.NaN), m.dim(), m.free()),
          rangeAndNote(m),
          true,
          m.free(),
          Input.QUANTITY,
          List.of(),
          "",
          false);
    }

    private String rangeAndNote(Measure m) {
      StringBuilder text = new StringBuilder();
      m.from().ifPresent(f -> text.append("from ").append(text(f, m.dim())).append(' '));
      m.to().ifPresent(f -> text.append("to ").append(text(f, m.dim())).append(' '));
      String range = text.toString().strip();
      return range.isEmpty() || m.note().isEmpty() ? range + m.note() : range + "; " + m.note();
    }

    /**
     * @param dim what it measures, where that is known: a bare number does not say it itself
     */
    private Row row(Target target, String label, Formula formula, Optional<Dim> dim, String note) {
      Dim own = dim.orElseGet(() -> formula.expr().dim(n -> Measures.dim(layout, n)));
      return row(target, label, formula, own, note);
    }

    private Row row(Target target, String label, Formula formula, Dim dim, String note) {
      collect(formula);
      double worth = places.value(formula);
      return new Row(
          target, label, text(formula, dim), value(formula, worth, dim, false), help(note, dim));
    }

    /** A plain quantity says its worth itself. */
    private String value(Formula formula, double worth, Dim dim, boolean always) {
      return formula.names().isEmpty() && !always ? "" : Bench.worth(worth, dim, layout.units());
    }

    /** What stands in the field; whoever types over it may write any unit. */
    private String text(Formula formula, Dim dim) {
      return ShownQuantity.text(formula, dim, layout.units());
    }

    private String help(String note, Dim dim) {
      Unit unit = Unit.of(dim, layout.units());
      String bare =
          unit == Unit.of(dim)
              ? ""
              : "A bare number means " + (unit == Unit.INCH ? "inches" : unit.symbol()) + ".";
      return note.isEmpty() || bare.isEmpty() ? note + bare : note + " " + bare;
    }

    private void collect(Formula formula) {
      formula.names().stream().filter(layout.measures()::containsKey).forEach(measures::add);
    }
  }
}
