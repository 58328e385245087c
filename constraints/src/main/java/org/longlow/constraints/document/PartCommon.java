package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.FLAG;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.MASS;
import static org.longlow.constraints.document.Type.TEXT;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Spread;

/** The fields that every part has. */
final class PartCommon {

  private static final String MATERIALS = materials();

  /** That more is a slip of the unit is judgement. */
  private static final Type.Quantity ALLOWANCE = LENGTH.between(-20, 50);

  private PartCommon() {}

  private static String materials() {
    List<String> words = Stream.of(Material.values()).map(Material::word).toList();
    int last = words.size() - 1;
    return "One of "
        + String.join(", ", words.subList(0, last))
        + " or "
        + words.get(last)
        + "; decides colour, and mass where it fills the part. A part of mixed material needs its"
        + " mass.";
  }

  /** Of a part whose kind tells how far it reaches to each side. */
  static <P extends Part> PartBase across(Source<P> s) {
    return base(s, "", false, false, false);
  }

  /** As {@link #across(Source)}, of a kind that is hot unless something else is said. */
  static <P extends Part> PartBase across(Source<P> s, boolean usuallyHot) {
    return base(s, "", false, usuallyHot, false);
  }

  /** As {@link #across(Source)}, of a kind that is cut to a line. */
  static <P extends Part> PartBase cut(Source<P> s) {
    return base(s, "", false, false, true);
  }

  /**
   * Of a part that must say how far it reaches to each side.
   *
   * @param mayBeTwo true if a mirror image of it may stand on the other side
   */
  static <P extends Part> PartBase wide(Source<P> s, boolean mayBeTwo) {
    return base(s, LENGTH.said(), mayBeTwo, false, true);
  }

  /**
   * Of an outlined part, which may leave to its stations how far it reaches; {@link #byStations}
   * then fills in what is not said here.
   */
  static <P extends Part> PartBase outlined(Source<P> s, boolean usuallyHot) {
    return base(s, "", true, usuallyHot, true);
  }

  /** Returns it with its first station's reach where it says none; empty where neither does. */
  static PartBase byStations(PartBase base, Breadth breadth) {
    Optional<Spread> spread = base.spread().flatMap(s -> ReachKind.byStations(s, breadth));
    return new PartBase(
        base.name(),
        spread,
        base.mass(),
        base.material(),
        base.steered(),
        base.hot(),
        base.touches(),
        base.note(),
        base.purchase(),
        base.allowance());
  }

  private static <P extends Part> PartBase base(
      Source<P> s, String needed, boolean mayBeTwo, boolean usuallyHot, boolean cut) {
    boolean mayBeUnsaid = mayBeTwo && needed.isEmpty();
    String unsaid = mayBeUnsaid ? ReachKind.UNSAID : "";
    Optional<Formula> left =
        reach(s, "left", needed, Spread::left, "Reach to the left of the middle plane." + unsaid);
    Optional<Formula> right =
        reach(
            s,
            "right",
            needed,
            Spread::right,
            "Reach to the right; negative keeps it that far clear of the middle plane on the"
                + " left."
                + unsaid);
    boolean both =
        mayBeTwo
            && field(
                s,
                "both",
                FLAG,
                false,
                b -> b.spread().map(Spread::both).orElse(false),
                "True if a mirror image of it stands on the other side too.");
    return new PartBase(
        s.name(),
        ReachKind.spread(left, right, both, mayBeUnsaid),
        field(
            s,
            "mass",
            new Type.Maybe<>(MASS.positive()),
            Optional.empty(),
            PartBase::mass,
            "Mass of all of it, both sides together; absent it comes from the material where that"
                + " fills the part, as it does tube, sheet, foam, boards, levers, what hands or"
                + " feet rest on and solid blocks; else it is not known."),
        field(s, "material", TEXT, "", PartBase::material, MATERIALS),
        field(
            s, "steered", FLAG, false, PartBase::steered, "True if it turns with the handlebars."),
        field(
            s,
            "hot",
            FLAG,
            usuallyHot,
            PartBase::hot,
            "True if it must be kept away from people and soft parts; true where exhaust goes"
                + " through it, unless false is written."),
        field(
            s,
            "touches",
            new Type.ListOf<>(Type.ref(Referent.PART_OR_RIDER), 0, Type.MAX_ENTRIES),
            List.of(),
            PartBase::touches,
            "Names of parts, or rider, that it may touch or overlap."),
        field(s, "note", TEXT, "", PartBase::note, "For people."),
        StockKinds.purchase(
            field(
                s,
                "price",
                StockKinds.price(),
                Optional.empty(),
                b -> b.purchase().price(),
                "What all of it costs as it is bought, both sides together, in the currency of the"
                    + " layout, as a bare number; what is cut from stock is priced there."),
            field(
                s,
                "fasteners",
                StockKinds.fasteners(),
                List.of(),
                b -> b.purchase().fasteners(),
                "Bolts, nuts and the like that hold it, for the shopping list.")),
        cut
            ? field(
                s,
                "allowance",
                new Type.Maybe<>(ALLOWANCE),
                Optional.empty(),
                PartBase::allowance,
                "How far outside its net outline the line to cut on its template lies: half the"
                    + " kerf for a tool led along the line, or what is filed or trimmed off"
                    + " afterwards; less than 0 inside it. Holes become as much smaller, or larger.")
            : Optional.empty());
  }

  private static <P extends Part> Optional<Formula> reach(
      Source<P> s, String key, String needed, Function<Spread, Formula> get, String help) {
    return s.of(
        new Field<>(
            key,
            new Type.Maybe<>(PartSizes.REACH),
            needed,
            Optional.empty(),
            false,
            true,
            help,
            p -> p.base().spread().filter(Spread::said).map(get)));
  }

  private static <P extends Part, V> V field(
      Source<P> s, String key, Type<V> type, V orElse, Function<PartBase, V> get, String help) {
    return s.of(new Field<>(key, type, "", orElse, false, true, help, p -> get.apply(p.base())));
  }
}
