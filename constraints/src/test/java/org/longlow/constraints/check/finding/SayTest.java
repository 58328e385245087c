package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SayTest {

  @Test
  void numbersAreThoseOfTheFormatter() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 20_000; i++) {
      double value = random.nextDouble(-3, 3) * Math.pow(10, random.nextInt(-4, 6));
      if (i % 3 == 0) {
        value = Math.rint(value * 100) / 100; // many of them half way between two tenths
      }
      assertThat(Say.number(value)).isEqualTo(formatted(value));
    }
    for (double value : new double[] {0, -0.0, -0.04, 0.05, 0.25, 1e12, -9e14, 99.95, 9.949999}) {
      assertThat(Say.number(value)).isEqualTo(formatted(value));
    }
    assertThat(Say.number(Double.POSITIVE_INFINITY)).isEqualTo("Infinity");
    // nobody counts three hundred noughts
    assertThat(Say.number(-1e300)).isEqualTo("-1e300");
    assertThat(Say.number(1e15)).isEqualTo("1e15");
  }

  private static String formatted(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    String cut = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    return cut.equals("-0") ? "0" : cut;
  }
}
