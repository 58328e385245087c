package org.longlow.svg.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Frame;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Samples;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;
import org.longlow.svg.page.TitleBlock;
import org.w3c.dom.Element;

/**
 * Shows any change of a written page. Whether a page is right is for the measuring tests to say.
 */
class GoldenSvgTest {

  private static final Path GOLDEN = Path.of("src/test/resources/org/longlow/svg/write");
  private static final Path SAVED = Path.of("target/golden");

  static Stream<Arguments> pages() {
    List<Page> cowl =
        TemplateSheets.of("Cowl side, left", Samples.cowl(), TemplateSettings.on(Paper.A4));
    Page bracket =
        TemplateSheets.of("Tank bracket", Samples.bracket(), TemplateSettings.on(Paper.LETTER))
            .get(0);
    Scale scale = Scale.oneTo(10);
    Page elevation =
        Frame.sheet(
            Paper.A3.landscape(),
            TitleBlock.of("Long tourer", "LL-0001", "2026-03-01"),
            Samples.machine(scale),
            scale);
    return Stream.of(
        Arguments.of("cowl-map", cowl.get(0), Palette.CARD),
        Arguments.of("cowl-a2", cowl.get(1), Palette.CARD),
        Arguments.of("bracket", bracket, Palette.CARD),
        Arguments.of("elevation-night", elevation, Palette.NIGHT));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void thePageIsAsAccepted(String name, Page page, Palette palette) throws Exception {
    Path golden = GOLDEN.resolve(name + ".svg");
    Path saved = SAVED.resolve(name + ".svg");
    Files.createDirectories(saved.getParent());
    try (OutputStream svg = Files.newOutputStream(saved)) {
      SvgWriter.write(page, palette, svg);
    }
    if (Boolean.getBoolean("golden.update")) {
      Files.createDirectories(GOLDEN);
      Files.writeString(golden, Files.readString(saved));
    }
    assertThat(golden).as("accept a new page with -Dgolden.update=true").exists();
    Element was = parse(golden);
    Element is = parse(saved);
    assertThat(was.isEqualNode(is))
        .as(
            "SVG changed, first at line %d: compare %s with %s; if meant, rerun with -Dgolden.update=true",
            firstDifference(golden, saved), golden, saved)
        .isTrue();
  }

  private static Element parse(Path file) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    return factory.newDocumentBuilder().parse(file.toFile()).getDocumentElement();
  }

  private static int firstDifference(Path a, Path b) throws IOException {
    List<String> was = Files.readAllLines(a);
    List<String> is = Files.readAllLines(b);
    int i = 0;
    while (i < was.size() && i < is.size() && was.get(i).equals(is.get(i))) {
      i++;
    }
    return i + 1;
  }
}
