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
import org.longlow.constraints.check.road.Wrap;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.machine.chassis.SprungIdler;
import org.longlow.constraints.machine.ride.AntiSquat;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.place.Placed;
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

  /** What travel asks of the chain. */
  public static final FindingKind SLACK =
      new FindingKind("slack", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Up and down in the middle of the lower run, mm: 20 to 40 are common practice, no source. */
  private static final double MOST_PLAY_MM = 40;

  /** A chain gives so much by itself where it is taut, mm; judgement. */
  private static final double MOST_TIGHT_MM = 0.5;

  /** What changes the length by less is not said, mm. */
  private static final double LEAST_SAID_MM = 0.05;

  private static final int STEPS = 24;

  /** So much larger a sprocket shows which way the share goes. */
  private static final double SLIGHTLY = 1.01;

  private static final Basis ARCS =
      Basis.model("arcs and tangents over the pitch circles along the travel");

  private static final Basis PLAY =
      Basis.practice("free play of 20 to 40 mm is common practice; no source");

  /** A chain from the frame to the rear axle. */
  private record Run(String name, Tie tie, String shaft, double shaftMm, double wheelMm) {}

  private DriveFindings() {}

  public static List<Finding> of(Placed placed, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (wheels.arm() == null || standings.isEmpty()) {
      return findings;
    }
    boolean any = false;
    for (Map.Entry<String, Tie> tie : Runs.of(placed.layout())) {
      Optional<Run> run = run(tie.getKey(), tie.getValue(), wheels);
      if (run.isEmpty()) {
        continue;
      }
      any = true;
      Optional<Wrap.Missed> missed = Wrap.of(tie.getValue(), placed, standings).missed();
      if (missed.isPresent()) {
        findings.add(left(run.get(), missed.get().pin()));
        findings.add(
            noPull(
                run.get(),
                "not known while it does not go round its idler about " + missed.get().pin()));
      } else {
        findings.add(slack(run.get(), wheels));
        squat(run.get(), wheels, standings).ifPresent(findings::add);
      }
    }
    if (!any) {
      HubDrive.of(placed.layout(), wheels, standings).ifPresent(findings::add);
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
          noPull(
              run,
              "worked out where its upper stretch goes straight to the wheel, not over an idler"));
    }
    return standings.stream()
        .filter(PullingAway::isLaden)
        .max(Comparator.comparingDouble(s -> Math.abs(share(run, wheels, s) - 1)))
        .map(s -> squat(run, wheels, s));
  }

  /** Returns the share of the moved load that the chain bears at rest. */
  private static double share(Run run, Wheels wheels, Standing s) {
    return share(run, wheels, s, run.wheelMm);
  }

  private static double share(Run run, Wheels wheels, Standing s, double wheelMm) {
    PointMm axle = s.ground().toRoad(s.places().pin(wheels.rear().axle()));
    return AntiSquat.ofChain(
                PointMm.ORIGIN,
                axle,
                s.ground().toRoad(s.places().pin(wheels.arm().pivot())),
                s.ground().toRoad(s.places().pin(run.shaft)),
                run.shaftMm,
                wheelMm,
                s.load().axles().total().at().z(),
                s.ground().wheelbaseMm())
            .antiSquatPercent()
        / 100;
  }

  private static Finding squat(Run run, Wheels wheels, Standing s) {
    double share = share(run, wheels, s);
    String answer =
        share < PullingAway.LEAST_SHARE
            ? "; the rear sinks as it pulls: a pivot farther up, or a "
                + sprocket(run, wheels, s, true)
            : share > PullingAway.MOST_SHARE
                ? "; the rear is pushed up hard as it pulls: a pivot farther down, or a "
                    + sprocket(run, wheels, s, false)
                : share < 1 ? "; the rear sinks" : "; the rear rises";
    String bear = run.name + " and arm bear ";
    return PullingAway.said(About.thing(run.name, run.name), s, share, bear, answer, wheels);
  }

  /** Which sprocket at the wheel has the chain bear more or less: that hangs on the pivot. */
  private static String sprocket(Run run, Wheels wheels, Standing s, boolean more) {
    double larger = share(run, wheels, s, run.wheelMm * SLIGHTLY);
    return (larger > share(run, wheels, s) == more ? "larger" : "smaller")
        + " sprocket at the wheel";
  }

  private static BeltRun belt(Run run, Wheels wheels, double travelMm) {
    return Runs.of(run.tie, wheels.drawn(), pin -> wheels.pin(pin, 0, travelMm));
  }

  /**
   * What its pull does cannot be told.
   *
   * @param why what follows on "what it does is"
   */
  private static Finding noPull(Run run, String why) {
    return Finding.note(
        PullingAway.SQUAT,
        About.thing(run.name, run.name),
        Verdict.NOT_APPLICABLE,
        PullingAway.STATICS,
        Words.of("What the pull of " + run.name + " does to the rear springs is " + why + "."));
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

  /** How far an idler on a spring goes to keep the run as long as it is drawn. */
  private static Finding taken(Run run, Wheels wheels, String pin) {
    int idler = run.tie.pins().indexOf(pin);
    Suspension rear = wheels.rearSuspension();
    BeltRun drawn = belt(run, wheels, 0);
    PointMm at = wheels.drawn().pin(pin);
    PointMm press = drawn.pressing(idler);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double loose = 0;
    double tight = 0;
    double rests = 0;
    for (int k = 0; k <= STEPS; k++) {
      double travel = -rear.droopMm() + k * (rear.droopMm() + rear.bumpMm()) / STEPS;
      PointMm way =
          wheels.carries(pin)
              ? rear.path().carried(at.plus(press), travel).minus(rear.path().carried(at, travel))
              : press;
      SprungIdler sprung = new SprungIdler(belt(run, wheels, travel), idler, way);
      SprungIdler.Rest rest = sprung.rest(drawn.lengthMm(), rests);
      Optional<String> missed =
          Runs.missed(run.tie, sprung.at(rest.atMm())).filter(p -> !p.equals(pin));
      if (missed.isPresent()) {
        return left(run, missed.get());
      }
      rests = rest.atMm();
      low = Math.min(low, rests);
      high = Math.max(high, rests);
      loose = Math.max(loose, rest.looseMm());
      tight = Math.max(tight, -rest.looseMm());
    }
    boolean hangs = loose >= LEAST_SAID_MM;
    boolean binds = tight > MOST_TIGHT_MM;
    return new Finding(
            SLACK,
            About.thing(run.name, run.name),
            Optional.empty(),
            hangs || binds ? Verdict.CAUTION : Verdict.PASS,
            Figures.only(high - low, FigureUnit.MM),
            List.of(ARCS, Basis.model("the idler on a straight way, square to the run as drawn")),
            Words.of(
                "Along the travel the idler of " + run.name + " about " + pin + " goes ",
                Say.mm(high - low),
                " to keep it taut, of that ",
                Say.mm(Math.max(0, high)),
                " farther in than drawn: give it so much way, and its spring with it",
                hangs
                    ? Words.of(
                        "; ",
                        Say.mm(loose),
                        " of the length it cannot take up before it meets what is beside it: set it"
                            + " where it has more room")
                    : Words.NONE,
                binds
                    ? Words.of(
                        "; " + run.name + " leaves its idler and is still ",
                        Say.mm(tight),
                        " short: press that farther in as drawn")
                    : Words.NONE,
                "."))
        .at(at);
  }

  /** How long the chain would have to be along the travel, against as drawn. */
  private static Finding slack(Run run, Wheels wheels) {
    if (run.tie.run().sprung().isPresent()) {
      return taken(run, wheels, run.tie.run().sprung().get());
    }
    Suspension rear = wheels.rearSuspension();
    PointMm shaft = wheels.drawn().pin(run.shaft);
    double longest = Double.NEGATIVE_INFINITY;
    double shortest = Double.POSITIVE_INFINITY;
    double atLongest = 0;
    BeltRun loose = null;
    for (int k = 0; k <= STEPS; k++) {
      double travel = -rear.droopMm() + k * (rear.droopMm() + rear.bumpMm()) / STEPS;
      BeltRun belt = belt(run, wheels, travel);
      Optional<String> missed = Runs.missed(run.tie, belt);
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
