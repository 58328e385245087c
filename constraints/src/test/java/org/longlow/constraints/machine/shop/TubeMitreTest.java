package org.longlow.constraints.machine.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A flat cut: what a cope comes to where the other tube is very large, less its radius. */
class TubeMitreTest {

  @Test
  void aFlatCutIsACopeOntoAVeryLargeTube() {
    double angle = Math.toRadians(40);
    double large = 1e7;
    TubeMitre flat = new TubeMitre(15, angle);
    TubeCope round = new TubeCope(15, 15, large, angle, 0);
    for (int deg = 0; deg < 360; deg += 15) {
      double phi = Math.toRadians(deg);
      assertThat(flat.cutMm(phi))
          .isCloseTo(round.cutMm(phi) - large / Math.sin(angle), within(1e-4));
    }
    assertThat(flat.lowestMm()).isCloseTo(-15 / Math.tan(angle), within(1e-9));
    assertThat(round.lowestMm() - large / Math.sin(angle)).isCloseTo(flat.lowestMm(), within(1e-4));
  }

  @Test
  void whatIsNoAngleIsRefused() {
    assertThat(new TubeMitre(15, Math.PI / 2).lowestMm()).isCloseTo(0, within(1e-9));
    assertThatThrownBy(() -> new TubeMitre(15, 0)).hasMessageContaining("angle to the cut");
    assertThatThrownBy(() -> new TubeMitre(15, 2)).hasMessageContaining("acute");
    assertThatThrownBy(() -> new TubeMitre(0, 1)).hasMessageContaining("tube radius");
  }
}
