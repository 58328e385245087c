package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Samples;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;

/**
 * Renders sheets at 300 dpi by programs that know nothing of this project and measures the bars in
 * the pixels.
 *
 * <p>A pixel is 0.085 mm. The middle of a tick is found as the centroid of its darkness, which is
 * good to a few hundredths of a millimetre; the bars must be true to 0.1 mm.
 */
class ScaleMeasurementTest {

  private static final int DPI = 300;
  private static final double PIXELS_PER_MM = DPI / 25.4;
  private static final double TRUE_TO_MM = 0.1;

  /**
   * A tick is looked for this far from where it should be, so a bar 3 % wrong is still found and
   * measured.
   */
  private static final double SEARCH_MM = 1.6;

  @ParameterizedTest
  @ValueSource(strings = {"a4", "letter"})
  void barsInTheSvgAreTrueBothWays(String paper) throws Exception {
    for (Page page : pages(paper)) {
      BufferedImage image = rasterise(SvgWriterTest.svg(page, Palette.CARD));
      assertThat(image.getWidth() / PIXELS_PER_MM)
          .isEqualTo(page.paper().widthMm(), within(1 / PIXELS_PER_MM));
      measure(page, image);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a4", "letter"})
  void barsInThePdfAreTrueBothWays(String paper) throws IOException {
    List<Page> pages = pages(paper);
    try (PDDocument doc = Loader.loadPDF(PdfWriterTest.pdf(pages))) {
      PDFRenderer renderer = new PDFRenderer(doc);
      for (int i = 0; i < pages.size(); i++) {
        measure(pages.get(i), renderer.renderImageWithDPI(i, DPI, ImageType.GRAY));
      }
    }
  }

  /**
   * Returns the sheet with the map and another: enough to see every kind of bar without rendering
   * for minutes.
   */
  private static List<Page> pages(String paper) {
    return TemplateSheets.of("Cowl side", Samples.cowl(), TemplateSettings.on(Paper.parse(paper)))
        .subList(0, 2);
  }

  private static void measure(Page page, BufferedImage image) {
    Envelope across = bar(page, "scale-bar:across");
    double row = page.paper().heightMm() - (across.getMaxY() - 1);
    double left = tick(image, across.getMinX(), row, true);
    double right = tick(image, across.getMaxX(), row, true);
    assertThat(right - left).as(page.title() + " across").isEqualTo(100, within(TRUE_TO_MM));

    Envelope along = bar(page, "scale-bar:along");
    double column = along.getMinX() + 1;
    double low = tick(image, page.paper().heightMm() - along.getMinY(), column, false);
    double high = tick(image, page.paper().heightMm() - along.getMaxY(), column, false);
    assertThat(low - high).as(page.title() + " along").isEqualTo(100, within(TRUE_TO_MM));
  }

  static Envelope bar(Page page, String subject) {
    return page.layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(m -> m.subject().equals(subject))
        .map(m -> ((Mark.Shape) m).geometry().getEnvelopeInternal())
        .findFirst()
        .orElseThrow();
  }

  /**
   * Returns the centroid of darkness near a place along a row (or column) of pixels, mm from the
   * image's edge.
   */
  static double tick(BufferedImage image, double at, double beside, boolean level) {
    double sum = 0;
    double moment = 0;
    int from = (int) Math.floor((at - SEARCH_MM) * PIXELS_PER_MM);
    int to = (int) Math.ceil((at + SEARCH_MM) * PIXELS_PER_MM);
    int line = (int) Math.round(beside * PIXELS_PER_MM);
    for (int i = from; i <= to; i++) {
      int rgb = level ? image.getRGB(i, line) : image.getRGB(line, i);
      double dark = 255 - (rgb & 0xff);
      sum += dark;
      moment += dark * (i + 0.5);
    }
    assertThat(sum).as("darkness of a tick").isGreaterThan(100);
    return moment / sum / PIXELS_PER_MM;
  }

  private static BufferedImage rasterise(String svg) throws TranscoderException {
    BufferedImage[] out = new BufferedImage[1];
    ImageTranscoder transcoder =
        new ImageTranscoder() {
          @Override
          public BufferedImage createImage(int width, int height) {
            return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
          }

          @Override
          public void writeImage(BufferedImage image, TranscoderOutput output) {
            out[0] =
                new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_INT_RGB);
            var graphics = out[0].createGraphics();
            graphics.drawImage(image, 0, 0, java.awt.Color.WHITE, null);
            graphics.dispose();
          }
        };
    transcoder.addTranscodingHint(
        SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER, (float) (25.4 / DPI));
    // Letters are not measured, and a machine without fonts can then run this too.
    String lines = svg.replaceAll("(?s)<text\\b.*?</text>", "");
    transcoder.transcode(new TranscoderInput(new StringReader(lines)), new TranscoderOutput());
    return out[0];
  }
}
