package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.report.Report;
import org.longlow.sketcher.shop.Shop;
import org.longlow.svg.drawing.Mark;

/** Sheet whose breadth varies, laid flat; figures by Pythagoras on a box of 300 by 100. */
class BreadthWordsTest {

  private static final String BOX = "[[0, 0], [300, 0], [300, 100], [0, 100]]";
  private static final String WEDGE =
      "\"stations\": [{\"name\": \"tail\", \"x\": 0, \"left\": 200},"
          + " {\"name\": \"nose\", \"x\": 300, \"left\": 120}]";

  private static Study study(String kind, String points, String more) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "o": {"at": [400, 500], "nailed": true}},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "skin": {"kind": "%s", "frame": "o", "left": 200, "right": 200, "mass": 1, %s,
             "outline": {"points": %s}}}}
        """
            .formatted(kind, more, points);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout());
  }

  private static Unrolled unrolled(Study study) {
    ShellPart skin = (ShellPart) study.layout().parts().get("skin");
    return Unrolled.of(skin, study.placed().places()).orElseThrow();
  }

  private static String said(Study study) {
    return said(study, 0);
  }

  private static String said(Study study, int template) {
    return Templates.of(study, Set.of("skin")).get(template).drawing().layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .collect(Collectors.joining(" "));
  }

  @Test
  void aWedgeBendsOneWayAndHasItsTrueLengths() {
    Study study = study("cowl", BOX, "\"thickness\": 2, " + WEDGE);
    Unrolled flat = unrolled(study);
    double slant = Math.hypot(300, 80);
    assertThat(flat.needsFormers()).isFalse();
    assertThat(flat.sides()).isEqualTo(2);
    assertThat(flat.sideLongMm()).isCloseTo(slant, within(1e-6));
    assertThat(flat.sideAreaMm2()).isCloseTo(100 * slant, within(1e-3));
    assertThat(flat.strip())
        .extracting(Unrolled.Width::where)
        .containsExactly("tail", "nose", "nose", "tail", "tail");
    assertThat(flat.strip())
        .extracting(Unrolled.Width::alongMm)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : 1)
        .containsExactly(0.0, 298.0, 396.0, 694.0, 792.0);
    // along the middle of 2 mm, between sides of 2 mm that slant
    double wide = 400 - 4 * slant / 300;
    double narrow = 240 - 4 * slant / 300;
    assertThat(flat.strip())
        .extracting(Unrolled.Width::wideMm)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-6 ? 0 : 1)
        .containsExactly(wide, narrow, narrow, wide, wide);
    assertThat(flat.stripAreaMm2()).isCloseTo((298 + 98) * (wide + narrow), within(1e-3));
    assertThat(said(study))
        .contains("ITS SIDES ARE NOT FLAT", "310.5 mm long before it is bent")
        .contains("nose: at 298 it is 235.9 mm", "reaches 120 left, 120 mm right")
        .doesNotContain("sides to this line");
    assertThat(said(study, 1)).contains("make 2", "half of them turned over", "310.5 mm long");
    assertThat(said(study, 2)).contains("skin, edge strip flat", "792 mm long");
    assertThat(Report.html(study))
        .contains("side, bent along", "310.5", "235.9 at 298 (nose)")
        .doesNotContain("formers");
  }

  @Test
  void whatBendsTwoWaysAsksForFormers() {
    for (String[] bent :
        List.of(
            new String[] {BOX, WEDGE + ", \"profile\": \"oval\""},
            new String[] {
              "[[0, 0], [300, 0], [300, 100, {\"left\": 120}], [0, 100]]", "\"note\": \"\""
            })) {
      Study study = study("cowl", bent[0], "\"thickness\": 2, " + bent[1]);
      assertThat(unrolled(study).needsFormers()).isTrue();
      assertThat(said(study))
          .contains("build it over formers")
          .doesNotContain("to this line, half");
      assertThat(Report.html(study)).contains("over formers");
    }
  }

  @Test
  void aScreenIsAStripAlone() {
    Study study =
        study(
            "screen",
            "[[0, 0], [300, 0]], \"closed\": false",
            "\"open\": true, \"thickness\": 2, " + WEDGE);
    Unrolled flat = unrolled(study);
    assertThat(flat.sides()).isZero();
    assertThat(flat.needsFormers()).isFalse();
    assertThat(flat.strip())
        .containsExactly(new Unrolled.Width("tail", 0, 400), new Unrolled.Width("nose", 300, 240));
    assertThat(said(study)).contains("nose: at 300 it is 240 mm").doesNotContain("SIDES");
  }

  @Test
  void aTankSaysThatItsSidesAreNotFlat() {
    assertThat(said(study("tank", BOX, "\"profile\": \"round\"")))
        .contains("ITS SIDES ARE ROUND", "as round as", "wrap, rear end, front end")
        .contains("NO THICKNESS reckoned");
    assertThat(said(study("tank", BOX, WEDGE + ", \"profile\": \"oval\"")))
        .contains("ITS SIDES ARE NOT FLAT and bend two ways: no flat pattern")
        .doesNotContain("NO THICKNESS");
    Study flat = study("tank", BOX, "\"profile\": \"flat\", \"material\": \"steel\"");
    // legs of 300 and 100 each twice, sharp: nothing says how thick the sheet is
    assertThat(said(flat))
        .contains("make 2 sides to this line", "make 1 edge strip, 800 x 400 mm")
        .doesNotContain("NOT FLAT");
    assertThat(Report.html(flat)).contains("not said", "edge strip, folded 90");
  }

  /** A cover of even breadth, folded: legs to the bends and three arcs, the seam mitred. */
  @Test
  void anEvenCoverIsFoldedWithItsAllowance() {
    Study study = study("cowl", BOX, "\"thickness\": 2, \"material\": \"aluminium\"");
    double arc = Math.PI / 2 * 1.44 * 2;
    double length = 295 + 92 + 292 + 95 + 3 * arc;
    String said = String.format(Locale.ROOT, "%.1f", length);
    assertThat(said).isEqualTo("787.6");
    assertThat(said(study))
        .contains("make 1 edge strip, 787.6 x 396 mm, bent along the edge between the sides; folds")
        .contains("at 297.3 mm: 90° inward");
    String report = Report.html(study);
    assertThat(report).contains("edge strip, folded 90", "787.6 mm", "skin, edge strip flat");
    assertThat(Templates.of(study, Set.of("skin")))
        .extracting(NamedDrawing::name)
        .contains("skin, edge strip flat");
  }

  @Test
  void whatIsAsBroadEverywhereSaysHowBroad() {
    assertThat(said(study("bracket", BOX, "\"note\": \"\"")))
        .contains("400 mm broad throughout, from -200 to 200 mm left of the middle");
    assertThat(said(study("tank", BOX, "\"profile\": \"round\""))).doesNotContain("throughout");
  }

  /** A line there and back: nothing of its sides, and a fold that nobody makes. */
  @Test
  void whatCannotBeFoldedIsToldAndListsAreMadeAllTheSame() {
    String cowl = "\"thickness\": 2, \"material\": \"aluminium\"";
    Study lip = study("cowl", "[[0, 0], [400, 0], [400, 3], [0, 3]]", cowl);
    assertThat(said(lip))
        .contains("TAKE CARE, edge strip: leg 2 of 3 mm is too short to be folded so")
        .contains("its lengths are as drawn, WITHOUT what folds take");
    Shop shop = Shop.of(lip);
    assertThat(shop.plans().shaped()).hasSize(1);
    assertThat(Report.html(lip)).contains("edge strip, CANNOT BE FOLDED SO: as drawn");
    Study hairpin = study("cowl", "[[0, 0], [400, 0], [0, 0]], \"closed\": false", cowl);
    assertThat(Shop.of(hairpin).plans().nothing())
        .containsExactly("skin side, half of them turned over");
    assertThat(Report.html(hairpin)).contains("nothing to cut as it is drawn");
  }
}
