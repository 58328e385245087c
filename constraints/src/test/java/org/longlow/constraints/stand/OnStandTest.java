package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.machine.ride.Tori;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** Machines held on their stands at leans that are no rest, and at more rests than one. */
class OnStandTest {

  private static OnStand on(TestMachine machine) {
    Stood stood = new Stood(machine);
    Standing parked = stood.in(Stance.Kind.PARKED);
    return new OnStand(
        stood.wheels, parked, MassPoint.Sum.of(List.of(parked.load().total())), stand(stood));
  }

  private static StandPart stand(Stood stood) {
    return stood.layout.parts(StandPart.class).findFirst().orElseThrow();
  }

  private static TestMachine soft(String footZ) {
    TestMachine machine = TestMachine.named("trolley");
    for (String end : new String[] {"fr", "sw"}) {
      machine.part(end, "rate", "'4 N/mm'").part(end, "preload", "'200 N'");
    }
    return machine.with("pins", "sf", "['620 mm', '" + footZ + " mm']");
  }

  /** All leans at which the foot comes to the road, looked for at every twentieth of a degree. */
  private static List<OnStand.Held> rests(OnStand on, double step) {
    List<OnStand.Held> rests = new ArrayList<>();
    for (double deg = 0; deg < 45; deg += step) {
      double low = Math.toRadians(deg);
      double high = Math.toRadians(Math.min(45, deg + step));
      if (on.at(low).footOffMm() > 0 && on.at(high).footOffMm() <= 0) {
        for (int i = 0; i < 40; i++) {
          double middle = (low + high) / 2;
          if (on.at(middle).footOffMm() > 0) {
            low = middle;
          } else {
            high = middle;
          }
        }
        rests.add(on.at(low));
      }
    }
    return rests;
  }

  /** A foot that hardly dips to the road between two of its looks is seen all the same. */
  @ParameterizedTest
  @ValueSource(strings = {"49.9", "50", "50.05", "50.1"})
  void noRestIsPassedOver(String footZ) {
    OnStand on = on(soft(footZ));
    List<OnStand.Held> rests = rests(on, 0.05);
    assertThat(on.rests()).hasSameSizeAs(rests);
    for (int i = 0; i < rests.size(); i++) {
      assertThat(on.rests().get(i).leanRad()).isCloseTo(rests.get(i).leanRad(), within(1e-5));
    }
  }

  /** Nearly upright on springs almost home, or far over on springs let out. */
  @Test
  void ofTwoRestsTheOneThatTipsSoonerCounts() {
    OnStand on = on(soft("50"));
    List<OnStand.Held> rests = rests(on, 0.25);
    assertThat(rests).hasSize(2);
    double least =
        rests.stream()
            .mapToDouble(r -> r.statics().orElseThrow().leastTipRad())
            .min()
            .orElseThrow();
    OnStand.Held rest = on.rest().orElseThrow();
    assertThat(rest.statics().orElseThrow().leastTipRad()).isCloseTo(least, within(1e-5));
    assertThat(rests)
        .extracting(r -> r.statics().orElseThrow().leastTipRad())
        .anyMatch(tip -> tip > least + 0.005);
  }

  /** Shares add up to the weight, and at rest, not elsewhere, the foot is on the road. */
  @Test
  void aRestIsWhereTheFootIsOnTheRoad() {
    OnStand on = on(TestMachine.runabout());
    OnStand.Held rest = on.rest().orElseThrow();
    assertThat(rest.footOffMm()).isCloseTo(0, within(1e-4));
    assertThat(on.at(rest.leanRad() - 0.02).footOffMm()).isGreaterThan(2);
    assertThat(on.at(rest.leanRad() + 0.02).footOffMm()).isLessThan(-2);
    rest.statics()
        .ifPresent(
            s ->
                assertThat(s.frontShare() + s.rearShare() + s.footShare())
                    .isCloseTo(1, within(1e-12)));
    // the foot takes load off both springs
    OnStand.Held upright = on.at(0);
    assertThat(rest.frontTravelMm()).isLessThan(upright.frontTravelMm());
  }

  private static OnStand filed(String name) {
    return on(TestMachine.named(name));
  }

  /**
   * With springs stuck a lean is geometry alone: foot and centre of mass over the road are those of
   * tori turned in space.
   */
  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout", "trolley"})
  void stuckSpringsLeaveGeometryAlone(String name) {
    Stood stood = new Stood(TestMachine.named(name));
    Standing parked = stood.in(Stance.Kind.PARKED);
    Wheels wheels = stood.wheels;
    StandPart stand = stand(stood);
    MassPoint total = parked.load().total();
    OnStand stuck = new OnStand(wheels, parked, MassPoint.Sum.of(List.of(total)), stand).stuck();
    double y = parked.places().value(stand.y());
    assertThat(stuck.yMm()).isEqualTo(Math.abs(y));
    Ground ground = parked.ground();
    PointMm foot = ground.toRoad(parked.places().pin(stand.foot()));
    PointMm centre = ground.toRoad(total.at());
    for (double deg = 0; deg < 40; deg += 7.3) {
      OnStand.Held held = stuck.at(Math.toRadians(deg));
      Tori tori =
          new Tori(
              ground.wheelbaseMm(),
              wheels.frontTyre().freeRadiusMm(),
              wheels.frontTyre().sectionRadiusMm(),
              wheels.rearTyre().freeRadiusMm(),
              wheels.rearTyre().sectionRadiusMm(),
              Math.toRadians(deg));
      assertThat(held.leanRad()).isEqualTo(Math.toRadians(deg));
      assertThat(held.frontTravelMm()).isEqualTo(parked.frontTravelMm());
      assertThat(held.rearTravelMm()).isEqualTo(parked.rearTravelMm());
      assertThat(held.footOffMm())
          .isCloseTo(tori.at(foot.x(), Math.abs(y), foot.z())[2], within(1e-3));
      assertThat(held.massHeightMm())
          .isCloseTo(
              tori.at(centre.x(), Math.signum(y) * total.yMm(), centre.z())[2], within(1e-3));
    }
  }

  /** No farther over than can be written. */
  @Test
  void nothingLeansFartherThan45Degrees() {
    OnStand on = filed("runabout");
    OnStand.Held most = on.at(Math.toRadians(60));
    assertThat(Math.toDegrees(most.leanRad())).isBetween(44.0, 45.0 + 1e-9);
    assertThat(on.at(Math.toRadians(43)).leanRad()).isEqualTo(Math.toRadians(43));
  }

  /** A foot in the road of an upright machine is a rest at no lean; one high up is never one. */
  @Test
  void aFootThatIsTooLongOrTooShort() {
    OnStand.Held rest = on(soft("-40")).rest().orElseThrow();
    assertThat(rest.leanRad()).isZero();
    assertThat(rest.footOffMm()).isNegative();
    assertThat(on(soft("600")).rest()).isEmpty();
  }

  /** The last look is at the farthest lean: a foot that comes down at 43 degrees is seen. */
  @Test
  void aRestFarOverIsSeenToo() {
    double rad = Math.toRadians(43);
    double z = 150;
    for (int round = 0; round < 4; round++) {
      z -= on(soft(Double.toString(z))).at(rad).footOffMm() / Math.cos(rad);
    }
    List<OnStand.Held> rests = on(soft(Double.toString(z))).rests();
    assertThat(rests).isNotEmpty();
    assertThat(rests.get(rests.size() - 1).leanRad()).isCloseTo(rad, within(0.01));
  }

  /**
   * Leaned, the springs are where their forces hold the loads that are told: what a spring carries
   * is the wheel's load less what is unsprung, over the road's rise of its axle; where the foot
   * goes with the wheel, the foot's load over the rise of the foot as well.
   */
  @ParameterizedTest(name = "{0} deg, {1}")
  @CsvSource({
    "3, no wheel",
    "11, no wheel",
    "7, no wheel",
    "4, rear wheel",
    "9, rear wheel",
    "4, front wheel",
    "9, front wheel"
  })
  void springsHoldTheLoadsThatAreTold(double deg, String footOn) {
    TestMachine machine =
        switch (footOn) {
          case "rear wheel" -> footWith("[90, 60]", "rear-wheel");
          case "front wheel" -> footWith("[1330, 60]", "front-wheel");
          default -> soft("150");
        };
    Stood stood = new Stood(machine);
    Standing parked = stood.in(Stance.Kind.PARKED);
    Wheels wheels = stood.wheels;
    OnStand.Held held = on(machine).at(Math.toRadians(deg));
    ParkedStability s = held.statics().orElseThrow();
    Springs springs = parked.springs().orElseThrow();
    double weight = parked.load().total().massKg() * 9.80665;
    int free = 0;
    for (boolean front : new boolean[] {true, false}) {
      Suspension on = front ? wheels.frontSuspension() : wheels.rearSuspension();
      double travel = front ? held.frontTravelMm() : held.rearTravelMm();
      double wheelN = weight * (front ? s.frontShare() : s.rearShare());
      double unsprung = 9.80665 * (front ? springs.atFront() : springs.atRear()).massKg();
      double[] rise = riseMm(wheels, front, held, Math.toRadians(deg));
      double spring = on.preloadN() + on.rateNPerMm() * (travel + on.droopMm());
      double carried = (wheelN - unsprung) * rise[0];
      if (footOn.startsWith(front ? "front" : "rear")) {
        carried += weight * s.footShare() * rise[1];
        assertThat(weight * s.footShare() * rise[1]).isGreaterThan(5);
      }
      if (travel > -on.droopMm() + 1e-3 && travel < on.bumpMm() - 1e-3) {
        assertThat(carried).as("front " + front).isCloseTo(spring, within(0.01));
        free += footOn.startsWith(front ? "rear" : "front") ? 0 : 1;
      }
    }
    assertThat(free).isPositive();
    assertThat(held.frontTravelMm())
        .isBetween(-wheels.frontSuspension().droopMm(), wheels.frontSuspension().bumpMm());
  }

  private static TestMachine footWith(String at, String wheel) {
    return TestMachine.named("trolley")
        .with("pins", "sf", "{'at': " + at + ", 'with': '" + wheel + "'}");
  }

  /** What lies in the road holds nothing: the foot comes down, and that is no rest. */
  @Test
  void aCentreInTheRoadRestsNowhere() {
    Stood stood = new Stood(soft("150"));
    OnStand on =
        new OnStand(
            stood.wheels,
            stood.in(Stance.Kind.PARKED),
            MassPoint.Sum.of(List.of(new MassPoint(200, new PointMm(700, -300)))),
            stand(stood));
    assertThat(on.rests()).isNotEmpty().allMatch(held -> held.statics().isEmpty());
    assertThat(on.rest()).isEmpty();
  }

  /** A foot that is out by a millimetre just holds. */
  @ParameterizedTest
  @CsvSource({"1, true", "0.999, false", "-1, true", "-0.999, false"})
  void aFootAMillimetreOutHolds(String y, boolean holds) {
    OnStand stuck = on(TestMachine.named("trolley").part("st", "y", "'" + y + " mm'")).stuck();
    assertThat(stuck.at(0).statics().isPresent()).isEqualTo(holds);
  }

  /**
   * How far an axle, and a foot that goes with it, go up from the leaned road for each millimetre
   * of travel.
   */
  private static double[] riseMm(Wheels wheels, boolean atFront, OnStand.Held held, double lean) {
    double f = held.frontTravelMm();
    double r = held.rearTravelMm();
    double df = atFront ? 0.5 : 0;
    double dr = 0.5 - df;
    Tyre front = wheels.frontTyre();
    Tyre rear = wheels.rearTyre();
    Ground ground =
        Ground.under(
            wheels.moved(f, r).pin("RA"),
            rear.freeRadiusMm(),
            wheels.moved(f, r).pin("FA"),
            front.freeRadiusMm());
    Tori tori =
        new Tori(
            ground.wheelbaseMm(),
            front.freeRadiusMm(),
            front.sectionRadiusMm(),
            rear.freeRadiusMm(),
            rear.sectionRadiusMm(),
            lean);
    double[] rise = new double[2];
    for (int i = 0; i < 2; i++) {
      String pin = i == 1 ? "sf" : atFront ? "FA" : "RA";
      PointMm low = ground.toRoad(wheels.moved(f - df, r - dr).pin(pin));
      PointMm high = ground.toRoad(wheels.moved(f + df, r + dr).pin(pin));
      rise[i] = tori.at(high.x(), 0, high.z())[2] - tori.at(low.x(), 0, low.z())[2];
    }
    return rise;
  }
}
