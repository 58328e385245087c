package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.words.Units;

/** What tyres carry, by moments of every single mass about the other contact. */
class TyreFindingsTest {

  private static double carriedKg(Study study, boolean front) {
    double most = 0;
    for (Standing s : study.standings()) {
      if (s.kind() == Stance.Kind.LADEN) {
        double moment = 0;
        double kg = 0;
        for (PartShape shape : s.shapes().values()) {
          moment += shape.massKg() * s.ground().toRoad(shape.centre()).x();
          kg += shape.massKg();
        }
        for (MassPoint m : s.rider().masses()) {
          moment += m.massKg() * s.ground().toRoad(m.at()).x();
          kg += m.massKg();
        }
        double onFront = moment / s.ground().wheelbaseMm();
        most = Math.max(most, front ? onFront : kg - onFront);
      }
    }
    return most;
  }

  private static Finding rear(String tyre, String pressure) {
    TestMachine machine = TestMachine.runabout().part("rearWheel", "tyre", "'" + tyre + "'");
    if (!pressure.isEmpty()) {
      machine.part("rearWheel", "pressure", "'" + pressure + "'");
    }
    return machine.finding("tyre-load.rearWheel").orElseThrow();
  }

  private static String kpa(double value) {
    return String.format(Locale.ROOT, "%.4f kPa", value);
  }

  @Test
  void loadsAreTheMomentsOfAllMasses() {
    for (String name : new String[] {"tourer", "runabout"}) {
      Study study = TestMachine.asFiled(name);
      for (boolean front : new boolean[] {true, false}) {
        Finding f = OfStudy.only(study, front ? "tyre-load.frontWheel" : "tyre-load.rearWheel");
        assertThat(f.value()).isCloseTo(carriedKg(study, front), within(1e-6));
        // what a tyre carries at which pressure is from memory
        assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
        assertThat(f.figures().inside()).isTrue();
      }
    }
  }

  /** Index 59 is 243 kg at 280 kPa, and so much less as there is less air. */
  @Test
  void lessAirCarriesLess() {
    double needs = 280 * carriedKg(TestMachine.asFiled("runabout"), false) / 243;
    assertThat(rear("110/80-14 59P", kpa(needs + 0.01)).figures().inside()).isTrue();
    Finding soft = rear("110/80-14 59P", kpa(needs - 0.01));
    assertThat(soft.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(soft.figures().inside()).isFalse();
    assertThat(soft.text()).contains("pump it up to at least " + (long) Math.ceil(needs) + " kPa");
    assertThat(soft.text(Units.IN)).contains("psi").doesNotContain("kPa");
    // more air than full carries no more than the index says
    assertThat(rear("110/80-14 59P", "400 kPa").limit()).isCloseTo(243, within(1e-9));
  }

  /** Some 120 kg: index 33 carries 115, 36 carries 125. */
  @Test
  void aTyreThatCarriesTooLittleFails() {
    double kg = carriedKg(TestMachine.asFiled("runabout"), false);
    assertThat(kg).isBetween(115.0, 121.0);
    Finding f = rear("110/80-14 33P", "");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.limit()).isEqualTo(115);
    assertThat(f.text()).contains("at least " + (kg > 118 ? 35 : 34));
    assertThat(rear("110/80-14 36P", "").verdict()).isEqualTo(Verdict.CAUTION);
  }

  /** At 200 kPa the tyre told of would be too soft: whoever buys it must pump it up too. */
  @Test
  void aTyreToTakeIsToldWithTheAirItNeeds() {
    double kg = carriedKg(TestMachine.asFiled("runabout"), false);
    double full = kg > 118 ? 121 : 118;
    assertThat(rear("110/80-14 33P", "200 kPa").text())
        .contains("pumped up to at least " + (long) Math.ceil(280 * kg / full) + " kPa");
    assertThat(rear("110/80-14 33P", "280 kPa").text()).doesNotContain("pumped up");
  }

  @Test
  void withoutAnIndexItSaysWhichIsNeeded() {
    Finding f = rear("110/80-14", "");
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("no load index").contains("at least 3");
    assertThat(rear("110/80-14 12P", "").text()).contains("no table has its load index 12");
  }

  @Test
  void anUnknownMassMakesItIncomplete() {
    Finding f =
        TestMachine.runabout()
            .without("motor", "mass")
            .finding("tyre-load.rearWheel")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("Incomplete");
  }

  // 110/80-14: 265.8 mm with a section of 88 mm: 3.52 mm more, 2.64 mm less; a converted size has
  // 3 mm more room: 294.8 mm with a section of 117 mm, 4.68 and 3.51 mm
  @ParameterizedTest
  @CsvSource({
    "110/80-14, 265.8 mm, true",
    "110/80-14, 269.31 mm, true",
    "110/80-14, 269.33 mm, false",
    "110/80-14, 263.17 mm, true",
    "110/80-14, 263.15 mm, false",
    "110/80-14, 200 mm, false",
    "MT90-14, 302.4 mm, true",
    "MT90-14, 302.6 mm, false",
    "MT90-14, 288.2 mm, false"
  })
  void aMeasuredRadiusIsHeldAgainstTheSize(String tyre, String radius, boolean fits) {
    Finding f =
        TestMachine.runabout()
            .part("rearWheel", "tyre", "'" + tyre + " 59P'")
            .part("rearWheel", "radius", "'" + radius + "'")
            .finding("tyre-size.rearWheel")
            .orElseThrow();
    assertThat(f.verdict()).as(f.text()).isEqualTo(Verdict.CAUTION); // the room is from memory
    assertThat(f.figures().inside()).isEqualTo(fits);
    assertThat(f.text().contains("measure again")).isEqualTo(!fits);
  }

  @Test
  void aWheelWithItsSizeAloneHasNothingToHoldAgainst() {
    assertThat(TestMachine.runabout().finding("tyre-size.rearWheel")).isEmpty();
  }
}
