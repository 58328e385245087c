package org.longlow.constraints.document;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.longlow.constraints.document.Type.Group;
import org.longlow.constraints.document.Type.Nested;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.TitleEntries;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.words.Counted;
import org.longlow.constraints.words.Names;
import org.longlow.rider.words.Units;

/** The whole document, described. */
public final class Document {

  public static final Type.Choice<Part> PART = PartKinds.PART;

  /** Each part is held against each other: 400 that all lie in one place take some 7 s. */
  private static final int MOST_PARTS = 400;

  /**
   * Each person on a seat is examined, and each pair as a load of its own. On heron 21 people on
   * two seats take 8 s of processor, 500 who ride alone 18 s, both in less than 512 MB.
   */
  private static final int MOST_ABOARD = 500;

  public static final Kind<Layout> LAYOUT =
      Kind.of(
              "layout",
              "One motorcycle in side elevation with the people on it. Axes: origin on the ground"
                  + " under the rear contact point, x forward, y left, z up.",
              Document::layout)
          .rule(Document::twoWheels)
          .rule(Document::fewEnough)
          .rule(Document::fewAboard);

  private Document() {}

  /** Returns the words of the sets of rules that a machine can be looked at by. */
  public static List<String> rules() {
    return StateKinds.RULES.words();
  }

  private static Layout layout(Source<Layout> s) {
    return new Layout(
        s.need(
            "name",
            Type.NAME,
            "a short name for the layout",
            Layout::name,
            "Short name of the layout."),
        s.text("title", Layout::title, "One line for title blocks."),
        s.or(
            "titleBlock",
            new Nested<>(TitleKinds.TITLE_BLOCK),
            TitleEntries.NONE,
            Layout::titleBlock,
            "What drawings say beside their picture."),
        s.or(
            "units",
            Type.words(Units.class),
            Units.MM,
            Layout::units,
            "In what figures are shown: mm, kg and N, or inches with pounds. A bare number typed"
                + " into the window takes them too; one in a file always takes mm, deg, kg or N."),
        s.or(
            "notes",
            new Type.ListOf<>(Type.TEXT, 0, 100),
            List.of(),
            Layout::notes,
            "Free text for people."),
        s.or(
            "measures",
            new Group<>("measure", Naming.MEASURE_NAMES, new Nested<>(PointKinds.MEASURE)),
            Map.<String, Measure>of(),
            Layout::measures,
            "Named quantities and formulas."),
        group(
            s,
            "pins",
            new Nested<>(PointKinds.PIN),
            Layout::pins,
            "Named points that parts share."),
        group(s, "parts", PART, Layout::parts, "Physical things."),
        group(
            s, "ties", new Nested<>(RelationKinds.TIE), Layout::ties, "Exact geometric relations."),
        group(
            s,
            "limits",
            new Nested<>(RelationKinds.LIMIT),
            Layout::limits,
            "Inequalities that must hold."),
        group(
            s, "wishes", new Nested<>(RelationKinds.WISH), Layout::wishes, "Weighted preferences."),
        group(
            s,
            "sections",
            new Nested<>(StateKinds.SECTION),
            Layout::sections,
            "Parts that open together."),
        group(
            s,
            "stances",
            new Nested<>(StateKinds.STANCE),
            Layout::stances,
            "States in which the machine is examined."),
        group(
            s,
            "crew",
            new Nested<>(StateKinds.PERSON),
            Layout::crew,
            "The people the machine must fit."),
        s.or(
            "demands",
            new Nested<>(StateKinds.DEMANDS),
            new Demands(List.of(), Map.of()),
            Layout::demands,
            "What the findings hold the machine to."),
        group(
            s,
            "photos",
            new Nested<>(PhotoKinds.PHOTO),
            Layout::photos,
            "Photos under the drawing, to draw over."),
        group(
            s,
            "dimensions",
            new Nested<>(DimensionKinds.DIMENSION),
            Layout::dimensions,
            "What was measured and is kept on the drawing; it tells and holds nothing."),
        group(
            s,
            "lines",
            new Nested<>(LineKinds.LINE),
            Layout::lines,
            "Cables, hoses and looms, led through points that may move against each other."),
        group(
            s,
            "stock",
            new Nested<>(StockKinds.STOCK),
            Layout::stock,
            "What is bought to cut parts from."),
        s.text("currency", Layout::currency, "The word for money beside prices."),
        group(
            s,
            "variants",
            new Nested<>(BuiltKinds.VARIANT),
            Layout::variants,
            "Other states of the same machine, by name."),
        s.or(
            "asBuilt",
            new Nested<>(BuiltKinds.AS_BUILT),
            AsBuilt.NOTHING,
            Layout::asBuilt,
            "What was measured on the machine that was made."));
  }

  private static <V> Map<String, V> group(
      Source<Layout> s,
      String key,
      Type<V> item,
      Function<Layout, Map<String, V>> get,
      String help) {
    String what = item instanceof Nested<V> nested ? nested.kind().name() : PART.name();
    return s.or(key, new Group<>(what, Naming.NAMES, item), Map.of(), get, help);
  }

  private static void fewEnough(Layout layout, Spot at) {
    int count = layout.parts().size();
    if (count > MOST_PARTS) {
      at.fault(
          "parts",
          "",
          "has " + count + " parts, takes at most " + MOST_PARTS,
          "leave out what is small and meets nothing, or draw a machine's halves apart");
    }
  }

  private static void fewAboard(Layout layout, Spot at) {
    List<Person> people = layout.crew().values().stream().filter(Objects::nonNull).toList();
    long seated = people.stream().mapToLong(p -> p.seats().size()).sum();
    long steering = people.stream().mapToLong(Document::steering).sum();
    long pairs =
        people.stream()
            .mapToLong(p -> (p.seats().size() - steering(p)) * (steering - steering(p)))
            .sum();
    if (seated + pairs > MOST_ABOARD) {
      at.fault(
          "crew",
          "",
          "has "
              + Counted.of(people.size(), "person")
              + " to be examined on "
              + Counted.of(seated, "seat")
              + " and in "
              + Counted.of(pairs, "pair")
              + ", "
              + (seated + pairs)
              + " in all, takes at most "
              + MOST_ABOARD,
          (pairs > 0 ? "give fewer of them both seats" : "leave those out who are like others")
              + ", or ask longlow fit about a crowd");
    }
  }

  private static long steering(Person person) {
    return person.seats().stream().filter(Occupant.RIDER::equals).count();
  }

  private static void twoWheels(Layout layout, Spot at) {
    for (Part.End end : Part.End.values()) {
      long count = layout.parts(WheelPart.class).filter(w -> w.end() == end).count();
      if (count != 1) {
        at.fault(
            "parts",
            "",
            "has " + count + " wheels with \"end\": \"" + Names.word(end) + "\", needs exactly one",
            count == 0 ? "add a part of kind wheel" : "take one out or change its end");
      }
    }
  }
}
