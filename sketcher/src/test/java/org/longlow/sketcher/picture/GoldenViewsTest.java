package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.PdfInfo;
import org.longlow.svg.write.PdfWriter;
import org.longlow.svg.write.SvgWriter;

/** A small machine from ahead and from above must look as it did; it is to scale on paper. */
class GoldenViewsTest {

  private static final String SMALL =
      """
      {"longlow": 1, "name": "wren", "title": "Wren",
       "pins": {"rear": {"at": [0, 300], "nailed": true},
                "front": {"at": [1400, 300], "nailed": true},
                "top": [1150, 800], "bottom": [1230, 640],
                "a": [300, 560], "d": [200, 330]},
       "parts": {
        "rearWheel": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300,
                      "width": 100, "mass": 12},
        "frontWheel": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300,
                       "width": 90, "mass": 11},
        "fork": {"kind": "front", "type": "telescopic", "top": "top", "bottom": "bottom",
                 "axle": "front", "tube": 36, "y": 90, "bump": 60, "droop": 30, "mass": 10},
        "near": {"kind": "block", "frame": "a", "left": -60, "right": 240, "mass": 4,
                 "outline": {"points": [[0, 0], [400, 0], [400, 200], [0, 200]]}},
        "far": {"kind": "block", "frame": "d", "left": 160, "right": -40, "mass": 4,
                "outline": {"points": [[0, 0], [400, 0], [400, 330], [0, 330]]}}}}
      """;

  private static Study study() {
    ReadResult read = LayoutReader.read(SMALL, Path.of("."));
    if (read instanceof ReadResult.Refused refused) {
      throw new IllegalStateException(refused.faults().toString());
    }
    return Study.of(((ReadResult.Read) read).layout());
  }

  private static Page page(Aspect aspect, boolean dimensions) {
    PictureOptions options =
        PictureOptions.PLAIN.withAsDrawn().withAspect(aspect).withDimensions(dimensions);
    return Page.round(Pictures.of(study(), options).scaled(0.1), 5);
  }

  private static byte[] svg(Aspect aspect) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page(aspect, true), Palette.CARD, out);
    return out.toByteArray();
  }

  /** Writes the pictures anew into the folder named. */
  public static void main(String[] args) throws IOException {
    for (Aspect aspect : List.of(Aspect.FRONT, Aspect.PLAN)) {
      Files.write(Path.of(args[0]).resolve("wren-" + aspect.word() + ".svg"), svg(aspect));
    }
  }

  @ParameterizedTest
  @EnumSource(names = {"FRONT", "PLAN"})
  void theSmallMachineLooksAsItDid(Aspect aspect) throws Exception {
    String name = "wren-" + aspect.word() + ".svg";
    try (InputStream golden = GoldenViewsTest.class.getResourceAsStream(name)) {
      GoldenSvg.same(golden.readAllBytes(), svg(aspect));
    }
  }

  /** Whoever looks at the elevation stands at the right of the machine. */
  @Test
  void onTheElevationWhatIsAtTheRightIsPaintedLast() {
    Drawing side = Pictures.of(study(), PictureOptions.PLAIN.withAsDrawn());
    List<String> painted =
        side.layers().stream()
            .flatMap(l -> l.marks().stream())
            .filter(m -> m instanceof Mark.Shape s && s.style().fill() != null)
            .map(Mark::subject)
            .toList();
    assertThat(painted.indexOf("part:near")).isGreaterThan(painted.lastIndexOf("part:far"));
  }

  /**
   * From ahead the upper block reaches 240 mm to the right, which is at the left of the page, and
   * the lower one 160 mm to the left; at 1:10.
   */
  @Test
  void aRendererOfItsOwnFindsItToScale() throws Exception {
    Page page = page(Aspect.FRONT, false);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfWriter.write(List.of(page), Palette.CARD, PdfInfo.titled("wren"), out);
    try (PDDocument pdf = Loader.loadPDF(out.toByteArray())) {
      BufferedImage image = new PDFRenderer(pdf).renderImageWithDPI(0, DPI);
      double perMm = DPI / 25.4;
      int ground = lowestDarkRow(image);
      int first = 0;
      while (!dark(image, first, (int) (ground - 70 * perMm))) {
        first++;
      }
      int last = image.getWidth() - 1;
      while (!dark(image, last, (int) (ground - 50 * perMm))) {
        last--;
      }
      // from the outside of one edge to the outside of the other, which are 0.35 mm wide
      assertThat((last + 1 - first) / perMm).isCloseTo(40.35, within(0.18));
      int middle = middleOfTyre(image, (int) (ground - 5 * perMm));
      assertThat((middle - first) / perMm).isCloseTo(24.17, within(0.18));
    }
  }

  private static final int DPI = 300;

  /** The road is a line across all of the page. */
  private static int lowestDarkRow(BufferedImage image) {
    for (int y = image.getHeight() - 1; y >= 0; y--) {
      int dark = 0;
      for (int x = 0; x < image.getWidth(); x++) {
        dark += dark(image, x, y) ? 1 : 0;
      }
      if (dark > 0.7 * image.getWidth()) {
        return y;
      }
    }
    throw new AssertionError("no road");
  }

  private static int middleOfTyre(BufferedImage image, int row) {
    int left = 0;
    while (!dark(image, left, row)) {
      left++;
    }
    int right = image.getWidth() - 1;
    while (!dark(image, right, row)) {
      right--;
    }
    return (left + right) / 2;
  }

  private static boolean dark(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    return ((rgb >> 16) & 255) + ((rgb >> 8) & 255) + (rgb & 255) < 450;
  }
}
