package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What rounding of sums puts outside a limit is on it; what is measured outside is not. */
class FiguresTest {

  @Test
  void whatOnlyRoundingPutsOutsideIsInside() {
    // 90 mm drawn less 50 mm of bump, as a sum of binary fractions gave it
    assertThat(Figures.atLeast(39.999999999999936, 40, FigureUnit.MM).verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(Figures.atMost(40.00000000000006, 40, FigureUnit.MM).verdict())
        .isEqualTo(Verdict.PASS);
    assertThat(Figures.atLeast(40, 40, FigureUnit.MM).verdict()).isEqualTo(Verdict.PASS);
  }

  /** Through radians 30 comes back as 29.999999999999996. */
  @Test
  void anglesThatMeetTheirLimitAreTheLimit() {
    for (double deg : new double[] {30, 61, -30, 14.7}) {
      Figures met = Figures.atLeast(Math.toDegrees(Math.toRadians(deg)), deg, FigureUnit.DEG);
      assertThat(met).isEqualTo(new Figures(deg, deg, 0, FigureUnit.DEG));
      assertThat(met.verdict()).isEqualTo(Verdict.PASS);
      assertThat(Figures.atLeast(deg - 1e-9, deg, FigureUnit.DEG).verdict())
          .isEqualTo(Verdict.FAIL);
    }
    assertThat(Figures.only(Double.NaN, FigureUnit.DEG).value()).isNaN();
    assertThat(Figures.only(29.999999999999996, FigureUnit.MM).value()).isLessThan(30);
  }

  @Test
  void whatIsOutsideByMoreFails() {
    assertThat(Figures.atLeast(39.9999999, 40, FigureUnit.MM).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(Figures.atMost(40.0000001, 40, FigureUnit.MM).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(Figures.atLeast(-1e-9, 0, FigureUnit.MM).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(Figures.atLeast(Double.NaN, 40, FigureUnit.MM).verdict()).isEqualTo(Verdict.FAIL);
  }
}
