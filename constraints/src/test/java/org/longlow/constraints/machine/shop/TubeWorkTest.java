package org.longlow.constraints.machine.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TubeWorkTest {

  // Arc and tangent lengths worked apart; printed to 1e-12.
  @ParameterizedTest
  @CsvSource({
    "114.3, 90, 179.542020152657, 114.3, 49.057979847343",
    "76.2, 45, 59.847340050886, 31.563073452830, 3.278806854775",
    "60, 120, 125.663706143592, 103.923048454133, 82.182390764674"
  })
  void bendsMatchWorkedFigures(double r, double deg, double arc, double tangent, double gain) {
    TubeBend bend = new TubeBend(r, Math.toRadians(deg));
    assertThat(bend.allowanceMm()).isCloseTo(arc, within(1e-9));
    assertThat(bend.tangentMm()).isCloseTo(tangent, within(1e-9));
    assertThat(bend.gainMm()).isCloseTo(gain, within(1e-9));
  }

  @Test
  void cutLengthTakesOffTheGains() {
    TubeBend bend = new TubeBend(114.3, Math.PI / 2);
    assertThat(TubeBend.cutLengthMm(List.of(500.0, 400.0), List.of(bend)))
        .isCloseTo(850.942020152657, within(1e-9));
    assertThat(TubeBend.cutLengthMm(List.of(500.0), List.of())).isEqualTo(500);
    assertThatThrownBy(() -> TubeBend.cutLengthMm(List.of(500.0, 100.0), List.of(bend)))
        .hasMessageContaining("leg 2");
    assertThatThrownBy(() -> TubeBend.cutLengthMm(List.of(500.0), List.of(bend)))
        .hasMessageContaining("need 2 legs");
    assertThatThrownBy(() -> new TubeBend(100, Math.PI)).hasMessageContaining("bend angle");
    assertThatThrownBy(() -> new TubeBend(Double.NaN, 1)).hasMessageContaining("bend radius");
  }

  /** Square bends of 60 mm at both ends of a leg take 120 mm of it. */
  @Test
  void aLegBetweenTwoBendsHoldsBothTangents() {
    List<TubeBend> bends = List.of(new TubeBend(60, Math.PI / 2), new TubeBend(60, Math.PI / 2));
    assertThatThrownBy(() -> TubeBend.cutLengthMm(List.of(300.0, 119.9, 300.0), bends))
        .hasMessageContaining("leg 2");
    // straights of 240, 0.1 and 240 mm and two quarter turns
    assertThat(TubeBend.cutLengthMm(List.of(300.0, 120.1, 300.0), bends))
        .isCloseTo(480.1 + 2 * 30 * Math.PI, within(1e-9));
    assertThatThrownBy(() -> TubeBend.cutLengthMm(List.of(59.9, 300.0, 300.0), bends))
        .hasMessageContaining("leg 1");
    assertThatThrownBy(() -> TubeBend.cutLengthMm(List.of(300.0, 300.0, 59.9), bends))
        .hasMessageContaining("leg 3");
  }

  @Test
  void bendingDifficultyMatchesTheWorkedExample() {
    // 25.4 x 2.11 tube, radius 3 D, 90 deg; printed to two decimals and a tenth of a percent.
    TubeBend bend = new TubeBend(76.2, Math.PI / 2);
    assertThat(bend.difficulty(25.4, 2.11)).isCloseTo(2.30, within(0.005));
    assertThat(bend.outerThinning(25.4)).isCloseTo(0.143, within(5e-4));
  }

  @Test
  void sheetBendMatchesWorkedFigures() {
    assertThat(TubeBend.sheetAllowanceMm(3, 2, 0.42, Math.PI / 2))
        .isCloseTo(6.031857894892, within(1e-9));
    assertThat(TubeBend.sheetDeductionMm(3, 2, 0.42, Math.PI / 2))
        .isCloseTo(3.968142105108, within(1e-9));
    // half as far round: 10 tan 22.5 deg less pi/4 times 3.84 mm
    assertThat(TubeBend.sheetDeductionMm(3, 2, 0.42, Math.PI / 4))
        .isCloseTo(4.142135624 - 3.015928947, within(1e-8));
  }

  private static final TubeCope WORKED = new TubeCope(19.05, 17.05, 22.225, Math.toRadians(60), 0);

  // Generator lines intersected with the main cylinder apart; printed to 1e-9.
  @ParameterizedTest
  @CsvSource({
    "0, 0.000000000, 36.661742094, 35.507041555, 36.661742094",
    "15, 4.987278338, 35.647499571, 34.660664971, 35.647499571",
    "30, 9.974556675, 32.711921601, 32.225210970, 32.711921601",
    "45, 14.961835013, 28.189524044, 28.519834791, 28.519834791",
    "60, 19.949113350, 22.695142604, 24.102587084, 24.102587084",
    "75, 24.936391688, 17.239124380, 19.780354047, 19.780354047",
    "90, 29.923670025, 13.218579097, 16.462001701, 16.462001701",
    "105, 34.910948363, 11.545870132, 14.684816780, 14.684816780",
    "120, 39.898226701, 11.696619976, 14.258764995, 14.258764995",
    "135, 44.885505038, 12.635264177, 14.598568086, 14.598568086",
    "150, 49.872783376, 13.661921601, 15.175210970, 15.175210970",
    "165, 54.860061713, 14.399985456, 15.643861000, 15.643861000",
    "180, 59.847340051, 14.664696837, 15.819397376, 15.819397376"
  })
  void copeMatchesTheWorkedTable(double deg, double x, double out, double in, double cut) {
    double phi = Math.toRadians(deg);
    assertThat(WORKED.wrapMm(phi)).isCloseTo(x, within(2e-9));
    assertThat(WORKED.generatorMm(phi, 19.05)).isCloseTo(out, within(2e-9));
    assertThat(WORKED.generatorMm(phi, 17.05)).isCloseTo(in, within(2e-9));
    assertThat(WORKED.cutMm(phi)).isCloseTo(cut, within(2e-9));
    assertThat(WORKED.cutMm(2 * Math.PI - phi)).isCloseTo(cut, within(2e-9));
  }

  @Test
  void copeTemplateHasTheWorkedSize() {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (int i = 0; i < 3600; i++) {
      double y = WORKED.cutMm(Math.toRadians(i / 10.0));
      least = Math.min(least, y);
      most = Math.max(most, y);
    }
    assertThat(least).isCloseTo(14.2565137830, within(1e-9));
    assertThat(most).isCloseTo(36.6617420935, within(1e-9));
    assertThat(most - least).isCloseTo(22.405228, within(1e-6));
    assertThat(WORKED.templateLengthMm(0)).isCloseTo(119.694680, within(1e-6));
    assertThat(WORKED.templateLengthMm(0.1)).isCloseTo(119.694680 + Math.PI / 10, within(1e-6));
  }

  // Second and third worked joints, outside surface only (no wall), printed to 1e-9.
  @ParameterizedTest
  @CsvSource({
    "19.05, 90, 0, 0, 19.05",
    "19.05, 90, 0, 45, 16.800520825",
    "19.05, 90, 0, 90, 14.199031657",
    "19.05, 45, 4, 0, 39.040178435",
    "19.05, 45, 4, 45, 28.699051776",
    "19.05, 45, 4, 90, 12.962445757",
    "19.05, 45, 4, 135, 10.738539533",
    "19.05, 45, 4, 180, 13.640178435",
    "19.05, 45, 4, 225, 17.023572404",
    "19.05, 45, 4, 270, 23.967165039",
    "19.05, 45, 4, 315, 34.984084646"
  })
  void otherJointsMatchWorkedFigures(double r, double deg, double e, double phi, double y) {
    TubeCope cope = new TubeCope(12.7, 12.7, r, Math.toRadians(deg), e);
    assertThat(cope.cutMm(Math.toRadians(phi))).isCloseTo(y, within(2e-9));
  }

  @Test
  void theCutIsTheLargestOverTheWallAndItsGeneratorsMeetTheMainTube() {
    SplittableRandom random = new SplittableRandom(17);
    for (int i = 0; i < 300; i++) {
      double r = random.nextDouble(8, 20);
      double e = random.nextDouble(-5, 5);
      double main = r + Math.abs(e) + random.nextDouble(0, 8);
      double theta = Math.toRadians(random.nextDouble(25, 90));
      double inner = r * random.nextDouble(0, 1);
      TubeCope cope = new TubeCope(r, inner, main, theta, e);
      double phi = random.nextDouble(0, 2 * Math.PI);
      double most = 0;
      for (int k = 0; k <= 2000; k++) {
        double at = inner + (r - inner) * k / 2000;
        double y = cope.generatorMm(phi, at);
        most = Math.max(most, y);
        // Branch axis d leans towards +x (the main axis), offset across it; main axis is x.
        double[] d = {Math.cos(theta), 0, Math.sin(theta)};
        double[] u = {-Math.sin(theta), 0, Math.cos(theta)};
        double px = 0;
        double py = e + at * Math.sin(phi);
        double pz = y * d[2] - at * Math.cos(phi) * u[2];
        assertThat(px).isZero();
        assertThat(Math.hypot(py, pz)).isCloseTo(main, within(1e-9));
      }
      assertThat(cope.cutMm(phi)).isBetween(most - 1e-12, most + 1e-4);
    }
  }

  @Test
  void jointsThatDoNotMeetAreRefused() {
    assertThatThrownBy(() -> new TubeCope(20, 18, 19, 1, 0)).hasMessageContaining("main radius");
    assertThatThrownBy(() -> new TubeCope(20, 18, 22, 1, 3)).hasMessageContaining("main radius");
    assertThatThrownBy(() -> new TubeCope(20, 21, 25, 1, 0)).hasMessageContaining("inner");
    assertThatThrownBy(() -> new TubeCope(20, 18, 25, 0, 0)).hasMessageContaining("angle");
    assertThatThrownBy(() -> new TubeCope(20, 18, 25, 2, 0)).hasMessageContaining("acute");
  }
}
