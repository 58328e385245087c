package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.document.Form.Input;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.ShownQuantity;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.sketcher.edit.Bench.Row;

/** What was measured of a thing, to be typed beside what is planned of it. */
final class MeasuredRows {

  static final String HEADING = "as built";

  private final Layout layout;
  private final Places places;
  private final AsBuilt built;

  MeasuredRows(Layout layout, Places places) {
    this.layout = layout;
    this.places = places;
    this.built = layout.asBuilt();
  }

  /** What scales under the wheels show. */
  List<Row> whole(BenchRows rows) {
    return FormRows.of(Forms.asBuilt(layout)).stream()
        .filter(said -> said.target().path().get(1).endsWith("Load"))
        .map(rows::said)
        .toList();
  }

  List<Row> pin(String name) {
    List<Formula> at = built.pins().get(name);
    Formula x = at == null ? null : at.get(0);
    Formula z = at == null ? null : at.get(1);
    return List.of(
        row(of("pins", name, "0", "measured x"), x, places.pin(name).x(), Dim.LENGTH),
        row(of("pins", name, "1", "measured z"), z, places.pin(name).z(), Dim.LENGTH));
  }

  List<Row> part(Part part) {
    List<Row> rows = new ArrayList<>();
    String name = part.name();
    double mass = part.base().mass().map(places::value).orElse(Double.NaN);
    rows.add(
        row(of("masses", name, "", "measured mass"), built.masses().get(name), mass, Dim.MASS));
    if (part instanceof WheelPart wheel) {
      double radius = wheel.radius().map(places::value).orElse(Double.NaN);
      Target.OfBuilt target = of("radii", name, "", "measured radius");
      rows.add(row(target, built.radii().get(name), radius, Dim.LENGTH));
    }
    return rows;
  }

  Row measure(String name) {
    return row(
        of("measures", name, "", "measured"),
        built.measures().get(name),
        places.measures().getOrDefault(name, Double.NaN),
        layout.measures().get(name).dim());
  }

  private static Target.OfBuilt of(String field, String name, String place, String label) {
    return new Target.OfBuilt(field, name, place, label);
  }

  private Row row(Target.OfBuilt target, Formula said, double planned, Dim dim) {
    return new Row(
        target,
        target.label(),
        said == null ? "" : ShownQuantity.text(said, dim, layout.units()),
        "",
        "What was measured on the machine that was made; nothing typed takes it out.",
        false,
        false,
        Input.QUANTITY,
        List.of(),
        Double.isNaN(planned) ? "not measured" : "as planned, " + figure(planned, dim),
        false);
  }

  private String figure(double value, Dim dim) {
    return Bench.figure(value, dim, layout.units());
  }

  /** Returns the layout with it typed: what was not said yet begins as planned. */
  static Layout typed(Layout layout, Target.OfBuilt target, String text) {
    boolean there = entries(layout.asBuilt(), target.field()).containsKey(target.of());
    if (text.isEmpty()) {
      return there ? Typing.dropped(layout, target.whole()) : layout;
    }
    Layout begun =
        there ? layout : Typing.added(layout, target.of(), List.of("asBuilt", target.field()));
    return Typing.typedAsShown(begun, text, target.path());
  }

  private static Map<String, ?> entries(AsBuilt built, String field) {
    return switch (field) {
      case "pins" -> built.pins();
      case "masses" -> built.masses();
      case "radii" -> built.radii();
      default -> built.measures();
    };
  }
}
