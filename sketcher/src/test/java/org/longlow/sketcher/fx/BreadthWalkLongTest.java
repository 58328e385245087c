package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Plates;

/** How far a body reaches at its points, and points of a further body, by pointer and keys. */
@Tag("long")
@Windowed
class BreadthWalkLongTest extends Walk {

  private Part.Outlined plate() {
    return (Part.Outlined) hands.layout().parts().get("plate");
  }

  private Optional<String> reach(List<Vertex> vertices, int i) {
    return vertices.get(i).reach().map(BreadthWalkLongTest::words);
  }

  private static String words(HalfBreadths reach) {
    return reach.leftOrRight().text() + ", " + reach.rightOrLeft().text();
  }

  @Test
  void keyBSaysItForBothSidesOrOne() throws Exception {
    begin(
        Plates.withBoss(
            "[0, 0], [210, 0], [190, 150], [20, 120]", "[60, 160], [150, 160], [150, 260]"));
    pickOnCard("part:plate").press(KeyCode.E).press(KeyCode.N);
    hands.press(KeyCode.DIGIT4).press(KeyCode.DIGIT5).press(KeyCode.B);
    assertThat(reach(plate().outline().vertices(), 0)).contains("45 mm, 45 mm");
    hands.press(KeyCode.DIGIT2).press(KeyCode.DIGIT0).press(KeyCode.SHIFT, KeyCode.B);
    assertThat(reach(plate().outline().vertices(), 0)).contains("20 mm, 45 mm");
    hands.press(KeyCode.DIGIT9).press(KeyCode.ALT, KeyCode.B);
    assertThat(reach(plate().outline().vertices(), 0)).contains("20 mm, 9 mm");
    hands.press(KeyCode.B);
    assertThat(reach(plate().outline().vertices(), 0)).as("as the part does").isEmpty();

    // a corner of the further body, taken by the pointer
    PointMm tip = new PointMm(550, 760);
    hands.dragAt(hands.at(tip.x(), tip.z()), hands.at(tip.x(), tip.z() + 60));
    Vertex moved = plate().bodies().get(0).outline().vertices().get(2);
    assertThat(moved.z().evaluate(name -> Double.NaN)).isGreaterThan(290);
    hands.press(KeyCode.DIGIT3).press(KeyCode.DIGIT0).press(KeyCode.B);
    assertThat(reach(plate().bodies().get(0).outline().vertices(), 2)).contains("30 mm, 30 mm");
    assertThat(plate().outline().vertices()).hasSize(4);
    hands.press(KeyCode.ESCAPE);
    assertThat(Hands.onFx(() -> hands.window().hands().hand() instanceof OutlineHand)).isFalse();
  }
}
