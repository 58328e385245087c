package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.report.Report;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.write.PdfInfo;
import org.longlow.svg.write.PdfWriter;

/** Formers on paper: what they say, and what another program measures on the sheet. */
class FormerTemplatesTest {

  private static final int DPI = 254;

  private static Study study(String frame, String formers) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "o": {"at": [400, 500], "nailed": true}},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "skin": {"kind": "cowl", "frame": %s, "left": 200, "right": 200, "mass": 1, "thickness": 3,
             "stations": [{"x": 0, "left": 200}, {"x": 300, "left": 110}], "formers": %s,
             "outline": {"points": [[0, 0], [300, 0], [300, 150], [0, 150]]}}}}
        """
            .formatted(frame, formers);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) result).layout());
  }

  private static NamedDrawing former(Study study, String name) {
    return Templates.of(study, Set.of("skin")).stream()
        .filter(d -> d.name().equals("skin, " + name))
        .findFirst()
        .orElseThrow();
  }

  private static String said(NamedDrawing drawing) {
    return drawing.drawing().layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .collect(Collectors.joining(" "));
  }

  @Test
  void aFormerSaysWhereItStandsAndWhichFaceItsLineIsOf() {
    Study study =
        study(
            "\"o\"",
            """
            {"across": [{"name": "mid", "x": 100}, {"x": 400}], "thickness": 12,
             "stringers": [{"name": "waist", "height": "575 mm", "width": 20, "depth": 8}]}
            """);
    String said = said(former(study, "mid"));
    // 0.3 on 1 is 16.7 degrees, and 12 mm of it 3.6 mm
    assertThat(said)
        .contains("x 100 mm of the part's own axes, x 500 mm of the machine")
        .contains("looks FORWARD; its sheet lies behind it")
        .contains("its own sheet 12 mm; 3 mm of skin taken off, square to the surface")
        .contains("left side leans up to 16.7", "the skin stands 3.6 mm off", "right side leans")
        .contains("2 notches for waist: 20 along the edge, 8 mm deep")
        .contains("datum 600 over the ground as drawn", "middle of the machine")
        .doesNotContain("top leans");
    assertThat(former(study, "mid").fileName()).isEqualTo("skin-mid");
    String own = said(Templates.of(study, Set.of("skin")).get(0));
    assertThat(own)
        .contains("its former has a template of its own", "TAKE CARE, former 2: nothing to cut at");
    // 170 to a side less 3 mm square to a side of 0.3 on 1, twice
    double wide = 2 * (170 - 3 * Math.hypot(1, 0.3));
    assertThat(Report.html(study))
        .contains("Formers", "x 100 mm", String.format("%.1f mm", wide))
        .contains("Take care, formers of skin: former 2: nothing to cut at x 400 mm");
  }

  @Test
  void aRimSaysHowFarItIsTurnedOver() {
    Study study =
        study(
            "\"o\"",
            "{\"across\": [{\"name\": \"mid\", \"x\": 100, \"flange\": 20}], \"thickness\": 2}");
    // sides of 0.3 on 1 lean 16.7 degrees, roof and floor none
    assertThat(said(former(study, "mid")))
        .contains("rim 20 mm turned over as the skin leans, from 73.3° to 90°")
        .contains("away from this face", "inside radius 2 mm")
        .doesNotContain("stands", "plane the other face");
  }

  @Test
  void notchesThatCutItApartAreTold() {
    Study study =
        study(
            "\"o\"",
            """
            {"across": [{"name": "mid", "x": 100}],
             "stringers": [{"name": "keel", "girth": 0, "width": 10, "depth": 145}]}
            """);
    assertThat(said(former(study, "mid"))).contains("TAKE CARE, its notches cut it apart");
    assertThat(said(Templates.of(study, Set.of("skin")).get(0)))
        .contains("TAKE CARE, mid: its notches cut it apart");
    assertThat(Report.html(study)).contains("formers of skin: mid: its notches cut it apart");
  }

  @Test
  void ribsAndLeaningFormersSaySo() {
    Study study =
        study(
            "{\"origin\": \"o\", \"angle\": \"30 deg\"}",
            "{\"across\": [{\"name\": \"mid\", \"x\": 100}], \"along\": [{\"name\": \"keel\", \"y\": 0}, {\"y\": 50}]}");
    assertThat(said(former(study, "mid"))).contains("it leans 30° back");
    assertThat(said(former(study, "keel"))).contains("in the middle plane", "seen from the right");
    assertThat(said(former(study, "rib 2"))).contains("50 mm left of the middle");
  }

  /** A line this long along pixels is an edge of the piece; bars are 100 mm. */
  private static List<Integer> edges(BufferedImage image, boolean rows, int leastMm) {
    List<Integer> found = new ArrayList<>();
    int lines = rows ? image.getHeight() : image.getWidth();
    int length = rows ? image.getWidth() : image.getHeight();
    for (int i = 0; i < lines; i++) {
      int run = 0;
      int most = 0;
      for (int k = 0; k < length; k++) {
        int grey = image.getRaster().getSample(rows ? k : i, rows ? i : k, 0);
        run = grey < 128 ? run + 1 : 0;
        most = Math.max(most, run);
      }
      if (most >= leastMm * DPI / 25.4) {
        found.add(i);
      }
    }
    return found;
  }

  @Test
  void aPrintedFormerMeasuresTrue() throws Exception {
    Study study = study("\"o\"", "{\"across\": [{\"name\": \"mid\", \"x\": 100}]}");
    List<Page> pages = former(study, "mid").sheets(TemplateSettings.on(Paper.A2));
    assertThat(pages).hasSize(1);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PdfWriter.write(pages, Palette.CARD, new PdfInfo("t", "", "", null), out);
    BufferedImage image;
    try (PDDocument doc = Loader.loadPDF(out.toByteArray())) {
      image = new PDFRenderer(doc).renderImageWithDPI(0, DPI, ImageType.GRAY);
    }
    double pixel = 25.4 / DPI;
    List<Integer> level = edges(image, true, 300);
    List<Integer> upright = edges(image, false, 130);
    double high = (level.get(level.size() - 1) - level.get(0)) * pixel;
    double wide = (upright.get(upright.size() - 1) - upright.get(0)) * pixel;
    // outer sides of the line, which is as broad as the first run of rows that it darkens
    double line = run(level) * pixel;
    assertThat(high + pixel - line).isCloseTo(150 - 2 * 3, within(0.15));
    assertThat(wide + pixel - run(upright) * pixel)
        .isCloseTo(2 * (170 - 3 * Math.hypot(1, 0.3)), within(0.15));
  }

  private static int run(List<Integer> lines) {
    int n = 1;
    while (n < lines.size() && lines.get(n) == lines.get(n - 1) + 1) {
      n++;
    }
    return n;
  }
}
