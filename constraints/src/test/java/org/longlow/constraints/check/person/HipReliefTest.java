package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.effort.Joint;

/** What is said to help the hips does, as much as is said; a rucksack is named as the cause. */
class HipReliefTest {

  private static TestMachine worn(String rucksack) {
    return TestMachine.runabout().field("crew", "Nell", "rucksack", rucksack);
  }

  private static Sitting nell(Study study) {
    return study.sitting("Nell", Occupant.RIDER).orElseThrow();
  }

  private static double hips(Study study) {
    return Effort.of(study.layout(), nell(study), study.standings(), study.placed().places())
        .orElseThrow()
        .riding()
        .get(Joint.HIP)
        .weak();
  }

  private static HipRelief relief(Study study) {
    return HipRelief.of(nell(study), study.placed().places()).orElseThrow();
  }

  /** A pan that ends under the buttocks of somebody pushed forward. */
  @Test
  void aLongerPanTakesOffTheHipsWhatIsSaid() {
    Study before = worn("'9 kg'").field("ties", "panSize", "is", "'340 mm'").study();
    HipRelief relief = relief(before);
    assertThat(relief.words(1).toString()).contains("make the pan");
    Study after = worn("'9 kg'").field("ties", "panSize", "is", "'380 mm'").study();
    assertThat(hips(after) / hips(before)).isCloseTo(relief.share(), within(0.02)).isLessThan(0.9);
  }

  @Test
  void aRucksackIsNamedAndOneOfNoMassIsNone() {
    Study bare = TestMachine.asFiled("runabout");
    Study none = worn("'0 kg'").study();
    Study pack = worn("'9 kg'").study();
    double hip = nell(bare).seated().orElseThrow().hip().x();
    assertThat(nell(none).seated().orElseThrow().hip().x()).isEqualTo(hip);
    assertThat(nell(pack).seated().orElseThrow().hip().x()).isGreaterThan(hip + 50);
    assertThat(Rucksack.words(nell(none)).toString()).isEmpty();
    for (Study study : new Study[] {bare, pack}) {
      assertThat(study.findings())
          .filteredOn(f -> f.who().filter(w -> w.person().equals("Nell")).isPresent())
          .filteredOn(f -> f.kind() == SeatFindings.SINK || f.kind() == LongRideFindings.PRESSURE)
          .hasSizeGreaterThan(2)
          .allMatch(f -> f.text().contains("The rucksack, 120 mm thick") == (study == pack));
    }
  }
}
