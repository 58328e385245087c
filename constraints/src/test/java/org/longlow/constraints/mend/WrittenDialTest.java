package org.longlow.constraints.mend;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.formula.Formula;
import org.longlow.rider.words.Units;

/** A change is said as what it does: more leave or less of it, by how much and to what. */
class WrittenDialTest {

  @ParameterizedTest
  @CsvSource({
    "MEASURE, 12, raise seatHeight by 12 mm to 784 mm",
    "MEASURE, -12, lower seatHeight by 12 mm to 760 mm",
    "HELD, 12, hold seatHeight at 784 mm",
    "FROM, -12, let seatHeight go down to 760 mm",
    "FROM, 12, keep seatHeight at 784 mm or more",
    "TO, 12, let seatHeight go up to 784 mm",
    "TO, -12, keep seatHeight at 760 mm or less"
  })
  void theWordsFollowTheChange(WrittenDial.Kind kind, int steps, String words) {
    WrittenDial quantity =
        new WrittenDial(
            kind,
            "seatHeight",
            "",
            List.of("measures", "seatHeight", "value"),
            Formula.parse("772 mm"),
            Grid.MM);
    assertThat(quantity.says(steps, null, null).in(Units.MM)).isEqualTo(words);
  }
}
