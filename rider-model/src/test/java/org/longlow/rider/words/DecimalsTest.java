package org.longlow.rider.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class DecimalsTest {

  @Test
  void tenthsAreThoseOfTheLibrary() {
    SplittableRandom random = new SplittableRandom(5);
    double[] odd = {0, -0.0, 0.05, -0.04, 0.25, 1e12, -99.95, 0.949999, Double.NaN};
    for (int i = 0; i < 20_000; i++) {
      double value = i < odd.length ? odd[i] : random.nextDouble(-5000, 5000);
      String expected = String.format(Locale.ROOT, "%.1f", value);
      assertThat(Decimals.tenths(value)).isEqualTo(expected.equals("-0.0") ? "0.0" : expected);
    }
  }

  @Test
  void briefDropsAUselessZero() {
    assertThat(Decimals.brief(381)).isEqualTo("381");
    assertThat(Decimals.brief(-0.04)).isEqualTo("0");
    assertThat(Decimals.brief(12.34)).isEqualTo("12.3");
  }

  @Test
  void hugeFiguresAreWrittenShort() {
    assertThat(Decimals.written(1e308)).isEqualTo("1e308");
    assertThat(Decimals.written(-2.5e20)).isEqualTo("-2.5e20");
    assertThat(Decimals.written(999_999_999_999_999.0)).isEqualTo("999999999999999");
    assertThat(Decimals.written(1e15)).isEqualTo("1e15");
    assertThat(Decimals.written(0.25)).isEqualTo("0.25");
    assertThat(Decimals.brief(1e308)).isEqualTo("1e308");
    assertThat(Decimals.upTo(3, 1e308)).isEqualTo("1e308");
    assertThat(Decimals.brief(999_999_999_999_999.0)).isEqualTo("999999999999999");
  }
}
