package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** What is solid weighs by its shape and material where no mass is given. */
class WeightsTest {

  private static Study bare() {
    return TestMachine.runabout()
        .pin("hold", 700, 900)
        .with(
            "parts",
            "stub",
            "{'kind': 'handhold', 'at': 'hold', 'diameter': 25, 'y': 200, 'length': 50, 'material':"
                + " 'steel'}")
        .with(
            "parts",
            "blade",
            "{'kind': 'lever', 'frame': 'hold', 'outline': {'points': [[0, 0], [150, 0], [150, 10],"
                + " [0, 10]]}, 'left': 200, 'right': -188, 'both': true, 'material':"
                + " 'aluminium'}")
        .study();
  }

  /** Volume by hand, times 7850 and 2700 kg/m³; a round bar is drawn by corners, 1 % at most. */
  @Test
  void leversAndHandholdsWeighByTheirMaterial() {
    Study study = bare();
    double stub = 2 * Math.PI / 4 * 25 * 25 * 50 * 7850e-9;
    assertThat(study.shapes().get("stub").massKg()).isCloseTo(stub, within(0.01 * stub));
    double blade = 2 * 150 * 10 * 12 * 2700e-9;
    assertThat(study.shapes().get("blade").massKg()).isCloseTo(blade, within(1e-9));
    assertThat(study.findings()).noneMatch(f -> f.text().contains("Incomplete: the mass"));
  }
}
