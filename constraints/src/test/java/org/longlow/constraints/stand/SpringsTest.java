package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What stands on each wheel and what on the springs, from the masses in the file. */
class SpringsTest {

  private static double kg(MassPoint.Sum masses) {
    return masses.massKg();
  }

  private static Optional<Springs> known(Study study) {
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    return Springs.of(study.shapes().values(), Rider.NOBODY, wheels);
  }

  private static Springs springs(Study study) {
    return known(study).orElseThrow();
  }

  // wheels 8.5 and 8 kg, half of 14 and of 6 kg, guards of 0.6 and 0.5 kg on the axles, 15 kg of
  // motor in the hub
  @Test
  void aWheelCarriesItselfAndHalfOfWhatHoldsIt() {
    Study study = TestMachine.asFiled("runabout");
    Springs springs = springs(study);
    assertThat(kg(springs.atFront())).isCloseTo(8.5 + 7 + 0.6, within(1e-12));
    assertThat(kg(springs.atRear())).isCloseTo(8 + 3 + 0.5 + 15, within(1e-12));
    double all = study.shapes().values().stream().mapToDouble(s -> s.massKg()).sum();
    assertThat(kg(springs.sprung())).isCloseTo(all - 16.1 - 26.5, within(1e-9));
    assertThat(springs.atFront().total().at().x()).isGreaterThan(1300);
    assertThat(springs.atRear().total().at().x()).isLessThan(200);
  }

  @Test
  void whoSitsOnItIsOnTheSprings() {
    Study study = TestMachine.asFiled("runabout");
    Standing laden =
        study.standings().stream().filter(s -> s.kind() == Stance.Kind.LADEN).findFirst().get();
    Standing empty = study.standing(Condition.empty(Stance.Kind.UNLADEN)).orElseThrow();
    // 57 kg and 7.8 kg of gear
    assertThat(kg(laden.springs().orElseThrow().sprung()))
        .isCloseTo(kg(empty.springs().orElseThrow().sprung()) + 64.8, within(1e-9));
    assertThat(kg(laden.springs().orElseThrow().atFront())).isCloseTo(16.1, within(1e-12));
  }

  @Test
  void nothingIsKnownOfAWheelWithoutMass() {
    for (String[] bare : new String[][] {{"frontWheel", "front"}, {"rearWheel", "swingarm"}}) {
      TestMachine machine = TestMachine.runabout();
      for (String part : bare) {
        machine.without(part, "mass", "material");
      }
      Study study = machine.study();
      assertThat(known(study)).isEmpty();
    }
  }

  /** A box of 10 kg on one pin that goes with a wheel. */
  private static Springs boxed(String with, double x, double z) {
    Stood stood =
        new Stood(
            TestMachine.runabout()
                .with(
                    "pins",
                    "boxPin",
                    "{'at': ['"
                        + x
                        + " mm', '"
                        + z
                        + " mm'], 'nailed': true, 'with': '"
                        + with
                        + "'}")
                .with(
                    "parts",
                    "caseOnIt",
                    "{'kind': 'box', 'frame': 'boxPin', 'outline': {'points': [['0 mm', '0 mm'], ['60"
                        + " mm', '0 mm'], ['60 mm', '60 mm'], ['0 mm', '60 mm']]}, 'left': '30 mm',"
                        + " 'right': '30 mm', 'mass': '10 kg'}"));
    return Springs.of(stood.shapes.values(), Rider.NOBODY, stood.wheels).orElseThrow();
  }

  /** The swingarm turns about x = 330 mm; its axle is at 0, that of the front link at 1640. */
  @ParameterizedTest
  @CsvSource({
    "rear-wheel, 165, 0, 5",
    "rear-wheel, 82.5, 0, 7.5",
    "rear-wheel, 330, 0, 0",
    "rear-wheel, 400, 0, -2.121",
    "rear-wheel, -60, 0, 11.818",
    "front-wheel, 1640, 10, 0",
    "frame, 165, 0, 0"
  })
  void whatIsFixedToAnArmIsOnTheWheelAsFarAsItRisesWithIt(
      String with, double x, double front, double rear) {
    Springs springs = boxed(with, x, 480);
    assertThat(kg(springs.atFront())).isCloseTo(16.1 + front, within(0.02));
    assertThat(kg(springs.atRear())).isCloseTo(26.5 + rear, within(0.02));
    // nothing is lost or weighed twice
    double all = kg(springs.sprung()) + kg(springs.atFront()) + kg(springs.atRear());
    assertThat(all)
        .isCloseTo(kg(springs(TestMachine.asFiled("runabout")).sprung()) + 52.6, within(1e-9));
  }

  /** Off both stops with nobody on it. */
  private static TestMachine afloat() {
    return TestMachine.runabout().part("swingarm", "preload", "'0 N'");
  }

  /**
   * 60 kg on a plate of the arm behind its axle: what its spring carries, by moments of the arm.
   */
  @Test
  void aTopBoxOnTheArmPressesItsSpringMoreThanOnce() {
    TestMachine machine =
        afloat()
            .with(
                "pins",
                "boxPin",
                "{'at': ['-99 mm', '480 mm'], 'nailed': true, 'with': 'rear-wheel'}")
            .with(
                "parts",
                "caseOnIt",
                "{'kind': 'box', 'frame': 'boxPin', 'outline': {'points': [['-30 mm', '0 mm'], ['30"
                    + " mm', '0 mm'], ['30 mm', '60 mm'], ['-30 mm', '60 mm']]}, 'left': '30 mm',"
                    + " 'right': '30 mm', 'mass': '60 kg'}");
    Stood with = new Stood(machine);
    Stood without = new Stood(afloat());
    // rearward of the rear contact it adds 60 (1 + 99/base) to that and takes the rest from the
    // front
    Standing heavy = with.in(Stance.Kind.UNLADEN);
    double base = heavy.ground().wheelbaseMm();
    double onRear = 60 * (1 + 99 / base) - 60 * (330 + 99) / 330.0;
    double rate = with.wheels.rearSuspension().rateNPerMm();
    // the arm lies level, so that what is off the wheel load is off the spring
    double deeper = heavy.rearTravelMm() - without.in(Stance.Kind.UNLADEN).rearTravelMm();
    assertThat(deeper).isCloseTo(onRear * 9.80665 / rate, within(0.3));
    assertThat(deeper).isNegative();
  }

  /** A brake on a leading link turns the link, which holds the front up; on a rod it does not. */
  @Test
  void aRodTakesTheBrakesTorqueOffALink() {
    Study onLink = TestMachine.asFiled("runabout");
    Study onRod = TestMachine.runabout().part("front", "brakeRod", "true").study();
    double g = 0.1;
    StaticSag link = braking(onLink, g);
    StaticSag rod = braking(onRod, g);
    assertThat(braking(onRod, 0).front()).isEqualTo(braking(onLink, 0).front());
    assertThat(rod.front().travelMm()).isGreaterThan(link.front().travelMm() + 1);
    assertThat(braking(onLink, 2 * g).front().travelMm()).isLessThan(rod.front().travelMm());
  }

  private static StaticSag braking(Study study, double g) {
    return springs(study)
        .braking(Wheels.of(study.layout(), study.placed().places()), g, Double.POSITIVE_INFINITY);
  }

  @Test
  void otherSpringsAtTheWheelsRestElsewhere() {
    Study study = afloat().study();
    Springs springs = springs(study);
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    StaticSag own = springs.resting(wheels, wheels.frontSuspension(), wheels.rearSuspension());
    assertThat(own).isEqualTo(springs.rest(wheels, 1));
    Suspension rear = wheels.rearSuspension();
    Suspension stiffer =
        new Suspension(
            rear.path(), rear.droopMm(), rear.bumpMm(), 2 * rear.rateNPerMm(), rear.preloadN());
    StaticSag higher = springs.resting(wheels, wheels.frontSuspension(), stiffer);
    assertThat(higher.rear().travelMm()).isLessThan(own.rear().travelMm());
  }
}
