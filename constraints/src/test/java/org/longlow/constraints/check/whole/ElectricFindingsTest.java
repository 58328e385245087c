package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.words.Units;

/** Sums of the figures given, by hand. */
class ElectricFindingsTest {

  private static final String[] LIGHTS = {
    "positionLamp", "tailLamp", "stopLamp", "frontSignals", "rearSignals", "plateLamp"
  };

  /** Each small lamp takes 10 W for half of the ride. */
  private static TestMachine lit(String machine) {
    TestMachine lit = TestMachine.named(machine);
    for (String lamp : LIGHTS) {
      lit.part(lamp, "electric", "{'power': '10', 'duty': '0.5'}");
    }
    return lit;
  }

  private static Finding of(TestMachine machine) {
    return machine.finding("electric.machine").orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({"179.9, FAIL", "180, PASS", "180.1, PASS"})
  void whatIsTakenIsHeldToWhatIsGiven(double given, Verdict verdict) {
    Finding f =
        of(
            lit("tourer")
                .part("headlamp", "electric", "{'power': '60'}")
                .part("engine", "electric", "{'power': '90', 'supply': '" + given + "'}"));
    assertThat(f.value()).isCloseTo(60 + 90 + 6 * 10 * 0.5, within(1e-9));
    assertThat(f.limit()).isEqualTo(given);
    assertThat(f.unit()).isEqualTo(FigureUnit.WATT);
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.text()).contains("180 W").contains("engine with 90 W");
  }

  @Test
  void aBatteryMakesUpForAWhile() {
    Finding f =
        of(
            lit("tourer")
                .part("headlamp", "electric", "{'power': '60'}")
                .part("engine", "electric", "{'power': '90', 'supply': '130'}")
                .part("battery", "electric", "{'energy': '125'}"));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("50 W too little").contains("lasts 2.5 h");
  }

  @Test
  void whatGivesNoFigureIsNamedAndLetsNothingPass() {
    Finding f = of(lit("tourer").part("engine", "electric", "{'power': '90', 'supply': '400'}"));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("what headlamp takes is not known").doesNotContain("Reflector");
  }

  @Test
  void aMotorOnABatteryRunsForHours() {
    Finding f =
        of(
            lit("runabout")
                .part("headlamp", "electric", "{'power': '20'}")
                .part("motor", "electric", "{'power': '1950'}")
                .part("battery", "electric", "{'energy': '3000'}"));
    assertThat(f.value()).isCloseTo(3000.0 / (1950 + 20 + 30), within(1e-9));
    assertThat(f.unit()).isEqualTo(FigureUnit.HOUR);
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    // at the demand of 90 km/h
    assertThat(f.text()).contains("lasts 1.5 h").contains("135 km at 90 km/h");
    assertThat(f.text(Units.IN)).contains("84 mi at 56 mph").doesNotContain("km");
  }

  /** What sits in a hub drives as well as one that is drawn, and its wheel says what it takes. */
  @Test
  void aMotorInAHubRunsForHours() {
    TestMachine hub =
        lit("runabout")
            .part("headlamp", "electric", "{'power': '20'}")
            .part("motor", "electric", "{'power': '0'}")
            .part("battery", "electric", "{'energy': '3000'}")
            .part(
                "rearWheel",
                "inside",
                "[{'what': 'motor', 'radius': '90 mm', 'width': '80 mm', 'y': '0 mm'}]");
    assertThat(of(hub).text()).contains("what rearWheel takes is not known");
    Finding f = of(hub.part("rearWheel", "electric", "{'power': '1950'}"));
    assertThat(f.value()).isCloseTo(3000.0 / (1950 + 20 + 30), within(1e-9));
    assertThat(f.text()).contains("135 km at 90 km/h");
  }

  @Test
  void aMotorThatSaysNothingIsNotPassedOver() {
    Finding f =
        of(
            lit("runabout")
                .part("headlamp", "electric", "{'power': '20'}")
                .part("battery", "electric", "{'energy': '3000'}"));
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).contains("what motor takes").doesNotContain("km/h");
  }

  @Test
  void nothingThatGivesOrTakes() {
    Finding takes = of(lit("tourer"));
    assertThat(takes.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(takes.value()).isCloseTo(30, within(1e-9));
    assertThat(takes.text()).contains("\"supply\" of the generator");
    Finding gives = of(TestMachine.tourer().part("engine", "electric", "{'supply': '200'}"));
    assertThat(gives.verdict()).isEqualTo(Verdict.NOT_APPLICABLE);
    assertThat(gives.text()).contains("\"power\" of").contains("headlamp");
  }

  @Test
  void whereNothingIsSaidNothingIsAsked() {
    assertThat(TestMachine.asFiled("tourer").findings())
        .noneMatch(f -> f.kind() == ElectricFindings.ELECTRIC);
  }
}
