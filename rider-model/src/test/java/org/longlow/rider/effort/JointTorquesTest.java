package org.longlow.rider.effort;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoublePredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Segment;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SegmentMass;
import org.longlow.rider.seat.Balance;
import org.longlow.rider.seat.Braced;
import org.longlow.rider.seat.Push;
import org.longlow.rider.seat.SampleSeats;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;

/**
 * Torques by another route: what hangs on a joint is turned about it by a millionth of a radian
 * either way, and work is counted: potential energy of the masses, and of each push times its way.
 */
class JointTorquesTest {

  private static final double TURN = 1e-6;

  /** Differences of energies of some 100 J by 1e-6 rad keep seven digits. */
  private static final double NM = 1e-5;

  private static final Wind WIND = new Wind(25, Shade.NONE);

  private final Body body = Body.of(Sex.FEMALE, 1660, 63, Gear.RIDING);
  private final SeatGeometry seat = SampleSeats.free();
  private final SeatOutcome.Seated seated = SampleSeats.seated(body, seat);
  private final Posture p = seated.pose().posture();
  private final Balance balance = Balance.of(body, seat, seated);

  private static Set<Segment> beyond(Joint joint) {
    return switch (joint) {
      case NECK -> EnumSet.of(Segment.HEAD);
      case SHOULDER -> EnumSet.of(Segment.UPPER_ARM, Segment.FOREARM, Segment.HAND);
      case ELBOW -> EnumSet.of(Segment.FOREARM, Segment.HAND);
      case KNEE -> EnumSet.of(Segment.SHANK, Segment.FOOT);
      case ANKLE -> EnumSet.of(Segment.FOOT);
      case HIP -> EnumSet.of(Segment.THIGH, Segment.SHANK, Segment.FOOT);
    };
  }

  private PointMm at(Joint joint) {
    return switch (joint) {
      case NECK -> {
        double r = p.angles().recline();
        yield p.neckBase().plus(new PointMm(50 * Math.cos(r), 50 * Math.sin(r)));
      }
      case SHOULDER -> p.shoulder().plus(p.elbow().minus(p.shoulder()).times(0.104));
      case ELBOW -> p.elbow();
      case KNEE -> p.knee();
      case ANKLE -> p.ankle();
      case HIP -> p.hip();
    };
  }

  /** Energy lost when everything beyond a joint turns from +x to +z, per radian. */
  private double work(Joint joint, double brakingG, List<Push> pushes) {
    return (energy(joint, brakingG, pushes, -TURN) - energy(joint, brakingG, pushes, TURN))
        / (2 * TURN);
  }

  private double energy(Joint joint, double brakingG, List<Push> pushes, double turn) {
    double sum = 0;
    for (SegmentMass m : SegmentMass.of(body, p)) {
      if (beyond(joint).contains(m.segment())) {
        PointMm there = m.centre().turnedAbout(at(joint), turn);
        sum += m.massKg() * SeatLoad.GRAVITY * (there.z() - brakingG * there.x()) / 1000;
      }
    }
    for (Push push : pushes) {
      PointMm way = push.at().turnedAbout(at(joint), turn).minus(push.at());
      sum -= (push.force().x() * way.x() + push.force().z() * way.z()) / 1000;
    }
    return sum;
  }

  private List<Push> pushes(Joint joint, Push hands, Push feet, Wind wind) {
    List<Push> all = new ArrayList<>();
    for (Segment s : beyond(joint)) {
      all.add(wind.on(s, body, p));
    }
    if (beyond(joint).contains(Segment.HAND)) {
      all.add(hands);
    }
    if (beyond(joint).contains(Segment.FOOT)) {
      all.add(feet);
    }
    return all;
  }

  private static double sides(Joint joint) {
    return joint == Joint.NECK ? 1 : 2;
  }

  @ParameterizedTest
  @EnumSource(value = Joint.class, mode = EnumSource.Mode.EXCLUDE, names = "HIP")
  void ridingTorquesAreWorkPerTurn(Joint joint) {
    JointTorques torques = JointTorques.riding(body, seated, balance, WIND);
    List<Push> pushes = pushes(joint, balance.hands(), balance.feet(), WIND);
    assertThat(torques.nm(joint) * sides(joint)).isCloseTo(work(joint, 0, pushes), within(NM));
  }

  @ParameterizedTest
  @EnumSource(value = Joint.class, mode = EnumSource.Mode.EXCLUDE, names = "HIP")
  void brakingThrowsForward(Joint joint) {
    double g = 0.8; // beyond the tangent of the recline: hands hold the trunk
    Braced braced = Braced.of(body, seated, g);
    assertThat(braced.handsN()).isPositive();
    double r = seated.reclineRad();
    Push hands =
        new Push(
            p.grip(),
            new PointMm(
                -braced.handsN() * Math.cos(r),
                seated.load().handsN() - braced.handsN() * Math.sin(r)));
    Push feet =
        new Push(balance.feet().at(), new PointMm(-braced.feetN(), balance.feet().force().z()));
    JointTorques torques = JointTorques.braking(body, seat, seated, balance, Wind.STILL, g);
    assertThat(torques.nm(joint) * sides(joint))
        .isCloseTo(work(joint, g, pushes(joint, hands, feet, Wind.STILL)), within(NM));
  }

  /** Hips: all that the legs bear, the pan pushing where it does. */
  @Test
  void legsHangOnTheHips() {
    List<Push> pushes = List.of(balance.feet(), balance.pan());
    JointTorques torques = JointTorques.riding(body, seated, balance, WIND);
    assertThat(torques.nm(Joint.HIP) * 2).isCloseTo(work(Joint.HIP, 0, pushes), within(NM));
  }

  @Test
  void muscleGroupsAreThoseOnTheFarSide() {
    double bent = Math.toRadians(110);
    assertThat(Joint.NECK.against(-1, bent)).isEqualTo(Strength.NECK_EXTENSION);
    assertThat(Joint.ELBOW.against(-1, bent)).isEqualTo(Strength.ELBOW_FLEXION);
    assertThat(Joint.ELBOW.against(1, bent)).isEqualTo(Strength.ELBOW_EXTENSION);
    assertThat(Joint.HIP.against(-1, bent)).isEqualTo(Strength.HIP_FLEXION);
    assertThat(Joint.HIP.against(1, bent)).isEqualTo(Strength.HIP_EXTENSION);
    assertThat(Joint.KNEE.against(-1, bent)).isEqualTo(Strength.KNEE_EXTENSION);
    assertThat(Joint.KNEE.against(-1, Math.toRadians(160)))
        .isEqualTo(Strength.KNEE_EXTENSION_STRAIGHT);
    assertThat(Joint.KNEE.against(1, bent)).isEqualTo(Strength.KNEE_FLEXION);
    assertThat(Joint.ANKLE.against(1, bent)).isEqualTo(Strength.ANKLE_PLANTAR);
    assertThat(Joint.ANKLE.against(-1, bent)).isEqualTo(Strength.ANKLE_DORSAL);
  }

  /** A head on its rest cannot fall back, whatever the wind; braking throws it off forward. */
  @Test
  void aRestHoldsTheHeadBackOnly() {
    SeatGeometry rest = SampleSeats.withRest();
    Body man = Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
    SeatOutcome.Seated leans = SampleSeats.seated(man, rest);
    assertThat(leans.headOnRest()).isTrue();
    Balance b = Balance.of(man, rest, leans);
    assertThat(JointTorques.riding(man, leans, b, WIND).nm(Joint.NECK)).isZero();
    assertThat(JointTorques.braking(man, rest, leans, b, Wind.STILL, 0.9).nm(Joint.NECK))
        .isLessThan(-3);
  }

  /** Half of ρ v²; an ellipse and a cylinder by their areas. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 25})
  void windPressesOnWhatStandsOut(double speed) {
    Wind wind = new Wind(speed, Shade.NONE);
    double q = speed == 0 ? 0 : 382.8125;
    assertThat(wind.pressurePa()).isCloseTo(q, within(1e-9));
    double r = body.head().radiusMm() / 1000;
    double half = (0.5 * body.measures().get("headbreadth") + 47) / 1000;
    Push head = wind.on(Segment.HEAD, body, p);
    assertThat(head.force().x()).isCloseTo(-q * 0.5 * Math.PI * r * half, within(1e-9));
    assertThat(head.at().z()).isCloseTo(p.headCentre().z(), within(1e-9));
    double calf = body.measures().get("calfcircumference") / (2 * Math.PI) / 1000;
    double high = (p.knee().z() - p.ankle().z()) / 1000 + 2 * calf;
    assertThat(wind.on(Segment.SHANK, body, p).force().x())
        .isCloseTo(-q * 1.1 * 4 * calf * high, within(1e-9));
    assertThat(wind.on(Segment.TRUNK, body, p).force().x()).isZero();
  }

  @Test
  void whatStandsAheadTakesTheWindOff() {
    double top = p.headCentre().z() + body.head().radiusMm();
    double front = p.headCentre().x() + body.head().radiusMm();
    double all = WIND.on(Segment.HEAD, body, p).force().x();
    Wind half = shaded(x -> x <= front + 1e-9, span(0, p.headCentre().z()));
    assertThat(half.on(Segment.HEAD, body, p).force().x()).isCloseTo(0.5 * all, within(1e-9));
    assertThat(half.on(Segment.HEAD, body, p).at().z())
        .isCloseTo(top - 0.5 * body.head().radiusMm(), within(1e-9));
    assertThat(shaded(x -> true, span(0, top)).on(Segment.HEAD, body, p).force().x()).isZero();
  }

  /** Wind comes in under a roof and between two things, not where they overlap. */
  @Test
  void airComesInUnderWhatStandsHigh() {
    double r = body.head().radiusMm();
    double z = p.headCentre().z();
    double all = WIND.on(Segment.HEAD, body, p).force().x();
    Push under = shaded(x -> true, span(z, z + 2 * r)).on(Segment.HEAD, body, p);
    assertThat(under.force().x()).isCloseTo(0.5 * all, within(1e-9));
    assertThat(under.at().z()).isCloseTo(z - 0.5 * r, within(1e-9));
    Wind roof = shaded(x -> true, span(z + r, z + 2 * r));
    assertThat(roof.on(Segment.HEAD, body, p).force().x()).isCloseTo(all, within(1e-9));
    // a quarter over the middle is open: the highest comes first, and two overlap
    Push two =
        shaded(x -> true, span(z + 0.5 * r, z + r), span(z - 0.75 * r, z - r / 3), span(z - r, z))
            .on(Segment.HEAD, body, p);
    assertThat(two.force().x()).isCloseTo(0.25 * all, within(1e-9));
    assertThat(two.at().z()).isCloseTo(z + 0.25 * r, within(1e-9));
    Push ends = shaded(x -> true, span(z - 0.5 * r, z + 0.75 * r)).on(Segment.HEAD, body, p);
    // 0.5 r about z - 0.75 r and 0.25 r about z + 0.875 r, of 2 r
    assertThat(ends.force().x()).isCloseTo(0.375 * all, within(1e-9));
    assertThat(ends.at().z()).isCloseTo(z + (-0.375 + 0.21875) / 0.75 * r, within(1e-9));
  }

  /** Air passes beside what is narrow; of two limbs the one counts that is more open to it. */
  @Test
  void whatIsNarrowSheltersItsOwnBreadth() {
    double half = 0.5 * body.measures().get("headbreadth") + 47;
    double z = p.headCentre().z();
    double all = WIND.on(Segment.HEAD, body, p).force().x();
    Shade.Span sliver = new Shade.Span(0, 1e4, -0.05 * half, 0.05 * half);
    assertThat(shaded(x -> true, sliver).on(Segment.HEAD, body, p).force().x())
        .isCloseTo(0.95 * all, within(1e-9));
    // the lower half of the left half and all of a tenth of that: 1 - 0.25 - 0.025
    Push left =
        shaded(x -> true, new Shade.Span(0, z, 0, 1e3), new Shade.Span(0, 1e4, 0, 0.1 * half))
            .on(Segment.HEAD, body, p);
    assertThat(left.force().x()).isCloseTo(0.725 * all, within(1e-9));
    double arms = WIND.on(Segment.FOREARM, body, p).force().x();
    assertThat(shaded(x -> true, sliver).on(Segment.FOREARM, body, p).force().x())
        .isCloseTo(arms, within(1e-9));
    Shade.Span broad = new Shade.Span(0, 1e4, -1e3, 1e3);
    assertThat(shaded(x -> true, broad).on(Segment.FOREARM, body, p).force().x()).isZero();
    for (double side : new double[] {-1, 1}) {
      Shade.Span one = new Shade.Span(0, 1e4, Math.min(0, side * 1e3), Math.max(0, side * 1e3));
      assertThat(shaded(x -> true, one).on(Segment.FOREARM, body, p).force().x())
          .as("a screen at one side leaves the other arm in the wind")
          .isCloseTo(arms, within(1e-9));
    }
  }

  private static Wind shaded(DoublePredicate where, Shade.Span... spans) {
    return new Wind(25, x -> where.test(x) ? List.of(spans) : List.of());
  }

  private static Shade.Span span(double low, double high) {
    return new Shade.Span(low, high, -1e3, 1e3);
  }
}
