package org.longlow.constraints.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.words.Units;

/** What people type takes the units that they see, and is kept as they wrote it. */
class TypingInUnitsTest {

  private static final Layout TOURER = TestMachine.asFiled("tourer").layout();
  private static final CushionPart PAN = TOURER.parts(CushionPart.class).findFirst().orElseThrow();
  private static final List<String> BOARD = List.of("parts", PAN.name(), "board");

  private static String board(Layout layout) {
    return ((CushionPart) layout.parts().get(PAN.name())).board().text();
  }

  private static double boardMm(Layout layout) {
    return ((CushionPart) layout.parts().get(PAN.name()))
        .board()
        .as(Dim.LENGTH, n -> null)
        .evaluate(n -> Double.NaN);
  }

  // 5/8 in is 15.875 mm, 1 1/8 in 28.575 mm
  @ParameterizedTest
  @CsvSource({
    "5/8, 5/8 in, 15.875",
    "0.5, 0.5 in, 12.7",
    "1 1/8, 1 1/8 in, 28.575",
    "12 mm, 12 mm, 12",
    "'5/8\"', 5/8 in, 15.875"
  })
  void aBareNumberMeansInchesWhereInchesAreShown(String typed, String kept, double mm) {
    Layout in = Typing.typedAsShown(TOURER.withUnits(Units.IN), typed, BOARD);
    assertThat(board(in)).isEqualTo(kept);
    assertThat(boardMm(in)).isEqualTo(mm);
  }

  @Test
  void aBareNumberMeansMillimetresElsewhere() {
    assertThat(board(Typing.typedAsShown(TOURER, "14", BOARD))).isEqualTo("14");
    assertThat(board(Typing.typed(TOURER.withUnits(Units.IN), "14", BOARD))).isEqualTo("14");
    assertThat(boardMm(Typing.typedAsShown(TOURER, "14", BOARD))).isEqualTo(14);
  }

  @ParameterizedTest
  @CsvSource({
    "84, MASS, 84 lb",
    "120, FORCE, 120 lbf",
    "18, RATE, 18 lbf/in",
    "6, PRESSURE, 6 psi",
    "2.8, DENSITY, 2.8 lb/ft^3",
    "24, ANGLE, 24",
    "3, NUMBER, 3",
    "3 kg, MASS, 3 kg"
  })
  void everyDimensionHasItsUnit(String typed, String dim, String kept) throws Exception {
    Dim of = (Dim) Dim.class.getField(dim).get(null);
    assertThat(ShownQuantity.typed(typed, of, Units.IN)).isEqualTo(kept);
    assertThat(ShownQuantity.typed(typed, of, Units.MM)).isEqualTo(typed);
  }

  // a bare 314 of a file is 314 mm = 12.362 in, nearest to 12 6/16
  @ParameterizedTest
  @CsvSource({
    "314, LENGTH, 12 3/8 in",
    "0, LENGTH, 0 in",
    "2 * 300 + 35, LENGTH, 25 in",
    "boardTop + 60 mm, LENGTH, boardTop + 2.3622 in",
    "63 1/2 in, LENGTH, 63 1/2 in",
    "10, MASS, 22.046 lb",
    "24, ANGLE, 24"
  })
  void whatAFileSaysIsShown(String written, String dim, String shown) throws Exception {
    Dim of = (Dim) Dim.class.getField(dim).get(null);
    Formula formula = Formula.parse(written);
    assertThat(ShownQuantity.text(formula, of, Units.IN)).isEqualTo(shown);
    assertThat(ShownQuantity.text(formula, of, Units.MM)).isEqualTo(written);
  }
}
