package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.rider.geom.PointMm;

/** What is on its way into a machine: a pin, a seat, a part of several pins. */
class PuttingTest {

  private static final Layout WREN = Tried.wren();
  private static final PointMm AT = new PointMm(-150, 620);
  private static final Hang WHEEL = new Hang("rearWheel", Pin.REAR_WHEEL, false);

  @Test
  void aPinNeedsOnePlaceAndGoesWithWhatItHangsOn() {
    Putting pin = PuttingOne.PIN;
    assertThat(pin.title()).isEqualTo("pin");
    assertThat(pin.isPlaced()).isFalse();
    assertThatThrownBy(pin::edit)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("pin has no place yet");
    Putting placed = pin.on(WHEEL).with(PinSpot.at(AT));
    assertThat(placed.isPlaced()).isTrue();
    assertThat(placed.next()).isEmpty();
    assertThat(placed.hang()).isEqualTo(WHEEL);
    assertThat(placed.ghosts(AT)).isEmpty();
    assertThat(placed.subjectIn(WREN)).isEqualTo("pin:pin");
    Layout after = placed.edit().applied(WREN);
    assertThat(after.pins()).hasSize(WREN.pins().size() + 1);
    assertThat(after.pins().get("pin").with()).isEqualTo(Pin.REAR_WHEEL);
    assertThat(Drawn.places(after).pin("pin")).isEqualTo(AT);
    assertThat(placed.subjectIn(after)).isEqualTo("pin:pin2");
    assertThat(placed.back().isPlaced()).isFalse();
    assertThat(placed.back().hang()).isEqualTo(WHEEL);
  }

  @Test
  void aSeatIsSeenWhereItWillLie() {
    Putting seat = PuttingOne.SEAT;
    assertThat(seat.title()).isEqualTo("seat");
    assertThat(seat.subjectIn(WREN)).isEqualTo("part:pan2");
    List<Putting.Ghost> ghosts = seat.ghosts(AT);
    assertThat(ghosts).extracting(g -> g.part().name()).containsExactly("pan", "back", "pegs");
    Layout after = seat.with(PinSpot.at(AT)).edit().applied(WREN);
    for (Putting.Ghost ghost : ghosts) {
      String first = ghost.part().pins().get(0);
      String there = after.parts().get(ghost.part().name() + "2").pins().get(0);
      assertThat(Drawn.places(after).pin(there)).isEqualTo(ghost.places().pin(first));
    }
  }

  @Test
  void aPartGivesItsLastPlaceBack() {
    Adding none = Adding.of("exhaust");
    assertThat(none.title()).isEqualTo("exhaust");
    assertThat(Adding.of("plateLamp").title()).isEqualTo("plate lamp");
    assertThat(none.back()).isEqualTo(none);
    Adding one = none.with(PinSpot.at(AT));
    Adding two = one.with(PinSpot.at(new PointMm(100, 400)));
    assertThat(two.back()).isEqualTo(one);
    assertThat(one.back()).isEqualTo(none);
    assertThat(one.subjectIn(WREN)).isEqualTo("part:exhaust");
    PointMm next = new PointMm(300, 350);
    assertThat(one.ghosts(next))
        .singleElement()
        .satisfies(
            ghost -> {
              assertThat(ghost.part()).isEqualTo(one.part());
              assertThat(ghost.places().pin(one.part().pins().get(0))).isEqualTo(AT);
              assertThat(ghost.places().pin(one.part().pins().get(1))).isEqualTo(next);
            });
    assertThat(Gallery.specimens())
        .allSatisfy(s -> assertThat(s.part().name()).isEqualTo(s.name()));
    assertThatThrownBy(() -> Adding.of("anvil")).isInstanceOf(IllegalArgumentException.class);
  }
}
