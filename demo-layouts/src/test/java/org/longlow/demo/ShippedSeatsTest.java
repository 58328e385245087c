package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Seats;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Support;

/** A person of 80 kg on the shipped seats, and on one soft layer in their place, new and worn. */
class ShippedSeatsTest {

  private static final FoamSpec SOFT =
      new FoamSpec(
          "soft",
          Formula.parse("50 mm"),
          Formula.parse("28 kg/m^3"),
          Optional.of(Formula.parse("90 N")),
          Optional.of(Formula.parse("1.9")),
          false,
          Optional.empty(),
          Optional.empty());

  @ParameterizedTest
  @ValueSource(strings = {"heron", "dunlin", "curlew"})
  void theShippedStacksHoldWhereOneSoftLayerBottoms(String name) {
    Placed placed = DemosTest.study(name).placed();
    SeatParts seat = SeatParts.of(placed.layout()).get(Occupant.RIDER);
    Body body = Body.of(Sex.MALE, 1756, 80, Gear.RIDING);
    Support shipped = on(seat, body, placed);
    assertThat(shipped.fresh()).isNotEqualTo(Support.Hold.BOTTOMS);
    assertThat(shipped.worn()).isNotEqualTo(Support.Hold.BOTTOMS);
    CushionPart soft = seat.pan().of(List.of(SOFT));
    SeatParts single =
        new SeatParts(seat.seat(), soft, seat.back(), seat.head(), seat.feet(), seat.hands());
    Support bad = on(single, body, placed);
    assertThat(bad.fresh()).isEqualTo(Support.Hold.BOTTOMS);
    assertThat(bad.worn()).isEqualTo(Support.Hold.BOTTOMS);
  }

  private static Support on(SeatParts seat, Body body, Placed placed) {
    SeatOutcome outcome = Seats.sit("somebody", body, seat, placed.places()).outcome();
    assertThat(outcome).as(outcome.toString()).isInstanceOf(SeatOutcome.Seated.class);
    return Support.of(((SeatOutcome.Seated) outcome).pan());
  }
}
