package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** Reaches that a free measure says, to both sides of where they turn over. */
class BreadthFindingsTest {

  private static final String CORNERS = "[0, 0], [100, 0], [100, 60], [0, 60]";

  /** A box on which a free measure, which nothing asks for another value, begins at so many mm. */
  private static TestMachine with(double mm, String points, String more) {
    return TestMachine.runabout()
        .pin("plateAt", 300, 1500)
        .with("measures", "out", String.format(Locale.ROOT, "{'is': '%s mm', 'free': true}", mm))
        .with(
            "parts",
            "plate",
            "{'kind': 'box', 'frame': 'plateAt', 'mass': 1, 'outline': {'points': ["
                + points
                + "]}, "
                + more
                + "}");
  }

  private static Optional<Finding> finding(double mm, String points, String more) {
    return with(mm, points, more).finding("breadth.plate");
  }

  @ParameterizedTest
  @CsvSource({"-29, true", "-30, false", "-31, false"})
  void aPartHasSomeBreadth(double mm, boolean good) {
    Optional<Finding> f = finding(mm, CORNERS, "'left': 'out', 'right': '30 mm'");
    assertThat(f.isEmpty()).isEqualTo(good);
    f.ifPresent(
        it -> {
          assertThat(it.verdict()).isEqualTo(Verdict.FAIL);
          assertThat(it.text())
              .startsWith("As out came out, left and right of plate are ")
              .contains(mm == -30 ? "leave it no breadth" : "are -1 mm together")
              .endsWith("in which left + right is more than 0.");
        });
  }

  @ParameterizedTest
  @CsvSource({"-29, true", "-30, true", "-31, false"})
  void atAStationItMayEndInAnEdge(double mm, boolean good) {
    Optional<Finding> f =
        finding(
            mm,
            CORNERS,
            "'stations': [{'x': 0, 'left': '40 mm'}, {'name': 'nose', 'x': 100, 'left': 'out',"
                + " 'right': '30 mm'}]");
    assertThat(f.isEmpty()).isEqualTo(good);
    f.ifPresent(
        it -> {
          assertThat(it.verdict()).isEqualTo(Verdict.FAIL);
          assertThat(it.text())
              .contains("left and right of station 2 (nose) of plate are -1 mm together")
              .contains("its sides have changed places")
              .endsWith("is at least 0.");
        });
  }

  @Test
  void atAPointAndOnAFurtherBody() {
    String points = "[0, 0, {'left': 'out', 'right': '5 mm'}], [100, 0], [100, 60], [0, 60]";
    String even = "'left': '40 mm', 'right': '40 mm'";
    assertThat(finding(-4, points, even)).isEmpty();
    assertThat(finding(-6, points, even).orElseThrow().text()).contains("point 1 of plate");
    String body =
        ", 'bodies': [{'name': 'boss', 'outline': {'points': ["
            + CORNERS
            + "]}, 'left': '5 mm', 'right': 'out'}]";
    assertThat(finding(-4, CORNERS, even + body)).isEmpty();
    assertThat(finding(-6, CORNERS, even + body).orElseThrow().text()).contains("of boss of plate");
  }

  @ParameterizedTest
  @CsvSource({"99, true", "100, false", "130, false"})
  void stationsKeepTheirOrder(double mm, boolean good) {
    Optional<Finding> f =
        finding(
            mm,
            CORNERS,
            "'stations': [{'x': 'out', 'left': '40 mm'}, {'x': 100, 'left': '20 mm'}]");
    assertThat(f.isEmpty()).isEqualTo(good);
    f.ifPresent(
        it -> {
          assertThat(it.verdict()).isEqualTo(Verdict.CAUTION);
          assertThat(it.text()).contains("station 2 of plate does not lie ahead of station 1");
        });
  }
}
