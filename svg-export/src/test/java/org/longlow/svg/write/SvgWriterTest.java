package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.apache.batik.anim.dom.SAXSVGDocumentFactory;
import org.junit.jupiter.api.Test;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgWriterTest {

  static String svg(Page page, Palette palette) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      SvgWriter.write(page, palette, out);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return out.toString(StandardCharsets.UTF_8);
  }

  static Document parse(String svg) throws IOException {
    return new SAXSVGDocumentFactory(null)
        .createDocument("file:///page.svg", new StringReader(svg));
  }

  private static Page page(Mark... marks) {
    return Page.of(
        "page", Paper.A4, Drawing.of("d", new Layer("only", "Only layer", List.of(marks))));
  }

  private static Mark shape(String subject, double... xy) {
    return new Mark.Shape(subject, Planar.line(xy), Style.wide(Tone.INK));
  }

  @Test
  void oneUserUnitIsOneMillimetre() throws IOException {
    Element root = parse(svg(page(shape("s", 0, 0, 1, 1)), Palette.CARD)).getDocumentElement();
    assertThat(root.getAttribute("width")).isEqualTo("210mm");
    assertThat(root.getAttribute("height")).isEqualTo("297mm");
    assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 210 297");
  }

  @Test
  void heightsAboveTheLowerEdgeBecomeDepthsBelowTheUpperEdge() throws IOException {
    Document doc = parse(svg(page(shape("part:tank", 10, 20, 30.12345, 297)), Palette.CARD));
    Element path = (Element) doc.getElementsByTagName("path").item(0);
    assertThat(path.getAttribute("d")).isEqualTo("M10 277L30.123 0");
    assertThat(path.getAttribute("data-subject")).isEqualTo("part:tank");
    assertThat(doc.getElementById("only").getElementsByTagName("title").item(0).getTextContent())
        .isEqualTo("Only layer");
  }

  @Test
  void bytesDoNotDependOnTheDefaultLocale() {
    Page page =
        page(
            shape("a", 1.5, 2.25, 3.125, 4),
            Mark.Words.level("1.5", 3.5, 4.5, 2.5, Anchor.CENTRE, Tone.INK),
            new Mark.Shape(
                "",
                Planar.disc(50.5, 50, 7.25),
                Style.area(Tone.TANK, 0.35).withStroke(Tone.INK, 0.35).withLine(LineType.CHAIN)));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ROOT);
      String plain = svg(page, Palette.CARD);
      for (String tag : List.of("de-DE", "fr-FR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(svg(page, Palette.CARD)).as(tag).isEqualTo(plain);
      }
      assertThat(plain).contains("fill-opacity=\"0.35\"").contains("8.4 1.05 0.175 1.05");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void hostileTextSurvivesAsTextAndNeverAsMarkup() throws IOException {
    String nasty =
        "<g onload=\"x\"> & ]]> 'q' \u0000\u0007\u001b é 漢字 \uD83D\uDEE0 \uD800 \uFFFE\n \u202Eend\u2069";
    Document doc =
        parse(
            svg(
                page(new Mark.Words(nasty, nasty, 10, 10, 3.5, 0, Anchor.START, Tone.INK)),
                Palette.CARD));
    Element text = (Element) doc.getElementsByTagName("text").item(0);
    String expected =
        "<g onload=\"x\"> & ]]> 'q' \uFFFD\uFFFD\uFFFD é 漢字 \uD83D\uDEE0 \uFFFD \uFFFD  \uFFFDend\uFFFD";
    assertThat(text.getTextContent()).isEqualTo(expected);
    assertThat(text.getAttribute("data-subject")).isEqualTo(expected);
    assertThat(doc.getElementsByTagName("g").getLength()).isEqualTo(1);
  }

  @Test
  void inlinePagesHaveIdsOfTheirOwnAndNoDeclaration() throws IOException {
    Page page = page(shape("s", 0, 0, 1, 1));
    String two = SvgWriter.inline("page", Palette.CARD, new SharedOutlines(), page, page);
    assertThat(two).startsWith("<svg").doesNotContain("<?xml");
    Document doc = parse("<svg xmlns=\"http://www.w3.org/2000/svg\">" + two + "</svg>");
    assertThat(doc.getElementById("page1-only")).isNotNull();
    assertThat(doc.getElementById("page2-only")).isNotNull();
    assertThatThrownBy(() -> SvgWriter.inline("1 page", Palette.CARD, new SharedOutlines(), page))
        .hasMessageContaining("id prefix '1 page'");
  }

  @Test
  void backgroundIsPaintedOnlyWhenPaperIsNotWhite() {
    Page page = page(shape("s", 0, 0, 1, 1));
    assertThat(svg(page, Palette.CARD)).doesNotContain("<rect");
    assertThat(svg(page, Palette.NIGHT))
        .contains("<rect")
        .contains(Palette.NIGHT.of(Tone.PAPER).toHex());
  }

  @Test
  void pointsAndEmptyGeometryDrawNothing() throws IOException {
    Document doc =
        parse(
            svg(
                page(
                    new Mark.Shape("", Planar.FACTORY.createPoint(), Style.wide(Tone.INK)),
                    new Mark.Shape(
                        "", Planar.FACTORY.createGeometryCollection(), Style.wide(Tone.INK)),
                    new Mark.Shape("", Planar.FACTORY.createPolygon(), Style.area(Tone.INK, 1))),
                Palette.CARD));
    assertThat(doc.getElementsByTagName("path").getLength()).isZero();
  }

  @Test
  void numbersHaveAtMostThreeDecimalsAndNoNegativeZero() {
    assertThat(
            Arrays.stream(new double[] {0, -0.0, -0.0004, 1.0005, -2.5, 1234.56789, 0.01})
                .mapToObj(Millimetres::of))
        .containsExactly("0", "0", "0", "1.001", "-2.5", "1234.568", "0.01");
    assertThatThrownBy(() -> Millimetres.of(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
