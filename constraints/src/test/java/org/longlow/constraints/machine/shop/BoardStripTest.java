package org.longlow.constraints.machine.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Boards by worked figures, textbook cases and slices summed. */
class BoardStripTest {

  private static BoardMaterial stiff(double modulus) {
    return new BoardMaterial("test", modulus, 37.6, true, "");
  }

  /** One beam of each: sags go as 1/E, stress is the same and is held against their strengths. */
  @Test
  void eachMaterialIsAsStiffAndStrongAsItIs() {
    BoardStrip.Bend ply = bend("plywood");
    BoardStrip.Bend steel = bend("steel");
    assertThat(steel.sagMm()).isCloseTo(ply.sagMm() * 6860 / 205_000, within(1e-9));
    assertThat(bend("aluminium").sagMm()).isCloseTo(ply.sagMm() * 6860 / 69_000, within(1e-9));
    assertThat(steel.stressNmm2()).isEqualTo(ply.stressNmm2());
    assertThat(steel.stressShare()).isCloseTo(3 * ply.stressNmm2() / 235, within(1e-9));
    assertThat(bend("")).isEqualTo(ply);
    for (String unknown : List.of("rubber", "abs", "polycarbonate", "mixed", "titanium")) {
      assertThat(BoardMaterial.of(unknown)).as(unknown).isEmpty();
    }
  }

  private static BoardStrip.Bend bend(String material) {
    return new BoardStrip(350, 9, BoardMaterial.of(material).orElseThrow()).between(300, 1700, 200);
  }

  /** 563 N over 200 mm of 300 between brackets, 350 wide; printed to 0.001 mm and 0.01 N/mm². */
  @ParameterizedTest
  @CsvSource({
    "9, 6960, 1.744, 5.96, 5.23, 17.87",
    "12, 6960, 0.736, 3.35, 2.21, 10.05",
    "12, 10719, 0.478, 3.35, 1.43, 10.05",
    "12, 6781, 0.755, 3.35, 2.27, 10.05",
    "15, 6960, 0.377, 2.14, 1.13, 6.43"
  })
  void boardsBendAsWorked(
      double thick, double modulus, double sag, double stress, double sag3, double stress3) {
    BoardStrip strip = new BoardStrip(350, thick, stiff(modulus));
    BoardStrip.Bend rest = strip.between(300, 563, 200);
    BoardStrip.Bend bump = strip.between(300, 3 * 563, 200);
    assertThat(rest.sagMm()).isCloseTo(sag, within(6e-4));
    assertThat(rest.stressNmm2()).isCloseTo(stress, within(6e-3));
    assertThat(bump.sagMm()).isCloseTo(sag3, within(6e-3));
    assertThat(bump.stressNmm2()).isCloseTo(stress3, within(6e-3));
    assertThat(bump.mostSagMm()).isCloseTo(6, within(1e-12));
  }

  /** Centre point F L³ / 48 E I, uniform 5 F L³ / 384 E I; tip F e³ / 3 E I, uniform F e³ / 8. */
  @Test
  void pointsAndEvenLoadsAreThoseOfTextbooks() {
    BoardStrip strip = new BoardStrip(400, 12, stiff(7000));
    double ei = 7000 * 400 * Math.pow(12, 3) / 12;
    double w = 400 * 144 / 6.0;
    BoardStrip.Bend point = strip.between(320, 1000, 0);
    assertThat(point.sagMm()).isCloseTo(1000 * Math.pow(320, 3) / 48 / ei, within(1e-9));
    assertThat(point.stressNmm2()).isCloseTo(1000 * 320 / 4.0 / w, within(1e-9));
    BoardStrip.Bend even = strip.between(320, 1000, 320);
    assertThat(even.sagMm()).isCloseTo(5 * 1000 * Math.pow(320, 3) / 384 / ei, within(1e-9));
    assertThat(even.stressNmm2()).isCloseTo(1000 * 320 / 8.0 / w, within(1e-9));
    BoardStrip.Bend out = strip.beyond(150, 1000, 150);
    assertThat(out.sagMm()).isCloseTo(1000 * Math.pow(150, 3) / 8 / ei, within(1e-9));
    assertThat(out.stressNmm2()).isCloseTo(1000 * 75 / w, within(1e-9));
    BoardStrip.Bend tip = strip.beyond(150, 1000, 1e-3);
    assertThat(tip.sagMm()).isCloseTo(1000 * Math.pow(150, 3) / 3 / ei, within(1e-4));
    // a patch of 200 mm that a span of 100 cannot hold leaves it its half
    assertThat(strip.between(100, 1000, 200).stressNmm2())
        .isCloseTo(500 * 100 / 8.0 / w, within(1e-9));
    assertThat(strip.beyond(100, 1000, 200).stressNmm2()).isCloseTo(500 * 50 / w, within(1e-9));
  }

  /** Slices of a load over the outer part of an overhang, each by the formula of a point load. */
  @Test
  void aPatchBeyondABracketIsTheSumOfItsSlices() {
    BoardStrip strip = new BoardStrip(380, 9, stiff(6860));
    double ei = 6860 * 380 * Math.pow(9, 3) / 12;
    double sum = 0;
    int n = 20_000;
    for (int i = 0; i < n; i++) {
      double a = 60 + 200 * (i + 0.5) / n;
      sum += 900.0 / n * a * a * (3 * 260 - a) / (6 * ei);
    }
    assertThat(strip.beyond(260, 900, 200).sagMm()).isCloseTo(sum, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({"350, 12, 2000", "250, 9, 700", "300, 15, 4000", "300, 6, 3000"})
  void theLongestSpanIsTheLongestThatKeepsTheLimits(double wide, double thick, double force) {
    BoardStrip strip = new BoardStrip(wide, thick, BoardMaterial.PLYWOOD);
    double most = strip.longestSpanMm(force);
    assertThat(most).isPositive();
    assertThat(strip.between(most, force, 200).share()).isLessThanOrEqualTo(1);
    assertThat(strip.between(most + 0.01, force, 200).share()).isGreaterThan(1);
    assertThat(strip.between(most, force, 200).breaks()).isFalse();
    assertThat(strip.between(most, 3.2 * force, 200).breaks())
        .isEqualTo(3.2 * strip.between(most, force, 200).stressNmm2() > 37.6);
  }
}
