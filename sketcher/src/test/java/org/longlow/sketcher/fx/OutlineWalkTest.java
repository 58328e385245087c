package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Outlines;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Handle;
import org.longlow.sketcher.edit.Plates;
import org.longlow.sketcher.edit.PointEdits;
import org.longlow.sketcher.edit.Target;

/** Points of an outline and bends of a tube by pointer and keys, seen on the model and the card. */
@Windowed
class OutlineWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    // two wheels, a plate and a rail: each step is quick
    begin(Plates.points("[0, 0], [210, 0], [190, 150], [20, 120]"));
  }

  /** The corners of a part in the axes of the machine. */
  private List<PointMm> corners(String part) {
    Part.Outlined outlined = (Part.Outlined) hands.layout().parts().get(part);
    return Outlines.vertices(
        outlined.frame(), outlined.outline(), hands.shown().study().placed().places());
  }

  private Outline outline(String part) {
    return hands.layout().parts().get(part).edge().orElseThrow();
  }

  private Point2D at(PointMm p) {
    return hands.at(p.x(), p.z());
  }

  private boolean works(Class<? extends Hand> hand) {
    return Hands.onFx(() -> hand.isInstance(hands.window().hands().hand()));
  }

  @Test
  @Tag("long")
  void pointsAreDraggedAddedTakenOutAndSmoothed() {
    Layout before = hands.layout();
    // the corner at 590, 650 dragged to a free spot, on the grid
    PointMm nose = corners("plate").get(2);
    PointMm there = new PointMm(617, 692);
    Color bare = hands.pixel(hands.at(594, 658));
    pickOnCard("part:plate").press(KeyCode.E);
    assertThat(works(OutlineHand.class)).isTrue();
    hands.dragAt(at(nose), at(there));
    assertThat(corners("plate").get(2).distance(there)).isLessThan(8);
    assertThat(corners("plate").get(2).x() % 5).isCloseTo(0, within(1e-6));
    assertThat(corners("plate").get(0)).isEqualTo(new PointMm(400, 500));
    Color filled = hands.pixel(hands.at(594, 658));
    assertThat(far(filled, bare)).as("the plate has grown over it").isGreaterThan(0.05);

    // straight along with Shift: the other coordinate stays
    PointMm now = corners("plate").get(2);
    hands.dragAt(at(now), at(now.plus(new PointMm(41, 9))), KeyCode.SHIFT);
    assertThat(corners("plate").get(2).z()).isEqualTo(now.z());
    assertThat(corners("plate").get(2).x()).isGreaterThan(now.x() + 30);

    hands.press(KeyCode.S);
    assertThat(outline("plate").vertices().get(2).smooth()).isTrue();
    hands.press(KeyCode.S);
    assertThat(outline("plate").vertices().get(2).smooth()).isFalse();

    // double click on the lower edge adds, Delete takes out
    Point2D low = hands.at(510, 500);
    hands.clickTwiceAt(low);
    hands.until(
        "a fifth point",
        () ->
            hands.desk().session().get().layout() != before
                && ((Part.Outlined) hands.desk().session().get().layout().parts().get("plate"))
                        .outline()
                        .vertices()
                        .size()
                    == 5);
    assertThat(corners("plate").get(1).distance(new PointMm(510, 500))).isLessThan(3);
    hands.clickAt(at(corners("plate").get(1)));
    hands.press(KeyCode.DELETE);
    assertThat(outline("plate").vertices()).hasSize(4);
    hands.press(KeyCode.ENTER);
    assertThat(works(OutlineHand.class)).isFalse();
    for (int i = 0; i < 6; i++) {
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    }
    assertThat(hands.layout()).isSameAs(before);
  }

  @Test
  @Tag("long")
  void keysStepMoveMeasureDrillAndMirror() {
    pickOnCard("part:plate").press(KeyCode.E).press(KeyCode.N);
    PointMm first = corners("plate").get(0);
    hands.press(KeyCode.RIGHT).press(KeyCode.RIGHT).press(KeyCode.SHIFT, KeyCode.UP);
    hands.press(KeyCode.ALT, KeyCode.DOWN);
    assertThat(corners("plate").get(0).distance(first.plus(new PointMm(2, 9.9)))).isLessThan(0.001);

    // the edge before the next point: from the first to the second
    hands.press(KeyCode.N);
    hands.press(KeyCode.DIGIT2).press(KeyCode.DIGIT0).press(KeyCode.DIGIT0);
    hands.press(KeyCode.PERIOD).press(KeyCode.DIGIT5).press(KeyCode.ENTER);
    assertThat(corners("plate").get(0).distance(corners("plate").get(1)))
        .isCloseTo(200.5, within(0.001));

    // a hole of 30 at the pointer, its colour gone from the card
    Point2D spot = hands.at(520, 560);
    hands.moveTo(spot);
    hands.press(KeyCode.DIGIT3).press(KeyCode.DIGIT0).press(KeyCode.H);
    assertThat(outline("plate").holes()).hasSize(1);
    hands.moveTo(hands.at(300, 900));
    Color in = hands.pixel(hands.at(516, 554));
    Color beside = hands.pixel(hands.at(480, 554));
    assertThat(far(in, beside)).isGreaterThan(0.05);
    hands.press(KeyCode.N, KeyCode.SHIFT);
    hands.press(KeyCode.DELETE);

    hands.press(KeyCode.DIGIT5).press(KeyCode.O);
    double low = corners("plate").stream().mapToDouble(PointMm::z).min().orElseThrow();
    assertThat(low).isLessThan(500);
    hands.press(KeyCode.ESCAPE);
    assertThat(works(OutlineHand.class)).isFalse();
  }

  @Test
  void aPointOnAPinAsksBeforeItIsWrittenOver() {
    Hands.onFx(
        () -> {
          hands
              .desk()
              .edit(
                  PointEdits.hang(
                      Handle.of(
                              hands.desk().shown().get().layout(),
                              hands.desk().shown().get().study().placed().places(),
                              "plate")
                          .get(2),
                      "p"),
                  new Target.OfPart("plate", List.of("outline"), "outline"),
                  "");
          return null;
        });
    hands.settle();
    pickOnCard("part:plate").press(KeyCode.E);
    Layout before = hands.layout();
    PointMm pin = corners("plate").get(2);
    hands.dragAt(at(pin), at(pin.plus(new PointMm(60, 60))));
    assertThat(hands.layout()).as("nothing is written over unasked").isSameAs(before);
    OutlineHand hand = (OutlineHand) Hands.onFx(() -> hands.window().hands().hand());
    assertThat(hand.points().asks()).contains("lies on pin p");
    hands.press(KeyCode.R);
    assertThat(outline("plate").vertices().get(2).pin()).isNull();
    assertThat(corners("plate").get(2).distance(pin.plus(new PointMm(60, 60)))).isLessThan(8);
  }

  @Test
  @Tag("long")
  void aNewPartIsDrawnAndARailIsBent() {
    // clear of the tags, the first of which says what such a machine lacks
    hands.press(KeyCode.P);
    assertThat(works(DrawHand.class)).isTrue();
    hands.clickAt(hands.at(300, 700));
    hands.clickAt(hands.at(500, 700));
    hands.clickAt(hands.at(500, 780));
    // an edge that crosses another is refused; nothing that was drawn is lost
    hands.clickAt(hands.at(400, 640));
    hands.clickAt(hands.at(300, 700));
    assertThat(works(DrawHand.class)).isTrue();
    DrawHand pen = (DrawHand) Hands.onFx(() -> hands.window().hands().hand());
    assertThat(pen.points()).hasSize(4);
    assertThat(Hands.onFx(pen::says)).contains("cross");
    hands.press(KeyCode.BACK_SPACE);
    assertThat(Hands.onFx(pen::says)).doesNotContain("cross");
    hands.clickAt(hands.at(300, 700));
    assertThat(works(DrawHand.class)).isFalse();
    assertThat(hands.layout().parts()).containsKey("bracket");
    assertThat(corners("bracket")).hasSize(3);
    assertThat(corners("bracket").get(1).distance(new PointMm(500, 700))).isLessThan(8);
    hands.until("picked", () -> hands.desk().options().chosen().equals("part:bracket"));

    pickOnCard("part:rail").press(KeyCode.E);
    TubePart rail = (TubePart) hands.layout().parts().get("rail");
    PointMm a = Hands.onFx(() -> hands.desk().shown().get().study().placed().places().pin("a"));
    PointMm b = Hands.onFx(() -> hands.desk().shown().get().study().placed().places().pin("b"));
    Point2D middle = at(a.towards(b, 0.4));
    hands.clickTwiceAt(middle);
    hands.until(
        "a bend",
        () ->
            ((TubePart) hands.desk().session().get().layout().parts().get("rail")).path().size()
                == rail.path().size() + 1);
    assertThat(((TubePart) hands.layout().parts().get("rail")).path().get(1)).isEqualTo("railBend");
    PointMm bend = a.towards(b, 0.4);
    hands.dragAt(at(bend), at(bend.plus(new PointMm(0, -40))));
    PointMm now =
        Hands.onFx(() -> hands.desk().shown().get().study().placed().places().pin("railBend"));
    assertThat(now.z()).isLessThan(bend.z() - 20);
    hands.press(KeyCode.DELETE);
    assertThat(hands.layout().parts().get("rail")).isEqualTo(rail);
    assertThat(hands.layout().pins()).doesNotContainKey("railBend");
  }
}
