package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.demo.Demos;

/** Sets of templates: too large ones refused at once, halves told from wholes. */
class TemplatesCommandTest {

  @TempDir Path folder;

  private record Ran(int code, String said) {}

  private static Ran run(Object... args) {
    StringWriter said = new StringWriter();
    PrintWriter both = new PrintWriter(said);
    String[] words = Arrays.stream(args).map(String::valueOf).toArray(String[]::new);
    return new Ran(Longlow.run(both, both, words), said.toString());
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("m.json"), text);
  }

  /** One part beyond its own limit; all cushions beyond that of the whole set. */
  @ParameterizedTest
  @CsvSource({"90000 mm, true, pan: ", "40000 mm, false, all templates together"})
  void whatNobodyGluesIsRefusedBeforeAnythingIsWritten(String breadth, boolean one, String says)
      throws IOException {
    ObjectNode root = (ObjectNode) new ObjectMapper().readTree(Demos.text("dunlin"));
    root.remove("limits");
    for (JsonNode part : root.get("parts")) {
      if (one ? part == root.get("parts").get("pan") : part.has("layers")) {
        ((ObjectNode) part).put("left", breadth).put("right", breadth);
      }
    }
    Path out = folder.resolve("sheets");
    Ran ran = run("templates", file(root.toString()), "--out", out);
    assertThat(ran.code()).as(ran.said()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.said()).contains(says).contains("sheets; allowed:");
    assertThat(out).doesNotExist();
  }

  /** A folder of the name of a sheet cannot be replaced. */
  @Test
  void aSetThatCannotBePutThereLeavesAllAsItWas() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    run("templates", machine, "--out", out, "--part", "pan");
    Path sheet =
        out.resolve(names(out).stream().filter(n -> n.endsWith("-01.svg")).findFirst().get());
    Files.delete(sheet);
    Files.createDirectories(sheet.resolve("in it"));
    List<String> before = names(out);
    assertThat(run("templates", machine, "--out", out, "--part", "pan").said())
        .contains(sheet.getFileName().toString(), "it is a folder");
    assertThat(names(out)).isEqualTo(before).doesNotContain("not-finished.txt");
    Files.delete(sheet.resolve("in it"));
    Files.delete(sheet);
    run("templates", machine, "--out", out, "--part", "pan");
    assertThat(names(out)).hasSameSizeAs(before).doesNotContain("not-finished.txt");
  }

  /** As a run that was killed leaves it: its sheets in place, those from before aside. */
  @Test
  void aSetThatWasStoppedIsTakenOutFirst() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    run("templates", machine, "--out", out, "--part", "pan");
    Path before = Files.createDirectory(out.resolve("not-finished-before"));
    String stranger = "pan-side-a4-77.svg";
    Path pdf = out.resolve("pan-side-a4.pdf");
    Files.copy(pdf, before.resolve("pan-side-a4.pdf"));
    Files.copy(out.resolve("pan-side-a4-01.svg"), out.resolve(stranger));
    Files.writeString(before.resolve("put-where-nothing-was.txt"), stranger);
    Files.writeString(out.resolve("not-finished.txt"), "Begun");
    assertThat(run("templates", machine, "--out", out, "--part", "pan").said())
        .contains("a set that was stopped on its way into this folder was taken out again first");
    assertThat(names(out))
        .doesNotContain("not-finished.txt", "not-finished-before", stranger)
        .contains("pan-side-a4.pdf");
  }

  @Test
  void theCalibrationPageNeedsNoLayout() throws IOException {
    Path out = folder.resolve("sheets");
    Ran ran = run("templates", "--calibration", "--out", out, "--paper", "letter");
    assertThat(ran.code()).as(ran.said()).isEqualTo(ExitCodes.PASS);
    assertThat(ran.said()).contains("--printer NAME --measured-across MM");
    assertThat(names(out)).containsExactly("calibration-letter.pdf");
    assertThat(run("templates", "--out", out).code()).isEqualTo(ExitCodes.BAD_INPUT);
  }

  @Test
  void sheetsOfARollAreNamedAfterIt() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    Ran ran = run("templates", machine, "--out", out, "--part", "pan", "--paper", "roll 610");
    assertThat(ran.said()).contains("sheets of roll-610: ").doesNotContain("not of this set");
    assertThat(names(out)).isNotEmpty().allMatch(n -> n.contains("-roll-610"));
    assertThat(run("draw", machine, "--out", folder.resolve("x.pdf"), "--paper", "roll 610").said())
        .contains("--paper is a roll, which is for templates");
  }

  /** Each waits for the other, so every sheet of the folder is of the set that was made last. */
  @Test
  void twoAtOnceInOneFolderBothFinish() throws Exception {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    int plain = run("templates", machine, "--out", folder.resolve("alone")).code();
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Future<Ran>> both =
          List.of(
              two.submit(() -> run("templates", machine, "--out", out, "--part", "pan")),
              two.submit(() -> run("templates", machine, "--out", out)));
      for (Future<Ran> one : both) {
        assertThat(one.get().code()).as(one.get().said()).isEqualTo(plain);
      }
    } finally {
      two.shutdownNow();
    }
    assertThat(names(out)).containsExactlyElementsOf(names(folder.resolve("alone")));
  }

  @Test
  void sheetsOfRenamedPartsAndOtherPaperAreTold() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    run("templates", machine, "--out", out, "--part", "pan", "--paper", "letter");
    assertThat(run("templates", machine, "--out", out, "--part", "pan").said())
        .containsPattern(
            "not of this set, so do not cut from them: pan\\S*-letter \\(\\d+ files\\)");
    Path clean = folder.resolve("clean");
    assertThat(run("templates", machine, "--out", clean).said()).doesNotContain("not of this set");
    assertThat(run("templates", machine, "--out", clean, "--part", "pan").said())
        .containsPattern("\\d+ files of other templates there are of an earlier run")
        .doesNotContain("not of this set");
    List<String> before = names(clean);
    String renamed = Demos.text("dunlin").replace("\"pan\"", "\"perch\"");
    Ran ran =
        run(
            "templates",
            file(renamed.replace("\"role\": \"perch\"", "\"role\": \"pan\"")),
            "--out",
            clean);
    assertThat(ran.said()).containsPattern("do not cut from them: pan\\S*-a4 \\(\\d+ files\\)");
    assertThat(names(clean)).containsAll(before);
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theTraceOfAnInternalErrorMayBeAskedForBeforeAndAfterTheCommand() throws IOException {
    Path file = file(Demos.text("dunlin"));
    int plain = run("check", file).code();
    assertThat(run("--verbose", "check", file).code()).isEqualTo(plain);
    assertThat(run("check", "--verbose", file).code()).isEqualTo(plain);
  }

  @Test
  void wheelsWhoseEndsAreSwappedAreToldApart() throws IOException {
    String swapped =
        Demos.text("dunlin")
            .replace("\"end\": \"front\"", "\"end\": \"?\"")
            .replace("\"end\": \"rear\"", "\"end\": \"front\"")
            .replace("\"end\": \"?\"", "\"end\": \"rear\"");
    assertThat(run("check", file(swapped)).said()).contains("exchange the 'end' of");
  }
}
