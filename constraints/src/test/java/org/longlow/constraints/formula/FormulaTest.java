package org.longlow.constraints.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTest {

  private static final Map<String, Double> VALUES = Map.of("a", 3.0, "b", 0.5, "len", 250.0);
  private static final Map<String, Dim> DIMS =
      Map.of("a", Dim.NUMBER, "b", Dim.NUMBER, "len", Dim.LENGTH);

  // Exact by the international yard and pound of 1959 (1 in = 25.4 mm, 1 lb = 0.45359237 kg), the
  // standard gravity 9.80665 m/s2 and plain arithmetic; 1e-12 relative is a few roundings.
  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          1640 mm             ~ 1640
          1640                ~ 1640
          -3 mm               ~ -3
          - 3 mm              ~ -3
          +3 mm               ~ 3
          .5 m                ~ 500
          1e3 mm              ~ 1000
          1.5E-1 m            ~ 150
          63 in               ~ 1600.2
          1/2 in              ~ 12.7
          63 1/2 in           ~ 1612.9
          -63 1/2 in          ~ -1612.9
          5 ft + 9 in         ~ 1752.6
          5 ft 9 in           ~ 1752.6
          5ft 9 1/2 in        ~ 1765.3
          -5 ft 9.5 in        ~ -1765.3
          24 deg              ~ 0.41887902047863909
          pi                  ~ 3.14159265358979323
          180 lb              ~ 81.6466266
          10 lbf              ~ 44.482216152605
          1 kN                ~ 1000
          6 kPa               ~ 0.006
          35 kg/m^3           ~ 3.5e-8
          3 kg/m^2            ~ 3e-6
          14 N/mm             ~ 14
          80 lbf/in           ~ 14.010146819718111
          2^3                 ~ 8
          2^3^2               ~ 512
          -3^2                ~ -9
          2 mm^2              ~ 2
          (2 mm)^2            ~ 4
          2 + 3 * 4           ~ 14
          (2 + 3) * 4         ~ 20
          20 / 4 / 5          ~ 1
          10 - 3 - 2          ~ 5
          2 (a + 1)           ~ 8
          -a^2                ~ -9
          len / 2 + 60 mm     ~ 185
          hypot(3 mm, 4 mm)   ~ 5
          sqrt(9 mm^2)        ~ 3
          MIN(a, 2)           ~ 2
          max(a, 2)           ~ 3
          abs(-2)             ~ 2
          sin(30 deg)         ~ 0.5
          cos(60 deg)         ~ 0.5
          tan(45 deg)         ~ 1
          asin(1)             ~ 1.5707963267948966
          acos(1)             ~ 0
          atan(1)             ~ 0.7853981633974483
          atan2(1 mm, 1 mm)   ~ 0.7853981633974483
          """)
  void textMeansItsValueInInternalUnits(String text, double value) {
    assertThat(Formula.parse(text).evaluate(VALUES::get))
        .isCloseTo(value, within(1e-12 * Math.abs(value) + 1e-15));
  }

  @ParameterizedTest
  @CsvSource({
    "90 km/h, 25000",
    "10 m/s, 10000",
    "0.5 * 36 km/h, 5000",
    "1 m/s + 1 mph, 1447.04",
    "2 * (36 km/h - 2 m/s), 16000"
  })
  void speedsAreRead(String text, double mmPerSecond) {
    Formula speed = Formula.parse(text);
    assertThat(speed.evaluate(n -> Double.NaN)).isCloseTo(mmPerSecond, within(1e-9));
    assertThat(speed.expr().dim(n -> Dim.NUMBER)).isEqualTo(Dim.SPEED);
  }

  @Test
  void measuresMayBeCalledAsHoursAndSecondsAre() {
    assertThat(Formula.parse("10 m / s").names()).containsExactly("s");
    assertThat(Formula.parse("2 * m/share").names()).containsExactly("share");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          1640 mm         ~ 1  ~ 0 ~ 0 ~ false
          24 deg          ~ 0  ~ 0 ~ 0 ~ true
          24              ~ 0  ~ 0 ~ 0 ~ false
          2 * 24 deg      ~ 0  ~ 0 ~ 0 ~ true
          24 deg / 2      ~ 0  ~ 0 ~ 0 ~ true
          24 deg / 1 deg  ~ 0  ~ 0 ~ 0 ~ false
          35 kg/m^3       ~ -3 ~ 1 ~ 0 ~ false
          14 N/mm         ~ -1 ~ 0 ~ 1 ~ false
          1 N / (1 mm)    ~ -1 ~ 0 ~ 1 ~ false
          1 N / 1 mm      ~ 1  ~ 0 ~ 1 ~ false
          len * len       ~ 2  ~ 0 ~ 0 ~ false
          sqrt(len * len) ~ 1  ~ 0 ~ 0 ~ false
          len / len       ~ 0  ~ 0 ~ 0 ~ false
          len * sin(a)    ~ 1  ~ 0 ~ 0 ~ false
          atan2(len, len) ~ 0  ~ 0 ~ 0 ~ true
          max(len, 3 mm)  ~ 1  ~ 0 ~ 0 ~ false
          """)
  void dimensionFollowsTheFormula(String text, int length, int mass, int force, boolean angle) {
    assertThat(Formula.parse(text).expr().dim(DIMS::get))
        .isEqualTo(new Dim(length, mass, force, 0, angle));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          ``            ~ is empty
          3 mm + 2 kg   ~ cannot add a mass
          3 mm - 2      ~ cannot subtract a plain number
          24 deg + 3    ~ cannot add a plain number
          hypot(3 mm, 4) ~ hypot needs two quantities of one kind
          sin(3 mm)     ~ sin needs an angle
          asin(3 mm)    ~ asin needs a plain number
          sqrt(3 mm)    ~ sqrt needs a square
          len^0.5       ~ whole number up to 9
          len^10        ~ whole number up to 9
          2^a           ~ power that is not a plain number
          if(1, 2, 3)   ~ undefined function 'if'; allowed are sin, cos
          min(1)        ~ calls min with 1 values, needs 2
          a b           ~ side by side without
          (a            ~ closing bracket not found
          a &&  b       ~ '&'; allowed are + - * / ^ ( )
          1.2.3         ~ more than one decimal point
          1/0           ~ no finite number
          1e999         ~ no finite number
          10^400        ~ no finite number
          0x1F          ~ 0x1F, which cannot be read
          "a"           ~ holds a; allowed are
          a[1]          ~ cannot be read
          """)
  void whatCannotBeIsRefusedInWords(String text, String words) {
    assertThatThrownBy(() -> Formula.parse(text).expr().dim(DIMS::get))
        .isInstanceOf(FormulaException.class)
        .hasMessageContaining(words);
  }

  @Test
  void tooLongTextIsRefused() {
    assertThatThrownBy(() -> Formula.parse("1+".repeat(300) + "1"))
        .isInstanceOf(FormulaException.class)
        .hasMessageContaining("longer than 500");
  }

  @Test
  void deepBracketsAreRead() {
    assertThat(Formula.parse("(".repeat(240) + "a" + ")".repeat(240)).evaluate(VALUES::get))
        .isEqualTo(3);
  }

  @Test
  void bareNumberTakesTheUnitOfTheEdge() {
    assertThat(Formula.parse("24").as(Dim.ANGLE, DIMS::get).evaluate(VALUES::get))
        .isEqualTo(Math.toRadians(24), within(1e-15));
    assertThat(Formula.parse("8").as(Dim.PRESSURE, DIMS::get).evaluate(VALUES::get))
        .isEqualTo(0.008, within(1e-18));
    assertThatThrownBy(() -> Formula.parse("a").as(Dim.ANGLE, DIMS::get))
        .hasMessage("is a plain number, needs an angle (such as 24 deg)");
    assertThatThrownBy(() -> Formula.parse("3 kg").as(Dim.LENGTH, DIMS::get))
        .hasMessage("is a mass (such as 80 kg), needs a length (such as 1600 mm)");
  }

  @Test
  void namesAreThoseOfMeasuresOnly() {
    assertThat(Formula.parse("len + sin(a) * 3 mm + b / pi").names())
        .containsExactly("a", "b", "len");
    assertThat(Formula.parse(" 1640 mm").text()).isEqualTo(" 1640 mm");
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void writtenQuantityReadsBack(Unit unit) {
    SplittableRandom random = new SplittableRandom(unit.ordinal());
    for (int i = 0; i < 200; i++) {
      double shown = Math.rint(random.nextDouble(-3000, 3000) * 1e6) / 1e6;
      Formula formula = Formula.of(shown * unit.factor(), unit);
      assertThat(formula.expr().dim(DIMS::get)).isEqualTo(unit.dim());
      // half of the last place written, and the rounding of the factor
      assertThat(unit.fromInternal(formula.evaluate(VALUES::get))).isCloseTo(shown, within(5.1e-7));
      assertThat(Formula.parse(formula.text())).isEqualTo(formula);
    }
    assertThat(Formula.of(0, unit).evaluate(VALUES::get)).isZero();
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void derivativeAgreesWithCentralDifference(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Expr expr = Formula.parse(smooth(random, 4)).expr();
    double x = random.nextDouble(0.2, 0.8);
    double y = random.nextDouble(1.1, 1.9);
    double h = 1e-5;
    double difference =
        (expr.evaluate(n -> n.equals("x") ? x + h : y)
                - expr.evaluate(n -> n.equals("x") ? x - h : y))
            / (2 * h);
    double derivative = Derivative.of(expr, "x").evaluate(n -> n.equals("x") ? x : y);
    // central difference: h² times the third derivative, and 1e-16/h times the value
    double size = 1 + Math.abs(derivative) + Math.abs(expr.evaluate(n -> n.equals("x") ? x : y));
    assertThat(derivative).isCloseTo(difference, within(1e-5 * size));
  }

  /** A random formula of x in (0.2, 0.8) and y in (1.1, 1.9), smooth there, of modest size. */
  private static String smooth(SplittableRandom random, int depth) {
    if (depth == 0) {
      return random.nextBoolean() ? "x" : random.nextBoolean() ? "y" : "0.7";
    }
    String a = smooth(random, depth - 1);
    String b = smooth(random, depth - 1);
    return switch (random.nextInt(15)) {
      case 0 -> "(" + a + " + " + b + ")";
      case 1 -> "(" + a + " - " + b + ")";
      case 2 -> "(0.5 * " + a + " * " + b + ")";
      case 3 -> "(" + a + " / (2 + sin(" + b + ")))";
      case 4 -> "sin(" + a + ")";
      case 5 -> "cos(" + a + ")";
      case 6 -> "atan(" + a + ")";
      case 7 -> "atan2(" + a + ", 2 + cos(" + b + "))";
      case 8 -> "sqrt(2 + sin(" + a + "))";
      case 9 -> "hypot(" + a + ", 1.5)";
      case 10 -> "asin(0.5 * sin(" + a + "))";
      case 11 -> "acos(0.5 * cos(" + a + "))";
      case 12 -> "(2 + cos(" + a + "))^1.5";
      case 13 -> "max(sin(" + a + "), 3)";
      default -> "tan(0.6 * sin(" + a + "))";
    };
  }

  @Test
  void derivativeOfAbsMinAndMaxTakesTheActiveBranch() {
    Map<String, Double> at = Map.of("x", 0.3, "y", 2.0);
    assertThat(Derivative.of(Formula.parse("abs(x - y)").expr(), "x").evaluate(at::get))
        .isEqualTo(-1);
    assertThat(Derivative.of(Formula.parse("min(3*x, y)").expr(), "x").evaluate(at::get))
        .isEqualTo(3);
    assertThat(Derivative.of(Formula.parse("max(3*x, y)").expr(), "x").evaluate(at::get))
        .isEqualTo(0);
  }

  @Test
  void replacedMeasuresGiveTheSameValue() {
    Expr expr = Formula.parse("len * sin(a) + hypot(len, b * 1 mm)").expr();
    Expr inner = Formula.parse("b * 6").expr();
    Expr replaced = expr.replaced(n -> n.equals("a") ? inner : null);
    assertThat(replaced.evaluate(VALUES::get)).isEqualTo(expr.evaluate(VALUES::get));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1 1/4 in",
        "-63 1/2 in",
        "5 ft 9 in",
        "-5 ft 9 1/2 in",
        "5ft 9.5 in",
        "40 mm",
        "-3",
        "2 + 1",
        "10 kg/m^3"
      })
  void everyQuantityStandsWithinAnotherFormula(String text) {
    double worth = Formula.parse(text).evaluate(n -> 0);
    Formula twice = Formula.parse("2 * " + Formula.parse(text).bracketed() + " / 3");
    assertThat(twice.evaluate(n -> 0)).isCloseTo(worth * 2 / 3, within(1e-9 * Math.abs(worth)));
  }
}
