package org.longlow.sketcher.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.cli.Ran;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Shipped;
import org.longlow.sketcher.picture.ViewSheets;
import org.longlow.sketcher.report.Report;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/** A machine shown in inches says no millimetre, kilogram or newton anywhere. */
class InchesTest {

  /** Metric units after a figure; what the bars on sheets are is said apart. */
  private static final Pattern METRIC =
      Pattern.compile("\\bmm2?\\b|\\bkg\\b|\\bkPa\\b|km/h|\\d N\\b|\\d m\\b|m²");

  private static final Pattern BARS =
      Pattern.compile("^mm, good|100(\\.0)? mm|within [\\d.]+ mm|50 x 50 mm|diagonals [\\d.]+ mm");

  @TempDir Path folder;

  static List<String> machines() {
    return Shipped.sample().toList();
  }

  /** The machine without what its owner wrote in words of their own. */
  private static Layout plain(String name) {
    Layout l = Demos.layout(name).withUnits(Units.IN);
    return new Layout(
        l.name(),
        l.title(),
        l.titleBlock(),
        l.units(),
        List.of(),
        l.measures(),
        l.pins(),
        l.parts(),
        l.ties(),
        l.limits(),
        l.wishes(),
        l.sections(),
        l.stances(),
        l.crew(),
        l.demands(),
        l.photos(),
        l.dimensions(),
        l.lines(),
        l.stock(),
        l.currency(),
        l.variants(),
        l.asBuilt());
  }

  private static List<String> words(Page page) {
    List<String> words = new ArrayList<>();
    for (Page.Piece piece : page.pieces()) {
      piece.drawing().layers().stream()
          .flatMap(layer -> layer.marks().stream())
          .filter(Mark.Words.class::isInstance)
          .forEach(mark -> words.add(((Mark.Words) mark).text()));
    }
    return words;
  }

  private static void nothingMetric(List<String> texts) {
    assertThat(texts)
        .isNotEmpty()
        .allSatisfy(t -> assertThat(BARS.matcher(t).replaceAll("")).doesNotContainPattern(METRIC));
  }

  @ParameterizedTest
  @MethodSource("machines")
  void findingsReportDrawingAndSheetsAreInInches(String name) {
    Study study = Study.of(plain(name));
    for (Finding f : study.findings()) {
      nothingMetric(
          List.of(f.text(Units.IN), f.source(Units.IN), f.unit().says(f.value(), Units.IN)));
    }
    String page = Report.html(study).replaceAll("(?s)<style.*?</style>", "");
    nothingMetric(
        Stream.of(page.split("<[^>]*>")).map(String::strip).filter(t -> !t.isEmpty()).toList());
    Page elevation =
        ViewSheets.elevation(study, PictureOptions.PLAIN, Paper.A3, "2026-03-01").page();
    nothingMetric(words(elevation));
    assertThat(words(elevation)).anyMatch(w -> w.matches("wheelbase, laden \\d+( \\d+/\\d+)?"));
    assertThat(words(elevation)).anyMatch(w -> w.startsWith("Lengths in inches, angles"));
    List<NamedDrawing> templates = Templates.of(study, Set.of());
    templates.forEach(t -> nothingMetric(words(Page.round(t.drawing(), 5))));
    List<Page> sheets = templates.get(0).sheets(TemplateSettings.on(Paper.A4));
    sheets.forEach(sheet -> nothingMetric(words(sheet)));
    assertThat(words(sheets.get(0))).contains("4 in", "100");
  }

  @Test
  void commandsSayInchesAndJsonStaysAsItIs() throws IOException {
    Path file = Files.writeString(folder.resolve("m.json"), LayoutWriter.toJson(plain("dunlin")));
    String table = Ran.of("check", file).said();
    nothingMetric(List.of(table.split("\n")));
    assertThat(table).containsPattern("\\d in ");
    assertThat(Ran.of("check", file, "--units", "mm").said())
        .containsPattern("\\d mm ")
        .doesNotContain(" lb");
    String json = Ran.of("check", file, "--json").said();
    assertThat(json).isEqualTo(Ran.of("check", file, "--json", "--units", "mm").said());
    assertThat(json).contains("\"unit\": \"mm\"").containsPattern("\\d mm");
    nothingMetric(List.of(Ran.of("compare", file, file).said().split("\n")));
    assertThat(Ran.of("check", file, "--units", "ft").said()).contains("'ft' is neither mm nor in");
    assertThat(Files.readString(file)).contains("\"units\": \"in\"");
  }

  @ParameterizedTest
  @ValueSource(strings = {"dunlin"})
  void whatIsShownChangesNothingThatIsWorkedOut(String name) {
    Study mm = Shipped.study(name);
    Study in = Study.of(Demos.layout(name).withUnits(Units.IN));
    assertThat(StudyJson.of(in)).isEqualTo(StudyJson.of(mm));
    Comparison changed = Comparison.of(mm, in);
    assertThat(changed.came()).isEmpty();
    assertThat(changed.verdicts()).isEmpty();
    assertThat(changed.said()).singleElement().asString().contains("units");
    assertThat(Optional.of(in.layout().units())).contains(Units.IN);
  }
}
