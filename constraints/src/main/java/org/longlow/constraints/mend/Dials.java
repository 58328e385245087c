package org.longlow.constraints.mend;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Expr;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.mend.Shift.Coordinate;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/** What a layout can change of what a finding hangs on. */
final class Dials {

  static final String DEMANDS = "demands";

  /** Fields of parts that a builder chooses; what is bought or weighed is as it is. */
  private static final Set<String> CHOSEN =
      Set.of("left", "right", "y", "length", "lean", "rate", "preload", "bump", "droop");

  /** Of a layer of foam; that of a board or sheet is what the shop sells. */
  private static final String THICKNESS = "thickness";

  private static final String LAYERS = "layers";

  /** Widths are changed by no more than this, mm; judgement. */
  private static final double WIDTHS_MM = 80;

  /** Layers are changed by no more than this, mm; judgement. */
  private static final double LAYERS_MM = 40;

  /** A free measure this near the end of its range rests on it, internal units. */
  private static final double AT_END = 1e-6;

  private static final PointMm FORWARD = new PointMm(1, 0);
  private static final PointMm UP = new PointMm(0, 1);

  private final Study study;
  private final Layout layout;
  private final List<Dial> dials = new ArrayList<>();
  private final Set<String> moved = new HashSet<>();

  Dials(Study study) {
    this.study = study;
    this.layout = study.layout();
  }

  /**
   * Returns the ways to change what {@code finding} hangs on, the nearest first.
   *
   * @param most how many
   */
  List<Dial> of(Finding finding, int most) {
    new Advised(layout, finding).lessOf().ifPresent(this::demand);
    for (Entry entry : Hangs.of(study, finding)) {
      switch (entry.group()) {
        case "parts" -> part(layout.parts().get(entry.name()));
        case "pins" -> pin(entry.name());
        case "ties" -> tie(entry.name(), layout.ties().get(entry.name()));
        case "measures" -> measure(entry.name(), layout.measures().get(entry.name()));
        default -> {
          // a limit or section changes nothing by itself
        }
      }
      if (dials.size() >= most) {
        break;
      }
    }
    return dials.subList(0, Math.min(most, dials.size()));
  }

  private void quantity(
      WrittenDial.Kind kind,
      String name,
      String label,
      List<String> path,
      Formula written,
      Dim dim) {
    Grid.of(written, dim)
        .ifPresent(grid -> dials.add(new WrittenDial(kind, name, label, path, written, grid)));
  }

  private static Optional<Dim> plain(Formula formula) {
    return formula.expr() instanceof Expr.Num n ? Optional.of(n.dim()) : Optional.empty();
  }

  /** A demand that is a figure, down to nothing asked. */
  private void demand(Demands.Key key) {
    Formula asked = layout.demands().limit(key);
    plain(asked)
        .flatMap(dim -> Grid.of(asked, dim))
        .map(grid -> grid.all(study.placed().places().value(asked)))
        .ifPresent(
            grid ->
                dials.add(
                    new WrittenDial(
                        WrittenDial.Kind.DEMAND,
                        key.word(),
                        "",
                        List.of(DEMANDS, key.word()),
                        asked,
                        grid)));
  }

  // --- measures and ties ---

  private void measure(String name, Measure measure) {
    List<String> is = List.of("measures", name, "is");
    if (!measure.free()) {
      if (plain(measure.is()).isPresent()) {
        quantity(WrittenDial.Kind.MEASURE, name, "", is, measure.is(), measure.dim());
      }
      return;
    }
    double now = study.placed().places().measures().get(name);
    Formula held = Formula.of(now, Unit.of(measure.dim()));
    Grid.of(held, measure.dim())
        .ifPresent(
            grid ->
                dials.add(
                    new WrittenDial(WrittenDial.Kind.HELD, name, "", is, grid.nearest(now), grid)));
    end(name, measure, now, WrittenDial.Kind.FROM, "from", measure.from());
    end(name, measure, now, WrittenDial.Kind.TO, "to", measure.to());
  }

  /** An end of its range matters only where the measure rests on it. */
  private void end(
      String name,
      Measure measure,
      double now,
      WrittenDial.Kind kind,
      String key,
      Optional<Formula> end) {
    end.filter(f -> plain(f).isPresent())
        .filter(f -> Math.abs(study.placed().places().value(f) - now) < AT_END)
        .ifPresent(f -> quantity(kind, name, "", List.of("measures", name, key), f, measure.dim()));
  }

  private void tie(String name, Tie tie) {
    tie.is()
        .filter(f -> plain(f).filter(d -> !d.equals(Dim.NUMBER)).isPresent())
        .ifPresent(
            f ->
                quantity(
                    WrittenDial.Kind.TIE,
                    name,
                    "",
                    List.of("ties", name, "is"),
                    f,
                    plain(f).get()));
  }

  // --- parts ---

  private void part(Part part) {
    List<String> own =
        part.ownPins().stream()
            .filter(p -> Hangs.onlyPart(layout, p).isPresent() && layout.pins().get(p).nailed())
            .filter(p -> !isAxle(p))
            .toList();
    if (!own.isEmpty() && own.size() == part.ownPins().size()) {
      List<Coordinate> all = new ArrayList<>();
      own.forEach(pin -> all.addAll(coordinates(pin)));
      shifts(part.name(), all);
      moved.addAll(own);
    } else {
      shifts(part.name(), outline(part));
    }
    List<Form.Row> layers = new ArrayList<>();
    Hangs.quantities(
        layout,
        part.name(),
        row -> {
          String key = row.path().get(row.path().size() - 1);
          if (row.depth() == 0 && CHOSEN.contains(key)) {
            field(part, row, row.label(), WIDTHS_MM);
          } else if (key.equals(THICKNESS) && row.path().contains(LAYERS)) {
            layers.add(row);
          }
        });
    layers.stream()
        .max(Comparator.comparingDouble(this::valueOf))
        .ifPresent(row -> field(part, row, "thickness of layer " + layer(row), LAYERS_MM));
  }

  private double valueOf(Form.Row row) {
    return study.placed().places().value(Formula.parse(row.text()));
  }

  private void field(Part part, Form.Row row, String label, double mostMm) {
    Formula written = Formula.parse(row.text());
    Dim dim = plain(written).filter(d -> !d.equals(Dim.NUMBER)).orElse(Dim.MASS);
    Grid.of(written, dim)
        .map(grid -> dim.equals(Dim.LENGTH) ? grid.upTo(mostMm) : grid)
        .ifPresent(
            grid ->
                dials.add(
                    new WrittenDial(
                        WrittenDial.Kind.FIELD, part.name(), label, row.path(), written, grid)));
  }

  private static String layer(Form.Row row) {
    return Integer.toString(Integer.parseInt(row.path().get(row.path().size() - 2)) + 1);
  }

  /**
   * The points of a cowl or screen that is written in the axes of the elevation, none on a pin.
   * What is bought moves with its pin.
   */
  private List<Coordinate> outline(Part part) {
    if (!(part instanceof ShellPart drawn)
        || !(drawn.outline() instanceof Outline.Drawn)
        || drawn.frame().along().isPresent()
        || drawn.frame().angle().filter(a -> study.placed().places().value(a) != 0).isPresent()
        || drawn.outline().vertices().stream().anyMatch(v -> v.pin() != null)) {
      return List.of();
    }
    List<Coordinate> all = new ArrayList<>();
    for (int i = 0; i < drawn.outline().vertices().size(); i++) {
      List<String> path = List.of("parts", part.name(), "outline", "points", Integer.toString(i));
      all.add(new Coordinate(with(path, "0"), drawn.outline().vertices().get(i).x(), true));
      all.add(new Coordinate(with(path, "1"), drawn.outline().vertices().get(i).z(), false));
    }
    return all;
  }

  private static List<String> with(List<String> path, String last) {
    List<String> longer = new ArrayList<>(path);
    longer.add(last);
    return List.copyOf(longer);
  }

  // --- pins ---

  private void pin(String name) {
    Pin pin = layout.pins().get(name);
    if (isAxle(name) || !moved.add(name)) {
      return;
    }
    if (pin.nailed()) {
      shifts(said(name), coordinates(name));
    } else {
      dials.add(new Pull(said(name), name, study.placed(), FORWARD));
      dials.add(new Pull(said(name), name, study.placed(), UP));
    }
  }

  /** A pin that is all a part hangs on is that part. */
  private String said(String pin) {
    return Hangs.onlyPart(layout, pin)
        .filter(part -> layout.parts().get(part).pins().size() == 1)
        .orElse(pin);
  }

  /** Where the wheels are is for wheelbase and tyres to say. */
  private boolean isAxle(String pin) {
    return layout.parts().values().stream()
        .anyMatch(part -> part instanceof Part.AtEnd end && end.axle().equals(pin));
  }

  /** A pin that is drawn on the ground stays on it. */
  private List<Coordinate> coordinates(String name) {
    Pin pin = layout.pins().get(name);
    List<String> path = List.of("pins", name, "at");
    List<Coordinate> both = new ArrayList<>();
    both.add(new Coordinate(with(path, "0"), pin.x(), true));
    boolean onGround = pin.z().expr() instanceof Expr.Num n && n.value() == 0;
    if (!onGround) {
      both.add(new Coordinate(with(path, "1"), pin.z(), false));
    }
    return both;
  }

  private void shifts(String name, List<Coordinate> coordinates) {
    Set<Boolean> ways = new LinkedHashSet<>();
    coordinates.forEach(c -> ways.add(c.isX()));
    ways.forEach(isX -> dials.add(new Shift(name, coordinates, isX ? FORWARD : UP)));
  }
}
