package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/** What comes out otherwise once two layouts are solved: all but the findings. */
final class SolvedChanges {

  /** What differs by less is where it was, mm, and has the value it had, in the unit shown. */
  private static final double SAME = 0.05;

  /** Newtons are shown whole. */
  private static final double SAME_N = 0.5;

  private final Study before;
  private final Study after;
  private final Units units;
  private final List<Difference> changes = new ArrayList<>();

  SolvedChanges(Study before, Study after, Units units) {
    this.before = before;
    this.after = after;
    this.units = units;
  }

  List<Difference> all() {
    quantities();
    pins();
    parts();
    people();
    loads();
    return changes;
  }

  /** Measures, and targets and limits that are formulas of them. */
  private void quantities() {
    Map<String, Formula> was = formulas(before.layout());
    Map<String, Formula> now = formulas(after.layout());
    was.forEach(
        (key, formula) -> {
          Formula other = now.get(key);
          boolean plain = other != null && formula.names().isEmpty() && other.names().isEmpty();
          if (other != null && !plain) {
            String[] words = key.split("\n");
            quantity(words[0], words[1], words[2], formula, other);
          }
        });
    Layout layout = before.layout();
    layout
        .measures()
        .forEach(
            (name, measure) -> {
              if (measure.free() && after.layout().measures().containsKey(name)) {
                quantity("measure", name, "value", Formula.parse(name), Formula.parse(name));
              }
            });
  }

  /** Returns what may hang on measures, by kind, name and field. */
  private static Map<String, Formula> formulas(Layout layout) {
    Map<String, Formula> out = new LinkedHashMap<>();
    layout
        .measures()
        .forEach(
            (n, m) -> {
              if (!m.free()) {
                out.put("measure\n" + n + "\nvalue", m.is());
              }
            });
    layout.ties().forEach((n, t) -> put(out, "tie\n" + n + "\nis", t.is()));
    layout
        .limits()
        .forEach(
            (n, l) -> {
              put(out, "limit\n" + n + "\nfrom", l.from());
              put(out, "limit\n" + n + "\nto", l.to());
            });
    layout.wishes().forEach((n, w) -> put(out, "wish\n" + n + "\nis", w.is()));
    layout.sections().forEach((n, s) -> out.put("section\n" + n + "\nangle", s.angle()));
    layout
        .crew()
        .forEach(
            (n, p) -> {
              out.put("person\n" + n + "\nstature", p.stature());
              out.put("person\n" + n + "\nmass", p.mass());
              p.measured().forEach((m, f) -> out.put("person\n" + n + "\n" + m, f));
            });
    layout.demands().limits().forEach((k, f) -> out.put("demand\n" + k.word() + "\nvalue", f));
    return out;
  }

  private static void put(Map<String, Formula> out, String key, Optional<Formula> formula) {
    formula.ifPresent(f -> out.put(key, f));
  }

  private void quantity(String kind, String name, String what, Formula was, Formula now) {
    Unit from = unit(before.layout(), was);
    Unit to = unit(after.layout(), now);
    double x = from.fromInternal(before.placed().places().value(was));
    double y = to.fromInternal(after.placed().places().value(now));
    if (from != to || !same(x, y, Math.min(SAME, 1e-3 * Math.max(Math.abs(x), Math.abs(y))))) {
      changes.add(new Difference(kind, name, what, shown(x, from), shown(y, to)));
    }
  }

  private static Unit unit(Layout layout, Formula formula) {
    Dim dim = formula.expr().dim(n -> Measures.dim(layout, n));
    return Unit.of(dim);
  }

  private String shown(double value, Unit unit) {
    if (units == Units.IN) {
      double internal = value * unit.factor();
      Unit own = Unit.of(unit.dim(), units);
      return own == Unit.INCH
          ? units.says(internal, FigureSort.LENGTH)
          : (Decimals.upTo(3, own.fromInternal(internal)) + " " + own.symbol()).strip();
    }
    String digits = Math.abs(value) < 10 ? "%.3f" : "%.1f";
    return (format(digits, value) + " " + unit.symbol()).strip();
  }

  private void pins() {
    Places was = before.placed().places();
    Places now = after.placed().places();
    was.pins()
        .forEach(
            (name, from) -> {
              PointMm to = now.pins().get(name);
              if (to != null && from.distance(to) >= SAME) {
                changes.add(
                    new Difference(
                        "pin",
                        name,
                        "moved " + units.says(from.distance(to), FigureSort.LENGTH_IN_TENTHS),
                        place(from),
                        place(to)));
              }
            });
  }

  private String place(PointMm p) {
    return "forward " + bare(p.x()) + ", up " + bare(p.z());
  }

  private String bare(double mm) {
    return units.bare(mm, FigureSort.LENGTH_IN_TENTHS);
  }

  private void parts() {
    before
        .shapes()
        .forEach(
            (name, was) -> {
              PartShape now = after.shapes().get(name);
              if (now == null) {
                return;
              }
              figure(
                  "part",
                  name,
                  "mass",
                  FigureSort.MASS_IN_TENTHS,
                  was.massKg(),
                  now.massKg(),
                  SAME);
              figure(
                  "part",
                  name,
                  "reach left",
                  FigureSort.LENGTH_IN_TENTHS,
                  was.leftMm(),
                  now.leftMm(),
                  SAME);
              figure(
                  "part",
                  name,
                  "reach right",
                  FigureSort.LENGTH_IN_TENTHS,
                  was.rightMm(),
                  now.rightMm(),
                  SAME);
              if (apart(was.outline(), now.outline())) {
                changes.add(new Difference("part", name, "moves or changes", box(was), box(now)));
              }
            });
  }

  /** Rounded corners may get another number of points, so points are not compared one by one. */
  private static boolean apart(Geometry a, Geometry b) {
    return !a.equalsExact(b, SAME)
        && (a.isEmpty() || b.isEmpty() || DiscreteHausdorffDistance.distance(a, b) >= SAME);
  }

  private String box(PartShape shape) {
    Envelope box = shape.outline().getEnvelopeInternal();
    return box.isNull()
        ? "nothing"
        : format(
            "forward %s to %s, up %s to %s",
            bare(box.getMinX()), bare(box.getMaxX()), bare(box.getMinY()), bare(box.getMaxY()));
  }

  private void people() {
    for (Sitting was : before.sittings()) {
      Optional<Sitting> now = after.sitting(was.person(), was.seat());
      if (now.isEmpty()) {
        continue;
      }
      String seat = was.seat().equals(Occupant.RIDER) ? "" : " as " + was.seat();
      String from = hip(was);
      String to = hip(now.get());
      boolean still =
          was.posture().isPresent()
              && now.get().posture().isPresent()
              && was.posture().get().hip().distance(now.get().posture().get().hip()) < SAME;
      if (!still && !from.equals(to)) {
        changes.add(new Difference("person", was.person() + seat, "H-point", from, to));
      }
    }
  }

  private String hip(Sitting sitting) {
    return sitting.posture().map(p -> place(p.hip())).orElse("cannot sit");
  }

  /** Loads with and without people; those of other stances follow from them. */
  private void loads() {
    for (Standing was : before.standings()) {
      if (was.kind() != Stance.Kind.UNLADEN && was.kind() != Stance.Kind.LADEN) {
        continue;
      }
      Optional<Standing> found = after.standing(was.condition());
      if (found.isEmpty() || was.load() == null || found.get().load() == null) {
        continue;
      }
      Standing now = found.get();
      String name = was.condition().says();
      figure(
          "load",
          name,
          "mass",
          FigureSort.MASS_IN_TENTHS,
          was.load().total().massKg(),
          now.load().total().massKg(),
          SAME);
      AxleLoads from = was.load().axles();
      AxleLoads to = now.load().axles();
      figure("load", name, "front", FigureSort.FORCE, from.frontN(), to.frontN(), SAME_N);
      figure("load", name, "rear", FigureSort.FORCE, from.rearN(), to.rearN(), SAME_N);
      PointMm x = from.total().at();
      PointMm y = to.total().at();
      figure("load", name, "centre, forward", FigureSort.LENGTH_IN_TENTHS, x.x(), y.x(), SAME);
      figure("load", name, "centre, up", FigureSort.LENGTH_IN_TENTHS, x.z(), y.z(), SAME);
    }
  }

  private void figure(
      String kind, String name, String what, FigureSort unit, double was, double now, double same) {
    if (!same(was, now, same)) {
      changes.add(new Difference(kind, name, what, units.says(was, unit), units.says(now, unit)));
    }
  }

  private static boolean same(double a, double b, double within) {
    return Double.compare(a, b) == 0 || Math.abs(a - b) < within;
  }

  private static String format(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }
}
