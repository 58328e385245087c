package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.words.Units;

/** No figure reads as its limit where the verdict says that it misses it. */
class FiguresInOrderTest {

  /** Every finding of the machines of the tests. */
  @Test
  void whatMissesItsLimitDoesNotReadAsOnIt() {
    for (String name : List.of("tourer", "runabout")) {
      Study study = TestMachine.asFiled(name);
      for (Finding f : study.findings()) {
        boolean misses =
            f.verdict() != Verdict.PASS && Double.isFinite(f.limit()) && f.margin() < -1e-6;
        for (Units units : Units.values()) {
          if (misses) {
            assertThat(f.said(units).value()).as(f.id()).isNotEqualTo(f.said(units).limit());
          }
        }
      }
    }
  }

  /**
   * Asked for a little more than there is, each kind that is held to a demand: the first number in
   * its sentence that is like what is asked, and what is asked, are two.
   */
  @ParameterizedTest
  @CsvSource({
    "sight, sight.Runa, -4, ' mm', '(\\d+\\.?\\d*) m ahead.* (\\d+\\.?\\d*) m are asked'",
    "braking, dive.front, 0.00002, '', 'braking at (\\d+\\.\\d+) g .*stop from (\\d+\\.\\d+) g'",
    "ramp, ramp.departure, 0.003, ' deg', 'at (\\d+\\.?\\d*)°.* (\\d+\\.?\\d*)° are asked'"
  })
  void whatJustMissesADemandSaysSo(
      String demand, String id, double more, String unit, String pattern) {
    double is =
        TestMachine.asFiled("tourer").findings().stream()
            .filter(f -> f.id().equals(id))
            .findFirst()
            .orElseThrow()
            .value();
    String asked =
        BigDecimal.valueOf(is + more).setScale(7, RoundingMode.HALF_UP).toPlainString() + unit;
    Finding f =
        TestMachine.tourer().with("demands", demand, "'" + asked + "'").finding(id).orElseThrow();
    assertThat(f.verdict()).as(f.text()).isNotEqualTo(Verdict.PASS);
    Matcher said = Pattern.compile(pattern).matcher(f.text());
    assertThat(said.find()).as(f.text()).isTrue();
    assertThat(said.group(1)).as(f.text()).isNotEqualTo(said.group(2));
  }
}
