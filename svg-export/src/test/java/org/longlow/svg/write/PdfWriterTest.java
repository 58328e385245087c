package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;

class PdfWriterTest {

  private static final PdfInfo INFO =
      new PdfInfo("Tank", "Nobody", "Template", Instant.parse("2026-03-01T10:00:00Z"));

  static byte[] pdf(List<Page> pages) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfWriter.write(pages, Palette.CARD, INFO, out);
    return out.toByteArray();
  }

  private static Page page(Paper paper, String text) {
    return Page.of(
        "page",
        paper,
        Drawing.of(
            "d",
            new Layer(
                "only",
                "Only layer",
                List.of(
                    Mark.Words.level(text, 20, 20, 3.5, Anchor.START, Tone.INK),
                    new Mark.Shape("", Planar.disc(60, 60, 20), Style.area(Tone.TANK, 0.4)),
                    new Mark.Shape("", Planar.FACTORY.createPoint(), Style.wide(Tone.INK))))));
  }

  // Points of the paper table: 72 per inch of 25.4 mm. A float holds them to 1e-4 pt, which is 4e-5
  // mm.
  @ParameterizedTest
  @CsvSource({
    "a4, 595.275590551181, 841.889763779528",
    "a3, 841.889763779528, 1190.551181102362",
    "a2, 1190.551181102362, 1683.779527559055",
    "a1, 1683.779527559055, 2383.937007874016",
    "a0, 2383.937007874016, 3370.393700787402",
    "letter, 612, 792",
    "legal, 612, 1008",
    "tabloid, 792, 1224"
  })
  void mediaBoxIsThePaperInPoints(String paper, double width, double height) throws IOException {
    try (PDDocument doc = Loader.loadPDF(pdf(List.of(page(Paper.parse(paper), "x"))))) {
      PDRectangle box = doc.getPage(0).getMediaBox();
      assertThat((double) box.getWidth()).isEqualTo(width, within(2e-4));
      assertThat((double) box.getHeight()).isEqualTo(height, within(2e-4));
      assertThat(doc.getPage(0).getUserUnit()).isEqualTo(1f);
      assertThat(doc.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
      assertThat(doc.getDocumentInformation().getTitle()).isEqualTo("Tank");
    }
  }

  @Test
  void wordsCanBeReadBackAndMissingCharactersAreSeen() throws IOException {
    String text = "Größe 45° Ø12 漢 \uD83D\uDEE0 \u0007\uD800 end";
    try (PDDocument doc = Loader.loadPDF(pdf(List.of(page(Paper.A4, text))))) {
      String read = new PDFTextStripper().getText(doc);
      assertThat(read).contains("Größe 45° Ø12").contains("end");
      assertThat(read).doesNotContain("漢");
      assertThat(read.codePoints().filter(c -> c == 0x25A1 || c == 0xFFFD || c == '?').count())
          .isEqualTo(4);
      for (var name : doc.getPage(0).getResources().getFontNames()) {
        PDFont font = doc.getPage(0).getResources().getFont(name);
        assertThat(font.isEmbedded()).isTrue();
        assertThat(font.getName()).contains("+LiberationSans");
      }
    }
  }

  @Test
  void sameInputGivesSameBytesWhateverTheLocale() throws IOException {
    List<Page> pages = List.of(page(Paper.A4, "1.5 mm"), page(Paper.A3, "abc"));
    Locale before = Locale.getDefault();
    try {
      byte[] first = pdf(pages);
      Locale.setDefault(Locale.forLanguageTag("de-DE"));
      assertThat(pdf(pages)).isEqualTo(first);
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertThat(pdf(pages)).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void letteringWidthsAreThoseOfTheEmbeddedFont() throws IOException {
    try (PDDocument doc = new PDDocument();
        PdfFont font = new PdfFont(doc)) {
      for (char c = ' '; c <= '~'; c++) {
        String s = String.valueOf(c);
        // The table holds whole thousandths of the size; the font rounds to 1/2048.
        assertThat(Lettering.widthMm(s, Lettering.CAPITAL_SHARE))
            .as(s)
            .isEqualTo(font.width(s, 1), within(0.0006));
      }
    }
  }

  @Test
  void noPagesIsRefused() {
    assertThatThrownBy(() -> pdf(List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least one page");
  }
}
