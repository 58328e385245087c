package org.longlow.constraints.machine.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drills by hand: tenths, halves, 64ths, and what no chuck takes. */
class DrillTest {

  @ParameterizedTest
  @CsvSource({
    "0.02, 0.1",
    "6.6, 6.6",
    "6.64, 6.6",
    "6.66, 6.7",
    "10, 10",
    "10.04, 10",
    "10.2, 10",
    "10.3, 10.5",
    "12.7, 12.5",
    "13.24, 13"
  })
  void theNearestMetricDrill(double hole, double drill) {
    assertThat(Drill.metricMm(hole)).isEqualTo(OptionalDouble.of(drill));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 1", "6.35, 16", "6.6, 17", "8.3, 21", "12.7, 32", "12.89, 32"})
  void theNearestFractionalDrill(double hole, int parts) {
    assertThat(Drill.sixtyFourths(hole)).isEqualTo(OptionalInt.of(parts));
  }

  @Test
  void whatIsLargerIsSawnOrBored() {
    assertThat(Drill.metricMm(13.26)).isEmpty();
    assertThat(Drill.sixtyFourths(12.91)).isEmpty();
    assertThatThrownBy(() -> Drill.metricMm(0)).hasMessageContaining("hole mm");
    assertThatThrownBy(() -> Drill.sixtyFourths(Double.NaN)).hasMessageContaining("hole mm");
  }
}
