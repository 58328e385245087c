package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
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
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Hubs;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Runs;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.words.Names;
import org.longlow.rider.words.Words;

/**
 * What a chain or belt passes on its way, in space: all straight stretches in every stance against
 * the tyre, the arm and whatever else is in the way. What drives it, and what else hangs on its
 * wheels' pins, carries its wheels and is left out.
 */
public final class RunFindings {

  /** How near the run of a chain or belt comes to what stands beside it. */
  public static final FindingKind RUN =
      new FindingKind("run", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Beside a tyre, which is broader than its size says, grows and leans on its bearings, mm. */
  public static final double BESIDE_TYRE_MM = 5;

  /** How far beyond its limit something is still named as the nearest, mm. */
  private static final double LOOK_MM = 30;

  private static final Basis TYRE =
      Basis.practice("5 mm between a tyre and what runs beside it is common practice; no source");

  /** Most edits leave a chain where it is, and so what it passes: gaps know bodies by identity. */
  private static final Memo<Stretches, Solid> BODIES = new Memo<>(32, Stretches::solid);

  /**
   * The nearest that it comes to something.
   *
   * @param tyre whether that is one
   */
  private record Near(String other, boolean tyre, Gap gap, double limitMm, Standing standing) {

    double marginMm() {
      return gap.gapMm() - limitMm;
    }
  }

  private RunFindings() {}

  /**
   * @param sittings whoever sits on it, as drawn
   */
  public static List<Finding> of(Placed placed, List<Sitting> sittings, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (!standings.isEmpty()) {
      Runs.of(placed.layout())
          .forEach(run -> of(findings, placed, run.getKey(), run.getValue(), sittings, standings));
    }
    return findings;
  }

  private static void of(
      List<Finding> findings,
      Placed placed,
      String name,
      Tie tie,
      List<Sitting> sittings,
      List<Standing> standings) {
    Layout layout = placed.layout();
    Optional<Finding> nested =
        standings.stream().flatMap(s -> nested(name, tie, s).stream()).findFirst();
    if (nested.isPresent()) {
      findings.add(nested.get());
      return;
    }
    Places drawn = standings.get(0).places();
    Wrap wrap = Wrap.of(tie, placed, standings);
    findings.add(wrap.finding(name));
    InLine.radii(findings, layout, name, tie, drawn);
    if (wrap.missed().isPresent()) {
      findings.add(
          Finding.note(
              RUN,
              About.thing(name, name),
              Verdict.NOT_APPLICABLE,
              Wrap.HOW,
              Words.of(
                  "What "
                      + name
                      + " passes is not known while it does not go round its idler about "
                      + wrap.missed().get().pin()
                      + ".")));
      return;
    }
    Optional<Interval> said = Runs.across(tie, drawn);
    if (said.isEmpty()) {
      findings.add(
          Finding.note(
              RUN,
              About.thing(name, name),
              Verdict.NOT_APPLICABLE,
              Basis.model("this layout"),
              Words.of(
                  "What "
                      + name
                      + " passes at its sides is not known: give \"across\" and \"width\" of"
                      + " it.")));
      return;
    }
    Interval across = said.get();
    findings.add(InLine.of(layout, name, tie, drawn));
    double gap = drawn.value(layout.demands().limit(Demands.Key.GAP));
    Near worst = null;
    for (Standing s : standings) {
      if (s.kind() == Stance.Kind.OPEN) {
        continue;
      }
      Stretches way = Stretches.of(name, tie, s.places(), across);
      Envelope reach = way.within(Math.max(gap, BESIDE_TYRE_MM) + LOOK_MM);
      Solid body = BODIES.of(way);
      for (PartShape shape : s.shapes().values()) {
        if (!reach.intersects(shape.outline().getEnvelopeInternal())) {
          continue; // most are far off
        }
        boolean wheel = shape.part().traits().duty() == Duty.WHEEL;
        if (!wheel && carries(shape.part(), tie)) {
          continue;
        }
        double limit = wheel ? BESIDE_TYRE_MM : gap;
        // what is farther off than the worst so far, each by its own limit, is of no interest
        double cut = limit + (worst == null ? LOOK_MM : worst.marginMm());
        for (Gap found :
            Gaps.between(List.of(body), List.of(Solid.of(shape)), limit + LOOK_MM, (a, b) -> cut)) {
          worst = new Near(shape.part().name(), wheel, found, limit, s);
        }
        if (shape.part() instanceof WheelPart hub) {
          worst = besideHub(hub, s, body, gap, worst);
        }
      }
    }
    findings.add(run(layout, name, worst));
    findings.addAll(
        RunBeside.people(
            layout,
            name,
            RUN,
            s -> BODIES.of(Stretches.of(name, tie, s.places(), across)),
            sittings,
            standings));
  }

  /** What turns about an axle is in its way like a part; its own sprocket is not. */
  private static Near besideHub(
      WheelPart wheel, Standing s, Solid body, double limitMm, Near known) {
    Near worst = known;
    for (HubBody in : Hubs.turning(wheel)) {
      if (in.what() == HubBody.What.SPROCKET) {
        continue;
      }
      String name = "the " + Names.word(in.what()) + " of " + wheel.name();
      Places places = s.places();
      double radius = places.value(in.radius());
      Prism round = Hubs.of(places.pin(wheel.axle()), radius, Hubs.across(in, places));
      Solid hub = new Solid(name, List.of(round));
      double cut = limitMm + (worst == null ? LOOK_MM : worst.marginMm());
      for (Gap found :
          Gaps.between(List.of(body), List.of(hub), limitMm + LOOK_MM, (a, b) -> cut)) {
        worst = new Near(name, false, found, limitMm, s);
      }
    }
    return worst;
  }

  /** Two of its wheels of which one lies in the other, so that nothing can run between them. */
  private static Optional<Finding> nested(String name, Tie tie, Standing standing) {
    return Runs.of(tie, standing.places())
        .nested()
        .map(
            n -> {
              String one = tie.pins().get(n.first());
              String other = tie.pins().get(n.second());
              String which =
                  one.equals(other)
                      ? "the two wheels about " + one
                      : "the wheels about " + one + " and " + other;
              return new Finding(
                      RUN,
                      About.thing(name, name),
                      Optional.of(standing.condition()),
                      Verdict.FAIL,
                      Figures.NONE,
                      List.of(Wrap.HOW),
                      Words.of(
                          name + " cannot run between " + which + ": their centres are ",
                          Say.mm(n.apartMm()),
                          " apart, and it takes more than ",
                          Say.mm(n.needMm()),
                          " for it to leave the one and meet the other. Move one of them, or"
                              + " leave it out."))
                  .at(standing.places().pin(one));
            });
  }

  /** Whether a part holds one of its wheels; an arm has the run at its side all the same. */
  private static boolean carries(Part part, Tie tie) {
    Duty duty = part.traits().duty();
    return duty == Duty.DRIVE
        || duty != Duty.CARRIER && part.pins().stream().anyMatch(tie.pins()::contains);
  }

  /** All stretches where they are in a stance, and how far they reach across. */
  private record Stretches(String name, List<BeltRun.Straight> all, Interval across) {

    static Stretches of(String name, Tie tie, Places places, Interval across) {
      return new Stretches(name, Runs.of(tie, places).straights(), across);
    }

    /** Returns a box round all that is so near. */
    Envelope within(double mm) {
      Envelope box = new Envelope();
      for (BeltRun.Straight run : all) {
        box.expandToInclude(run.from().x(), run.from().z());
        box.expandToInclude(run.to().x(), run.to().z());
      }
      box.expandBy(Runs.HALF_HIGH_MM + mm);
      return box;
    }

    Solid solid() {
      return new Solid(
          name,
          all.stream().map(run -> new Prism(Runs.outline(run.from(), run.to()), across)).toList());
    }
  }

  private static Finding run(Layout layout, String name, Near worst) {
    if (worst == null) {
      return Finding.note(
          RUN,
          About.thing(name, name),
          Verdict.PASS,
          Wrap.HOW,
          Words.of(name + " has room beside all parts along its run, in every stance."));
    }
    boolean tyre = worst.tyre();
    double mm = worst.gap().gapMm();
    boolean less = worst.marginMm() < 0;
    String other = worst.other();
    Words text =
        mm < 0
            ? Words.of(name + " runs into " + other)
            : Words.of(name + " passes " + other + " at ", Say.mm(mm));
    Words remedy =
        !less
            ? Words.NONE
            : Words.of(
                "; ",
                Say.mm(worst.limitMm()),
                tyre
                    ? " are asked beside a tyre: move both sprockets out across, or fit a narrower"
                        + " tyre"
                    : " are asked: move both sprockets across, change their size, or draw "
                        + other
                        + " clear of it");
    return Finding.held(
            RUN,
            About.thing(name, name),
            Optional.of(worst.standing().condition()),
            Figures.atLeast(mm, worst.limitMm(), FigureUnit.MM),
            List.of(Wrap.HOW, tyre ? TYRE : Sources.of(layout, Demands.Key.GAP)),
            Words.of(text, remedy, "."))
        .at(worst.gap().where());
  }
}
