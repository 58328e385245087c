package org.longlow.constraints.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class MaterialTest {

  @Test
  void sheetsWeighWhatTheShopTableSays() {
    assertThat(Material.STEEL.densityKgMm3() * 1e6).isCloseTo(7.85, within(1e-12));
    assertThat(12 * Material.PLYWOOD.densityKgMm3() * 1e6).isCloseTo(8.16, within(1e-12));
  }

  @Test
  void laminateIsGlassAndResinByMass() {
    double volume = 0.30 / 2560 + 0.70 / 1200;
    assertThat(Material.LAMINATE.densityKgM3()).isCloseTo(1 / volume, within(5.0));
  }

  @Test
  void onlyTheMixedHaveNoDensity() {
    for (Material material : Material.values()) {
      assertThat(Double.isNaN(material.densityKgM3())).isEqualTo(material == Material.MIXED);
    }
  }
}
