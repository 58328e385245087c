package org.longlow.constraints.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.longlow.rider.body.Sex;

class EvenlyTakenTest {

  private static final MeasuredCrowd TEN =
      new MeasuredCrowd(
          IntStream.range(0, 10)
              .mapToObj(i -> new MeasuredCrowd.Someone("p" + i, Sex.MALE, 1700 + i, 75, Map.of()))
              .toList());

  @Test
  void stepsAreEvenAndNamesGoWithTheirPeople() {
    EvenlyTaken four = new EvenlyTaken(TEN, 4);
    assertThat(IntStream.range(0, 4).mapToObj(four::name)).containsExactly("p0", "p2", "p5", "p7");
    assertThat(IntStream.range(0, 4).mapToObj(i -> four.person(i).statureMm()))
        .containsExactly(1700.0, 1702.0, 1705.0, 1707.0);
    assertThat(new EvenlyTaken(TEN, 10).name(9)).isEqualTo("p9");
    assertThat(four.says()).isEqualTo("4 of 10 people measured");
    assertThatThrownBy(() -> new EvenlyTaken(TEN, 11)).isInstanceOf(IllegalArgumentException.class);
  }
}
