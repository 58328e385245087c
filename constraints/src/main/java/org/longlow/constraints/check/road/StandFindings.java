package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleFunction;
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
import org.longlow.constraints.gap.Sweep;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.OnStand;
import org.longlow.constraints.stand.Sections;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Whether the parked machine stays on its side stand. */
public final class StandFindings {

  /** Whether the parked machine stays up. */
  public static final FindingKind STAND =
      new FindingKind("stand", FindingGroup.STAND, Rests.ON_MASSES);

  private static final Basis STATICS =
      Basis.model("three-point statics, springs without friction in balance");

  /** A foot this near the road at the lean written stands on it, mm; a judgement. */
  static final double FOOT_OFF_MM = 5;

  /** Lengths of a leg that differ by less are the same, mm; a judgement. */
  static final double LEG_OFF_MM = 5;

  /** Past this share of its length a leg is no slip of the pen but cannot be made; judgement. */
  private static final double WRONG_LEG_SHARE = 0.1;

  private static final Basis LEG =
      Basis.model("a leg keeps its length as it swings; it may lean out by y when parked");

  private final Layout layout;
  private final Wheels wheels;
  private final Standing parked;
  private final StandPart stand;
  private final double side;

  private StandFindings(
      Layout layout, Wheels wheels, Standing parked, StandPart stand, double side) {
    this.layout = layout;
    this.wheels = wheels;
    this.parked = parked;
    this.stand = stand;
    this.side = side;
  }

  public static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (StandPart stand : layout.parts(StandPart.class).toList()) {
      for (Standing standing : standings) {
        if (standing.kind() == Stance.Kind.PARKED && standing.load() != null) {
          findings.addAll(of(layout, wheels, standing, stand));
          Mounting.of(STAND, layout, wheels, standings, standing, stand).ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  private static List<Finding> of(Layout layout, Wheels wheels, Standing parked, StandPart stand) {
    double drawn = Math.signum(parked.places().value(stand.y()));
    return switch (stand.type()) {
      case SIDE -> new StandFindings(layout, wheels, parked, stand, drawn).all();
      case CENTRE -> {
        List<Finding> all =
            new ArrayList<>(new CentreStand(STAND, layout, parked, stand).all(wheels));
        leg(parked, stand).ifPresent(all::add);
        yield all;
      }
      case PAIR -> {
        // the worse of the two sides is told
        List<Finding> left = new StandFindings(layout, wheels, parked, stand, 1).all();
        List<Finding> right = new StandFindings(layout, wheels, parked, stand, -1).all();
        yield worse(left.get(0), right.get(0)) ? left : right;
      }
    };
  }

  private static boolean worse(Finding a, Finding b) {
    int by = a.verdict().compareTo(b.verdict());
    return by < 0 || by == 0 && !(b.margin() < a.margin());
  }

  private List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    Finding shut = tip(on(parked.load().total()), parked.condition());
    findings.add(shut);
    leg(parked, stand).ifPresent(findings::add);
    layout
        .sections()
        .forEach(
            (name, section) ->
                opening(name, section)
                    // it is opened on its stand, and stands worse then
                    .filter(open -> open.verdict().compareTo(shut.verdict()) < 0)
                    .ifPresent(findings::add));
    return findings;
  }

  private OnStand on(MassPoint total) {
    return new OnStand(wheels, parked, MassPoint.Sum.of(List.of(total)), stand, side);
  }

  /** Returns how it stands where a section, somewhere from shut to open, makes it stand worst. */
  private Optional<Finding> opening(String name, Section section) {
    SectionMotion motion;
    try {
      motion = Sections.motion(section, wheels.drawn());
    } catch (OutOfRange e) {
      return Optional.empty(); // said of the section itself
    }
    Map<PartShape, SectionMotion> opens = new LinkedHashMap<>();
    Sections.drivenWith(name, layout, wheels.drawn())
        .forEach((mate, how) -> put(opens, layout.sections().get(mate), how));
    put(opens, section, motion);
    if (opens.isEmpty()) {
      return Optional.empty();
    }
    DoubleFunction<OnStand> openBy = opening -> on(massWith(opens, opening));
    double worst = Sweep.least(opening -> tipRad(openBy.apply(opening)));
    Finding f = tip(openBy.apply(worst), Condition.open(name));
    return Optional.of(
            worst == 1
                ? f
                : f.withText(
                    Words.of(f.words(), " Worst is " + name + " open by ", Say.open(worst), ".")))
        .map(x -> x.openBy(worst));
  }

  /** All of the parked machine's mass after some of its parts have moved. */
  private MassPoint massWith(Map<PartShape, SectionMotion> opens, double opening) {
    MassPoint.Sum sum = MassPoint.Sum.of(List.of(parked.load().total()));
    for (Map.Entry<PartShape, SectionMotion> moved : opens.entrySet()) {
      PointMm centre = moved.getKey().centre();
      PointMm to = moved.getValue().at(opening).apply(centre);
      sum = sum.shifted(moved.getKey().massKg(), to.minus(centre));
    }
    return sum.total();
  }

  /** Adds what of a section is heavy. */
  private void put(Map<PartShape, SectionMotion> opens, Section section, SectionMotion motion) {
    section.parts().stream()
        .map(parked.shapes()::get)
        .filter(shape -> shape != null && shape.massKg() > 0)
        .forEach(shape -> opens.put(shape, motion));
  }

  /** Returns the least tip angle, rad; less than any where it does not stand at all. */
  private double tipRad(OnStand on) {
    return on.rest().flatMap(OnStand.Held::statics).map(this::leastTipRad).orElse(-Math.PI);
  }

  /** Of a pair the other foot holds the machine where one alone would let it tip back. */
  private double leastTipRad(ParkedStability s) {
    return isPair() ? s.leastTipOverFootRad() : s.leastTipRad();
  }

  private boolean isPair() {
    return stand.type() == StandPart.Kind.PAIR;
  }

  private Finding tip(OnStand on, Condition condition) {
    Optional<OnStand.Held> rest = on.rest();
    PointMm foot = parked.ground().toRoad(parked.places().pin(stand.foot()));
    Optional<Words> nothing = holdsNothing(on, rest.isPresent(), foot.z());
    if (nothing.isPresent()) {
      return Finding.note(STAND, About.parts(stand.name()), Verdict.FAIL, STATICS, nothing.get())
          .in(condition);
    }
    OnStand.Held held = rest.orElseThrow();
    ParkedStability parkedSo = held.statics().orElseThrow();
    double typed = parked.places().value(stand.lean());
    double off = on.at(typed).footOffMm();
    boolean agrees = isPair() || Math.abs(off) <= FOOT_OFF_MM;
    double tip = Math.toDegrees(leastTipRad(parkedSo));
    double limit = Math.toDegrees(parked.places().value(layout.demands().limit(Demands.Key.TIP)));
    Words drawn =
        agrees
            ? Words.NONE
            : Say.format(
                " Its foot is %s %s the road at the lean of %s that is written; as drawn it stands"
                    + " at %s, and that is what counts here.",
                Say.mm(Math.abs(off)),
                off < 0 ? "under" : "over",
                Say.deg(Math.toDegrees(typed)),
                Say.deg(Math.toDegrees(held.leanRad())));
    Finding f =
        Finding.held(
                STAND,
                About.parts(stand.name()),
                Optional.of(condition),
                Figures.atLeast(tip, limit, FigureUnit.DEG),
                List.of(STATICS, Sources.of(layout, Demands.Key.TIP)),
                Words.of(
                    tip < 0
                        ? Words.of(
                            "On "
                                + stand.name()
                                + " the machine falls over by itself: its centre of mass lies outside"
                                + " its wheels and the foot. To mend it "
                                + remedy(parkedSo)
                                + ", or move heavy parts.")
                        : tips(tip, limit, held, parkedSo),
                    drawn))
            .at(parked.places().pin(stand.foot()));
    if (f.verdict() == Verdict.FAIL) {
      return f;
    }
    double stuck = Math.toDegrees(tipRad(on.stuck()));
    if (stuck < limit) {
      return f.withVerdict(Verdict.CAUTION)
          .withText(
              Words.of(
                  f.words(),
                  (stuck < 0
                      ? " While its springs stick where they are upright it does not stand at all."
                      : Say.format(
                          " While its springs stick where they are upright it tips at %s.",
                          Say.deg(stuck))),
                  " Rock it on its springs before you leave it."));
    }
    return agrees ? f : f.withVerdict(Verdict.CAUTION);
  }

  private Words tips(double tip, double limit, OnStand.Held held, ParkedStability s) {
    String out = side < 0 ? "right" : "left";
    return Words.of(
        Say.format(
            "On %s the machine tips at %s of slope or push, %s are asked%s; the foot carries %s.",
            stand.name(),
            Say.deg(tip),
            Say.deg(limit),
            tip < limit ? ", so " + remedy(s) : "",
            Say.newton(parked.load().axles().weightN() * s.footShare())),
        Say.format(
            " It tips at %s forward and to the %s, at %s back and to the %s",
            Say.deg(Math.toDegrees(s.tipOverFrontEdgeRad())),
            out,
            Say.deg(Math.toDegrees(s.tipOverRearEdgeRad())),
            out),
        isPair()
            ? atAStop(out, held, s)
            : Say.format(
                ", at %s to the %s over its wheels.",
                Say.deg(Math.toDegrees(s.tipOverWheelsRad())), side < 0 ? "left" : "right"));
  }

  /** What else counts of feet that come down while somebody sits on the machine. */
  private Words atAStop(String out, OnStand.Held held, ParkedStability s) {
    double slope = parked.places().value(layout.demands().limit(Demands.Key.CROSS_SLOPE));
    PointMm foot = parked.ground().toRoad(parked.places().pin(stand.foot()));
    return Words.of(
        Say.format(
            ". Upright its feet are %s over the road, and the machine leans by %s until the %s one"
                + " touches.",
            Say.mm(Math.max(0, foot.z())), Say.deg(Math.toDegrees(held.leanRad())), out),
        Say.format(
            " On a road that falls to the %s by %s that foot carries %s.",
            out,
            Say.deg(Math.toDegrees(slope)),
            Say.newton(parked.load().axles().weightN() * s.footShareOn(slope))));
  }

  /** What helps where it tips first: over the wheels it leans too little, over the foot too far. */
  private String remedy(ParkedStability on) {
    double least = on.leastTipRad();
    String along = least == on.tipOverFrontEdgeRad() ? "forward" : "back";
    if (isPair()) {
      return "set its feet farther out or " + along;
    }
    return least == on.tipOverWheelsRad()
        ? "let the machine lean more, by a foot drawn higher"
        : "set its foot farther out or "
            + along
            + ", or let the machine lean less, by a foot drawn lower";
  }

  /** Returns why a stand holds nothing, if it does not. */
  private Optional<Words> holdsNothing(OnStand on, boolean rests, double footZMm) {
    if (!(on.at(0).massHeightMm() > 0)) {
      return Optional.of(
          Words.of(
              "The centre of mass lies in the road; nothing can be said about "
                  + stand.name()
                  + "."));
    }
    if (on.yMm() < OnStand.LEAST_ASIDE_MM) {
      return Optional.of(
          Words.of(
              stand.name()
                  + " stands under the middle of the machine and holds it on no side; set its"
                  + " foot out to one side."));
    }
    if (rests && footZMm >= -FOOT_OFF_MM) {
      return Optional.empty();
    }
    return Optional.of(
        Say.format(
            "The foot of %s is drawn %s %s the road with the machine upright, %s: draw it"
                + " where it is on the road when the machine leans as far as is meant.",
            stand.name(),
            Say.mm(Math.abs(footZMm)),
            footZMm < 0 ? "under" : "over",
            footZMm < 0
                ? "so the machine would lean away from it"
                : "so it never reaches the road"));
  }

  /** A leg that swings up is as long as it was: seen from the side at most what it is in space. */
  private static Optional<Finding> leg(Standing standing, StandPart stand) {
    PointMm pivot = standing.places().pin(stand.pivot());
    double parked = pivot.distance(standing.places().pin(stand.foot()));
    double stowed = pivot.distance(standing.places().pin(stand.stowed()));
    double most = Math.hypot(parked, standing.places().value(stand.y()));
    double off = Math.max(parked - stowed, stowed - most);
    if (off <= LEG_OFF_MM) {
      return Optional.empty();
    }
    return Optional.of(
        new Finding(
                STAND,
                About.parts(stand.name()).named(stand.name(), "leg"),
                Optional.of(standing.condition()),
                off > WRONG_LEG_SHARE * stowed ? Verdict.FAIL : Verdict.CAUTION,
                Figures.atMost(off, LEG_OFF_MM, FigureUnit.MM),
                List.of(LEG),
                Say.format(
                    "The leg of %s is %s long parked and %s stowed, seen from the side; a leg keeps"
                        + " its length: draw the stowed foot %s %s its pivot.",
                    stand.name(),
                    Say.mm(parked),
                    Say.mm(stowed),
                    Say.mm(off),
                    stowed < parked ? "farther from" : "nearer to"))
            .at(standing.places().pin(stand.stowed())));
  }
}
