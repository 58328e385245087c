package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.SolidPart;

class SvgTraceTest {

  private static final String SVG = "<svg xmlns='http://www.w3.org/2000/svg'>%s</svg>";

  @TempDir Path top;
  private Path folder;

  @BeforeEach
  void makeFolder() throws IOException {
    folder = Files.createDirectories(top.resolve("layout/sub")).getParent();
  }

  private SvgTrace trace(String body, String id, double scale) throws IOException {
    Files.writeString(folder.resolve("a.svg"), SVG.replace("%s", body));
    return SvgTrace.read(folder, "a.svg", id, scale);
  }

  private static double[][] points(SvgTrace trace) {
    assertThat(trace.fault()).isNull();
    return trace.vertices().stream()
        .map(v -> new double[] {v.x().evaluate(n -> 0), v.z().evaluate(n -> 0)})
        .toArray(double[][]::new);
  }

  @Test
  void pathIsScaledAndTurnedUp() throws IOException {
    SvgTrace trace =
        trace("<path id='x' d='M0 0'/><path id='o' d='M10 20 h100 v40 l-100 0 z'/>", "o", 0.5);
    assertThat(trace.closed()).isTrue();
    assertThat(points(trace))
        .isDeepEqualTo(new double[][] {{5, -10}, {55, -10}, {55, -30}, {5, -30}});
  }

  @Test
  void firstPathIsTakenWhereNoneIsNamed() throws IOException {
    SvgTrace trace = trace("<g><path d='M0,0 L10,0 10,10'/></g><path d='M9 9z'/>", "", 1);
    assertThat(trace.closed()).isFalse();
    assertThat(points(trace)).isDeepEqualTo(new double[][] {{0, 0}, {10, 0}, {10, -10}});
  }

  @Test
  void transformsOfGroupsApply() throws IOException {
    SvgTrace trace =
        trace(
            "<g transform='translate(100 0)'><g/><path transform='scale(2)' d='M0 0 10 0 10 5z'/></g>",
            "",
            1);
    assertThat(points(trace)).isDeepEqualTo(new double[][] {{100, 0}, {120, 0}, {120, -10}});
  }

  // A circle of 1000 units at 0.2 mm is 200 mm in radius; its vertices must lie on it to 1e-5 of
  // the radius (4e-6 of curves for arcs, and single precision), its chords within 0.1 mm.
  @ParameterizedTest
  @ValueSource(
      strings = {
        "M1000 0 A1000 1000 0 0 1 -1000 0 A1000 1000 0 0 1 1000 0 Z",
        "M1000 0 A1000 1000 0 0 0 -1000 0 A1000 1000 0 0 0 1000 0",
        "M1000 0 A1000 1000 33 0 0 0 -1000 A1000 1000 -7 1 0 1000 0",
        "M1000 0 a1000 1000 0 0 0 -1000 -1000 a1000 1000 0 1 0 1000 1000",
        "M1000 0 A10 10 0 0 0 -1000 0 A10 10 0 0 0 1000 0"
      })
  void arcsStayWithinTheFlatness(String d) throws IOException {
    SvgTrace trace = trace("<path d='" + d + "'/>", "", 0.2);
    double[][] points = points(trace);
    assertThat(trace.closed()).isTrue();
    assertThat(points.length).isBetween(20, 200);
    double turn = 0;
    for (int i = 0; i < points.length; i++) {
      double[] a = points[i];
      double[] b = points[(i + 1) % points.length];
      assertThat(Math.hypot(a[0], a[1])).isCloseTo(200, within(0.002));
      assertThat(Math.hypot((a[0] + b[0]) / 2, (a[1] + b[1]) / 2)).isBetween(199.89, 200.0);
      turn += Math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]);
    }
    assertThat(Math.abs(turn)).isCloseTo(2 * Math.PI, within(1e-9));
  }

  // Half an ellipse of 100 by 50, turned by 90 degrees: it runs from (50, 0) through (0, -100),
  // in the drawing y down, so that z is up and positive at the top.
  @Test
  void turnedEllipseGoesThroughItsVertex() throws IOException {
    SvgTrace trace = trace("<path d='M50 0 A100 50 90 0 0 -50 0 z'/>", "", 1);
    assertThat(List.of(points(trace)))
        .allSatisfy(
            p -> assertThat(p[0] * p[0] / 2500 + p[1] * p[1] / 10000).isCloseTo(1, within(2e-5)))
        .anySatisfy(p -> assertThat(p[1]).isCloseTo(100, within(0.01)));
  }

  @Test
  void arcWithoutRadiusIsALine() throws IOException {
    assertThat(points(trace("<path d='M0 0 A0 5 0 0 0 9 0 L9 9 z'/>", "", 1)))
        .isDeepEqualTo(new double[][] {{0, 0}, {9, 0}, {9, -9}});
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          <path id='o' d=''/>                    ~ o ~ without points
          <path id='o'/>                         ~ o ~ without points
          <path id='o' d='M0 0'/>                ~ o ~ too few points
          <path id='o' d='M0 0 L5 5 z'/>         ~ o ~ too few points
          <path id='o' d='M0 0 Q'/>              ~ o ~ cannot be read
          <path id='o' d='hello'/>               ~ o ~ does not begin with a move
          <path id='o' d='M0 0h9v9z M20 0h9v9z'/> ~ o ~ several pieces
          <path id='o' d='M0 0 L1e9 0 L0 1e9z'/> ~ o ~ beyond 100 m
          <path id='o' d='M0 0h9v9z'/>           ~ p ~ is the id of no path
          <rect id='o' width='9' height='9'/>    ~ o ~ is the id of no path
          <rect width='9' height='9'/>           ~ `` ~ finds no path
          <path id='o' transform='bend(3)' d='M0 0h9v9z'/> ~ o ~ transform that cannot be read
          <g                                     ~ o ~ is not well-formed XML
          """)
  void wrongPathIsAFault(String body, String id, String words) throws IOException {
    assertThat(trace(body, id, 1).fault()).contains(words);
  }

  @Test
  void tooManyPointsAreAFault() throws IOException {
    StringBuilder d = new StringBuilder("M0 0");
    for (int i = 1; i < 3000; i++) {
      d.append(" L").append(i).append(' ').append(i * i % 7);
    }
    assertThat(trace("<path d='" + d + "'/>", "", 1).fault()).contains("more than 2000 points");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.svg",
        "sub/../../secret.svg",
        "/etc/passwd",
        "http://example.org/a.svg",
        "file:///etc/passwd",
        "sub\\..\\..\\secret.svg",
        "C:a.svg"
      })
  void onlyTheFolderIsRead(String file) throws IOException {
    Files.writeString(top.resolve("secret.svg"), SVG.replace("%s", "<path d='M0 0h9v9z'/>"));
    assertThat(SvgTrace.read(folder, file, "", 1).fault()).contains("outside the folder");
  }

  @Test
  void linkOutOfTheFolderIsNotFollowed() throws IOException {
    Path secret =
        Files.writeString(top.resolve("secret.svg"), SVG.replace("%s", "<path d='M0 0h9v9z'/>"));
    Files.createSymbolicLink(folder.resolve("link.svg"), secret);
    assertThat(SvgTrace.read(folder, "link.svg", "", 1).fault()).contains("outside the folder");
  }

  @Test
  void missingFileFolderAndOddNameAreFaults() {
    assertThat(SvgTrace.read(folder, "none.svg", "", 1).fault()).contains("does not exist");
    assertThat(SvgTrace.read(folder, "sub", "", 1).fault()).contains("is a folder");
    assertThat(SvgTrace.read(folder, "a\u0000b", "", 1).fault()).contains("is no file name");
    assertThat(SvgTrace.read(null, "a.svg", "", 1).fault()).contains("no folder yet");
  }

  @Test
  void entitiesFromOutsideAreNotRead() throws IOException {
    Path secret = Files.writeString(top.resolve("secret.txt"), "M0 0h77v77z");
    Files.writeString(
        folder.resolve("a.svg"),
        "<!DOCTYPE svg [<!ENTITY e SYSTEM '"
            + secret.toUri()
            + "'><!ENTITY f 'M0 0h9v9z'>]><svg><text>&e;</text><path d='&f;'/></svg>");
    SvgTrace trace = SvgTrace.read(folder, "a.svg", "", 1);
    assertThat(trace.fault()).isNotNull();
    Files.writeString(
        folder.resolve("a.svg"),
        "<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN'"
            + " 'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'>"
            + "<svg><path d='M0 0h9v9z'/></svg>");
    assertThat(SvgTrace.read(folder, "a.svg", "", 1).fault()).isNull();
  }

  @Test
  void entityBombDoesNotGoOff() throws IOException {
    StringBuilder bomb = new StringBuilder("<!DOCTYPE svg [<!ENTITY l0 'M0 0h9v9z '>");
    for (int i = 1; i < 30; i++) {
      bomb.append("<!ENTITY l").append(i).append(" '");
      bomb.append(("&l" + (i - 1) + ";").repeat(10)).append("'>");
    }
    Files.writeString(folder.resolve("a.svg"), bomb + "]><svg><path d='&l29;'/></svg>");
    assertThat(SvgTrace.read(folder, "a.svg", "", 1).fault()).isNotNull();
  }

  private static final String DRAWN =
      "{\"points\": [[\"0 mm\", \"0 mm\"], [\"300 mm\", \"0 mm\"], [\"300 mm\", \"100 mm\"], [\"0"
          + " mm\", \"100 mm\"]]}";

  @Test
  void tracedOutlineOfALayoutIsReadAndWrittenBack() throws IOException {
    Files.writeString(
        folder.resolve("sub/e.svg"), SVG.replace("%s", "<path id='o' d='M0 0h200v80h-200z'/>"));
    String text =
        Plank.with(DRAWN, "{\"svg\": \"sub/e.svg\", \"path\": \"o\", \"scale\": \"0.5 mm\"}");
    Layout layout = Plank.layout(text, folder);
    Outline outline = ((SolidPart) layout.parts().get("silencer")).outline();
    assertThat(outline).isInstanceOf(Outline.Traced.class);
    assertThat(outline.vertices())
        .extracting(v -> v.x().text() + ", " + v.z().text())
        .containsExactly("0 mm, 0 mm", "100 mm, 0 mm", "100 mm, -40 mm", "0 mm, -40 mm");
    String written = LayoutWriter.toJson(layout);
    assertThat(written)
        .contains("{\"svg\": \"sub/e.svg\", \"path\": \"o\", \"scale\": \"0.5 mm\"}");
    assertThat(Plank.layout(written, folder)).isEqualTo(layout);
  }

  @Test
  void faultsOfTracedOutlinesNameTheirPlace() throws IOException {
    Files.writeString(
        folder.resolve("e.svg"), SVG.replace("%s", "<path id='o' d='M0 0 L9 9 L9 0 L0 9 z'/>"));
    List<Fault> crossing =
        Plank.faults(
            LayoutReader.read(
                Plank.with(DRAWN, "{\"svg\": \"e.svg\", \"scale\": \"1 mm\"}"), folder));
    assertThat(crossing)
        .extracting(Fault::line)
        .containsExactly(
            "$.parts.silencer.outline.svg: crosses or touches itself near x 4.5 mm, z -4.5 mm;"
                + " put the vertices in order round the edge, each once");
    List<Fault> nowhere =
        Plank.faults(
            LayoutReader.read(
                Plank.with(DRAWN, "{\"svg\": \"e.svg\", \"path\": \"q\", \"scale\": \"0 mm\"}"),
                folder));
    assertThat(nowhere).extracting(Fault::path).containsExactly("$.parts.silencer.outline.scale");
    List<Fault> unnamed =
        Plank.faults(
            LayoutReader.read(
                Plank.with(DRAWN, "{\"svg\": \"e.svg\", \"path\": \"q\", \"scale\": \"1 mm\"}"),
                folder));
    assertThat(unnamed).extracting(Fault::path).containsExactly("$.parts.silencer.outline.path");
  }
}
