package org.longlow.rider.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.rider.words.Units.Rounding;

/** Figures as people read them, worked out again in exact decimals. */
class UnitsTest {

  private static final BigDecimal INCH = new BigDecimal("25.4");

  // By hand: 312.7375 = 12.3125 * 25.4; 1640 / 25.4 = 64.567, and 64 9/16 = 64.5625;
  // 101.6 = 4 * 25.4, from where on sixteenths are said; 101.5 / 25.4 = 3.996.
  @ParameterizedTest
  @CsvSource({
    "312.7375, 12 5/16 in",
    "1640, 64 9/16 in",
    "1641, 64 5/8 in",
    "101.6, 4 in",
    "101.5, 4 in",
    "100, 3.94 in",
    "12, 0.47 in",
    "12.7, 1/2 in",
    "1.5875, 1/16 in",
    "1.6, 0.06 in",
    "0, 0 in",
    "0.1, 0 in",
    "-0.1, 0 in",
    "-12.7, -1/2 in",
    "-12, -0.47 in",
    "-1640, -64 9/16 in",
    "25.4, 1 in",
    "NaN, -",
    "Infinity, no end",
    "-Infinity, -no end"
  })
  void lengthsInInchesAreThoseOfAShop(double mm, String said) {
    assertThat(Units.IN.says(mm, FigureSort.LENGTH)).isEqualTo(said);
  }

  // By hand with 0.45359237 kg, 4.4482216152605 N, 1.609344 km and 304.8 mm.
  @ParameterizedTest
  @CsvSource({
    "MASS, 84, 84 kg, 185.2 lb",
    "WHOLE_MASS, 84.4, 84 kg, 186 lb",
    "MASS_IN_TENTHS, 84, 84.0 kg, 185.2 lb",
    "MASS_IN_HUNDREDTHS, 1, 1.00 kg, 2.20 lb",
    "FORCE, 500.4, 500 N, 112.5 lbf",
    "PRESSURE, 6, 6 kPa, 0.87 psi",
    "RATE, 18, 18 N/mm, 102.8 lbf/in",
    "DENSITY, 45, 45 kg/m^3, 2.81 lb/ft^3",
    "AREA, 5000, 5000 mm2, 7.75 in2",
    "ROAD, 9000, 9 m, 29.5 ft",
    "CIRCLE, 5000, 5.00 m, 16.4 ft",
    "SPEED, 50, 50 km/h, 31 mph",
    "MOMENT, 100000, 100 N m, 74 lbf ft",
    "LENGTH, 12.34, 12.3 mm, 0.49 in",
    "LENGTH_IN_TENTHS, 12, 12.0 mm, 0.47 in",
    "WHOLE_LENGTH, 311.6, 312 mm, 12 1/4 in"
  })
  void everySortIsSaidInBoth(FigureSort shown, double value, String mm, String in) {
    assertThat(Units.MM.says(value, shown)).isEqualTo(mm);
    assertThat(Units.IN.says(value, shown)).isEqualTo(in);
  }

  @Test
  void whatIsSaidIsTheNearestSixteenthOrHundredth() {
    SplittableRandom random = new SplittableRandom(19);
    for (int i = 0; i < 5000; i++) {
      BigDecimal mm = BigDecimal.valueOf(random.nextLong(-3_000_000, 3_000_000), 3);
      BigDecimal in = mm.divide(INCH, 12, RoundingMode.HALF_EVEN);
      boolean large = in.abs().compareTo(new BigDecimal(4)) >= 0;
      BigDecimal step = large ? new BigDecimal("0.0625") : new BigDecimal("0.01");
      for (Rounding rounding : Rounding.values()) {
        BigDecimal said = read(Units.IN.says(mm.doubleValue(), FigureSort.LENGTH, rounding));
        BigDecimal off = said.abs().subtract(in.abs());
        BigDecimal hair = new BigDecimal("0.000001");
        switch (rounding) {
          case NEAREST ->
              assertThat(off.abs()).as("%s mm", mm).isLessThanOrEqualTo(half(step).add(hair));
          case AWAY -> assertThat(off).as("%s mm", mm).isBetween(hair.negate(), step.add(hair));
          case TOWARDS -> assertThat(off).as("%s mm", mm).isBetween(step.add(hair).negate(), hair);
        }
      }
    }
  }

  private static BigDecimal half(BigDecimal step) {
    return step.divide(new BigDecimal(2));
  }

  /** Reads {@code -12 5/16 in} in exact decimals. */
  private static BigDecimal read(String said) {
    assertThat(said).endsWith(" in");
    String number = said.substring(0, said.length() - 3);
    boolean less = number.startsWith("-");
    BigDecimal sum = BigDecimal.ZERO;
    for (String piece : number.replace("-", "").split(" ")) {
      String[] over = piece.split("/");
      BigDecimal top = new BigDecimal(over[0]);
      sum = sum.add(over.length == 1 ? top : top.divide(new BigDecimal(over[1])));
    }
    return less ? sum.negate() : sum;
  }

  @ParameterizedTest
  @CsvSource({
    "1640, 64.567 in, 1640 mm",
    "1612.9, 63 1/2 in, 1612.9 mm",
    "1.65, 0.065 in, 1.65 mm",
    "-12.7, -1/2 in, -12.7 mm"
  })
  void whatSomebodyWroteIsKnownAgain(double mm, String in, String metric) {
    assertThat(Units.IN.given(mm)).isEqualTo(in);
    assertThat(Units.MM.given(mm)).isEqualTo(metric);
  }

  /** From 4 in on as everywhere else; 1661 mm is 65.394 in, which is nearest to 65 6/16. */
  @ParameterizedTest
  @CsvSource({
    "1661, 65 3/8 in, 1661 mm",
    "-1661, -65 3/8 in, -1661 mm",
    "101.6, 4 in, 101.6 mm",
    "100, 3.937 in, 100 mm",
    "1.65, 0.065 in, 1.65 mm"
  })
  void aFieldSaysALengthAsAShopReadsIt(double mm, String in, String metric) {
    assertThat(Units.IN.inField(mm)).isEqualTo(in);
    assertThat(Units.MM.inField(mm)).isEqualTo(metric);
  }

  @Test
  void shiftsHaveTheirSign() {
    assertThat(Units.MM.signed(12)).isEqualTo("+12.0");
    assertThat(Units.MM.signed(-12.34)).isEqualTo("-12.3");
    assertThat(Units.MM.signed(-0.01)).isEqualTo("+0.0");
    assertThat(Units.IN.signed(-12.7)).isEqualTo("-1/2");
    assertThat(Units.IN.signed(254)).isEqualTo("+10");
  }

  @Test
  void bareFiguresHaveNoUnit() {
    assertThat(Units.IN.bare(312.7375, FigureSort.LENGTH)).isEqualTo("12 5/16");
    assertThat(Units.MM.bare(312.74, FigureSort.LENGTH)).isEqualTo("312.7");
  }
}
