package org.longlow.svg.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

class FrameTest {

  private static final TitleBlock TITLE =
      new TitleBlock(
          "Home shop",
          "LL-0001",
          "2026-03-01",
          "1/1",
          "Long tourer",
          "",
          "A. Builder",
          "",
          "elevation",
          "mm",
          List.of());

  // Drawing spaces of ISO 5457:1999 (height x width; A4 is given for the upright sheet).
  @ParameterizedTest
  @CsvSource({
    "a0 landscape, 1159, 821",
    "a1 landscape, 811, 574",
    "a2 landscape, 564, 400",
    "a3 landscape, 390, 277",
    "a4 portrait, 180, 277"
  })
  void drawingSpacesAreThoseOfTheStandard(String paper, double width, double height) {
    Envelope s = SheetSpace.drawingSpace(Paper.parse(paper));
    assertThat(s.getWidth()).isEqualTo(width, within(1e-9));
    assertThat(s.getHeight()).isEqualTo(height, within(1e-9));
    assertThat(s.getMinX()).isEqualTo(20);
  }

  // Numbers of fields of ISO 5457:1999 on the long and the short side (from memory of the
  // standard).
  @ParameterizedTest
  @CsvSource({
    "1159, 24",
    "821, 16",
    "811, 16",
    "574, 12",
    "564, 12",
    "400, 8",
    "390, 8",
    "277, 6",
    "180, 4"
  })
  void gridReferencesHaveTheNumberOfFieldsOfTheStandard(double length, int fields) {
    assertThat(Frame.fields(length)).isEqualTo(fields);
  }

  // Worked: a 2200 mm machine goes on A3 landscape at 1:10, on A2 at 1:5, on upright A4 at 1:20.
  @ParameterizedTest
  @CsvSource({"a3 landscape, 10", "a2 landscape, 5", "a4 portrait, 20", "a1 landscape, 5"})
  void aMachineGetsTheLargestPreferredScaleThatFits(String paper, int real) {
    Scale s = Scale.fitting(new Envelope(-300, 1900, 0, 1200), Paper.parse(paper));
    assertThat(s).isEqualTo(Scale.oneTo(real));
    assertThat(s).hasToString("1:" + real);
  }

  @Test
  void preferredScalesGoFromLargeToSmall() {
    assertThat(Scale.PREFERRED)
        .isSortedAccordingTo((a, b) -> Double.compare(b.factor(), a.factor()));
    assertThat(Scale.fitting(new Envelope(0, 10, 0, 10), 100, 100)).isEqualTo(new Scale(10, 1));
    assertThatThrownBy(() -> Scale.fitting(new Envelope(0, 1e9, 0, 1), 100, 100))
        .hasMessageContaining("1:1000");
    assertThatThrownBy(() -> new Scale(0, 1)).hasMessageContaining("0:1");
  }

  @Test
  void aSheetInInchesHasALineOfFourInchesBesideItsBar() {
    Scale scale = Scale.oneTo(10);
    Drawing machine = Samples.machine(scale);
    Page inches = Frame.sheet(Paper.A3.landscape(), TITLE.withUnits("in"), machine, scale);
    assertThat(TemplateSheetsTest.marks(inches))
        .filteredOn(m -> m.subject().equals(ScaleBar.INCHES))
        .singleElement()
        .satisfies(
            m ->
                assertThat(((Mark.Shape) m).geometry().getEnvelopeInternal().getWidth())
                    .isCloseTo(101.6, within(1e-9)));
    assertThat(TemplateSheetsTest.marks(Frame.sheet(Paper.A3.landscape(), TITLE, machine, scale)))
        .noneMatch(m -> m.subject().equals(ScaleBar.INCHES));
  }

  @Test
  void theSheetHoldsThePictureAtScaleWithLetteringInPaperMillimetres() {
    Scale scale = Scale.oneTo(10);
    Drawing machine = Samples.machine(scale);
    Page page = Frame.sheet(Paper.A3.landscape(), TITLE, machine, scale);
    List<Mark> marks = TemplateSheetsTest.marks(page);
    Envelope frame = SheetSpace.drawingSpace(page.paper());
    Envelope ground = null;
    for (Mark m : marks) {
      if (m.subject().equals("ground")) {
        ground = ((Mark.Shape) m).geometry().getEnvelopeInternal();
      }
      if (m instanceof Mark.Words w && w.subject().startsWith("measure:")) {
        assertThat(w.heightMm()).isEqualTo(3.5);
        assertThat(frame.contains(w.boxMm())).isTrue();
      }
    }
    assertThat((Object) ground).isNotNull();
    assertThat(ground.getWidth()).isEqualTo(240, within(1e-9));
    assertThat(TemplateSheetsTest.words(page))
        .contains(
            "1:10",
            "mm",
            "A3",
            "Long tourer",
            "LL-0001",
            "2026-03-01",
            "Home shop",
            "A. Builder",
            "elevation",
            "Not for structural approval",
            "1620",
            "509.9");
  }

  @Test
  void whatDoesNotFitIsRefusedWithAScaleThatDoes() {
    Scale scale = Scale.oneTo(5);
    assertThatThrownBy(() -> Frame.sheet(Paper.A4, TITLE, Samples.machine(scale), scale))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1:20");
    assertThatThrownBy(() -> Frame.sheet(Paper.A4, TITLE, Drawing.of("x"), scale))
        .hasMessageContaining("nothing");
    assertThatThrownBy(() -> SheetSpace.pictureSpace(new Paper("tiny", 100, 100)))
        .hasMessageContaining("A4 or larger");
  }

  @Test
  void longEntriesStayInTheirFields() {
    String longText = "A very long entry that nobody foresaw ".repeat(20);
    TitleBlock t =
        new TitleBlock(
            longText, longText, longText, longText, longText, longText, longText, longText,
            longText, longText, List.of());
    Scale scale = Scale.oneTo(20);
    Page page = Frame.sheet(Paper.A4, t, Samples.machine(scale), scale);
    for (Mark m : TemplateSheetsTest.marks(page)) {
      if (m instanceof Mark.Words w && w.text().contains("…")) {
        assertThat(w.boxMm().getMaxX()).isLessThan(200);
      }
    }
    assertThat(TemplateSheetsTest.words(page).stream().filter(w -> w.endsWith("…"))).hasSize(10);
  }

  /** A machine of 2.7 by 1.25 m at 1:20: the bar lies off it, the title block and revisions. */
  @ParameterizedTest
  @CsvSource({"a4 landscape, 0", "a4 landscape, 5", "letter landscape, 0", "letter landscape, 3"})
  void smallSheetsHaveABarToMeasureToo(String paper, int changes) {
    List<TitleBlock.Revision> all =
        IntStream.range(0, changes)
            .mapToObj(i -> new TitleBlock.Revision("A", "2026-03-01", "wider bars"))
            .toList();
    TitleBlock title =
        new TitleBlock(
            "", "LL-1", "2026-03-01", "1/1", "Tourer", "", "", "", "elevation", "mm", all);
    Drawing machine =
        Drawing.of(
            "",
            new Layer(
                "a",
                "",
                List.of(
                    new Mark.Shape(
                        "", Planar.rectangle(0, 0, 2700, 1250), Style.narrow(Tone.INK)))));
    Page page = Frame.sheet(Paper.parse(paper), title, machine, new Scale(1, 20));
    Envelope bar = new Envelope();
    List<Envelope> others = new ArrayList<>();
    for (Page.Piece piece : page.pieces()) {
      Drawing there = piece.drawing().transformed(piece.placement().toJts());
      there.layers().stream()
          .filter(l -> !l.id().equals("sheet-frame") && !l.id().equals("sheet-grid"))
          .forEach(
              l ->
                  l.marks()
                      .forEach(
                          m -> {
                            if (m instanceof Mark.Shape s
                                && s.subject().startsWith("scale-bar:a")) {
                              bar.expandToInclude(s.geometry().getEnvelopeInternal());
                            } else if (m instanceof Mark.Shape s && !l.id().equals("sheet-check")) {
                              others.add(s.geometry().getEnvelopeInternal());
                            }
                          }));
    }
    assertThat(Math.max(bar.getWidth(), bar.getHeight())).isCloseTo(100, within(1e-9));
    assertThat(others).noneMatch(bar::intersects);
  }
}
