package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Opens;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Variant;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.MeasureStats;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * Edits that add what is no part, each with first values that hold as the machine is now, as far as
 * it has them. Where too little is picked they cannot be applied and say what is missing.
 */
public final class Additions {

  private static final double OPEN_DEG = 45;

  private Additions() {}

  /**
   * What is picked for something new to speak of.
   *
   * @param pins in the order in which they were picked
   * @param parts likewise
   * @param now where the pins are
   */
  public record Picked(List<String> pins, List<String> parts, Places now) {
    public Picked {
      pins = List.copyOf(pins);
      parts = List.copyOf(parts);
    }

    private List<String> pins(int count, String what) {
      if (pins.size() < count) {
        throw tooFew(count, "pin", pins.size(), what);
      }
      return pins.subList(0, count);
    }

    /** All pins, which must be at least so many. */
    List<String> allPins(int fewest, String what) {
      pins(fewest, what);
      return pins;
    }

    private List<String> parts(int count, String what) {
      if (parts.size() < count) {
        throw tooFew(count, "part", parts.size(), what);
      }
      return parts.subList(0, count);
    }

    private static OutOfRange tooFew(int count, String kind, int picked, String what) {
      return new OutOfRange(
          String.format(
              "%s speaks of %d %s%s, picked %s %d; pick the first, then more with Shift",
              what, count, kind, count == 1 ? "" : "s", picked == 1 ? "is" : "are", picked));
    }

    private List<PointMm> places(List<String> names) {
      return names.stream().map(now::pin).toList();
    }
  }

  /** Adds a measure of 100 mm. */
  public static Edit measure() {
    return new Edit(
        "add measure",
        layout ->
            layout.withMeasure(
                Fresh.name(layout, "measures", "length"),
                new Measure(
                    Formula.parse("100 mm"),
                    Dim.LENGTH,
                    false,
                    Optional.empty(),
                    Optional.empty(),
                    "")));
  }

  /** Adds a variant that has nothing otherwise yet. */
  public static Edit variant() {
    Variant nothing = new Variant(Map.of(), Map.of(), Map.of(), List.of(), "");
    return new Edit(
        "add variant",
        layout -> {
          Map<String, Variant> all = new LinkedHashMap<>(layout.variants());
          all.put(Fresh.name(layout, "variants", "what if"), nothing);
          return Change.set(layout, all, "variants");
        });
  }

  /** Adds a pin that nothing hangs on yet. */
  public static Edit pin(PointMm at, Hang hang) {
    return new Edit(
        "add pin",
        layout ->
            layout.withPins(
                Map.of(
                    Fresh.name(layout, "pins", "pin"),
                    new Pin(
                        Formula.of(at.x(), Unit.MM),
                        Formula.of(at.z(), Unit.MM),
                        false,
                        hang.carrier(),
                        ""))));
  }

  /** Ties what is picked as it is now. */
  public static Edit tie(TieKind kind, Picked picked) {
    String what = "a tie " + kind.word();
    return new Edit(
        "add tie " + kind.word(),
        layout -> {
          int fewest = kind.fewestPins();
          int most = Math.max(fewest, Math.min(kind.mostPins(), picked.pins().size()));
          List<String> pins = picked.pins(most, what);
          String part = kind == TieKind.ON_EDGE ? picked.parts(1, what).get(0) : "";
          return layout.withTie(
              Fresh.name(layout, "ties", kind.word()),
              Worth.tie(layout, picked.now(), kind, pins, part));
        });
  }

  /**
   * Adds a limit from about what there is now: lengths from full tens of mm, angles from full
   * degrees. A gap is asked for as the layout's demands ask for it.
   */
  public static Edit limit(Limit.Kind kind, Picked picked) {
    String what = "a limit " + kind.word();
    return new Edit(
        "add limit " + kind.word(),
        layout -> {
          List<String> pins = picked.pins(kind.pins(), what);
          boolean withRider = kind == Limit.Kind.GAP && picked.parts().size() == 1;
          List<String> parts =
              new ArrayList<>(picked.parts(kind.parts() - (withRider ? 1 : 0), what));
          if (withRider) {
            parts.add(Occupant.RIDER);
          }
          String measure = kind == Limit.Kind.MEASURE ? free(layout, what) : "";
          Formula from =
              switch (kind) {
                case GAP -> layout.demands().limit(Demands.Key.GAP);
                case INSIDE -> Formula.parse("0 mm");
                case MEASURE ->
                    written(picked.now().measures().get(measure), Measures.dim(layout, measure));
                default ->
                    written(Worth.of(kind.name(), picked.places(pins)), kind.dim().orElseThrow());
              };
          Limit limit =
              new Limit(kind, pins, parts, measure, Optional.of(from), Optional.empty(), "");
          return put(layout, "limits", kind.word(), limit);
        });
  }

  private static Formula written(double now, Dim dim) {
    return Worth.rounded(now, dim, dim.equals(Dim.LENGTH) ? 10 : dim.equals(Dim.ANGLE) ? 1 : 0.01);
  }

  private static String free(Layout layout, String what) {
    return layout.measures().entrySet().stream()
        .filter(m -> m.getValue().free())
        .map(Map.Entry::getKey)
        .findFirst()
        .orElseThrow(
            () -> new OutOfRange(what + " speaks of a free measure, and none is; free one first"));
  }

  /** Adds a wish for what there is now. */
  public static Edit wish(Wish.Kind kind, Picked picked) {
    String what = "a wish " + kind.word();
    return new Edit(
        "add wish " + kind.word(),
        layout -> {
          List<String> pins = picked.pins(kind.pins(), what);
          String measure = kind == Wish.Kind.MEASURE ? free(layout, what) : "";
          Demands demands = layout.demands();
          Optional<Formula> is =
              switch (kind) {
                case COMFORT -> Optional.empty();
                case FRONT_SHARE -> Optional.of(demands.limit(Demands.Key.FRONT_SHARE_MIN));
                case SIGHT -> Optional.of(demands.limit(Demands.Key.SIGHT));
                case MEASURE ->
                    Optional.of(
                        written(
                            picked.now().measures().get(measure), Measures.dim(layout, measure)));
                default ->
                    Optional.of(
                        written(
                            Worth.of(kind.name(), picked.places(pins)), kind.dim().orElseThrow()));
              };
          return put(layout, "wishes", kind.word(), new Wish(kind, pins, measure, is, 1, ""));
        });
  }

  /** Lets the parts picked open together: on the one pin picked, or on four as a linkage. */
  public static Edit section(Picked picked) {
    return new Edit(
        "add section",
        layout -> {
          if (picked.parts().isEmpty() || picked.pins().isEmpty()) {
            throw new OutOfRange(
                String.format(
                    "a section is parts that open about a pin, picked are %d and %d; pick what"
                        + " opens and, with Shift, the pin it turns about (or four: two of the"
                        + " frame, then two that open)",
                    picked.parts().size(), picked.pins().size()));
          }
          boolean linkage = picked.pins().size() >= 4;
          List<String> pins = picked.pins(linkage ? 4 : 1, "a section");
          Section section =
              new Section(
                  picked.parts(),
                  linkage ? Optional.empty() : Optional.of(pins.get(0)),
                  linkage ? pins.subList(0, 2) : List.of(),
                  linkage ? pins.subList(2, 4) : List.of(),
                  Formula.of(Math.toRadians(OPEN_DEG), Unit.of(Dim.ANGLE)),
                  Opens.UNSAID,
                  "");
          String name = Fresh.name(layout, "sections", "section");
          Layout with = put(layout, "sections", "section", section);
          // what hinges on the section moves with it
          for (String pin : section.sectionArms()) {
            with = Change.set(with, name, "pins", pin, "with");
          }
          return with;
        });
  }

  /** Has the machine examined in one more state; a section open is the first not looked at yet. */
  public static Edit stance(Stance.Kind kind) {
    return new Edit(
        "add stance " + kind.word(),
        layout -> {
          boolean open = kind == Stance.Kind.OPEN;
          String section = open ? unseen(layout) : "";
          String name = open ? section + " open" : kind.word();
          Stance stance = new Stance(kind, section);
          if (layout.stances().containsValue(stance)) {
            throw new OutOfRange("the stance " + name + " is looked at already");
          }
          return put(layout, "stances", name, stance);
        });
  }

  private static String unseen(Layout layout) {
    return layout.sections().keySet().stream()
        .filter(s -> !layout.stances().containsValue(new Stance(Stance.Kind.OPEN, s)))
        .findFirst()
        .orElseThrow(
            () ->
                new OutOfRange(
                    layout.sections().isEmpty()
                        ? "nothing opens on this machine; add a section first"
                        : "every section is looked at open already"));
  }

  /** Adds somebody of the mean stature and mass of the survey. */
  public static Edit person(Sex sex) {
    String word = sex == Sex.FEMALE ? "woman" : "man";
    return new Edit(
        "add person",
        layout -> {
          Map<String, MeasureStats> survey = Anthropometry.survey().measures(sex);
          String name = Fresh.name(layout, "crew", word);
          return layout.withPerson(
              new Person(
                  name,
                  sex == Sex.FEMALE ? "female" : "male",
                  Formula.of(Math.rint(survey.get("stature").mean()), Unit.MM),
                  Formula.of(Math.rint(survey.get("weightkg").mean()), Unit.of(Dim.MASS)),
                  Map.of(),
                  List.of(NextSeat.forSomebody(layout)),
                  true,
                  true,
                  true));
        });
  }

  /** Writes a demand down at what holds without it, to be changed from there. */
  public static Edit demand(Demands.Key key) {
    return new Edit(
        "add demand " + key.word(),
        layout ->
            layout.demands().limits().containsKey(key)
                ? refused("the demand " + key.word() + " is written already")
                : Change.set(layout, key.standard(), "demands", key.word()));
  }

  /** Has the machine looked at by one more set of rules. */
  public static Edit rules(String word) {
    return new Edit(
        "add rules " + word,
        layout -> {
          List<String> rules = new ArrayList<>(layout.demands().rules());
          if (rules.contains(word)) {
            return refused("the rules " + word + " are looked at already");
          }
          rules.add(word);
          return Change.set(layout, rules, "demands", "rules");
        });
  }

  private static Layout refused(String why) {
    throw new OutOfRange(why);
  }

  /** Adds a seat for one more person: pan, back and foot pegs. */
  public static Edit seat(PointMm at) {
    return new Edit(
        "add seat",
        layout -> {
          String seat = NextSeat.of(layout, Adding.of("pan").part());
          Layout with = layout;
          for (Map.Entry<String, PointMm> piece : seatPieces(at).entrySet()) {
            Adding adding = Adding.of(piece.getKey()).with(PinSpot.at(piece.getValue()));
            String name = adding.nameIn(with);
            with = Change.set(adding.edit().applied(with), seat, "parts", name, "seat");
          }
          return with;
        });
  }

  /** Returns what a seat is made of, by names of the gallery, and where each begins. */
  static Map<String, PointMm> seatPieces(PointMm at) {
    Map<String, PointMm> pieces = new LinkedHashMap<>();
    pieces.put("pan", at);
    pieces.put("back", at.plus(new PointMm(-30, 80)));
    pieces.put("pegs", at.plus(new PointMm(480, -220)));
    return pieces;
  }

  private static Layout put(Layout layout, String group, String wanted, Object entry) {
    Map<String, Object> entries = new LinkedHashMap<>(Entries.of(layout, group));
    entries.put(Fresh.name(layout, group, wanted), entry);
    return Change.set(layout, entries, group);
  }
}
