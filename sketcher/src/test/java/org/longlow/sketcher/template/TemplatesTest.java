package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.distance.DiscreteHausdorffDistance;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.disk.Windows;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Cushions;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.ElevationPictureTest;
import org.longlow.sketcher.picture.Plover;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

class TemplatesTest {

  private static final Study STUDY = Plover.study();
  private static final List<NamedDrawing> ALL = Templates.of(STUDY, Set.of());

  private NamedDrawing named(String fileName) {
    return ALL.stream().filter(d -> d.fileName().equals(fileName)).findFirst().orElseThrow();
  }

  private static Geometry cut(NamedDrawing d) {
    Layer outline = ElevationPictureTest.layer(d.drawing(), "outline");
    return ((Mark.Shape) outline.marks().get(0)).geometry();
  }

  private static List<String> words(NamedDrawing d) {
    List<String> out = new ArrayList<>();
    for (Layer l : d.drawing().layers()) {
      for (Mark m : l.marks()) {
        if (m instanceof Mark.Words w) {
          out.add(w.text());
        }
      }
    }
    return out;
  }

  /** Strip length by the middle line of the sheet, 600 mm less two sides of 3 mm, two sides. */
  @Test
  void aClosedCowlSaysItsSidesAndItsEdgeStrip() {
    Geometry side = STUDY.shapes().get("nose").outline();
    double length = side.buffer(-1.5, 64).getLength();
    String said = String.join(" ", words(named("nose"))); // long lines are broken
    assertThat(said).contains("laminate make 2 sides to this line, half of them turned over");
    assertThat(said).containsPattern("make 1 edge strip, [0-9.]+ x 594 mm, bent along the edge");
    double saidMm = Double.parseDouble(said.replaceAll(".*edge strip, ([0-9.]+) x.*", "$1"));
    assertThat(saidMm).isCloseTo(length, within(3.0));
    // 1430 kg/m³ of what is cut and nothing else
    assertThat(STUDY.shapes().get("nose").massKg())
        .isCloseTo((saidMm * 594 + 2 * side.getArea()) * 3 * 1430e-9, within(0.003));
  }

  @Test
  void anOpenScreenIsOneStrip() {
    String said = String.join(" ", words(named("screen")));
    assertThat(said).doesNotContain("sides");
    assertThat(said).containsPattern("make 1 edge strip, [0-9.]+ x 520 mm, bent along this line");
  }

  @Test
  void everyTemplateHasExactlyTheSolvedOutline() {
    for (NamedDrawing d : ALL) {
      if (d.fileName().matches(".*-(board|layer|cope|mitre|bends|cover|edge-strip|leg|link).*")) {
        continue;
      }
      Geometry solved = STUDY.shapes().get(d.part()).outline();
      assertThat(DiscreteHausdorffDistance.distance(cut(d), solved)).as(d.name()).isLessThan(1e-6);
      assertThat(cut(d).getArea()).isCloseTo(solved.getArea(), within(1e-6));
    }
  }

  @Test
  void boardsAreAsLongAsTheFaceAndAsWideAsTheSpread() {
    Envelope board = cut(named("pan-board")).getEnvelopeInternal();
    double length =
        STUDY.placed().places().pin("panRear").distance(STUDY.placed().places().pin("panFront"));
    assertThat(board.getWidth()).isCloseTo(length, within(1e-9));
    assertThat(board.getHeight()).isCloseTo(380, within(1e-9));
  }

  @Test
  void layersAreTheBandsOfTheCushion() {
    CushionPart pan = (CushionPart) STUDY.layout().parts().get("pan");
    List<Geometry> bands = Cushions.bands(pan, STUDY.placed().places());
    for (int i = 1; i < bands.size(); i++) {
      // bands come from the board up, layers are numbered from the top as in the file
      Geometry layer = cut(named("pan-layer-" + (bands.size() - i)));
      assertThat(layer.equalsTopo(bands.get(i))).isTrue();
    }
    assertThat(words(named("pan-layer-1")))
        .contains("layer 1 (top): soft, 25 mm free")
        .anyMatch(w -> w.matches(" *pressed to [\\d.]+ mm under Mara .*"))
        .anyMatch(w -> w.matches(" *pressed to [\\d.]+ mm under Tor .*"));
  }

  @Test
  void whatIsBoughtGetsNoTemplateUnlessAskedFor() {
    assertThat(ALL).noneMatch(d -> Set.of("engine", "rearWheel").contains(d.part()));
    assertThat(ALL.stream().filter(d -> d.part().equals("fork")).map(NamedDrawing::fileName))
        .containsExactly("fork-leg", "fork-link");
    assertThat(Templates.of(STUDY, Set.of("engine"))).hasSize(1);
  }

  @Test
  void anUnknownPartIsRefusedByName() {
    assertThatThrownBy(() -> Templates.of(STUDY, Set.of("wing")))
        .hasMessageContaining("'wing'")
        .hasMessageContaining("lowRail");
  }

  @Test
  void fileNamesAreSafeAndUnique() {
    assertThat(ALL.stream().map(NamedDrawing::fileName)).doesNotHaveDuplicates();
    assertThat(ALL).allMatch(d -> d.fileName().matches("[a-z0-9]+(-[a-z0-9]+)*"));
    assertThat(TemplateWords.fileName("../../Größe <b>")).isEqualTo("gr-e-b");
    assertThat(TemplateWords.fileName("тяга")).isEqualTo("part");
  }

  @Test
  void cutLengthOfOneRightAngleIsTheReferenceFigure() {
    // derived worked number: legs 500 and 400 with one 90 degree bend, CLR 114.3
    TubeBends bends =
        TubeBends.of(
            List.of("a", "b", "c"),
            List.of(new PointMm(0, 0), new PointMm(500, 0), new PointMm(500, 400)),
            114.3);
    assertThat(bends.cutMm()).isCloseTo(850.942020152657, within(1e-9));
    TubeBends.Bend bend = bends.bends().get(0);
    assertThat(bend.arcMm()).isCloseTo(179.542020152657, within(1e-9));
    assertThat(bend.gainMm()).isCloseTo(49.057979847343, within(1e-9));
    assertThat(bend.startMm()).isCloseTo(385.7, within(1e-9));
    assertThat(bend.reduced()).isFalse();
  }

  @Test
  void otherBendsGiveTheReferenceFigures() {
    // derived worked numbers: CLR 76.2 at 45 degrees, CLR 60 at 120 degrees
    check(76.2, 45, 59.847340050886, 31.563073452830, 3.278806854775);
    check(60, 120, 125.663706143592, 103.923048454133, 82.182390764674);
  }

  private static void check(double clr, double deg, double arc, double tangent, double gain) {
    PointMm corner = new PointMm(500, 0);
    PointMm end = corner.plus(PointMm.unit(Math.toRadians(-deg)).times(500));
    TubeBends.Bend b =
        TubeBends.of(List.of("a", "b", "c"), List.of(new PointMm(0, 0), corner, end), clr)
            .bends()
            .get(0);
    assertThat(b.arcMm()).isCloseTo(arc, within(1e-9));
    assertThat(b.tangentMm()).isCloseTo(tangent, within(1e-9));
    assertThat(b.gainMm()).isCloseTo(gain, within(1e-9));
    assertThat(b.angleRad()).isNegative();
  }

  @Test
  void cutLengthIsTheLengthOfTheDrawnCentreLine() {
    for (Part part : STUDY.layout().parts().values()) {
      if (part instanceof TubePart tube) {
        double drawn = Curves.length(Shapes.centreLine(tube, STUDY.placed().places()));
        // the drawn line is made of chords at most 0.02 mm off the arc: shorter, by under 0.2 %
        double cut = TubeBends.of(tube, STUDY.placed().places()).cutMm();
        assertThat(drawn).isBetween(cut * 0.998, cut + 1e-9);
      }
    }
  }

  @Test
  void aBendThatDoesNotFitSaysSo() {
    TubeBends bends =
        TubeBends.of(
            List.of("a", "b", "c"),
            List.of(new PointMm(0, 0), new PointMm(50, 0), new PointMm(50, 400)),
            100);
    assertThat(bends.bends().get(0).reduced()).isTrue();
    assertThat(bends.bends().get(0).radiusMm()).isCloseTo(50, within(1e-9));
  }

  @Test
  void everyTemplateSaysThatTheLineStaysOrHowLongToCut() {
    for (NamedDrawing d : ALL) {
      assertThat(words(d))
          .as(d.name())
          .anyMatch(w -> w.startsWith("LINE STAYS") || w.startsWith("cut length"));
    }
  }

  @Test
  void pinsOfAPartAreDrillCrossesAtTheirPlace() {
    Layer drills = ElevationPictureTest.layer(named("lowrail").drawing(), "drills");
    Set<String> subjects = drills.marks().stream().map(Mark::subject).collect(Collectors.toSet());
    assertThat(subjects).containsExactlyInAnyOrder("pin:a", "pin:b", "pin:c", "pin:d");
    Envelope a = ElevationPictureTest.boxOf(drills, "pin:a");
    PointMm place = STUDY.placed().places().pin("a");
    assertThat(a.centre().x).isCloseTo(place.x(), within(1e-6));
    assertThat(a.centre().y).isCloseTo(place.z(), within(1e-6));
  }

  @Test
  void sheetsOfABoardSayWhichSideIsTheLeftOfTheMachine() {
    assertThat(named("pan-board").up()).isEqualTo("left side");
    List<String> texts = new ArrayList<>();
    for (Page page : named("pan-board").sheets(TemplateSettings.on(Paper.A4))) {
      for (Layer l : page.layers()) {
        l.marks().stream()
            .filter(Mark.Words.class::isInstance)
            .forEach(m -> texts.add(((Mark.Words) m).text()));
      }
    }
    assertThat(texts).contains("left side").doesNotContain("up");
  }

  @Test
  @Tag("long")
  void everyTemplateIsPrintedOnHomePaperAndItsWordsKeepOffTheSeams() {
    // the words of a block start on one line: on a sheet none may have been slid to another
    int slid = 0;
    int seen = 0;
    for (NamedDrawing d : ALL) {
      double start = startOf(ElevationPictureTest.layer(d.drawing(), "words"));
      List<Page> sheets = d.sheets(TemplateSettings.on(Paper.A4));
      assertThat(sheets).as(d.name()).isNotEmpty();
      for (Page page : sheets) {
        for (Layer l : page.layers()) {
          if (l.id().equals("words")) {
            seen++;
            slid += Double.isNaN(startOf(l)) ? 1 : 0;
          }
        }
      }
      assertThat(start).as(d.name()).isNotNaN();
    }
    assertThat(seen).isGreaterThanOrEqualTo(ALL.size());
    assertThat(slid).isLessThanOrEqualTo(1);
  }

  /** Returns where the 3 mm lines of a block start, NaN if not ALL at one place. */
  private static double startOf(Layer words) {
    double start = Double.NaN;
    for (Mark m : words.marks()) {
      if (m instanceof Mark.Words w && (w.text().startsWith("LINE") || w.heightMm() == 5)) {
        if (!Double.isNaN(start) && Math.abs(start - w.x()) > 1e-6) {
          return Double.NaN;
        }
        start = w.x();
      }
    }
    return start;
  }

  @Test
  void fileNamesAreThoseOfNoDevice() {
    for (String name : List.of("CON", "nul", "Prn", "AUX", "COM1", "lpt9.", "con ", "Nul..")) {
      assertThat(Windows.refuses(TemplateWords.fileName(name))).as(name).isFalse();
    }
    assertThat(TemplateWords.fileName("CON")).isEqualTo("con-part");
    assertThat(TemplateWords.fileName("Cone. ")).isEqualTo("cone");
  }
}
