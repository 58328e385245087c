package org.longlow.constraints.check.gap;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.Traits.Joint;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Rims;
import org.longlow.constraints.shape.Tyres;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * Parts that share a pin: the joint may be where both are, their bodies may not. On a wheel's axle
 * there is room inside its rim; tyre and rim are in nobody's way there.
 */
public final class JointFindings {

  /** Least width of a leg of a swingarm beside the tyre, mm. Common practice, no source. */
  static final double LEG_MM = 15;

  /** A joint reaches so many depths of the thinner part from its pin. Common practice. */
  static final double DEPTHS = 3;

  /** A joint of anything but two bars reaches no farther, mm. Common practice, no source. */
  static final double FARTHEST_MM = 60;

  /** Bodies filled to their outlines that share more than this of the smaller are no joint. */
  static final double MOST_SHARED = 0.5;

  static final Basis JOINT =
      Basis.practice(
          "common practice, no published source: a joint reaches three depths of the thinner part"
              + " from its pin, at most 60 mm where one is no bar");
  private static final Basis SHARED =
      Basis.judgement("judgement: bodies that share half of the smaller are in one place");
  private static final Basis RIM =
      Basis.practice(
              "rim of the tyre's size, its inside 25 mm below the bead seat (common practice, from"
                  + " memory)")
          .fromMemory();
  private static final Basis SAID_RIM = Basis.model("inside of the rim as its wheel says it");
  static final Basis LEG =
      Basis.practice(
          "common practice, no published source: a swingarm's leg takes 15 mm beside the gap to the"
              + " tyre");

  private final Layout layout;
  private final GapRules rules;
  private final Wheels wheels;
  private final Places places;
  private final Map<String, PartShape> shapes;
  private final List<Standing> standings;
  private final Map<String, Solid> rings = new HashMap<>();

  public JointFindings(
      Layout layout,
      GapRules rules,
      Wheels wheels,
      Map<String, PartShape> shapes,
      List<Standing> standings) {
    this.layout = layout;
    this.rules = rules;
    this.wheels = wheels;
    this.places = wheels.drawn();
    this.shapes = shapes;
    this.standings = standings;
  }

  public List<Finding> all(GapFindings gaps) {
    return rules.joints().stream().flatMap(joint -> of(gaps, joint).stream()).toList();
  }

  /** Returns what is found of one joint. */
  List<Finding> of(GapFindings gaps, GapRules.Joint joint) {
    Part a = layout.parts().get(joint.a());
    Part b = layout.parts().get(joint.b());
    return isOnAxle(a, joint)
        ? onAxle((WheelPart) a, b)
        : isOnAxle(b, joint) ? onAxle((WheelPart) b, a) : away(gaps, joint, a, b).stream().toList();
  }

  /**
   * Returns how much nearer to their pins some joints end than they may, mm, by the id of their
   * finding; negative where they reach too far. Those on an axle are left out.
   *
   * @param moved the parts of which one at least has such a joint
   * @param bodies every part, where it is now
   * @param now where the pins are now
   */
  public Map<String, Double> sparedMm(
      Set<String> moved, Function<String, Solid> bodies, Places now) {
    Map<String, Double> spared = new LinkedHashMap<>();
    for (GapRules.Joint joint : rules.joints()) {
      Part a = layout.parts().get(joint.a());
      Part b = layout.parts().get(joint.b());
      boolean moves = moved.contains(joint.a()) || moved.contains(joint.b());
      if (moves && !isOnAxle(a, joint) && !isOnAxle(b, joint)) {
        List<PointMm> pins = joint.pins().stream().map(now::pin).toList();
        double away = bodies.apply(joint.a()).overlapsAwayMm(bodies.apply(joint.b()), pins);
        String id = String.join(".", GapRules.JOINT.word(), joint.a(), joint.b());
        spared.put(id, reachMm(a, b) - away);
      }
    }
    return spared;
  }

  private static boolean isOnAxle(Part part, GapRules.Joint joint) {
    return part instanceof WheelPart wheel && joint.pins().contains(wheel.axle());
  }

  /** Two parts that may overlap about their pins only. */
  private Optional<Finding> away(GapFindings gaps, GapRules.Joint joint, Part a, Part b) {
    List<PointMm> pins = joint.pins().stream().map(places::pin).toList();
    double away = awayMm(gaps, joint.a(), joint.b(), pins);
    double limit = reachMm(a, b);
    if (away <= limit) {
      return both(a, b, Joint::filled) ? swallowed(gaps, joint, pins.get(0)) : Optional.empty();
    }
    return Optional.of(
        Finding.held(
                GapRules.JOINT,
                About.parts(joint.a(), joint.b()),
                Optional.empty(),
                Figures.atMost(away, limit, FigureUnit.MM),
                List.of(JOINT),
                Say.format(
                    "%s and %s share %s but are in each other as far as %s from there; a joint of"
                        + " theirs reaches %s: part them beyond it, or list one under touches of"
                        + " the other if they are meant to overlap.",
                    joint.a(),
                    joint.b(),
                    String.join(" and ", joint.pins()),
                    Say.mm(away),
                    Say.mm(limit)))
            .at(pins.get(0)));
  }

  /** How far from their pins two parts are in each other, also while one is worked by a foot. */
  private static double awayMm(GapFindings gaps, String a, String b, List<PointMm> pins) {
    double away = gaps.drawn(a).overlapsAwayMm(gaps.drawn(b), pins);
    for (Solid there : gaps.worked(a)) {
      away = Math.max(away, there.overlapsAwayMm(gaps.drawn(b), pins));
    }
    for (Solid there : gaps.worked(b)) {
      away = Math.max(away, gaps.drawn(a).overlapsAwayMm(there, pins));
    }
    return away;
  }

  /** Two filled bodies on one pin, one of them in the other. */
  private Optional<Finding> swallowed(GapFindings gaps, GapRules.Joint joint, PointMm at) {
    if (!gaps.drawn(joint.a()).overlaps(gaps.drawn(joint.b()))) {
      return Optional.empty();
    }
    Geometry a = shapes.get(joint.a()).outline();
    Geometry b = shapes.get(joint.b()).outline();
    double share = a.intersection(b).getArea() / Math.min(a.getArea(), b.getArea());
    if (share <= MOST_SHARED) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.held(
                GapRules.JOINT,
                About.parts(joint.a(), joint.b()),
                Optional.empty(),
                Figures.atMost(share, MOST_SHARED, FigureUnit.SHARE),
                List.of(SHARED),
                Say.format(
                    "%s and %s share %s, and %s of the smaller is in the other: part them, or list"
                        + " one under touches of the other if one is inside the other.",
                    joint.a(), joint.b(), String.join(" and ", joint.pins()), Say.percent(share)))
            .at(at));
  }

  /** Returns how far from a pin that they share two parts may be in each other, mm. */
  double reachMm(Part a, Part b) {
    double depths = DEPTHS * Math.min(depthMm(a), depthMm(b));
    return both(a, b, Joint.BAR::equals) ? depths : Math.min(FARTHEST_MM, depths);
  }

  private static boolean both(Part a, Part b, Predicate<Joint> such) {
    return such.test(a.traits().joint()) && such.test(b.traits().joint());
  }

  /** How deep a part is where it is joined, mm. */
  private double depthMm(Part part) {
    Envelope box = shapes.get(part.name()).outline().getEnvelopeInternal();
    double least = Math.min(box.getWidth(), box.getHeight());
    return part.traits().depth().map(places::value).orElse(least);
  }

  private List<Finding> onAxle(WheelPart wheel, Part part) {
    Tyre tyre = Tyres.of(wheel, places);
    Demands.Key demand = rules.demand(wheel.name(), part.name());
    double asked = rules.limitMm(wheel.name(), part.name(), demand);
    if (part instanceof SwingarmPart arm) {
      PartShape shape = shapes.get(arm.name());
      double beside = Math.min(shape.leftMm(), shape.rightMm()) - tyre.widthMm() / 2;
      if (beside > 0) {
        return List.of(legs(wheel, arm, tyre, beside, asked));
      }
    }
    Basis source = rules.source(wheel.name(), part.name(), demand);
    if (part instanceof FrontPart fork && wheel.equals(wheels.front())) {
      ForkOnAxle on =
          new ForkOnAxle(
              fork, wheel, tyre, asked, source, places, wheels.frontSuspension(), standings);
      return on.all(shapes.get(fork.name()), ring(wheel, tyre));
    }
    boolean hub = part.traits().joint() == Joint.HUB;
    return inTyre(wheel, part, tyre, hub ? 0 : asked, source).stream().toList();
  }

  /** An arm drawn as one body over the whole width has a leg on each side of the tyre. */
  private Finding legs(
      WheelPart wheel, SwingarmPart arm, Tyre tyre, double besideMm, double askedMm) {
    PointMm pivot = places.pin(arm.pivot());
    PointMm axle = places.pin(arm.axle());
    double ahead = pivot.distance(axle) - tyre.freeRadiusMm() - places.value(arm.depth()) / 2;
    boolean bridge = ahead < askedMm;
    return Finding.held(
            GapRules.JOINT,
            About.parts(arm.name(), wheel.name()),
            Optional.empty(),
            Figures.atLeast(
                bridge ? ahead : besideMm, bridge ? askedMm : askedMm + LEG_MM, FigureUnit.MM),
            List.of(LEG),
            bridge
                ? Say.format(
                    "The bridge of %s at its pivot comes within %s of the tyre of %s; %s are asked:"
                        + " make the arm longer or slimmer.",
                    arm.name(), Say.mm(ahead), wheel.name(), Say.mm(askedMm))
                : Say.format(
                    "%s is taken as two legs beside the tyre of %s: %s lie between the tyre and its"
                        + " outside, where a leg of %s and the %s asked need %s%s.",
                    arm.name(),
                    wheel.name(),
                    Say.mm(besideMm),
                    Say.mm(LEG_MM),
                    Say.mm(askedMm),
                    Say.mm(askedMm + LEG_MM),
                    besideMm < askedMm + LEG_MM
                        ? Say.format(
                            "; set each side %s farther out",
                            Words.atLeast(askedMm + LEG_MM - besideMm))
                        : ""))
        .at(axle);
  }

  /** The tyre and its rim, as drawn. */
  private Solid ring(WheelPart wheel, Tyre tyre) {
    Interval width = new Interval(-tyre.widthMm() / 2, tyre.widthMm() / 2);
    return rings.computeIfAbsent(
        wheel.name(),
        name ->
            new Solid(
                name,
                List.of(
                    new Prism(
                        Curves.ring(
                            places.pin(wheel.axle()),
                            tyre.freeRadiusMm(),
                            Rims.insideMm(wheel, tyre, places)),
                        width))));
  }

  /** What is on the axle must be inside the rim or beside the tyre, in every stance. */
  private Optional<Finding> inTyre(
      WheelPart wheel, Part part, Tyre tyre, double askedMm, Basis source) {
    double inside = Rims.insideMm(wheel, tyre, places);
    PartShape shape = shapes.get(part.name());
    Interval width = new Interval(-tyre.widthMm() / 2, tyre.widthMm() / 2);
    if (shape.prisms().stream().allMatch(p -> p.across().gap(width) >= askedMm)) {
      return Optional.empty(); // beside the tyre all along
    }
    Solid ring = ring(wheel, tyre);
    Room worst = room(ring, PointMm.ORIGIN, wheel, shape, askedMm);
    Optional<Condition> stance = Optional.empty();
    for (Standing s : standings) {
      if (!s.moved().containsKey(wheel.name()) && !s.moved().containsKey(part.name())) {
        continue;
      }
      PointMm travel = s.places().pin(wheel.axle()).minus(places.pin(wheel.axle()));
      Room room = room(ring, travel, wheel, s.shapes().get(part.name()), askedMm);
      if (room != null && (worst == null || room.mm() < worst.mm() - 1e-6)) {
        worst = room;
        stance = Optional.of(s.condition());
      }
    }
    if (worst == null) {
      return Optional.empty();
    }
    boolean hub = part.traits().joint() == Joint.HUB;
    return Optional.of(
        Finding.held(
                GapRules.JOINT,
                About.parts(part.name(), wheel.name()),
                stance,
                Figures.atLeast(worst.mm(), askedMm, FigureUnit.MM),
                hub ? List.of(rim(wheel)) : List.of(source, rim(wheel)),
                Say.format(
                    "%s is on the axle of %s but not inside its rim (%s across) or beside its tyre:"
                        + " it is %s; %s.",
                    part.name(),
                    wheel.name(),
                    Say.mm(2 * inside),
                    worst.mm() < 0
                        ? Words.of("in it by ", Say.mm(-worst.mm()))
                        : Words.of(
                            Say.mm(worst.mm()),
                            " off it where ",
                            Words.atLeast(askedMm),
                            " are asked"),
                    hub
                        ? "a smaller one, or a wheel with a larger rim, is needed"
                        : "set it farther out or give it another shape"))
            .at(worst.gap().where()));
  }

  /** How far something on an axle is off the tyre, mm, negative in it, and where. */
  private record Room(Gap gap, double mm) {}

  /**
   * Returns the room between a tyre and what is on its axle; null if that is more than is asked.
   * What is held all round by a rim gets out of it by being smaller, not by a shift out of the
   * wheel: it is in it by no more than it reaches past the inside.
   */
  private Room room(Solid ring, PointMm travel, WheelPart wheel, PartShape shape, double askedMm) {
    String name = shape.part().name();
    Gap gap = ring.moved(Solid.by(travel)).to(Solid.of(shape), askedMm);
    if (gap == null || gap.gapMm() >= 0) {
      return gap == null ? null : new Room(gap, gap.gapMm());
    }
    Tyre tyre = Tyres.of(wheel, places);
    Interval width = new Interval(-tyre.widthMm() / 2, tyre.widthMm() / 2);
    List<Prism> within = shape.prisms().stream().filter(p -> p.across().gap(width) < 0).toList();
    double reach = new Solid(name, within).reachMm(places.pin(wheel.axle()).plus(travel));
    double mm = Math.max(gap.gapMm(), Rims.insideMm(wheel, tyre, places) - reach);
    return mm >= askedMm ? null : new Room(gap, mm); // a ring's chords are nearer than its circle
  }

  /** What the inside of a wheel's rim rests on. */
  static Basis rim(WheelPart wheel) {
    return wheel.rimInside().isPresent() ? SAID_RIM : RIM;
  }
}
