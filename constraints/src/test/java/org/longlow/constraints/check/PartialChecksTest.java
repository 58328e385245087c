package org.longlow.constraints.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.PoseFindings;
import org.longlow.constraints.check.person.SeatFindings;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.road.GroundFindings;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;

/** Findings of a part only are those of the whole, and what the whole says when it cannot judge. */
class PartialChecksTest {

  private static PartialChecks checks(Study study) {
    return new PartialChecks(
        study.layout(),
        Wheels.of(study.layout(), study.placed().places()),
        study.placed().places());
  }

  /** A finding up to what is said of others. */
  private static String untold(Finding f) {
    return f.id() + f.verdict() + f.figures() + f.basis() + f.site() + f.text().split(" But ")[0];
  }

  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void aPartIsAsInTheWhole(String name) {
    Study study = TestMachine.asFiled(name);
    PartialChecks checks = checks(study);
    List<Finding> machine = checks.machine(study.standings());
    assertThat(study.findings()).containsAll(machine);
    assertThat(machine)
        .extracting(Finding::kind)
        .contains(GroundFindings.CLEARANCE, LeanFindings.LEAN);
    assertThat(machine)
        .containsAll(
            study.findings().stream()
                .filter(
                    f ->
                        Set.of(
                                GroundFindings.CLEARANCE,
                                LeanFindings.LEAN,
                                LeanFindings.TOUCH,
                                LoadFindings.LOAD,
                                LoadFindings.LIFT)
                            .contains(f.kind()))
                .toList());
    for (Sitting sitting : study.sittings()) {
      List<Finding> crew = checks.crew(sitting, study.standings());
      // what contradicts each other is told of all of them only
      assertThat(study.findings())
          .usingElementComparator(Comparator.comparing(PartialChecksTest::untold))
          .containsAll(crew);
      assertThat(crew)
          .extracting(Finding::kind)
          .contains(SeatFindings.SINK, SeatFindings.HOLD, PoseFindings.REACH, PoseFindings.POSTURE);
      assertThat(crew.stream().anyMatch(f -> f.kind() == SightFindings.SIGHT))
          .isEqualTo(sitting.occupant().rides());
      assertThat(crew).allMatch(f -> f.who().equals(Optional.of(sitting.occupant())));
    }
  }

  // 3 mm between parts, 15 round tyres, 25 from what is hot to what suffers, 10 from people
  @ParameterizedTest
  @CsvSource({
    "battery, controller, 3",
    "controller, battery, 3",
    "battery, rearWheel, 15",
    "frontWheel, battery, 15",
    "motor, rearWheel, NaN",
    "swingarm, rearWheel, NaN",
    "pan, back, NaN"
  })
  void partsKeepTheirGaps(String a, String b, double mm) {
    PartialChecks checks = checks(Sat.runabout());
    assertThat(checks.leastMm(a, b)).isEqualTo(Double.valueOf(mm));
    // asked again it is what was kept
    assertThat(checks.leastMm(a, b)).isEqualTo(Double.valueOf(mm));
  }

  @Test
  void peopleKeepTheirGaps() {
    Study study = Sat.runabout();
    PartialChecks checks = checks(study);
    Sitting nell = Sat.nell();
    assertThat(checks.leastMm("battery", nell)).isEqualTo(10);
    assertThat(checks.leastMm("pan", nell)).isZero();
    assertThat(checks.leastMm("bars", nell)).isNaN();
    assertThat(checks.clear("battery", nell).without()).isEmpty();
    assertThat(checks.clear("grips", nell).without()).containsExactly("forearm");
    Study hot = TestMachine.tourer().part("header", "touches", "['engine']").study();
    Sitting bram = hot.sitting("Bram", "rider").orElseThrow();
    assertThat(checks(hot).leastMm("header", bram)).isEqualTo(25);
    Study own =
        TestMachine.runabout()
            .with("limits", "own", "{'limit': 'gap', 'parts': ['pan', 'rider'], 'from': '-90 mm'}")
            .study();
    assertThat(checks(own).leastMm("pan", Sat.nell())).isEqualTo(-90);
  }

  // --- what cannot be judged

  @Test
  void aLimitThatIsShortAcrossIsSaidSo() {
    TestMachine m = TestMachine.runabout();
    Boxes.add(m, "one", Boxes.at(400, 1900, 500, 2000), 50, 50, "");
    Boxes.add(m, "two", Boxes.at(400, 1900, 500, 2000), 100, -52, "");
    m.with("limits", "apart", "{'limit': 'gap', 'parts': ['one', 'two'], 'from': '10 mm'}");
    Finding f = m.finding("limit.apart").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isCloseTo(-8, within(1e-6));
    assertThat(f.text())
        .startsWith(
            "Limit apart is 8 mm short across the machine; no move in the elevation of less")
        .endsWith(
            " mm helps, since the two lie side by side there. Change how wide or how far out one of"
                + " them is.");
    // past each other by their own 100 mm and the 10 asked; said as a bound from below
    double way = Double.parseDouble(f.text().replaceAll(".*of less than ([0-9.]+) mm.*", "$1"));
    assertThat(way).isBetween(109.5, 110.0);
  }

  @Test
  void wheelsThatCannotWorkAreSaidInASentence() {
    Finding f =
        TestMachine.runabout()
            .part("front", "bump", "'500 mm'")
            .finding("suspension.front")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text())
        .startsWith("Front cannot work as drawn and counts as rigid, so that its sag, its dive and")
        .doesNotContainPattern("[0-9]\\.[0-9]{5}")
        .endsWith(".");
  }

  /**
   * Steering is worked out to 85 degrees: flatter the refusal is the finding, the rest is judged.
   */
  @Test
  void aRefusalIsTheFinding() {
    Study study =
        TestMachine.runabout()
            .with("pins", "flatTop", "{'at': ['1340 mm', '621 mm'], 'nailed': true}")
            .with("pins", "flatLow", "{'at': ['1440 mm', '620 mm'], 'nailed': true}")
            .part("front", "top", "'flatTop'")
            .part("front", "bottom", "'flatLow'")
            .study();
    Finding f =
        study.findings().stream()
            .filter(x -> x.id().equals("trail.unknown"))
            .findFirst()
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text())
        .startsWith("This cannot be worked out for the machine as it stands: ")
        .contains("rake");
    assertThat(study.findings()).anyMatch(x -> x.id().equals("load.Nell"));
  }
}
