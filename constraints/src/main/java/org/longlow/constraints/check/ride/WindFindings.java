package org.longlow.constraints.check.ride;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
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
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.machine.ride.Crosswind;
import org.longlow.constraints.machine.ride.WhippleParameters;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Broadside;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** What wind from the side does to the steering and the balance, with the crew that is worst. */
public final class WindFindings {

  /** Wind from the side. */
  public static final FindingKind WIND =
      new FindingKind("wind", FindingGroup.WIND, Rests.ON_MASSES);

  /**
   * Sideways coefficient of the side area in wind square from the side: 1.0 to 1.2, as of a flat
   * plate; an engineering estimate. At an angle it goes with the sine.
   */
  private static final double SIDE_COEFFICIENT = 1.1;

  /** Pressure centre of a streamlined body, behind its nose, of its length; aerofoil theory. */
  private static final double FORWARD_CENTRE = 0.25;

  /** A cowl that changes the arm by less is not worth a word, mm. */
  private static final double LEAST_SAID_MM = 1;

  /** What is farther ahead than this of the wheelbase could turn with the steering; judgement. */
  private static final double FRONT_SHARE = 0.6;

  private static final double MM_PER_M = 1e3;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("arms of the side area about the steering axis, trail, and statics of lean"),
          Basis.published(
              Known.FROM_MEMORY,
              "where wind presses: from the middle of the side area, with wheels as discs, to a"
                  + " quarter of its length behind the nose (aerofoil theory, from memory); side"
                  + " force of a flat plate, an estimate"));

  /** The machine with one crew in the wind. */
  private record Blown(
      Standing stance, WhippleParameters body, Broadside all, Broadside turned, Crosswind arms) {

    PointMm centre() {
      return stance.ground().toRoad(all.centroid());
    }

    /** Returns where it presses at most ahead, mm from the rear contact. */
    double forwardMm() {
      double x = all.toMm() - FORWARD_CENTRE * (all.toMm() - all.fromMm());
      PointMm there = new PointMm(x, all.centroid().z());
      return Math.max(centre().x(), stance.ground().toRoad(there).x());
    }

    double turnedShare() {
      return turned.areaMm2() / all.areaMm2();
    }

    /** Returns the arm by which the force turns the steering downwind, mm. */
    double armMm(double pressureXMm) {
      double share = turned.areaMm2() > 0 ? share(turned.areaMm2(), turned.centroid()) : 0;
      return arms.trailArmMm(pressureXMm) + share;
    }

    /** Returns what an area that turns adds to the arm, mm. */
    double share(double areaMm2, PointMm centre) {
      return areaMm2 > 0 ? areaMm2 / all.areaMm2() * arms.armMm(stance.ground().toRoad(centre)) : 0;
    }

    double leastMm() {
      return armMm(centre().x());
    }

    double mostMm() {
      return armMm(forwardMm());
    }

    double straightMm() {
      return Crosswind.idealArmMm(centre().z(), body.model());
    }

    /** Returns how far the arm is off what keeps it straight, with so much more of it, mm. */
    double offMm(double moreMm) {
      double least = leastMm() + moreMm;
      double most = mostMm() + moreMm;
      return Math.max(0, Math.max(straightMm() - most, least - straightMm()));
    }
  }

  private final Layout layout;
  private final Wheels wheels;

  private WindFindings(Layout layout, Wheels wheels) {
    this.layout = layout;
    this.wheels = wheels;
  }

  /** Returns one, of the crew with which it is carried off most; empty where a mass is missing. */
  public static Optional<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    WindFindings all = new WindFindings(layout, wheels);
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .flatMap(s -> all.blown(s).stream())
        .min(Comparator.comparingDouble(b -> b.leastMm() - b.straightMm()))
        .map(all::finding);
  }

  private Optional<Blown> blown(Standing s) {
    Optional<WhippleParameters> body = SingleTrack.of(s, wheels);
    if (body.isEmpty() || !(s.load().axles().total().at().z() > 0)) {
      return Optional.empty();
    }
    Steered steered = Steered.of(layout, wheels.fork(), s.places()).orElseThrow();
    List<PartShape> fixed = new ArrayList<>();
    List<PartShape> turning = new ArrayList<>();
    for (PartShape shape : s.shapes().values()) {
      (steered.turns(shape.part().name()) ? turning : fixed).add(shape);
    }
    Broadside.Both shown = Broadside.with(fixed, s.rider(), turning);
    Crosswind arms =
        new Crosswind(
            body.get().rakeRad(),
            MM_PER_M * body.get().wheelbaseM(),
            MM_PER_M * body.get().trailM());
    return Optional.of(new Blown(s, body.get(), shown.all(), shown.more(), arms));
  }

  private Finding finding(Blown b) {
    double speed = ms(b, Demands.Key.SPEED);
    double gust = ms(b, Demands.Key.SIDE_WIND);
    double area = b.all.areaMm2() / (MM_PER_M * MM_PER_M);
    double yaw = Crosswind.yawRad(speed, gust);
    double force = Crosswind.sideForceN(speed, gust, SIDE_COEFFICIENT * Math.sin(yaw) * area);
    PointMm centre = b.centre();
    double lean =
        Crosswind.balanceLeanRad(
            force,
            centre.z(),
            b.stance.load().total().massKg(),
            b.stance.load().axles().total().at().z());
    double straight = b.straightMm();
    Words text =
        Words.of(
            Say.format(
                "With %s a side wind of %s at %s pushes with about %s, %s up and %s to %s ahead of"
                    + " where the rear wheel stands; the machine leans about %s against it. ",
                b.stance.condition().people(),
                speed(gust),
                speed(speed),
                Say.newton(force),
                Say.wholeMm(centre.z()),
                Words.bare(centre.x(), FigureSort.WHOLE_LENGTH),
                Say.wholeMm(b.forwardMm()),
                Say.deg(Math.toDegrees(lean))),
            advice(b),
            Say.format(
                " (the push, %s of it on what steers, turns the front wheel out of the wind by an arm"
                    + " of %s to %s; %s keep the machine straight)",
                Say.percent(b.turnedShare()),
                Words.bare(b.leastMm(), FigureSort.LENGTH),
                Say.mm(b.mostMm()),
                Say.mm(straight)),
            Words.later(() -> cowls(b)),
            ".");
    return new Finding(
            WIND,
            About.thing("side wind", "side"),
            Optional.of(b.stance.condition()),
            b.mostMm() < 0 ? Verdict.FAIL : Verdict.CAUTION,
            Figures.only(Math.toDegrees(lean), FigureUnit.DEG),
            List.of(
                BASIS.get(0),
                BASIS.get(1),
                Sources.of(layout, Demands.Key.SPEED),
                Sources.of(layout, Demands.Key.SIDE_WIND)),
            text)
        .at(b.all.centroid());
  }

  private double ms(Blown b, Demands.Key key) {
    return b.stance.places().value(layout.demands().limit(key)) / MM_PER_M;
  }

  private static Words speed(double ms) {
    return Words.figure(3.6 * ms, FigureSort.SPEED);
  }

  private static String advice(Blown b) {
    double straight = b.straightMm();
    if (b.mostMm() < 0) {
      return "Hands off it turns into the wind and falls away from it: more trail, less side area"
          + " behind the steering axis on what steers, or more of it ahead";
    }
    if (b.mostMm() < straight) {
      return "Hands off it is carried downwind: more trail, or more side area farther ahead";
    }
    if (b.leastMm() > straight) {
      return "Hands off it turns up into the wind by itself: less side area on what steers, or less"
          + " of it ahead of the steering axis";
    }
    return "Gusts turn it little; keep to light wind until you know it";
  }

  private static PointMm centre(Geometry outline) {
    Point centre = outline.getCentroid();
    return new PointMm(centre.getX(), centre.getY());
  }

  /** Whether a cowl or screen is far enough ahead to be hung on what steers. */
  private static boolean inFront(Blown b, PartShape shape) {
    return shape.part() instanceof ShellPart
        && shape.outline().getArea() > 0
        && b.stance.ground().toRoad(centre(shape.outline())).x()
            > FRONT_SHARE * b.stance.ground().wheelbaseMm();
  }

  /** Says what each cowl or screen in front would do the other way, and which way is better. */
  private Words cowls(Blown b) {
    Steered steered = Steered.of(layout, wheels.fork(), b.stance.places()).orElseThrow();
    List<Words> words = new ArrayList<>();
    for (PartShape shape : b.stance.shapes().values()) {
      double by =
          inFront(b, shape) ? b.share(shape.outline().getArea(), centre(shape.outline())) : 0;
      if (Math.abs(by) >= LEAST_SAID_MM) {
        boolean turns = steered.turns(shape.part().name());
        double more = turns ? -by : by;
        double gains = b.offMm(0) - b.offMm(more);
        words.add(
            Words.of(
                shape.part().name() + (turns ? " fixed to the frame" : " turning with it") + " ",
                Say.mm(b.leastMm() + more),
                Math.abs(gains) < LEAST_SAID_MM
                    ? ", no better and no worse"
                    : gains > 0 ? ", which is better" : ", which is worse"));
      }
    }
    return words.isEmpty()
        ? Words.NONE
        : Words.of("; the lesser arm would be with ", Words.join(", with ", words));
  }
}
