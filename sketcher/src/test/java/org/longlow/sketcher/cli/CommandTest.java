package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;

/** Commands in process: exit codes, what is printed, what is left on disk. */
class CommandTest {

  @TempDir Path folder;
  private final Locale before = Locale.getDefault();

  @BeforeEach
  void decimalComma() {
    Locale.setDefault(Locale.GERMANY);
  }

  @AfterEach
  void back() {
    Locale.setDefault(before);
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private List<String> left() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(p -> p.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  @Tag("long")
  void demoDoesTheWholeJobAndEndsWithItsFindings() throws IOException {
    Path out = folder.resolve("made");
    Files.createDirectories(out);
    Files.writeString(out.resolve("findings.json"), "my notes");
    Ran ran = Ran.of("demo", "--out", out);
    assertThat(ran.out()).contains("is kept as ");
    assertThat(out.resolve("findings.replaced.json")).hasContent("my notes");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isEqualTo(ExitCodes.FINDING_FAILS);
    for (String name : List.of("elevation.svg", "elevation.pdf", "report.html", "findings.json")) {
      assertThat(out.resolve(name)).isNotEmptyFile();
    }
    assertThat(Files.readString(out.resolve("elevation.svg")))
        .as("issued today")
        .contains(LocalDate.now().toString())
        .doesNotContain("2026-01-01");
    try (Stream<Path> sheets = Files.list(out.resolve("templates"))) {
      List<String> names = sheets.map(p -> p.getFileName().toString()).toList();
      assertThat(names).anyMatch(n -> n.endsWith(".pdf")).anyMatch(n -> n.endsWith("-01.svg"));
    }
    assertThat(ran.out()).contains("fails:", "pillionPost", "100 %", "licensed inspection");
  }

  @Test
  void checkPrintsTheContractAsJson() throws IOException {
    Path file = file("m.json", Demos.text("dunlin"));
    Ran ran = Ran.of("check", file, "--json");
    assertThat(ran.out())
        .startsWith("{\n  \"layout\": \"dunlin\",\n  \"status\": \"")
        .contains("\"freedoms\": [", "\"findings\": [", "\"margin\": ", "\"source\": ")
        .doesNotContain("NaN");
    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isIn(ExitCodes.PASS, ExitCodes.FINDING_FAILS);
  }

  @Test
  void checkPrintsATableWithPointsWhateverTheLocale() throws IOException {
    Ran ran = Ran.of("check", file("m.json", Demos.text("dunlin")));
    assertThat(ran.out())
        .containsPattern("verdict +finding +who +figure")
        .containsPattern("\\d\\.\\d mm");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "empty file||is empty",
        "wrong JSON|{\"longlow\": 1,|not JSON",
        "unknown key|{\"longlow\": 1, \"name\": \"x\", \"pinz\": {}}|pinz",
        "wrong unit|{\"longlow\": 1, \"name\": \"x\", \"measures\": {\"a\": \"5 mm + 3"
            + " kg\"}}|$.measures.a",
        "NaN|{\"longlow\": 1, \"name\": \"x\", \"measures\": {\"a\": NaN}}|NaN",
        "cycle|{\"longlow\": 1, \"name\": \"x\", \"measures\": {\"a\": \"b\", \"b\":"
            + " \"a\"}}|circle",
        "no outline|{\"longlow\": 1, \"name\": \"x\", \"pins\": {\"p\": [0, 0]}, \"parts\":"
            + " {\"t\": {\"kind\": \"tank\", \"frame\": \"p\", \"left\": 5, \"right\": 5}}}|outline"
      })
  void brokenFilesAreRefusedWithOneLineAFaultAndNothingWritten(
      String what, String text, String says) throws IOException {
    Path file = file("m.json", text == null ? "" : text);
    for (Object[] command :
        new Object[][] {
          {"check", file},
          {"draw", file, "--out", folder.resolve("x.svg")},
          {"report", file, "--out", folder.resolve("x.html")},
          {"templates", file, "--out", folder.resolve("sheets")}
        }) {
      Ran ran = Ran.of(command);
      assertThat(ran.code()).as("%s %s", what, command[0]).isEqualTo(ExitCodes.BAD_INPUT);
      assertThat(ran.err()).contains(says).contains("m.json");
      assertThat(ran.err().lines()).allMatch(l -> l.startsWith("longlow: "));
      assertThat(ran.out()).isEmpty();
    }
    assertThat(left()).containsExactly("m.json");
  }

  @Test
  void missingFileIsRefused() throws IOException {
    Ran ran = Ran.of("check", folder.resolve("none.json"));
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("none.json").hasLineCount(1);
    assertThat(left()).isEmpty();
  }

  @Test
  void everyFaultOfAFileIsNamedAtOnce() throws IOException {
    Path file =
        file(
            "m.json",
            "{\"longlow\": 1, \"name\": \"x\", \"measures\": {\"a\": \"5 kgg\", \"b\": \"c + 1"
                + " mm\"}, \"pins\": {\"p\": [\"1 kg\", 0]}}");
    Ran ran = Ran.of("check", file);
    assertThat(ran.err()).contains("$.measures.a", "$.measures.b", "$.pins.p");
    assertThat(ran.err().lines().count()).isGreaterThanOrEqualTo(3);
  }

  @Test
  void unreachableGripsFailAFindingAndExitThree() throws IOException {
    Path file = file("m.json", Demos.text("dunlin"));
    // moved by the document model, so that the test does not depend on how the file is laid out
    var layout = Loading.layout(file);
    var pin =
        layout.parts().values().stream()
            .filter(p -> p.kind().equals("grip"))
            .findFirst()
            .orElseThrow()
            .pins()
            .get(0);
    var away = new Pin(Formula.parse("9000 mm"), Formula.parse("900 mm"), true, "frame", "");
    var moved = layout.withPins(Map.of(pin, away));
    Files.writeString(file, LayoutWriter.toJson(untied(moved, pin)));
    Ran ran = Ran.of("check", file);
    assertThat(ran.code()).isEqualTo(ExitCodes.FINDING_FAILS);
    assertThat(ran.out()).contains("cannot reach the grips");
  }

  /** The layout without the ties, limits and wishes that hold {@code pin}. */
  private static Layout untied(Layout l, String pin) {
    var ties = new LinkedHashMap<>(l.ties());
    ties.values().removeIf(t -> t.pins().contains(pin));
    var limits = new LinkedHashMap<>(l.limits());
    limits.values().removeIf(t -> t.pins().contains(pin));
    var wishes = new LinkedHashMap<>(l.wishes());
    wishes.values().removeIf(t -> t.pins().contains(pin));
    return new Layout(
        l.name(),
        l.title(),
        Units.MM,
        l.notes(),
        l.measures(),
        l.pins(),
        l.parts(),
        ties,
        limits,
        wishes,
        l.sections(),
        l.stances(),
        l.crew(),
        l.demands(),
        Map.of(),
        Map.of());
  }

  @Test
  void contradictionsExitFour() throws IOException {
    Layout layout = Demos.layout("dunlin");
    String axle =
        layout.parts().values().stream()
            .filter(p -> p.kind().equals("wheel"))
            .findFirst()
            .orElseThrow()
            .pins()
            .get(0);
    Layout torn =
        layout
            .withTie("near", Tie.of(TieKind.HEIGHT, List.of(axle), Formula.parse("200 mm")))
            .withTie("far", Tie.of(TieKind.HEIGHT, List.of(axle), Formula.parse("220 mm")));
    Path file = file("m.json", LayoutWriter.toJson(torn));
    Ran ran = Ran.of("check", file);
    assertThat(ran.code()).isEqualTo(ExitCodes.CONTRADICTION);
    assertThat(ran.out()).contains("far", "cannot all hold");
  }

  @ParameterizedTest
  @CsvSource({
    "chek,chek",
    "check,FILE",
    "draw x.json --out y.png,.svg or .pdf",
    "demo egret,heron",
    "templates x.json --out d --paper a9,a4",
    "figure trial --input -,trail",
    "figure trail,\"rakeDeg\": number"
  })
  void badArgumentsAreRefusedWithAHint(String line, String says) {
    Ran ran = Ran.of((Object[]) line.split(" "));
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains(says);
  }

  @Test
  void figureAnswersFromAFile() throws IOException {
    Path in = file("in.json", "{\"radiusMm\": 299.9, \"rakeDeg\": 27, \"offsetMm\": 35}");
    Ran ran = Ran.of("figure", "trail", "--input", in);
    assertThat(ran.code()).isZero();
    // machine geometry reference, section 2: ground trail 113.525263986177
    assertThat(ran.out()).contains("\"groundTrailMm\": 113.5252639861");
  }

  @Test
  void figureNamesEveryFault() throws IOException {
    Path in = file("in.json", "{\"radiusMm\": -1, \"rakeDeg\": 127, \"offsetMm\": 35}");
    Ran ran = Ran.of("figure", "trail", "--input", in);
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("radiusMm", "rakeDeg").hasLineCount(2);
  }

  @Test
  void compareOfAFileWithItselfChangesNothing() throws IOException {
    Path file = file("m.json", Demos.text("dunlin"));
    assertThat(Ran.of("compare", file, file).out()).startsWith("nothing changed");
  }

  @Test
  void helpListsTheExitCodes() {
    assertThat(Ran.of("--help").out())
        .contains("Exit codes:", "0   no finding fails", "4   the layout contradicts itself");
  }

  @Test
  void helpSaysOfEachCommandAWholeSentence() {
    String help = Ran.of("--help").out();
    String list = help.substring(help.indexOf("Commands:\n") + 10, help.indexOf("\nExit codes:"));
    assertThat(list.split("\n(?=  \\w)"))
        .hasSizeGreaterThan(10)
        .allMatch(c -> c.strip().endsWith("."));
  }

  @Test
  void checkSaysWhichMeasureHasNoEffect() throws IOException {
    Path file =
        file(
            "m.json",
            Demos.text("dunlin").replaceFirst("\"measures\": \\{", "$0\"idle\": \"3 mm\","));
    Ran ran = Ran.of("check", file);
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).contains("note: measure idle is used nowhere").hasLineCount(1);
  }

  @Test
  void wheelsThatTiesLayOnEachOtherAreRefused() throws IOException {
    Path file =
        file(
            "m.json",
            """
            {"longlow": 1, "name": "m",
             "pins": {"back": [0, 300], "ahead": [1500, 300]},
             "parts": {
               "r": {"kind": "wheel", "end": "rear", "axle": "back", "tyre": "120/70-14", "mass": 9},
               "f": {"kind": "wheel", "end": "front", "axle": "ahead", "tyre": "120/70-14", "mass": 9}},
             "ties": {"one": {"tie": "together", "pins": ["back", "ahead"]}}}
            """);
    Ran ran = Ran.of("check", file);
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err())
        .contains("the front axle, ahead, comes 0.0 mm ahead of the rear axle, back")
        .hasLineCount(1);
  }

  @Test
  void reportSaysWhatItWrote() throws IOException {
    Path file = file("m.json", Demos.text("dunlin"));
    Path page = folder.resolve("page.HTML");
    assertThat(Ran.of("report", file, "--out", page).out()).contains("written: " + page);
    assertThat(page).isNotEmptyFile();
  }

  @Test
  void findingsAreCountedWithoutARest() throws IOException {
    Ran ran = Ran.of("check", file("m.json", Demos.text("heron")));
    String summary = ran.out().lines().reduce((a, b) -> b).orElseThrow();
    int[] n =
        java.util.Arrays.stream(summary.replaceAll("[^0-9]+", " ").strip().split(" "))
            .mapToInt(Integer::parseInt)
            .toArray();
    assertThat(n[1] + n[2] + n[3] + n[4]).as(summary).isEqualTo(n[0]);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          draw      | --out   | taken/d.svg     | is a file; give another folder
          draw      | --out   | .               | it must end in .svg or .pdf
          report    | --out   | taken/d.html    | is a file; give another folder
          templates | --out   | taken           | is a file; give another folder
          templates | --measured-across | 9.96 cm | is no number of millimetres
          templates | --measured-along  | 50    | can be corrected where it measures 95.2 to 105.3 mm
          draw      | --date  | tomorrow        | is no date; write it like 2026-01-31
          draw      | --paper | 50x50           | at no scale; take larger paper
          """)
  void optionsThatCannotBeAreRefusedInOneLineAndNothingIsLeft(
      String command, String option, String value, String words) throws IOException {
    Path file = file("m.json", Demos.text("dunlin"));
    file("taken", "x");
    boolean names = option.equals("--out");
    Object given = names ? folder.resolve(value) : value;
    Ran ran =
        names
            ? Ran.of(command, file, option, given)
            : Ran.of(command, file, "--out", folder.resolve("made.svg"), option, given);
    assertThat(ran.code()).as(ran.err()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains(words);
    assertThat(left()).containsExactly("m.json", "taken");
  }

  @Test
  void aProtectedFileStaysAsItIs() throws IOException {
    Path file = file("m.json", Demos.text("dunlin"));
    Path old = file("old.svg", "old");
    assertThat(old.toFile().setReadOnly()).isTrue();
    boolean mayWriteAll = Files.isWritable(old);
    Ran ran = Ran.of("draw", file, "--out", old);
    if (mayWriteAll) {
      assertThat(ran.err()).doesNotContain("write-protected");
      assertThat(Files.readString(old)).isNotEqualTo("old");
      return;
    }
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("write-protected");
    assertThat(old).hasContent("old");
  }

  @Test
  void sheetsLeftFromALargerTemplateAreTakenAway() throws IOException {
    Path file = file("m.json", Demos.text("dunlin"));
    Path out = folder.resolve("sheets");
    Ran.of("templates", file, "--out", out, "--part", "pan");
    Path first;
    try (Stream<Path> made = Files.list(out)) {
      first = made.filter(p -> p.toString().endsWith("-01.svg")).findFirst().orElseThrow();
    }
    int sheets = 1;
    while (Files.exists(sheet(first, sheets + 1))) {
      sheets++;
    }
    Path stale = Files.copy(first, sheet(first, sheets + 1));
    Ran.of("templates", file, "--out", out, "--part", "pan");
    assertThat(stale).doesNotExist();
    assertThat(first).exists();
  }

  private static Path sheet(Path first, int number) {
    String name = first.getFileName().toString();
    return first.resolveSibling(
        name.replace("-01.svg", String.format(Locale.ROOT, "-%02d.svg", number)));
  }
}
