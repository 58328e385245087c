package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Dimension.Along;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Plates;

/** Measuring and picking what lies below by pointer and keys, seen on the model and the card. */
@Windowed
class MeasureWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    begin(Plates.points("[0, 0], [210, 0], [190, 150], [20, 120]"));
  }

  private boolean measures() {
    return Hands.onFx(() -> hands.window().hands().hand() instanceof MeasureHand);
  }

  private List<String> told() {
    return Hands.onFx(() -> ((MeasureHand) hands.window().hands().hand()).told());
  }

  private String chosen() {
    return Hands.onFx(() -> hands.desk().options().chosen());
  }

  private Dimension kept(String name) {
    return hands.layout().dimensions().get(name);
  }

  @Test
  void lengthsAndAnglesAreToldAndKept() {
    Layout before = hands.layout();
    // half way from the axle at 0, 300 to b at 700, 700, on nothing else
    Point2D half = hands.at(350, 500);
    Color bare = hands.pixel(half);
    hands.press(KeyCode.G);
    assertThat(measures()).isTrue();
    hands.clickAt(hands.pin("rear"));
    hands.moveTo(hands.pin("b").add(2, 2));
    assertThat(told()).startsWith("straight 806.2 mm", "across 700 mm", "up 400 mm");
    assertThat(far(hands.pixel(half), bare)).as("the way measured is drawn").isGreaterThan(0.2);
    hands.clickAt(hands.pin("b"));
    hands.moveTo(hands.at(1100, 1000));
    assertThat(told()).as("it stays").startsWith("straight 806.2 mm", "2  across 700 mm");

    hands.press(KeyCode.DIGIT2).press(KeyCode.K);
    assertThat(measures()).isFalse();
    assertThat(kept("run").along()).isEqualTo(Along.LEVEL);
    assertThat(kept("run").ends()).containsExactly(End.pin("rear"), End.pin("b"));
    assertThat(chosen()).isEqualTo("dimension:run");
    assertThat(hands.shown().drawing().layers()).extracting(l -> l.id()).contains("kept");
    Spots.Box box = Hands.onFx(() -> hands.window().board().boxOf(hands.shown(), "dimension:run"));
    assertThat(box.width()).isGreaterThan(100);
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hands.layout()).isSameAs(before);

    // three points: the angle at b between a, level behind it, and c
    hands.press(KeyCode.ESCAPE).press(KeyCode.G);
    hands.clickAt(hands.pin("a")).clickAt(hands.pin("b")).clickAt(hands.pin("c"), KeyCode.SHIFT);
    assertThat(told()).startsWith("angle 153.43 deg");
    hands.press(KeyCode.K);
    assertThat(kept("angle").ends()).containsExactly(End.pin("a"), End.pin("b"), End.pin("c"));
  }

  @Test
  @Tag("long")
  void keysAloneMeasureAndKeep() {
    // the pins in their order: rear, front
    hands.press(KeyCode.G).press(KeyCode.N).press(KeyCode.ENTER).press(KeyCode.N);
    hands.press(KeyCode.ENTER);
    assertThat(told()).startsWith("straight 1500 mm");
    hands.press(KeyCode.K);
    assertThat(kept("length").ends()).containsExactly(End.pin("rear"), End.pin("front"));

    // an end with nothing there: asked first, then a pin is nailed
    hands.press(KeyCode.ESCAPE).press(KeyCode.G).press(KeyCode.N).press(KeyCode.ENTER);
    hands.press(KeyCode.SHIFT, KeyCode.RIGHT).press(KeyCode.UP).press(KeyCode.ENTER);
    assertThat(told()).startsWith("straight 10 mm");
    hands.press(KeyCode.K);
    assertThat(told()).anyMatch(w -> w.contains("K again nails one"));
    assertThat(hands.layout().pins()).doesNotContainKey("mark");
    hands.press(KeyCode.K);
    Pin mark = hands.layout().pins().get("mark");
    assertThat(mark.nailed()).isTrue();
    assertThat(mark.x().text()).isEqualTo("10 mm");
    assertThat(kept("length2").ends()).containsExactly(End.pin("rear"), End.pin("mark"));
    hands.press(KeyCode.ESCAPE).press(KeyCode.G).press(KeyCode.ESCAPE);
    assertThat(measures()).isFalse();
  }

  @Test
  @Tag("long")
  void clicksOnOneSpotGoThroughWhatLiesThere() {
    Point2D axle = hands.pin("rear");
    hands.clickAt(axle);
    assertThat(chosen()).isEqualTo("pin:rear");
    Hands.onFx(
        () -> {
          hands.window().board().requestFocus();
          return null;
        });
    // spokes lie there until a slip of card lies over them
    hands.pressHere();
    assertThat(chosen()).isEqualTo("part:w1");
    assertThat(slipBeside(axle)).as("a slip says how many there are").isTrue();
    hands.moveTo(hands.at(1100, 1000));
    assertThat(slipBeside(axle)).isFalse();
    hands.moveTo(axle).pressHere().pressHere();
    assertThat(chosen()).isEqualTo("part:w1");
    hands.pressHere();
    assertThat(chosen()).as("the first again").isEqualTo("pin:rear");
    hands.pressHere();
    hands.moveTo(axle.add(6, 0)).moveTo(axle).pressHere();
    assertThat(chosen()).as("moved meanwhile").isEqualTo("pin:rear");
  }

  /** Whether plain card lies over the spokes to one side of a place, as far as it is free there. */
  private boolean slipBeside(Point2D place) {
    return Stream.of(
            new Point2D(27, 24), new Point2D(-67, 24), new Point2D(27, -24), new Point2D(-67, -24))
        .anyMatch(off -> row(place.add(off)).size() == 1);
  }

  /** The colours of some pixels in a row. */
  private Set<Color> row(Point2D at) {
    return Set.copyOf(hands.pixels(at, 40));
  }

  @Test
  @Tag("long")
  void theOtherButtonHangsWhatIsAddedOnWhatIsThere() {
    hands.press(KeyCode.A);
    hands.until("the drawer", () -> hands.find("gallery-slip").get().isVisible());
    hands.write("latch").press(KeyCode.ENTER);
    Point2D tyre = hands.at(0, 480);
    hands.moveTo(tyre).otherClickHere();
    hands.clickAt(tyre);
    assertThat(hands.layout().parts().get("latch").base().touches()).containsExactly("w1");
    String pin = hands.layout().parts().get("latch").pins().get(0);
    assertThat(hands.layout().pins().get(pin).with()).isEqualTo(Pin.REAR_WHEEL);
    PointMm at = Hands.onFx(() -> hands.shown().study().placed().places().pin(pin));
    assertThat(at.distance(new PointMm(0, 480))).isLessThan(12);
  }
}
