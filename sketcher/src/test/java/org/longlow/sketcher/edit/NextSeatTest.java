package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

/** What is added goes to the first seat that lacks it. */
class NextSeatTest {

  private static final Layout WREN = Tried.wren();
  private static final PointMm AT = new PointMm(-200, 640);

  private static Layout with(Layout layout, String specimen) {
    return Tried.of(layout, Adding.of(specimen).with(PinSpot.at(AT)).edit());
  }

  private static String seat(Layout layout, String part) {
    return layout.parts().get(part).seatOf().orElseThrow();
  }

  @Test
  void whatTheRiderHasGoesToWhoeverSitsBehind() {
    Layout now = WREN;
    for (String piece : List.of("pan", "back", "pegs", "grips")) {
      assertThat(Adding.of(piece).said(now)).isEqualTo("for the seat passenger");
      now = with(now, piece);
      assertThat(seat(now, piece)).isEqualTo("rider");
      assertThat(seat(now, piece + "2")).isEqualTo("passenger");
    }
    assertThat(seat(with(now, "pan"), "pan3")).as("both have one").isEqualTo("passenger2");
    // boards for the feet are in place of pegs
    assertThat(seat(with(WREN, "footboards"), "footboards")).isEqualTo("passenger");
  }

  @Test
  void whatTheRiderLacksIsTheRiders() {
    Map<String, Part> wheels = new LinkedHashMap<>(WREN.parts());
    wheels.values().removeIf(p -> p.seatOf().isPresent());
    Layout bare = Change.set(WREN, wheels, "parts");
    for (String piece : List.of("back", "pan", "headRest", "grips", "pegs")) {
      assertThat(Adding.of(piece).said(bare)).isEmpty();
      bare = with(bare, piece);
      assertThat(seat(bare, piece)).isEqualTo("rider");
    }
    assertThat(Adding.of("rail").said(bare)).isEmpty();
    assertThat(PuttingOne.PIN.said(bare)).isEmpty();
    assertThat(PuttingOne.SEAT.said(bare)).isEqualTo("for the seat passenger");
  }

  @Test
  void aSeatThatSomebodyIsMeantForIsTheNext() {
    Layout named = Additions.person(Sex.FEMALE).applied(WREN);
    named = Change.set(named, List.of("sidecar"), "crew", "woman", "seats");
    assertThat(seat(Adding.of("pan").with(PinSpot.at(AT)).edit().applied(named), "pan2"))
        .isEqualTo("sidecar");
  }
}
