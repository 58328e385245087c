package org.longlow.constraints.check.person;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.check.person.GettingInPose.Step;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.Traits;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.HeadTarget;
import org.longlow.rider.pose.JointLimits;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.PoseSolver;
import org.longlow.rider.pose.Posture;

/**
 * Somebody who gets in from one side, pose by pose, with every section open: stands beside, steps
 * over what lies lowest on the way of the farther leg, goes down with the body over the feet, sits
 * down with these on the road, lifts them to their rests. Of a few places to step from and heights
 * to lift to, the freest is taken; people have more.
 *
 * @param poses in order
 * @param tight which pose comes nearest to something
 * @param gap how near; empty where nothing is nearer than {@link TriedPose#HORIZON_MM}
 * @param reached whether the leg that steps over gets there
 */
public record GettingIn(List<GettingInPose> poses, Step tight, Optional<Gap> gap, boolean reached) {

  /** Freer than this no other place is tried, mm. */
  private static final double FREE_MM = 30;

  /** Air beside the machine for who stands there, mm; judgement. */
  private static final double BESIDE_MM = 80;

  /** Air between the machine and the foot that one steps over from, mm; judgement. */
  private static final double FOOT_AIR_MM = 30;

  /** Of the way from the pan to the seated ankle, where one may step from; judgement. */
  private static final double[] FROM = {0, 0.25, 0.5};

  /** From the lowest way, ahead and up, where a foot may be lifted to, mm; judgement. */
  private static final List<PointMm> LIFTED =
      List.of(
          PointMm.ORIGIN,
          new PointMm(0, 75),
          new PointMm(0, 150),
          new PointMm(150, 75),
          new PointMm(300, 150),
          new PointMm(450, 200),
          new PointMm(600, 200));

  /** A trunk leans forward over the leg that is lifted; judgement. */
  private static final double STEPPING = Math.toRadians(-5);

  /** How far knees may stand farther out than half way to the feet, mm; judgement. */
  private static final double[] SPLAY_MM = {0, 80, 160};

  public GettingIn {
    poses = List.copyOf(poses);
  }

  /** Returns one pose. */
  public GettingInPose pose(Step step) {
    return poses.get(step.ordinal());
  }

  /**
   * Where soles leave the machine lowest.
   *
   * @param over of the leg that must be lifted higher
   * @param near of the nearer leg
   * @param left at which side
   */
  record Sills(PointMm over, PointMm near, boolean left) {}

  /** What it is judged against. */
  private record Against(
      Sitting sitting,
      Standing standing,
      Places places,
      Handholds holds,
      List<PartShape> parts,
      List<Solid> others) {

    Body body() {
      return sitting.body();
    }

    Posture seated() {
      return sitting.posture().orElseThrow();
    }

    PointMm road(PointMm frame, double up) {
      return standing.ground().toFrame(new PointMm(standing.ground().toRoad(frame).x(), up));
    }

    /** How far out anything reaches between two places along and heights, mm. */
    double reachMm(boolean left, double from, double to, double top) {
      Envelope window = new Envelope(from, to, -500, top);
      double most = 0;
      for (PartShape shape : parts) {
        if (shape.outline().getEnvelopeInternal().intersects(window)) {
          most = Math.max(most, left ? shape.leftMm() : shape.rightMm());
        }
      }
      return most;
    }

    /** Returns the freer of a pose that was tried and another. */
    TriedPose freer(TriedPose best, GettingInPose pose, boolean reached) {
      return TriedPose.freer(best, pose, body(), others, reached);
    }
  }

  /**
   * Returns how somebody gets in.
   *
   * @param sitting who sits
   * @param standing the machine with them on it
   * @param sills what the legs go over
   * @param shapes every part, sections open
   */
  static GettingIn of(
      Sitting sitting,
      Standing standing,
      Places places,
      Handholds holds,
      Sills sills,
      Collection<PartShape> shapes) {
    boolean left = sills.left;
    List<PartShape> parts =
        shapes.stream()
            .filter(s -> !(s.part() instanceof StandPart))
            .filter(s -> s.part().traits().duty() != Traits.Duty.CONTROL)
            .toList();
    List<Part> own = sitting.parts().parts();
    List<Solid> others =
        parts.stream().filter(s -> !own.contains(s.part())).map(Solid::of).toList();
    Against against = new Against(sitting, standing, places, holds, parts, others);
    PointMm pan = pan(against);
    TriedPose step = over(against, pan, sills.over, left);
    TriedPose down = down(against, left);
    TriedPose rising = rising(against, down.pose(), left);
    TriedPose legs = legs(against, down.pose().inner(), sills.near, left);
    Posture seated = against.seated();
    List<GettingInPose> poses =
        List.of(
            beside(against, pan, left),
            step.pose(),
            rising.pose(),
            down.pose(),
            legs.pose(),
            new GettingInPose(Step.SEATED, seated, seated, left, 0));
    TriedPose worst = step;
    for (TriedPose tried : List.of(rising, down, legs)) {
      worst = worst.mm() <= tried.mm() ? worst : tried;
    }
    return new GettingIn(poses, worst.pose().step(), worst.gap(), step.reached());
  }

  private static PointMm pan(Against a) {
    return a.places
        .pin(a.sitting.parts().pan().from())
        .towards(a.places.pin(a.sitting.parts().pan().to()), 0.5);
  }

  // --- standing

  /** A foot flat on the road under a place. */
  private static FootContact under(Against a, PointMm hip) {
    PointMm heel = new PointMm(hip.x() - a.body().foot().ankle().x(), hip.z());
    return BodyPose.flat(a.body(), a.road(heel, 0), a.standing.ground().along().angleRad());
  }

  private static GettingInPose beside(Against a, PointMm pan, boolean left) {
    Body body = a.body();
    PointMm hip = a.road(pan, BodyPose.standingMm(body));
    double half = body.measures().get("bideltoidbreadth") / 2;
    double aside =
        a.reachMm(left, pan.x() - half, pan.x() + half, hip.z() + body.hipToShoulderMm())
            + half
            + BESIDE_MM;
    Posture stands =
        BodyPose.pose(
                body,
                hip,
                0,
                under(a, hip),
                BodyPose.hanging(body, hip, 0),
                BodyPose.width(body, body.hipHalfMm(), 0, body.shoulderHalfMm() + 40))
            .posture();
    return new GettingInPose(Step.BESIDE, stands, stands, left, aside);
  }

  // --- stepping over

  private static TriedPose over(Against a, PointMm pan, PointMm over, boolean left) {
    TriedPose best = null;
    for (double from : FROM) {
      Stepping stepping = Stepping.of(a, pan.towards(a.seated().ankle(), from), left);
      for (PointMm by : LIFTED) {
        best = stepping.lifted(a, best, over.plus(by));
        if (best.reached() && best.mm() >= FREE_MM) {
          return best;
        }
      }
    }
    return best;
  }

  /**
   * Somebody who stands on one leg, whatever the other does.
   *
   * @param asideMm middle plane of the machine to that of the body, mm
   * @param hand what the hand of the lifted leg's side does
   * @param handMm how far that hand is out, mm
   */
  private record Stepping(
      PointMm hip, boolean left, double asideMm, Posture outer, HandContact hand, double handMm) {

    static Stepping of(Against a, PointMm from, boolean left) {
      Body body = a.body();
      PointMm hip = a.road(from, BodyPose.standingMm(body));
      double half = Figure.footBreadthMm(body) / 2;
      double room = body.foot().toeMm();
      double foot =
          a.reachMm(left, hip.x() - room, hip.x() + room, hip.z() - body.thighMm() / 2)
              + FOOT_AIR_MM
              + half;
      double aside = foot - body.hipHalfMm();
      HandContact hangs = BodyPose.hanging(body, hip, STEPPING);
      double hanging = body.shoulderHalfMm() + 40;
      PoseResult outer =
          BodyPose.pose(
              body,
              hip,
              STEPPING,
              under(a, hip),
              hangs,
              BodyPose.width(body, body.hipHalfMm(), 0, hanging));
      Optional<RestPart> hold = a.holds.beside(a.sitting).stream().findFirst();
      return new Stepping(
          hip,
          left,
          aside,
          outer.posture(),
          hold.map(h -> (HandContact) new HandContact.Grip(a.places.pin(h.at()))).orElse(hangs),
          hold.map(h -> aside - a.places.value(h.y()) - a.places.value(h.length()) / 2)
              .orElse(hanging));
    }

    /** Returns the freer of a pose that was tried and this with the foot over a place. */
    TriedPose lifted(Against a, TriedPose best, PointMm over) {
      Body body = a.body();
      PointMm heel = over.minus(new PointMm(body.foot().ankle().x(), 0));
      PoseResult inner =
          BodyPose.pose(
              body,
              hip,
              STEPPING,
              BodyPose.flat(body, heel, 0),
              hand,
              BodyPose.width(body, asideMm, 0, handMm));
      GettingInPose pose = new GettingInPose(Step.OVER, outer, inner.posture(), left, asideMm);
      return a.freer(best, pose, TriedPose.reaches(inner));
    }
  }

  // --- sitting down, legs in

  /** Between seat and feet, these on the road as whoever sits down has them. */
  private static TriedPose rising(Against a, GettingInPose down, boolean left) {
    Body body = a.body();
    double shoulders = body.shoulderHalfMm() + 40;
    GoingDown trunk =
        GoingDown.of(
            body,
            down.outer(),
            BodyPose.standingMm(body),
            a.standing.ground(),
            (hip, recline) ->
                BodyPose.pose(
                    body,
                    hip,
                    recline,
                    onRoad(a, left).foot,
                    BodyPose.hanging(body, hip, recline),
                    BodyPose.width(body, leg(a, left).outMm(), 0, shoulders)));
    TriedPose best = null;
    for (double splay : SPLAY_MM) {
      PoseResult[] legs = new PoseResult[2];
      for (int k = 0; k < 2; k++) {
        OnRoad foot = onRoad(a, (k == 0) == left);
        legs[k] =
            BodyPose.pose(
                body,
                trunk.hip(),
                trunk.reclineRad(),
                foot.foot,
                BodyPose.hanging(body, trunk.hip(), trunk.reclineRad()),
                BodyPose.width(body, foot.outMm, splay, shoulders));
      }
      best = seated(a, best, Step.RISING, left, legs[0].posture(), legs[1].posture());
    }
    return best;
  }

  /** Feet on the road where they reach it beside the seat, as at a stop. */
  private static TriedPose down(Against a, boolean left) {
    TriedPose best = null;
    for (double splay : SPLAY_MM) {
      best =
          seated(
              a,
              best,
              Step.DOWN,
              left,
              withFoot(a, onRoad(a, left), splay).posture(),
              withFoot(a, onRoad(a, !left), splay).posture());
    }
    return best;
  }

  private static TriedPose seated(
      Against a, TriedPose best, Step step, boolean left, Posture outer, Posture inner) {
    GettingInPose pose = new GettingInPose(step, outer, inner, left, 0);
    return a.freer(best, pose, true);
  }

  private static GroundLeg leg(Against a, boolean left) {
    GroundLeg.Pair legs = GroundLeg.of(a.sitting, a.standing);
    return left ? legs.left() : legs.right();
  }

  /** A foot on the road beside the seat, so far out. */
  private record OnRoad(FootContact foot, double outMm) {}

  private static OnRoad onRoad(Against a, boolean left) {
    GroundLeg leg = leg(a, left);
    Body body = a.body();
    double road = a.standing.ground().along().angleRad();
    double down = leg.flatMm() <= 0 ? 0 : JointLimits.ANKLE_HIGH - Math.PI / 2;
    // the ankle comes down where the string ends, on a whole foot or on the ball
    PointMm along = PointMm.unit(road);
    PointMm heel = leg.foot().minus(along.times(body.foot().ankle().x()));
    FootContact foot =
        down == 0
            ? BodyPose.flat(body, heel, road)
            : new FootContact.Tiptoe(
                heel.plus(along.times(body.foot().ballMm() * Math.cos(down))), road - down, road);
    return new OnRoad(foot, leg.outMm());
  }

  private static PoseResult withFoot(Against a, OnRoad foot, double splayMm) {
    Posture seated = a.seated();
    Body body = a.body();
    return PoseSolver.solve(
        body,
        seated.hip(),
        seated.angles().recline(),
        new HeadTarget.Pitch(seated.angles().headPitch()),
        foot.foot,
        new HandContact.Grip(seated.grip()),
        BodyPose.width(body, foot.outMm, splayMm, seated.across().gripMm()));
  }

  /** One foot half way from the road to its rest, over what the leg goes over; the other down. */
  private static TriedPose legs(Against a, Posture down, PointMm over, boolean left) {
    Posture seated = a.seated();
    GroundLeg leg = leg(a, left);
    TriedPose best = null;
    for (double share : FROM) {
      for (PointMm by : LIFTED.subList(0, 3)) {
        PointMm heel = leg.foot().towards(seated.heel(), 0.3 + 0.4 * share);
        double up = Math.max(heel.z(), over.z()) + by.z();
        double out = Math.max(leg.outMm(), seated.across().ankleMm());
        double sole = 0.5 * seated.ball().minus(seated.heel()).angleRad();
        PoseResult lifted =
            withFoot(
                a,
                new OnRoad(BodyPose.flat(a.body(), new PointMm(heel.x(), up), sole), out),
                SPLAY_MM[1]);
        best = seated(a, best, Step.LEGS, left, lifted.posture(), down);
        if (best.mm() >= FREE_MM) {
          return best;
        }
      }
    }
    return best;
  }
}
