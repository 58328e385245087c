package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
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
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Spreads;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.Reach;
import org.longlow.rider.pose.Sight;
import org.longlow.rider.words.Words;

/** What the rider sees of the road, and whether a foot reaches it. */
public final class SightFindings {

  /** The nearest road seen. */
  public static final FindingKind SIGHT =
      new FindingKind("sight", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  private static final String NEAR = "sight";

  private static final String FAR = "sight of the far road";

  private static final String NEAR_AND_FAR = "sight of the near and the far road";

  /** Whether a foot reaches the ground. */
  public static final FindingKind FOOT =
      new FindingKind("foot", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /**
   * How far a leg is put out to the side, rad: normal range of the hip, 45 degrees (American
   * Academy of Orthopaedic Surgeons, from memory).
   */
  private static final double OUT_RAD = Math.toRadians(45);

  /** What is lower than this a foot steps over, mm; a judgement. */
  private static final double FOOT_ROOM_MM = 60;

  private SightFindings() {}

  public static List<Finding> of(Layout layout, Sitting sitting, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    Optional<Posture> posture = sitting.posture();
    if (posture.isEmpty() || !sitting.occupant().rides()) {
      return findings;
    }
    WorstAboard.of(
            sitting.occupant(),
            standings,
            s -> {
              PointMm eye = s.ground().toRoad(posture.get().eye());
              return sight(layout, sitting, eye, LookingAhead.of(eye, s), s);
            })
        .ifPresent(findings::add);
    WorstAboard.of(sitting.occupant(), standings, s -> foot(layout, sitting, posture.get(), s))
        .ifPresent(findings::add);
    return findings;
  }

  private static Finding sight(
      Layout layout, Sitting sitting, PointMm eye, List<LookingAhead> things, Standing standing) {
    List<LookingAhead> ahead = LookingAhead.hiding(things);
    Sight over = Sight.over(eye, ahead.stream().map(LookingAhead::corner).toList());
    Sight through = LookingAhead.through(eye, ahead);
    double limit = standing.places().value(layout.demands().limit(Demands.Key.SIGHT));
    // what is seen soon enough over everything needs no looking through
    Set<String> glazed =
        over.roadMm() > limit ? LookingAhead.clearBefore(eye, ahead, through) : Set.of();
    Sight seen = glazed.isEmpty() ? over : through;
    RoadAhead road = new RoadAhead(eye, seen, things, limit);
    Optional<LookingAhead> edge = road.edge();
    Words glass =
        !(Math.abs(through.roadMm() - seen.roadMm()) >= 1)
            ? Words.NONE
            : Words.of(" Through the screen it is ", LookingAhead.metres(through.roadMm()), ".");
    Finding f =
        Finding.held(
            SIGHT,
            About.person(
                sitting.occupant(), edge.isEmpty() ? NEAR : road.late() ? NEAR_AND_FAR : FAR),
            Optional.of(standing.condition()),
            road.figures(),
            List.of(
                Basis.model("straight line from the eye"), Sources.of(layout, Demands.Key.SIGHT)),
            Words.of(
                sitting.person(),
                road.seen(),
                glazed.isEmpty()
                    ? " over everything in front"
                    : " through " + String.join(", ", glazed),
                grazed(seen, ahead),
                "; ",
                LookingAhead.metres(limit),
                " are asked",
                road.advice(),
                glass,
                LookingAhead.through(glazed)));
    if (edge.isPresent() && !road.late()) {
      return f.at(standing.ground().toFrame(edge.get().under()));
    }
    if (!glazed.isEmpty() && f.verdict() == Verdict.PASS) {
      f = f.withVerdict(Verdict.CAUTION);
    }
    return seen.over() == null ? f : f.at(standing.ground().toFrame(seen.over()));
  }

  /** Whether a finding of sight says that the near road is hidden by what stands in front. */
  public static boolean late(About about) {
    return !about.aspect().equals(FAR);
  }

  /** Whether a finding of sight says that the far road is hidden by what hangs before it. */
  public static boolean hangs(About about) {
    return about.aspect().equals(FAR) || about.aspect().equals(NEAR_AND_FAR);
  }

  /** Says which part the line of sight goes over. */
  private static Words grazed(Sight over, List<LookingAhead> ahead) {
    return ahead.stream()
        .filter(a -> a.corner().equals(over.over()))
        .findFirst()
        .map(a -> Words.of(", closest over " + a.part()))
        .orElse(Words.NONE);
  }

  /** A road falls to either side, so the wider side of the pan counts. */
  private static Finding foot(Layout layout, Sitting sitting, Posture posture, Standing standing) {
    double hip = standing.ground().heightMm(posture.hip());
    double side =
        Spreads.of(sitting.parts().pan().base(), standing.places()).stream()
            .mapToDouble(i -> Math.max(i.to(), -i.from()))
            .max()
            .orElse(0);
    Reach.GroundFoot foot = Reach.ground(sitting.body(), hip, side);
    GroundLeg.Pair legs = GroundLeg.of(sitting, standing);
    GroundLeg better = legs.better();
    GroundLeg worse = legs.worse();
    // straight beside the pan, and past whatever else stands there
    double straight = Math.max(0, -foot.flatMarginMm());
    double raised = Math.max(straight, better.flatMm());
    boolean ball = foot.footing() != Reach.Footing.NONE && better.ballMm() <= 0;
    double limit = standing.places().value(layout.demands().limit(Demands.Key.FOOT_DOWN));
    Words how =
        raised <= 0
            ? Words.of("puts a whole foot on the ground")
            : Words.of(
                (ball ? "stands on the ball of the foot" : "cannot reach the ground")
                    + past(better)
                    + ", the leg ",
                Say.mm(raised),
                " short");
    Finding f =
        Finding.held(
                FOOT,
                About.person(sitting.occupant(), "foot down"),
                Optional.of(standing.condition()),
                Figures.atMost(raised, limit, FigureUnit.MM),
                List.of(
                    Basis.published(
                        Known.CHECKED, "body links of the survey, leg straight beside the pan"),
                    Sources.of(layout, Demands.Key.FOOT_DOWN)),
                Words.of(
                    sitting.person() + " ",
                    how,
                    (raised > limit
                        ? " at a stop: lower the seat, or make narrower what is beside it."
                        : " at a stop.")))
            .at(
                standing
                    .ground()
                    .toFrame(new PointMm(standing.ground().toRoad(posture.hip()).x(), 0)));
    if (f.verdict() == Verdict.FAIL && ball && straight <= limit) {
      return f.withVerdict(Verdict.CAUTION);
    }
    if (f.verdict() == Verdict.PASS && worse.flatMm() > limit) {
      return f.withVerdict(Verdict.CAUTION)
          .withText(
              Words.of(
                  f.words(),
                  " That is at the " + legs.side(better) + "; at the " + legs.side(worse),
                  past(worse),
                  " the leg is ",
                  Say.mm(worse.flatMm()),
                  " short."));
    }
    Optional<PartShape> wide = besideLeg(posture.hip(), side, sitting, standing);
    double down = hip - sitting.body().foot().ankle().z();
    boolean barred =
        wide.isPresent()
            && (-Reach.ground(sitting.body(), hip, halfMm(wide.get())).flatMarginMm() > limit
                || outRad(halfMm(wide.get()), down) > OUT_RAD);
    double out = outRad(side, down);
    if (f.verdict() == Verdict.PASS && out > OUT_RAD) {
      return f.withVerdict(Verdict.CAUTION)
          .withText(
              Words.of(
                  f.words(),
                  Say.format(
                      " Over so wide a pan the leg goes %s out to the side; %s is as far as"
                          + " most legs go.",
                      Say.deg(Math.toDegrees(out)), Say.deg(Math.toDegrees(OUT_RAD)))));
    }
    return f.verdict() == Verdict.PASS && barred
        ? f.withVerdict(Verdict.CAUTION)
            .withText(
                Words.of(
                    f.words(),
                    Say.format(
                        " That is beside the pan; %s reaches out to %s there, and the leg has to go"
                            + " over or round it.",
                        wide.get().part().name(), Say.mm(halfMm(wide.get())))))
        : f;
  }

  private static String past(GroundLeg leg) {
    return leg.past().isEmpty() ? "" : " past " + leg.past();
  }

  private static double outRad(double sideMm, double downMm) {
    return Math.atan2(sideMm, downMm);
  }

  /** Returns what stands farther out than the pan, straight below the hip, farthest of all. */
  private static Optional<PartShape> besideLeg(
      PointMm hip, double sideMm, Sitting sitting, Standing standing) {
    PointMm road = standing.ground().toRoad(hip);
    Geometry leg =
        Curves.line(
            List.of(
                hip,
                standing.ground().toFrame(new PointMm(road.x(), Math.min(FOOT_ROOM_MM, hip.z())))));
    List<Part> own = sitting.parts().parts();
    return standing.shapes().values().stream()
        .filter(shape -> halfMm(shape) > sideMm)
        .filter(shape -> !(shape.part() instanceof StandPart)) // one steps beside a leg
        .filter(shape -> !own.contains(shape.part()) && shape.outline().intersects(leg))
        .max(Comparator.comparingDouble(SightFindings::halfMm));
  }

  private static double halfMm(PartShape shape) {
    return Math.max(shape.leftMm(), shape.rightMm());
  }
}
