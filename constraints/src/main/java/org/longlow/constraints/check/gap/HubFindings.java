package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Rims;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.words.Names;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * What a wheel says sits about its axle, against its rim, the legs beside it and each other, which
 * go with the axle, so that these are the same in every stance; and what turns, against all else.
 */
public final class HubFindings {

  /** Whether what sits about an axle fits into its wheel and between what carries that. */
  public static final FindingKind HUB = new FindingKind("hub", FindingGroup.GAPS, Rests.ON_DRAWING);

  private static final Basis SEAT = Basis.model("the rim of the tyre's size");

  private static final Basis ROUND = Basis.model("bodies round about the axle, as the wheel says");

  private final Layout layout;
  private final Places places;
  private final Map<String, PartShape> shapes;
  private final HubRoom elsewhere;

  private HubFindings(
      Layout layout, Places places, Map<String, PartShape> shapes, HubRoom elsewhere) {
    this.layout = layout;
    this.places = places;
    this.shapes = shapes;
    this.elsewhere = elsewhere;
  }

  public static List<Finding> of(
      Layout layout,
      GapRules rules,
      Places places,
      Map<String, PartShape> shapes,
      List<Sitting> sittings,
      List<Standing> standings) {
    HubRoom elsewhere = new HubRoom(layout, rules, places, shapes, sittings, standings);
    HubFindings hubs = new HubFindings(layout, places, shapes, elsewhere);
    List<Finding> findings = new ArrayList<>();
    layout.parts(WheelPart.class).forEach(wheel -> findings.addAll(hubs.of(wheel)));
    return findings;
  }

  /** A body about the axle, and what it is called. */
  private record Body(
      HubBody said, String name, String id, boolean turns, double radiusMm, Interval across) {}

  /** How far a body is off something, and how far it must be. */
  private record Room(
      double mm, double askedMm, Words words, List<Basis> basis, Optional<Condition> stance) {

    Room(double mm, double askedMm, Words words, List<Basis> basis) {
      this(mm, askedMm, words, basis, Optional.empty());
    }

    double marginMm() {
      return mm - askedMm;
    }
  }

  private List<Finding> of(WheelPart wheel) {
    List<Finding> findings = new ArrayList<>();
    Tyre tyre = Tyres.of(wheel, places);
    seat(wheel, tyre).ifPresent(findings::add);
    List<Body> bodies = bodies(wheel);
    for (int i = 0; i < bodies.size(); i++) {
      findings.add(fits(wheel, tyre, bodies.get(i)));
      for (int j = 0; j < i; j++) {
        apart(wheel, bodies.get(j), bodies.get(i)).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private List<Body> bodies(WheelPart wheel) {
    List<Body> bodies = new ArrayList<>();
    for (int i = 0; i < wheel.inside().size(); i++) {
      HubBody said = wheel.inside().get(i);
      double half = places.value(said.width()) / 2;
      double y = places.value(said.y());
      String word = Names.word(said.what());
      String side = y == 0 ? "in the middle" : y > 0 ? "on the left" : "on the right";
      bodies.add(
          new Body(
              said,
              "the " + word + " " + side + " of " + wheel.name(),
              word + (i + 1),
              said.what().turns(),
              places.value(said.radius()),
              new Interval(y - half, y + half)));
    }
    return bodies;
  }

  /** A rim has a wall, so its inside is less than what the tyre sits on. */
  private Optional<Finding> seat(WheelPart wheel, Tyre tyre) {
    double bead = Rims.beadMm(wheel, tyre);
    return wheel
        .rimInside()
        .map(places::value)
        .filter(mm -> !wheel.tyre().isEmpty() && mm >= bead)
        .map(
            mm ->
                new Finding(
                        HUB,
                        About.parts(wheel.name()).named(wheel.name(), "rim"),
                        Optional.empty(),
                        Verdict.FAIL,
                        Figures.atMost(mm, bead, FigureUnit.MM),
                        List.of(SEAT),
                        Say.format(
                            "The rim of %s is free to a radius of %s, and its tyre sits at %s,"
                                + " which leaves no wall: measure from the axle to the inside of"
                                + " the rim.",
                            wheel.name(), Say.mm(mm), Say.mm(bead)))
                    .at(places.pin(wheel.axle())));
  }

  private Finding fits(WheelPart wheel, Tyre tyre, Body body) {
    List<Room> rooms = new ArrayList<>();
    double half = tyre.widthMm() / 2;
    double beside = body.across().gap(new Interval(-half, half));
    if (beside < 0) {
      rooms.add(rim(wheel, tyre, body));
    } else if (body.radiusMm() > Rims.beadMm(wheel, tyre)) {
      rooms.add(wall(beside));
    }
    layout
        .parts(Part.class)
        .filter(p -> p instanceof Part.Carrier c && c.axle().equals(wheel.axle()))
        .forEach(
            carrier -> {
              List<Interval> legs = legs(carrier, half);
              legs.forEach(leg -> rooms.add(leg(carrier, leg, legs.size() > 1, body)));
            });
    kingpin(wheel, body).ifPresent(rooms::add);
    if (body.turns()) {
      elsewhere.nearest(wheel, body.said()).map(HubFindings::near).ifPresent(rooms::add);
    }
    Room worst =
        rooms.stream().min((a, b) -> Double.compare(a.marginMm(), b.marginMm())).orElse(null);
    About about = About.parts(wheel.name()).named(wheel.name(), body.id());
    String name = "T" + body.name().substring(1);
    if (worst == null) {
      return Finding.note(
          HUB, about, Verdict.PASS, ROUND, Words.of(name + " lies beside its tyre."));
    }
    return Finding.held(
            HUB,
            about,
            worst.stance(),
            Figures.atLeast(worst.mm(), worst.askedMm(), FigureUnit.MM),
            worst.basis(),
            Words.of(name, worst.words(), "."))
        .at(places.pin(wheel.axle()), body.across().middle());
  }

  private static Room near(HubRoom.Near near) {
    return new Room(
        near.mm(),
        near.askedMm(),
        Words.of(
            near.mm() < 0
                ? Words.of(" is in " + near.other() + " by ", Say.mm(-near.mm()))
                : Words.of(" is ", Say.mm(near.mm()), " off " + near.other()),
            "; ",
            Words.atLeast(near.askedMm()),
            " are asked: take a smaller one, set it farther in, or move what it meets"),
        List.of(ROUND, near.basis()),
        near.stance());
  }

  private Room rim(WheelPart wheel, Tyre tyre, Body body) {
    double inside = Rims.insideMm(wheel, tyre, places);
    double mm = inside - body.radiusMm();
    double asked = body.turns() ? 0 : gapMm();
    List<Basis> basis = new ArrayList<>(List.of(ROUND, JointFindings.rim(wheel)));
    if (!body.turns()) {
      basis.add(Sources.of(layout, Demands.Key.GAP));
    }
    return new Room(
        mm,
        asked,
        Words.of(
            mm < 0
                ? Words.of(" reaches ", Say.mm(-mm), " past the inside of the rim")
                : Words.of(" is ", Say.mm(mm), " off the inside of the rim"),
            mm < asked
                ? Words.of(
                    ", which is ",
                    Say.mm(inside),
                    " from the axle",
                    asked > 0 ? Words.of("; ", Say.mm(asked), " are asked") : Words.NONE,
                    ": take a smaller one, or a wheel with a larger rim")
                : Words.NONE),
        basis);
  }

  /**
   * Of a hub-centre front the steering axis lies in the middle of the hub, all but filled by it.
   */
  private Optional<Room> kingpin(WheelPart wheel, Body body) {
    return layout
        .parts(FrontPart.class)
        .filter(f -> f.axle().equals(wheel.axle()) && !f.type().turns())
        .findFirst()
        .map(
            front -> {
              double off =
                  new LineSegment(coordinate(front.top()), coordinate(front.bottom()))
                      .distance(coordinate(wheel.axle()));
              double beside = body.across().gap(new Interval(0, 0));
              double mm = Math.max(beside, off - body.radiusMm());
              return new Room(
                  mm,
                  gapMm(),
                  Words.of(
                      mm < 0
                          ? Words.of(
                              " is in the steering axis of " + front.name() + " by ", Say.mm(-mm))
                          : Words.of(
                              " is ", Say.mm(mm), " off the steering axis of " + front.name()),
                      mm < gapMm()
                          ? Words.of(
                              "; ",
                              Words.atLeast(gapMm()),
                              " are asked: set it to a side of the middle")
                          : Words.NONE),
                  List.of(ROUND, Sources.of(layout, Demands.Key.GAP)));
            });
  }

  private Coordinate coordinate(String pin) {
    PointMm at = places.pin(pin);
    return new Coordinate(at.x(), at.z());
  }

  /** What reaches past the bead stands beside the wall of the tyre, which bulges over the road. */
  private Room wall(double mm) {
    double asked = places.value(layout.demands().limit(Demands.Key.TYRE_GAP));
    return new Room(
        mm,
        asked,
        Words.of(
            " is ",
            Say.mm(mm),
            " beside the wall of its tyre",
            mm < asked
                ? Words.of(
                    "; ",
                    Words.atLeast(asked),
                    " are asked: set it ",
                    Words.atLeast(asked - mm),
                    " farther out, or take one no larger than the rim")
                : Words.NONE),
        List.of(ROUND, Sources.of(layout, Demands.Key.TYRE_GAP)));
  }

  private double gapMm() {
    return places.value(layout.demands().limit(Demands.Key.GAP));
  }

  /** Returns where across the machine the legs of what carries a wheel stand beside it. */
  private List<Interval> legs(Part carrier, double halfTyreMm) {
    if (carrier instanceof FrontPart fork) {
      double y = places.value(fork.y());
      double half = places.value(fork.tube()) / 2;
      Interval leg = new Interval(y - half, y + half);
      return List.of(leg, leg.mirrored());
    }
    PartShape shape = shapes.get(carrier.name());
    double left = shape.leftMm();
    double right = shape.rightMm();
    if (left < 0 || right < 0) {
      return List.of(new Interval(-right, left)); // on one side alone
    }
    return Math.min(left, right) <= halfTyreMm
        ? List.of() // it is in the tyre, which is told
        : List.of(
            new Interval(left - JointFindings.LEG_MM, left),
            new Interval(-right, JointFindings.LEG_MM - right));
  }

  /**
   * The room beside a leg.
   *
   * @param between whether there is another leg, so that it lies between both
   */
  private Room leg(Part carrier, Interval leg, boolean between, Body body) {
    boolean left = leg.middle() > 0;
    double mm =
        !between
            ? body.across().gap(leg)
            : left ? leg.from() - body.across().to() : body.across().from() - leg.to();
    double asked = body.turns() ? gapMm() : 0; // what stands still hangs on it
    List<Basis> basis = new ArrayList<>(List.of(ROUND));
    if (!(carrier instanceof FrontPart)) {
      basis.add(JointFindings.LEG);
    }
    if (body.turns()) {
      basis.add(Sources.of(layout, Demands.Key.GAP));
    }
    String of = (left ? "left" : "right") + " leg of " + carrier.name();
    boolean outside = between && body.across().gap(leg) >= 0 && mm < 0;
    return new Room(
        mm,
        asked,
        Words.of(
            outside
                ? Words.of(" is outside the " + of + ", which is between it and the wheel")
                : mm < 0
                    ? Words.of(" is in the " + of + " by ", Say.mm(-mm))
                    : Words.of(" is ", Say.mm(mm), " off the " + of),
            outside
                ? Words.of(": set it between the legs")
                : mm < asked
                    ? Words.of(
                        asked > 0 ? Words.of("; ", Say.mm(asked), " are asked") : Words.NONE,
                        ": set the leg ",
                        Words.atLeast(asked - mm),
                        " farther out, or take a narrower one",
                        body.turns()
                            ? ""
                            : "; one that sits before or behind the leg is a part of its own")
                    : Words.NONE),
        basis);
  }

  /** Two things about one axle lie beside each other; a calliper is round its disc. */
  private Optional<Finding> apart(WheelPart wheel, Body one, Body other) {
    double mm = one.across().gap(other.across());
    if (mm >= 0 || !one.turns() || !other.turns()) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.held(
                HUB,
                About.parts(wheel.name()).named(wheel.name(), one.id(), other.id()),
                Optional.empty(),
                Figures.atLeast(mm, 0, FigureUnit.MM),
                List.of(ROUND),
                Words.of(
                    "Of " + wheel.name() + ", " + one.name() + " and " + other.name(),
                    " are in each other by ",
                    Say.mm(-mm),
                    " across the machine: part their \"y\", or make them narrower."))
            .at(places.pin(wheel.axle()), other.across().middle()));
  }
}
