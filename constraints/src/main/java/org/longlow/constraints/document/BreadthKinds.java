package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.NUMBER;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.FurtherBody;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Station;
import org.longlow.constraints.layout.Vertex;
import org.longlow.constraints.words.Quoted;

/** How broad outlined bodies are: at their points, at stations, cut across; further bodies. */
final class BreadthKinds {

  /** Most bodies of one part besides its first. */
  static final int MAX_BODIES = 20;

  /** Most stations of one body. */
  private static final int MAX_STATIONS = 100;

  private static final Formula NOUGHT = Formula.parse("0 mm");

  /** How large a body is begun. */
  private static final Formula BEGUN = Formula.parse("50 mm");

  /** Judgement: a smaller radius is an edge, mm. */
  private static final double LEAST_CORNER_MM = 0.1;

  /** Most points of a drawn side. */
  private static final int MAX_SHARES = 50;

  static final Kind<Station> STATION =
      Kind.of(
              "station",
              "A place along a body at which its breadth is said.",
              BreadthKinds::station)
          .rule((station, at) -> ReachKind.wide(station.reach(), at));

  static final Kind<Profile.Share> SHARE =
      Kind.of(
          "share",
          "A point of a drawn side.",
          (Source<Profile.Share> s) ->
              new Profile.Share(
                  s.need(
                      "up",
                      NUMBER.between(0, 1),
                      Profile.Share::up,
                      "Its place, 0 at the lower edge to 1 at the upper."),
                  s.need(
                      "out",
                      NUMBER.between(0, 1),
                      Profile.Share::out,
                      "How far out it is, 0 at the middle to 1 at full breadth.")));

  static final Kind<Profile> PROFILE =
      Kind.of(
              "profile",
              "What a body looks like cut square to its local x axis: the shape of its sides, or an"
                  + " object where there is more to say.",
              BreadthKinds::profile)
          .shortAs("shape")
          .rule(BreadthKinds::fits);

  static final Kind<FurtherBody> BODY =
      Kind.of("body", "A further body of a part, in the axes of its outline.", BreadthKinds::body)
          .together("left", "right")
          .rule(
              (body, at) -> {
                if (body.spread().said()) {
                  ReachKind.wide(body.spread().left(), body.spread().right(), at);
                } else if (body.breadth().stations().isEmpty()
                    && at.isSound("left")
                    && at.isSound("right")) {
                  ReachKind.missing(at);
                }
                once(body.outline(), body.breadth(), at);
              });

  private BreadthKinds() {}

  static <T> Breadth breadth(Source<T> s, Function<? super T, Breadth> get) {
    return new Breadth(
        s.or(
            "stations",
            new Type.ListOf<>(new Type.Nested<>(STATION), 0, MAX_STATIONS),
            List.of(),
            t -> get.apply(t).stations(),
            "Places along the local x axis, in order, at which its breadth is said; where there are"
                + " none, left and right say it. Straight between them, before the first and behind"
                + " the last as there."),
        s.or(
            "profile",
            new Type.Nested<>(PROFILE),
            Profile.FLAT,
            t -> get.apply(t).profile(),
            "What it looks like cut across: flat, round, oval or drawn by points."));
  }

  /** Returns what is added to a list of these first, or next: something that can stand. */
  static Optional<?> begun(Kind<?> kind, Part part, List<?> there) {
    if (kind == STATION) {
      if (there.isEmpty()) {
        Spread spread = part.base().spread().orElseThrow();
        return Optional.of(
            new Station(
                "",
                NOUGHT,
                new HalfBreadths(Optional.of(spread.left()), Optional.of(spread.right())),
                false));
      }
      Station last = (Station) there.get(there.size() - 1);
      Formula next = Formula.parse("(" + last.x().text() + ") + 100 mm");
      return Optional.of(new Station("", next, last.reach(), last.smooth()));
    }
    if (kind == SHARE && there.isEmpty()) {
      return Optional.of(new Profile.Share(Formula.parse("0"), Formula.parse("1")));
    }
    if (kind == BODY && there.isEmpty()) {
      List<Vertex> square =
          List.of(
              new Vertex(NOUGHT, NOUGHT, null, false),
              new Vertex(BEGUN, NOUGHT, null, false),
              new Vertex(BEGUN, BEGUN, null, false),
              new Vertex(NOUGHT, BEGUN, null, false));
      return Optional.of(
          new FurtherBody(
              "", new Outline.Drawn(square, true), new Spread(BEGUN, BEGUN, false), Breadth.EVEN));
    }
    return Optional.empty();
  }

  private static Station station(Source<Station> s) {
    return new Station(
        s.text("name", Station::name, "For people, such as nose."),
        s.need("x", LENGTH, Station::x, "Along the local x axis of the outline."),
        ReachKind.reach(s, Station::reach),
        s.flag("smooth", Station::smooth, "True if its breadth runs through here without a kink."));
  }

  private static Profile profile(Source<Profile> s) {
    return new Profile(
        s.need("shape", Type.words(Profile.Shape.class), Profile::shape, "The shape of its sides."),
        s.may(
            "corner",
            LENGTH.atLeast(LEAST_CORNER_MM),
            Profile::corner,
            "Radius of the corners where the sides are flat."),
        s.or(
            "points",
            new Type.ListOf<>(new Type.Nested<>(SHARE), 0, MAX_SHARES),
            List.of(),
            Profile::drawn,
            "Points of the sides from the lower edge to the upper, instead of a shape; straight"
                + " between."));
  }

  private static FurtherBody body(Source<FurtherBody> s) {
    Optional<Formula> left =
        s.may(
            "left",
            PartSizes.REACH,
            b -> said(b, Spread::left),
            "Reach to the left." + ReachKind.UNSAID);
    Optional<Formula> right =
        s.may(
            "right",
            PartSizes.REACH,
            b -> said(b, Spread::right),
            "Reach to the right; negative keeps it that far clear of the middle plane."
                + ReachKind.UNSAID);
    boolean both =
        s.flag(
            "both",
            b -> b.spread().both(),
            "True if a mirror image of it stands on the other side too.");
    String name = s.text("name", FurtherBody::name, "For people, such as head.");
    Outline outline =
        s.<Outline>need(
            "outline",
            ShapeKinds.OUTLINE,
            ShapeKinds.OUTLINE.said(),
            FurtherBody::outline,
            "Its edge in the elevation.");
    Breadth breadth = breadth(s, FurtherBody::breadth);
    Spread spread = ReachKind.spread(left, right, both, true).orElseThrow();
    return new FurtherBody(
        name, outline, ReachKind.byStations(spread, breadth).orElse(spread), breadth);
  }

  private static Optional<Formula> said(FurtherBody body, Function<Spread, Formula> get) {
    return Optional.of(body.spread()).filter(Spread::said).map(get);
  }

  private static void fits(Profile profile, Spot at) {
    if (profile.shape() == null) {
      return;
    }
    if (profile.shape() != Profile.Shape.FLAT && profile.corner().isPresent()) {
      at.fault("corner", "", "is for flat sides", "take it out, or write flat");
    }
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < profile.drawn().size(); i++) {
      Optional<Double> up = at.fixed(profile.drawn().get(i).up());
      if (up.isPresent() && up.get() < before) {
        at.itemFault(
            "points",
            i,
            Quoted.of(profile.drawn().get(i).up().text()),
            "lies below the point before it",
            "put the points in order from below to above");
      }
      before = Math.max(before, up.orElse(before));
    }
  }

  /** Reports a breadth that is said twice, and stations out of order. */
  static void once(Outline outline, Breadth breadth, Spot at) {
    boolean atVertices =
        outline != null && outline.vertices().stream().anyMatch(v -> v.reach().isPresent());
    if (atVertices && !breadth.stations().isEmpty()) {
      at.fault(
          "stations",
          "[...]",
          "say the breadth that points of the outline say already",
          "take one of the two out");
    }
    boolean flat =
        breadth.stations().isEmpty()
            ? atVertices
                && outline.vertices().stream()
                    .allMatch(v -> v.reach().filter(r -> ReachKind.isNought(r, at)).isPresent())
            : breadth.stations().stream().allMatch(s -> ReachKind.isNought(s.reach(), at));
    if (flat) {
      boolean points = breadth.stations().isEmpty();
      at.fault(
          points ? "outline" : "stations",
          "[...]",
          (points ? "leaves" : "leave")
              + " no width: the part runs from -right to +left, and left + right is 0 at every "
              + (points ? "point" : "one"),
          "make left + right more than 0 at one of them at least");
    }
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < breadth.stations().size(); i++) {
      Formula x = breadth.stations().get(i).x();
      Optional<Double> fixed = at.fixed(x);
      if (fixed.isPresent() && fixed.get() <= before) {
        at.itemFault(
            "stations",
            i,
            Quoted.of(x.text()),
            "does not lie ahead of the station before it",
            "put the stations in the order of their x, each once");
      }
      before = Math.max(before, fixed.orElse(before));
    }
  }
}
