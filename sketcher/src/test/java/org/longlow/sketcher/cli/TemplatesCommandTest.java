package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.demo.Demos;

/** Sets of templates: too large ones refused at once, halves told from wholes. */
class TemplatesCommandTest {

  @TempDir Path folder;

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("m.json"), text);
  }

  /** One cowl beyond its own limit; many beyond that of the whole set. */
  @ParameterizedTest
  @CsvSource({"1, 90000, 40000, cowl0: ", "40, 5000, 4000, all templates together"})
  void whatNobodyGluesIsRefusedBeforeAnythingIsWritten(int cowls, int wide, int high, String says)
      throws IOException {
    ObjectNode root = (ObjectNode) new ObjectMapper().readTree(Demos.text("dunlin"));
    for (int k = 0; k < cowls; k++) {
      ((ObjectNode) root.get("parts"))
          .set(
              "cowl" + k,
              new ObjectMapper()
                  .readTree(
                      "{'kind': 'cowl', 'frame': 'panRear', 'outline': {'points': [[0, 0], [W, 0], [W, H], [0, H]]}, 'left': 100, 'right': 100, 'thickness': 3}"
                          .replace('\'', '"')
                          .replace("W", Integer.toString(wide))
                          .replace("H", Integer.toString(high))));
    }
    Path out = folder.resolve("sheets");
    Ran ran = Ran.of("templates", file(root.toString()), "--out", out);
    assertThat(ran.code()).as(ran.said()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.said()).contains(says).contains("sheets; allowed:");
    assertThat(out).doesNotExist();
  }

  /** A folder of the name of a sheet cannot be replaced. */
  @Test
  void aSetThatCannotBePutThereLeavesAllAsItWas() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    Ran.of("templates", machine, "--out", out, "--part", "pan");
    Path sheet =
        out.resolve(names(out).stream().filter(n -> n.endsWith("-01.svg")).findFirst().get());
    Files.delete(sheet);
    Files.createDirectories(sheet.resolve("in it"));
    List<String> before = names(out);
    assertThat(Ran.of("templates", machine, "--out", out, "--part", "pan").said())
        .contains(sheet.getFileName().toString(), "it is a folder")
        .doesNotContain("check the folder");
    assertThat(names(out)).isEqualTo(before).doesNotContain("not-finished.txt");
    Files.delete(sheet.resolve("in it"));
    Files.delete(sheet);
    Ran.of("templates", machine, "--out", out, "--part", "pan");
    assertThat(names(out)).hasSameSizeAs(before).doesNotContain("not-finished.txt");
  }

  /** As a run that was killed leaves it: its sheets in place, those from before aside. */
  @Test
  void aSetThatWasStoppedIsTakenOutFirst() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    Ran.of("templates", machine, "--out", out, "--part", "pan");
    Path before = Files.createDirectory(out.resolve("not-finished-before"));
    String stranger = "pan-side-a4-77.svg";
    Path pdf = out.resolve("pan-side-a4.pdf");
    Files.copy(pdf, before.resolve("pan-side-a4.pdf"));
    Files.copy(out.resolve("pan-side-a4-01.svg"), out.resolve(stranger));
    Files.writeString(before.resolve("put-where-nothing-was.txt"), stranger);
    Files.writeString(out.resolve("not-finished.txt"), "Begun");
    assertThat(Ran.of("templates", machine, "--out", out, "--part", "pan").said())
        .contains("a set that was stopped on its way into this folder was taken out again first");
    assertThat(names(out))
        .doesNotContain("not-finished.txt", "not-finished-before", stranger)
        .contains("pan-side-a4.pdf");
  }

  @Test
  void theCalibrationPageNeedsNoLayout() throws IOException {
    Path out = folder.resolve("sheets");
    Ran forgotten =
        Ran.of("templates", "--calibration", "--out", out, "--measured-along", "7.86 in");
    assertThat(forgotten.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(forgotten.err()).contains("add --printer NAME");
    Ran more =
        Ran.of(
            "templates",
            "none.json",
            "--calibration",
            "--out",
            out,
            "--part",
            "pan",
            "--whole",
            "side",
            "--as-built");
    assertThat(more.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(more.err()).contains("leave out FILE, --part, --whole and the state of the machine");
    Ran ran = Ran.of("templates", "--calibration", "--out", out, "--paper", "letter");
    assertThat(ran.code()).as(ran.said()).isEqualTo(ExitCodes.PASS);
    assertThat(ran.said()).contains("--printer NAME --measured-across MM");
    assertThat(names(out)).containsExactly("calibration-letter.pdf");
    assertThat(Ran.of("templates", "--out", out).code()).isEqualTo(ExitCodes.BAD_INPUT);
  }

  @Test
  void sheetsOfARollAreNamedAfterIt() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    Ran ran = Ran.of("templates", machine, "--out", out, "--part", "pan", "--paper", "roll 610");
    assertThat(ran.said()).contains(" of roll-610: ").doesNotContain("not of this set");
    assertThat(names(out)).isNotEmpty().allMatch(n -> n.contains("-roll-610"));
  }

  /** The two tyres stand as far apart on paper as on the machine, over all seams. */
  @Test
  void theWholeMachineIsPrintedAtFullSize() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    Ran ran = Ran.of("templates", machine, "--out", out, "--whole", "front", "--paper", "roll 610");
    assertThat(ran.err()).isEmpty();
    assertThat(names(out)).isNotEmpty().allMatch(n -> n.startsWith("whole-front-roll-610"));
    assertThat(Ran.of("templates", machine, "--out", out, "--whole", "all").said())
        .contains("write side, front or plan");
    assertThat(
            Ran.of("templates", machine, "--out", out, "--whole", "side", "--part", "pan").said())
        .contains("--whole and --part are both given");
    assertThat(Ran.of("templates", machine, "--out", out, "--who", "Nell").said())
        .contains("--who and --stance are for --whole");
  }

  /** Each waits for the other, so every sheet of the folder is of the set that was made last. */
  @Test
  @Tag("long")
  void twoAtOnceInOneFolderBothFinish() throws Exception {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    int plain = two(machine, folder.resolve("alone"), "pan").code();
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Future<Ran>> both =
          List.of(
              two.submit(() -> Ran.of("templates", machine, "--out", out, "--part", "pan")),
              two.submit(() -> two(machine, out, "pan")));
      for (Future<Ran> one : both) {
        assertThat(one.get().code()).as(one.get().said()).isEqualTo(plain);
      }
    } finally {
      two.shutdownNow();
    }
    assertThat(names(out)).containsExactlyElementsOf(names(folder.resolve("alone")));
  }

  @Test
  @Tag("long")
  void sheetsOfRenamedPartsAndOtherPaperAreTold() throws IOException {
    Path out = folder.resolve("sheets");
    Path machine = file(Demos.text("dunlin"));
    Ran.of("templates", machine, "--out", out, "--part", "pan", "--paper", "letter");
    assertThat(Ran.of("templates", machine, "--out", out, "--part", "pan").said())
        .containsPattern(
            "not of this set, so do not cut from them: pan\\S*-letter \\(\\d+ files\\)");
    Path clean = folder.resolve("clean");
    assertThat(two(machine, clean, "pan").said()).doesNotContain("not of this set");
    assertThat(Ran.of("templates", machine, "--out", clean, "--part", "pan").said())
        .containsPattern("\\d+ files of other templates there are of an earlier run")
        .doesNotContain("not of this set");
    List<String> before = names(clean);
    String renamed = Demos.text("dunlin").replace("\"pan\"", "\"perch\"");
    Path other = file(renamed.replace("\"role\": \"perch\"", "\"role\": \"pan\""));
    Ran ran = two(other, clean, "perch");
    assertThat(ran.said()).containsPattern("do not cut from them: pan\\S*-a4 \\(\\d+ files\\)");
    assertThat(names(clean)).containsAll(before);
  }

  /** The templates of a part and of a small one more. */
  private static Ran two(Path machine, Path out, String part) {
    return Ran.of("templates", machine, "--out", out, "--part", part, "--part", "plateHolder");
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  @Tag("long")
  void theTraceOfAnInternalErrorMayBeAskedForBeforeAndAfterTheCommand() throws IOException {
    Path file = file(Demos.text("dunlin"));
    int plain = Ran.of("check", file).code();
    assertThat(Ran.of("--verbose", "check", file).code()).isEqualTo(plain);
    assertThat(Ran.of("check", "--verbose", file).code()).isEqualTo(plain);
  }

  @Test
  void wheelsWhoseEndsAreSwappedAreToldApart() throws IOException {
    String swapped =
        Demos.text("dunlin")
            .replace("\"end\": \"front\"", "\"end\": \"?\"")
            .replace("\"end\": \"rear\"", "\"end\": \"front\"")
            .replace("\"end\": \"?\"", "\"end\": \"rear\"");
    assertThat(Ran.of("check", file(swapped)).said()).contains("exchange the 'end' of");
  }

  /** What has nothing to cut is not among what has a template, and it says why. */
  @Test
  void aTubeWithoutLengthIsNoTemplate() throws IOException {
    String stub =
        "\"parts\": {\"stub\": {\"kind\": \"rail\", \"path\": [\"s1\", \"s2\"], \"diameter\":"
            + " 25, \"wall\": 2, \"bendRadius\": 80, \"y\": 0, \"material\": \"steel\"},";
    String text =
        Demos.text("dunlin")
            .replaceFirst("\"parts\": \\{", stub)
            .replaceFirst("\"pins\": \\{", "\"pins\": {\"s1\": [500, 900], \"s2\": [500, 900],");
    Ran ran = Ran.of("templates", file(text), "--out", folder.resolve("sheets"), "--part", "stub");
    assertThat(ran.code()).isEqualTo(2);
    assertThat(ran.err())
        .contains("--part is stub, of which there is nothing to cut as it is drawn")
        .doesNotContainPattern("with a template are [^;]*stub");
  }
}
