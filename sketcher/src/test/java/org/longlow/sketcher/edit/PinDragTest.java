package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Wren;

/** A back rest 520 mm long that turns about (300, 480), held between 15 and 60 degrees. */
class PinDragTest {

  private static final Study WREN = Study.of(Wren.layout());
  private static final PointMm FOOT = new PointMm(300, 480);

  private static PinDrag drag() {
    return PinDrag.of(WREN.placed(), "backTop").orElseThrow();
  }

  @Test
  void onlyWhatCanMoveIsTakenHoldOf() {
    assertThat(PinDrag.of(WREN.placed(), "gripPin")).isEmpty();
    assertThat(drag().pin()).isEqualTo("backTop");
    assertThat(drag().begin().distance(WREN.placed().places().pin("backTop"))).isZero();
    Layout broken =
        Edits.tie(TieKind.AHEAD, List.of("rearAxle", "panRear"), "350 mm").applied(WREN.layout());
    assertThat(PinDrag.of(Study.of(broken).placed(), "backTop")).isEmpty();
  }

  /** The nearest point of a circle lies on the line from its centre. */
  @Test
  void goesToTheNearestPlaceOnItsCircle() {
    PinDrag drag = drag();
    PointMm target = new PointMm(20, 1100);
    PointMm out = target.minus(FOOT);
    PointMm nearest = FOOT.plus(out.times(520 / out.length()));
    Study study = drag.moveTo(target);
    assertThat(study.placed().places().pin("backTop").distance(nearest)).isLessThan(1e-3);
    assertThat(drag.stops()).isEmpty();
    assertThat(drag.study().placed().places().pin("backTop").distance(nearest)).isLessThan(1e-3);
    Edit edit = drag.edit();
    assertThat(edit.name()).isEqualTo("move backTop");
    Layout after = edit.applied(WREN.layout());
    assertThat(after.pins().get("backTop").x().evaluate(n -> 0))
        .isCloseTo(nearest.x(), within(1e-3));
    assertThat(after.pins().get("gripPin")).isEqualTo(WREN.layout().pins().get("gripPin"));
  }

  /** Wren's back rest is written 1.2 mm shorter than its tie: no drag moved it. */
  @Test
  void whatDidNotMoveIsWrittenAsItWas() {
    PinDrag held = PinDrag.of(WREN.placed(), "panRear").orElseThrow();
    held.moveTo(new PointMm(400, 500));
    assertThat(held.edit().applied(WREN.layout())).isEqualTo(WREN.layout());
    PinDrag slides = PinDrag.of(WREN.placed(), "pegPin").orElseThrow();
    PointMm peg = slides.begin();
    slides.moveTo(peg.plus(new PointMm(0.1, 0)));
    Layout after = slides.edit().applied(WREN.layout());
    assertThat(after.pins().get("pegPin").x().evaluate(n -> 0))
        .isCloseTo(peg.x() + 0.1, within(1e-6));
    assertThat(after.measures().get("pegReach").is().evaluate(n -> 0))
        .isCloseTo(820.1, within(1e-6));
  }

  /** Drawn towards level it stops at 60 degrees from upright, and says which limit that is. */
  @Test
  void stopsAtALimit() {
    PinDrag drag = drag();
    for (int k = 1; k <= 20; k++) {
      drag.moveTo(new PointMm(60 - 13 * k, 940 - 23 * k));
    }
    PointMm at = drag.study().placed().places().pin("backTop");
    double lean = Math.toDegrees(Math.atan2(FOOT.x() - at.x(), at.z() - FOOT.z()));
    assertThat(lean).isCloseTo(60, within(1e-6));
    assertThat(drag.stops()).containsExactly("backLean");
  }

  /** Places by hand: 30.04 back, 20.06 up; from its foot by Pythagoras. */
  @Test
  void saysHowFarAndFromWhat() {
    PinDrag drag = drag();
    Study study = drag.moveTo(new PointMm(20, 1100));
    PointMm at = study.placed().places().pin("backTop");
    PointMm begin = new PointMm(at.x() + 30.04, at.z() - 20.06);
    double level = Math.toDegrees(Math.atan2(at.z() - 480, at.x() - 300));
    assertThat(PinDrag.words(study.layout(), "backTop", begin, study))
        .containsExactly(
            "backTop  \u221230.0 mm forward  +20.1 mm up",
            "520.0 mm from backLow, " + Math.round(level * 10) / 10.0 + "\u00b0 from level");
    PointMm other = new PointMm(at.x() - 1.26, at.z() + 7.04);
    assertThat(PinDrag.words(study.layout(), "backTop", other, study).get(0))
        .isEqualTo("backTop  +1.3 mm forward  \u22127.0 mm up");
    PointMm same = new PointMm(at.x(), at.z());
    assertThat(PinDrag.words(study.layout(), "backTop", same, study).get(0))
        .isEqualTo("backTop  +0.0 mm forward  +0.0 mm up");
    PointMm lamp = study.placed().places().pin("lampPin");
    assertThat(PinDrag.words(study.layout(), "lampPin", lamp, study)).hasSize(1);
  }

  /** The other end of its cushion, else of a tie of two, else the one before it on its part. */
  @ParameterizedTest(name = "{0} with {1}")
  @CsvSource({
    "backTop, backLow", "backLow, backTop", "panRear, panFront", "panFront, panRear",
    "pegPin, panRear", "frontAxle, rearAxle", "headTop, headBottom", "lowA, swingPivot",
    "lowB, lowA", "lowC, lowB"
  })
  void partner(String pin, String partner) {
    assertThat(PinDrag.partner(WREN.layout(), pin)).contains(partner);
  }

  @Test
  void aLonePinHasNoPartner() {
    assertThat(PinDrag.partner(WREN.layout(), "lampPin")).isEmpty();
    assertThat(PinDrag.partner(WREN.layout(), "tankPin")).isEmpty();
  }
}
