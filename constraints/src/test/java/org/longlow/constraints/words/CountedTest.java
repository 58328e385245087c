package org.longlow.constraints.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Verdict;

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

  @Test
  void wordsFollowTheNumber() {
    assertThat(Counted.either(1, "is", "are")).isEqualTo("is");
    assertThat(Counted.either(0, "is", "are")).isEqualTo("are");
    assertThat(Counted.listed(List.of())).isEmpty();
    assertThat(Counted.listed(List.of("a"))).isEqualTo("a");
    assertThat(Counted.listed(List.of("a", "b", "c"))).isEqualTo("a, b and c");
    assertThat(Verdict.CAUTION.says(1)).isEqualTo("1 needs care");
    assertThat(Verdict.PASS.does(2)).isEqualTo("pass");
    assertThat(Verdict.NOT_APPLICABLE.does(1)).isEqualTo("does not apply");
  }

  @ParameterizedTest
  @CsvSource({
    "layers, layer",
    "touches, touch",
    "boxes, box",
    "notes, note",
    "holes, hole",
    "seats, seat",
    "path, path",
    "across, across"
  })
  void oneOfSeveral(String many, String one) {
    assertThat(Counted.one(many)).isEqualTo(one);
  }
}
