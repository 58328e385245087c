package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.document.Form.Input;
import org.longlow.constraints.document.ShownQuantity;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.shape.Places;
import org.longlow.sketcher.edit.Bench.Row;

/** One row of the bench for whatever is said of a thing; remembers the measures that they name. */
final class BenchRows {

  private final Layout layout;
  private final Places places;
  private final Set<String> measures = new LinkedHashSet<>();

  BenchRows(Layout layout, Places places) {
    this.layout = layout;
    this.places = places;
  }

  /** Returns the measures that the rows made so far rest on, in the order they were met. */
  Set<String> measures() {
    return measures;
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

  Row said(FormRows.Said said) {
    return said.isQuantity()
        ? quantity(said).leaving(said.usual()).dropping(said.drops())
        : plain(said);
  }

  private Row quantity(FormRows.Said said) {
    Formula formula = Formula.parse(said.text());
    return row(said.target(), said.label(), formula, said.dim(), said.help());
  }

  List<Row> pin(String name, String before) {
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

  Optional<Row> tie(String key, Tie tie, String pin) {
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

  List<Row> limit(String key, Limit limit, String pin) {
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

  Row row(Target target, String label, Formula formula, Dim dim, String note) {
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
