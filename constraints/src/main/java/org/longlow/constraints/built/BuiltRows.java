package org.longlow.constraints.built;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.BuiltSpan;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/** Everything that was measured, beside what was planned. */
final class BuiltRows {

  private final Study plan;
  private final AsBuilt built;
  private final Places planned;
  private final Places now;
  private final List<BuiltRow> rows = new ArrayList<>();

  /**
   * @param now where pins are as built
   */
  BuiltRows(Study plan, Places now) {
    this.plan = plan;
    this.built = plan.layout().asBuilt();
    this.planned = plan.placed().places();
    this.now = now;
  }

  List<BuiltRow> all() {
    built
        .measures()
        .keySet()
        .forEach(
            name ->
                add(
                    "measure",
                    name,
                    "",
                    planned.measures().get(name),
                    now.measures().get(name),
                    Measures.dim(plan.layout(), name)));
    for (String pin : built.pins().keySet()) {
      PointMm was = planned.pin(pin);
      PointMm is = now.pin(pin);
      add("pin", pin, "forward", was.x(), is.x(), Dim.LENGTH);
      add("pin", pin, "up", was.z(), is.z(), Dim.LENGTH);
    }
    for (BuiltSpan span : built.spans()) {
      double was = PinFigures.of(span.kind(), List.of(span.from(), span.to()), planned);
      add(
          "between pins",
          span.from() + " to " + span.to(),
          span.kind().word(),
          was,
          now.value(span.is()),
          span.kind().dim().orElseThrow());
    }
    built
        .masses()
        .forEach(
            (name, mass) -> {
              PartShape shape = plan.shapes().get(name);
              boolean known = shape.part().base().mass().isPresent() || shape.massKg() > 0;
              double was = known ? shape.massKg() : Double.NaN;
              add("part", name, "mass", was, now.value(mass), Dim.MASS);
            });
    Wheels wheels = Wheels.of(plan.layout(), planned);
    built
        .radii()
        .forEach(
            (name, radius) -> {
              boolean front =
                  plan.layout().parts().get(name) instanceof WheelPart w
                      && w.end() == Part.End.FRONT;
              double was = (front ? wheels.frontTyre() : wheels.rearTyre()).freeRadiusMm();
              add("tyre", name, "radius", was, now.value(radius), Dim.LENGTH);
            });
    Optional<Scales> reckoned = Scales.reckoned(plan);
    built.frontLoad().ifPresent(f -> load("front", f, reckoned.map(Scales::frontKg)));
    built.rearLoad().ifPresent(f -> load("rear", f, reckoned.map(Scales::rearKg)));
    return rows;
  }

  private void load(String end, Formula load, Optional<Double> reckoned) {
    add("load", "nobody aboard", end, reckoned.orElse(Double.NaN), now.value(load), Dim.MASS);
  }

  private void add(String kind, String name, String what, double was, double is, Dim dim) {
    rows.add(new BuiltRow(kind, name, what, was, is, dim));
  }
}
