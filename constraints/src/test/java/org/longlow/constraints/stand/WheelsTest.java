package org.longlow.constraints.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** How wheels move against the frame, what goes with them, and when there is no road for both. */
class WheelsTest {

  private static Wheels wheels(TestMachine machine) {
    Layout layout = machine.layout();
    return Wheels.of(layout, Placer.place(layout).places());
  }

  /** A machine with a pin fixed to each wheel's carrier beside its axle. */
  private static TestMachine withStays(TestMachine machine) {
    return machine
        .with(
            "pins",
            "frontStay",
            "{'at': ['1500 mm', '420 mm'], 'nailed': true, 'with': 'front-wheel'}")
        .with(
            "pins",
            "rearStay",
            "{'at': ['120 mm', '410 mm'], 'nailed': true, 'with': 'rear-wheel'}");
  }

  private static TestMachine telescopic() {
    return TestMachine.runabout().part("front", "type", "'telescopic'").without("front", "pivot");
  }

  private static double turn(PointMm pivot, PointMm before, PointMm after) {
    return after.minus(pivot).angleRad() - before.minus(pivot).angleRad();
  }

  private static void turned(Wheels wheels, Places now, String pivot, String axle, String stay) {
    Places drawn = wheels.drawn();
    PointMm at = drawn.pin(pivot);
    assertThat(now.pin(axle).distance(at)).isCloseTo(drawn.pin(axle).distance(at), within(1e-9));
    assertThat(now.pin(stay).distance(at)).isCloseTo(drawn.pin(stay).distance(at), within(1e-9));
    assertThat(Math.IEEEremainder(turn(at, drawn.pin(stay), now.pin(stay)), 2 * Math.PI))
        .isCloseTo(
            Math.IEEEremainder(turn(at, drawn.pin(axle), now.pin(axle)), 2 * Math.PI),
            within(1e-12));
  }

  private static void others(Wheels wheels, Places now, String... moved) {
    Map<String, PointMm> drawn = new HashMap<>(wheels.drawn().pins());
    Map<String, PointMm> there = new HashMap<>(now.pins());
    for (String pin : moved) {
      assertThat(there.remove(pin)).as(pin).isNotEqualTo(drawn.remove(pin));
    }
    assertThat(there).isEqualTo(drawn);
  }

  @ParameterizedTest
  @ValueSource(strings = {"runabout", "tourer"})
  void whatIsFixedToALinkOrArmTurnsWithIt(String name) {
    Wheels wheels = wheels(withStays(TestMachine.named(name)));
    Places front = wheels.moved(25, 0);
    turned(wheels, front, "linkPivot", "frontAxle", "frontStay");
    others(wheels, front, "frontAxle", "frontStay");
    assertThat(front.pin("frontAxle").z()).isGreaterThan(wheels.drawn().pin("frontAxle").z() + 20);
    Places rear = wheels.moved(0, -25);
    turned(wheels, rear, "swingPivot", "rearAxle", "rearStay");
    others(wheels, rear, "rearAxle", "rearStay");
    assertThat(rear.pin("rearAxle").z()).isLessThan(wheels.drawn().pin("rearAxle").z() - 20);
    assertThat(wheels.moved(0, 0)).isSameAs(wheels.drawn());
    Places both = wheels.moved(25, -25);
    assertThat(both.pin("frontStay")).isEqualTo(front.pin("frontStay"));
    assertThat(both.pin("rearStay")).isEqualTo(rear.pin("rearStay"));
  }

  /** Rake 24 degrees: 20 mm up the legs are 20 sin 24 back and 20 cos 24 up. */
  @Test
  void whatIsFixedToAForkSlidesWithIt() {
    Wheels wheels = wheels(withStays(telescopic()));
    Places now = wheels.moved(20, 0);
    others(wheels, now, "frontAxle", "frontStay");
    double rake = Math.toRadians(24);
    PointMm shift = new PointMm(-20 * Math.sin(rake), 20 * Math.cos(rake));
    for (String pin : new String[] {"frontAxle", "frontStay"}) {
      assertThat(now.pin(pin).minus(wheels.drawn().pin(pin)).distance(shift)).isLessThan(1e-6);
    }
  }

  private static double rise(Suspension suspension, double travel) {
    return suspension.path().axle(travel).z() - suspension.path().axle(0).z();
  }

  @Test
  void bumpAndDroopAreRisesOfTheAxle() {
    for (TestMachine machine : new TestMachine[] {TestMachine.runabout(), telescopic()}) {
      Wheels wheels = wheels(machine);
      for (Suspension s : new Suspension[] {wheels.frontSuspension(), wheels.rearSuspension()}) {
        assertThat(rise(s, s.bumpMm())).isCloseTo(50, within(1e-9));
        assertThat(rise(s, -s.droopMm())).isCloseTo(-40, within(1e-9));
      }
      assertThat(wheels.frontSuspension().rateNPerMm()).isCloseTo(12, within(1e-12));
      assertThat(wheels.frontSuspension().preloadN()).isCloseTo(170, within(1e-12));
      assertThat(wheels.rearSuspension().rateNPerMm()).isCloseTo(19, within(1e-12));
      assertThat(wheels.rearSuspension().preloadN()).isCloseTo(420, within(1e-12));
      assertThat(wheels.faults()).isEmpty();
      assertThat(wheels.withoutRate()).isEmpty();
      assertThat(wheels.stands()).isTrue();
    }
  }

  @Test
  void aSpringWithoutARateIsNamed() {
    Wheels front = wheels(TestMachine.runabout().without("front", "rate", "preload"));
    assertThat(front.withoutRate()).containsExactly("front");
    assertThat(front.frontSuspension().preloadN()).isZero();
    Wheels rear = wheels(TestMachine.runabout().without("swingarm", "rate"));
    assertThat(rear.withoutRate()).containsExactly("swingarm");
    Wheels both =
        wheels(TestMachine.runabout().without("front", "rate").without("swingarm", "rate"));
    assertThat(both.withoutRate()).containsExactly("front", "swingarm");
  }

  @Test
  void withoutACarrierAWheelIsRigid() {
    Wheels wheels = wheels(TestMachine.runabout().lacking("front", "swingarm"));
    for (Suspension s : new Suspension[] {wheels.frontSuspension(), wheels.rearSuspension()}) {
      assertThat(s.bumpMm() + s.droopMm()).isZero();
    }
    assertThat(wheels.frontSuspension().path().axle(0)).isEqualTo(wheels.drawn().pin("frontAxle"));
    assertThat(wheels.rearSuspension().path().axle(0)).isEqualTo(wheels.drawn().pin("rearAxle"));
    assertThat(wheels.withoutRate()).isEmpty();
    assertThat(wheels.faults()).isEmpty();
    assertThat(wheels.stands()).isTrue();
  }

  /** A link of 120 mm that falls 8 degrees: 136.7 mm up, and no further. */
  @Test
  void aTravelThatTheLinkCannotMakeIsAFault() {
    assertThat(wheels(TestMachine.runabout().part("front", "bump", "'136 mm'")).faults()).isEmpty();
    Wheels wheels = wheels(TestMachine.runabout().part("front", "bump", "'137 mm'"));
    assertThat(wheels.faults())
        .singleElement()
        .satisfies(f -> assertThat(f.about()).isEqualTo("front"))
        .satisfies(
            f ->
                assertThat(f.text())
                    .startsWith("front cannot work as drawn and counts as rigid")
                    .contains("137"));
    assertThat(wheels.frontSuspension().bumpMm()).isZero();
    assertThat(wheels.rearSuspension().bumpMm()).isPositive();
  }

  private static Wheels axles(Wheels drawn, double rearX, double frontX) {
    Map<String, PointMm> pins = new HashMap<>(drawn.drawn().pins());
    pins.put("rearAxle", new PointMm(rearX, 300));
    pins.put("frontAxle", new PointMm(frontX, 300));
    return Wheels.of(drawn.layout(), drawn.drawn().withPins(pins));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 100.01, true, false",
    "0, 99.99, false, false",
    "50, 150.01, true, false",
    "0, -99.99, false, false",
    "0, -100.01, false, true",
    "1640, 0, false, true"
  })
  void axlesStandAHundredMillimetresApart(
      double rearX, double frontX, boolean stands, boolean swapped) {
    Wheels wheels =
        axles(wheels(TestMachine.runabout().lacking("front", "swingarm")), rearX, frontX);
    assertThat(wheels.stands()).isEqualTo(stands);
    if (stands) {
      assertThat(wheels.faults()).isEmpty();
      return;
    }
    assertThat(wheels.faults())
        .singleElement()
        .satisfies(f -> assertThat(f.about()).isEqualTo("wheels"))
        .satisfies(
            f ->
                assertThat(f.text())
                    .contains(
                        String.format(
                            java.util.Locale.ROOT,
                            "comes %.1f mm ahead of the rear axle",
                            frontX - rearX))
                    .contains("at least 100 mm"))
        .satisfies(
            f ->
                assertThat(f.text().contains("exchange the 'end' of frontWheel and rearWheel"))
                    .isEqualTo(swapped));
  }

  /**
   * 200/90-16 stands 203.2 + 180 mm high, 90/90-14 177.8 + 81: they differ by 124.4 mm, and a
   * millimetre more must lie between the axles.
   */
  @ParameterizedTest
  @CsvSource({
    "200/90-16, 90/90-14, 125.5, true",
    "200/90-16, 90/90-14, 125.3, false",
    "90/90-14, 200/90-16, 125.5, true",
    "90/90-14, 200/90-16, 125.3, false"
  })
  void noWheelStandsInsideTheOther(String front, String rear, double apart, boolean stands) {
    Wheels drawn =
        wheels(
            TestMachine.runabout()
                .lacking("front", "swingarm")
                .part("frontWheel", "tyre", "'" + front + "'")
                .part("rearWheel", "tyre", "'" + rear + "'"));
    Wheels wheels = axles(drawn, 0, apart);
    assertThat(wheels.stands()).isEqualTo(stands);
    if (!stands) {
      assertThat(wheels.faults().get(0).text())
          .contains("differ by as much as their axles are apart, 125.3 mm")
          .doesNotContain("are needed");
    }
  }

  @Test
  void aMachineWithoutAWheelStandsNowhere() {
    for (String end : new String[] {"frontWheel", "rearWheel"}) {
      Layout whole = TestMachine.runabout().layout();
      Wheels wheels = Wheels.of(Changed.without(whole, end), Placer.place(whole).places());
      assertThat(wheels.stands()).isFalse();
      assertThat(wheels.faults()).isEmpty();
      assertThat(wheels.withoutRate()).isEmpty();
    }
  }

  @Test
  void axlesAndWhatIsFixedToThemGoWithAWheel() {
    Wheels wheels = wheels(withStays(TestMachine.runabout()));
    for (String pin : new String[] {"frontAxle", "rearAxle", "frontStay", "rearStay"}) {
      assertThat(wheels.carries(pin)).as(pin).isTrue();
    }
    for (Part.End end : Part.End.values()) {
      boolean front = end == Part.End.FRONT;
      assertThat(wheels.carries(end, "frontAxle")).isEqualTo(front);
      assertThat(wheels.carries(end, "frontStay")).isEqualTo(front);
      assertThat(wheels.carries(end, "rearAxle")).isEqualTo(!front);
      assertThat(wheels.carries(end, "rearStay")).isEqualTo(!front);
    }
    for (String pin : new String[] {"linkPivot", "swingPivot", "headTop", "lidHinge"}) {
      assertThat(wheels.carries(pin)).as(pin).isFalse();
    }
  }

  /** 90/90-14 and 110/80-14: 258.8 and 265.8 mm under axles 1640 mm apart. */
  @Test
  void theRoadLiesARadiusUnderEachAxle() {
    Wheels wheels = wheels(TestMachine.runabout());
    Places moved = wheels.moved(30, -10);
    Ground ground = wheels.ground(moved);
    assertThat(ground.heightMm(moved.pin("frontAxle"))).isCloseTo(258.8, within(1e-9));
    assertThat(ground.heightMm(moved.pin("rearAxle"))).isCloseTo(265.8, within(1e-9));
    assertThat(ground.toRoad(moved.pin("rearAxle")).x()).isCloseTo(0, within(1e-9));
    double across = moved.pin("frontAxle").distance(moved.pin("rearAxle"));
    assertThat(ground.wheelbaseMm()).isCloseTo(Math.sqrt(across * across - 49), within(1e-9));
  }
}
