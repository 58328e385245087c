package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.CalibrationSheet;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;

/**
 * A printer that stretches: pages are rendered by another program, turned as a printer feeds them
 * (long side along), stretched as that printer does, and measured in the pixels.
 */
class CorrectedPrintTest {

  private static final int DPI = 300;
  private static final double PX_PER_MM = DPI / 25.4;

  /** What this printer makes of a millimetre, across and along the paper it feeds. */
  private static final double ACROSS = 0.985;

  private static final double ALONG = 1.012;

  private static final double TRUE_TO_MM = 0.12;

  private static BufferedImage render(Page page) throws IOException {
    try (PDDocument doc = Loader.loadPDF(PdfWriterTest.pdf(List.of(page)))) {
      return new PDFRenderer(doc).renderImageWithDPI(0, DPI, ImageType.GRAY);
    }
  }

  /** Returns the length between the end ticks of a bar as the page shows it, mm. */
  private static double onPage(Page page, BufferedImage image, String bar, boolean level) {
    Envelope e = ScaleMeasurementTest.bar(page, bar);
    double high = page.paper().heightMm();
    if (level) {
      double row = high - (e.getMaxY() - 1);
      return ScaleMeasurementTest.tick(image, e.getMaxX(), row, true)
          - ScaleMeasurementTest.tick(image, e.getMinX(), row, true);
    }
    double column = e.getMinX() + 1;
    return ScaleMeasurementTest.tick(image, high - e.getMinY(), column, false)
        - ScaleMeasurementTest.tick(image, high - e.getMaxY(), column, false);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a4", "letter", "roll 610"})
  void theBarsOfTheCalibrationPageMeasureWhatTheySay(String paper) throws IOException {
    Page page = CalibrationSheet.of(Paper.parse(paper), PrintCorrection.NONE);
    BufferedImage image = render(page);
    for (int mm : new int[] {100, 200}) {
      assertThat(onPage(page, image, "calibration:across-" + mm, true))
          .isEqualTo(mm, within(TRUE_TO_MM));
      assertThat(onPage(page, image, "calibration:along-" + mm, false))
          .isEqualTo(mm, within(TRUE_TO_MM));
    }
    // printers leave 3 to 5 mm free; the bars must be whole, a figure at their end need not be
    for (Mark mark : page.layers().stream().flatMap(l -> l.marks().stream()).toList()) {
      Envelope box =
          mark instanceof Mark.Words w
              ? w.boxMm()
              : ((Mark.Shape) mark).geometry().getEnvelopeInternal();
      Envelope reached = new Envelope(0, page.paper().widthMm(), 0, page.paper().heightMm());
      reached.expandBy(mark instanceof Mark.Words ? -2.5 : -4);
      assertThat(reached.contains(box)).as("within a printer's reach: " + mark).isTrue();
    }
  }

  /** Printed, measured, typed in, printed again. */
  @Test
  void aPageMadeForThePrinterComesOutTrueOnIt() throws IOException {
    Page first = CalibrationSheet.of(Paper.A4, PrintCorrection.NONE);
    BufferedImage print = render(first);
    PrintCorrection c =
        PrintCorrection.measured(
                ACROSS * onPage(first, print, "calibration:across-200", true),
                ALONG * onPage(first, print, "calibration:along-100", false))
            .of("Attic");
    Page second = CalibrationSheet.of(Paper.A4, c);
    BufferedImage again = render(second);
    assertThat(ACROSS * onPage(second, again, "calibration:across-100", true))
        .isEqualTo(100, within(TRUE_TO_MM));
    assertThat(ALONG * onPage(second, again, "calibration:along-200", false))
        .isEqualTo(200, within(2 * TRUE_TO_MM));
  }

  /** 80 mm upright on one sheet; 270 mm across is printed on its side, where "across" is along. */
  @ParameterizedTest
  @CsvSource({"A4, 80, false", "A4, 270, true", "a4 landscape, 230, true", "roll 300, 700, true"})
  void barsAndPartComeOutTrueHoweverTheSheetLies(String paper, double wide, boolean onItsSide)
      throws IOException {
    PrintCorrection c = PrintCorrection.measured(200 * ACROSS, 100 * ALONG).of("Attic");
    Drawing part =
        Drawing.of(
            "",
            new Layer(
                "cut",
                "",
                List.of(
                    new Mark.Shape(
                        "plate", Planar.rectangle(0, 0, wide, 60), Style.wide(Tone.INK)))));
    List<Page> pages =
        TemplateSheets.of("plate", part, TemplateSettings.on(Paper.parse(paper)).withCorrection(c));
    assertThat(pages).hasSize(1);
    Page page = pages.get(0);
    assertThat(page.paper().isLandscape()).isEqualTo(onItsSide);
    double across = onItsSide ? ALONG : ACROSS;
    double up = onItsSide ? ACROSS : ALONG;
    BufferedImage image = render(page);
    assertThat(across * onPage(page, image, "scale-bar:across", true))
        .isEqualTo(100, within(TRUE_TO_MM));
    assertThat(up * onPage(page, image, "scale-bar:along", false))
        .isEqualTo(100, within(TRUE_TO_MM));
    Envelope plate = ScaleMeasurementTest.bar(page, "plate");
    assertThat(across * plate.getWidth()).isEqualTo(wide, within(0.001));
    assertThat(up * plate.getHeight()).isEqualTo(60, within(0.001));
  }
}
