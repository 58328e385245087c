package org.longlow.constraints.check.road;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.stand.OnFeet;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** The machine on the two feet of its centre stand: which wheel is up, what tips it, what lifts. */
final class CentreStand {

  /** Air under the wheel that is off the road, for a road that is not even, mm; a judgement. */
  static final double LEAST_AIR_MM = 5;

  private static final Basis STATICS =
      Basis.model("statics on one wheel and two feet, the other wheel hanging from its spring");

  private static final Basis AIR = Basis.judgement("a road is not even");

  private static final Basis HEAVE =
      Basis.model(
          "levers about the feet, which do not slide; the same share of the weight all the way");

  /** Places of the legs on their way that the force is looked at. */
  private static final int STEPS = 50;

  private final FindingKind kind;
  private final Layout layout;
  private final Standing parked;
  private final StandPart stand;

  CentreStand(FindingKind kind, Layout layout, Standing parked, StandPart stand) {
    this.kind = kind;
    this.layout = layout;
    this.parked = parked;
    this.stand = stand;
  }

  List<Finding> all(Wheels wheels) {
    Optional<OnFeet> stood = OnFeet.of(wheels, parked, stand);
    if (stood.isEmpty()) {
      return List.of(
          Finding.note(
                  kind,
                  About.parts(stand.name()),
                  Verdict.FAIL,
                  STATICS,
                  Words.of(
                      "On the feet of "
                          + stand.name()
                          + " and one wheel the machine stands with"
                          + " neither wheel up: set the feet between the wheels, nearly under the"
                          + " centre of mass."))
              .in(parked.condition())
              .at(parked.places().pin(stand.foot())));
    }
    OnFeet on = stood.get();
    return List.of(tip(on), air(on), heave(on));
  }

  private PointMm pin(OnFeet on, String name) {
    return on.ground().toRoad(parked.places().pin(name));
  }

  private double past(OnFeet on) {
    return on.pastUprightRad(pin(on, stand.stowed()).x());
  }

  /** Which way it rolls off its feet: towards where they are stowed the legs swing back. */
  private boolean rollsForward(OnFeet on) {
    return pin(on, stand.stowed()).x() < on.pivot().x();
  }

  private Finding tip(OnFeet on) {
    ParkedStability s = on.statics();
    double rolls = Math.toDegrees(Math.atan(on.feetShare() * Math.tan(past(on))));
    double left = Math.toDegrees(s.tipOverFrontEdgeRad());
    double right = Math.toDegrees(s.tipOverWheelsRad());
    double ends = Math.toDegrees(s.tipOverRearEdgeRad());
    double least = Math.min(Math.min(left, right), Math.min(ends, rolls));
    double limit = Math.toDegrees(parked.places().value(layout.demands().limit(Demands.Key.TIP)));
    String cure =
        least >= limit
            ? ""
            : least == rolls
                ? " Let its legs swing farther past upright, to a stop."
                : least == ends
                    ? " Set its feet farther "
                        + (on.off() == Part.End.REAR ? "back" : "forward")
                        + "."
                    : " Set its feet farther apart.";
    return finding(
        Figures.atLeast(least, limit, FigureUnit.DEG),
        About.parts(stand.name()),
        List.of(STATICS, Sources.of(layout, Demands.Key.TIP)),
        Say.format(
            "On %s the %s wheel is up and the feet carry %s; it tips to the left at %s, to the"
                + " right at %s, %s over its feet at %s, and rolls %s off them at %s; %s are"
                + " asked.%s",
            stand.name(),
            wheel(on),
            Say.newton(on.feetShare() * weightN()),
            Say.deg(left),
            Say.deg(right),
            on.off() == Part.End.REAR ? "back" : "forward",
            Say.deg(ends),
            rollsForward(on) ? "forward" : "back",
            Say.deg(rolls),
            Say.deg(limit),
            cure));
  }

  private double weightN() {
    return parked.load().axles().weightN();
  }

  private static String wheel(OnFeet on) {
    return on.off() == Part.End.REAR ? "rear" : "front";
  }

  private Finding air(OnFeet on) {
    return finding(
        Figures.atLeast(on.offMm(), LEAST_AIR_MM, FigureUnit.MM),
        About.parts(stand.name()).named(stand.name(), "wheel"),
        List.of(STATICS, AIR),
        Words.of(
            "On " + stand.name() + " the " + wheel(on) + " wheel, its spring let out, is ",
            on.offMm() < 0
                ? Words.of("still on the road, pressed in by ", Say.mm(-on.offMm()))
                : Words.of(Say.mm(on.offMm()), " off the road"),
            on.offMm() < LEAST_AIR_MM
                ? "; draw its feet lower where it is parked, with longer legs."
                : "."));
  }

  /** Pushed by a foot at the lever, or pulled by hands level at the height of the hinge. */
  private Finding heave(OnFeet on) {
    double leg = on.pivot().distance(on.foot());
    double before = parked.ground().heightMm(parked.places().pin(stand.pivot()));
    double from = Math.acos(Math.max(-1, Math.min(1, before / leg)));
    double to = Math.min(0, past(on));
    double heaved = on.feetShare() * weightN();
    double most = 0;
    for (int i = 0; i <= STEPS; i++) {
      double leans = from + (-to - from) * i / STEPS;
      double arm = stand.lever().isPresent() ? treadMm(on, leans) : leg * Math.cos(leans);
      most = arm > 0 ? Math.max(most, heaved * leg * Math.sin(leans) / arm) : Double.NaN;
      if (Double.isNaN(most)) {
        break;
      }
    }
    About about = About.parts(stand.name()).named(stand.name(), "heave");
    double limit = parked.places().value(layout.demands().limit(Demands.Key.HEAVE));
    if (Double.isNaN(most)) {
      return Finding.note(
              kind,
              about,
              Verdict.FAIL,
              HEAVE,
              Words.of(
                  "A foot on "
                      + stand.lever().orElse(stand.name())
                      + " does not lift the machine:"
                      + " set the lever to the side of the feet that the legs are stowed at."))
          .in(parked.condition())
          .at(parked.places().pin(stand.foot()));
    }
    double risesMm = (past(on) > 0 ? leg : on.pivot().z()) - before;
    return finding(
        Figures.atMost(most, limit, FigureUnit.NEWTON),
        about,
        List.of(HEAVE, Sources.of(layout, Demands.Key.HEAVE)),
        Words.of(
            Say.format("To heave the machine onto %s, %s ", stand.name(), Say.newton(heaved)),
            Words.of(
                "rise by ",
                Say.mm(Math.max(0, risesMm)),
                stand.lever().isPresent() ? "; a foot on the lever presses " : "; hands pull "),
            Say.format("with up to %s, %s are asked at most", Say.newton(most), Say.newton(limit)),
            most > limit
                ? stand.lever().isPresent()
                    ? ": make the lever longer, or the legs only as long as they must be."
                    : ": give it a lever for a foot, or make the legs shorter."
                : "."));
  }

  /** How far the lever is behind the feet while the legs still lean so far before upright, mm. */
  private double treadMm(OnFeet on, double leansRad) {
    PointMm lever = pin(on, stand.lever().orElseThrow()).minus(on.foot());
    double side = rollsForward(on) ? 1 : -1;
    // legs stowed behind swing back clockwise seen from the right, with the pivot forward
    PointMm then = lever.turned(-side * (leansRad + past(on)));
    return -side * then.x();
  }

  private Finding finding(Figures figures, About about, List<Basis> basis, Words words) {
    return Finding.held(kind, about, Optional.of(parked.condition()), figures, basis, words)
        .at(parked.places().pin(stand.foot()));
  }
}
