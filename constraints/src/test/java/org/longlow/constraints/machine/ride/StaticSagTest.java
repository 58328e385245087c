package org.longlow.constraints.machine.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.ride.StaticSag.End;
import org.longlow.constraints.machine.ride.Suspension.State;
import org.longlow.rider.geom.PointMm;

class StaticSagTest {

  private static final double G = 9.80665;
  private static final double RAKE = Math.toRadians(27);
  private static final PointMm FRONT = new PointMm(1500, 299.9);
  private static final PointMm REAR = new PointMm(0, 314.9);
  private static final List<MassPoint> SPRUNG =
      List.of(new MassPoint(130, 640, 450), new MassPoint(80, 560, 700));

  private static final MassPoint.Sum ALL = MassPoint.Sum.of(SPRUNG);

  private static MassPoint.Sum on(MassPoint mass) {
    return MassPoint.Sum.of(List.of(mass));
  }

  private static End front(double rate, double preload, double droop, double bump, double tyre) {
    return new End(
        new Suspension(WheelPath.telescopic(FRONT, RAKE), droop, bump, rate, preload),
        on(new MassPoint(20, FRONT)),
        299.9,
        tyre);
  }

  private static End rear(double rate, double preload, double droop, double bump, double tyre) {
    return new End(
        new Suspension(WheelPath.swingarm(new PointMm(560, 390), REAR), droop, bump, rate, preload),
        on(new MassPoint(25, REAR)),
        314.9,
        tyre);
  }

  @Test
  void aMachineDrawnAtRestStaysWhereItIs() {
    // Preload chosen by hand so that each spring holds its end exactly as drawn.
    AxleLoads loads =
        AxleLoads.of(
            1500,
            List.of(
                SPRUNG.get(0), SPRUNG.get(1), new MassPoint(20, FRONT), new MassPoint(25, REAR)));
    WheelPath arm = WheelPath.swingarm(new PointMm(560, 390), REAR);
    double frontForce = (loads.frontN() - 20 * G) * Math.cos(RAKE);
    double rearForce = (loads.rearN() - 25 * G) * arm.direction(0).z();
    StaticSag sag =
        StaticSag.of(
            front(15, frontForce - 15 * 40, 40, 80, 1e12),
            rear(20, rearForce - 20 * 30, 30, 70, 1e12),
            ALL,
            1);
    assertThat(sag.settled()).isTrue();
    assertThat(sag.front().travelMm()).isCloseTo(0, within(1e-8));
    assertThat(sag.rear().travelMm()).isCloseTo(0, within(1e-8));
    assertThat(sag.placement().turnRad()).isCloseTo(0, within(1e-10));
    assertThat(sag.loads().frontN()).isCloseTo(loads.frontN(), within(1e-6));
  }

  @Test
  void theRestHasTheLeastEnergy() {
    // Independent of the force balance: gravity plus spring energy is least at the rest, tyres
    // stiff, found by comparing with small moves of either wheel.
    SplittableRandom random = new SplittableRandom(33);
    for (int i = 0; i < 60; i++) {
      End front =
          front(
              random.nextDouble(10, 25),
              random.nextDouble(0, 300),
              60,
              120,
              Double.POSITIVE_INFINITY);
      End rear =
          rear(
              random.nextDouble(12, 30),
              random.nextDouble(0, 300),
              60,
              120,
              Double.POSITIVE_INFINITY);
      StaticSag sag = StaticSag.of(front, rear, ALL, 1);
      assertThat(sag.settled()).isTrue();
      if (sag.front().state() != State.RIDING || sag.rear().state() != State.RIDING) {
        continue;
      }
      double sf = sag.front().travelMm();
      double sr = sag.rear().travelMm();
      double h = 1e-3;
      double df = (energy(front, rear, sf + h, sr) - energy(front, rear, sf - h, sr)) / (2 * h);
      double dr = (energy(front, rear, sf, sr + h) - energy(front, rear, sf, sr - h)) / (2 * h);
      // Central differences of about 1e6 N mm over 2e-3 mm resolve some 1e-6 N; forces are 1000 N.
      assertThat(df).isCloseTo(0, within(1e-3));
      assertThat(dr).isCloseTo(0, within(1e-3));
    }
  }

  private static double energy(End front, End rear, double sf, double sr) {
    PointMm fa = front.suspension().path().axle(sf);
    PointMm ra = rear.suspension().path().axle(sr);
    RigidMotion on = GroundPlane.stand(ra, rear.freeRadiusMm(), fa, front.freeRadiusMm());
    double e = 0;
    for (MassPoint m : SPRUNG) {
      e += m.massKg() * G * on.apply(m.at()).z();
    }
    e += front.unsprung().massKg() * G * on.apply(fa).z();
    e += rear.unsprung().massKg() * G * on.apply(ra).z();
    return e + spring(front.suspension(), sf) + spring(rear.suspension(), sr);
  }

  private static double spring(Suspension s, double travel) {
    double x = travel + s.droopMm();
    return s.preloadN() * x + s.rateNPerMm() * x * x / 2;
  }

  @Test
  void tyresGiveByLoadOverStiffness() {
    StaticSag sag = StaticSag.of(front(15, 100, 40, 120, 180), rear(20, 100, 40, 120, 200), ALL, 1);
    assertThat(sag.frontRadiusMm()).isCloseTo(299.9 - sag.loads().frontN() / 180, within(1e-8));
    assertThat(sag.rearRadiusMm()).isCloseTo(314.9 - sag.loads().rearN() / 200, within(1e-8));
    PointMm axle =
        sag.placement().apply(WheelPath.telescopic(FRONT, RAKE).axle(sag.front().travelMm()));
    assertThat(axle.z()).isCloseTo(sag.frontRadiusMm(), within(1e-8));
  }

  /** In a turn a tyre carries the load of the turn: a factor of 1.3 on what it stands on. */
  @Test
  void tyresGiveByTheLoadOfTheTurn() {
    StaticSag sag =
        StaticSag.of(front(15, 100, 40, 120, 180), rear(20, 100, 40, 120, 200), ALL, 1.3);
    assertThat(sag.settled()).isTrue();
    assertThat(sag.frontRadiusMm())
        .isCloseTo(299.9 - 1.3 * sag.loads().frontN() / 180, within(1e-8));
    assertThat(sag.rearRadiusMm()).isCloseTo(314.9 - 1.3 * sag.loads().rearN() / 200, within(1e-8));
    double sprung = (sag.loads().rearN() - 25 * G) * 1.3;
    PointMm way = WheelPath.swingarm(new PointMm(560, 390), REAR).direction(sag.rear().travelMm());
    assertThat(sprung * sag.placement().turn(way).z())
        .isCloseTo(100 + 20 * (sag.rear().travelMm() + 40), within(1e-5));
  }

  @Test
  void stopsAreKept() {
    StaticSag hard =
        StaticSag.of(front(15, 5000, 40, 80, 1e9), rear(20, 5000, 30, 70, 1e9), ALL, 1);
    assertThat(hard.front()).isEqualTo(new Suspension.Rest(-40, State.TOPPED_OUT));
    assertThat(hard.rear()).isEqualTo(new Suspension.Rest(-30, State.TOPPED_OUT));
    StaticSag soft = StaticSag.of(front(2, 0, 40, 80, 1e9), rear(2, 0, 30, 70, 1e9), ALL, 1);
    assertThat(soft.front()).isEqualTo(new Suspension.Rest(80, State.BOTTOMED));
    assertThat(soft.rear()).isEqualTo(new Suspension.Rest(70, State.BOTTOMED));
    assertThat(soft.settled()).isTrue();
  }

  /** The share of the load factor that the springs see: across the tyres they are stiff. */
  private static double inPlaneFactor(TurnLean lean) {
    return Math.cos(lean.correctionRad()) / Math.cos(lean.idealRollRad());
  }

  @Test
  void aTurnPressesItDeeper() {
    End front = front(15, 100, 60, 160, 1e9);
    End rear = rear(20, 100, 60, 160, 1e9);
    double factor = inPlaneFactor(TurnLean.of(60 / 3.6, 40, 600, 75));
    StaticSag upright = StaticSag.of(front, rear, ALL, 1);
    StaticSag turning = StaticSag.of(front, rear, ALL, factor);
    double sprung = (upright.loads().frontN() - 20 * G) * Math.cos(RAKE);
    // First-order estimate N (factor − 1)/k; pitch and load shift are second order, within 1 mm.
    assertThat(turning.front().travelMm() - upright.front().travelMm())
        .isCloseTo(sprung * (factor - 1) / 15, within(1.0));
    assertThat(turning.rear().travelMm()).isGreaterThan(upright.rear().travelMm());
  }

  @Test
  void aRigidRearEndStaysRigid() {
    End rigid =
        new End(Suspension.rigid(WheelPath.rigid(REAR)), on(new MassPoint(25, REAR)), 314.9);
    StaticSag sag = StaticSag.of(front(15, 0, 40, 120, 1e9), rigid, ALL, 1);
    assertThat(sag.rear()).isEqualTo(new Suspension.Rest(0, State.RIGID));
    // Front sags: the nose goes down.
    assertThat(sag.front().travelMm() > 0).isEqualTo(sag.placement().turnRad() < 0);
  }

  @Test
  void springArithmetic() {
    // 100 N of preload and 15 N/mm over 40 mm of droop
    Suspension s = front(15, 100, 40, 80, 1e9).suspension();
    assertThat(s.restUnder(100)).isEqualTo(new Suspension.Rest(-40, State.TOPPED_OUT));
    assertThat(s.restUnder(700).travelMm()).isCloseTo(0, within(1e-12));
  }

  @Test
  void whereTheRateIsNotKnownTheWheelStaysAsDrawn() {
    WheelPath fork = WheelPath.telescopic(FRONT, RAKE);
    for (double[] travel : new double[][] {{0, 80}, {40, 0}, {40, 80}, {40, 40}}) {
      Suspension unknown = new Suspension(fork, travel[0], travel[1], Double.NaN, 100);
      assertThat(unknown.known()).isFalse();
      assertThat(unknown.restUnder(700)).isEqualTo(new Suspension.Rest(0, State.UNKNOWN));
      assertThat(new Suspension(fork, travel[0], travel[1], 15, 100).known()).isTrue();
      assertThatThrownBy(() -> new Suspension(fork, travel[0], travel[1], -15, 100))
          .hasMessageContaining("wheel rate");
    }
    Suspension rigid = new Suspension(fork, 0, 0, Double.NaN, 0);
    assertThat(rigid.known()).isTrue();
    assertThat(rigid.restUnder(700)).isEqualTo(new Suspension.Rest(0, State.RIGID));
  }

  @Test
  void asMuchBumpAsDroopIsTravel() {
    Suspension even = front(15, 100, 40, 40, 1e9).suspension();
    assertThat(even.restUnder(400)).isEqualTo(new Suspension.Rest(-20, State.RIDING));
    assertThatThrownBy(() -> front(0, 100, 40, 40, 1e9)).hasMessageContaining("wheel rate");
  }

  /** 700 N on 100 N of preload and 15 N/mm press 40 mm: from 30 down, to 10 up. */
  @Test
  void theBumpStopIsMetWhereTheSpringPressesThatFar() {
    assertThat(front(15, 100, 30, 10, 1e9).suspension().restUnder(700))
        .isEqualTo(new Suspension.Rest(10, State.BOTTOMED));
    assertThat(front(15, 100, 30, 10.01, 1e9).suspension().restUnder(700).state())
        .isEqualTo(State.RIDING);
    assertThat(front(15, 100, 30, 9.99, 1e9).suspension().restUnder(700))
        .isEqualTo(new Suspension.Rest(9.99, State.BOTTOMED));
  }

  @Test
  void travelEndsWhereALinkStandsUpright() {
    WheelPath link = WheelPath.leadingLink(new PointMm(1370, 250), FRONT);
    double down = -link.leastTravelMm();
    double up = link.mostTravelMm();
    assertThat(new Suspension(link, down, up, 15, 0).known()).isTrue();
    assertThatThrownBy(() -> new Suspension(link, down + 0.01, up, 15, 0))
        .hasMessageContaining("straight down");
    assertThatThrownBy(() -> new Suspension(link, down, up + 0.01, 15, 0))
        .hasMessageContaining("straight up");
  }

  /** A tyre too soft for its load is taken as half its radius high. */
  @Test
  void aTyreThatGivesTooMuchKeepsHalfItsRadius() {
    StaticSag sag = StaticSag.of(front(15, 100, 40, 120, 1), rear(20, 100, 40, 120, 1), ALL, 1);
    assertThat(sag.frontRadiusMm()).isEqualTo(299.9 / 2);
    assertThat(sag.rearRadiusMm()).isEqualTo(314.9 / 2);
  }

  /** Unsprung masses beside the axle go with it: loads are those of all masses where they are. */
  @Test
  void loadsAreThoseOfTheMassesWhereTheyAre() {
    PointMm guard = new PointMm(1420, 610);
    End front =
        new End(
            new Suspension(WheelPath.telescopic(FRONT, RAKE), 40, 120, 15, 100),
            on(new MassPoint(20, guard, 35)),
            299.9);
    PointMm box = new PointMm(-120, 420);
    End rear =
        new End(
            new Suspension(WheelPath.swingarm(new PointMm(560, 390), REAR), 40, 120, 20, 100),
            on(new MassPoint(25, box, -60)),
            314.9);
    StaticSag sag = StaticSag.of(front, rear, ALL, 1);
    PointMm frontAxle = front.suspension().path().axle(sag.front().travelMm());
    PointMm rearAxle = rear.suspension().path().axle(sag.rear().travelMm());
    RigidMotion on = sag.placement();
    double moment = 0;
    double kg = 0;
    for (MassPoint m :
        List.of(
            SPRUNG.get(0),
            SPRUNG.get(1),
            new MassPoint(20, guard.plus(frontAxle.minus(FRONT))),
            new MassPoint(25, box.plus(rearAxle.minus(REAR))))) {
      kg += m.massKg();
      moment += m.massKg() * on.apply(m.at()).x();
    }
    assertThat(sag.loads().frontN()).isCloseTo(G * moment / on.apply(frontAxle).x(), within(1e-6));
    assertThat(sag.loads().frontN() + sag.loads().rearN()).isCloseTo(kg * G, within(1e-6));
    assertThat(sag.loads().total().yMm()).isCloseTo((20 * 35 - 25 * 60) / kg, within(1e-9));
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> front(0, 0, 40, 80, 1e9)).hasMessageContaining("wheel rate");
    assertThatThrownBy(() -> front(15, -1, 40, 80, 1e9)).hasMessageContaining("preload");
    assertThatThrownBy(() -> front(15, 0, Double.NaN, 80, 1e9)).hasMessageContaining("droop");
    assertThatThrownBy(() -> rear(15, 0, 40, 2000, 1e9)).hasMessageContaining("straight up");
    assertThatThrownBy(() -> front(15, 0, 40, 80, 0)).hasMessageContaining("tyre stiffness");
    assertThatThrownBy(() -> StaticSag.of(front(15, 0, 4, 8, 1e9), rear(15, 0, 4, 8, 1e9), ALL, 0))
        .hasMessageContaining("load factor");
    assertThatThrownBy(() -> GroundPlane.stand(REAR, 314.9, new PointMm(5, 320), 299.9))
        .hasMessageContaining("between axles");
  }

  @Test
  void bothTyresStandOnTheGroundAfterPlacing() {
    SplittableRandom random = new SplittableRandom(2);
    for (int i = 0; i < 300; i++) {
      PointMm ra = new PointMm(random.nextDouble(-50, 50), random.nextDouble(200, 500));
      PointMm fa = new PointMm(random.nextDouble(1200, 2000), random.nextDouble(200, 500));
      double rr = random.nextDouble(200, 350);
      double fr = random.nextDouble(200, 350);
      RigidMotion on = GroundPlane.stand(ra, rr, fa, fr);
      assertThat(on.apply(ra).x()).isCloseTo(0, within(1e-9));
      assertThat(on.apply(ra).z()).isCloseTo(rr, within(1e-9));
      assertThat(on.apply(fa).z()).isCloseTo(fr, within(1e-9));
      assertThat(on.apply(fa).distance(on.apply(ra))).isCloseTo(fa.distance(ra), within(1e-9));
      assertThat(on.inverse().apply(on.apply(fa)).distance(fa)).isLessThan(1e-9);
    }
  }

  /**
   * A counterweight ahead of the pivot, by moments of the arm about it: it takes from what the
   * wheel asks of the spring what its lever is to that of the axle.
   */
  @Test
  void whatHangsAheadOfThePivotBalancesTheArm() {
    WheelPath arm = WheelPath.swingarm(new PointMm(560, 390), REAR);
    PointMm ahead = new PointMm(700, 400);
    double lever = (560 - 700.0) / 560;
    MassPoint weight = new MassPoint(30, ahead);
    MassPoint wheel = new MassPoint(25, REAR);
    // springs so stiff that all stays as drawn
    StaticSag sag =
        StaticSag.of(
            front(1e6, 0, 0, 80, 1e12),
            new End(new Suspension(arm, 0, 70, 1e6, 0), on(wheel).plus(weight, lever), 314.9, 1e12),
            ALL.plus(weight, 1 - lever),
            1);
    double x = (130 * 640 + 80 * 560 + 20 * 1500 + 30 * 700) / (130.0 + 80 + 20 + 25 + 30);
    double rearN = (130 + 80 + 20 + 25 + 30) * G * (1500 - x) / 1500;
    assertThat(sag.loads().rearN()).isCloseTo(rearN, within(0.01));
    // of wheel load, wheel and weight about the pivot; the spring pulls along the arm's circle
    double moment = rearN * 560 - 25 * G * 560 + 30 * G * 140;
    double spring = 1e6 * sag.rear().travelMm();
    assertThat(spring * Math.hypot(560, 390 - 314.9)).isCloseTo(moment, within(20.0));
  }
}
