package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/**
 * A rear tyre of 150/60 R17: its section is 90 mm high, so one of its size is up to 3.6 mm larger.
 */
class TyreGrowthTest {

  private static Optional<Finding> rear(TestMachine machine) {
    return machine.finding("tyre-growth.rearWheel");
  }

  @ParameterizedTest
  @CsvSource({"13.59, true", "13.61, false"})
  void whatIsAskedRoundATyreHoldsItsGrowth(double asked, boolean told) {
    Optional<Finding> f =
        rear(TestMachine.tourer().with("demands", "tyreGap", "'" + asked + " mm'"));
    assertThat(f.isPresent()).isEqualTo(told);
    f.ifPresent(
        g -> {
          assertThat(g.limit()).isCloseTo(10 + 0.04 * 90, within(1e-9));
          assertThat(g.verdict()).isEqualTo(Verdict.CAUTION);
          assertThat(g.text()).contains("demand tyreGap");
        });
  }

  @ParameterizedTest
  @CsvSource({"9.9, true", "10.1, false"})
  void oneThatWasMeasuredGrowsOnly(double asked, boolean told) {
    TestMachine machine =
        TestMachine.tourer()
            .part("rearWheel", "radius", "'306 mm'")
            .with("demands", "tyreGap", "'" + asked + " mm'");
    assertThat(rear(machine).isPresent()).isEqualTo(told);
  }

  @Test
  void aLimitOfOnePairIsHeldToItToo() {
    TestMachine machine =
        TestMachine.tourer()
            .with(
                "limits",
                "close",
                "{'limit': 'gap', 'parts': ['rearWheel', 'engine'], 'from': '8 mm'}");
    assertThat(rear(machine).orElseThrow().text()).contains("limit close asks for 8 mm");
    assertThat(rear(machine).orElseThrow().value()).isEqualTo(8);
    assertThat(machine.finding("tyre-growth.frontWheel")).isEmpty();
  }
}
