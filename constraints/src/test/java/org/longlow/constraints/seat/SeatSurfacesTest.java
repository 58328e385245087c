package org.longlow.constraints.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Changed;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;

/** What people sit on, made anew from parts each time, and what keeps them from sitting. */
class SeatSurfacesTest {

  /** A layout and where its pins are. */
  private record Drawn(Layout layout, Places places) {
    static Drawn of(TestMachine machine) {
      Layout layout = machine.layout();
      return new Drawn(layout, Placer.place(layout).places());
    }

    SeatParts seat(String name) {
      return SeatParts.of(layout).get(name);
    }

    SeatGeometry geometry(String seat) {
      return Seats.geometry(seat(seat), places).orElseThrow();
    }

    Body body(String person) {
      return Seats.body(layout.crew().get(person), places);
    }

    Sitting sit(String person) {
      return Seats.sit(person, body(person), seat("rider"), places);
    }

    Drawn withPin(String pin, PointMm at) {
      Map<String, PointMm> pins = new HashMap<>(places.pins());
      pins.put(pin, at);
      return new Drawn(layout, places.withPins(pins));
    }
  }

  @Test
  void eachSeatHasItsOwnParts() {
    Drawn tourer = Drawn.of(TestMachine.tourer());
    assertThat(SeatParts.of(tourer.layout)).containsOnlyKeys("rider", "passenger");
    assertThat(SeatParts.of(tourer.layout).keySet()).containsExactly("rider", "passenger");
    SeatParts rider = tourer.seat("rider");
    assertThat(rider.seat()).isEqualTo("rider");
    assertThat(rider.parts())
        .extracting(Part::name)
        .containsExactly("pan", "back", "headRest", "boards", "grips");
    assertThat(rider.feet()).hasValueSatisfying(p -> assertThat(p.name()).isEqualTo("boards"));
    assertThat(rider.hands()).hasValueSatisfying(p -> assertThat(p.name()).isEqualTo("grips"));
    assertThat(tourer.seat("passenger").parts())
        .extracting(Part::name)
        .containsExactly("pillionPan", "pillionBack", "pillionPegs", "pillionGrips");
    assertThat(tourer.seat("passenger").head()).isEmpty();
    assertThat(SeatParts.pans(tourer.layout))
        .extracting(Part::name)
        .containsExactly("pan", "pillionPan");
  }

  @Test
  void whoSitsWherePersonByPerson() {
    Drawn tourer = Drawn.of(TestMachine.tourer());
    List<String> expected =
        tourer.layout.crew().values().stream()
            .flatMap(p -> p.seats().stream().map(seat -> p.name() + " " + seat))
            .toList();
    assertThat(Seats.of(tourer.layout, tourer.places))
        .extracting(s -> s.person() + " " + s.seat())
        .isEqualTo(expected);
    // without its pan, as while somebody draws it, a seat is none
    Layout bare = Changed.without(tourer.layout, "pillionPan");
    assertThat(Seats.of(bare, tourer.places))
        .isNotEmpty()
        .allMatch(s -> s.seat().equals("rider") && s.occupant().rides());
  }

  @Test
  void aBodyIsThatOfThePersonInTheirGear() {
    Drawn plain =
        Drawn.of(
            TestMachine.runabout()
                .with(
                    "crew",
                    "Nell",
                    "{'sex': 'female', 'stature': '1590 mm', 'mass': '57 kg', 'helmet': false,"
                        + " 'boots': false, 'clothes': false}")
                .with(
                    "crew",
                    "Joss",
                    "{'sex': 'male', 'stature': '1740 mm', 'mass': '77 kg', 'helmet': true,"
                        + " 'boots': true, 'measured': {'sittingheight': '905 mm'}}"));
    Body nell = plain.body("Nell");
    assertThat(nell.sex()).isEqualTo(Sex.FEMALE);
    assertThat(nell.massKg()).isCloseTo(57, within(1e-12));
    assertThat(nell.massInGearKg()).isCloseTo(57, within(1e-9));
    assertThat(nell.gear().helmetMm()).isZero();
    assertThat(nell.sheet().measures().get("stature")).isCloseTo(1590, within(1e-9));
    Body joss = plain.body("Joss");
    assertThat(joss.sex()).isEqualTo(Sex.MALE);
    assertThat(joss.gear().helmetMm()).isPositive();
    assertThat(joss.gear().heelMm()).isPositive();
    assertThat(joss.sheet().measures().get("sittingheight")).isCloseTo(905, within(1e-9));
  }

  /** Knees splay with the feet: 190 mm where those are 230 mm out; nobody's go out 600 mm. */
  @ParameterizedTest
  @CsvSource({
    "215, 310, 177.6, 215, 310",
    "230, 330, 190, 230, 330",
    "790, 790, 600, 790, 790",
    "900, 900, 600, 800, 800"
  })
  void limbsAreAsFarOutAsTheirRests(
      double feetY, double gripY, double knees, double feet, double hands) {
    Drawn drawn =
        Drawn.of(
            TestMachine.runabout()
                .part("boards", "y", "'" + feetY + " mm'")
                .part("grips", "y", "'" + gripY + " mm'"));
    SeatGeometry seat = drawn.geometry("rider");
    assertThat(seat.width().kneeHalfMm()).isCloseTo(knees, within(0.05));
    assertThat(seat.width().footHalfMm()).isCloseTo(feet, within(1e-9));
    assertThat(seat.width().gripHalfMm()).isCloseTo(hands, within(1e-9));
  }

  @Test
  void withoutGripsHandsLieOnTheThighs() {
    SeatGeometry seat = Drawn.of(TestMachine.runabout().lacking("grips")).geometry("rider");
    assertThat(seat.hand()).isInstanceOf(HandContact.OnThighs.class);
    assertThat(seat.width().gripHalfMm()).isEqualTo(330);
    Drawn held = Drawn.of(TestMachine.runabout());
    assertThat(((HandContact.Grip) held.geometry("rider").hand()).centre())
        .isEqualTo(held.places.pin("grip"));
  }

  @Test
  void aBoardIsMetOnTopAndAPegBehind() {
    Drawn board = Drawn.of(TestMachine.runabout());
    FootContact.Footboard top = (FootContact.Footboard) board.geometry("rider").foot();
    PointMm along = board.places.pin("boardFront").minus(board.places.pin("boardRear"));
    // 12 mm thick and sloping 22 degrees: 6 mm up and back
    double slope = Math.toRadians(22);
    PointMm up = new PointMm(-6 * Math.sin(slope), 6 * Math.cos(slope));
    assertThat(along.angleRad()).isCloseTo(slope, within(1e-6));
    assertThat(top.rear().distance(board.places.pin("boardRear").plus(up))).isLessThan(1e-4);
    assertThat(top.front().distance(board.places.pin("boardFront").plus(up))).isLessThan(1e-4);
    Drawn peg =
        Drawn.of(
            TestMachine.runabout()
                .with(
                    "parts",
                    "boards",
                    "{'kind': 'peg', 'at': 'boardRear', 'diameter': '40 mm', 'y': '200 mm',"
                        + " 'length': '90 mm'}"));
    PointMm met = ((FootContact.BallOnPeg) peg.geometry("rider").foot()).contact();
    // 20 mm from the centre at 45 degrees
    assertThat(met.minus(peg.places.pin("boardRear")).distance(new PointMm(-14.1421, 14.1421)))
        .isLessThan(1e-3);
  }

  @Test
  void foamIsThatOfItsLayers() {
    Drawn drawn =
        Drawn.of(
            TestMachine.runabout()
                .part(
                    "back",
                    "layers",
                    "[{'name': 'soft', 'thickness': '20 mm', 'density': '28 kg/m^3', 'ifd25': '90"
                        + " N', 'supportFactor': '1.9'}, {'name': 'mat', 'thickness': '10 mm',"
                        + " 'density': '30 kg/m^3', 'closedCell': true, 'wallStress': '5 kPa',"
                        + " 'polymerDensity': '930 kg/m^3'}]"));
    SeatGeometry seat = drawn.geometry("rider");
    assertThat(seat.back().foam().thicknessMm()).isCloseTo(30, within(1e-9));
    near(seat.back().foam().layers().get(0).foam(), Foam.openCell(28, 90, 1.9));
    near(seat.back().foam().layers().get(1).foam(), Foam.closedCell(30, 5, 930));
    assertThat(seat.back().widthMm()).isCloseTo(340, within(1e-9));
    assertThat(seat.pan().widthMm()).isCloseTo(360, within(1e-9));
    assertThat(seat.headRest()).isNull();
    assertThat(Drawn.of(TestMachine.tourer()).geometry("rider").headRest().widthMm())
        .isCloseTo(200, within(1e-9));
  }

  private static void near(Foam foam, Foam expected) {
    assertThat(foam.kind()).isEqualTo(expected.kind());
    for (double strain : new double[] {0.03, 0.2, 0.45}) {
      assertThat(foam.stressPa(strain))
          .isCloseTo(expected.stressPa(strain), within(1e-9 * expected.stressPa(strain)));
    }
  }

  private static String why(Drawn drawn) {
    Sitting sitting = drawn.sit("Nell");
    assertThat(sitting.seated()).isEmpty();
    assertThat(sitting.outcome()).isInstanceOf(SeatOutcome.Unseatable.class);
    assertThat(Seats.geometry(drawn.seat("rider"), drawn.places)).isEmpty();
    return ((SeatOutcome.Unseatable) sitting.outcome()).reason();
  }

  @Test
  void whatASeatLacksIsSaidAllAtOnce() {
    assertThat(why(Drawn.of(TestMachine.runabout().lacking("back"))))
        .startsWith("seat rider has no back;")
        .doesNotContain("feet");
    assertThat(why(Drawn.of(TestMachine.runabout().lacking("boards"))))
        .startsWith("seat rider has nowhere to put the feet;")
        .doesNotContain("back;");
    assertThat(why(Drawn.of(TestMachine.runabout().lacking("back", "boards"))))
        .contains("has no back;", ". It also has nowhere to put the feet;");
    assertThat(Drawn.of(TestMachine.runabout()).sit("Nell").seated()).isPresent();
  }

  /** A cushion 2.2 m wide, as while somebody types: it is said, and nobody falls. */
  @Test
  void surfacesThatCannotBeSeatNobody() {
    Drawn wide =
        Drawn.of(
            TestMachine.runabout()
                .part("pan", "left", "'1100 mm'")
                .part("pan", "right", "'1100 mm'"));
    assertThat(why(wide)).contains("2200");
    Drawn drawn = Drawn.of(TestMachine.runabout());
    Drawn point = drawn.withPin("panFront", drawn.places.pin("panRear"));
    assertThat(point.sit("Nell").seated()).isEmpty();
  }
}
