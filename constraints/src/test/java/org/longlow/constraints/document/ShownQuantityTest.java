package org.longlow.constraints.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.rider.words.Units;

/** What stands in a field reads as a person would write it. */
class ShownQuantityTest {

  @ParameterizedTest
  @CsvSource({
    "1330.770461 mm, 1330.77 mm",
    "799.995413 mm, 800 mm",
    "-0.004 mm, 0 mm",
    "39.983377 deg, 39.98 deg",
    "12.25 mm, 12.25 mm",
    "1.7705 m, 1.7705 m",
    "wheelbase + 0.123456 mm, wheelbase + 0.123456 mm",
    "63 1/2 in, 63 1/2 in"
  })
  void millimetresAreShownToHundredths(String written, String shown) {
    assertThat(ShownQuantity.text(Formula.parse(written), Dim.LENGTH, Units.MM)).isEqualTo(shown);
  }
}
