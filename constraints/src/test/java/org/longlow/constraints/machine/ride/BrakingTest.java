package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.StaticSag.End;
import org.longlow.rider.geom.PointMm;

/**
 * Springs under braking against forces and moments of the wheel cut free: the sag itself is found
 * by virtual work.
 */
class BrakingTest {

  private static final double G = 9.80665;
  private static final double RAKE = Math.toRadians(27);
  private static final PointMm FRONT = new PointMm(1500, 299.9);
  private static final PointMm REAR = new PointMm(0, 314.9);
  private static final PointMm ARM = new PointMm(560, 390);
  private static final double FRONT_KG = 20;
  private static final double REAR_KG = 25;
  private static final MassPoint.Sum SPRUNG =
      MassPoint.Sum.of(
          List.of(
              new MassPoint(130, new PointMm(640, 450)), new MassPoint(80, new PointMm(560, 700))));

  private static End end(WheelPath path, double rate, double preload, double kg, double radius) {
    PointMm axle = path.axle(0);
    return new End(
        new Suspension(path, 50, 90, rate, preload),
        MassPoint.Sum.of(List.of(new MassPoint(kg, axle))),
        radius);
  }

  private static End rear() {
    return end(WheelPath.swingarm(ARM, REAR), 22, 500, REAR_KG, 314.9);
  }

  private static double springN(Suspension.Rest rest, double rate, double preload) {
    return preload + rate * (rest.travelMm() + 50);
  }

  /** Loads by moments of the whole about the contacts, from masses where they now are. */
  private static double[] loads(StaticSag sag, WheelPath front, double brakingG) {
    double weight = 0;
    double mx = 0;
    double mz = 0;
    PointMm axle = sag.placement().apply(front.axle(sag.front().travelMm()));
    PointMm rear = sag.placement().apply(WheelPath.swingarm(ARM, REAR).axle(sag.rear().travelMm()));
    PointMm body = sag.placement().apply(SPRUNG.total().at());
    for (double[] m :
        new double[][] {
          {SPRUNG.massKg(), body.x(), body.z()},
          {FRONT_KG, axle.x(), axle.z()},
          {REAR_KG, rear.x(), rear.z()}
        }) {
      weight += m[0] * G;
      mx += m[0] * G * (m[1] - rear.x());
      mz += m[0] * G * m[2];
    }
    double frontN = (mx + brakingG * mz) / (axle.x() - rear.x());
    return new double[] {frontN, weight - frontN, weight};
  }

  @Test
  void aForkCarriesWhatTheWheelCutFreeAsksAlongIt() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 40; i++) {
      double rate = random.nextDouble(14, 30);
      double braking = random.nextDouble(0, 0.6);
      WheelPath path = WheelPath.telescopic(FRONT, RAKE);
      boolean swings = i % 2 == 0; // a slide does not swing: both are the same
      double grip = i % 3 == 0 ? random.nextDouble(0.1, 0.6) : Double.POSITIVE_INFINITY;
      StaticSag sag =
          StaticSag.braking(
              end(path, rate, 300, FRONT_KG, 299.9),
              rear(),
              SPRUNG,
              new StaticSag.Braking(braking, swings, grip));
      if (sag.front().state() != Suspension.State.RIDING) {
        continue;
      }
      double[] n = loads(sag, path, braking);
      // the front tyre holds no more than its grip, and the rear one slows down the rest
      double byFront = Math.min(braking * n[2], grip * n[0]);
      double legs = RAKE + sag.placement().turnRad();
      // along the legs, up and back: the road lifts and pushes back, weight and inertia against it
      double along =
          (n[0] - FRONT_KG * G) * Math.cos(legs)
              + (byFront - braking * FRONT_KG * G) * Math.sin(legs);
      assertThat(springN(sag.front(), rate, 300)).isCloseTo(along, within(1e-6));
      arm(sag, n, braking, braking * n[2] - byFront);
    }
  }

  @Test
  void aLinkCarriesTheMomentsAboutItsPivot() {
    SplittableRandom random = new SplittableRandom(6);
    int riding = 0;
    for (int i = 0; i < 80; i++) {
      double braking = random.nextDouble(0, 0.5);
      double rate = random.nextDouble(6, 20);
      boolean leading = random.nextBoolean();
      boolean swings = random.nextBoolean();
      PointMm pivot = new PointMm(leading ? 1250 : 1750, random.nextDouble(300, 420));
      WheelPath path =
          leading ? WheelPath.leadingLink(pivot, FRONT) : WheelPath.trailingLink(pivot, FRONT);
      StaticSag sag =
          StaticSag.braking(
              end(path, rate, 300, FRONT_KG, 299.9),
              rear(),
              SPRUNG,
              new StaticSag.Braking(braking, swings));
      if (sag.front().state() != Suspension.State.RIDING) {
        continue;
      }
      riding++;
      double[] n = loads(sag, path, braking);
      PointMm at = sag.placement().apply(pivot);
      PointMm axle = sag.placement().apply(path.axle(sag.front().travelMm()));
      // moments that turn the link upwards in front, N mm: x times up less z times forward; a rod
      // as
      // long and as level as the link takes what turns the brake, so that the road pushes the axle
      double pushed = swings ? 0 : axle.z();
      double road = (axle.x() - at.x()) * n[0] - (pushed - at.z()) * (-braking * n[2]);
      double wheel =
          (axle.x() - at.x()) * (-FRONT_KG * G) - (axle.z() - at.z()) * (braking * FRONT_KG * G);
      double up = (leading ? 1 : -1) * (road + wheel) / pivot.distance(FRONT);
      assertThat(springN(sag.front(), rate, 300)).as("%d", i).isCloseTo(up, within(1e-6));
      arm(sag, n, braking, 0);
    }
    assertThat(riding).isGreaterThan(20);
  }

  @Test
  void aShortLinkThatTurnsTheForceFasterThanItsSpringGivesComesToRest() {
    // going from rest to rest would swing for ever here: braking over the link's length is more
    // than the rate of the spring
    PointMm pivot = new PointMm(1590, 330);
    WheelPath path = WheelPath.trailingLink(pivot, FRONT);
    int riding = 0;
    for (double g = 0.3; g < 1; g += 0.02) {
      StaticSag sag =
          StaticSag.braking(
              end(path, 10, 900, FRONT_KG, 299.9), rear(), SPRUNG, new StaticSag.Braking(g, false));
      assertThat(sag.settled()).isTrue();
      if (sag.front().state() == Suspension.State.RIDING) {
        riding++;
        double[] n = loads(sag, path, g);
        PointMm at = sag.placement().apply(pivot);
        PointMm axle = sag.placement().apply(path.axle(sag.front().travelMm()));
        double moment =
            (at.x() - axle.x()) * (n[0] - FRONT_KG * G)
                - (axle.z() - at.z()) * (g * n[2] - g * FRONT_KG * G);
        assertThat(springN(sag.front(), 10, 900))
            .as("%.2f g", g)
            .isCloseTo(moment / pivot.distance(FRONT), within(1e-5));
      }
    }
    assertThat(riding).isGreaterThan(10);
  }

  /** The road lifts the rear wheel and, on its brake, pushes it back; its mass pushes forward. */
  private static void arm(StaticSag sag, double[] n, double braking, double brakeN) {
    if (sag.rear().state() != Suspension.State.RIDING) {
      return;
    }
    WheelPath path = WheelPath.swingarm(ARM, REAR);
    PointMm at = sag.placement().apply(ARM);
    PointMm axle = sag.placement().apply(path.axle(sag.rear().travelMm()));
    double moment =
        (at.x() - axle.x()) * (n[1] - REAR_KG * G)
            + (axle.z() - at.z()) * braking * REAR_KG * G
            + at.z() * brakeN;
    assertThat(springN(sag.rear(), 22, 500)).isCloseTo(moment / ARM.distance(REAR), within(1e-6));
  }

  @Test
  void withoutBrakingItRestsAsBefore() {
    End front = end(WheelPath.telescopic(FRONT, RAKE), 20, 300, FRONT_KG, 299.9);
    assertThat(StaticSag.braking(front, rear(), SPRUNG, new StaticSag.Braking(0, true)))
        .isEqualTo(StaticSag.of(front, rear(), SPRUNG, 1));
  }

  @Test
  void aForkDivesAndALeadingLinkThatHoldsTheBrakeRises() {
    End fork = end(WheelPath.telescopic(FRONT, RAKE), 20, 300, FRONT_KG, 299.9);
    End link = end(WheelPath.leadingLink(new PointMm(1250, 300), FRONT), 12, 300, FRONT_KG, 299.9);
    assertThat(
            StaticSag.braking(fork, rear(), SPRUNG, new StaticSag.Braking(0.3, true))
                .front()
                .travelMm())
        .isGreaterThan(StaticSag.of(fork, rear(), SPRUNG, 1).front().travelMm() + 5);
    assertThat(
            StaticSag.braking(link, rear(), SPRUNG, new StaticSag.Braking(0.3, true))
                .front()
                .travelMm())
        .isLessThan(StaticSag.of(link, rear(), SPRUNG, 1).front().travelMm() - 5);
  }
}
