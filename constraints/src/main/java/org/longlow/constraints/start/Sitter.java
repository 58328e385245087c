package org.longlow.constraints.start;

import java.util.List;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.lock.HandsTurned;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.start.SeatKit.Spots;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Comfort;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.SeatOutcome;

/**
 * Finds where feet, hands and heads of everybody on the rider's seat are at ease, by seating them
 * there; everything is counted from the rear end of the pan.
 */
final class Sitter {

  /** Thighs that rise more lift the feet into the bars; less, and they slide off the pan. */
  private static final double EASY_THIGH_DEG = 8;

  private static final int NECK = 6;
  private static final int HEAD = 7;

  /** Hands at rest stay so far off legs and chest, mm. */
  private static final double EASY_GAP_MM = 34;

  /**
   * Grips are wished no higher over the pan's rear end than this, mm: many states let them be at
   * most 15 in over the seat as it is pressed down (law rows of the handlebar), and some 20 mm of
   * foam and slope are between the two.
   */
  static final double MOST_GRIP_MM = 400;

  private static final double SLOPE_MM = 20;

  /** A neck bends so far forward at ease, deg. */
  private static final double NECK_DEG = 14;

  /** Bent enough to follow a grip to full lock, deg; the band of comfort begins at 100. */
  private static final double EASY_ELBOW_DEG = 115;

  /** A joint far outside of its band. */
  private static final double UNEASY_COST = 1;

  private static final double LOW_BOARD_DEG = 45;

  private static final double LOCK = Draft.mmOf(Demands.Key.LOCK);

  /** Discomfort of a square millimetre that a grip is out of reach at full lock. */
  private static final double FAR_COST = 3e-4;

  /** From the foremost of legs to the head, mm. */
  private static final double HEAD_AHEAD_MM = 40;

  private static final double BOARD_UNDER_HEAD_MM = 40;

  private static final double HEAD_PRESSED_MM = 8;
  private static final double OFF_REST_COST = 0.3;
  private static final double HEAD_GAP_COST = 0.01;
  private static final double HEAD_SINK_COST = 0.005;

  private final SeatKit kit;
  private final double seatHeightMm;
  private final double leastBoardMm;
  private final Rolling rolling;
  private final List<Top> tops;

  /**
   * The top of something that thighs keep above, from the pan's rear end.
   *
   * @param fromMm where it begins; all that is ahead counts as so high
   * @param upMm how high it is
   */
  record Top(double fromMm, double upMm) {}

  /**
   * @param seatHeightMm rear end of the pan over the road
   * @param leastBoardMm lowest place of the foot boards over the road
   * @param rolling what carries the head, which the boards' front ends keep under
   * @param tops what thighs keep above
   */
  Sitter(SeatKit kit, double seatHeightMm, double leastBoardMm, Rolling rolling, List<Top> tops) {
    this.kit = kit;
    this.seatHeightMm = seatHeightMm;
    this.leastBoardMm = leastBoardMm;
    this.rolling = rolling;
    this.tops = List.copyOf(tops);
  }

  /** Seats everybody; the head rest last, for it alone decides how the head is held. */
  Spots settle() {
    Spots spots = guess();
    double[] feet = feetFrom(spots.board().x(), spots.board().z(), spots.boardDeg());
    if (feetCost(feet) > UNEASY_COST) {
      // a low head holds the boards down, and from there only another place is better
      double[] other = feetFrom(spots.board().x(), leastBoardMm - seatHeightMm, LOW_BOARD_DEG);
      feet = feetCost(other) < feetCost(feet) ? other : feet;
    }
    spots = spots.withFeet(new PointMm(Math.rint(feet[0]), Math.rint(feet[1])), Math.rint(feet[2]));
    Spots withFeet = spots;
    double[] hands =
        Seek.least(
            new double[] {spots.grip().x(), spots.grip().z()},
            new double[] {40, 40},
            new double[] {5, 5},
            x -> handCost(withFeet.withGrip(new PointMm(x[0], x[1]))));
    spots = spots.withGrip(new PointMm(Math.rint(hands[0]), Math.rint(hands[1])));
    return kit.head.isEmpty() ? spots : heads(spots);
  }

  private double[] feetFrom(double x, double z, double deg) {
    return Seek.least(
        new double[] {x, z, deg}, new double[] {40, 40, 8}, new double[] {5, 5, 2}, this::feetCost);
  }

  private double feetCost(double[] at) {
    return feetCost(guess().withFeet(new PointMm(at[0], at[1]), at[2]));
  }

  /** Limbs of the shortest, who must reach as well, at middling angles. */
  private Spots guess() {
    double lean = Math.toRadians(kit.reclineDeg);
    PointMm hip = new PointMm(105, 130);
    double thigh = Math.toRadians(Math.max(2, kit.reclineDeg - 25));
    PointMm knee = hip.plus(PointMm.unit(thigh).times(0.96 * kit.shortest(Body::thighMm)));
    PointMm ankle =
        knee.plus(PointMm.unit(thigh - Math.toRadians(48)).times(kit.shortest(Body::shankMm)));
    PointMm shoulder = hip.plus(new PointMm(-Math.sin(lean), Math.cos(lean)).times(430));
    PointMm grip = shoulder.plus(PointMm.unit(lean - Math.toRadians(25)).times(470));
    PointMm board =
        new PointMm(ankle.x() - 40, Math.max(ankle.z() - 120, leastBoardMm - seatHeightMm));
    return new Spots(board, 35, grip, PointMm.unit(0), PointMm.unit(1));
  }

  private double feetCost(Spots spots) {
    double cost =
        Costs.must(spots.board().z() + seatHeightMm, leastBoardMm)
            + Costs.must(
                rolling.headHeightMm - BOARD_UNDER_HEAD_MM, spots.boardFront().z() + seatHeightMm);
    for (Sitting s : kit.sit(spots, false)) {
      if (s.posture().isEmpty()) {
        return Double.MAX_VALUE;
      }
      Posture posture = s.posture().get();
      double[] strays = Comfort.strays(posture.angles(), s.body().sex());
      cost += Costs.legs(strays) + Costs.shortfall(s, PoseResult.Limb.LEG);
      cost += eased(posture);
      for (Top top : tops) {
        cost += Costs.must(gapMm(s, top), Draft.mmOf(Demands.Key.PERSON_GAP) + 6);
      }
    }
    return cost;
  }

  /** Returns how much somebody's thighs lack to what they must keep above, mm; 0 for nothing. */
  double lacksMm(List<Sitting> sittings) {
    double lacks = 0;
    for (Sitting s : sittings) {
      for (Top top : tops) {
        lacks = Math.max(lacks, Draft.mmOf(Demands.Key.PERSON_GAP) + 2 - gapMm(s, top));
      }
    }
    return lacks;
  }

  /** Inside the bands nothing pulls, so that middling angles win among those that cost nothing. */
  private static double eased(Posture posture) {
    double knee = Math.toDegrees(posture.angles().knee()) - 132;
    double ankle = Math.toDegrees(posture.angles().shankSole()) - 100;
    double thigh = Math.toDegrees(posture.knee().minus(posture.hip()).angleRad()) - EASY_THIGH_DEG;
    return 1e-5 * (knee * knee + ankle * ankle + thigh * thigh);
  }

  /** Straight up, and of a little more than what is over it, since thighs slope. */
  private static double gapMm(Sitting s, Top top) {
    return lowestThigh(s, top.fromMm() - SLOPE_MM) - top.upMm();
  }

  private static double lowestThigh(Sitting s, double fromMm) {
    return s.flesh().stream()
        .filter(f -> f.name().equals("thigh"))
        .mapToDouble(f -> Extents.lowestFrom(f.outline().getCoordinates(), fromMm))
        .min()
        .orElse(Double.MAX_VALUE);
  }

  /** The steering axis where its head stands as far back as somebody's legs let it. */
  private SteeringAxis axis(Sitting s) {
    PointMm top = rolling.headTop(0);
    double legs =
        s.flesh().stream()
            .filter(f -> f.name().equals("thigh") || f.name().equals("shank"))
            .mapToDouble(f -> f.outline().getEnvelopeInternal().getMaxX())
            .max()
            .orElse(0);
    PointMm shift = new PointMm(legs + HEAD_AHEAD_MM - top.x(), -seatHeightMm);
    return SteeringAxis.through(rolling.headBottom(0).plus(shift), top.plus(shift));
  }

  private double handCost(Spots spots) {
    double cost = Costs.below(-spots.grip().z(), -MOST_GRIP_MM);
    for (Sitting s : kit.sit(spots, false)) {
      if (s.posture().isEmpty()) {
        return Double.MAX_VALUE;
      }
      Posture posture = s.posture().get();
      double[] strays = Comfort.strays(posture.angles(), s.body().sex());
      cost += Costs.arms(strays) + Costs.shortfall(s, PoseResult.Limb.ARM);
      double arm = Math.toDegrees(posture.angles().arm()) - 35;
      double elbow = Math.toDegrees(posture.angles().elbow()) - EASY_ELBOW_DEG;
      cost += 1e-5 * (arm * arm + elbow * elbow);
      double far =
          new HandsTurned(s.body(), posture, axis(s), spots.grip(), kit.gripsYMm).farMm(LOCK);
      cost += FAR_COST * far * far;
      for (String limb : List.of("thigh", "shank", "chest", "pelvis")) {
        cost += Costs.clear(Costs.away(s, limb, spots.grip()) - SeatKit.GRIP_MM / 2, EASY_GAP_MM);
      }
    }
    return cost;
  }

  /** Looks for the slope and the place of a head rest on which nobody's neck is bent too far. */
  private Spots heads(Spots spots) {
    List<Sitting> free = kit.sit(spots, false);
    double off = 0;
    double slope = kit.reclineDeg - NECK_DEG;
    for (Sitting s : free) {
      off += behind(s, slope) + s.body().head().radiusMm() + SeatKit.HEAD_FOAM_MM - HEAD_PRESSED_MM;
    }
    double[] best =
        Seek.least(
            new double[] {slope, off / free.size()},
            new double[] {8, 16},
            new double[] {2, 4},
            x -> headCost(headAt(spots, free, x[0], x[1])));
    return headAt(spots, free, best[0], best[1]);
  }

  private static double behind(Sitting s, double slopeDeg) {
    return s.posture().orElseThrow().headCentre().dot(upAlong(slopeDeg).left());
  }

  private static PointMm upAlong(double slopeDeg) {
    double slope = Math.toRadians(slopeDeg);
    return new PointMm(-Math.sin(slope), Math.cos(slope));
  }

  /** A head rest so far behind the pan's rear end, long enough for all helmets. */
  private static Spots headAt(Spots spots, List<Sitting> free, double slopeDeg, double offMm) {
    PointMm along = upAlong(slopeDeg);
    double low = Double.MAX_VALUE;
    double high = -Double.MAX_VALUE;
    for (Sitting s : free) {
      double up = s.posture().orElseThrow().headCentre().dot(along);
      low = Math.min(low, up);
      high = Math.max(high, up);
    }
    PointMm foot = along.left().times(offMm);
    return spots.withHead(
        round(foot.plus(along.times(low - 70))), round(foot.plus(along.times(high + 60))));
  }

  private double headCost(Spots spots) {
    double cost = 0;
    for (Sitting s : kit.sit(spots, true)) {
      if (s.posture().isEmpty()) {
        return Double.MAX_VALUE;
      }
      double[] strays = Comfort.strays(s.posture().get().angles(), s.body().sex());
      cost += strays[NECK] * strays[NECK] + strays[HEAD] * strays[HEAD];
      SeatOutcome.Seated seated = s.seated().orElseThrow();
      if (!seated.headOnRest()) {
        double gap = seated.headGapMm();
        cost += OFF_REST_COST + HEAD_GAP_COST * (Double.isNaN(gap) ? 100 : Math.abs(gap));
      }
      cost += seated.headRest().stream().mapToDouble(load -> HEAD_SINK_COST * load.sinkMm()).sum();
    }
    return cost;
  }

  private static PointMm round(PointMm p) {
    return new PointMm(Math.rint(p.x()), Math.rint(p.z()));
  }
}
