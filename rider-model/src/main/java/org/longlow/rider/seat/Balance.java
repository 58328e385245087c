package org.longlow.rider.seat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Segment;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SegmentMass;

/**
 * Every force on somebody who sits at ease, with the places where they must act for the person to
 * stay put: forces and moments add up to nothing.
 *
 * <p>How large the forces are says {@link SeatLoad}, from a trunk whose parts all lie on one line;
 * their places here follow from the masses of the whole posture ({@link SegmentMass}). The hips are
 * loose hinges, so head, arms and trunk balance by where along its contact the back pushes, and the
 * legs by where along theirs the pan does. Each push keeps {@link Seating#KERN} of its contact away
 * from the ends of it; what that leaves, the muscles of the hips hold, and what they cannot pass on
 * is left over. Foam is pressed in parallel to its board all the same: how far its pressure centre
 * is from these places says how much flesh and pelvis must turn in the foam.
 *
 * <p>Under a flat sole the board pushes where the ankle is loose, between heel and ball.
 *
 * @param weights of the segments
 * @param pan what it pushes, at the skin
 * @param back what it pushes
 * @param headRest what it pushes, where the head leans on one
 * @param feet what both rests push
 * @param hands what both grips push
 * @param hipNm what the muscles of both hips hold, N m; positive lifts the thighs
 * @param panMm how far ahead of the foam's pressure centre the pan pushes, along it
 * @param backMm how far above the middle of its contact the back pushes
 * @param leftNm moment that nothing takes, N m
 */
public record Balance(
    List<Push> weights,
    Push pan,
    Push back,
    Optional<Push> headRest,
    Push feet,
    Push hands,
    double hipNm,
    double panMm,
    double backMm,
    double leftNm) {

  private static final double MM_PER_M = 1e3;

  /** To which the end of a contact is looked for, mm. */
  private static final double TOUCH_MM = 1e-3;

  /** A span of moments that something can take, N m. */
  private record Span(double low, double high) {

    static Span of(double a, double b) {
      return new Span(Math.min(a, b), Math.max(a, b));
    }

    Span and(Span other) {
      return new Span(Math.max(low, other.low), Math.min(high, other.high));
    }

    /** The moment in it that is nearest to {@code wanted}. */
    double nearest(double wanted) {
      return Math.max(low, Math.min(high, wanted));
    }
  }

  public Balance {
    weights = List.copyOf(weights);
  }

  /** Balances somebody who sits. */
  public static Balance of(Body body, SeatGeometry seat, SeatOutcome.Seated seated) {
    Posture p = seated.pose().posture();
    SeatLoad.Shares load = seated.load();
    PointMm hip = seated.hip();
    List<Push> upper = new ArrayList<>();
    List<Push> legs = new ArrayList<>();
    for (SegmentMass m : SegmentMass.of(body, p)) {
      (isLeg(m.segment()) ? legs : upper).add(weight(m, 0));
    }
    List<Push> weights = new ArrayList<>(upper);
    weights.addAll(legs);
    Push hands = new Push(p.grip(), new PointMm(0, load.handsN()));
    Push feet = feet(seat, p, legs.get(legs.size() - 1), load);
    Optional<Push> rest = headRest(seat, seated, 1);
    upper.add(hands);
    rest.ifPresent(upper::add);
    legs.add(feet);
    Push back = back(seated, 1);
    PointMm along = seat.pan().along();
    Push pan = pan(seat, seated, load);
    upper.add(back);
    double trunk = Push.aboutNm(hip, upper);
    Span byBack = byBack(body, seat, hip, upper, load.backN());
    double below = Push.aboutNm(hip, legs) + pan.aboutNm(hip);
    double normal = load.panNormalN() / MM_PER_M;
    double[] reach = panMm(body, seat, seated);
    // about the hip the trunk turns by −hips, the legs by hips
    Span byPan = Span.of(-below - normal * reach[0], -below - normal * reach[1]);
    Span both = byBack.and(byPan);
    double hips = both.low() <= both.high() ? both.nearest(0) : byPan.nearest(trunk);
    double shift = back(byBack, hips, trunk, load.backN());
    double panShift = -(below + hips) / normal;
    Push pushed = new Push(back.at().plus(up(seated).times(shift)), back.force());
    Push sat = new Push(pan.at().plus(along.times(panShift)), pan.force());
    double left = trunk - hips - load.backN() * shift / MM_PER_M;
    return new Balance(weights, sat, pushed, rest, feet, hands, hips, panShift, shift, left);
  }

  /**
   * Returns what the muscles of both hips hold while the machine slows down, N m, as {@link
   * #hipNm}: what head, arms and trunk leave to them wherever the back pushes.
   *
   * @param hands what both grips push then
   * @param kept of what back and head rest push at rest, 0 to 1
   */
  public static double hipsBrakingNm(
      Body body,
      SeatGeometry seat,
      SeatOutcome.Seated seated,
      Push hands,
      double kept,
      double brakingG) {
    List<Push> upper = new ArrayList<>(List.of(hands));
    for (SegmentMass m : SegmentMass.of(body, seated.pose().posture())) {
      if (!isLeg(m.segment())) {
        upper.add(weight(m, brakingG));
      }
    }
    headRest(seat, seated, kept).ifPresent(upper::add);
    upper.add(back(seated, kept));
    return byBack(body, seat, seated.hip(), upper, kept * seated.load().backN()).nearest(0);
  }

  /** What the hips must hold for the trunk, for all places at which the back may push. */
  private static Span byBack(
      Body body, SeatGeometry seat, PointMm hip, List<Push> upper, double backN) {
    double turn = backN * (0.5 - Seating.KERN) * backMm(body, seat, hip) / MM_PER_M;
    double trunk = Push.aboutNm(hip, upper);
    return new Span(trunk - turn, trunk + turn);
  }

  private static Push back(SeatOutcome.Seated seated, double kept) {
    return new Push(seated.back().centre(), up(seated).left().times(-kept * seated.load().backN()));
  }

  private static Optional<Push> headRest(
      SeatGeometry seat, SeatOutcome.Seated seated, double kept) {
    return seated
        .headRest()
        .map(c -> new Push(c.centre(), ahead(seat.headRest()).times(kept * c.normalN())));
  }

  /** Unit vector up the trunk that leans on the back. */
  private static PointMm up(SeatOutcome.Seated seated) {
    return PointMm.unit(Math.PI / 2 + (seated.load().backN() > 0 ? seated.reclineRad() : 0));
  }

  private static double back(Span byBack, double hips, double trunk, double backN) {
    return backN > 0 ? (trunk - byBack.nearest(hips)) / backN * MM_PER_M : 0;
  }

  private static boolean isLeg(Segment segment) {
    return switch (segment) {
      case THIGH, SHANK, FOOT -> true;
      default -> false;
    };
  }

  /**
   * Returns the weight of a segment.
   *
   * @param brakingG what throws it forward, over gravity
   */
  public static Push weight(SegmentMass m, double brakingG) {
    return new Push(m.centre(), new PointMm(brakingG, -1).times(m.massKg() * SeatLoad.GRAVITY));
  }

  /** Unit vector off a back or head rest. */
  private static PointMm ahead(Cushion cushion) {
    return cushion.along().left().times(-1);
  }

  private static Push feet(SeatGeometry seat, Posture p, Push foot, SeatLoad.Shares load) {
    PointMm force = new PointMm(0, load.pegsN());
    if (seat.foot() instanceof FootContact.BallOnPeg || !(load.pegsN() > 0)) {
      return new Push(p.ball(), force);
    }
    double loose = -foot.aboutNm(p.ankle()) * MM_PER_M / load.pegsN();
    double run = p.ball().x() - p.heel().x();
    double share = run == 0 ? 0 : (p.ankle().x() + loose - p.heel().x()) / run;
    return new Push(p.heel().towards(p.ball(), Math.max(0, Math.min(1, share))), force);
  }

  /** What the pan pushes at the pressure centre of its foam, friction at the skin. */
  private static Push pan(SeatGeometry seat, SeatOutcome.Seated seated, SeatLoad.Shares load) {
    double off = seat.pan().foam().thicknessMm() - seated.pan().sinkMm();
    return new Push(
        seated.pan().centre().plus(seat.pan().along().left().times(off)),
        new PointMm(-load.forwardN(), load.panVerticalN()));
  }

  /** Length of the torso's contact with the back, mm. */
  private static double backMm(Body body, SeatGeometry seat, PointMm hip) {
    double station = hip.minus(seat.back().from()).dot(seat.back().along());
    return Math.max(
        0, Seating.torsoTo(body, seat.back(), station) - Seating.torsoFrom(body, station));
  }

  /**
   * How far along the pan from the foam's pressure centre its push can be, mm: rearmost, foremost.
   * Thighs that rise from the pan leave it where their undersides are off the free foam, and foam
   * ahead of there carries nothing: they sink as deep as if the pan ended where they leave it, so
   * that a pan that reaches beyond costs nothing.
   */
  private static double[] panMm(Body body, SeatGeometry seat, SeatOutcome.Seated seated) {
    PointMm along = seat.pan().along();
    Underside outline = PanRate.outline(body, seat, seated);
    PointMm thigh = seated.pose().posture().knee().minus(seated.hip());
    double rise = along.cross(thigh) / Math.max(1, along.dot(thigh));
    double sink = seated.pan().sinkMm();
    double front = Math.min(outline.frontMm(), touchMm(outline, sink, rise));
    if (front < outline.frontMm()) {
      double low = 0;
      double high = outline.frontMm();
      while (high - low > TOUCH_MM) {
        front = 0.5 * (low + high);
        sink = PanRate.sinkMm(seat.pan(), outline.clipped(outline.rearMm(), front), seated);
        if (touchMm(outline, sink, rise) > front) {
          low = front;
        } else {
          high = front;
        }
      }
    }
    double rear = Math.max(outline.rearMm(), -FoamContact.edge(outline, sink));
    double centre = seated.pan().centre().minus(seated.hip()).dot(along);
    double kept = Seating.KERN * (front - rear);
    return new double[] {rear + kept - centre, front - kept - centre};
  }

  /** How far ahead a body that has sunk so far touches the foam, mm. */
  private static double touchMm(Underside outline, double sinkMm, double rise) {
    double lifts =
        rise > 0 ? Math.max(0, sinkMm - outline.flatGapMm()) / rise : Double.POSITIVE_INFINITY;
    return Math.max(FoamContact.edge(outline, sinkMm), lifts);
  }

  /** Returns every force from outside on the person. */
  public List<Push> all() {
    List<Push> all = new ArrayList<>(weights);
    all.addAll(List.of(pan, back, feet, hands));
    headRest.ifPresent(all::add);
    return all;
  }
}
