package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.words;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.words.Quoted;

/** Ties, limits and wishes. */
final class RelationKinds {

  /** Most pins of one relation. */
  private static final int MAX_PINS = 50;

  private static final Type<List<String>> PINS =
      new Type.ListOf<>(Type.ref(Referent.PIN), 0, MAX_PINS);

  private static final String PINS_HELP = "The pins it speaks of, in order.";

  /** Judgement: no circle, bend or pulley is smaller, mm. */
  private static final double LEAST_RADIUS_MM = 0.1;

  private static final String TIE_HELP = tieHelp();

  static final Kind<Tie> TIE = tie(Type.ANY);
  static final Kind<Limit> LIMIT = limit(Type.ANY, Referent.PART_OR_RIDER);
  static final Kind<Wish> WISH = wish(Type.ANY);

  private RelationKinds() {}

  private static Type.Quantity of(Optional<Dim> dim) {
    return dim.map(Type::quantity).orElse(Type.ANY);
  }

  private static Kind<Tie> tie(Type.Quantity is) {
    return Kind.<Tie>of("tie", "An exact geometric relation.", s -> tie(is, s))
        .decidedBy("tie")
        .rule(RelationKinds::tie)
        .exactly((name, tie, dims) -> tie(of(tie.kind().dim())));
  }

  private static Tie tie(Type.Quantity is, Source<Tie> s) {
    return new Tie(
        s.need("tie", words(TieKind.class), Tie::kind, TIE_HELP),
        s.or("pins", PINS, List.of(), Tie::pins, PINS_HELP),
        s.may("is", is, Tie::is, "The target, for kinds that have one."),
        s.or(
            "radii",
            new Type.ListOf<>(LENGTH.atLeast(LEAST_RADIUS_MM), 0, MAX_PINS),
            List.of(),
            Tie::radii,
            "Radii, for circles, bends and belts."),
        s.or(
            "part",
            new Type.Ref(Referent.PART, true),
            "",
            Tie::part,
            "The part whose edge is meant."),
        s.or(
            "edge",
            new Type.Whole(Type.Outlines.MAX_POINTS),
            0,
            Tie::edge,
            "Which edge of its outline, counted from 0."),
        s.flag("inside", Tie::inside, "True for an inside tangency."),
        new Tie.Run(
            s.or(
                "across",
                new Type.ListOf<>(PartSizes.REACH, 0, MAX_PINS),
                List.of(),
                tie -> tie.run().across(),
                "Where each wheel of a belt or chain has its middle, left positive: what the run"
                    + " passes at its side is looked at."),
            s.may(
                "width",
                PartSizes.SIZE,
                tie -> tie.run().width(),
                "How broad a belt or chain is, over its pins."),
            s.flag(
                "halfLink",
                tie -> tie.run().halfLink(),
                "True for a chain that is meant to have a cranked half link."),
            s.or(
                "idlers",
                PINS,
                List.of(),
                tie -> tie.run().idlers(),
                "Which of its pins carry a wheel that only guides or tightens a belt or chain; its"
                    + " wheels are named in the order in which it goes round them."),
            s.or(
                "back",
                PINS,
                List.of(),
                tie -> tie.run().back(),
                "Which of its idlers press on it from outside; the others lie within."),
            s.may(
                "sprung",
                Type.ref(Referent.PIN),
                tie -> tie.run().sprung(),
                "The idler that a spring presses on it, which takes up the slack.")),
        s.note(Tie::note));
  }

  private static String tieHelp() {
    StringBuilder help = new StringBuilder("What must hold, over pins P, Q, R, S in this order. ");
    String gap = "";
    for (TieKind kind : TieKind.values()) {
      help.append(gap).append(kind.word()).append(": ").append(kind.help());
      gap = "; ";
    }
    return help.append('.').toString();
  }

  private static void tie(Tie tie, Spot at) {
    TieKind kind = tie.kind();
    count("pins", tie.pins().size(), kind.fewestPins(), kind.mostPins(), kind.word(), at);
    target(tie.is(), kind.word(), kind.is() != TieKind.Is.NONE, at);
    if (kind.is() == TieKind.Is.LENGTH) {
      tie.is().ifPresent(is -> length(is, at));
    }
    int radii = tie.radii().size();
    if (kind == TieKind.BELT_LENGTH) {
      int pins = tie.pins().size();
      count("radii", radii, pins, pins, "a belt over these pins", at);
      if (!tie.run().across().isEmpty()) {
        count("across", tie.run().across().size(), pins, pins, "a belt over these pins", at);
        if (tie.run().width().isEmpty()) {
          at.fault("width", "", "is missing, across needs it", "say how broad the run is");
        }
      }
      idlers(tie, at);
    } else {
      if (!tie.run().equals(Tie.Run.NOT_SAID)) {
        at.fault(
            "across",
            "",
            "belongs to belt-length only, as width, halfLink and idlers do",
            "take it out");
      }
      count("radii", radii, kind.radii(), kind.radii(), kind.word(), at);
    }
    if (kind == TieKind.ON_EDGE) {
      edge(tie.part(), tie.edge(), at);
    } else if (!tie.part().isEmpty()) {
      at.fault("part", Quoted.of(tie.part()), "is not used by " + kind.word(), "take it out");
    }
  }

  /** Two wheels drive and are driven; of what guides, some press from outside. */
  private static void idlers(Tie tie, Spot at) {
    Tie.Run run = tie.run();
    within("idlers", run.idlers(), tie.pins(), "a pin of this belt", at);
    within("back", run.back(), run.idlers(), "one of its idlers", at);
    within("sprung", run.sprung().stream().toList(), run.idlers(), "one of its idlers", at);
    long driving = tie.pins().stream().filter(p -> !run.idlers().contains(p)).count();
    if (driving < 2 && tie.pins().size() >= 2) {
      at.fault(
          "idlers",
          "",
          "leaves fewer than two wheels that drive or are driven",
          "take those out of the idlers");
    }
  }

  private static void within(
      String key, List<String> named, List<String> among, String what, Spot at) {
    for (String name : named) {
      if (!among.contains(name)) {
        at.fault(key, Quoted.of(name), "is not " + what, "name " + what);
      }
    }
  }

  /** No pins can be less than nothing apart, nor a chain have less than no links. */
  private static void length(Formula is, Spot at) {
    at.fixed(is)
        .filter(mm -> mm < 0)
        .ifPresent(
            mm ->
                at.fault(
                    "is",
                    Quoted.of(is.text()),
                    "is " + Range.number(mm) + " mm, a length must not be negative",
                    "write another value, or mend the measures in it"));
  }

  private static void edge(String part, int edge, Spot at) {
    if (part.isEmpty()) {
      at.fault("part", "", "is missing", "name the part whose edge is meant");
      return;
    }
    Part named = at.part(part);
    if (named == null) {
      return;
    }
    Optional<Outline> outline = named.edge();
    if (outline.isEmpty()) {
      at.fault("part", Quoted.of(part), "has no outline", "name a solid, cowl or screen");
      return;
    }
    int edges = outline.get().count() - (outline.get().closed() ? 0 : 1);
    if (edge >= edges && edges > 0) {
      at.fault(
          "edge",
          Integer.toString(edge),
          "is no edge of " + part + ", which has edges 0 to " + (edges - 1),
          "count edges from 0, edge 0 runs from the first vertex to the second");
    }
  }

  private static void target(Optional<Formula> is, String word, boolean takes, Spot at) {
    if (is.isEmpty() && takes) {
      at.fault("is", "", "is missing, " + word + " needs it", "add the target quantity");
    } else if (is.isPresent() && !takes) {
      at.fault("is", Quoted.of(is.get().text()), "is not used by " + word, "take it out");
    }
  }

  private static void count(String key, int count, int fewest, int most, String word, Spot at) {
    if (count < fewest || count > most) {
      String needs = fewest == most ? Integer.toString(fewest) : "from " + fewest + " to " + most;
      at.fault(
          key,
          "",
          "has " + count + (count == 1 ? " entry, " : " entries, ") + word + " needs " + needs,
          count < fewest ? "add the missing ones" : "take the others out");
    }
  }

  private static Kind<Limit> limit(Type.Quantity bound, Referent parts) {
    return Kind.<Limit>of(
            "limit",
            "An inequality that must hold; give from or to or both.",
            s -> limit(bound, parts, s))
        .decidedBy("limit")
        .rule(RelationKinds::limit)
        .exactly(
            (name, limit, dims) ->
                limit(
                    of(limit.kind().dim().or(() -> dims.apply(limit.measure()))),
                    limit.kind() == Limit.Kind.GAP ? Referent.PART_OR_RIDER : Referent.PART));
  }

  private static Limit limit(Type.Quantity bound, Referent parts, Source<Limit> s) {
    return new Limit(
        s.need(
            "limit",
            words(Limit.Kind.class),
            Limit::kind,
            "Which quantity: as for ties; measure: a free measure; inside: pin inside a part's"
                + " outline; gap: smallest gap between two parts, or a part and rider."),
        s.or("pins", PINS, List.of(), Limit::pins, PINS_HELP),
        s.or(
            "parts",
            new Type.ListOf<>(Type.ref(parts), 0, MAX_PINS),
            List.of(),
            Limit::parts,
            "The parts it speaks of."),
        s.or(
            "measure",
            new Type.Ref(Referent.MEASURE, true),
            "",
            Limit::measure,
            "The free measure it speaks of."),
        s.may("from", bound, Limit::from, "Smallest value allowed."),
        s.may("to", bound, Limit::to, "Largest value allowed."),
        s.note(Limit::note));
  }

  private static void limit(Limit limit, Spot at) {
    Limit.Kind kind = limit.kind();
    List<String> parts = limit.parts();
    count("pins", limit.pins().size(), kind.pins(), kind.pins(), kind.word(), at);
    count("parts", parts.size(), kind.parts(), kind.parts(), kind.word(), at);
    if (parts.size() == 2 && parts.get(0).equals(parts.get(1))) {
      at.fault(
          "parts",
          parts.get(0),
          "is named twice, a gap is between two",
          "name another part, or " + Occupant.RIDER);
    }
    measure(limit.measure(), kind == Limit.Kind.MEASURE, kind.word(), at);
    if (limit.from().isEmpty() && limit.to().isEmpty()) {
      at.fault("", "", "limits nothing", "add \"from\" or \"to\" or both");
    }
    at.ordered(limit.from(), limit.to());
  }

  private static void measure(String name, boolean needed, String word, Spot at) {
    if (name.isEmpty()) {
      if (needed) {
        at.fault("measure", "", "is missing", "name a free measure");
      }
    } else if (!needed) {
      at.fault("measure", Quoted.cut(name), "is not used by " + word, "take it out");
    } else if (at.known(Referent.MEASURE).contains(name) && !at.isFree(name)) {
      at.fault(
          "measure",
          Quoted.cut(name),
          "is not free, so nothing can be asked of it",
          "write \"free\": true at the measure or take this out");
    }
  }

  private static Kind<Wish> wish(Type.Quantity is) {
    return Kind.<Wish>of(
            "wish",
            "A preference, followed in the room that ties and limits leave.",
            s -> wish(is, s))
        .decidedBy("wish")
        .rule(RelationKinds::wish)
        .exactly(
            (name, wish, dims) -> wish(of(wish.kind().dim().or(() -> dims.apply(wish.measure())))));
  }

  private static Wish wish(Type.Quantity is, Source<Wish> s) {
    return new Wish(
        s.need(
            "wish",
            words(Wish.Kind.class),
            Wish::kind,
            "Which quantity: as for ties; measure: a free measure; comfort: comfortable joint"
                + " angles for the crew; front-share: front wheel's share of the laden weight;"
                + " sight: how far ahead the road is seen."),
        s.or("pins", PINS, List.of(), Wish::pins, PINS_HELP),
        s.or(
            "measure",
            new Type.Ref(Referent.MEASURE, true),
            "",
            Wish::measure,
            "The free measure it speaks of."),
        s.may("is", is, Wish::is, "The value wished for; not for comfort."),
        s.orSaid(
            "weight", new Type.Weight(), 1.0, Wish::weight, "Its weight against other wishes."),
        s.note(Wish::note));
  }

  private static void wish(Wish wish, Spot at) {
    Wish.Kind kind = wish.kind();
    count("pins", wish.pins().size(), kind.pins(), kind.pins(), kind.word(), at);
    measure(wish.measure(), kind == Wish.Kind.MEASURE, kind.word(), at);
    target(wish.is(), kind.word(), kind != Wish.Kind.COMFORT, at);
  }
}
