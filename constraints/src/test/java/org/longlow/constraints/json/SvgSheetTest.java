package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.words.Quoted;
import org.longlow.rider.geom.PointMm;

class SvgSheetTest {

  @TempDir Path folder;

  private SvgSheet sheet(String attributes, String body) throws IOException {
    Path file = folder.resolve("a.svg");
    Files.writeString(
        file, "<svg xmlns='http://www.w3.org/2000/svg' " + attributes + ">" + body + "</svg>");
    return SvgSheet.read(file);
  }

  @Test
  void pathsAreListedWithTheirPicturesAndWhyOneCannotBeTaken() throws IOException {
    SvgSheet sheet =
        sheet(
            "",
            "<path d='M0 0 H40 V20 H0 Z'/><g transform='scale(2)'><path id='nose' d='M0 0 L10 0'/>"
                + "</g><path d='M0 0 H9 V9 Z'/><path id='nose' d='M0 0 H9 V9 Z'/>"
                + "<path id='two' d='M0 0 H9 V9 Z M20 20 H29 V29 Z'/><path id='odd' d='L1'/>");
    assertThat(sheet.fault()).isEmpty();
    assertThat(sheet.unitMm()).isEmpty();
    List<SvgSheet.Outlined> paths = sheet.paths();
    assertThat(paths)
        .extracting(SvgSheet.Outlined::id)
        .containsExactly("", "nose", "", "nose", "two", "odd");
    assertThat(paths.get(0).points())
        .containsExactly(
            new PointMm(0, 0), new PointMm(40, 0), new PointMm(40, -20), new PointMm(0, -20));
    assertThat(paths.get(0).closed()).isTrue();
    assertThat(paths.get(0).width()).isEqualTo(40);
    assertThat(paths.get(1).points()).containsExactly(new PointMm(0, 0), new PointMm(20, 0));
    assertThat(paths.get(0).fault()).isEmpty();
    assertThat(paths.get(1).fault()).isEmpty();
    assertThat(paths.get(2).fault()).contains("give it an id");
    assertThat(paths.get(3).fault()).contains("give it an id");
    assertThat(paths.get(4).fault()).contains("several pieces");
    assertThat(paths.get(5).fault()).contains("begin with a move");
  }

  @Test
  void whatIsListedIsWhatIsTraced() throws IOException {
    SvgSheet sheet =
        sheet("", "<path id='a' d='M0 0 C0 60 100 60 100 0 Z'/><path id='b' d='M5 5 H9 V9 Z'/>");
    for (SvgSheet.Outlined path : sheet.paths()) {
      SvgTrace trace = SvgTrace.read(folder, "a.svg", path.id(), 2);
      double most = 0;
      for (var v : trace.vertices()) {
        most = Math.max(most, v.x().evaluate(n -> 0));
      }
      double listed = path.points().stream().mapToDouble(PointMm::x).max().orElseThrow();
      assertThat(most).isCloseTo(2 * listed, within(1e-3));
    }
  }

  // mm of a unit: size over viewBox; 1 in = 25.4 mm = 96 px = 72 pt = 6 pc (SVG 1.1, 7.10)
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "width='210mm' height='297mm' viewBox='0 0 210 297' | 1",
        "width='21cm' height='29.7cm' viewBox='0 0 2100 2970' | 0.1",
        "width='8.5in' viewBox='0,0,850,1100' | 0.254",
        "height='72pt' viewBox='0 0 5 10' | 2.54",
        "width='6pc' height='1in' viewBox='0 0 10 10' | 2.54",
        "width='200mm' height='100mm' viewBox='0 0 100 100' | 1",
        "width='200mm' height='100mm' viewBox='0 0 100 100' preserveAspectRatio='xMidYMid meet' |"
            + " 1",
        "width='200mm' height='100mm' viewBox='0 0 100 100' preserveAspectRatio='xMinYMin slice' |"
            + " 2",
        "width='200mm' height='100mm' viewBox='0 0 100 100' preserveAspectRatio='none' | ",
        "width='200mm' height='100mm' viewBox='0 0 200 100' preserveAspectRatio='none' | 1",
        "width='960' height='480' viewBox='0 0 960 480' | 0.26458333333333334",
        "width='400px' height='300px' | 0.26458333333333334",
        "width='100%' height='100%' viewBox='0 0 10 10' | ",
        "viewBox='0 0 10 10' | ",
        "width='0mm' viewBox='0 0 0 0' | ",
        "width='x' | ",
      })
  void theFileTellsItsUnitOrDoesNot(String attributes, Double unitMm) throws IOException {
    SvgSheet sheet = sheet(attributes.strip(), "<path d='M0 0 H9 V9 Z'/>");
    if (unitMm == null) {
      assertThat(sheet.unitMm()).isEmpty();
    } else {
      assertThat(sheet.unitMm().orElseThrow()).isCloseTo(unitMm, within(1e-12));
    }
  }

  /** Its height would tell another size than whoever wrote it meant. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "width='-400mm' height='300mm' viewBox='0 0 400 300' | width | -400mm",
        "width='400mm' height=' -3e2mm' viewBox='0 0 400 300' | height | -3e2mm",
        "width='-0.5' | width | -0.5",
        "width='-.5%' height='300mm' viewBox='0 0 400 300' | width | -.5%",
        "width='-400mm' height='-300mm' viewBox='0 0 -400 -300' | viewBox | 0 0 -400 -300",
        "width='400mm' height='300mm' viewBox='0 0 -400 300' | viewBox | 0 0 -400 300",
        "width='400mm' height='300mm' viewBox='-9 -9 400 -1' | viewBox | -9 -9 400 -1",
      })
  void aNegativeSizeIsRefusedInPlainWords(String attributes, String side, String said)
      throws IOException {
    SvgSheet sheet = sheet(attributes.strip(), "<path d='M0 0 H9 V9 Z'/>");
    assertThat(sheet.fault())
        .contains(side + " is " + Quoted.cut(said.strip()))
        .contains("must not be negative");
    assertThat(sheet.unitMm()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"-0mm, 297mm, 1", "210mm, -0, 1"})
  void noughtIsNoSizeAndNoFault(String width, String height, double unitMm) throws IOException {
    SvgSheet sheet =
        sheet(
            "width='" + width + "' height='" + height + "' viewBox='0 0 210 297'",
            "<path d='M0 0 H9 V9 Z'/>");
    assertThat(sheet.fault()).isEmpty();
    assertThat(sheet.unitMm().orElseThrow()).isCloseTo(unitMm, within(1e-12));
  }

  @Test
  void whatCannotBeReadSaysWhy() throws IOException {
    assertThat(SvgSheet.read(folder.resolve("none.svg")).fault()).contains("does not exist");
    assertThat(SvgSheet.read(Files.writeString(folder.resolve("b.svg"), "no")).fault())
        .contains("XML");
    assertThat(sheet("", "<rect width='3' height='3'/>").fault()).contains("no path");
    assertThat(sheet("", "<path transform='spin(3)' d='M0 0 H9 V9 Z'/>").fault())
        .contains("transform");
    assertThat(sheet("", "<path d='M0 0 H9 V9 Z'/>".repeat(300)).paths())
        .hasSize(SvgSheet.MOST_PATHS);
  }
}
