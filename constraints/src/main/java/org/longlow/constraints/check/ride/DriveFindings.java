package org.longlow.constraints.check.ride;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.machine.ride.AntiSquat;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * What the chain does to the rear springs when the machine pulls away, and what they do to the
 * chain. A chain is a tie of belt length with the rear axle at one end and what stays with the
 * frame at the other.
 */
public final class DriveFindings {

  /** How the rear end answers drive. */
  public static final FindingKind SQUAT =
      new FindingKind("squat", FindingGroup.SAG, Rests.ON_MASSES);

  /** What travel asks of the chain. */
  public static final FindingKind SLACK =
      new FindingKind("slack", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Of the load that pulling away moves to the rear, so much is borne by the chain; judgement. */
  private static final double LEAST_SHARE = 0.5;

  private static final double MOST_SHARE = 2;

  /** Up and down in the middle of the lower run, mm: 20 to 40 are common practice, no source. */
  private static final double MOST_PLAY_MM = 40;

  /** A chain gives so much by itself where it is taut, mm; judgement. */
  private static final double MOST_TIGHT_MM = 0.5;

  /** What changes the length by less is not said, mm. */
  private static final double LEAST_SAID_MM = 0.05;

  private static final int STEPS = 24;

  private static final Basis STATICS =
      Basis.model(
          "statics of arm, wheel and the pull of the upper run, the lower one slack; no damping");

  private static final Basis SHARE =
      Basis.judgement(
          "that chain pull should bear about the load which pulling away moves to the rear, half to"
              + " twice of it, is judgement");

  private static final Basis PLAY =
      Basis.practice("free play of 20 to 40 mm is common practice; no source");

  /** A chain from the frame to the rear axle. */
  private record Run(String name, String shaft, double shaftMm, double wheelMm) {}

  private DriveFindings() {}

  public static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (wheels.arm() == null) {
      return findings;
    }
    layout
        .ties()
        .forEach(
            (name, tie) ->
                run(name, tie, wheels)
                    .ifPresent(
                        run -> {
                          findings.add(slack(run, wheels));
                          squat(run, wheels, standings).ifPresent(findings::add);
                        }));
    return findings;
  }

  private static Optional<Run> run(String name, Tie tie, Wheels wheels) {
    if (tie.kind() != TieKind.BELT_LENGTH) {
      return Optional.empty();
    }
    int axle = tie.pins().indexOf(wheels.rear().axle());
    if (axle < 0) {
      return Optional.empty();
    }
    String shaft = tie.pins().get(1 - axle);
    Places drawn = wheels.drawn();
    return wheels.carries(shaft)
        ? Optional.empty()
        : Optional.of(
            new Run(
                name,
                shaft,
                drawn.value(tie.radii().get(1 - axle)),
                drawn.value(tie.radii().get(axle))));
  }

  private static Optional<Finding> squat(Run run, Wheels wheels, List<Standing> standings) {
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN && s.load() != null)
        .filter(s -> s.load().axles().total().at().z() > 0)
        .max(Comparator.comparingDouble(s -> Math.abs(share(run, wheels, s) - 1)))
        .map(s -> squat(run, wheels, s));
  }

  /** Returns the share of the moved load that the chain bears at rest. */
  private static double share(Run run, Wheels wheels, Standing s) {
    PointMm axle = s.ground().toRoad(s.places().pin(wheels.rear().axle()));
    return AntiSquat.ofChain(
                PointMm.ORIGIN,
                axle,
                s.ground().toRoad(s.places().pin(wheels.arm().pivot())),
                s.ground().toRoad(s.places().pin(run.shaft)),
                run.shaftMm,
                run.wheelMm,
                s.load().axles().total().at().z(),
                s.ground().wheelbaseMm())
            .antiSquatPercent()
        / 100;
  }

  private static Finding squat(Run run, Wheels wheels, Standing s) {
    double share = share(run, wheels, s);
    Figures figures = Figures.within(share, LEAST_SHARE, MOST_SHARE, FigureUnit.SHARE);
    String answer =
        share < LEAST_SHARE
            ? "; the rear sinks as it pulls: a pivot farther up, or a smaller sprocket at the wheel"
            : share > MOST_SHARE
                ? "; the rear is pushed up hard as it pulls: a pivot farther down, or a larger"
                    + " sprocket at the wheel"
                : share < 1 ? "; the rear sinks" : "; the rear rises";
    return new Finding(
            SQUAT,
            About.thing(run.name, run.name),
            Optional.of(s.condition()),
            figures.margin() < 0 ? Verdict.CAUTION : Verdict.PASS,
            figures,
            List.of(STATICS, SHARE),
            Words.of(
                "With " + s.condition().people() + " pulling away, " + run.name + " and arm bear ",
                Say.percent(share),
                " of the load that moves to the rear" + answer + "."))
        .at(wheels.drawn().pin(wheels.arm().pivot()));
  }

  /** How long the chain would have to be along the travel, against as drawn. */
  private static Finding slack(Run run, Wheels wheels) {
    BeltRun belt = new BeltRun(run.shaftMm, run.wheelMm);
    Suspension rear = wheels.rearSuspension();
    PointMm shaft = wheels.drawn().pin(run.shaft);
    double longest = Double.NEGATIVE_INFINITY;
    double shortest = Double.POSITIVE_INFINITY;
    double atLongest = 0;
    double atShortest = 0;
    for (int k = 0; k <= STEPS; k++) {
      double travel = -rear.droopMm() + k * (rear.droopMm() + rear.bumpMm()) / STEPS;
      PointMm axle = rear.path().axle(travel);
      double length = belt.lengthMm(shaft.distance(axle));
      if (length > longest) {
        longest = length;
        atLongest = axle.z();
      }
      if (length < shortest) {
        shortest = length;
        atShortest = shaft.distance(axle);
      }
    }
    double spare = longest - shortest;
    double play = belt.freePlayMm(atShortest, spare);
    double rise = atLongest - wheels.drawn().pin(wheels.rear().axle()).z();
    Words where =
        Math.abs(rise) < 0.5
            ? Words.of("as drawn")
            : Words.of(
                "with the rear wheel ",
                Say.wholeMm(Math.abs(rise)),
                rise > 0 ? " up from there as drawn" : " down from there as drawn");
    double tight =
        longest - belt.lengthMm(shaft.distance(wheels.drawn().pin(wheels.rear().axle())));
    boolean much = play > MOST_PLAY_MM;
    boolean binds = tight > MOST_TIGHT_MM;
    return new Finding(
            SLACK,
            About.thing(run.name, run.name),
            Optional.empty(),
            much || binds ? Verdict.CAUTION : Verdict.PASS,
            Figures.atMost(play, MOST_PLAY_MM, FigureUnit.MM),
            List.of(Basis.model("arcs and tangents over the pitch circles along the travel"), PLAY),
            spare < LEAST_SAID_MM
                ? Words.of(run.name + " is equally tight along all of the rear wheel's travel.")
                : Words.of(
                    run.name + " is tightest ",
                    where,
                    ": set its slack there. Along the travel it then gains ",
                    Say.mm(spare),
                    " of length, up to ",
                    Say.wholeMm(play),
                    " up and down in its middle",
                    much
                        ? "; bring the shaft nearer to the pivot of the arm, or guide the lower run"
                        : "",
                    binds
                        ? Words.of(
                            "; taut as drawn it is ",
                            Words.atLeast(tight),
                            " short for that: draw it with so much to spare")
                        : Words.NONE,
                    "."))
        .at(shaft);
  }
}
