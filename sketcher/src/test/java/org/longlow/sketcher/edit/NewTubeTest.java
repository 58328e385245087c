package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TubePart;
import org.longlow.rider.geom.PointMm;

/** Tubes drawn point by point: ends, bends, pins that are there already. */
class NewTubeTest {

  private static final Layout WREN = Tried.wren();
  private static final PointMm A = new PointMm(300, 900);
  private static final PointMm B = new PointMm(700, 1000);

  @Test
  void eachKindIsDrawnThroughItsPoints() {
    assertThat(NewTube.kinds()).containsExactly("rail", "exhaust");
    PointMm crank = Drawn.places(WREN).pin("crank");
    for (String kind : NewTube.kinds()) {
      List<PinSpot> spots =
          List.of(PinSpot.at(A), PinSpot.at(B), new PinSpot(crank, Optional.of("crank")));
      Layout after = Tried.of(WREN, NewTube.of(kind, "new", spots));
      TubePart tube = (TubePart) after.parts().get("new");
      assertThat(tube.kind()).isEqualTo(kind);
      assertThat(tube.path()).containsExactly("newBegin", "newBend", "crank");
      assertThat(Drawn.places(after).pin("newBegin")).isEqualTo(A);
      assertThat(Drawn.places(after).pin("newBend")).isEqualTo(B);
      assertThat(after.pins()).hasSize(WREN.pins().size() + 2);
    }
  }

  @Test
  void twoEndsAreEnoughAndOneIsNot() {
    List<PinSpot> two = List.of(PinSpot.at(A), PinSpot.at(B));
    TubePart rail = (TubePart) Tried.of(WREN, NewTube.of("rail", "new", two)).parts().get("new");
    assertThat(rail.path()).containsExactly("newBegin", "newEnd");
    assertThat(Tried.refusal(WREN, NewTube.of("rail", "new", two.subList(0, 1))))
        .contains("needs two ends");
  }

  @Test
  void aGhostLiesWhereItWillBe() {
    Putting.Ghost ghost = NewTube.ghost("rail", List.of(A, B));
    assertThat(ghost.part().pins().stream().map(ghost.places()::pin)).containsExactly(A, B);
  }
}
