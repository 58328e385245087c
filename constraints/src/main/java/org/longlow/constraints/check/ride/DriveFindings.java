package org.longlow.constraints.check.ride;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.machine.ride.AntiSquat;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Runs;
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

  /** A sprung idler takes up at least so much length for each mm it goes, or none; judgement. */
  private static final double LEAST_TAKEN = 0.1;

  private static final int STEPS = 24;

  private static final Basis STATICS =
      Basis.model(
          "statics of arm, wheel and the pull of the upper run, the lower one slack; no damping");

  private static final Basis SHARE =
      Basis.judgement(
          "that chain pull should bear about the load which pulling away moves to the rear, half to"
              + " twice of it, is judgement");

  private static final Basis ARCS =
      Basis.model("arcs and tangents over the pitch circles along the travel");

  private static final Basis PLAY =
      Basis.practice("free play of 20 to 40 mm is common practice; no source");

  /** A chain from the frame to the rear axle. */
  private record Run(String name, Tie tie, String shaft, double shaftMm, double wheelMm) {}

  private DriveFindings() {}

  public static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (wheels.arm() == null) {
      return findings;
    }
    for (Map.Entry<String, Tie> tie : Runs.of(layout)) {
      Optional<Run> run = run(tie.getKey(), tie.getValue(), wheels);
      if (run.isPresent()) {
        findings.add(slack(run.get(), wheels));
        squat(run.get(), wheels, standings).ifPresent(findings::add);
      }
    }
    return findings;
  }

  private static Optional<Run> run(String name, Tie tie, Wheels wheels) {
    List<String> pins = tie.pins();
    int axle = pins.indexOf(wheels.rear().axle());
    Optional<String> shaft =
        Runs.sprockets(tie).stream()
            .filter(p -> !p.equals(wheels.rear().axle()) && !wheels.carries(p))
            .findFirst();
    Places drawn = wheels.drawn();
    return shaft
        .filter(s -> axle >= 0)
        .map(
            s ->
                new Run(
                    name,
                    tie,
                    s,
                    drawn.value(tie.radii().get(pins.indexOf(s))),
                    drawn.value(tie.radii().get(axle))));
  }

  /** Whether what pulls, the upper of its stretches at the wheel, comes straight off the shaft. */
  private static boolean pullsStraight(Run run, Wheels wheels) {
    List<String> pins = run.tie.pins();
    int axle = pins.indexOf(wheels.rear().axle());
    List<BeltRun.Straight> all = Runs.of(run.tie, wheels.drawn()).straights();
    int before = (axle + pins.size() - 1) % pins.size();
    boolean leaves = all.get(axle).from().z() >= all.get(before).to().z();
    return pins.get(leaves ? (axle + 1) % pins.size() : before).equals(run.shaft);
  }

  private static Optional<Finding> squat(Run run, Wheels wheels, List<Standing> standings) {
    if (!pullsStraight(run, wheels)) {
      return Optional.of(
          Finding.note(
              SQUAT,
              About.thing(run.name, run.name),
              Verdict.NOT_APPLICABLE,
              STATICS,
              Words.of(
                  "What the pull of "
                      + run.name
                      + " does to the rear springs is worked out where its upper stretch goes"
                      + " straight to the wheel, not over an idler.")));
    }
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

  private static BeltRun belt(Run run, Wheels wheels, double travelMm) {
    return Runs.of(run.tie, wheels.drawn(), pin -> wheels.pin(pin, 0, travelMm));
  }

  /** Returns an idler that it does not touch. */
  private static Optional<String> missed(Run run, BeltRun belt) {
    List<Double> wraps = belt.wrapsRad();
    return run.tie.run().idlers().stream()
        .filter(p -> !BeltRun.touches(wraps.get(run.tie.pins().indexOf(p))))
        .findFirst();
  }

  private static Finding left(Run run, String idler) {
    return Finding.note(
        SLACK,
        About.thing(run.name, run.name),
        Verdict.CAUTION,
        ARCS,
        Words.of(
            run.name
                + " leaves its idler about "
                + idler
                + " somewhere along the travel, so its slack cannot be told: press that farther"
                + " in."));
  }

  /** How far an idler on a spring goes to take up what travel leaves over. */
  private static Finding taken(Run run, BeltRun loose, double spare) {
    String pin = run.tie.run().sprung().orElseThrow();
    double takes = loose.gainPerMm(run.tie.pins().indexOf(pin));
    boolean little = takes < LEAST_TAKEN;
    return new Finding(
            SLACK,
            About.thing(run.name, run.name),
            Optional.empty(),
            little && spare >= LEAST_SAID_MM ? Verdict.CAUTION : Verdict.PASS,
            little ? Figures.NONE : Figures.only(spare / takes, FigureUnit.MM),
            List.of(ARCS, Basis.model("how the length grows with the idler, to first order")),
            little
                ? Words.of(
                    run.name
                        + " hardly bends round its idler about "
                        + pin
                        + ", which so takes up next to none of the ",
                    Say.mm(spare),
                    " that travel leaves over: press it farther in.")
                : Words.of(
                    "Along the travel " + run.name + " gains ",
                    Say.mm(spare),
                    " of length; its idler about " + pin + " goes about ",
                    Say.mm(spare / takes),
                    " to take that up: give it so much way, and its spring with it."))
        .at(loose.wheels().get(run.tie.pins().indexOf(pin)).at());
  }

  /** How long the chain would have to be along the travel, against as drawn. */
  private static Finding slack(Run run, Wheels wheels) {
    Suspension rear = wheels.rearSuspension();
    PointMm shaft = wheels.drawn().pin(run.shaft);
    double longest = Double.NEGATIVE_INFINITY;
    double shortest = Double.POSITIVE_INFINITY;
    double atLongest = 0;
    BeltRun loose = null;
    for (int k = 0; k <= STEPS; k++) {
      double travel = -rear.droopMm() + k * (rear.droopMm() + rear.bumpMm()) / STEPS;
      BeltRun belt = belt(run, wheels, travel);
      Optional<String> missed = missed(run, belt);
      if (missed.isPresent()) {
        return left(run, missed.get());
      }
      double length = belt.lengthMm();
      if (length > longest) {
        longest = length;
        atLongest = rear.path().axle(travel).z();
      }
      if (length < shortest) {
        shortest = length;
        loose = belt;
      }
    }
    double spare = longest - shortest;
    if (run.tie.run().sprung().isPresent()) {
      return taken(run, loose, spare);
    }
    double stretch =
        loose.straights().stream().mapToDouble(BeltRun.Straight::lengthMm).max().orElseThrow();
    double play = BeltRun.freePlayMm(stretch, spare);
    double rise = atLongest - wheels.drawn().pin(wheels.rear().axle()).z();
    Words where =
        Math.abs(rise) < 0.5
            ? Words.of("as drawn")
            : Words.of(
                "with the rear wheel ",
                Say.wholeMm(Math.abs(rise)),
                rise > 0 ? " up from there as drawn" : " down from there as drawn");
    double tight = longest - belt(run, wheels, 0).lengthMm();
    boolean much = play > MOST_PLAY_MM;
    boolean binds = tight > MOST_TIGHT_MM;
    return new Finding(
            SLACK,
            About.thing(run.name, run.name),
            Optional.empty(),
            much || binds ? Verdict.CAUTION : Verdict.PASS,
            Figures.atMost(play, MOST_PLAY_MM, FigureUnit.MM),
            List.of(ARCS, PLAY),
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
                        ? "; bring the shaft nearer to the pivot of the arm, or tighten it by an"
                            + " idler"
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
