package org.longlow.sketcher.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;

/** The edits a builder can make. Each is a pure function with a name. */
public final class Edits {

  private Edits() {}

  /**
   * Returns the edit that types {@code text} over a quantity. A free measure that is given a value
   * is held to it.
   *
   * @throws org.longlow.constraints.formula.FormulaException if the text is no quantity or formula
   */
  public static Edit set(Target target, String text) {
    Formula formula = Formula.parse(text.strip());
    return new Edit(
        "set " + target.name() + " to " + text.strip(), layout -> set(layout, target, formula));
  }

  private static Layout set(Layout layout, Target target, Formula f) {
    if (target instanceof Target.OfMeasure m) {
      Measure old = present(layout.measures().get(m.measure()), m);
      return layout.withMeasure(
          m.measure(), new Measure(f, old.dim(), false, old.from(), old.to(), old.note()));
    }
    if (target instanceof Target.OfPart p) {
      Part part = present(layout.parts().get(p.part()), p);
      return layout.withPart(PartFields.with(part, p.path(), f));
    }
    if (target instanceof Target.OfPin p) {
      Pin pin = present(layout.pins().get(p.pin()), p);
      return layout.withPins(Map.of(p.pin(), p.x() ? pin.at(f, pin.z()) : pin.at(pin.x(), f)));
    }
    if (target instanceof Target.OfTie t) {
      Tie tie = present(layout.ties().get(t.tie()), t);
      return layout.withTie(
          t.tie(),
          new Tie(
              tie.kind(),
              tie.pins(),
              Optional.of(f),
              tie.radii(),
              tie.part(),
              tie.edge(),
              tie.inside(),
              tie.note()));
    }
    if (target instanceof Target.OfLimit l) {
      Limit limit = present(layout.limits().get(l.limit()), l);
      return withLimit(
          layout,
          l.limit(),
          new Limit(
              limit.kind(),
              limit.pins(),
              limit.parts(),
              limit.measure(),
              l.from() ? Optional.of(f) : limit.from(),
              l.from() ? limit.to() : Optional.of(f),
              limit.note()));
    }
    Target.OfPerson p = (Target.OfPerson) target;
    Person person = present(layout.crew().get(p.person()), p);
    return layout.withPerson(
        new Person(
            person.name(),
            person.sex(),
            p.stature() ? f : person.stature(),
            p.stature() ? person.mass() : f,
            person.measured(),
            person.seats(),
            person.helmet(),
            person.boots(),
            person.clothes()));
  }

  private static <T> T present(T value, Target target) {
    if (value == null) {
      throw new IllegalArgumentException("the layout has no " + target.name());
    }
    return value;
  }

  /** Returns the edit that lets the solver find a measure, or holds it where it is written. */
  public static Edit free(String measure, boolean free) {
    return new Edit(
        (free ? "free " : "hold ") + measure,
        layout -> {
          Measure m = present(layout.measures().get(measure), new Target.OfMeasure(measure));
          return layout.withMeasure(
              measure, new Measure(m.is(), m.dim(), free, m.from(), m.to(), m.note()));
        });
  }

  /** Returns the edit that nails a pin where it is written, or lets the solver move it. */
  public static Edit nail(String pin, boolean nailed) {
    return new Edit(
        (nailed ? "nail " : "loosen ") + pin,
        layout -> {
          Pin p = present(layout.pins().get(pin), new Target.OfPin(pin, true));
          return layout.withPins(Map.of(pin, new Pin(p.x(), p.z(), nailed, p.with(), p.note())));
        });
  }

  /**
   * Returns the edit that adds a tie of two pins held to {@code text}, under the first name of the
   * form {@code kind-pin-pin} that is not taken.
   */
  public static Edit tie(TieKind kind, List<String> pins, String text) {
    Formula is = kind.target().isPresent() ? Formula.parse(text.strip()) : null;
    return new Edit(
        "tie " + String.join(" and ", pins),
        layout -> layout.withTie(unused(layout, kind, pins), Tie.of(kind, pins, is)));
  }

  private static String unused(Layout layout, TieKind kind, List<String> pins) {
    String first = pins.get(0);
    StringBuilder name = new StringBuilder(first);
    for (String pin : pins.subList(1, pins.size())) {
      name.append(Character.toUpperCase(pin.charAt(0))).append(pin.substring(1));
    }
    String word = kind.word();
    for (int dash = word.indexOf('-'); dash >= 0; dash = word.indexOf('-')) {
      word =
          word.substring(0, dash)
              + Character.toUpperCase(word.charAt(dash + 1))
              + word.substring(dash + 2);
    }
    name.append(Character.toUpperCase(word.charAt(0))).append(word.substring(1));
    String base = name.toString();
    String free = base;
    for (int n = 2; layout.ties().containsKey(free); n++) {
      free = base + n;
    }
    return free;
  }

  /** Returns the edit that lets go of a tie. */
  public static Edit untie(String tie) {
    return new Edit(
        "let go of tie " + tie, layout -> withTies(layout, without(layout.ties(), tie)));
  }

  private static <V> Map<String, V> without(Map<String, V> map, String key) {
    Map<String, V> copy = new LinkedHashMap<>(map);
    copy.remove(key);
    return copy;
  }

  private static Layout withTies(Layout l, Map<String, Tie> ties) {
    return new Layout(
        l.name(),
        l.title(),
        l.notes(),
        l.measures(),
        l.pins(),
        l.parts(),
        ties,
        l.limits(),
        l.wishes(),
        l.sections(),
        l.stances(),
        l.crew(),
        l.demands());
  }

  private static Layout withLimit(Layout l, String name, Limit limit) {
    Map<String, Limit> limits = new LinkedHashMap<>(l.limits());
    limits.put(name, limit);
    return new Layout(
        l.name(),
        l.title(),
        l.notes(),
        l.measures(),
        l.pins(),
        l.parts(),
        l.ties(),
        limits,
        l.wishes(),
        l.sections(),
        l.stances(),
        l.crew(),
        l.demands());
  }
}
