package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Clicks on one spot go through what lies there. */
class UnderTest {

  private static final List<String> THREE = List.of("pin:a", "part:lid", "part:tank");

  @Test
  void eachClickOnOneSpotPicksTheNextAndThenTheFirstAgain() {
    PointMm px = new PointMm(40, 50);
    Under under = Under.NOTHING.clicked(px, "", THREE);
    assertThat(under.subject()).isEqualTo("pin:a");
    for (String next : List.of("part:lid", "part:tank", "pin:a", "part:lid")) {
      under = under.clicked(new PointMm(42, 50), under.subject(), THREE);
      assertThat(under.subject()).isEqualTo(next);
    }
    assertThat(under.words()).containsExactly("lid", "2 of 3 here; click again for the next");
    // a hand that trembles does not walk away from the spot
    assertThat(under.px()).isEqualTo(px);
  }

  @Test
  void elsewhereOrWithSomethingElsePickedItBeginsAnew() {
    Under under = Under.NOTHING.clicked(new PointMm(40, 50), "", THREE);
    under = under.clicked(new PointMm(40, 50), "pin:a", THREE);
    assertThat(under.subject()).isEqualTo("part:lid");
    assertThat(under.clicked(new PointMm(43.1, 50), "part:lid", THREE).subject())
        .isEqualTo("pin:a");
    assertThat(under.clicked(new PointMm(42.9, 50), "part:lid", THREE).subject())
        .isEqualTo("part:tank");
    assertThat(under.clicked(new PointMm(40, 50), "part:fork", THREE).subject()).isEqualTo("pin:a");
    List<String> other = List.of("part:lid", "part:fork");
    assertThat(under.clicked(new PointMm(40, 50), "part:lid", other).subject())
        .isEqualTo("part:lid");
    Under nothing = under.clicked(new PointMm(40, 50), "part:lid", List.of());
    assertThat(nothing.subject()).isEmpty();
    assertThat(nothing.words()).isEmpty();
  }

  @Test
  void allThatLiesThereIsFoundFromTheTopDown() {
    Geometry large = Planar.rectangle(0, 0, 100, 100);
    Geometry small = Planar.rectangle(40, 40, 60, 60);
    Style filled = Style.area(Tone.INK, 1);
    Drawing drawing =
        new Drawing(
            "t",
            List.of(
                new Layer(
                    "one",
                    "One",
                    List.of(
                        new Mark.Shape("part:tank", large, filled),
                        new Mark.Shape("part:tank", large, Style.narrow(Tone.INK)),
                        new Mark.Shape("road", large, filled))),
                new Layer(
                    "two",
                    "Two",
                    List.of(
                        new Mark.Shape("part:lid", small, filled),
                        new Mark.Shape(
                            "dimension:run",
                            Planar.line(0, 50, 100, 50),
                            Style.narrow(Tone.DIMENSION))))));
    assertThat(Picker.all(drawing, new PointMm(50, 51), 2))
        .containsExactly("dimension:run", "part:lid", "part:tank");
    assertThat(Picker.all(drawing, new PointMm(50, 55), 2))
        .containsExactly("part:lid", "part:tank");
    assertThat(Picker.at(drawing, new PointMm(50, 55), 2)).contains("part:lid");
    assertThat(Picker.all(drawing, new PointMm(10, 10), 2)).containsExactly("part:tank");
    assertThat(Picker.all(drawing, new PointMm(200, 10), 2)).isEmpty();
  }
}
