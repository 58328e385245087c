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
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.app.Making;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

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

  @Test
  void aSetThatIsNotWholeSaysSoUntilItIs() throws IOException {
    Path out = folder.resolve("sheets");
    Path mark = out.resolve("not-finished.txt");
    Making.templates(
        Study.of(Demos.layout("dunlin")),
        out,
        TemplateSettings.on(Paper.A4),
        Set.of("pan"),
        (what, done, of) -> done < 1);
    assertThat(mark).content().contains("not complete");
    run("templates", file(Demos.text("dunlin")), "--out", out, "--part", "pan");
    assertThat(mark).doesNotExist();
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
