package org.longlow.constraints.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.solve.LimitFailure;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.study.Study;

/**
 * A gap that is short across the machine is told from one that is short in the elevation. A plate
 * 400 mm high stands from y = 200 to 206 mm; a bar of 30 mm beside it reaches out to some y, behind
 * the plate in side view or near its upper edge (z = 700 mm).
 */
class AcrossTest {

  private static Study study(double barZ, double barY, double gapMm) {
    String file =
        String.format(
            Locale.ROOT,
            """
            {"longlow": 1, "name": "t",
             "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
               "a": [500, %s], "b": [900, %s], "o": {"at": [400, 300], "nailed": true}},
             "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
               "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
               "plate": {"kind": "block", "frame": "o", "left": 206, "right": -200, "mass": 5,
                 "outline": {"points": [[0, 0], [600, 0], [600, 400], [0, 400]], "closed": true}},
               "bar": {"kind": "rail", "path": ["a", "b"], "diameter": 30, "wall": 2, "bendRadius": 50, "y": %s}},
             "ties": {"len": {"tie": "distance", "pins": ["a", "b"], "is": 400}},
             "limits": {"room": {"limit": "gap", "parts": ["bar", "plate"], "from": %s}}}
            """,
            barZ,
            barZ,
            barY,
            gapMm);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout());
  }

  private static double barZ(Study study) {
    return study.placed().places().pin("a").z();
  }

  /** Deep behind the plate the bar stays where it is, and is short by what y alone says. */
  @ParameterizedTest(name = "bar at y {0} mm, {1} mm asked")
  @CsvSource({"178, 15, 8", "170, 16, 1", "184, 0.5, 0", "190, 1, 6"})
  void whatLiesBesideIsShortAcrossAndNothingRunsAway(double y, double gap, double shortMm) {
    Study study = study(500, y, gap);
    double asked = Math.max(0, gap - (200 - (y + 15)));
    assertThat(asked).isCloseTo(shortMm, within(1e-9));
    assertThat(barZ(study)).isCloseTo(500, within(1e-6));
    if (shortMm == 0) {
      assertThat(study.placed().report().status()).isEqualTo(SolveStatus.SOLVED);
      return;
    }
    assertThat(study.contradicts()).isTrue();
    assertThat(study.placed().report().failedLimits())
        .singleElement()
        .extracting(LimitFailure::shortfallMm)
        .satisfies(mm -> assertThat((double) mm).isCloseTo(shortMm, within(1e-6)));
    Finding finding =
        study.findings().stream()
            .filter(f -> f.id().equals("limit.room"))
            .findFirst()
            .orElseThrow();
    assertThat(finding.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(finding.margin()).isCloseTo(-shortMm, within(1e-6));
    assertThat(finding.text())
        .containsPattern(
            "short across the machine; no move in the elevation of less than [0-9.]+ mm helps");
  }

  /** With 8 mm short, 40 mm up are worth going and 41 are not: five times what is short across. */
  @ParameterizedTest(name = "{0} mm below where it is clear")
  @CsvSource({"30, true", "39.5, true", "40.5, false", "120, false"})
  void nearTheEdgeTheBarMovesInTheElevation(double below, boolean moves) {
    // 7 mm apart across, so that the distance of both ways together is what is asked
    double clear = 700 + 15 + Math.sqrt(15 * 15 - 7 * 7);
    Study study = study(clear - below, 178, 15);
    assertThat(study.placed().report().status().holds()).isEqualTo(moves);
    assertThat(barZ(study)).isCloseTo(moves ? clear : clear - below, within(1e-5));
  }

  @Test
  void whatStandsOverTheMiddleCannotGoAside() {
    // in the middle plane of the machine there is only the elevation, however far
    Study study = study(500, 178, 15);
    assertThat(study.contradicts()).isTrue();
    String middle =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "a": [500, 560], "b": [900, 560], "o": {"at": [400, 300], "nailed": true}},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "plate": {"kind": "block", "frame": "o", "left": 3, "right": 3, "mass": 5,
             "outline": {"points": [[0, 0], [600, 0], [600, 400], [0, 400]], "closed": true}},
           "bar": {"kind": "rail", "path": ["a", "b"], "diameter": 30, "wall": 2, "bendRadius": 50, "y": 0}},
         "ties": {"len": {"tie": "distance", "pins": ["a", "b"], "is": 400}},
         "limits": {"room": {"limit": "gap", "parts": ["bar", "plate"], "from": 1}}}
        """;
    ReadResult result = LayoutReader.read(middle, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    Placed placed = Placer.place(((ReadResult.Read) result).layout());
    assertThat(placed.holds()).isTrue();
    assertThat(placed.places().pin("a").z()).isCloseTo(716, within(1e-5));
  }

  @Test
  void whatIsDrawnBesideButTiedElsewhereIsJudgedWhereTheTiesPutIt() {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "a": [500, 500], "b": [900, 500], "o": {"at": [400, 300], "nailed": true}},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "plate": {"kind": "block", "frame": "o", "left": 206, "right": -200, "mass": 5,
             "outline": {"points": [[0, 0], [600, 0], [600, 400], [0, 400]], "closed": true}},
           "bar": {"kind": "rail", "path": ["a", "b"], "diameter": 30, "wall": 2, "bendRadius": 50, "y": 178}},
         "ties": {"high": {"tie": "height", "pins": ["a"], "is": 900},
           "level": {"tie": "above", "pins": ["a", "b"], "is": 0}},
         "limits": {"room": {"limit": "gap", "parts": ["bar", "plate"], "from": 15}}}
        """;
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    Placed placed = Placer.place(((ReadResult.Read) result).layout());
    assertThat(placed.report().status()).isEqualTo(SolveStatus.SOLVED);
  }
}
