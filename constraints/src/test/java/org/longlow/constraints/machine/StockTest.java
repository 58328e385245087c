package org.longlow.constraints.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockTest {

  // Own calculation in the shop tables, rounded as printed there.
  @ParameterizedTest
  @CsvSource({
    "22.0, 1.65, 0.828, 5496, 500", "22.0, 2.11, 1.035, 6593, 599",
    "25.4, 1.65, 0.966, 8722, 687", "25.4, 2.11, 1.212, 10554, 831",
    "25.4, 2.41, 1.366, 11626, 915", "25.4, 3.05, 1.681, 13621, 1073",
    "28.6, 1.65, 1.097, 12730, 890", "28.6, 3.05, 1.922, 20262, 1417",
    "31.8, 2.41, 1.747, 24187, 1521", "38.1, 1.65, 1.483, 31443, 1651",
    "38.1, 2.11, 1.873, 38759, 2035", "38.1, 3.05, 2.636, 51964, 2728"
  })
  void tubesMatchTheTable(double od, double wall, double kg, double inertia, double modulus) {
    Section tube = Section.tube(od, wall);
    assertThat(tube.massKg(1000, Material.STEEL.densityKgM3())).isCloseTo(kg, within(6e-4));
    assertThat(tube.inertiaMm4()).isCloseTo(inertia, within(0.6));
    assertThat(tube.modulusMm3()).isCloseTo(modulus, within(0.6));
  }

  @ParameterizedTest
  @CsvSource({
    "20, 3, 111.0, 0.871, 6.09, 4030, 290", "25, 3, 141.0, 1.107, 7.35, 8204, 465",
    "30, 3, 171.0, 1.342, 8.61, 14580, 681", "40, 4, 304.0, 2.386, 11.47, 46081, 1615",
    "19.05, 3.175, 110.9, 0.870, 5.92, 3604, 274", "25.4, 3.175, 151.2, 1.187, 7.51, 9042, 506"
  })
  void anglesMatchTheTable(
      double leg, double t, double area, double kg, double c, double inertia, double modulus) {
    Section angle = Section.equalAngle(leg, t);
    assertThat(angle.areaMm2()).isCloseTo(area, within(0.06));
    assertThat(angle.massKg(1000, 7850)).isCloseTo(kg, within(6e-4));
    assertThat(angle.centroidMm()).isCloseTo(c, within(0.006));
    assertThat(angle.inertiaMm4()).isCloseTo(inertia, within(0.6));
    assertThat(angle.modulusMm3()).isCloseTo(modulus, within(0.6));
  }

  // 563 N over a 200 mm patch, span 300, width 350 mm; printed to 0.001 mm and 0.01 MPa.
  @ParameterizedTest
  @CsvSource({
    "9, 6960, 1.744, 5.96",
    "12, 6960, 0.736, 3.35",
    "12, 10719, 0.478, 3.35",
    "12, 6781, 0.755, 3.35",
    "15, 6960, 0.377, 2.14"
  })
  void seatBoardStripMatchesTheTable(double h, double e, double sag, double stress) {
    BoardStrip strip = new BoardStrip(Section.strip(350, h), 300, e);
    assertThat(strip.patchSagMm(563, 200)).isCloseTo(sag, within(6e-4));
    assertThat(strip.patchStressMPa(563, 200)).isCloseTo(stress, within(6e-3));
  }

  @Test
  void patchEndsAreTheCentreAndUniformCases() {
    BoardStrip strip = new BoardStrip(Section.strip(350, 12), 300, 6960);
    assertThat(strip.patchSagMm(500, 0)).isCloseTo(strip.centreSagMm(500), within(1e-12));
    // 5 F L³/(384 E I)
    assertThat(strip.uniformSagMm(500))
        .isCloseTo(5 * 500 * 27e6 / (384 * 6960.0 * 350 * 144), within(1e-12));
    assertThat(strip.overhangSagMm(100, 80))
        .isCloseTo(100 * 512000 / (3 * 6960.0 * 350 * 144), within(1e-12));
    assertThatThrownBy(() -> strip.patchSagMm(500, 301)).hasMessageContaining("patch");
  }

  @ParameterizedTest
  @CsvSource({
    "300, 0.30, POLYESTER_RESIN, 1.00, 0.70", "450, 0.30, POLYESTER_RESIN, 1.50, 1.05",
    "600, 0.30, POLYESTER_RESIN, 2.00, 1.40", "200, 0.50, EPOXY_RESIN, 0.40, 0.25",
    "300, 0.50, EPOXY_RESIN, 0.60, 0.38", "900, 0.30, POLYESTER_RESIN, 3.00, 2.10"
  })
  void laminatesMatchTheTable(double g, double share, Material resin, double kg, double mm) {
    Laminate laminate = Laminate.of(g, share, resin);
    assertThat(laminate.massKgM2()).isCloseTo(kg, within(0.006));
    assertThat(laminate.thicknessMm()).isCloseTo(mm, within(0.006));
  }

  @Test
  void sheetsWeighWhatTheTableSays() {
    assertThat(Material.STEEL.sheetKgM2(1)).isCloseTo(7.85, within(1e-12));
    assertThat(Material.BIRCH_PLYWOOD.sheetKgM2(12)).isCloseTo(8.16, within(1e-12));
    assertThat(Material.PETROL.modulusMPa()).isNaN();
    for (Material m : Material.values()) {
      assertThat(m.source()).isNotBlank();
      assertThat(m.mark().words()).isNotBlank();
    }
  }

  @Test
  void impossibleStockIsRefused() {
    assertThatThrownBy(() -> Section.tube(22, 12)).hasMessageContaining("wall");
    assertThatThrownBy(() -> Section.tube(22, 0)).hasMessageContaining("wall");
    assertThatThrownBy(() -> Section.equalAngle(20, 20)).hasMessageContaining("thickness");
    assertThatThrownBy(() -> Section.strip(Double.NaN, 3)).hasMessageContaining("width");
    assertThatThrownBy(() -> Laminate.of(300, 1, Material.EPOXY_RESIN))
        .hasMessageContaining("share");
  }
}
