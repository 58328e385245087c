package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.StandSwing;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.Sweep;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Pressed;
import org.longlow.constraints.stand.OnStand;
import org.longlow.constraints.stand.RoadPlane;
import org.longlow.constraints.stand.Sections;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What swings down into the road: sections on their way, pedals, the leg of a stand. */
public final class SwungFindings {

  /** Roads are no flatter than this where a machine is left, mm; judgement. */
  static final double UNEVEN_MM = 20;

  /**
   * What is higher over the road upright than it reaches out, by more than this, mm, stays over it
   * on the stand: leaning by up to 45 degrees takes at most as much of its height as of its reach,
   * but for what springs and pitch do.
   */
  private static final double LEANED_MM = 80;

  /** Where shortening brings a place up by less than this share, it is no remedy; judgement. */
  private static final double LEAST_SLOPE = 0.3;

  private static final List<Basis> HOW =
      List.of(
          Basis.model(
              Words.of(
                  "the whole way swept over a flat road, to within ",
                  Say.mm(Sweep.BOUND_MM),
                  "; on the stand it leans as it does shut")),
          Basis.judgement("judgement: how uneven roads are"));

  private static final List<Basis> LEG =
      List.of(Basis.model("a leg turns about its pivot, the machine upright and empty"));

  private static final Basis PEDAL =
      Basis.model("a pedal turns about its pivot as far as it says, the machine upright");

  private SwungFindings() {}

  /** The machine in a stance, over its road. */
  private record Over(Standing standing, RoadPlane road, String how) {}

  /** Where a section is lowest: a part of it, how far open, over which road. */
  private record Nearest(Over over, String part, double opening, RoadPlane.Low low) {}

  private static final Comparator<Nearest> BY_HEIGHT =
      Comparator.comparingDouble(n -> n.low.heightMm());

  public static List<Finding> of(
      Layout layout, Wheels wheels, Map<String, PartShape> drawn, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    if (!wheels.stands()) {
      return findings;
    }
    if (!layout.sections().isEmpty()) {
      Roads roads = new Roads(layout, wheels, standings);
      for (String name : layout.sections().keySet()) {
        section(name, layout, wheels, drawn, roads).ifPresent(findings::add);
      }
    }
    pedals(layout, standings).values().forEach(n -> findings.add(pedal(layout, n)));
    standings.stream()
        .filter(s -> s.kind() == Stance.Kind.PARKED)
        .forEach(
            s ->
                layout
                    .parts(StandPart.class)
                    .filter(stand -> stand.type() != StandPart.Kind.CENTRE)
                    .forEach(stand -> leg(s, stand).ifPresent(findings::add)));
    return findings;
  }

  /**
   * Where pedals come nearer to the road than is asked, and than they are when nobody works them.
   */
  private static Map<String, Nearest> pedals(Layout layout, List<Standing> standings) {
    Map<String, Nearest> nearest = new LinkedHashMap<>();
    for (Standing s : standings) {
      if (s.kind() != Stance.Kind.LADEN) {
        continue;
      }
      Over over = new Over(s, RoadPlane.under(s.ground()), s.condition().says());
      for (Pressed pedal : Pressed.of(s.shapes().values(), s.places())) {
        String name = pedal.shape().part().name();
        RoadPlane.Low low = over.road.lowest(pedal.shape().prisms());
        double drawn = over.road.lowest(s.shapes().get(name).prisms()).heightMm();
        if (low.heightMm() < Math.min(drawn, clearanceMm(layout, s))) {
          nearest.merge(
              name, new Nearest(over, name, 0, low), (a, b) -> BY_HEIGHT.compare(b, a) < 0 ? b : a);
        }
      }
    }
    return nearest;
  }

  private static double clearanceMm(Layout layout, Standing s) {
    return s.places().value(layout.demands().limit(Demands.Key.GROUND_CLEARANCE));
  }

  private static Finding pedal(Layout layout, Nearest n) {
    double height = n.low.heightMm();
    double limit = clearanceMm(layout, n.over.standing);
    return Finding.held(
            StandSwing.SWUNG,
            About.parts(n.part),
            Optional.of(n.over.standing.condition()),
            Figures.atLeast(height, limit, FigureUnit.MM),
            List.of(PEDAL, Sources.of(layout, Demands.Key.GROUND_CLEARANCE)),
            Words.of(
                "Worked as far as it goes, " + n.part + " comes ",
                height < 0
                    ? Words.of(Say.mm(-height), " into the road")
                    : Words.of("to ", Say.mm(height), " over the road"),
                ", " + n.over.how + "; ",
                Words.atLeast(limit),
                " are asked: set it ",
                Words.atLeast(limit - height),
                " higher, or give it less travel."))
        .at(n.low.at(), n.low.yMm());
  }

  /** Every stance that something can be opened in: empty, with people aboard, on each stand. */
  private static final class Roads {
    private final Layout layout;
    private final Wheels wheels;
    private final List<Standing> standings;
    private final List<Over> upright;
    private List<Over> leaning;

    Roads(Layout layout, Wheels wheels, List<Standing> standings) {
      this.layout = layout;
      this.wheels = wheels;
      this.standings = standings;
      upright =
          standings.stream()
              .filter(s -> s.kind() == Stance.Kind.UNLADEN || s.kind() == Stance.Kind.LADEN)
              .map(
                  s -> new Over(s, RoadPlane.under(s.ground()), "upright, " + s.condition().says()))
              .toList();
    }

    /** Springs and lean are balanced only where that may matter. */
    List<Over> leaning() {
      if (leaning == null) {
        leaning =
            standings.stream()
                .filter(s -> s.kind() == Stance.Kind.PARKED && s.load() != null)
                .flatMap(
                    s ->
                        layout
                            .parts(StandPart.class)
                            .filter(stand -> stand.type() == StandPart.Kind.SIDE)
                            .flatMap(stand -> on(wheels, s, stand).stream()))
                .toList();
      }
      return leaning;
    }
  }

  private static Optional<Over> on(Wheels wheels, Standing parked, StandPart stand) {
    try {
      MassPoint.Sum all = MassPoint.Sum.of(List.of(parked.load().total()));
      OnStand on = new OnStand(wheels, parked, all, stand);
      return on.rest().map(held -> new Over(parked, on.road(held), "leaning on " + stand.name()));
    } catch (OutOfRange e) {
      return Optional.empty(); // said of the stand
    }
  }

  private static Optional<Finding> section(
      String name, Layout layout, Wheels wheels, Map<String, PartShape> drawn, Roads roads) {
    SectionMotion motion;
    try {
      motion = Sections.motion(layout.sections().get(name), wheels.drawn());
    } catch (OutOfRange e) {
      return Optional.empty(); // said of the section itself
    }
    List<PartShape> shapes =
        layout.sections().get(name).parts().stream()
            .map(drawn::get)
            .filter(shape -> shape != null && !shape.prisms().isEmpty())
            .toList();
    Sweep sweep = new Sweep(motion);
    double halfMm =
        shapes.stream().mapToDouble(s -> Math.max(s.leftMm(), s.rightMm())).max().orElse(0);
    Optional<Nearest> upright =
        nearest(sweep, shapes, roads.upright, Math.max(UNEVEN_MM, halfMm + LEANED_MM));
    Optional<Nearest> nearest = upright;
    if (upright.isPresent() && upright.get().low.heightMm() < halfMm + LEANED_MM) {
      nearest =
          nearest(sweep, shapes, roads.leaning(), upright.get().low.heightMm()).or(() -> upright);
    }
    return nearest
        .filter(n -> n.low.heightMm() < UNEVEN_MM)
        .map(n -> finding(name, n, motion, sweep.motion(n.opening)));
  }

  /** Returns what is lowest of all, if that is less than {@code belowMm}. */
  private static Optional<Nearest> nearest(
      Sweep sweep, List<PartShape> shapes, List<Over> overs, double belowMm) {
    Optional<Nearest> nearest = Optional.empty();
    double below = belowMm;
    for (Over over : overs) {
      for (PartShape shape : shapes) {
        Nearest here = nearest(sweep, shape, over, below);
        if (here.low.heightMm() < below) {
          nearest = Optional.of(here);
          below = here.low.heightMm();
        }
      }
    }
    return nearest;
  }

  private static Nearest nearest(Sweep sweep, PartShape shape, Over over, double belowMm) {
    double opening =
        sweep.lowest(
            Solid.of(shape),
            o -> over.road.from(sweep.motion(o)).lowest(shape.prisms()).heightMm(),
            belowMm);
    RoadPlane.Low low = over.road.from(sweep.motion(opening)).lowest(shape.prisms());
    return new Nearest(over, shape.part().name(), opening, low);
  }

  private static Finding finding(String name, Nearest n, SectionMotion way, RigidMotion motion) {
    double height = n.low.heightMm();
    boolean in = height < 0;
    Words text =
        Words.of(
            Say.format("Section %s: standing %s, %s swings ", name, n.over.how, n.part),
            in
                ? Words.of(Say.mm(-height), " into the road")
                : Words.of("to ", Say.mm(height), " over the road"),
            " where it is ",
            Say.open(n.opening),
            " open; ",
            Words.atLeast(UNEVEN_MM),
            " are asked, for roads are uneven: hinge it higher, ",
            shorter(UNEVEN_MM - height, slope(n, way, motion)),
            "or open it less far.");
    return new Finding(
            StandSwing.SWUNG,
            About.parts(n.part).under(name),
            Optional.of(n.over.standing.condition()),
            in ? Verdict.FAIL : Verdict.CAUTION,
            Figures.atLeast(height, UNEVEN_MM, FigureUnit.MM),
            HOW,
            text)
        .at(motion.apply(n.low.at()), n.low.yMm())
        .openBy(n.opening);
  }

  /** How much shorter it is made, if that brings what comes lowest up. */
  private static Words shorter(double mm, double slope) {
    return slope < LEAST_SLOPE
        ? Words.NONE
        : Words.of("make it shorter by ", Words.atLeast(mm / slope), ", ");
  }

  /** How much higher its lowest place is for each mm that it is nearer to what it turns about. */
  private static double slope(Nearest n, SectionMotion way, RigidMotion motion) {
    PointMm at = motion.apply(n.low.at());
    PointMm v = way.rate(n.opening).of(at);
    if (v.length() == 0) {
      return 0;
    }
    return Math.abs(n.over.road.up().dot(v.left())) / v.length();
  }

  /** A leg that hangs straight down somewhere on its way from stowed to parked. */
  private static Optional<Finding> leg(Standing parked, StandPart stand) {
    PointMm pivot = parked.ground().toRoad(parked.places().pin(stand.pivot()));
    PointMm foot = parked.ground().toRoad(parked.places().pin(stand.foot())).minus(pivot);
    PointMm stowed = parked.ground().toRoad(parked.places().pin(stand.stowed())).minus(pivot);
    boolean passes =
        foot.x() * stowed.x() < 0 && foot.z() / foot.length() + stowed.z() / stowed.length() < 0;
    double least = pivot.z() - Math.min(foot.length(), stowed.length());
    if (!passes || least >= 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
                StandSwing.SWUNG,
                About.parts(stand.name()),
                Optional.of(parked.condition()),
                Verdict.CAUTION,
                Figures.atLeast(least, 0, FigureUnit.MM),
                LEG,
                Words.of(
                    "With the machine upright the leg of " + stand.name() + " is ",
                    Say.mm(-least),
                    " too long to swing down past its pivot: lean the machine to the other side"
                        + " first, set the pivot higher, or swing the leg down from the other"
                        + " side."))
            .at(parked.places().pin(stand.pivot())));
  }
}
