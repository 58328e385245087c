package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.document.Fault;

/** What is wrong with one measure is told once, with how many use it. */
class SharedCauseTest {

  private static final String MEASURES = "\"boardTop\": \"460 mm\",";
  private static final String DEPTH = "\"depth\": \"50 mm\"";
  private static final String BOARD = "\"board\": \"12 mm\"";
  private static final String RADIUS = "\"radius\": \"300 mm\"";

  private static String[] lines(String measures, String depth, String board, String radius) {
    String text =
        Plank.with(MEASURES, MEASURES + measures)
            .replace(DEPTH, "\"depth\": \"" + depth + "\"")
            .replace(BOARD, "\"board\": \"" + board + "\"")
            .replace(RADIUS, "\"radius\": \"" + radius + "\"");
    return Plank.faults(text).stream().map(Fault::line).toArray(String[]::new);
  }

  @Test
  void aMeasureOutsideTheRangeOfAllItsUsers() {
    assertThat(lines("\"thick\": \"-3 mm\",", "thick", "thick", "2 * thick"))
        .hasSize(1)
        .allSatisfy(
            line ->
                assertThat(line)
                    .startsWith("$.measures.thick = \"-3 mm\": does not ")
                    .contains("suit 3 places that use thick: $.parts.rearWheel.radius is -6 mm,")
                    .endsWith(
                        " must be at least 50 mm; write another value, or let them use another"
                            + " measure"));
  }

  @Test
  void byWayOfAnotherMeasureItIsTheSameCause() {
    assertThat(lines("\"thick\": \"-3 mm\", \"half\": \"thick / 2\",", "half", "thick", "300 mm"))
        .hasSize(1)
        .allSatisfy(line -> assertThat(line).startsWith("$.measures.thick = \"-3 mm\": "));
  }

  @Test
  void oneUserAloneIsToldWhereItIs() {
    assertThat(lines("\"thick\": \"-3 mm\",", "thick", "12 mm", "300 mm"))
        .containsExactly(
            "$.parts.swingarm.depth = \"thick\": is -3 mm, must be at least 1 mm; change the"
                + " measures it uses");
  }

  @Test
  void whatHangsOnTwoMeasuresIsToldEachByItself() {
    assertThat(
            lines(
                "\"low\": \"-9 mm\", \"thick\": \"3 mm\",", "low + thick", "12 mm", "thick + low"))
        .hasSize(2)
        .noneMatch(line -> line.startsWith("$.measures"));
  }

  @Test
  void twoCausesAreTwoFaults() {
    assertThat(
            lines(
                "\"thin\": \"-1 mm\", \"thick\": \"-3 mm\",", "thick", "thin", "thin + 0 * thick"))
        .hasSizeGreaterThan(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"2000 m", "1e308 mm", "-2000 m"})
  void aMeasureBeyondAllReasonIsToldByItselfAlone(String value) {
    assertThat(lines("\"thick\": \"" + value + "\",", "thick", "thick", "thick * 2"))
        .hasSize(1)
        .allSatisfy(
            line ->
                assertThat(line)
                    .startsWith("$.measures.thick = ")
                    .endsWith("is beyond 100000 mm; look at the unit"));
  }

  @Test
  void aNameThatIsNoMeasureIsToldWhereItIsFirstUsed() {
    assertThat(lines("", "thik", "12 mm", "thik"))
        .containsExactly(
            "$.parts.rearWheel.radius = \"thik\": uses thik, which is no measure, unit or function,"
                + " and 1 more place uses it; units are mm cm m in ft, deg rad, kg g lb, N kN lbf,"
                + " kPa psi, km/h mph; use one of wheelbase, frontRadius, rake, seatHeight, boardTop, share,"
                + " tubeSize, frontTyre.radius, frontTyre.width, rearTyre.width");
  }
}
