package org.longlow.svg.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** What sheets say of the printer they are for; pieces of a roll. */
class PrinterWordsTest {

  private static Drawing plate(double wide, double high) {
    return Drawing.of(
        "",
        new Layer(
            "cut",
            "",
            List.of(
                new Mark.Shape(
                    "plate", Planar.rectangle(0, 0, wide, high), Style.wide(Tone.INK)))));
  }

  private static List<Page> sheets(Drawing drawing, Paper paper, String printer) {
    PrintCorrection c = PrintCorrection.measured(99.6, 200.4).of(printer);
    return TemplateSheets.of("plate", drawing, TemplateSettings.on(paper).withCorrection(c));
  }

  @Test
  void everySheetSaysForWhichPrinterItIs() {
    List<Page> pages = sheets(plate(380, 520), Paper.A4, "Attic");
    assertThat(pages).hasSizeGreaterThan(4);
    for (Page page : pages) {
      String words = String.join(" ", TemplateSheetsTest.words(page));
      assertThat(words)
          .contains("Corrected for Attic: 1.004 across, 0.998 along")
          .contains("measure: should be 100.0 mm from Attic");
    }
  }

  @Test
  void aSheetOnItsSideSaysItAsItLies() {
    List<Page> pages = sheets(plate(270, 60), Paper.A4, "Attic");
    assertThat(TemplateSheetsTest.words(pages.get(0)))
        .contains("Corrected for Attic: 0.998 across, 1.004 along");
  }

  @Test
  void aLongNameLosesItsEndAndNoFigure() {
    String name = "the old grey one upstairs behind the door of the second workshop";
    for (Page page : sheets(plate(380, 520), Paper.A4, name)) {
      List<Mark> words =
          TemplateSheetsTest.marks(page).stream()
              .filter(m -> m instanceof Mark.Words w && w.text().startsWith("Corrected for"))
              .toList();
      if (page.title().endsWith("map")) {
        continue;
      }
      assertThat(words).hasSize(1);
      Mark.Words line = (Mark.Words) words.get(0);
      assertThat(line.text())
          .startsWith("Corrected for the old")
          .endsWith(": 1.004 across, 0.998 along");
      assertThat(line.boxMm().getWidth()).isLessThan(SheetNotes.WIDTH_MM / 1.2);
    }
  }

  @Test
  void aPrinterWithoutAnErrorIsNamedAllTheSame() {
    assertThat(PrintCorrection.NONE.isNone()).isTrue();
    assertThat(PrintCorrection.NONE.of("Attic").isNone()).isFalse();
    assertThat(PrintCorrection.NONE.of("Attic").words())
        .isEqualTo("Corrected for Attic: 1.000 across, 1.000 along");
  }

  // 200 / 1.05 = 190.476, 200 / 0.95 = 210.526; likewise by halves for the bar of 100 mm.
  @ParameterizedTest
  @CsvSource({
    "190.5, true", "190.4, false", "210.5, true", "210.6, false", "95.3, true", "95.2, false",
    "105.2, true", "105.3, false", "0, false", "-200, false", "150, false", "NaN, false"
  })
  void fiveInAHundredAreCorrectedAndNoMore(double measuredMm, boolean taken) {
    assertThat(PrintCorrection.refusal(measuredMm).isEmpty()).isEqualTo(taken);
    if (!taken) {
      assertThat(PrintCorrection.refusal(measuredMm).get()).contains("\"fit to page\"");
    }
  }

  @Test
  void eitherBarGivesTheSameFactor() {
    assertThat(PrintCorrection.measured(198, 101))
        .isEqualTo(PrintCorrection.measured(99, 202))
        .satisfies(c -> assertThat(c.sx()).isEqualTo(1 / 0.99, within(1e-12)))
        .satisfies(c -> assertThat(c.sy()).isEqualTo(1 / 1.01, within(1e-12)));
  }

  /** Bands, notes and margins take 20 + 40 + 20 mm. */
  @ParameterizedTest
  @CsvSource({"500, 1200, 610, 1280", "1200, 500, 1280, 610", "560, 30, 610, 180"})
  void aRollIsCutAsLongAsATemplateNeeds(
      double wide, double high, double paperWide, double paperHigh) {
    List<Page> pages =
        TemplateSheets.of("plate", plate(wide, high), TemplateSettings.on(Paper.roll(610)));
    assertThat(pages).hasSize(1);
    assertThat(pages.get(0).paper().widthMm()).isEqualTo(paperWide);
    assertThat(pages.get(0).paper().heightMm()).isEqualTo(paperHigh);
    assertThat(pages.get(0).paper().label()).startsWith("roll-610 cut to ");
  }

  @Test
  void whatIsWiderThanARollIsGluedOfFewPieces() {
    List<Page> pages =
        TemplateSheets.of("plate", plate(900, 1500), TemplateSettings.on(Paper.roll(610)));
    assertThat(pages).hasSize(2);
    assertThat(TemplateSheetsTest.words(pages.get(0)).toString()).contains("1 of 2");
    assertThat(pages.get(0).paper().label()).isEqualTo("roll-610 cut to 1580 mm");
  }

  @ParameterizedTest
  @CsvSource({"roll 610, 610", "ROLL-610 mm, 610", "roll 24 in, 609.6"})
  void rollsAreReadByTheirWidth(String text, double widthMm) {
    Paper paper = Paper.parse(text);
    assertThat(paper.roll()).isTrue();
    assertThat(paper.widthMm()).isEqualTo(widthMm, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(strings = {"roll", "roll 20", "roll 6000", "roll 610 landscape", "roll x", "roll-"})
  void whatIsNoRollIsNotRead(String text) {
    assertThat(Paper.read(text)).isEmpty();
  }
}
