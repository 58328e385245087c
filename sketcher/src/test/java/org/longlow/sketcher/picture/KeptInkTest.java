package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Measured;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.report.Report;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Page;
import org.longlow.svg.write.SvgWriter;

/** Dimensions that a layout keeps, in drawing and report: their places, figures and words. */
class KeptInkTest {

  /** Wheels of one size on level ground; c over b, so that angles and lengths are seen at once. */
  private static final String SMALL =
      """
      {"longlow": 1, "name": "teal", "title": "Teal",
       "pins": {"rear": {"at": ["0 mm", "300 mm"], "nailed": true},
                "front": {"at": ["1400 mm", "300 mm"], "nailed": true},
                "a": {"at": ["300 mm", "500 mm"], "nailed": true},
                "b": {"at": ["700 mm", "500 mm"], "nailed": true},
                "c": {"at": ["700 mm", "800 mm"], "nailed": true}},
       "parts": {
        "rearWheel": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": "300 mm",
                      "width": "100 mm", "mass": "12 kg", "material": "rubber"},
        "frontWheel": {"kind": "wheel", "end": "front", "axle": "front", "radius": "300 mm",
                       "width": "90 mm", "mass": "11 kg", "material": "rubber"},
        "case": {"kind": "box", "frame": "b", "left": "50 mm", "right": "50 mm", "mass": "2 kg",
                 "outline": {"points": [["0 mm", "0 mm"], ["200 mm", "0 mm"],
                                        ["200 mm", "100 mm"], ["0 mm", "100 mm"]]}}},
       "dimensions": {
        "rail": {"ends": ["a", "b"], "along": "level", "off": "-60 mm"},
        "brace": {"ends": ["a", "c"], "note": "inside"},
        "post": {"ends": ["c"], "along": "upright", "off": "150 mm"},
        "corner": {"ends": ["b", {"part": "case", "point": 2}], "along": "level"},
        "gap": {"ends": [{"part": "case"}, {"part": "frontWheel"}]},
        "bend": {"ends": ["b", "a", "c"], "along": "angle", "off": "180 mm"}}}
      """;

  private static final double N = 10;

  private static Study study(String text) {
    return Study.of(((ReadResult.Read) LayoutReader.read(text, Path.of("."))).layout());
  }

  private static final Study STUDY = study(SMALL);

  private static Drawing drawing() {
    return ElevationPicture.of(STUDY, PictureOptions.PLAIN.withDenominator(N));
  }

  private static Layer kept(Drawing drawing) {
    return drawing.layers().stream().filter(l -> l.id().equals("kept")).findFirst().orElseThrow();
  }

  private static String words(Layer layer, String name) {
    return layer.marks().stream()
        .filter(m -> m.subject().equals("dimension:" + name) && m instanceof Mark.Words)
        .map(m -> ((Mark.Words) m).text())
        .findFirst()
        .orElseThrow();
  }

  /** The tips of the two arrowheads: each is a filled triangle whose first corner is its tip. */
  private static List<Coordinate> tips(Layer layer, String name) {
    return layer.marks().stream()
        .filter(m -> m.subject().equals("dimension:" + name) && m instanceof Mark.Shape)
        .map(m -> ((Mark.Shape) m).geometry())
        .filter(g -> g.getDimension() == 2 && g.getNumPoints() == 4)
        .map(g -> g.getCoordinates()[0])
        .toList();
  }

  @Test
  void eachTellsItsNameAndFigure() {
    Layer layer = kept(drawing());
    assertThat(words(layer, "rail")).isEqualTo("rail 400");
    assertThat(words(layer, "brace")).isEqualTo("brace 500");
    assertThat(words(layer, "post")).isEqualTo("post 800");
    assertThat(words(layer, "corner")).isEqualTo("corner 200");
    // from the corner at 900, 500 to the tyre round 1400, 300, which is drawn with many sides
    assertThat(Double.parseDouble(words(layer, "gap").substring("gap ".length())))
        .isCloseTo(Math.hypot(500, 200) - 300, within(0.1));
    assertThat(words(layer, "bend")).isEqualTo("bend 36.9°");
  }

  @Test
  void linesStandWhereTheLayoutSays() {
    Layer layer = kept(drawing());
    List<Coordinate> rail = tips(layer, "rail");
    assertThat(rail).hasSize(2);
    assertThat(rail.get(0).x).isCloseTo(300, within(1e-6));
    assertThat(rail.get(1).x).isCloseTo(700, within(1e-6));
    assertThat(rail).allSatisfy(c -> assertThat(c.y).isCloseTo(440, within(1e-6)));
    List<Coordinate> post = tips(layer, "post");
    assertThat(post).allSatisfy(c -> assertThat(c.x).isCloseTo(850, within(1e-6)));
    assertThat(post.get(0).y).isCloseTo(800, within(1e-6));
    assertThat(post.get(1).y).isCloseTo(0, within(1e-6));
    // 8 mm on paper to the left of the way up from a to c, which is square to 4, 3
    List<Coordinate> brace = tips(layer, "brace");
    assertThat(brace.get(0).x).isCloseTo(300 - 0.6 * 80, within(1e-6));
    assertThat(brace.get(0).y).isCloseTo(500 + 0.8 * 80, within(1e-6));
    assertThat(brace.get(0).distance(brace.get(1))).isCloseTo(500, within(1e-6));
    assertThat(tips(layer, "corner")).allSatisfy(c -> assertThat(c.y).isCloseTo(680, within(1e-6)));
    assertThat(tips(layer, "bend"))
        .allSatisfy(
            c -> assertThat(c.distance(new Coordinate(300, 500))).isCloseTo(180, within(1e-6)));
    // what is nearest is drawn between the two
    List<Coordinate> gap = tips(layer, "gap");
    assertThat(gap.get(0).distance(new Coordinate(900, 500))).isLessThan(1e-6);
    assertThat(gap.get(1).distance(new Coordinate(1400, 300))).isCloseTo(300, within(0.3));
  }

  @Test
  void wordsHaveCardBehindThem() {
    Layer layer = kept(drawing());
    for (int i = 0; i < layer.marks().size(); i++) {
      if (layer.marks().get(i) instanceof Mark.Words words) {
        Mark.Shape card = (Mark.Shape) layer.marks().get(i - 1);
        Envelope box = card.geometry().getEnvelopeInternal();
        assertThat(box.getHeight()).isGreaterThan(words.heightMm() * N * 0.9);
        assertThat(box.contains(words.x(), words.y() + 1e-3) || box.contains(words.x(), words.y()))
            .as(words.text())
            .isTrue();
      }
    }
  }

  /** 400 / 25.4 is 15.748, nearest to 15 12/16; 500 / 25.4 is 19.685, nearest to 19 11/16. */
  @Test
  void inInchesTheySaySo() {
    Study inches = study(SMALL.replace("\"title\"", "\"units\": \"in\", \"title\""));
    Layer layer = kept(ElevationPicture.of(inches, PictureOptions.PLAIN.withDenominator(N)));
    assertThat(words(layer, "rail")).isEqualTo("rail 15 3/4");
    assertThat(words(layer, "bend")).isEqualTo("bend 36.9°");
    assertThat(Report.html(inches)).contains("19 11/16 in");
  }

  /** Pins that have run into one another leave nothing to measure, and the rest is drawn. */
  @Test
  void pinsOnOneSpotAreNothingApart() {
    String spot = "{\"at\": [\"300 mm\", \"500 mm\"]";
    String one =
        SMALL
            .replace("{\"at\": [\"700 mm\", \"500 mm\"]", spot)
            .replace("{\"at\": [\"700 mm\", \"800 mm\"]", spot);
    Layer layer = kept(ElevationPicture.of(study(one), PictureOptions.PLAIN));
    assertThat(words(layer, "rail")).isEqualTo("rail 0");
    assertThat(words(layer, "brace")).isEqualTo("brace 0");
    assertThat(words(layer, "bend")).isEqualTo("bend 0°");
    assertThat(words(layer, "post")).isEqualTo("post 500");
  }

  @Test
  void theOnePickedStandsOut() {
    Layer layer =
        kept(
            ElevationPicture.of(
                STUDY, PictureOptions.PLAIN.withDenominator(N).withChosen("dimension:post")));
    for (Mark mark : layer.marks()) {
      if (mark instanceof Mark.Words words) {
        boolean picked = words.subject().equals("dimension:post");
        assertThat(words.tone()).isEqualTo(picked ? Tone.CHOSEN : Tone.DIMENSION);
      }
    }
  }

  @Test
  void aLayoutThatKeepsNoneHasNoSuchLayer() {
    assertThat(ElevationPicture.of(Plover.study(), PictureOptions.PLAIN).layers())
        .extracting(Layer::id)
        .doesNotContain("kept");
  }

  @Test
  void sheetsAndReportHaveThemToo() {
    assertThat(kept(DimensionedElevation.of(STUDY, PictureOptions.PLAIN.withDenominator(N))))
        .isEqualTo(kept(drawing()));
    Map<String, Measured> all = KeptDimensions.of(STUDY, PictureOptions.PLAIN);
    assertThat(all.keySet()).containsExactly("rail", "brace", "post", "corner", "gap", "bend");
    String html = Report.html(STUDY);
    assertThat(html).contains("Dimensions kept");
    String table = html.substring(html.indexOf("Dimensions kept"));
    assertThat(table.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " "))
        .contains("brace 500 mm straight a, c inside")
        .contains("post 800 mm upright c, the ground")
        .contains("corner 200 mm level b, point 2 of case")
        .contains("straight, where nearest case, frontWheel")
        .contains("bend 36.9° angle b, a, c");
    assertThat(Plover.report()).doesNotContain("Dimensions kept");
  }

  /** A lid of 300 mm that stands on end when it is open: its far end is over its hinge then. */
  @Test
  void whatAnOpenSectionTakesWithItIsMeasuredWhereItIs() {
    String lid =
        SMALL
            .replace(
                "\"c\": {",
                "\"far\": {\"at\": [\"1000 mm\", \"500 mm\"], \"nailed\": true, \"with\": \"lid\"},"
                    + " \"c\": {")
            .replace(
                "\"dimensions\": {",
                "\"sections\": {\"lid\": {\"parts\": [\"case\"], \"pivot\": \"b\", \"angle\": \"90 deg\"}},"
                    + " \"dimensions\": {\"pinUp\": {\"ends\": [\"b\", \"far\"], \"along\": \"upright\"},"
                    + " \"pointUp\": {\"ends\": [\"b\", {\"part\": \"case\", \"point\": 1}],"
                    + " \"along\": \"upright\"},");
    Study study = study(lid);
    PictureOptions open = PictureOptions.PLAIN.withStance(Optional.of(Condition.open("lid")));
    Map<String, Measured> shut = KeptDimensions.of(study, PictureOptions.PLAIN);
    assertThat(shut.get("pinUp").value()).isCloseTo(0, within(1e-6));
    assertThat(shut.get("pointUp").value()).isCloseTo(0, within(1e-6));
    Map<String, Measured> whole = KeptDimensions.of(study, open);
    assertThat(whole.get("pinUp").value()).isCloseTo(300, within(1e-6));
    assertThat(whole.get("pointUp").value()).isCloseTo(200, within(1e-6));
    Map<String, Measured> third = KeptDimensions.of(study, open.withOpening(1 / 3.0));
    assertThat(third.get("pinUp").value()).isCloseTo(150, within(1e-6));
    assertThat(third.get("pointUp").value()).isCloseTo(100, within(1e-6));
    assertThat(third.get("rail").value()).isCloseTo(400, within(1e-6));
  }

  private static byte[] svg() throws IOException {
    Page page = Page.round(drawing().scaled(1 / N), 5);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SvgWriter.write(page, Palette.CARD, out);
    return out.toByteArray();
  }

  @Test
  void theyLookAsTheyDid() throws Exception {
    if (Boolean.getBoolean("golden.update")) {
      Files.write(Path.of("src/test/resources/org/longlow/sketcher/picture/teal.svg"), svg());
    }
    try (InputStream golden = KeptInkTest.class.getResourceAsStream("teal.svg")) {
      GoldenSvg.same(golden.readAllBytes(), svg());
    }
  }
}
