package org.longlow.constraints.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.layout.LampPart;

/** Areas, edges and gaps of lamps. */
class LampItemTest {

  private static LampItem lamp(double yMm, double zMm, double halfWidth, double halfHeight) {
    return new LampItem(
        "l",
        false,
        LampPart.Kind.TAIL,
        LampPart.Colour.RED,
        false,
        5,
        yMm,
        zMm,
        halfWidth,
        halfHeight,
        true);
  }

  @Test
  void areaAndEdges() {
    LampItem round = lamp(0, 700, 30, 30);
    assertThat(round.areaMm2()).isCloseTo(2827.43, within(0.01));
    assertThat(round.boxAreaMm2()).isEqualTo(3600);
    LampItem oblong = lamp(0, 700, 40, 10);
    assertThat(oblong.areaMm2()).isEqualTo(1600);
    assertThat(oblong.lowestMm()).isEqualTo(690);
    assertThat(oblong.highestMm()).isEqualTo(710);
  }

  // rectangles 40 x 20 and circles of 30
  @ParameterizedTest
  @CsvSource({
    "40, 10, 40, 10, 100, 0, 20",
    "40, 10, 40, 10, -100, 0, 20",
    "40, 10, 40, 10, 0, 50, 30",
    "40, 10, 40, 10, 83, -24, 5",
    "30, 30, 30, 30, 30, 40, -10",
    "30, 30, 30, 30, 60, 80, 40",
    "40, 10, 30, 30, 43, 14, -25",
    "30, 30, 40, 10, -80, 40, 20"
  })
  void gapSeenAlongTheMachine(
      double w1, double h1, double w2, double h2, double dy, double dz, double gap) {
    LampItem one = lamp(10, 700, w1, h1);
    LampItem other = lamp(10 + dy, 700 + dz, w2, h2);
    assertThat(one.frontViewGapMm(other)).isCloseTo(gap, within(1e-9));
    assertThat(other.frontViewGapMm(one)).isCloseTo(gap, within(1e-9));
  }

  @Test
  void theOtherOfAPairIsOnTheOtherSide() {
    LampItem other = lamp(120, 700, 40, 10).mirrored();
    assertThat(other.yMm()).isEqualTo(-120);
    assertThat(other.other()).isTrue();
    assertThat(other.mirrored().yMm()).isEqualTo(120);
    assertThat(other.zMm()).isEqualTo(700);
    assertThat(other.steered()).isTrue();
  }

  private static LampItem odd(double x, double y, double z, double w, double h) {
    return new LampItem(
        "l", false, LampPart.Kind.TAIL, LampPart.Colour.RED, true, x, y, z, w, h, false);
  }

  @Test
  void nonsenseIsRefusedWithItsName() {
    double no = Double.NaN;
    assertThatThrownBy(() -> odd(no, 0, 0, 1, 1)).hasMessageContaining("centre x mm is NaN");
    assertThatThrownBy(() -> odd(0, no, 0, 1, 1)).hasMessageContaining("centre y mm is NaN");
    assertThatThrownBy(() -> odd(0, 0, no, 1, 1)).hasMessageEndingWith("a finite number");
    assertThatThrownBy(() -> odd(0, 0, 0, 0, 1)).hasMessageEndingWith("a finite number above 0");
    assertThatThrownBy(() -> odd(0, 0, 0, 1, -1)).hasMessageContaining("half height mm is -1");
    assertThatThrownBy(
            () ->
                new LampItem(
                    " ", false, LampPart.Kind.TAIL, LampPart.Colour.RED, true, 0, 0, 0, 1, 1, true))
        .hasMessageContaining("needs a name");
    assertThat(odd(-1, -2, 0, 0.1, 0.1).yMm()).isEqualTo(-2);
  }
}
