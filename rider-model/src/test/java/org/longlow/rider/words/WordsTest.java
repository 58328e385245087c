package org.longlow.rider.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sentences keep their figures until they are read. */
class WordsTest {

  private static final Words HALF = Words.figure(12.7, FigureSort.LENGTH);

  @Test
  void figuresAreSaidInTheUnitsOfTheReader() {
    Words said =
        Words.of(
            "set it ",
            HALF,
            Words.format(" out, %s of %d at %.1f", Words.atLeast(400), 3, 0.25),
            Words.join(", ", List.of(Words.of("; a"), Words.figure(84, FigureSort.MASS))));
    assertThat(said.in(Units.MM)).isEqualTo("set it 12.7 mm out, 400 mm of 3 at 0.3; a, 84 kg");
    assertThat(said.in(Units.IN))
        .isEqualTo("set it 1/2 in out, 15 3/4 in of 3 at 0.3; a, 185.2 lb");
    assertThat(said).hasToString(said.in(Units.MM));
  }

  @Test
  void whatIsFoundLaterIsFoundOnceAndReadAsIfItWereThere() {
    AtomicInteger asked = new AtomicInteger();
    Words later =
        Words.later(
            () -> {
              asked.incrementAndGet();
              return Words.of("by ", HALF);
            });
    Words said = Words.of("set it out ", later);
    assertThat(asked).hasValue(0);
    assertThat(said.in(Units.IN)).isEqualTo("set it out by 1/2 in");
    assertThat(said).hasToString("set it out by 12.7 mm");
    assertThat(said.saying(12.7, Units.MM)).containsExactly("12.7 mm");
    assertThat(asked).hasValue(1);
    Words fine = Words.later(() -> Words.figure(12.74, FigureSort.LENGTH));
    assertThat(fine.in(Units.MM)).isEqualTo("12.7 mm");
    assertThat(fine.finer(Set.of(12.74), 1).in(Units.MM)).isEqualTo("12.74 mm");
    assertThat(later).isEqualTo(Words.later(() -> Words.of("by ", HALF)));
    assertThat(later).hasSameHashCodeAs(Words.later(() -> Words.of("by ", HALF)));
    assertThat(later).isNotEqualTo(Words.later(() -> HALF));
  }

  // 400 / 25.4 = 15.748: one must go 15 3/4, and may go 15 11/16
  @Test
  void remediesAreRoundedToTheSafeSide() {
    assertThat(Words.atLeast(400).in(Units.IN)).isEqualTo("15 3/4 in");
    assertThat(Words.atMost(400).in(Units.IN)).isEqualTo("15 11/16 in");
    assertThat(Words.atLeast(6.1).in(Units.IN)).isEqualTo("0.25 in");
    assertThat(Words.atMost(6.1).in(Units.IN)).isEqualTo("0.24 in");
    assertThat(Words.atLeast(6.1).in(Units.MM)).isEqualTo("6.1 mm");
    assertThat(Words.atLeast(50.91).in(Units.MM)).isEqualTo("51 mm");
    assertThat(Words.atLeast(50.9).in(Units.IN)).isEqualTo("2.01 in");
    assertThat(Words.atMost(50.99).in(Units.MM)).isEqualTo("50.9 mm");
  }

  /** Whoever goes by what is said has gone far enough, and by less than what a step is too far. */
  @Test
  void limitsInInchesAreOnTheSafeSideWhateverTheyAre() {
    for (double mm = 0.3; mm < 2000; mm = 1.013 * mm + 0.07) {
      double least = inches(Words.atLeast(mm).in(Units.IN)) * 25.4;
      double most = inches(Words.atMost(mm).in(Units.IN)) * 25.4;
      double step = mm < 101.6 ? 0.254 : 1.5875;
      assertThat(least - mm).as("at least %s mm", mm).isBetween(-1e-6, step + 1e-6);
      assertThat(mm - most).as("at most %s mm", mm).isBetween(-1e-6, step + 1e-6);
    }
  }

  /** Reads 12 5/16 in as a person does. */
  private static double inches(String said) {
    double sum = 0;
    for (String word : said.replace(" in", "").split(" ")) {
      String[] over = word.split("/");
      sum += Double.parseDouble(over[0]) / (over.length > 1 ? Double.parseDouble(over[1]) : 1);
    }
    return sum;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sit bones are some 100 to 130 mm apart | sit bones are some 3.94 to 5 1/8 in apart",
        "good to some 15 mm of flesh | good to some 0.59 in of flesh",
        "at least 8064.5 mm2 flat or 6451.6 mm2 convex | at least 12.5 in2 flat or 10 in2 convex",
        "0.8 to 1.5 mm of kerf | 0.03 to 0.06 in of kerf",
        "at most 8 in, printed as 200 mm | at most 8 in, printed as 7 7/8 in",
        "49 CFR 571.108 S10.17 | 49 CFR 571.108 S10.17",
        "no figure | no figure"
      })
  void ownTextsAreReadForTheirFigures(String own, String in) {
    assertThat(Words.read(own).in(Units.MM)).isEqualTo(own);
    assertThat(Words.read(own).in(Units.IN)).isEqualTo(in);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1640 mm | 64.567 in",
        "12.7mm | 1/2 in",
        "-25.4 mm | -1 in",
        "1.2 m | 47.244 in",
        "63 1/2 in | 63 1/2 in",
        "boardTop + 60 mm | boardTop + 2.3622 in",
        "(a1mm + 2 cm) / 2 | (a1mm + 0.7874 in) / 2",
        "84 kg | 185.188 lb",
        "120 N | 26.977 lbf",
        "18 N/mm | 102.783 lbf/in",
        "6 kPa | 0.87 psi",
        "45 kg/m^3 | 2.809 lb/ft^3",
        "24 deg | 24 deg",
        "2 * mm^2 | 2 * mm^2",
        "1640 | 1640"
      })
  void whatIsWrittenStaysButForItsUnits(String written, String in) {
    assertThat(Words.written(written).in(Units.MM)).isEqualTo(written);
    assertThat(Words.written(written).in(Units.IN)).isEqualTo(in);
  }

  @Test
  void alikeIsEqual() {
    assertThat(Words.of("a", HALF)).isEqualTo(Words.of("a", Words.figure(12.7, FigureSort.LENGTH)));
    assertThat(Words.of("a")).isNotEqualTo(Words.of("b"));
    assertThat(Words.of(Words.bare(25.4, FigureSort.LENGTH), " x ", HALF).in(Units.IN))
        .isEqualTo("1 x 1/2 in");
  }
}
