package org.longlow.constraints.start;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Wish;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.Units;

/** A layout while it is put together: measures, pins, parts and what ties them. */
final class Draft {

  private final Map<String, Measure> measures = new LinkedHashMap<>();
  private final Map<String, Pin> pins = new LinkedHashMap<>();
  private final Map<String, Part> parts = new LinkedHashMap<>();
  private final Map<String, Tie> ties = new LinkedHashMap<>();
  private final Map<String, Limit> limits = new LinkedHashMap<>();
  private final Map<String, Wish> wishes = new LinkedHashMap<>();
  private final Map<String, Person> crew = new LinkedHashMap<>();

  static Formula mm(double mm) {
    return Formula.parse(text(mm));
  }

  static Formula kg(double kg) {
    return Formula.parse(Decimals.brief(kg) + " kg");
  }

  static Formula deg(double deg) {
    return Formula.parse(Decimals.brief(deg) + " deg");
  }

  /** Returns how files write a length. */
  static String text(double mm) {
    return Decimals.brief(mm) + " mm";
  }

  /** Returns a demand's usual limit, mm or rad. */
  static double mmOf(Demands.Key demand) {
    return demand.standard().evaluate(name -> Double.NaN);
  }

  void measure(String name, Formula is, Dim dim, String note) {
    measures.put(name, new Measure(is, dim, false, Optional.empty(), Optional.empty(), note));
  }

  void length(String name, double mm, String note) {
    measure(name, mm(mm), Dim.LENGTH, note);
  }

  void angle(String name, double deg, String note) {
    measure(name, deg(deg), Dim.ANGLE, note);
  }

  /** A length that gives way while one drags, within bounds. */
  void sliding(String name, double mm, double fromMm, double toMm, String note) {
    measures.put(
        name,
        new Measure(
            mm(mm), Dim.LENGTH, true, Optional.of(mm(fromMm)), Optional.of(mm(toMm)), note));
  }

  /** An angle that gives way while one drags, within bounds. */
  void tipping(String name, double deg, double fromDeg, double toDeg, String note) {
    measures.put(
        name,
        new Measure(
            deg(deg), Dim.ANGLE, true, Optional.of(deg(fromDeg)), Optional.of(deg(toDeg)), note));
  }

  /** A pin that ties hold. */
  void pin(String name, PointMm at, String with, String note) {
    pins.put(name, new Pin(mm(at.x()), mm(at.z()), false, with, note));
  }

  /** Returns where a pin is drawn that no measure places. */
  PointMm at(String pin) {
    Pin p = pins.get(pin);
    return new PointMm(p.x().evaluate(name -> Double.NaN), p.z().evaluate(name -> Double.NaN));
  }

  void pin(String name, PointMm at) {
    pin(name, at, Pin.FRAME, "");
  }

  /** A pin that follows from measures. */
  void nailed(String name, String x, String z, String with, String note) {
    pins.put(name, new Pin(Formula.parse(x), Formula.parse(z), true, with, note));
  }

  void nailed(String name, String x, String z) {
    nailed(name, x, z, Pin.FRAME, "");
  }

  void tie(String name, TieKind kind, String is, String... of) {
    ties.put(name, Tie.of(kind, Arrays.asList(of), is.isEmpty() ? null : Formula.parse(is)));
  }

  /** A chain over two sprockets in line. */
  void chain(String name, String is, double yMm, double wideMm, String note, Wheel... over) {
    List<Wheel> wheels = Arrays.asList(over);
    ties.put(
        name,
        new Tie(
            TieKind.BELT_LENGTH,
            wheels.stream().map(Wheel::pin).toList(),
            Optional.of(Formula.parse(is)),
            wheels.stream().map(w -> Formula.parse(w.radius())).toList(),
            "",
            0,
            false,
            new Tie.Run(
                wheels.stream().map(w -> mm(yMm)).toList(),
                Optional.of(mm(wideMm)),
                false,
                List.of(),
                List.of(),
                Optional.empty()),
            note));
  }

  /** A wheel that a chain runs over: about which pin, and its radius. */
  record Wheel(String pin, String radius) {}

  void limit(String name, Limit.Kind kind, double fromMm, double toMm, String note, String... of) {
    limits.put(
        name,
        new Limit(
            kind,
            Arrays.asList(of),
            List.of(),
            "",
            Optional.of(mm(fromMm)),
            Optional.of(mm(toMm)),
            note));
  }

  void wish(String name, Wish.Kind kind, Optional<Formula> is, double weight) {
    wishes.put(name, new Wish(kind, List.of(), "", is, weight, ""));
  }

  void part(Part part) {
    parts.put(part.name(), part);
  }

  void person(Person person) {
    crew.put(person.name(), person);
  }

  Layout layout(String name, String title, List<String> notes, List<String> rules) {
    Map<String, Stance> stances = new LinkedHashMap<>();
    for (Stance.Kind kind : Stance.Kind.values()) {
      if (kind != Stance.Kind.OPEN && kind != Stance.Kind.LIGHT) {
        stances.put(kind.word().replace('-', ' '), new Stance(kind, ""));
      }
    }
    return new Layout(
        name,
        title,
        Units.MM,
        notes,
        measures,
        pins,
        parts,
        ties,
        limits,
        wishes,
        Map.of(),
        stances,
        crew,
        new Demands(rules, Map.of()),
        Map.of(),
        Map.of());
  }
}
