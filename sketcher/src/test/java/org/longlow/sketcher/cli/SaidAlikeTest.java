package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;

/** What commands say agrees with what others say of the same. */
class SaidAlikeTest {

  @TempDir Path folder;

  private static String out(Object... args) {
    return Ran.of(args).out();
  }

  @Test
  void onlyTheProgramAloneOpensAWindow() {
    assertThat(out("--help")).contains("Without arguments the window opens.", "F1, then Guide");
    for (String command : List.of("check", "place", "figure", "draw")) {
      assertThat(out(command, "--help")).contains("Exit codes").doesNotContain("Without arguments");
    }
  }

  @Test
  void checkListsFindingsInTheOneOrderWithTheirState() throws Exception {
    String text = Demos.text("dunlin").replace("\"bump\": \"50 mm\"", "\"bump\": \"80 mm\"");
    Path file = Files.writeString(folder.resolve("m.json"), text);
    Study study = Study.of(((ReadResult.Read) LayoutReader.read(text, null)).layout());
    String said = out("check", file, "--all");
    int at = 0;
    for (Finding f : WorstFirst.of(study.findings())) {
      if (f.id().length() > 40) {
        continue; // broken over lines in the table
      }
      at = said.indexOf(" " + f.id() + " ", at);
      assertThat(at).as(f.id()).isPositive();
    }
    assertThat(study.findings()).anyMatch(f -> f.when().equals(", at full bump"));
    assertThat(said).containsPattern("(fails|needs care), at full bump: ");
  }

  @Test
  @Tag("long")
  void placeSaysWhichPinsTheFileHadElsewhere() throws Exception {
    String text =
        Demos.text("dunlin")
            .replace(
                "\"headTop\": [\"1361.7 mm\", \"793.6 mm\"]",
                "\"headTop\": [\"1361.7 mm\", \"794.6 mm\"]");
    Path file = Files.writeString(folder.resolve("m.json"), text);
    assertThat(out("place", file, "--move", "grips")).contains("headTop stays; the file has it at");
  }
}
