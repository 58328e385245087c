package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
import org.longlow.constraints.check.gap.TurnedBodies.State;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.lock.LockWay;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.lock.TurnSweep;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What the front wheel, the bars and all that turns with them meet on the way to full lock. */
public final class LockFindings {

  /** What turns with the steering, and how far it turns. */
  public static final FindingKind LOCK =
      new FindingKind("lock", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** How the way is looked at, in words. */
  static final Basis HOW =
      Basis.model(
          Words.of(
              "all that steers turned in space, the whole way to both sides, laden and at full"
                  + " bump, gaps to within ",
              Say.mm(TurnSweep.BOUND_MM),
              " on the near side"));

  private final Layout layout;
  private final GapRules rules;
  private final GapFindings parts;
  private final JointFindings joints;
  private final List<PersonBody> people;
  private final Wheels wheels;
  private final TurnedBodies bodies;
  private final double askedRad;
  private final LockWay way;
  private final KnownTurns known;
  private final Map<About, Fouled> worst = new LinkedHashMap<>();

  /** What is in each other beyond a joint straight ahead, in words. */
  private final Set<String> straight = new LinkedHashSet<>();

  private final NearestAtLock clear = new NearestAtLock();
  private final Map<Places, Steered> moved = new IdentityHashMap<>();

  /** Two that do not keep their gap, in the stance in which it is worst. */
  private record Fouled(
      About about, State state, double limitMm, double curvesMm, Basis source, LockWay.Met met) {

    boolean worseThan(Fouled other) {
      return other == null || met.gapMm() < other.met.gapMm() - NearestAtLock.SAME_MM;
    }
  }

  public LockFindings(
      Layout layout,
      GapRules rules,
      GapFindings parts,
      JointFindings joints,
      List<PersonBody> people,
      Wheels wheels,
      Map<String, PartShape> drawn,
      List<Standing> standings) {
    this.layout = layout;
    this.rules = rules;
    this.parts = parts;
    this.joints = joints;
    this.people = people;
    this.wheels = wheels;
    this.bodies = new TurnedBodies(drawn, wheels.drawn(), standings);
    this.askedRad = wheels.drawn().value(layout.demands().limit(Demands.Key.LOCK));
    this.way = new LockWay(askedRad);
    this.known = new KnownTurns(way.lockRad());
  }

  public List<Finding> all() {
    Optional<Steered> steered =
        wheels.fork() == null
            ? Optional.empty()
            : Steered.of(layout, wheels.fork(), wheels.drawn());
    if (steered.isEmpty()) {
      return List.of(notKnown());
    }
    pastParts(steered.get());
    pastJoints(steered.get());
    for (PersonBody person : people) {
      pastPerson(steered.get(), person);
    }
    List<Finding> findings = new ArrayList<>();
    worst.values().forEach(f -> findings.add(finding(f)));
    Fouled left = first(true);
    Fouled right = first(false);
    // it takes long, and is told only of a side to which nothing meets
    Words nearest = left == null || right == null ? clear.words() : Words.of("");
    findings.add(side(true, left, nearest));
    findings.add(side(false, right, nearest));
    return findings;
  }

  private static Finding notKnown() {
    return Finding.note(
        LOCK,
        About.thing("steering", "steering"),
        Verdict.CAUTION,
        HOW,
        Words.of(
            "Nothing steers yet, so what is met at full lock is not known: draw a front whose"
                + " steering axis has two ends."));
  }

  /** What turns in a stance: an axis in the hub goes with the wheel. */
  private Steered in(State state, Steered drawn) {
    return wheels.fork().type().turns()
        ? drawn
        : moved.computeIfAbsent(
            state.places(), p -> Steered.of(layout, wheels.fork(), p).orElse(drawn));
  }

  private void pastParts(Steered drawn) {
    Set<List<SpaceBody>> done = new HashSet<>();
    for (State state : bodies.states()) {
      Steered steered = in(state, drawn);
      for (String part : steered.axisOf().keySet()) {
        for (String other : layout.parts().keySet()) {
          boolean both = steered.turns(other);
          // what turns about one axis keeps its gaps; of two axes each pair comes up once
          boolean apart =
              both
                  && steered.axisOf().get(part) == steered.head()
                  && steered.axisOf().get(other) != steered.head();
          if ((!both || apart)
              && rules.mayNotTouch(part, other)
              && done.add(List.of(bodies.body(state, part), bodies.body(state, other)))) {
            past(steered, state, part, other);
          }
        }
      }
    }
  }

  private void past(Steered steered, State state, String part, String other) {
    Demands.Key demand = rules.demand(part, other);
    double limit = rules.limitMm(part, other, demand);
    double curves = CurveCare.mm(layout, part, other);
    SteeringAxis axis = steered.axisOf().get(part);
    SpaceBody body = bodies.body(state, part);
    SpaceBody past = bodies.body(state, other);
    boolean both = steered.turns(other);
    About about = About.parts(part, other);
    if (state.worked().contains(other)) {
      about = about.said(part + " and " + other + ", worked as far as it goes,");
    }
    SteeringAxis otherAxis = steered.axisOf().get(other);
    Optional<LockWay.Met> met =
        known.of(
            body,
            axis,
            past,
            otherAxis,
            limit + curves,
            () ->
                both
                    ? way.past(axis, body, otherAxis, past, limit + curves)
                    : way.past(axis, body, past, limit + curves));
    if (met.isEmpty()) {
      clear.add(
          about,
          state,
          body.apartMm(past),
          cut ->
              both
                  ? way.nearest(axis, body, otherAxis, past, cut)
                  : way.nearest(axis, body, past, cut));
      return;
    }
    keep(new Fouled(about, state, limit, curves, rules.source(part, other, demand), met.get()));
  }

  /** What shares pins may be in each other about these, turned too, and nowhere else. */
  private void pastJoints(Steered steered) {
    for (GapRules.Joint joint : rules.joints()) {
      if (steered.turns(joint.a()) == steered.turns(joint.b())) {
        continue;
      }
      String part = steered.turns(joint.a()) ? joint.a() : joint.b();
      String other = part.equals(joint.a()) ? joint.b() : joint.a();
      double reach = joints.reachMm(layout.parts().get(part), layout.parts().get(other));
      Set<List<SpaceBody>> done = new HashSet<>();
      for (State state : bodies.states()) {
        if (!done.add(List.of(bodies.body(state, part), bodies.body(state, other)))) {
          continue;
        }
        SteeringAxis axis = in(state, steered).axisOf().get(part);
        List<PointMm> pins = joint.pins().stream().map(state.places()::pin).toList();
        known
            .beyond(
                bodies.body(state, part),
                axis,
                bodies.body(state, other),
                pins,
                reach,
                () -> beyond(state, part, other, axis, pins, reach))
            .ifPresent(met -> keepJoint(joint, part, other, state, met));
      }
    }
  }

  private void keepJoint(
      GapRules.Joint joint, String part, String other, State state, LockWay.Met met) {
    if (met == LockWay.Met.STRAIGHT) {
      // what is left of a round body beside a joint is taken as broader than it is
      if (joints.of(parts, joint).stream().anyMatch(f -> f.verdict() == Verdict.FAIL)) {
        straight.add(part + " and " + other);
      }
      return;
    }
    About about = About.parts(part, other).said("beyond their joint " + part + " and " + other);
    keep(new Fouled(about, state, 0, 0, JointFindings.JOINT, met));
  }

  /** Returns what meets turned; what meets straight ahead is the joint's own finding. */
  private Optional<LockWay.Met> beyond(
      State state,
      String part,
      String other,
      SteeringAxis axis,
      List<PointMm> pins,
      double reachMm) {
    SpaceBody body = bodies.beyond(state, part, pins, reachMm);
    SpaceBody past = bodies.beyond(state, other, pins, reachMm);
    return way.meetStraight(axis, body, past)
        ? Optional.of(LockWay.Met.STRAIGHT)
        : way.past(axis, body, past, 0);
  }

  private void pastPerson(Steered steered, PersonBody person) {
    Sitting sitting = person.sitting();
    for (String name : steered.axisOf().keySet()) {
      Part part = layout.parts().get(name);
      double limit = rules.limitMm(name, sitting);
      double curves = CurveCare.mm(layout, name);
      Basis source = rules.source(name, GapRules.RIDER, rules.demandOfPeople(name));
      Set<SpaceBody> done = new HashSet<>();
      for (State state : bodies.states(sitting.occupant())) {
        if (!done.add(bodies.body(state, name))) {
          continue;
        }
        SteeringAxis axis = in(state, steered).axisOf().get(name);
        SpaceBody body = bodies.body(state, name);
        for (SpaceBody limb : person.limbsBeside(part, rules, body)) {
          About about =
              About.beside(name, sitting.occupant())
                  .said(name + " and the " + limb.name() + " of " + sitting.occupant().words());
          Optional<LockWay.Met> met =
              known.of(
                  body,
                  axis,
                  limb,
                  null,
                  limit + curves,
                  () -> way.past(axis, body, limb, limit + curves));
          met.ifPresent(m -> keep(new Fouled(about, state, limit, curves, source, m)));
          if (met.isEmpty()) {
            clear.add(about, state, body.apartMm(limb), cut -> way.nearest(axis, body, limb, cut));
          }
        }
      }
    }
  }

  private void keep(Fouled fouled) {
    About id = fouled.about().said("");
    if (fouled.worseThan(worst.get(id))) {
      worst.put(id, fouled);
    }
  }

  private Finding finding(Fouled f) {
    LockWay.Met met = f.met();
    Finding finding =
        Finding.held(
                LOCK,
                f.about(),
                f.state().condition(),
                Figures.atLeast(met.gapMm(), f.limitMm(), FigureUnit.MM),
                List.of(f.source(), HOW),
                LockWords.of(f.met(), f.about().words(), f.limitMm(), way.lockRad(), askedRad))
            .at(met.where(), met.yMm());
    return CurveCare.held(finding, f.curvesMm());
  }

  /** What ends the way to a side, or null if nothing meets on it. */
  private Fouled first(boolean left) {
    double reached = way.lockRad();
    Fouled first = null;
    for (Fouled f : worst.values()) {
      TurnSweep.First meets = f.met().to(left);
      if (meets != null && Math.abs(meets.turnRad()) < reached) {
        reached = Math.abs(meets.turnRad());
        first = f;
      }
    }
    return first;
  }

  /** How far the steering turns to a side before anything meets. */
  private Finding side(boolean left, Fouled first, Words nearest) {
    double reached = first == null ? way.lockRad() : Math.abs(first.met().to(left).turnRad());
    String side = left ? "left" : "right";
    double asked = Math.toDegrees(askedRad);
    double deg = Math.toDegrees(reached);
    Words text =
        first != null
            ? Say.format(
                "To the %s the steering turns %s, then %s meet; %s are asked.",
                side, Say.deg(deg), first.about().words(), Say.deg(asked))
            : reached < askedRad
                ? Say.format(
                    "To the %s the steering is looked at as far as %s, and %s are asked: ask for"
                        + " less lock.",
                    side, Say.deg(deg), Say.deg(asked))
                : Say.format(
                    "To the %s the steering turns the %s asked before anything meets.%s",
                    side, Say.deg(asked), nearest);
    Finding finding =
        Finding.held(
            LOCK,
            about(first, side),
            first == null ? Optional.empty() : first.state().condition(),
            Figures.atLeast(deg, asked, FigureUnit.DEG),
            List.of(Sources.of(layout, Demands.Key.LOCK), HOW),
            text);
    if (!straight.isEmpty()) {
      return unknown(finding);
    }
    if (first == null) {
      return finding;
    }
    TurnSweep.First meets = first.met().to(left);
    return finding.at(meets.where(), meets.yMm());
  }

  /** What is in each other straight ahead may have room turned, or less of it: nobody knows. */
  private Finding unknown(Finding side) {
    Finding f =
        side.withText(
            Words.of(
                side.words(),
                " But that says nothing of "
                    + String.join(", ", straight)
                    + ", which are in each"
                    + " other beyond their joint straight ahead already: part them first."));
    return f.verdict() == Verdict.FAIL ? f : f.withVerdict(Verdict.CAUTION);
  }

  /** What ends the way to a side is what that is about. */
  private static About about(Fouled first, String side) {
    String words = "steering to the " + side;
    return first == null ? About.thing(words, side) : first.about().named(side).said(words);
  }
}
