package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.sketcher.report.Report;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.PlainPiece;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/** The shipped machines take at most half the sheets they took, and nothing a saw needs is lost. */
class FewerSheetsTest {

  /** Sheets on A4 before plain pieces, turns, shifts and shared sheets, counted then. */
  static Stream<Arguments> taken() {
    return Stream.of(
            Arguments.of("heron", 175), Arguments.of("dunlin", 91), Arguments.of("curlew", 90))
        .filter(a -> Shipped.isSampled((String) a.get()[0]));
  }

  @ParameterizedTest
  @MethodSource("taken")
  void atMostHalfAndNothingIsLost(String machine, int before) {
    Study study = Shipped.study(machine);
    TemplateSet set =
        TemplateSet.of(study, Set.of(), TemplateSettings.on(Paper.A4), StepWatch.NONE)
            .orElseThrow();
    assertThat(set.pages()).hasSizeLessThanOrEqualTo(before / 2);
    List<String> there = new ArrayList<>();
    set.bundles().forEach(b -> b.pieces().forEach(d -> there.add(d.name())));
    set.plain().forEach(d -> there.add(d.name()));
    assertThat(there)
        .containsExactlyInAnyOrderElementsOf(
            Templates.of(study, Set.of()).stream().map(NamedDrawing::name).toList());
    String report = Shipped.report(machine);
    for (NamedDrawing d : set.plain()) {
      PlainPiece p = d.plain().orElseThrow();
      assertThat(report).as("the cut list").contains(p.title());
      p.pins().forEach(s -> assertThat(report).as(p.title()).contains(s.pin()));
      isItsLine(d, p);
    }
  }

  /** Words that have no room beside a curve as they are broken usually have it broader. */
  @ParameterizedTest
  @CsvSource({"nose, a4", "nose, letter", "radiator, letter"})
  void wordsAloneTakeNoSheet(String part, String paper) {
    Paper on = paper.equals("a4") ? Paper.A4 : Paper.LETTER;
    TemplateSet set =
        TemplateSet.of(
                Shipped.study("heron"), Set.of(part), TemplateSettings.on(on), StepWatch.NONE)
            .orElseThrow();
    assertThat(set.templates())
        .filteredOn(t -> !t.drawing().name().contains("strip"))
        .hasSize(1)
        .allSatisfy(t -> assertThat(t.sheets()).hasSize(1));
  }

  /** A machine with nothing but one plain piece to cut: the report has it, and how thick it is. */
  @Test
  void onePlainPieceAloneIsInTheCutList() {
    String json =
        """
        {"longlow": 1, "name": "one",
         "pins": {"r": [0, 300], "f": [1600, 300], "a": [500, 500]}, "parts": {
          "rear": {"kind": "wheel", "end": "rear", "axle": "r", "tyre": "140/70-16"},
          "front": {"kind": "wheel", "end": "front", "axle": "f", "tyre": "110/80-16"},
          "lug": {"kind": "bracket", "frame": "a", "left": 5, "right": 7,
            "outline": {"points": [[0, 0], [60, 0], [60, 30], [0, 30]]}}}}
        """;
    Study study = Study.of(((ReadResult.Read) LayoutReader.read(json, null)).layout());
    assertThat(Report.html(study)).contains("Plain pieces", "60 x 30 mm");
  }

  /** Sides by the least rectangle round the line; pins by how far they are from its corners. */
  private static void isItsLine(NamedDrawing d, PlainPiece p) {
    Geometry cut = ((Mark.Shape) d.drawing().layers().get(0).marks().get(0)).geometry();
    assertThat(cut.getArea()).as(p.title()).isCloseTo(p.longMm() * p.wideMm(), within(0.5));
    assertThat(new MinimumDiameter(cut).getLength()).isCloseTo(p.wideMm(), within(0.05));
    for (PlainPiece.Station s : p.pins()) {
      boolean fromCorner = !s.alongWord().equals("along");
      Coordinate at =
          d.drawing().layers().stream()
              .flatMap(l -> l.marks().stream())
              .filter(m -> m instanceof Mark.Shape && m.subject().equals("pin:" + s.pin()))
              .map(m -> ((Mark.Shape) m).geometry().getEnvelopeInternal().centre())
              .findFirst()
              .orElseThrow();
      double far = Math.hypot(s.alongMm(), s.acrossMm());
      double off =
          fromCorner ? least(cut, at, far) : Math.abs(Math.abs(s.acrossMm()) - fromMiddle(cut, at));
      assertThat(off).as(p.title() + ", " + s.pin()).isLessThan(0.05);
    }
  }

  private static double least(Geometry cut, Coordinate at, double far) {
    double least = Double.POSITIVE_INFINITY;
    for (Coordinate c : cut.getCoordinates()) {
      least = Math.min(least, Math.abs(c.distance(at) - far));
    }
    return least;
  }

  /** How far a point is off the line through the middles of both short sides. */
  private static double fromMiddle(Geometry cut, Coordinate at) {
    Coordinate[] c = cut.getCoordinates();
    boolean first = c[0].distance(c[1]) < c[1].distance(c[2]);
    Coordinate a = middle(c[first ? 0 : 1], c[first ? 1 : 2]);
    Coordinate b = middle(c[first ? 2 : 3], c[first ? 3 : 4]);
    return org.locationtech.jts.algorithm.Distance.pointToLinePerpendicular(at, a, b);
  }

  private static Coordinate middle(Coordinate a, Coordinate b) {
    return new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
  }
}
