package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;

/** What is read of a value and its limit keeps their order, however near they are. */
class SaidFiguresTest {

  /** Pairs of a value and its limit, of each unit. */
  private static final int PAIRS = Boolean.getBoolean("longlow.long") ? 2000 : 300;

  /** What is read, worked out in decimals: 12 5/16 is 12 and 5 sixteenths. */
  private static BigDecimal read(String said) {
    String text = said.replaceAll("[A-Za-z°%]*$", "").strip();
    boolean below = text.startsWith("-");
    BigDecimal sum = BigDecimal.ZERO;
    for (String piece : text.replace("-", "").split(" ")) {
      if (piece.matches("[A-Za-z].*")) {
        continue;
      }
      String[] parts = piece.split("/");
      BigDecimal size = new BigDecimal(parts[0]);
      sum =
          sum.add(
              parts.length == 1
                  ? size
                  : size.divide(new BigDecimal(parts[1]), MathContext.DECIMAL64));
    }
    return below ? sum.negate() : sum;
  }

  @ParameterizedTest
  @EnumSource(FigureUnit.class)
  void orderIsKept(FigureUnit unit) {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < PAIRS; i++) {
      double limit = i % 3 == 0 ? random.nextInt(1, 80) * 25.4 / 16 : random.nextDouble(0.1, 300);
      double off = Math.pow(10, random.nextDouble(-5.5, 1));
      double value = random.nextBoolean() ? limit + off : limit - off;
      for (Units units : Units.values()) {
        for (Figures f :
            List.of(Figures.atLeast(value, limit, unit), Figures.atMost(value, limit, unit))) {
          SaidFigures said = SaidFigures.of(f, units);
          assertThat(read(said.value()).compareTo(read(said.limit())))
              .as("%s of %s read %s", value, limit, said)
              .isEqualTo(Double.compare(value, limit));
          assertThat(read(said.margin()).signum())
              .as("%s of %s read %s", value, limit, said)
              .isEqualTo((int) Math.signum(f.margin()));
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "MM, MM, 50.9, 50.8, 50.9 mm, 50.8 mm",
    "MM, IN, 50.9, 50.8, 2.004 in, 2 in",
    "MM, IN, 52.0, 50.8, 2.05 in, 2 in",
    "MM, MM, 2.97, 3, 2.97 mm, 3 mm",
    // 0.0626 in would read 0.06 and 1/16 is more
    "MM, IN, 1.59, 1.5875, 0.0626 in, 0.0625 in",
    "DEG, MM, 7.97, 8, 7.97°, 8°",
    "SHARE, MM, 0.3799, 0.38, 37.99 %, 38 %",
    "MM, IN, 3, 3, 0.12 in, 0.12 in"
  })
  void aFailDoesNotReadAsAPass(
      FigureUnit unit, Units units, double value, double limit, String says, String of) {
    SaidFigures said = SaidFigures.of(Figures.atLeast(value, limit, unit), units);
    assertThat(said.value()).isEqualTo(says);
    assertThat(said.limit()).isEqualTo(of);
  }

  @Test
  void theSentenceSaysItsFiguresSoToo() {
    Finding f =
        new Finding(
            new FindingKind("gap", FindingGroup.GAPS, FindingKind.Rests.ON_DRAWING),
            About.thing("gap", "gap"),
            Optional.empty(),
            Verdict.FAIL,
            Figures.atLeast(50.75, 50.8, FigureUnit.MM),
            List.of(),
            Say.format(
                "%s where %s are asked, %s wide", Say.mm(50.75), Say.mm(50.8), Say.mm(50.7)));
    assertThat(f.text(Units.IN)).isEqualTo("1.998 in where 2 in are asked, 2 in wide");
    assertThat(f.text(Units.MM)).isEqualTo("50.75 mm where 50.8 mm are asked, 50.7 mm wide");
    assertThat(f.figure(Units.IN)).isEqualTo("1.998 in");
  }

  /** An angle of 7.97 degrees where 8 are asked would read as 8 where 8 are asked. */
  @Test
  void soDoAnglesAndSharesInSentences() {
    Finding lean =
        sentence(
            Figures.atLeast(7.97, 8, FigureUnit.DEG),
            Say.format("%s, and %s asked; %s wide", Say.deg(7.97), Say.deg(8), Say.deg(7.96)));
    Finding share =
        sentence(
            Figures.atMost(0.3801, 0.38, FigureUnit.SHARE),
            Words.of("it is ", Say.percent(0.3801), " of ", Say.percent(0.38)));
    for (Units units : Units.values()) {
      assertThat(lean.text(units)).isEqualTo("7.97\u00b0, and 8\u00b0 asked; 8\u00b0 wide");
      assertThat(share.text(units)).isEqualTo("it is 38.01 % of 38 %");
    }
    assertThat(Say.deg(7.97).in(Units.IN)).isEqualTo("8\u00b0");
    assertThat(Say.percent(0.5).in(Units.MM)).isEqualTo("50 %");
  }

  private static Finding sentence(Figures figures, Words words) {
    return new Finding(
        new FindingKind("lean", FindingGroup.LEAN, FindingKind.Rests.ON_DRAWING),
        About.thing("lean", "lean"),
        Optional.empty(),
        Verdict.FAIL,
        figures,
        List.of(),
        words);
  }

  /** Metres hide what millimetres tell, and hundredths of g what more of them do. */
  @Test
  void aSentenceThatSaysItCoarserTellsTheOrderToo() {
    Figures road = Figures.atMost(4776.4, 4760, FigureUnit.MM);
    Words sees =
        Say.format(
            "sees from %s where %s are asked",
            Words.figure(4776.4, FigureSort.ROAD), Words.figure(4760, FigureSort.ROAD));
    assertThat(sees.in(Units.MM)).isEqualTo("sees from 4.8 m where 4.8 m are asked");
    assertThat(sentence(road, sees).text(Units.MM))
        .isEqualTo("sees from 4.78 m where 4.76 m are asked");
    assertThat(sentence(road, sees).text(Units.IN))
        .isEqualTo("sees from 15.7 ft where 15.6 ft are asked");
    Figures stop = Figures.atLeast(0.1484, 0.15, FigureUnit.G);
    assertThat(
            sentence(stop, Words.of("from ", Say.gravity(0.1484), " of ", Say.gravity(0.15)))
                .text(Units.MM))
        .isEqualTo("from 0.148 g of 0.15 g");
    Figures same = Figures.atMost(4760, 4760, FigureUnit.MM);
    assertThat(sentence(same, Words.figure(4760, FigureSort.ROAD)).text(Units.MM))
        .isEqualTo("4.8 m");
    assertThat(Words.of(Say.gravity(0.5), " ", Say.hundredths(0.3)).in(Units.IN))
        .isEqualTo("0.50 g 0.30");
  }

  @Test
  void aSentenceIsHeldToItsOwnFiguresAlone() {
    Figures far = Figures.atLeast(60, 50.8, FigureUnit.MM);
    assertThat(SaidFigures.of(far, Units.IN))
        .isEqualTo(new SaidFigures("2.36 in", "2 in", "0.36 in", 0));
  }
}
