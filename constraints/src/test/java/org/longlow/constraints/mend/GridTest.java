package org.longlow.constraints.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;

/** Texts of quantities with a few steps more. */
class GridTest {

  private static final Map<String, Double> MEASURES = Map.of("a", 700.0, "b", 3.0);

  private static double value(String text) {
    return Formula.parse(text).evaluate(MEASURES::get);
  }

  @ParameterizedTest
  @CsvSource({
    "640 mm, 14, 654 mm",
    "-20 mm, 14, -6 mm",
    "1.6 m, -14, 1586 mm",
    "63 in, 10, 63.5 in",
    "63 1/2 in, -10, 63 in",
    "a - 50 mm, 14, a - 36 mm",
    "a - 5 mm, 14, a + 9 mm",
    "a - 14 mm, 14, a",
    "a + 2 cm, -14, a + 6 mm",
    "a, -14, a - 14 mm",
    "b * a - 2 * 50 mm, 14, b * a - 2 * 50 mm + 14 mm",
    "2 * (a + 50 mm), 14, 2 * (a + 50 mm) + 14 mm"
  })
  void aTextKeepsItsUnitAndItsMeasures(String written, int steps, String text) {
    Formula formula = Formula.parse(written);
    Grid grid = Grid.of(formula, Dim.LENGTH).orElseThrow();
    assertThat(grid.plus(formula, steps)).isEqualTo(text);
    double step = written.endsWith("in") ? 0.05 * 25.4 : 1;
    assertThat(value(text)).isCloseTo(value(written) + steps * step, within(1e-4));
  }

  /** Names may end as inches do. */
  @ParameterizedTest
  @CsvSource({
    "chain, chain + 3 mm",
    "a + origin, a + origin + 3 mm",
    "a - x2in, a - x2in + 3 mm",
    "a + 1.5in, a + 1.65 in",
    ".5 in, 0.65 in"
  })
  void onlyANumberOfInchesIsSteppedInInches(String written, String text) {
    Formula formula = Formula.parse(written);
    assertThat(Grid.of(formula, Dim.LENGTH).orElseThrow().plus(formula, 3)).isEqualTo(text);
  }

  @Test
  void whatOneHasIsNotChanged() {
    assertThat(Grid.of(Formula.parse("80 kg"), Dim.MASS)).isEmpty();
    assertThat(Grid.of(Formula.parse("45 kg/m^3"), Dim.DENSITY)).isEmpty();
    assertThat(Grid.of(Formula.parse("0.42"), Dim.NUMBER)).isEmpty();
    assertThat(Grid.of(Formula.parse("84"), Dim.NUMBER)).isPresent();
    Grid degrees = Grid.of(Formula.parse("24 deg"), Dim.ANGLE).orElseThrow();
    assertThat(degrees.plus(Formula.parse("24 deg"), -3)).isEqualTo("22.5 deg");
    assertThat(degrees.nearest(Math.toRadians(30.49)).text()).isEqualTo("30.5 deg");
    assertThat(Grid.MM.upTo(40).most()).isEqualTo(40);
  }
}
