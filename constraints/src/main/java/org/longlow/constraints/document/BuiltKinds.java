package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.MASS;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.BuiltSpan;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Variant;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.words.Quoted;

/** The machine as built, and its variants. */
final class BuiltKinds {

  /** No machine is longer; judgement, mm. */
  private static final double LONGEST_MM = 10_000;

  private static final List<TieKind> SPANS =
      Arrays.stream(TieKind.values()).filter(k -> k.between().isPresent()).toList();

  private static final Type.Word<TieKind> SPAN_WORDS =
      new Type.Word<>(SPANS.stream().map(TieKind::word).toList(), SPANS);

  private static final Kind<BuiltSpan> SPAN = span(Type.ANY);

  static final Kind<AsBuilt> AS_BUILT =
      Kind.of(
              "asBuilt",
              "What was measured on the machine that was made; what is not said is as planned.",
              BuiltKinds::asBuilt)
          .rule(BuiltKinds::measured)
          .rule(MeasuredAxes::apart);

  static final Kind<Variant> VARIANT =
      Kind.of(
              "variant",
              "Another state of the same machine: what it has otherwise; all else is as the layout"
                  + " says.",
              BuiltKinds::variant)
          .rule(BuiltKinds::isVaried);

  private BuiltKinds() {}

  private static Kind<BuiltSpan> span(Type.Quantity is) {
    return Kind.<BuiltSpan>of(
            "span", "A length or an angle measured between two pins.", s -> span(is, s))
        .decidedBy("measured")
        .rule(BuiltKinds::twoPins)
        .exactly(
            (name, span, dims) ->
                // one of a kind that could not be read measures anything
                span.kind() == null
                    ? span(Type.ANY)
                    : span(Type.quantity(span.kind().dim().orElseThrow())));
  }

  private static BuiltSpan span(Type.Quantity is, Source<BuiltSpan> s) {
    return new BuiltSpan(
        s.need(
            "measured",
            SPAN_WORDS,
            BuiltSpan::kind,
            "What was measured: distance: straight from pin to pin; ahead: how far the second is"
                + " ahead of the first; above: how far above; angle: from forward,"
                + " counter-clockwise; rake: from vertical, leaning back positive."),
        s.pin("from", "the first pin", BuiltSpan::from, "The pin measured from."),
        s.pin("to", "the second pin", BuiltSpan::to, "The pin measured to."),
        s.need("is", is, BuiltSpan::is, "What it came out at."));
  }

  private static void twoPins(BuiltSpan span, Spot at) {
    if (!span.from().isEmpty() && span.from().equals(span.to())) {
      at.fault("to", Quoted.of(span.to()), "is the pin measured from", "name another pin");
    }
    if (span.kind() != null && span.kind().dim().filter(Dim.LENGTH::equals).isPresent()) {
      at.fixed(span.is()).ifPresent(mm -> length(span, mm, at));
    }
  }

  private static void length(BuiltSpan span, double mm, Spot at) {
    String value = Quoted.of(span.is().text());
    String is = "is " + Range.number(mm) + " mm, ";
    if (Math.abs(mm) > LONGEST_MM) {
      at.fault(
          "is",
          value,
          is + "and no machine has pins farther apart than " + Range.number(LONGEST_MM) + " mm",
          "look at its unit, or measure again");
    } else if (span.kind() == TieKind.DISTANCE && mm < 0) {
      at.fault("is", value, is + "a length must not be negative", "measure again");
    } else if (span.kind() == TieKind.DISTANCE && mm < MeasuredAxes.APART_MM) {
      at.fault(
          "is",
          value,
          is + "and two pins are at least " + Range.number(MeasuredAxes.APART_MM) + " mm apart",
          "measure again, or take the span out");
    }
  }

  private static AsBuilt asBuilt(Source<AsBuilt> s) {
    return new AsBuilt(
        s.or(
            "measures",
            SaidOf.each(Referent.MEASURE, Type.ANY),
            Map.of(),
            AsBuilt::measures,
            "What named measures came out at, by their names."),
        s.or(
            "pins",
            SaidOf.each(Referent.PIN, new Type.Place()),
            Map.of(),
            AsBuilt::pins,
            "Where pins are, by their names: x forward of the ground under the rear wheel, z above"
                + " the ground."),
        s.or(
            "spans",
            new Type.ListOf<>(new Type.Nested<>(SPAN), 0, Type.MAX_ENTRIES),
            List.of(),
            AsBuilt::spans,
            "Lengths and angles measured between two pins."),
        s.or(
            "masses",
            SaidOf.each(Referent.PART, MASS.positive()),
            Map.of(),
            AsBuilt::masses,
            "What parts weigh, by their names, both sides together."),
        s.or(
            "radii",
            SaidOf.each(Referent.PART, PartSizes.MEASURED_RADIUS),
            Map.of(),
            AsBuilt::radii,
            "Radii of tyres off the ground, by the names of their wheels."),
        s.may(
            "frontLoad",
            MASS.positive(),
            AsBuilt::frontLoad,
            "What a scale under the front wheel shows, nobody aboard, the machine level on its"
                + " wheels."),
        s.may(
            "rearLoad",
            MASS.positive(),
            AsBuilt::rearLoad,
            "What a scale under the rear wheel shows, likewise."),
        s.note(AsBuilt::note));
  }

  private static void measured(AsBuilt built, Spot at) {
    built
        .radii()
        .forEach(
            (name, radius) -> {
              Part part = at.part(name);
              if (part != null && !(part instanceof WheelPart)) {
                at.itemFault(
                    "radii",
                    name,
                    Quoted.of(radius.text()),
                    "is the radius of a " + part.kind() + ", which has no tyre",
                    "name a wheel");
              }
            });
  }

  private static Variant variant(Source<Variant> s) {
    return new Variant(
        s.or(
            "measures",
            SaidOf.each(Referent.MEASURE, new Type.Nested<>(PointKinds.MEASURE)),
            Map.of(),
            Variant::measures,
            "Measures of the layout, by their names, as they are in this variant; of which only the"
                + " value is said has it for certain, and keeps range and note."),
        s.or(
            "pins",
            SaidOf.each(Referent.PIN, new Type.Nested<>(PointKinds.PIN)),
            Map.of(),
            Variant::pins,
            "Pins of the layout, by their names, as they are in this variant."),
        s.or(
            "parts",
            SaidOf.each(Referent.PART, PartKinds.PART),
            Map.of(),
            Variant::parts,
            "Parts of the layout, by their names, as they are in this variant: all that is said of"
                + " each."),
        s.or(
            "without",
            new Type.ListOf<>(Type.ref(Referent.PART), 0, Type.MAX_ENTRIES),
            List.of(),
            Variant::without,
            "Parts that it has not."),
        s.note(Variant::note));
  }

  private static void isVaried(Variant variant, Spot at) {
    if (at.name().equals(Variant.AS_BUILT)) {
      at.fault("", "", "means the machine as it was built", "choose another name");
    }
    Set<String> both = new HashSet<>(variant.without());
    both.retainAll(variant.parts().keySet());
    for (String part : both) {
      at.fault(
          "without",
          Quoted.of(part),
          "is in the parts of this variant too",
          "take one of them out");
    }
  }

  /** Returns a span to begin with; empty if {@code kind} is none. */
  static Optional<Object> begun(Kind<?> kind, Layout layout, List<Object> there) {
    if (kind != SPAN) {
      return Optional.empty();
    }
    if (!there.isEmpty()) {
      return Optional.of(there.get(there.size() - 1));
    }
    List<String> pins = List.copyOf(layout.pins().keySet());
    return pins.size() < 2
        ? Optional.empty()
        : Optional.of(
            new BuiltSpan(TieKind.DISTANCE, pins.get(0), pins.get(1), Formula.parse("100 mm")));
  }

  /**
   * Returns what is first said of something that is to be given as it was built: as planned.
   *
   * @param key of the field, such as pins
   */
  static Optional<Object> begun(Layout layout, String key, String name) {
    return switch (key) {
      case "measures" -> Optional.ofNullable(layout.measures().get(name)).map(Measure::is);
      case "pins" ->
          Optional.ofNullable(layout.pins().get(name)).map((Pin p) -> List.of(p.x(), p.z()));
      case "masses" ->
          Optional.ofNullable(layout.parts().get(name))
              .map(p -> p.base().mass().orElse(Formula.parse("1 kg")));
      case "radii" -> Optional.of(Formula.parse("300 mm"));
      default -> Optional.empty();
    };
  }
}
