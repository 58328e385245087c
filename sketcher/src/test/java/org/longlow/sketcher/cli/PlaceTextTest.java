package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.suit.SuitReport;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.Shipped;

class PlaceTextTest {

  private static final Study STUDY = Shipped.study("dunlin");

  private static List<String> lines(PointMm first, PointMm second) {
    Map<String, PointMm> places = new LinkedHashMap<>();
    places.put("Mara", first);
    places.put("Tor", second);
    SuitReport.Travel travel = new SuitReport.Travel("pegs", "peg", first.distance(second), places);
    SuitReport.Alternative stays =
        new SuitReport.Alternative(
            STUDY.layout(),
            STUDY,
            List.of(new SuitReport.Move("peg", first, first)),
            Map.of("Mara", 0.25),
            List.of(),
            List.of("pegUp (at most)"));
    SuitReport report =
        new SuitReport(
            STUDY,
            Map.of("Mara", 1.5),
            List.of(stays),
            Optional.of(new SuitReport.Adjustment(List.of(travel), Map.of(), Map.of())),
            List.of(),
            true);
    return new PlaceText(report, Units.MM).lines();
  }

  @ParameterizedTest
  @CsvSource({
    "1400, 400, 1440, 402, 41 mm fore-aft",
    "1440, 402, 1400, 400, 41 mm fore-aft",
    "1400, 400, 1404, 360, 41 mm up-down",
    "'1400', 400, 1430, 430, '43 mm on a slope of 45°, front up'",
    "1430, 400, 1400, 430, '43 mm on a slope of 45°, front down'"
  })
  void adjustmentSaysHowFarWhichWayAndWhereForWhom(
      double x1, double z1, double x2, double z2, String says) {
    assertThat(lines(new PointMm(x1, z1), new PointMm(x2, z2)))
        .contains(
            String.format(
                Locale.ROOT,
                "  adjust pegs %s: Mara at (%.1f, %.1f), Tor at (%.1f, %.1f) (peg)",
                says,
                x1,
                z1,
                x2,
                z2));
  }

  @Test
  void aPlaceThatIsKeptIsSaidToBeTheBest() {
    List<String> lines = lines(new PointMm(1400, 400), new PointMm(1440, 400));
    assertThat(lines)
        .anyMatch(l -> l.endsWith("no better place was found than the present one"))
        .contains(
            "  peg stays at (1400.0, 400.0)",
            "  discomfort: Mara 1.50 -> 0.25",
            "  rests against pegUp (at most)");
  }

  @Test
  void whomAPlaceServesAndWhatIsLackingIsSaid() {
    List<String> lines = lines(new PointMm(1400, 400), new PointMm(1440, 400));
    assertThat(lines).anyMatch(l -> l.startsWith("  serves "));
    Finding lacks =
        STUDY.findings().stream().filter(f -> f.id().startsWith("gap.")).findFirst().orElseThrow();
    SuitReport report =
        new SuitReport(
            STUDY,
            Map.of(),
            List.of(),
            Optional.of(
                new SuitReport.Adjustment(List.of(), Map.of(), Map.of("Mara", List.of(lacks)))),
            List.of(),
            false);
    assertThat(new PlaceText(report, Units.MM).lines())
        .anyMatch(l -> l.startsWith("No one place suits everybody, and no adjustment"))
        .anyMatch(l -> l.startsWith("  Mara still lacks " + lacks.id()))
        .anyMatch(l -> l.startsWith("Not decided: "));
  }
}
