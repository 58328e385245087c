package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.LeanClearance;
import org.longlow.constraints.machine.ride.Tori;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** A machine rolled in turns: its springs in balance at each roll, and the road under it. */
class TurningTest {

  private static Rider rider(double kg, double x, double z, double y) {
    return new Rider(
        List.of(
            new Rider.Seated(
                new Occupant("Nell", Occupant.RIDER),
                List.of(new MassPoint(kg, new PointMm(x, z), y)),
                List.of())));
  }

  private static Stood stood(String name, double y) {
    return new Stood(TestMachine.named(name), rider(70, 550, 700, y));
  }

  /** The angle from the line of the contacts to the centre of mass, on tori turned in space. */
  private static double ideal(Stood stood, Standing s, Ground ground, double roll, int side) {
    Tyre front = stood.wheels.frontTyre();
    Tyre rear = stood.wheels.rearTyre();
    Tori tori =
        new Tori(
            ground.wheelbaseMm(),
            front.freeRadiusMm(),
            front.sectionRadiusMm(),
            rear.freeRadiusMm(),
            rear.sectionRadiusMm(),
            roll);
    PointMm centre = ground.toRoad(s.load().total().at());
    double[] levers = tori.levers(centre.x(), side * s.load().total().yMm(), centre.z());
    return Math.atan2(levers[0], levers[1]);
  }

  /** A mass near the axle of the thin tyre leans on that: 140 beside 40 mm is told apart. */
  @ParameterizedTest
  @CsvSource({"200", "1300"})
  void theTurnLeansOnTheTyreThatCarriesIt(double x) {
    TestMachine unlike =
        TestMachine.runabout()
            .part("rearWheel", "width", "'280 mm'")
            .part("rearWheel", "crown", "'140 mm'")
            .part("frontWheel", "width", "'80 mm'")
            .part("frontWheel", "crown", "'40 mm'");
    Stood stood =
        new Stood(
            unlike,
            new Rider(
                List.of(
                    new Rider.Seated(
                        new Occupant("Nell", Occupant.RIDER),
                        List.of(new MassPoint(400, new PointMm(x, 700))),
                        List.of()))));
    assertThat(stood.wheels.rearTyre().sectionRadiusMm()).isEqualTo(140);
    assertThat(stood.wheels.frontTyre().sectionRadiusMm()).isEqualTo(40);
    Standing laden = stood.in(Stance.Kind.LADEN);
    Turning.State state = new Turning(stood.wheels, laden, 1).at(Math.toRadians(30));
    assertThat(state.idealRad())
        .isCloseTo(ideal(stood, laden, state.ground(), Math.toRadians(30), 1), within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"runabout, 0", "runabout, 150", "tourer, -150"})
  void springsAreInBalanceAtEachRoll(String name, double y) {
    Stood stood = stood(name, y);
    Standing laden = stood.in(Stance.Kind.LADEN);
    for (int side : new int[] {1, -1}) {
      Turning turning = new Turning(stood.wheels, laden, side);
      // at the steps, between them, and near both ends
      for (double deg : new double[] {0, 0.7, 10, 11.3, 23.9, 36, 44.5, 57, 87.9, 88.7}) {
        double roll = Math.toRadians(deg);
        for (Turning.State state :
            deg == 10 || deg == 36
                ? List.of(turning.step((int) Math.round(deg / 2)), turning.at(roll))
                : List.of(turning.at(roll))) {
          assertThat(state.rollRad()).isCloseTo(roll, within(1e-12));
          double ideal = ideal(stood, laden, state.ground(), roll, side);
          assertThat(state.idealRad()).isCloseTo(Math.max(0, ideal), within(1e-6));
          // springs press across the plane of the wheels, which is rolled more than the force
          double factor = Math.cos(roll - state.idealRad()) / Math.cos(state.idealRad());
          // 0.03 mm, of springs up to 28 N/mm
          stood.balanced(
              laden, state.ground(), state.frontTravelMm(), state.rearTravelMm(), factor, 0.9);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"runabout", "tourer"})
  void theRoadLiesUnderBothTyres(String name) {
    Stood stood = stood(name, 0);
    Standing laden = stood.in(Stance.Kind.LADEN);
    Turning turning = new Turning(stood.wheels, laden, 1);
    Tyre front = stood.wheels.frontTyre();
    Tyre rear = stood.wheels.rearTyre();
    for (double deg : new double[] {0, 17, 41}) {
      Turning.State state = turning.at(Math.toRadians(deg));
      Places moved = stood.wheels.moved(state.frontTravelMm(), state.rearTravelMm());
      Ground ground = stood.wheels.ground(moved);
      assertThat(state.ground().rearContact().distance(ground.rearContact())).isLessThan(1e-9);
      assertThat(state.ground().frontContact().distance(ground.frontContact())).isLessThan(1e-9);
      LeanClearance lean =
          new LeanClearance(
              ground.wheelbaseMm(),
              new LeanClearance.Wheel(front.freeRadiusMm(), front.sectionRadiusMm()),
              new LeanClearance.Wheel(rear.freeRadiusMm(), rear.sectionRadiusMm()));
      for (PointMm p : new PointMm[] {new PointMm(700, 250), new PointMm(-120, 520)}) {
        PointMm onRoad = ground.toRoad(p);
        for (double y : new double[] {310, -40}) {
          assertThat(state.heightMm(p.x(), y, p.z()))
              .isCloseTo(
                  lean.clearanceMm(onRoad.x(), y, onRoad.z(), state.rollRad()), within(1e-9));
        }
      }
    }
  }

  @Test
  void aLoadAtOneSideTurnsToThatSideAsItsMirrorToTheOther() {
    Stood left = stood("runabout", 150);
    Stood right = stood("runabout", -150);
    double roll = Math.toRadians(31);
    Turning.State a = new Turning(left.wheels, left.in(Stance.Kind.LADEN), 1).at(roll);
    Turning.State b = new Turning(right.wheels, right.in(Stance.Kind.LADEN), -1).at(roll);
    Turning.State away = new Turning(left.wheels, left.in(Stance.Kind.LADEN), -1).at(roll);
    double off = left.in(Stance.Kind.LADEN).load().total().yMm();
    // the tourer's stand apart, all of it lies in the middle
    double stand = left.in(Stance.Kind.UNLADEN).load().total().yMm();
    assertThat(off).isGreaterThan(stand + 20);
    assertThat(a.idealRad()).isGreaterThan(away.idealRad() + 0.05);
    assertThat(a.idealRad()).isCloseTo(b.idealRad(), within(0.02));
    assertThat(a.frontTravelMm()).isGreaterThan(away.frontTravelMm());
  }

  @Test
  void fromUprightThereIsAStepEveryTwoDegrees() {
    Stood stood = stood("runabout", 0);
    Standing laden = stood.in(Stance.Kind.LADEN);
    Turning turning = new Turning(stood.wheels, laden, 1);
    // crowns of 45 and 55 mm, rings of 213.8 and 210.8: cos is 10 / (wheelbase + 3)
    double steepest = Math.toDegrees(Math.acos(10 / (laden.ground().wheelbaseMm() + 3)));
    assertThat(turning.steps()).isEqualTo((int) Math.ceil(steepest / 2));
    assertThat(turning.step(0).rollRad()).isZero();
    assertThat(Math.toDegrees(turning.step(20).rollRad())).isCloseTo(40, within(1e-9));
    assertThat(turning.step(20)).isSameAs(turning.step(20));
  }

  /** Nobody leans a machine whose weight lies under its tyres' crowns: it is rolled as it is. */
  @Test
  void aCentreBelowTheCrownsIsLeftAsRolled() {
    Stood low = new Stood(TestMachine.runabout(), rider(9000, 700, 125, 0));
    Standing laden = low.in(Stance.Kind.LADEN);
    assertThat(laden.ground().heightMm(laden.load().total().at())).isBetween(50.0, 99.0);
    Turning.State state = new Turning(low.wheels, laden, 1).at(0.4);
    assertThat(state.idealRad()).isEqualTo(0.4);
  }

  @Test
  void weightFarToTheOtherSideDoesNotPullOutwards() {
    Stood stood = stood("runabout", 900);
    Turning.State state =
        new Turning(stood.wheels, stood.in(Stance.Kind.LADEN), -1).at(Math.toRadians(1));
    assertThat(state.idealRad()).isZero();
  }

  @Test
  void withoutWeightsTheSpringsStayWhereTheyAre() {
    Stood stood = stood("runabout", 0);
    Standing s = stood.in(Stance.Kind.FULL_BUMP);
    Standing weightless =
        new Standing(
            s.condition(),
            s.rider(),
            s.frontTravelMm(),
            s.rearTravelMm(),
            s.places(),
            s.ground(),
            s.shapes(),
            s.moved(),
            null,
            Optional.empty());
    Standing halfKnown = stood.in(Stance.Kind.LADEN);
    Standing noLoad =
        new Standing(
            halfKnown.condition(),
            halfKnown.rider(),
            12,
            7,
            halfKnown.places(),
            halfKnown.ground(),
            halfKnown.shapes(),
            halfKnown.moved(),
            null,
            halfKnown.springs());
    for (double roll : new double[] {0.01, 0.5}) {
      Turning.State state = new Turning(stood.wheels, weightless, 1).at(roll);
      assertThat(state.frontTravelMm()).isCloseTo(s.frontTravelMm(), within(1e-9));
      assertThat(state.rearTravelMm()).isCloseTo(s.rearTravelMm(), within(1e-9));
      assertThat(state.idealRad()).isEqualTo(roll);
      Turning.State rolled = new Turning(stood.wheels, noLoad, 1).at(roll);
      assertThat(rolled.frontTravelMm()).isCloseTo(12, within(1e-9));
      assertThat(rolled.rearTravelMm()).isCloseTo(7, within(1e-9));
      assertThat(rolled.idealRad()).isEqualTo(roll);
      // what is in balance at no roll says nothing of a stance against its stops
      Turning.State bump = new Turning(stood.wheels, s, 1).at(roll);
      assertThat(bump.frontTravelMm()).isCloseTo(s.frontTravelMm(), within(1e-9));
      assertThat(bump.idealRad()).isNotEqualTo(roll);
    }
  }

  @Test
  void wheelsAndWhatHangsOnThemGoUpInATurn() {
    Stood stood = stood("runabout", 0);
    Standing laden = stood.in(Stance.Kind.LADEN);
    Turning turning = new Turning(stood.wheels, laden, 1);
    Turning.State state = turning.at(Math.toRadians(35));
    Places there = stood.wheels.moved(state.frontTravelMm(), state.rearTravelMm());
    PartShape battery = laden.shapes().get("battery");
    assertThat(turning.body(battery, state)).isSameAs(battery.prisms());
    for (String part : new String[] {"motor", "rearGuard", "frontGuard", "rearWheel"}) {
      String axle = part.startsWith("front") ? "frontAxle" : "rearAxle";
      PointMm by = there.pin(axle).minus(laden.places().pin(axle));
      assertThat(by.z()).isPositive();
      Prism before = laden.shapes().get(part).prisms().get(0);
      Prism now = turning.body(laden.shapes().get(part), state).get(0);
      assertThat(now.across()).isEqualTo(before.across());
      assertThat(now.outline().getEnvelopeInternal().getMinX())
          .isCloseTo(before.outline().getEnvelopeInternal().getMinX() + by.x(), within(1e-6));
      assertThat(now.outline().getEnvelopeInternal().getMinY())
          .isCloseTo(before.outline().getEnvelopeInternal().getMinY() + by.z(), within(1e-6));
    }
    for (String part : new String[] {"front", "swingarm"}) {
      List<Prism> now = turning.body(laden.shapes().get(part), state);
      List<Prism> anew = Shapes.body(laden.shapes().get(part).part(), there);
      assertThat(now).hasSameSizeAs(anew);
      assertThat(now.get(0).outline().equalsExact(anew.get(0).outline())).isTrue();
    }
  }
}
