package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
import org.longlow.constraints.machine.ride.GripLimits;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.Anthropometry;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.EyeEllipse;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.RoadSight;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** How far the road is seen by eyes that are elsewhere, past a screen's edge and over a crest. */
final class EyeFindings {

  /** The nearest road for 95 of 100 eyes. */
  static final FindingKind EYES =
      new FindingKind("eyes", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** Where the edge of a screen stands. */
  static final FindingKind EDGE =
      new FindingKind("screen-edge", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** How far the road is seen over a crest. */
  static final FindingKind CREST =
      new FindingKind("crest", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** An edge that stands before the road nearer than this is looked over, mm; judgement. */
  static final double LOOKED_AT_MM = 20_000;

  /** An edge so far above the horizon is looked under, rad; judgement. */
  static final double ABOVE_RAD = Math.toRadians(2);

  /** A sink is known to a fifth either way, taken as two standard deviations. */
  private static final double SINK_SD = FoamStack.SINK_BAND / 2;

  private static final String EYE_HEIGHT = "eyeheightsitting";

  private static final List<Basis> ELLIPSE =
      List.of(
          Basis.published(
              Known.CHECKED, "spread of sitting eye height at one stature and mass, ANSUR II 2012"),
          Basis.judgement("judgement: heads are held 10 mm alike, sink a fifth either way"));

  private static final List<Basis> SCREEN =
      List.of(
          Basis.model("straight line from the eye"),
          Basis.judgement(
              "judgement: an edge before the road where one mostly looks is looked at"));

  private static final List<Basis> CRESTS =
      List.of(
          Basis.model("a round crest over which drivers see as far as roads are laid out for"),
          Basis.published(
              Known.CHECKED,
              "TxDOT 4.11.1 for the crest, liikenneturva.fi for braking on a wet road"),
          Basis.practice("a reaction of one second is common practice"));

  private EyeFindings() {}

  static List<Finding> of(
      Layout layout,
      Sitting sitting,
      Posture posture,
      Standing standing,
      List<LookingAhead> things) {
    List<LookingAhead> ahead = LookingAhead.hiding(things);
    PointMm eye = standing.ground().toRoad(posture.eye());
    List<Finding> findings = new ArrayList<>();
    if (!(eye.z() > 0)) {
      return findings; // the finding on sight says so
    }
    findings.add(eyes(layout, sitting, standing, ellipse(sitting, posture, standing, eye), things));
    ahead.stream()
        .filter(LookingAhead::clear)
        .forEach(a -> findings.add(edge(sitting, standing, eye, a)));
    things.stream()
        .filter(a -> a.clear() && a.overhead() && a.under().z() < eye.z())
        .forEach(a -> findings.add(edge(sitting, standing, eye, a)));
    return findings;
  }

  /** Returns where eyes are, in the road's axes. */
  static EyeEllipse ellipse(Sitting sitting, Posture posture, Standing standing, PointMm eye) {
    Body body = sitting.body();
    double height =
        body.measures().measured().containsKey(EYE_HEIGHT)
            ? 0
            : Anthropometry.survey()
                .measures(body.measures().sex())
                .get(EYE_HEIGHT)
                .onStatureAndMass()
                .residualSd();
    SeatOutcome.Seated seated = sitting.seated().orElseThrow();
    double along = standing.ground().along().angleRad();
    double trunk = Math.PI / 2 + posture.angles().recline() - along;
    return new EyeEllipse(
        eye,
        trunk,
        hypot(height, EyeEllipse.HELD_MM, SINK_SD * seated.pan().sinkMm()),
        hypot(0, EyeEllipse.HELD_MM, SINK_SD * seated.back().sinkMm()));
  }

  private static double hypot(double a, double b, double c) {
    return Math.hypot(Math.hypot(a, b), c);
  }

  private static Finding eyes(
      Layout layout,
      Sitting sitting,
      Standing standing,
      EyeEllipse ellipse,
      List<LookingAhead> things) {
    List<LookingAhead> ahead = LookingAhead.hiding(things);
    double limit = standing.places().value(layout.demands().limit(Demands.Key.SIGHT));
    boolean over = roadMm(ellipse, ahead, true) <= limit;
    List<LookingAhead> before = over ? ahead : ahead.stream().filter(a -> !a.clear()).toList();
    double low = roadMm(ellipse, before, true);
    double high = roadMm(ellipse, before, false);
    Set<String> glazed =
        ahead.stream()
            .filter(a -> !over && a.clear())
            .filter(a -> roadMm(ellipse, List.of(a), true) > low)
            .map(LookingAhead::part)
            .collect(Collectors.toCollection(TreeSet::new));
    Figures figures = Figures.atMost(Double.isFinite(low) ? low : Double.NaN, limit, FigureUnit.MM);
    Optional<LookingAhead> against =
        things.stream()
            .filter(a -> a.overhead() && !a.clear())
            .filter(a -> a.under().z() < ellipse.touching(a.under(), false).z())
            .findFirst();
    boolean near = low <= limit;
    boolean sees = near && against.isEmpty() && glazed.isEmpty();
    return new Finding(
        EYES,
        About.person(sitting.occupant(), "eyes of people built alike", "eyes"),
        Optional.of(standing.condition()),
        sees ? Verdict.PASS : Verdict.CAUTION,
        figures,
        List.of(ELLIPSE.get(0), ELLIPSE.get(1), Sources.of(layout, Demands.Key.SIGHT)),
        Words.of(
            Say.format(
                "Of people built like %s, 90 in 100 have their eyes within %s along the trunk and %s"
                    + " across it; they see the road from ",
                sitting.occupant().words(),
                Say.wholeMm(EyeEllipse.TANGENT * ellipse.alongMm()),
                Say.wholeMm(EyeEllipse.TANGENT * ellipse.acrossMm())),
            LookingAhead.metres(high),
            " to ",
            LookingAhead.metres(low),
            " ahead; ",
            LookingAhead.metres(limit),
            near ? " are asked" : " are asked: lower what stands in front for the lowest eyes",
            against
                .map(a -> Words.of("; the highest look against " + a.part() + ": raise it."))
                .orElse(Words.of(".")),
            LookingAhead.through(glazed)));
  }

  /** The nearest road over all things for the eyes at one end, from below the middle eye, mm. */
  static double roadMm(EyeEllipse ellipse, List<LookingAhead> ahead, boolean lowest) {
    double farthest = 0;
    for (LookingAhead a : ahead) {
      PointMm from = ellipse.touching(a.corner(), lowest);
      if (a.corner().x() <= from.x()) {
        continue; // beside these eyes or behind them
      }
      double down = from.z() - a.corner().z();
      double road =
          down > 0
              ? from.x() + from.z() * (a.corner().x() - from.x()) / down
              : Double.POSITIVE_INFINITY;
      farthest = Math.max(farthest, road - ellipse.eye().x());
    }
    return farthest;
  }

  private static Finding edge(
      Sitting sitting, Standing standing, PointMm eye, LookingAhead screen) {
    PointMm edge = screen.overhead() ? screen.under() : screen.corner();
    PointMm to = edge.minus(eye);
    double up = Math.atan2(to.z(), to.x());
    double low = -Math.atan2(eye.z(), LOOKED_AT_MM);
    double road = up < 0 ? eye.z() / Math.tan(-up) : Double.POSITIVE_INFINITY;
    boolean before = up > low && up < ABOVE_RAD;
    double nearer = up - low < ABOVE_RAD - up ? low : ABOVE_RAD;
    double deg = Math.toDegrees(up);
    return new Finding(
            EDGE,
            screen.overhead()
                ? About.person(
                        sitting.occupant(),
                        "lower edge of " + screen.part(),
                        screen.part(),
                        "lower")
                    .on(screen.part())
                : About.person(sitting.occupant(), "edge of " + screen.part(), screen.part())
                    .on(screen.part()),
            Optional.of(standing.condition()),
            before ? Verdict.CAUTION : Verdict.PASS,
            new Figures(
                deg,
                Math.toDegrees(nearer),
                Math.toDegrees(before ? -Math.abs(up - nearer) : Math.abs(up - nearer)),
                FigureUnit.DEG),
            SCREEN,
            Words.of(
                sitting.person()
                    + (screen.overhead() ? " sees the lower edge of " : " sees the edge of ")
                    + screen.part()
                    + " ",
                up < 0
                    ? Words.of("before the road ", LookingAhead.metres(road), " ahead")
                    : Say.format("%s above the horizon", Say.deg(deg)),
                before && screen.overhead()
                    ? Words.of(
                        ", where riders look: raise it to look under it, or lower it to look"
                            + " through it.")
                    : before
                        ? Words.of(
                            ", where riders look: lower it to look over it, or raise it to look through"
                                + " it.")
                        : up < 0
                            ? Words.of(
                                screen.overhead()
                                    ? " and looks through it."
                                    : " and looks over it.")
                            : Words.of(" and looks through it.")))
        .at(standing.ground().toFrame(edge));
  }

  static Finding crest(
      Layout layout, Sitting sitting, Standing standing, PointMm eye, List<LookingAhead> things) {
    List<LookingAhead> ahead = LookingAhead.hiding(things);
    Optional<LookingAhead> roof = LookingAhead.hanging(eye, things);
    Demands demands = layout.demands();
    double speed = standing.places().value(demands.limit(Demands.Key.SPEED));
    double laidOut = RoadSight.stopMm(speed, RoadSight.DESIGN_REACTION_S, RoadSight.DESIGN_BRAKING);
    double crest = RoadSight.crestRadiusMm(laidOut);
    double line = LookingAhead.through(eye, ahead).sightRad();
    double over = RoadSight.crestMm(crest, eye.z(), RoadSight.OBJECT_MM, line);
    Optional<Double> edge = roof.map(a -> a.under().minus(eye).angleRad());
    double under = behind(edge, crest, eye, RoadSight.OBJECT_MM);
    double up =
        eye.z() > RoadSight.OBJECT_MM
            ? behind(Optional.of(line), crest, eye, RoadSight.OBJECT_MM)
            : 0;
    double seen = up < Math.min(over, under) ? Math.min(over, under) : 0;
    // it comes up over what stands in front as it goes up behind an edge
    double near = behind(Optional.of(line), crest, eye, 0);
    double flat = Math.min(RoadSight.crestMm(crest, eye.z(), 0, line), behind(edge, crest, eye, 0));
    double grip = standing.places().value(demands.limit(Demands.Key.GRIP));
    Optional<Double> holds =
        Optional.ofNullable(standing.load())
            .flatMap(load -> GripLimits.ifAny(load.axles(), grip))
            .map(limits -> limits.bothG() * SeatLoad.GRAVITY);
    double braking = Math.min(RoadSight.WET_BRAKING, holds.orElse(RoadSight.WET_BRAKING));
    double stop = RoadSight.stopMm(speed, RoadSight.RIDER_REACTION_S, braking);
    boolean hidden = over < RoadSight.crestMm(crest, eye.z(), RoadSight.OBJECT_MM);
    Figures figures = Figures.atLeast(seen, stop, FigureUnit.MM);
    boolean sees = figures.verdict() == Verdict.PASS && holds.isPresent();
    return new Finding(
        CREST,
        About.person(sitting.occupant(), "sight over a crest", "crest"),
        Optional.of(standing.condition()),
        sees ? Verdict.PASS : Verdict.CAUTION,
        figures,
        CRESTS,
        Words.of(
            Say.format(
                "With the eye at %s, over a crest laid out for %s, %s sees what stands %s high ",
                Say.wholeMm(eye.z()),
                Words.figure(speed * MM_S_IN_KM_H, FigureSort.SPEED),
                sitting.person(),
                Say.wholeMm(RoadSight.OBJECT_MM)),
            seen > 0 ? Words.of("up to ", LookingAhead.metres(seen), " ahead") : "nowhere",
            ", and what lies flat on the road ",
            near < flat
                ? Words.of("from ", LookingAhead.metres(near), " to ", LookingAhead.metres(flat))
                : "nowhere",
            under < over
                ? ", for the edge of " + roof.get().part() + " hangs before what is farther"
                : hidden ? ", for what stands in front hides the top of the crest" : "",
            "; the way to a stop on a wet road is ",
            LookingAhead.metres(stop),
            braking < RoadSight.WET_BRAKING
                ? Say.format(", for no more than %.2f g are held", braking / SeatLoad.GRAVITY)
                : "",
            holds.isEmpty() ? "; how hard the machine brakes cannot be told" : "",
            sees
                ? "."
                : under < over
                    ? ": raise that edge."
                    : hidden ? ": lower what stands in front." : ": go slower over crests."));
  }

  /** How far ahead a thing so high first meets a line of sight, mm; infinite without a line. */
  private static double behind(Optional<Double> rad, double crestMm, PointMm eye, double highMm) {
    return rad.map(r -> RoadSight.behindEdgeMm(crestMm, eye.z(), highMm, r))
        .orElse(Double.POSITIVE_INFINITY);
  }

  private static final double MM_S_IN_KM_H = 3600 / 1e6;
}
