package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One way to say a figure, wherever it is said. */
class FigureUnitTest {

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          MM,     -3.04,   -3 mm
          MM,     12.34,   12.3 mm
          MM,     -0.001,  0 mm
          MM,     NaN,     -
          MM,     Infinity, no end
          DEG,    101.75,  101.8°
          SHARE,  0.4606,  46.1 %
          MM2,    2257.6,  2258 mm2
          COUNT,  3,       3
          NEWTON, 812.4,   812 N
          G,      0.625,   0.63 g
          NONE,   0.1,     0.1
          NONE,   -0.001,  0
          LINKS,  84,      84 links
          """)
  void figuresCarryTheirUnits(FigureUnit unit, double value, String said) {
    assertThat(unit.says(value)).isEqualTo(said);
  }
}
