package org.longlow.constraints.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.BuiltSpan;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.Variant;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.words.Names;
import org.longlow.rider.geom.OutOfRange;

/** A layout as one of its variants says, which is a plain layout without variants of its own. */
public final class Varied {

  /** Longest name of a tie; see {@link EntryNames}. */
  private static final int LONGEST = 60;

  private Varied() {}

  /**
   * Returns the layout as its variant {@code name}, held to what every layout is held to: where a
   * layout has many variants, nobody did so before.
   *
   * @throws OutOfRange if it has no such variant, or the variant cannot be
   */
  public static Layout named(Layout layout, String name) {
    Faults faults = new Faults();
    Layout fitted = new Checking(said(layout, name), Tracer.NONE, faults, null).layout();
    if (!faults.isEmpty()) {
      throw new OutOfRange("variant " + name + " cannot be: " + faults.list().get(0).line());
    }
    return fitted;
  }

  /** Returns the layout as its variant {@code name} says, though it be broken. */
  static Layout said(Layout layout, String name) {
    Variant variant = layout.variants().get(name);
    if (variant == null) {
      throw new OutOfRange(
          layout.variants().isEmpty()
              ? "the layout has no variants"
              : "the layout has no variant "
                  + name
                  + "; "
                  + Names.advice(name, layout.variants().keySet(), "variant"));
    }
    Layout varied =
        Change.set(planned(layout), measures(layout.measures(), variant.measures()), "measures");
    varied = Change.set(varied, put(layout.pins(), variant.pins()), "pins");
    varied = Change.set(varied, put(layout.parts(), variant.parts()), "parts");
    for (String part : variant.without()) {
      if (varied.parts().containsKey(part)) {
        varied = Entries.without(varied, new Entries.Entry("parts", part)).layout();
      }
    }
    return varied;
  }

  /**
   * Returns the layout with what was measured in the place of what was planned: measures and masses
   * are given, pins nailed where they are, and what was measured between pins are ties. Limits and
   * wishes of measures that were measured are gone; else ties and limits of the plan are still
   * there, also those that this goes against.
   */
  public static Layout measured(Layout layout) {
    AsBuilt built = layout.asBuilt();
    Map<String, Measure> measures = new LinkedHashMap<>(layout.measures());
    built
        .measures()
        .forEach(
            (name, is) ->
                measures.computeIfPresent(
                    name,
                    (n, m) ->
                        new Measure(
                            is, m.dim(), false, Optional.empty(), Optional.empty(), m.note())));
    Map<String, Pin> pins = new LinkedHashMap<>(layout.pins());
    built
        .pins()
        .forEach(
            (name, at) ->
                pins.computeIfPresent(
                    name, (n, p) -> new Pin(at.get(0), at.get(1), true, p.with(), p.note())));
    Map<String, Tie> ties = new LinkedHashMap<>(layout.ties());
    for (int i = 0; i < built.spans().size(); i++) {
      BuiltSpan span = built.spans().get(i);
      ties.put(tieName(layout, i), Tie.of(span.kind(), List.of(span.from(), span.to()), span.is()));
    }
    Layout varied = Change.set(planned(layout), measures, "measures");
    varied = Change.set(Change.set(varied, pins, "pins"), ties, "ties");
    Map<String, Limit> limits = new LinkedHashMap<>(layout.limits());
    limits.values().removeIf(l -> built.measures().containsKey(l.measure()));
    varied = Change.set(varied, limits, "limits");
    Map<String, Wish> wishes = new LinkedHashMap<>(layout.wishes());
    wishes.values().removeIf(w -> built.measures().containsKey(w.measure()));
    varied = Change.set(varied, wishes, "wishes");
    varied = given(varied, built.masses(), "mass");
    return given(varied, built.radii(), "radius");
  }

  /** Returns what the tie is called that stands for a span, counted from 0. */
  public static String tieName(Layout layout, int span) {
    List<BuiltSpan> spans = layout.asBuilt().spans();
    BuiltSpan is = spans.get(span);
    long before = spans.subList(0, span).stream().filter(s -> s.words().equals(is.words())).count();
    String name =
        before == 0
            ? "measured " + is.words()
            : is.words() + " measured again" + (before == 1 ? "" : " " + (before + 1));
    if (name.length() > LONGEST) {
      name = "measured " + is.kind().word() + " of span " + (span + 1);
    }
    while (layout.ties().containsKey(name)) {
      name += "'";
    }
    return name;
  }

  private static Layout given(Layout layout, Map<String, Formula> values, String field) {
    Layout now = layout;
    for (Map.Entry<String, Formula> value : values.entrySet()) {
      if (layout.parts().containsKey(value.getKey())) {
        now = Change.set(now, value.getValue(), "parts", value.getKey(), field);
      }
    }
    return now;
  }

  /** Returns the layout as planned, and nothing but that. */
  public static Layout planned(Layout layout) {
    return Change.set(Change.set(layout, Map.of(), "variants"), AsBuilt.NOTHING, "asBuilt");
  }

  /**
   * Of which only a value is said has that, sought no more, in the range and with the note it had.
   */
  private static Map<String, Measure> measures(
      Map<String, Measure> plan, Map<String, Measure> instead) {
    Map<String, Measure> all = new LinkedHashMap<>(plan);
    instead.forEach(
        (name, value) ->
            all.computeIfPresent(
                name,
                (n, old) ->
                    value.equals(value.onlyIs())
                        ? new Measure(
                            value.is(), value.dim(), false, old.from(), old.to(), old.note())
                        : value));
    return all;
  }

  private static <V> Map<String, V> put(Map<String, V> plan, Map<String, V> instead) {
    Map<String, V> all = new LinkedHashMap<>(plan);
    instead.forEach((name, value) -> all.computeIfPresent(name, (n, old) -> value));
    return all;
  }
}
