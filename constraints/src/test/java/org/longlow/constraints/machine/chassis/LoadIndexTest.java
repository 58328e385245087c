package org.longlow.constraints.machine.chassis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Load indices, against the preferred numbers that their table rounds: 45 kg times 10^(i/80). */
class LoadIndexTest {

  @Test
  void eachIsTheNextPreferredNumberRounded() {
    double before = 0;
    for (int index = LoadIndex.LEAST; index <= LoadIndex.MOST; index++) {
      double kg = LoadIndex.kg(index).orElseThrow();
      double preferred = 45 * Math.pow(10, index / 80.0);
      assertThat(kg).as("index " + index).isCloseTo(preferred, within(0.02 * preferred));
      assertThat(kg).isGreaterThan(before);
      before = kg;
    }
  }

  @ParameterizedTest
  @CsvSource({
    "43, 155", "50, 190", "54, 212", "58, 236", "66, 300", "73, 365", "80, 450", "90, 600"
  })
  void someAsPublished(int index, double kg) {
    assertThat(LoadIndex.kg(index)).hasValue(kg);
    assertThat(LoadIndex.carrying(kg)).hasValue(index);
    assertThat(LoadIndex.carrying(kg + 0.01)).hasValue(index + 1);
  }

  @Test
  void theTableHasEnds() {
    assertThat(LoadIndex.kg(19)).isEmpty();
    assertThat(LoadIndex.kg(101)).isEmpty();
    assertThat(LoadIndex.carrying(0)).hasValue(20);
    assertThat(LoadIndex.carrying(800)).hasValue(100);
    assertThat(LoadIndex.carrying(800.1)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "120/70 R17 58W, 58",
    "120/70ZR17 M/C (58W), 58",
    "180/55 ZR17 M/C 73 W TL, 73",
    "MT90-16 74H, 74",
    "MT90B16 M/C 74H REINF, 74",
    "3.50-18 56P, 56",
    "110/80-16, -1",
    "MT90-16, -1",
    "4.00-18 TT, -1"
  })
  void itIsReadBehindTheSize(String size, int index) {
    assertThat(TyreSizeReader.read(size).size().loadIndex().orElse(-1)).isEqualTo(index);
  }
}
