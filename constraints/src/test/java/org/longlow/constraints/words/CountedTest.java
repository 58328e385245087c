package org.longlow.constraints.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountedTest {

  @ParameterizedTest
  @CsvSource({
    "0, sheet, 0 sheets",
    "1, sheet, 1 sheet",
    "2, sheet, 2 sheets",
    "1, touch, 1 touch",
    "3, touch, 3 touches",
    "4, box, 4 boxes",
    "21, more fault, 21 more faults",
    "1, person, 1 person",
    "2, person, 2 people"
  })
  void oneAndSeveral(long n, String one, String said) {
    assertThat(Counted.of(n, one)).isEqualTo(said);
  }

  @ParameterizedTest
  @CsvSource({
    "layers, layer",
    "touches, touch",
    "boxes, box",
    "notes, note",
    "holes, hole",
    "seats, seat",
    "path, path"
  })
  void oneOfSeveral(String many, String one) {
    assertThat(Counted.one(many)).isEqualTo(one);
  }
}
