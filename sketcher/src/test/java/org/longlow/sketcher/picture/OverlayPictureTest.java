package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;

/** Two states over each other: dark is what moved or is new, and nothing else. */
class OverlayPictureTest {

  private static final Study WAS = Shipped.study("heron");

  private static Set<String> subjects(Drawing drawing, String layer) {
    return drawing.layers().stream()
        .filter(l -> l.id().equals(layer))
        .flatMap(l -> l.marks().stream())
        .map(Mark::subject)
        .collect(Collectors.toSet());
  }

  private static Drawing over(Layout layout) {
    return OverlayPicture.of(WAS, Study.of(layout), 10);
  }

  @Test
  void whoeverSitsAsBeforeIsDrawnOnce() {
    Pin lamp = WAS.layout().pins().get("headlampPin");
    Pin lower = new Pin(lamp.x(), Formula.parse("725 mm"), lamp.nailed(), lamp.with(), lamp.note());
    Drawing both = over(Change.set(WAS.layout(), lower, "pins", "headlampPin"));
    // the bulb of the position lamp is in the headlamp
    Set<String> moved = Set.of("part:headlamp", "part:positionLamp");
    assertThat(subjects(both, "after")).isEqualTo(moved);
    assertThat(subjects(both, "before")).isEqualTo(moved);
    assertThat(subjects(both, "same"))
        .contains("person:Runa")
        .hasSize(WAS.layout().parts().size() - 2 + 1);
  }

  @Test
  void whoeverIsMovedByTheSeatIsDrawnTwice() {
    Measure height = WAS.layout().measures().get("seatHeight");
    Measure higher =
        new Measure(
            Formula.parse("442 mm"),
            height.dim(),
            height.free(),
            height.from(),
            height.to(),
            height.note());
    Drawing both = over(Change.set(WAS.layout(), higher, "measures", "seatHeight"));
    for (String layer : List.of("before", "after")) {
      assertThat(subjects(both, layer)).contains("person:Runa", "part:pan");
    }
    assertThat(subjects(both, "same")).doesNotContain("person:Runa").contains("part:rearWheel");
  }

  @Test
  void nothingMovedIsNothingDark() {
    Drawing both = OverlayPicture.of(WAS, WAS, 10);
    assertThat(subjects(both, "after")).isEmpty();
    assertThat(subjects(both, "before")).isEmpty();
    assertThat(subjects(both, "same")).hasSize(WAS.layout().parts().size() + 1);
  }
}
