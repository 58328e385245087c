package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.BatikImage;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.sketcher.picture.OverlayPicture;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.sketcher.picture.ViewSheets;
import org.longlow.sketcher.picture.Views;
import org.longlow.sketcher.shop.Shop;
import org.longlow.sketcher.template.Templates;
import org.longlow.sketcher.template.WholeView;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.CalibrationSheet;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.write.PdfInfo;
import org.longlow.svg.write.PdfWriter;
import org.longlow.svg.write.SvgWriter;

/**
 * How large something comes out on each kind of sheet, as SVG and as PDF, measured in the pixels of
 * two programs that know nothing of this project, against figures of the file worked out by hand.
 */
class PrintedSizeTest {

  private static final Study HERON = Shipped.study("heron");

  /** 110/80-16 and 150/60 R17 on a wheelbase of 1850 mm. */
  private static final double FRONT_MM = 8 * 25.4 + 0.8 * 110;

  private static final double REAR_MM = 8.5 * 25.4 + 0.6 * 150;
  private static final double LONG_MM = REAR_MM + 1850 + FRONT_MM;

  /**
   * Something on a sheet.
   *
   * @param what of its layers and shapes
   * @param strokeMm how broad its lines are, half of which lies outside on each side
   * @param wide its longer side
   * @param high its shorter side; NaN where that is not asked
   */
  private record Sized(
      String name,
      Page page,
      BiPredicate<Layer, Mark> what,
      double strokeMm,
      double wide,
      double high) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Sized> sheets() {
    Places as = HERON.placed().places();
    PointMm pan = as.pin("panFront").minus(as.pin("panRear"));
    double rad = Math.atan2(pan.z(), pan.x());
    double c = Math.cos(rad);
    double s = Math.sin(rad);
    PictureOptions asDrawn = PictureOptions.PLAIN.withAsDrawn();
    DimensionedElevation.Sheet side = ViewSheets.elevation(HERON, asDrawn, Paper.A3, "");
    return Stream.of(
        template("pan", "board", 380, 380),
        // 20 + 35 + 40 of foam and 12 of wood, and 45 turned under
        template("pan", "cover", 380 + 2 * (107 + 45), 380 + 2 * (107 + 45)),
        template("pan", "layer 2", 380 * c + 35 * s, 380 * s + 35 * c),
        template("hood", "edge strip", 2 * 356, Double.NaN),
        // round a tube of 22 mm, by the middle of paper of 0.1 mm
        template("tailStrut", "cope", Double.NaN, Math.PI * 22.1),
        shared(Paper.A4),
        shared(Paper.parse("roll 610")),
        wheels("elevation", side.page(), 10),
        wheels("elevation in black", side.in(SheetInk.BLACK).page(), 10),
        plan(asDrawn),
        wheels(
            "whole view",
            WholeView.of(HERON, asDrawn, TemplateSettings.on(Paper.A0))
                .sheets(TemplateSettings.on(Paper.parse("3000x1700")))
                .get(0),
            1),
        new Sized(
            "comparison",
            OverlayPicture.sheet(HERON, HERON, List.of("same"), Optional.empty(), Paper.A3, "")
                .page(),
            (layer, mark) -> mark.subject().equals("part:rearWheel"),
            0.18,
            2 * REAR_MM / 10,
            2 * REAR_MM / 10),
        // six metres at 1:40, bars below each other higher than that
        new Sized(
            "cutting plan",
            Shop.of(HERON).planPages(Paper.A4).get(0),
            (layer, mark) -> layer.id().equals("plan"),
            0.5,
            Double.NaN,
            6000 / 40.0),
        new Sized(
            "calibration page",
            CalibrationSheet.of(Paper.A4, PrintCorrection.NONE),
            (layer, mark) ->
                layer.id().equals("calibration")
                    && ((Mark.Shape) mark).geometry().getEnvelopeInternal().getWidth() > 150,
            0.25,
            200,
            Double.NaN));
  }

  /** From above it is as long as from the side. */
  private static Sized plan(PictureOptions options) {
    Views views = new Views(Views.Kind.PLAN, Views.SIDE.projection());
    DimensionedElevation.Sheet sheet =
        ViewSheets.sheet(HERON, options, views, Optional.empty(), Paper.A3, "");
    double n = (double) sheet.scale().real() / sheet.scale().paper();
    return new Sized(
        "plan",
        sheet.page(),
        (layer, mark) -> Set.of("part:rearWheel", "part:frontWheel").contains(mark.subject()),
        0.5,
        LONG_MM / n,
        Double.NaN);
  }

  private static Sized template(String part, String piece, double wide, double high) {
    Page page =
        Templates.drawn(HERON, Set.of(part)).stream()
            .filter(d -> d.name().contains(piece))
            .findFirst()
            .orElseThrow()
            .sheets(TemplateSettings.on(Paper.parse("800x800")))
            .get(0);
    return new Sized(part + ", " + piece, page, PrintedSizeTest::isCut, 0.5, wide, high);
  }

  private static boolean isCut(Layer layer, Mark mark) {
    return layer.id().equals("outline");
  }

  /** The battery, beside something else. */
  private static Sized shared(Paper paper) {
    TemplateSet set =
        TemplateSet.of(
                HERON, Set.of("battery", "steerPost"), TemplateSettings.on(paper), StepWatch.NONE)
            .orElseThrow();
    return new Sized(
        "shared " + paper.name(),
        set.pages().get(0),
        (layer, mark) -> isCut(layer, mark) && mark.subject().equals("part:battery"),
        0.5,
        110,
        75);
  }

  private static Sized wheels(String name, Page page, double n) {
    return new Sized(
        name,
        page,
        (layer, mark) ->
            layer.id().equals("wheels")
                && (mark.subject().equals("part:rearWheel")
                    || mark.subject().equals("part:frontWheel")),
        0.5,
        LONG_MM / n,
        2 * REAR_MM / n);
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void comesOutTrue(Sized sized) throws Exception {
    Page page = alone(sized);
    double across = page.paper().widthMm();
    int dpi = across > 1000 ? 40 : across > 500 ? 60 : 120; // a few megapixels each
    for (BufferedImage image : List.of(fromSvg(page, dpi), fromPdf(page, dpi))) {
      double[] box = darkMm(image, dpi);
      double pixel = 25.4 / dpi;
      double longer = Math.max(box[0], box[1]) - sized.strokeMm();
      double shorter = Math.min(box[0], box[1]) - sized.strokeMm();
      for (double[] side : new double[][] {{longer, sized.wide()}, {shorter, sized.high()}}) {
        if (!Double.isNaN(side[1])) {
          // either end lies within half a pixel of the last dark one's side
          assertThat(side[0]).isCloseTo(side[1], within(1.1 * pixel + 0.1));
        }
      }
    }
  }

  /** The page with what is measured alone, without words. */
  private static Page alone(Sized sized) {
    return new Page(
        sized.page().title(),
        sized.page().paper(),
        sized.page().pieces().stream()
            .map(
                p ->
                    new Page.Piece(
                        new Drawing(
                            "", p.drawing().layers().stream().map(l -> alone(l, sized)).toList()),
                        p.placement(),
                        p.clip()))
            .toList());
  }

  private static Layer alone(Layer layer, Sized sized) {
    return new Layer(
        layer.id(),
        layer.title(),
        layer.marks().stream()
            .filter(m -> m instanceof Mark.Shape && sized.what().test(layer, m))
            .toList());
  }

  private static double[] darkMm(BufferedImage image, int dpi) {
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    int left = image.getWidth();
    int right = -1;
    int top = image.getHeight();
    int low = -1;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if ((pixels[y * image.getWidth() + x] & 255) < 160) {
          left = Math.min(left, x);
          right = Math.max(right, x);
          top = Math.min(top, y);
          low = Math.max(low, y);
        }
      }
    }
    assertThat(right).as("something is drawn").isGreaterThan(left);
    return new double[] {(right + 1 - left) * 25.4 / dpi, (low + 1 - top) * 25.4 / dpi};
  }

  private static BufferedImage fromPdf(Page page, int dpi) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfWriter.write(List.of(page), Palette.CARD, PdfInfo.titled("t"), out);
    try (PDDocument doc = Loader.loadPDF(out.toByteArray())) {
      return new PDFRenderer(doc).renderImageWithDPI(0, dpi, ImageType.RGB);
    }
  }

  private static BufferedImage fromSvg(Page page, int dpi) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page, Palette.CARD, out);
    return BatikImage.of(
        new ByteArrayInputStream(out.toByteArray()),
        SVGAbstractTranscoder.KEY_PIXEL_UNIT_TO_MILLIMETER,
        (float) (25.4 / dpi));
  }
}
